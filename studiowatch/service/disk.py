"""The disk as the keeper meets it: what waits to be written, and when it may be tried again after it refused."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable
from dataclasses import dataclass, field
from math import inf

from studiowatch.store.trouble import StoreTrouble

RETRY_S = 5.0  # s between attempts while the disk refuses
AT_ONCE = 100  # records written between two looks at the room, so that many that waited do not hold it up


@dataclass(slots=True)
class Disk:
    """One back-off for all that is written, so that a disk that refuses is met once and not by each in turn.

    `now_s` is the monotonic clock, s. Only `StoreTrouble` is the disk's refusal; any other fault in a write leaves
    here, and what was to be written is not tried again.

    Attributes
    ----------
    trouble : str
        One sentence while the disk refuses, else "".
    """

    trouble: str = ""
    _retry_s: float = -inf
    _waiting: deque[Callable[[], None]] = field(default_factory=deque)

    @property
    def waiting(self) -> int:
        """How many records wait."""
        return len(self._waiting)

    def later(self, write: Callable[[], None]) -> None:
        """Have `write` done by the next `settle`, after all that waits already."""
        self._waiting.append(write)

    def settle(self, now_s: float) -> None:
        """Write what waits, a number of them at once."""
        for _ in range(min(AT_ONCE, len(self._waiting))):
            if not self._write_first(now_s):
                return

    def try_again(self) -> None:
        """Forget an earlier refusal."""
        self._retry_s = -inf

    def catch_up(self, now_s: float) -> bool:
        """Write all that waits, whatever was refused before; return whether it is done."""
        self.try_again()
        while self._waiting:
            if not self._write_first(now_s):
                return False
        return True

    def attempt(self, write: Callable[[], None], now_s: float) -> bool:
        """Do `write` at once, unless the disk refused a moment ago; return whether it is done."""
        if now_s < self._retry_s:
            return False
        try:
            write()
        except StoreTrouble as trouble:
            self.trouble = str(trouble)
            self._retry_s = now_s + RETRY_S
            return False
        self.trouble = ""
        return True

    def _write_first(self, now_s: float) -> bool:
        write = self._waiting.popleft()
        done = self.attempt(write, now_s)
        if not done:
            self._waiting.appendleft(write)
        return done
