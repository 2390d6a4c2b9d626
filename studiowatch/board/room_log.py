"""Room logs (CSV): every row becomes a reading, or the log is refused with all its faults by line.

RFC 4180 with a header. Columns: ``time`` (ISO 8601 with zone) or ``time_unix`` (s), ``temperature_C``,
``humidity_pct``, ``air_speed_m_s``; optional ``air_signal_mV``, ``surface_C``, ``pressure_Pa``,
``particles_per_m3_5um``, ``cover`` (0 or 1). An empty cell is no reading.
"""

from __future__ import annotations

import csv
import statistics
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from pathlib import Path
from typing import TypeVar

from studiowatch.board.room_log_cells import CellFault, read_cover, read_time_ms, read_value
from studiowatch.room.readings import Channel, Reading

T = TypeVar("T")

SHOWN_SENTENCES = 50  # of faults or notes of one log; the rest are counted
GAP_STEPS = 5  # a step this many times the usual one is a gap: assumption
TIME_COLUMNS = ("time", "time_unix")
COVER_COLUMN = "cover"
CHANNEL_COLUMNS = tuple(channel.value for channel in Channel)
NEEDED_COLUMNS = (Channel.TEMPERATURE.value, Channel.HUMIDITY.value, Channel.AIR_SPEED.value)


class RoomLogFaults(Exception):  # noqa: N818 - these are faults of a file, listed together
    """A room log that cannot be taken as it is.

    Attributes
    ----------
    sentences : tuple of str
        One for each fault, with file, line, value and what is allowed: the first 50, and the number of the rest.
    """

    def __init__(self, sentences: tuple[str, ...]) -> None:
        super().__init__("\n".join(sentences))
        self.sentences = sentences


@dataclass(frozen=True, slots=True, kw_only=True)
class RoomRow:
    """One row: the reading, and whether the piece was under its mesh cover (None if the log does not say)."""

    reading: Reading
    cover: bool | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class RoomLog:
    """A whole log, rising in time; `notes` are sentences on gaps and on columns that are not used."""

    origin: str
    rows: tuple[RoomRow, ...]
    notes: tuple[str, ...] = ()

    def readings(self) -> tuple[Reading, ...]:
        """Return the readings alone."""
        return tuple(row.reading for row in self.rows)


def open_room_log(path: Path, columns: Mapping[str, str] | None = None) -> RoomLog:
    """Read the log in the file `path`; see `read_room_log`. Raises OSError if the file cannot be read."""
    with path.open(encoding="utf-8-sig", errors="backslashreplace", newline="") as lines:
        return read_room_log(lines, str(path), columns)


def read_room_log(lines: Iterable[str], origin: str, columns: Mapping[str, str] | None = None) -> RoomLog:
    """Read a log from its `lines`.

    Parameters
    ----------
    lines : iterable of str
        As from a file opened with ``newline=""``.
    origin : str
        What the sentences call it: the file's name.
    columns : mapping of str to str, optional
        The file's own header names to the names used here.

    Raises
    ------
    RoomLogFaults
        If anything in it is wrong. All rows are looked at first, so that all faults are told at once.
    """
    reading = _LogReading(origin, columns or {})
    reading.read(lines)
    if reading.faults:
        raise RoomLogFaults(_first_sentences(reading.faults, "more faults"))
    return RoomLog(
        origin=origin,
        rows=tuple(reading.rows),
        notes=_first_sentences([*reading.notes, *_gaps(reading.rows, reading.lines, origin)], "more notes"),
    )


