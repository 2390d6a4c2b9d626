"""How long a board that was read may be silent before its port is opened anew: that frees one that hangs."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

SILENT_S = 60.0  # s without a byte; assumption: far more than any board of the wire format leaves between two lines
LONGEST_S = 3600.0  # s; each opening in vain doubles the wait up to this, since opening restarts many boards


@dataclass(slots=True)
class Patience:
    """Keeps since when a board is silent, and how long to wait for it.

    Attributes
    ----------
    now_s : callable
        Returns monotonic time, s.
    """

    now_s: Callable[[], float]
    _silent_s: float = 0.0
    _steady_s: float = 0.0
    _wait_s: float = SILENT_S

    def begin(self) -> None:
        """Begin to wait: the port was opened."""
        self._silent_s = self._steady_s = self.now_s()

    def heard(self) -> None:
        """Take note that something came: one that spoke without a pause for as long as the wait is no slow board."""
        now_s = self.now_s()
        if now_s - self._silent_s >= SILENT_S:
            self._steady_s = now_s
        elif now_s - self._steady_s >= self._wait_s:
            self._wait_s = SILENT_S
        self._silent_s = now_s

    def runs_out(self) -> bool:
        """Return whether to open the port anew; the wait after that is twice as long."""
        if self.now_s() - self._silent_s < self._wait_s:
            return False
        self._wait_s = min(2 * self._wait_s, LONGEST_S)
        return True
