"""One port while it is listened to, without the port: the way that is tried, and whether it makes sense yet."""

from __future__ import annotations

from studiowatch.board.baud import is_wrong_rate
from studiowatch.board.events import BoardEvent, LineRefused
from studiowatch.board.port import PortSeen
from studiowatch.board.ways import ChooseWay, Heard, LineIntake, Way

SAMPLE_BYTES = 4096  # kept of what makes no sense, to choose the next way by; four seconds at 9600 baud
LINES_TO_JUDGE = 3  # that begin under a way, the first of which may be half a line; assumption
MAKES_NO_SENSE = (LineRefused,)  # events that do not show that the right way was found


class Listening:
    """What one port has said under one way after the other.

    Parameters
    ----------
    port : PortSeen
        The port, for `choose_way`.
    choose_way : callable
        Tells which way to try first, and after those that were tried in vain.
    way, intake : Way, LineIntake, or None
        What made sense of this board before; None for a board that was not read yet.

    Attributes
    ----------
    is_understood : bool
        True once something came that makes sense; the way is kept from then on.
    sample : bytes
        The newest that was heard under this way, until it made sense.
    """

    def __init__(
        self, port: PortSeen, choose_way: ChooseWay, way: Way | None = None, intake: LineIntake | None = None
    ) -> None:
        self._port = port
        self._choose_way = choose_way
        self._tried: tuple[Way, ...] = ()
        self._text_baud: int | None = None
        self.way = way or self._first_way()
        self.intake = intake or self.way.make_intake()
        self.is_understood = False
        self.sample = b""

    def take(self, data: bytes, time_ms: int) -> list[BoardEvent]:
        """Return the events that `data`, read at `time_ms` (UTC ms), completes."""
        events = self.intake.feed(data, time_ms)
        if not self.is_understood:
            self.sample = (self.sample + data)[-SAMPLE_BYTES:]
            self.is_understood = any(not isinstance(event, MAKES_NO_SENSE) for event in events)
        return events

    def another_way(self, *, again: bool) -> Way | None:
        """Return the way to try next, or None after the last; with `again` the first one follows it.

        With `again` there is no hurry either: a way under which text is waited for is not left before some came.
        """
        if again and self._waits_for_text():
            return self.way
        self._text_baud = self.way.baud if self.sample and not is_wrong_rate(self.sample) else None
        self._tried += (self.way,)
        way = self._choose_way(self._port, Heard(tried=self._tried, data=self.sample))
        if way is None and again:
            self._tried = ()
            return self._first_way()
        return way

    def turn_to(self, way: Way) -> None:
        """Try `way` from here on; if it is the one that is tried, its intake goes on."""
        if way != self.way:
            self.way, self.intake, self.sample = way, way.make_intake(), b""

    def _waits_for_text(self) -> bool:
        """Tell whether text came at this baud before, and too little yet under this way: a line a minute, it may be."""
        is_text = self._text_baud == self.way.baud and not is_wrong_rate(self.sample)
        return is_text and len(self.sample.splitlines()) <= LINES_TO_JUDGE

    def _first_way(self) -> Way:
        way = self._choose_way(self._port, Heard())
        if way is None:
            raise ValueError(f"There is no way to listen to {self._port.name}.")  # not said
        return way