class _LogReading:
    """The state of one pass over a log."""

    def __init__(self, origin: str, columns: Mapping[str, str]) -> None:
        self.origin = origin
        self.rows: list[RoomRow] = []
        self.lines: list[int] = []
        self.faults: list[str] = []
        self.notes: list[str] = []
        self._columns = columns
        self._header: list[str] | None = None

    def read(self, lines: Iterable[str]) -> None:
        for line, record in self._records(lines):
            if self._header is None:
                self._header = self._read_header(record)
                if self.faults:
                    return
            elif record:
                self._read_row(line, record, self._header)
        if self._header is None and not self.faults:
            self._fault(1, "the log is empty; its first line must be a header with the columns' names.")

    def _records(self, lines: Iterable[str]) -> Iterator[tuple[int, list[str]]]:
        """Yield each record with its first line's number; what is no CSV becomes a fault."""
        table = csv.reader(lines, strict=True)
        begins = 1
        while True:
            try:
                record = next(table)
            except StopIteration:
                return
            except csv.Error as broken:
                self._fault(begins, f"this is no CSV ({broken}); put quotes around the whole cell or leave them out.")
            else:
                yield begins, record
            begins = table.line_num + 1

    def _read_header(self, record: list[str]) -> list[str]:
        own = [name.strip().removeprefix("\ufeff") for name in record]
        names = [self._columns.get(name, name) for name in own]
        for wanted in sorted(set(self._columns) - set(own)):
            self._fault(1, f'there is no column "{wanted}" to map; the columns are {", ".join(own)}.')
        for name in sorted({name for name in names if names.count(name) > 1}):
            self._fault(1, f'the column "{name}" is there {names.count(name)} times; leave one.')
        if sum(name in TIME_COLUMNS for name in names) != 1:
            self._fault(1, "there must be one column of time: time (ISO 8601 with zone) or time_unix (s).")
        for name in NEEDED_COLUMNS:
            if name not in names:
                self._fault(1, f'the column "{name}" is missing; if it was not measured, add it with empty cells.')
        known = {*TIME_COLUMNS, COVER_COLUMN, *CHANNEL_COLUMNS}
        unused = [name for name in names if name not in known]
        if unused:
            self.notes.append(f"{self.origin}: these columns are not used: {', '.join(unused)}.")
        return names

    def _read_row(self, line: int, record: list[str], header: list[str]) -> None:
        if len(record) != len(header):
            self._fault(line, f"the row has {len(record)} cells; the header has {len(header)}.")
            return
        cells = {name: cell.strip() for name, cell in zip(header, record, strict=True)}
        time_name = next(name for name in TIME_COLUMNS if name in cells)
        time_ms = self._try(line, lambda: read_time_ms(time_name, cells[time_name]))
        values = {name: self._try(line, _value_reader(name, cells.get(name, ""))) for name in CHANNEL_COLUMNS}
        cover = self._try(line, lambda: read_cover(cells.get(COVER_COLUMN, "")))
        if time_ms is not None and self._is_later(line, time_ms, cells[time_name]):
            self.lines.append(line)
            self.rows.append(RoomRow(reading=_reading(time_ms, values), cover=cover))

    def _is_later(self, line: int, time_ms: int, text: str) -> bool:
        if not self.rows or time_ms > self.rows[-1].reading.time_ms:
            return True
        before = f"line {self.lines[-1]}"
        if time_ms == self.rows[-1].reading.time_ms:
            self._fault(line, f"time {text} is the same as in {before}; leave one of the two rows.")
        else:
            self._fault(line, f"time {text} is before that in {before}; sort the rows by time.")
        return False

    def _try(self, line: int, read: Callable[[], T]) -> T | None:
        """Return what `read` returns, or None after its fault was noted."""
        try:
            return read()
        except CellFault as fault:
            self._fault(line, str(fault))
            return None

    def _fault(self, line: int, clause: str) -> None:
        self.faults.append(f"{self.origin}, line {line}: {clause}")


def _value_reader(name: str, text: str) -> Callable[[], float | None]:
    return lambda: read_value(Channel(name), text)


def _reading(time_ms: int, values: Mapping[str, float | None]) -> Reading:
    return Reading(
        time_ms=time_ms,
        temperature_C=values[Channel.TEMPERATURE],
        humidity_pct=values[Channel.HUMIDITY],
        air_speed_m_s=values[Channel.AIR_SPEED],
        air_signal_mV=values[Channel.AIR_SIGNAL],
        surface_C=values[Channel.SURFACE],
        pressure_Pa=values[Channel.PRESSURE],
        particles_per_m3_5um=values[Channel.PARTICLES],
    )


def _gaps(rows: Sequence[RoomRow], lines: Sequence[int], origin: str) -> list[str]:
    """Return a sentence for each step that is much longer than the usual one."""
    steps_ms = [later.reading.time_ms - row.reading.time_ms for row, later in pairwise(rows)]
    if not steps_ms:
        return []
    longest_ms = GAP_STEPS * statistics.median(steps_ms)
    return [
        f"{origin}, line {line}: no reading for {step_ms / 60_000:.4g} min before this row."
        for line, step_ms in zip(lines[1:], steps_ms, strict=True)
        if step_ms > longest_ms
    ]


def _first_sentences(sentences: Sequence[str], rest: str) -> tuple[str, ...]:
    if len(sentences) <= SHOWN_SENTENCES:
        return tuple(sentences)
    return (*sentences[:SHOWN_SENTENCES], f"… and {len(sentences) - SHOWN_SENTENCES} {rest}.")
