"""A room log in blocks of rows: a block without anything to tell is read as columns, any other row by row.

A block passes only if each of its rows would be taken as it stands; then nothing is lost by reading it as columns.
Each cell is read by the same function as always, and once for each text: a sensor prints the same few hundred again and
again.
"""

from __future__ import annotations

import csv
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import Generic, TypeVar

import numpy as np
from numpy.typing import NDArray

from studiowatch.board.room_log_cells import CellFault, read_cover
from studiowatch.board.room_log_header import Layout, LogForm
from studiowatch.board.room_log_rows import (
    LogEvent,
    Opened,
    Remark,
    RoomRow,
    RowPass,
    RowRefused,
    not_csv,
    opened,
)
from studiowatch.board.room_log_times import iso_times_ms
from studiowatch.room.log_columns import LogColumns
from studiowatch.room.readings import Reading

ROWS = 2048  # in a block: more takes no less time for each
REMEMBERED = 20_000  # texts of a column; more are forgotten, so that a log of any length takes the same memory
T = TypeVar("T")


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class RowsTaken:
    """Rows that are readings, in lines that follow each other, each later than all before it."""

    first_line: int
    columns: LogColumns


Event = LogEvent | RowsTaken


def log_blocks(lines: Iterable[str], form: LogForm) -> Iterator[Event]:
    """Yield what is in a log, in its order, as `log_events` does, and rows that are nothing but readings as columns.

    Parameters
    ----------
    lines : iterable of str
        As from a file opened with ``newline=""``.
    form : LogForm
        How it is to be read.
    """
    log = opened(lines, form)
    yield from log.events
    if log.layout is not None:
        yield from _Blocks(log, log.layout).read()


class _Texts(dict[str, T], Generic[T]):
    """What the texts of a column are read as, each read once."""

    def __init__(self, read: Callable[[str], T]) -> None:
        super().__init__()
        self._read = read

    def __missing__(self, text: str) -> T:
        if len(self) >= REMEMBERED:
            self.clear()
        value = self._read(text.strip())
        self[text] = value
        return value


class _Blocks:
    """The state of one pass."""

    def __init__(self, log: Opened, layout: Layout) -> None:
        self._table = log.table
        self._layout = layout
        self._rows = RowPass(layout)
        self._values = [(at, channel, _Texts(_number(read))) for at, channel, read in layout.values]
        self._cover = _Texts(read_cover)

    def read(self) -> Iterator[Event]:
        while records := self._next_records():
            block = self._block(records)
            if block is None:
                for record in records:
                    yield from self._rows.record(record)
                continue
            yield from (Remark(sentence=sentence, is_of_line=True) for sentence in self._absorbed(block, records))
            yield block
        yield from self._rows.end()

    def _next_records(self) -> list[tuple[int, list[str]] | RowRefused]:
        records: list[tuple[int, list[str]] | RowRefused] = []
        table, begins = self._table, self._table.line_num + 1
        while len(records) < ROWS:
            try:
                record = next(table)
            except StopIteration:
                break
            except csv.Error as broken:
                records.append(not_csv(begins, broken))
            else:
                records.append((begins, record))
            begins = table.line_num + 1
        return records

    def _block(self, records: Sequence[tuple[int, list[str]] | RowRefused]) -> RowsTaken | None:
        """Return the rows as columns, or None if there is anything about them to be told."""
        plain = [record for record in records if not isinstance(record, RowRefused)]
        first_line = plain[0][0] if plain else 0
        width = self._layout.width
        if len(plain) < len(records) or any(len(cells) != width for _, cells in plain):
            return None
        if plain[-1][0] - first_line != len(plain) - 1:
            return None  # a cell of several lines
        cells = list(zip(*(row for _, row in plain), strict=True))
        try:
            times_ms = self._times_ms(cells[self._layout.time_at])
            values = {
                channel: np.array([texts[text] for text in cells[at]], dtype=np.float64)
                for at, channel, texts in self._values
            }
            if self._layout.cover_at is not None:
                for text in cells[self._layout.cover_at]:
                    self._cover[text]
        except CellFault:
            return None
        if times_ms is None:
            return None
        return RowsTaken(first_line=first_line, columns=LogColumns(time_ms=times_ms, values=values))

    def _times_ms(self, texts: Sequence[str]) -> NDArray[np.int64] | None:
        """Return the times of a block, or None if they do not rise or there is a doubt about one."""
        before_ms = self._rows.last_ms
        times_ms = iso_times_ms(texts) if self._layout.is_iso else None
        if times_ms is None:
            times_ms = self._one_by_one(texts, before_ms)
        if times_ms is None or (np.diff(times_ms) <= 0).any():
            return None
        return times_ms if before_ms is None or times_ms[0] > before_ms else None

    def _one_by_one(self, texts: Sequence[str], before_ms: int | None) -> NDArray[np.int64] | None:
        times_ms = []
        for text in texts:
            time_ms, doubt = self._layout.read_time(text.strip(), before_ms)
            if doubt:
                return None
            before_ms = time_ms
            times_ms.append(time_ms)
        return np.array(times_ms, dtype=np.int64)

    def _absorbed(self, block: RowsTaken, records: Sequence[tuple[int, list[str]] | RowRefused]) -> Iterator[str]:
        """Take the block into the state of the pass, and yield what there is to say of gaps."""
        columns, last = block.columns, records[-1]
        values = {channel.value: float(column[-1]) for channel, column in columns.values.items()}
        reading = Reading(
            time_ms=int(columns.time_ms[-1]),
            **{name: None if np.isnan(value) else value for name, value in values.items()},  # type: ignore[arg-type]
        )
        cover = None
        if self._layout.cover_at is not None and not isinstance(last, RowRefused):
            cover = self._cover[last[1][self._layout.cover_at]]
        return self._rows.absorb(RoomRow(reading=reading, cover=cover), block.first_line, columns.time_ms)


def _number(read: Callable[[str], float | None]) -> Callable[[str], float]:
    def number(text: str) -> float:
        value = read(text)
        return np.nan if value is None else value

    return number
