"""From bytes to board events, without port, thread or clock: the parser, the numbering and the units of one board."""

from __future__ import annotations

from dataclasses import replace

from studiowatch.board.events import BoardEvent, BoardNamed, LineCounts, LineRefused, ReadingArrived
from studiowatch.board.sequence import Sequence, follow
from studiowatch.board.translate import Hello, read_data, read_error, read_hello
from studiowatch.board.wire import Kind, LineParser, WireFault, WireLine


class Intake:
    """What one source has said so far. Counts run on over reconnections; units and numbering too.

    `counts` is the tally after the last `feed`.
    """

    def __init__(self) -> None:
        self.counts = LineCounts()
        self._parser = LineParser(mid_line=True)
        self._sequence = Sequence()
        self._hello = Hello()
        self._named = False

    def reopened(self) -> None:
        """Forget the half line of a port that was left, pass over a first half line, and name the board anew."""
        self._parser = LineParser(mid_line=True)
        self._named = False

    def feed(self, data: bytes, time_ms: int) -> list[BoardEvent]:
        """Return the events that `data`, read at `time_ms` (UTC ms), completes."""
        events: list[BoardEvent] = []
        for found in self._parser.feed(data):
            event = self._refuse(found, time_ms) if isinstance(found, WireFault) else self._accept(found, time_ms)
            if event is not None:
                events.append(event)
        return events

    def _refuse(self, fault: WireFault, time_ms: int) -> BoardEvent:
        self.counts = replace(self.counts, faulty=self.counts.faulty + 1)
        return LineRefused(time_ms=time_ms, reason=fault.reason, quoted=fault.quoted(), counts=self.counts)

    def _accept(self, line: WireLine, time_ms: int) -> BoardEvent | None:
        self._sequence, step = follow(self._sequence, line)
        self.counts = LineCounts(
            good=self.counts.good + 1,
            faulty=self.counts.faulty,
            lost=self.counts.lost + step.lost,
            resets=self.counts.resets + step.reset,
        )
        if line.kind is Kind.HELLO:
            return self._greet(read_hello(line), time_ms)
        translate = read_data if line.kind is Kind.DATA else read_error
        return ReadingArrived(reading=translate(line, time_ms, self._hello.units), counts=self.counts)

    def _greet(self, hello: Hello, time_ms: int) -> BoardEvent | None:
        """Name the board once for each opening, and again when its hello says something new."""
        if self._named and hello == self._hello:
            return None
        self._hello, self._named = hello, True
        return BoardNamed(
            time_ms=time_ms,
            board_id=hello.board_id,
            sensor=hello.sensor,
            sensor_serial=hello.sensor_serial,
            firmware=hello.firmware,
            boots=hello.boots,
        )
