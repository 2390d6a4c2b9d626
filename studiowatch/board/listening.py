"""One port while it is listened to, without the port: the way that is tried, and whether it makes sense yet."""

from __future__ import annotations

from studiowatch.board.events import BoardEvent, LineRefused
from studiowatch.board.ways import ChooseWay, Heard, LineIntake, Way

SAMPLE_BYTES = 4096  # kept of what made no sense, to choose the next way by; four seconds at 9600 baud


class Listening:
    """What one port has said under one way after the other.

    Parameters
    ----------
    choose_way : callable
        Tells which way to try first, and after each that was tried in vain.
    way, intake : Way, LineIntake, or None
        What made sense of this board before; None for a board that was not read yet.

    Attributes
    ----------
    is_understood : bool
        True once something came that makes sense; the way is kept from then on.
    sample : bytes
        The first that was heard under this way, until it made sense.
    """

    def __init__(self, choose_way: ChooseWay, way: Way | None = None, intake: LineIntake | None = None) -> None:
        first = way or choose_way(None)
        if first is None:
            raise ValueError("There is no way to listen at all.")
        self._choose_way = choose_way
        self.way = first
        self.intake = intake or first.make_intake()
        self.is_understood = False
        self.sample = b""

    def take(self, data: bytes, time_ms: int) -> list[BoardEvent]:
        """Return the events that `data`, read at `time_ms` (UTC ms), completes."""
        events = self.intake.feed(data, time_ms)
        if not self.is_understood:
            self.sample = (self.sample + data)[:SAMPLE_BYTES]
            self.is_understood = any(not isinstance(event, LineRefused) for event in events)
        return events

    def another_way(self, *, again: bool) -> Way | None:
        """Return the way to try next, or None after the last; with `again` the first one follows it."""
        way = self._choose_way(Heard(way=self.way, data=self.sample))
        return self._choose_way(None) if way is None and again else way

    def turn_to(self, way: Way) -> None:
        """Try `way` from here on; if it is the one that is tried, its intake goes on."""
        self.sample = b""
        if way != self.way:
            self.way, self.intake = way, way.make_intake()
