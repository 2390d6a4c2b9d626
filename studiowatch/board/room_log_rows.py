"""A room log row by row, in constant memory: each row is taken, refused with its faults, or a repetition."""

from __future__ import annotations

import csv
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from itertools import chain
from typing import Protocol, TypeVar

import numpy as np
from numpy.typing import NDArray

from studiowatch.board.room_log_cells import CellFault, FaultKind, listed, read_cover, shown
from studiowatch.board.room_log_gaps import GapFinder
from studiowatch.board.room_log_header import Layout, LogForm, header_faults, layout_of, names_of, separator_of, unused
from studiowatch.room.readings import Channel, Reading
from studiowatch.speech.words import say

T = TypeVar("T")


@dataclass(frozen=True, slots=True, kw_only=True)
class RoomRow:
    """One row: the reading, and whether the piece was under its mesh cover (None if the log does not say)."""

    reading: Reading
    cover: bool | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class RowTaken:
    """A row that is a reading, later than all taken before it."""

    line: int
    row: RoomRow


@dataclass(frozen=True, slots=True, kw_only=True)
class RowRepeated:
    """A row with the time and the values of the one taken before it, in `first_line`."""

    line: int
    first_line: int
    time: str


@dataclass(frozen=True, slots=True, kw_only=True)
class RowRefused:
    """One fault of a row; a row may have several. `clause` ends its sentence."""

    line: int
    kind: FaultKind
    clause: str


@dataclass(frozen=True, slots=True, kw_only=True)
class HeaderRefused:
    """One fault of the header, or that there is none: no row is read."""

    clause: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Remark:
    """Something to know that is no fault: a sentence without the log's name.

    Attributes
    ----------
    is_of_line : bool
        Whether it begins with the line that it is about.
    """

    sentence: str
    is_of_line: bool = False


LogEvent = RowTaken | RowRepeated | RowRefused | HeaderRefused | Remark


def log_events(lines: Iterable[str], form: LogForm) -> Iterator[LogEvent]:
    """Yield what is in a log, in its order.

    Parameters
    ----------
    lines : iterable of str
        As from a file opened with ``newline=""``.
    form : LogForm
        How it is to be read.
    """
    log = opened(lines, form)
    yield from log.events
    if log.layout is None:
        return
    rows = RowPass(log.layout)
    for record in _records(log.table):
        yield from rows.record(record)
    yield from rows.end()


@dataclass(frozen=True, slots=True, kw_only=True)
class Opened:
    """A log whose header was read.

    Attributes
    ----------
    events : tuple of LogEvent
        What there is to say of the header.
    layout : Layout or None
        What it says; None if it is wrong, and then no row is read.
    table : CSV reader
        Before the first row.
    """

    events: tuple[LogEvent, ...]
    layout: Layout | None
    table: Table


class Table(Protocol):
    """The CSV library's reader, which has no name of its own."""

    @property
    def line_num(self) -> int:
        """The last line that was read."""
        ...

    def __next__(self) -> list[str]: ...


def opened(lines: Iterable[str], form: LogForm) -> Opened:
    """Read the header of a log."""
    lines = iter(lines)
    first = next(lines, "")
    separator = separator_of(first)
    table = csv.reader(chain([first] if first else [], lines), strict=True, delimiter=separator)
    header = next(_records(table), None)
    if header is None:
        clause = say("the log is empty; its first line must be a header with the columns' names.")
        return Opened(events=(HeaderRefused(clause=clause),), layout=None, table=table)
    clauses = [header.clause] if isinstance(header, RowRefused) else list(header_faults(header[1], form))
    if clauses or isinstance(header, RowRefused):
        return Opened(events=tuple(HeaderRefused(clause=clause) for clause in clauses), layout=None, table=table)
    names = names_of(header[1], form)
    left = unused(names)
    told = (Remark(sentence=say("these columns are not used: {columns}.", columns=listed(left))),) if left else ()
    return Opened(events=told, layout=layout_of(names, form, decimal_comma=separator != ","), table=table)


def not_csv(line: int, broken: csv.Error) -> RowRefused:
    """Return the fault of a record that is no CSV."""
    clause = say("this is no CSV ({fault}); put quotes around the whole cell or leave them out.", fault=broken)
    return RowRefused(line=line, kind=FaultKind.CSV, clause=clause)


def _records(table: Table) -> Iterator[tuple[int, list[str]] | RowRefused]:
    """Yield each record with its first line's number; what is no CSV is refused."""
    begins = table.line_num + 1
    while True:
        try:
            record = next(table)
        except StopIteration:
            return
        except csv.Error as broken:
            yield not_csv(begins, broken)
        else:
            yield begins, record
        begins = table.line_num + 1


