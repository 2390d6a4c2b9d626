"""A log of another logger, or an exported one, into the records: row by row, each taken, already there, or refused."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field

from studiowatch.board.room_log_cells import FaultKind
from studiowatch.board.room_log_rows import HeaderRefused, LogEvent, Remark, RowRefused, RowRepeated, RowTaken
from studiowatch.service.outfit import TakeReadings
from studiowatch.store.taking_in import Verdict

HOUR_MS = 3_600_000
AT_ONCE = 20_000  # readings in one transaction: more in an hour are split


@dataclass(slots=True)
class Summary:
    """What became of a log's rows.

    Attributes
    ----------
    taken, there, refused : int
        Rows that are new in the records, that were there already, and that could not be taken.
    reasons : Counter
        Faults of each kind; a row may have several.
    first_ms, last_ms : int or None
        Times of the first and the last reading that was taken.
    header : list of str
        What is wrong with the header; then no row was read.
    """

    taken: int = 0
    there: int = 0
    refused: int = 0
    reasons: Counter[FaultKind] = field(default_factory=Counter)
    first_ms: int | None = None
    last_ms: int | None = None
    header: list[str] = field(default_factory=list)

    def sentence(self) -> str:
        """Return the summary for her."""
        why = ", ".join(f"{kind.value}: {count}" for kind, count in self.reasons.most_common())
        refused = f"refused: {self.refused}" + (f" ({why})" if why else "")
        return f"Taken: {self.taken}; there already: {self.there}; {refused}."


@dataclass(slots=True)
class FaultTeller:
    """Tells every fault by line: those of one kind in lines that follow each other as one stretch.

    Parameters
    ----------
    tell : callable
        Called with each sentence.
    """

    origin: str
    tell: Callable[[str], None]
    _runs: dict[FaultKind, tuple[int, int]] = field(default_factory=dict)

    def fault(self, line: int, kind: FaultKind, clause: str) -> None:
        """Take a fault."""
        first, last = self._runs.get(kind, (0, 0))
        if 0 < last <= line <= last + 1:
            self._runs[kind] = (first, line)
            return
        self._end(kind)
        self.tell(f"{self.origin}, line {line}: {clause}")
        self._runs[kind] = (line, line)

    def close(self) -> None:
        """Tell what waits."""
        for kind in tuple(self._runs):
            self._end(kind)

    def _end(self, kind: FaultKind) -> None:
        first, last = self._runs.pop(kind, (0, 0))
        if last > first:
            lines = f"line {last}" if last == first + 1 else f"lines {first + 1} to {last}"
            self.tell(f"{self.origin}, {lines}: the same again ({kind.value}).")


def take_log(
    events: Iterable[LogEvent], take_in: TakeReadings, *, origin: str, now_ms: int, tell: Callable[[str], None]
) -> Iterator[Summary]:
    """Take a log into the records, and yield the summary as it stands after each hour of it; the last is whole.

    What was yielded is on disk: whoever stops half-way may import the same log again, and goes on from there.

    Raises
    ------
    StoreTrouble
        If the disk refuses; what was yielded before is on it.
    """
    taking = _Taking(take_in=take_in, now_ms=now_ms, teller=FaultTeller(origin=origin, tell=tell))
    for event in events:
        if taking.take(event):
            yield taking.summary
    taking.write()
    taking.teller.close()
    yield taking.summary


@dataclass(slots=True, kw_only=True)
class _Taking:
    """The state of one import."""

    take_in: TakeReadings
    now_ms: int
    teller: FaultTeller
    summary: Summary = field(default_factory=Summary)
    _batch: list[RowTaken] = field(default_factory=list)
    _refused_line: int = 0

    def take(self, event: LogEvent) -> bool:
        """Take one event; return whether readings were written."""
        written = False
        match event:
            case RowTaken():
                written = self._is_full(event) and self.write()
                self._batch.append(event)
            case RowRepeated():
                self.summary.there += 1
            case RowRefused():
                self._refuse(event.line, event.kind, event.clause)
            case HeaderRefused():
                self.summary.header.append(event.clause)
                self.teller.tell(f"{self.teller.origin}, line 1: {event.clause}")
            case Remark():
                comma = ", " if event.sentence.startswith("line ") else ": "
                self.teller.tell(f"{self.teller.origin}{comma}{event.sentence}")
        return written

    def write(self) -> bool:
        """Put on disk what waits; return whether anything did."""
        batch, self._batch = self._batch, []
        if not batch:
            return False
        verdicts = self.take_in([event.row.reading for event in batch], seal_before_ms=self.now_ms)
        for event, verdict in zip(batch, verdicts, strict=True):
            time_ms = event.row.reading.time_ms
            match verdict:
                case Verdict.TAKEN:
                    self.summary.taken += 1
                    self.summary.first_ms = time_ms if self.summary.first_ms is None else self.summary.first_ms
                    self.summary.last_ms = time_ms
                case Verdict.THERE:
                    self.summary.there += 1
                case Verdict.DIFFERENT:
                    clause = "the records have another reading at this time, which stays; leave one of the two."
                    self._refuse(event.line, FaultKind.SAME_TIME, clause)
        return True

    def _is_full(self, event: RowTaken) -> bool:
        """Return whether `event` belongs to another hour than what waits, or that is enough."""
        if not self._batch:
            return False
        hours = (self._batch[0].row.reading.time_ms // HOUR_MS, event.row.reading.time_ms // HOUR_MS)
        return hours[0] != hours[1] or len(self._batch) >= AT_ONCE

    def _refuse(self, line: int, kind: FaultKind, clause: str) -> None:
        self.summary.refused += line != self._refused_line
        self._refused_line = line
        self.summary.reasons[kind] += 1
        self.teller.fault(line, kind, clause)
