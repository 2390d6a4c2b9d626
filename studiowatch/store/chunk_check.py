"""Looks into sealed hours one column at a time, so that one that is damaged does not hide the others."""

from __future__ import annotations

import struct
import zlib
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime
from sqlite3 import Connection

import numpy as np

from studiowatch.room.readings import Channel
from studiowatch.speech.words import say
from studiowatch.store.packing import Integers, Numbers, unpack_integers, unpack_numbers
from studiowatch.store.rows import CHANNELS
from studiowatch.store.sealing import HOUR_MS, unpack_texts

TIME, MARKS, TEXTS = "time_ms", ("id", "checked"), "faults"
UNREADABLE = (
    zlib.error,
    struct.error,
    ValueError,
    TypeError,
    IndexError,
)  # what unpacking raises on bytes that are damaged


@dataclass(frozen=True, slots=True, kw_only=True)
class SealedHour:
    """One chunk, as far as it can be read.

    Attributes
    ----------
    time_ms : (n,) int64 or None
        None if the times are lost, and the hour with them.
    values : mapping of Channel to (n,) float64
        The channels that can be read.
    damaged : tuple of str
        Names of columns that cannot, or that are not there and must be.
    """

    chunk_id: int
    start_ms: int
    last_ms: int
    count: int
    time_ms: Integers | None
    values: dict[Channel, Numbers]
    damaged: tuple[str, ...]

    @property
    def span(self) -> str:
        """Return from when to when, for her."""
        return say("{first} to {last}", first=moment(self.start_ms), last=moment(self.last_ms))


def moment(time_ms: int) -> str:
    """Return a time in UTC to the second; one that no calendar has, as a damaged file may, as its number."""
    try:
        return datetime.fromtimestamp(time_ms / 1000, UTC).strftime("%Y-%m-%dT%H:%M:%SZ")
    except (ValueError, OverflowError, OSError):  # beyond the year 9999, and what the system makes of it
        return f"{time_ms} ms"


def times_of(data: bytes) -> Integers | None:
    """Return the times of a chunk whatever its head says, rising and of one hour, or None if they are lost."""
    try:
        time_ms = unpack_integers(data)
    except UNREADABLE:
        return None
    return time_ms if time_ms.size and _are_times(time_ms, int(time_ms[0]), int(time_ms[-1])) else None


def sealed_hours(connection: Connection) -> Iterator[SealedHour]:
    """Yield all chunks in the order of time, one at a time."""
    chunks = connection.execute("SELECT id, start_ms, last_ms, count FROM chunk ORDER BY start_ms, id").fetchall()
    for chunk in chunks:
        columns = dict(
            connection.execute("SELECT name, data FROM chunk_column WHERE chunk_id = ?", (chunk[0],)).fetchall()
        )
        yield _look_into(chunk, columns)


def channel_hours(
    connection: Connection, channel: Channel, start_ms: int, end_ms: int
) -> Iterator[tuple[Integers, Numbers]]:
    """Yield times and values of one channel for each chunk that begins in a range and can be read, in order of time."""
    chunks = connection.execute(
        "SELECT times.data, column.data, start_ms, last_ms, count FROM chunk "
        "JOIN chunk_column AS times ON times.chunk_id = chunk.id AND times.name = ? "
        "JOIN chunk_column AS column ON column.chunk_id = chunk.id AND column.name = ? "
        "WHERE start_ms >= ? AND start_ms < ? ORDER BY start_ms, chunk.id",
        (TIME, channel, start_ms, end_ms),
    ).fetchall()
    for times, column, first_ms, last_ms, count in chunks:
        time_ms, values = _integers(times, count), _numbers(column, count)
        if time_ms is not None and values is not None and _are_times(time_ms, first_ms, last_ms):
            yield time_ms, values


def _look_into(chunk: tuple[int, int, int, int], columns: dict[str, bytes]) -> SealedHour:
    chunk_id, start_ms, last_ms, count = chunk
    damaged = [name for name in (TIME, *MARKS, TEXTS) if name not in columns]
    time_ms = _integers(columns.get(TIME, b""), count)
    if time_ms is None or not _are_times(time_ms, start_ms, last_ms):
        time_ms, damaged = None, [*damaged, TIME]
    damaged += [name for name in MARKS if _integers(columns.get(name, b""), count) is None]
    damaged += [] if _are_texts(columns.get(TEXTS, b""), count) else [TEXTS]
    values = {channel: _numbers(columns[channel], count) for channel in CHANNELS if channel in columns}
    damaged += [channel.value for channel, column in values.items() if column is None]
    return SealedHour(
        chunk_id=chunk_id,
        start_ms=start_ms,
        last_ms=last_ms,
        count=count,
        time_ms=time_ms,
        values={channel: column for channel, column in values.items() if column is not None},
        damaged=tuple(dict.fromkeys(damaged)),
    )


def _integers(data: bytes, count: int) -> Integers | None:
    try:
        values = unpack_integers(data)
    except UNREADABLE:
        return None
    return values if values.size == count else None


def _numbers(data: bytes, count: int) -> Numbers | None:
    try:
        values = unpack_numbers(data)
    except UNREADABLE:
        return None
    return values if values.size == count else None


def _are_texts(data: bytes, count: int) -> bool:
    try:
        unpack_texts(data, count)
    except UNREADABLE:
        return False
    return True


def _are_times(time_ms: Integers, start_ms: int, last_ms: int) -> bool:
    is_one_hour = start_ms // HOUR_MS == last_ms // HOUR_MS
    return bool(
        time_ms.size
        and time_ms[0] == start_ms
        and time_ms[-1] == last_ms
        and is_one_hour
        and (np.diff(time_ms) >= 0).all()
    )
