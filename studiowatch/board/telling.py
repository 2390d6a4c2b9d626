"""What the reader tells of its port: that it is open, what came, and once why it is not."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from studiowatch.board.events import BoardEvent, PortLost, PortOpened
from studiowatch.board.port import PortSeen


class Telling:
    """Delivers events; each loss once, however often it is looked for the board.

    Parameters
    ----------
    utc_ms : callable
        Returns UTC, ms.
    port : str
        The port that is spoken of before any was open.

    Attributes
    ----------
    deliver : callable
        Takes the events.
    is_open : bool
        Whether the port was told as open; without that nothing is told of what comes.
    """

    def __init__(self, *, utc_ms: Callable[[], int], port: str) -> None:
        self._utc_ms = utc_ms
        self._port = port
        self._told = ""
        self.deliver: Callable[[BoardEvent], None] = lambda _: None
        self.is_open = False

    def opened(self, port: PortSeen) -> None:
        """Tell that `port` is open, if that was not told yet."""
        if not self.is_open:
            self.is_open, self._told, self._port = True, "", port.name
            self.deliver(PortOpened(time_ms=self._utc_ms(), port=port.name, board=port.identity))

    def came(self, events: Sequence[BoardEvent]) -> None:
        """Tell what came."""
        if self.is_open:
            for event in events:
                self.deliver(event)

    def lost(self, reason: str, *, once: str = "") -> None:
        """Tell why there is no board, but not again while `once`, or else the reason, is the same."""
        self.is_open = False
        once = once or reason
        if once != self._told:
            self.deliver(PortLost(time_ms=self._utc_ms(), port=self._port, reason=reason))
            self._told = once
