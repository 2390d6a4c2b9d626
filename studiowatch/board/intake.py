"""From bytes to board events, without port, thread or clock: the parser, the numbering and the units of one board."""

from __future__ import annotations

from dataclasses import replace

from studiowatch.board.events import BoardEvent, BoardNamed, BoardTrouble, LineCounts, LineRefused, ReadingArrived
from studiowatch.board.mapping import ColumnMapping
from studiowatch.board.sequence import Sequence, follow
from studiowatch.board.translate import Hello, read_data, read_hello
from studiowatch.board.wire import Kind, LineParser, WireFault, WireLine

SETTLE_MS = 5_000  # ms after opening in which a board that it restarts may send what is no line; assumption


class Intake:
    """What one source has said so far. Counts run on over reconnections; units and numbering too.

    Opening a port restarts many boards: what their boot loader sends, and the line that the restart cut off, is no
    fault. So bytes that are no line are passed over, uncounted, until the first line comes or `SETTLE_MS` are over.

    `counts` is the tally after the last `feed`.
    """

    def __init__(self) -> None:
        self.counts = LineCounts()
        self._parser = LineParser(mid_line=True)
        self._sequence = Sequence()
        self._hello = Hello()
        self._named = False
        self._settles = True
        self._first_ms: int | None = None

    def reopened(self) -> None:
        """Forget the half line of a port that was left, let the board settle, and name it anew."""
        self._parser = LineParser(mid_line=True)
        self._named = False
        self._settles, self._first_ms = True, None

    def set_mapping(self, mapping: ColumnMapping) -> None:
        """Take no notice: checked lines say what their values are."""

    def feed(self, data: bytes, time_ms: int) -> list[BoardEvent]:
        """Return the events that `data`, read at `time_ms` (UTC ms), completes."""
        if self._first_ms is None and data:
            self._first_ms = time_ms
        found = (self._event(found, time_ms) for found in self._parser.feed(data))
        return [event for event in found if event is not None]

    def _event(self, found: WireLine | WireFault, time_ms: int) -> BoardEvent | None:
        if isinstance(found, WireLine):
            self._settles = False
            return self._accept(found, time_ms)
        if self._settles and 0 <= time_ms - (self._first_ms or 0) < SETTLE_MS:
            return None
        self.counts = replace(self.counts, faulty=self.counts.faulty + 1)
        return LineRefused(time_ms=time_ms, reason=found.reason, quoted=found.quoted(), counts=self.counts)

    def _accept(self, line: WireLine, time_ms: int) -> BoardEvent | None:
        self._sequence, step = follow(self._sequence, line)
        self.counts = LineCounts(
            good=self.counts.good + 1,
            faulty=self.counts.faulty,
            lost=self.counts.lost + step.lost,
            resets=self.counts.resets + step.reset,
            troubles=self.counts.troubles + (line.kind is Kind.ERROR),
        )
        if line.kind is Kind.HELLO:
            return self._greet(read_hello(line), time_ms)
        if line.kind is Kind.ERROR:
            said = line.fields
            return BoardTrouble(time_ms=time_ms, code=said.get("c", ""), message=said.get("m", ""), counts=self.counts)
        return ReadingArrived(reading=read_data(line, time_ms, self._hello.units), counts=self.counts)

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
