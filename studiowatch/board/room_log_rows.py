"""A room log row by row, in constant memory: each row is taken, refused with its faults, or a repetition."""

from __future__ import annotations

import csv
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from itertools import chain
from typing import TypeVar

from studiowatch.board.room_log_cells import CellFault, FaultKind, read_cover
from studiowatch.board.room_log_gaps import GapFinder
from studiowatch.board.room_log_header import Layout, LogForm, header_faults, layout_of, names_of, separator_of, unused
from studiowatch.room.readings import Channel, Reading

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
    """Something to know that is no fault: a sentence without the log's name."""

    sentence: str


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
    lines = iter(lines)
    first = next(lines, "")
    separator = separator_of(first)
    records = _records(chain([first] if first else [], lines), separator)
    header = next(records, None)
    if header is None:
        yield HeaderRefused(clause="the log is empty; its first line must be a header with the columns' names.")
        return
    if isinstance(header, RowRefused):
        yield HeaderRefused(clause=header.clause)
        return
    clauses = list(header_faults(header[1], form))
    if clauses:
        yield from (HeaderRefused(clause=clause) for clause in clauses)
        return
    names = names_of(header[1], form)
    if left := unused(names):
        yield Remark(sentence=f"these columns are not used: {', '.join(left)}.")
    layout = layout_of(names, form, decimal_comma=separator != ",")
    yield from _Pass(layout).read(records)


def _records(lines: Iterable[str], separator: str) -> Iterator[tuple[int, list[str]] | RowRefused]:
    """Yield each record with its first line's number; what is no CSV is refused."""
    table = csv.reader(lines, strict=True, delimiter=separator)
    begins = 1
    while True:
        try:
            record = next(table)
        except StopIteration:
            return
        except csv.Error as broken:
            clause = f"this is no CSV ({broken}); put quotes around the whole cell or leave them out."
            yield RowRefused(line=begins, kind=FaultKind.CSV, clause=clause)
        else:
            yield begins, record
        begins = table.line_num + 1


class _Pass:
    """The state of one pass over the rows."""

    def __init__(self, layout: Layout) -> None:
        self._layout = layout
        self._gaps = GapFinder()
        self._last: RoomRow | None = None
        self._last_line = 0
        self._doubt = ""

    def read(self, records: Iterable[tuple[int, list[str]] | RowRefused]) -> Iterator[LogEvent]:
        rows = 0
        for record in records:
            if isinstance(record, RowRefused):
                rows += 1
                yield record
            elif record[1]:
                rows += 1
                yield from self._row(*record)
        yield from (Remark(sentence=sentence) for sentence in self._gaps.judge())
        if not rows:
            yield Remark(sentence="the log has a header and no rows.")

    def _row(self, line: int, cells: list[str]) -> Iterator[LogEvent]:
        layout = self._layout
        if len(cells) != layout.width:
            clause = f"the row has {len(cells)} cells; the header has {layout.width}."
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
            yield from self._in_order(line, written, row, time[1], good=not faults)

    def _in_order(self, line: int, written: str, row: RoomRow, doubt: str, *, good: bool) -> Iterator[LogEvent]:
        last, before = self._last, f"line {self._last_line}"
        if last is not None and row.reading.time_ms < last.reading.time_ms:
            clause = f"time {written} is before that in {before}; sort the rows by time."
            yield RowRefused(line=line, kind=FaultKind.ORDER, clause=clause)
            return
        if last is not None and row.reading.time_ms == last.reading.time_ms:
            if good and row == last:
                yield RowRepeated(line=line, first_line=self._last_line, time=written)
                return
            clause = f"time {written} is the same as in {before}; leave one of the two rows."
            yield RowRefused(line=line, kind=FaultKind.SAME_TIME, clause=clause)
            return
        if doubt and doubt[-6:] != self._doubt[-6:]:  # once for each run of such times, not for each of them
            yield Remark(sentence=f"line {line}: {doubt}.")
        self._doubt = doubt
        if last is not None:
            gaps = self._gaps.take(line, row.reading.time_ms - last.reading.time_ms)
            yield from (Remark(sentence=sentence) for sentence in gaps)
        self._last, self._last_line = row, line
        if good:
            yield RowTaken(line=line, row=row)


def _try(faults: list[RowRefused], line: int, read: Callable[[], T]) -> T | None:
    """Return what `read` returns, or None after its fault was noted."""
    try:
        return read()
    except CellFault as fault:
        faults.append(RowRefused(line=line, kind=fault.kind, clause=str(fault)))
        return None


def _reading(time_ms: int, values: dict[Channel, float | None]) -> Reading:
    return Reading(time_ms=time_ms, **{channel.value: value for channel, value in values.items()})  # type: ignore[arg-type]
