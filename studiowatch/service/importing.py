"""A log of another logger, or an exported one, into the records: row by row, each taken, already there, or refused."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field
from itertools import chain, pairwise

import numpy as np
from numpy.typing import NDArray

from studiowatch.board.room_log_blocks import Event, RowsTaken
from studiowatch.board.room_log_cells import FaultKind
from studiowatch.board.room_log_rows import HeaderRefused, Remark, RowRefused, RowRepeated, RowTaken
from studiowatch.room.log_columns import LogColumns, columns_of, joined
from studiowatch.service.take_readings import TakeReadings
from studiowatch.service.times_ahead import that_have_been
from studiowatch.speech.words import say
from studiowatch.store.taking_in import Verdict

HOUR_MS = 3_600_000
Lines = NDArray[np.int64]
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
        why = ", ".join(f"{say(kind.value)}: {count}" for kind, count in self.reasons.most_common())
        counts = {"taken": str(self.taken), "there": str(self.there), "refused": str(self.refused)}
        if not why:
            return say("Taken: {taken}; there already: {there}; refused: {refused}.", **counts)
        return say("Taken: {taken}; there already: {there}; refused: {refused} ({why}).", **counts, why=why)


def import_note(name: str, summary: Summary) -> str:
    """Return the fact about the log that readings came from the file `name`."""
    return say(
        "{taken} readings of {name}, raw as written there, UTC ms {first} to {last}.",
        taken=summary.taken,
        name=name,
        first=summary.first_ms,
        last=summary.last_ms,
    )


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
        self.tell(say("{origin}, line {line}: {clause}", origin=self.origin, line=line, clause=clause))
        self._runs[kind] = (line, line)

    def close(self) -> None:
        """Tell what waits."""
        for kind in tuple(self._runs):
            self._end(kind)

    def _end(self, kind: FaultKind) -> None:
        first, last = self._runs.pop(kind, (0, 0))
        if last > first:
            told = {"origin": self.origin, "first": str(first + 1), "last": str(last), "kind": say(kind.value)}
            if last == first + 1:
                self.tell(say("{origin}, line {last}: the same again ({kind}).", **told))
            else:
                self.tell(say("{origin}, lines {first} to {last}: the same again ({kind}).", **told))


def take_log(
    events: Iterable[Event], take_in: TakeReadings, *, origin: str, now_ms: int, tell: Callable[[str], None]
) -> Iterator[Summary]:
    """Take a log into the records, and yield the summary as it stands after each hour of it; the last is whole.

    Rows ahead of the clock are refused: no room was read there. What was yielded is on disk: whoever stops half-way may
    import the same log again, and goes on from there.

    Raises
    ------
    StoreTrouble
        If the disk refuses; what was yielded before is on it.
    """
    taking = _Taking(take_in=take_in, now_ms=now_ms, teller=FaultTeller(origin=origin, tell=tell))
    for event in chain.from_iterable(map(_hour_by_hour, that_have_been(events, now_ms))):
        if taking.take(event):
            yield taking.summary
    taking.write()
    taking.teller.close()
    yield taking.summary


def _hour_by_hour(event: Event) -> Iterator[Event]:
    """Yield rows of several hours as those of each, and anything else as it is."""
    if not isinstance(event, RowsTaken):
        yield event
        return
    hours = event.columns.time_ms // HOUR_MS
    for first, after in pairwise([0, *(np.flatnonzero(np.diff(hours)) + 1).tolist(), hours.size]):
        yield RowsTaken(first_line=event.first_line + first, columns=event.columns.part(first, after))


@dataclass(slots=True, kw_only=True)
class _Taking:
    """The state of one import."""

    take_in: TakeReadings
    now_ms: int
    teller: FaultTeller
    summary: Summary = field(default_factory=Summary)
    _hour: int | None = None
    _waiting: list[tuple[Lines, LogColumns]] = field(default_factory=list)
    _single: list[RowTaken] = field(default_factory=list)
    _count: int = 0
    _refused_line: int = 0

    def take(self, event: Event) -> bool:
        """Take one event; return whether readings were written."""
        written = False
        match event:
            case RowsTaken():
                written = self._take_rows(event)
            case RowTaken():
                written = self._turn_to(event.row.reading.time_ms // HOUR_MS)
                self._single.append(event)
                self._count += 1
            case RowRepeated():
                self.summary.there += 1
            case RowRefused():
                self._refuse(event.line, event.kind, event.clause)
            case HeaderRefused():
                self.summary.header.append(event.clause)
                self.teller.tell(
                    say("{origin}, line {line}: {clause}", origin=self.teller.origin, line=1, clause=event.clause)
                )
            case Remark():
                comma = ", " if event.is_of_line else ": "
                self.teller.tell(f"{self.teller.origin}{comma}{event.sentence}")
        return written

    def _take_rows(self, event: RowsTaken) -> bool:
        written = self._turn_to(int(event.columns.time_ms[0]) // HOUR_MS)
        self._gather()
        lines = np.arange(event.first_line, event.first_line + event.columns.size)
        self._waiting.append((lines, event.columns))
        self._count += event.columns.size
        return written

    def _turn_to(self, hour: int) -> bool:
        """Write what waits if it is of another hour, or enough; return whether it did."""
        written = (self._hour != hour or self._count >= AT_ONCE) and self.write()
        self._hour = hour
        return written

    def _gather(self) -> None:
        """Put the single rows that wait among the columns."""
        if self._single:
            lines = np.array([event.line for event in self._single])
            self._waiting.append((lines, columns_of([event.row.reading for event in self._single])))
            self._single = []

    def write(self) -> bool:
        """Put on disk what waits; return whether anything did."""
        self._gather()
        waiting, self._waiting, self._count = self._waiting, [], 0
        if not waiting:
            return False
        readings, lines = joined([columns for _, columns in waiting]), np.concatenate([lines for lines, _ in waiting])
        verdicts = self.take_in(readings, seal_before_ms=self.now_ms)
        taken = readings.time_ms[verdicts == Verdict.TAKEN]
        self.summary.taken += taken.size
        self.summary.there += int(np.count_nonzero(verdicts == Verdict.THERE))
        if taken.size:
            self.summary.first_ms = int(taken[0]) if self.summary.first_ms is None else self.summary.first_ms
            self.summary.last_ms = int(taken[-1])
        for line in lines[verdicts == Verdict.DIFFERENT].tolist():
            clause = say("the records have another reading at this time, which stays; leave one of the two.")
            self._refuse(line, FaultKind.SAME_TIME, clause)
        return True

    def _refuse(self, line: int, kind: FaultKind, clause: str) -> None:
        self.summary.refused += line != self._refused_line
        self._refused_line = line
        self.summary.reasons[kind] += 1
        self.teller.fault(line, kind, clause)
