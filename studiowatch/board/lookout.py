"""Looks at which ports there are, now and then, and tells which have come since."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from studiowatch.board.port import PortSeen


class Lookout:
    """The ports as last listed.

    Parameters
    ----------
    list_ports : callable
        Returns the ports that are there; may take seconds.
    now_s : callable
        Returns seconds that never run backwards.
    every_s : float
        How long a list counts as new, s.

    Attributes
    ----------
    seen : sequence of PortSeen
        The ports at the last look.
    fresh : frozenset of str
        Names of ports that have come since they were last taken.
    """

    def __init__(
        self, *, list_ports: Callable[[], Sequence[PortSeen]], now_s: Callable[[], float], every_s: float
    ) -> None:
        self._list_ports = list_ports
        self._now_s = now_s
        self._every_s = every_s
        self._looked_s = 0.0
        self.seen: Sequence[PortSeen] = ()
        self.fresh: frozenset[str] = frozenset()

    def look(self) -> None:
        """List the ports."""
        before = {port.name for port in self.seen}
        self.seen = self._list_ports()
        self.fresh |= {port.name for port in self.seen} - before
        self._looked_s = self._now_s()

    def look_if_due(self) -> None:
        """List the ports if the last list is old."""
        if self._now_s() - self._looked_s >= self._every_s:
            self.look()

    def take_fresh(self) -> frozenset[str]:
        """Return the names of ports that have come since the last call."""
        fresh, self.fresh = self.fresh, frozenset()
        return fresh

    def sees(self, port: PortSeen) -> bool:
        """Tell whether this board was at this name at the last look."""
        return any(one.name == port.name and one.is_same_board(port) for one in self.seen)