class RowPass:
    """The state of one pass over the rows."""

    def __init__(self, layout: Layout) -> None:
        self._layout = layout
        self._gaps = GapFinder()
        self._last: RoomRow | None = None
        self._last_line = 0
        self._doubt = ""
        self._any = False

    @property
    def last_ms(self) -> int | None:
        """The time of the last row whose time could be read, UTC ms; None before the first."""
        return self._last.reading.time_ms if self._last else None

    def record(self, record: tuple[int, list[str]] | RowRefused) -> Iterator[LogEvent]:
        """Take one record, and yield what it is."""
        if isinstance(record, RowRefused):
            self._any = True
            yield record
        elif record[1]:
            self._any = True
            yield from self._row(*record)

    def absorb(self, last: RoomRow, first_line: int, time_ms: NDArray[np.int64]) -> Iterator[str]:
        """Take rows that are readings, rising in time in lines that follow each other, the last of which is `last`.

        Yields what there is to say of gaps.
        """
        self._any = True
        before_ms, count = self.last_ms, time_ms.size
        self._last, self._last_line, self._doubt = last, first_line + count - 1, ""
        lines = np.arange(first_line, first_line + count)
        if before_ms is not None:
            return self._gaps.take_many(lines, np.diff(time_ms, prepend=before_ms))
        return self._gaps.take_many(lines[1:], np.diff(time_ms))

    def end(self) -> Iterator[LogEvent]:
        """Yield what is left to say after the last record."""
        yield from (Remark(sentence=sentence, is_of_line=True) for sentence in self._gaps.judge())
        if not self._any:
            yield Remark(sentence=say("the log has a header and no rows."))

    def _row(self, line: int, cells: list[str]) -> Iterator[LogEvent]:
        layout = self._layout
        if len(cells) != layout.width:
            clause = say("the row has {found} cells; the header has {usual}.", found=len(cells), usual=layout.width)
            yield RowRefused(line=line, kind=FaultKind.CELLS, clause=clause)
            return
        faults: list[RowRefused] = []
        before_ms = self._last.reading.time_ms if self._last else None
        written = cells[layout.time_at].strip()
        time = _try(faults, line, lambda: layout.read_time(written, before_ms))
        values: dict[Channel, float | None] = {}
        for at, channel, read in layout.values:
            text = cells[at].strip()
            if text:
                values[channel] = _try(faults, line, lambda read=read, text=text: read(text))  # type: ignore[misc]
        cover = None
        if layout.cover_at is not None:
            covered = cells[layout.cover_at].strip()
            cover = _try(faults, line, lambda: read_cover(covered))
        yield from faults
        if time is not None:
            row = RoomRow(reading=_reading(time[0], values), cover=cover)
            yield from self._in_order(line, shown(written), row, time[1], good=not faults)

    def _in_order(self, line: int, written: str, row: RoomRow, doubt: str, *, good: bool) -> Iterator[LogEvent]:
        last = self._last
        if last is not None and row.reading.time_ms < last.reading.time_ms:
            clause = say(
                "time {time} is before that in line {line}; sort the rows by time.", time=written, line=self._last_line
            )
            yield RowRefused(line=line, kind=FaultKind.ORDER, clause=clause)
            return
        if last is not None and row.reading.time_ms == last.reading.time_ms:
            if good and row == last:
                yield RowRepeated(line=line, first_line=self._last_line, time=written)
                return
            clause = same_time(written, self._last_line)
            yield RowRefused(line=line, kind=FaultKind.SAME_TIME, clause=clause)
            return
        if doubt and doubt[-6:] != self._doubt[-6:]:  # once for each run of such times, not for each of them
            yield Remark(sentence=say("line {line}: {doubt}.", line=line, doubt=doubt), is_of_line=True)
        self._doubt = doubt
        if last is not None:
            gaps = self._gaps.take(line, row.reading.time_ms - last.reading.time_ms)
            yield from (Remark(sentence=sentence, is_of_line=True) for sentence in gaps)
        self._last, self._last_line = row, line
        if good:
            yield RowTaken(line=line, row=row)


def same_time(time: str, line: int) -> str:
    """Return the clause on a row whose time, as written, an earlier `line` has too."""
    return say("time {time} is the same as in line {line}; leave one of the two rows.", time=time, line=line)


def _try(faults: list[RowRefused], line: int, read: Callable[[], T]) -> T | None:
    """Return what `read` returns, or None after its fault was noted."""
    try:
        return read()
    except CellFault as fault:
        faults.append(RowRefused(line=line, kind=fault.kind, clause=str(fault)))
        return None


def _reading(time_ms: int, values: dict[Channel, float | None]) -> Reading:
    return Reading(time_ms=time_ms, **{channel.value: value for channel, value in values.items()})  # type: ignore[arg-type]
