"""Turns the rows of an hour that is over into packed columns and a pyramid of buckets, and reads them back."""

from __future__ import annotations

import json
import sqlite3
import zlib
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

import numpy as np

from studiowatch.room.readings import Channel
from studiowatch.store.buckets import Buckets, bucket_values, coarsen, merge, pack_buckets, unpack_buckets
from studiowatch.store.packing import Integers, Numbers, pack_integers, pack_numbers, unpack_integers, unpack_numbers
from studiowatch.store.rows import CHANNELS, MARKED_TYPED, READINGS_BETWEEN, integers, numbers, with_none

HOUR_MS = 3_600_000
LEVELS_MS = (10_000, 60_000, 600_000, 3_600_000, 21_600_000)  # each a whole multiple of the one before
BUCKETS_PER_BLOCK = 512
_REMEMBERED = 32  # columns of an hour: what a moving view of a few hours asks for again and again, 1 MB
_integers = lru_cache(maxsize=_REMEMBERED)(unpack_integers)
_numbers = lru_cache(maxsize=_REMEMBERED)(unpack_numbers)
_buckets = lru_cache(maxsize=_REMEMBERED)(unpack_buckets)  # a screen's width of three channels several times over

_INSERT_COLUMN = "INSERT INTO chunk_column (chunk_id, name, data) VALUES (?, ?, ?)"
# a chunk lies within one hour, so its beginning alone tells whether it can reach into the range
_COLUMNS_BETWEEN = (
    "SELECT chunk.id, name, data FROM chunk JOIN chunk_column ON chunk_id = chunk.id "
    "WHERE start_ms > ? AND start_ms < ? AND last_ms >= ? AND name IN (SELECT value FROM json_each(?)) "
    "ORDER BY start_ms, chunk.id"
)
_FAULTS_BETWEEN = (
    "SELECT start_ms, data FROM chunk JOIN chunk_column ON chunk_id = chunk.id "
    "WHERE start_ms > ? AND start_ms < ? AND last_ms >= ? AND name = 'faults'"
)
_BLOCKS_BETWEEN = (
    "SELECT data FROM pyramid WHERE channel = ? AND width_ms = ? AND block >= ? AND block <= ? ORDER BY block"
)
_PUT_BLOCK = (
    "INSERT INTO pyramid (channel, width_ms, block, data) VALUES (?, ?, ?, ?) "
    "ON CONFLICT (channel, width_ms, block) DO UPDATE SET data = excluded.data"
)


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class HourColumns:
    """Readings of one hour in the order of time, as columns of n; see `studiowatch.store.rows` for what each means.

    Attributes
    ----------
    values : mapping of Channel to (n,) float64
        NaN where nothing was read; a channel that is NaN throughout is not kept.
    """

    ids: Integers
    time_ms: Integers
    values: Mapping[Channel, Numbers]
    checked: Integers
    faults: Sequence[str | None]


def seal_hour(connection: sqlite3.Connection, hour_ms: int) -> int:
    """Move the rows of the hour that begins at `hour_ms` into a chunk and the pyramid; return how many.

    To be called inside a transaction.
    """
    end_ms = hour_ms + HOUR_MS
    rows = connection.execute(READINGS_BETWEEN, (hour_ms, end_ms)).fetchall()
    if not rows:
        return 0
    ids, times, *columns, checked, faults = zip(*rows, strict=True)
    hour = HourColumns(
        ids=integers(ids),
        time_ms=integers(times),
        values={channel: numbers(column) for channel, column in zip(CHANNELS, columns, strict=True)},
        checked=integers(checked),
        faults=faults,
    )
    seal_columns(connection, hour)
    connection.execute("DELETE FROM reading WHERE time_ms >= ? AND time_ms < ?", (hour_ms, end_ms))
    return len(rows)


def seal_columns(connection: sqlite3.Connection, hour: HourColumns) -> None:
    """Put the readings of one hour into a chunk and the pyramid; to be called inside a transaction."""
    chunk_id = connection.execute(
        "INSERT INTO chunk (start_ms, last_ms, count) VALUES (?, ?, ?)",
        (int(hour.time_ms[0]), int(hour.time_ms[-1]), hour.time_ms.size),
    ).lastrowid
    columns: list[tuple[str, bytes]] = [
        ("id", pack_integers(hour.ids)),
        ("time_ms", pack_integers(hour.time_ms)),
        ("checked", pack_integers(hour.checked)),
        ("faults", pack_texts(hour.faults)),
    ]
    for channel, column in hour.values.items():
        if not np.isnan(column).all():
            columns.append((channel, pack_numbers(column)))
            _add_to_pyramid(connection, channel, hour.time_ms, column)
    connection.executemany(_INSERT_COLUMN, [(chunk_id, name, data) for name, data in columns])


def sealed_columns(
    connection: sqlite3.Connection,
    start_ms: int,
    end_ms: int,
    channels: Sequence[Channel],
) -> Iterator[tuple[Integers, Integers, dict[Channel, Numbers]]]:
    """Yield times, checks and values of each chunk with start <= time < end; a channel never read is not there."""
    for columns in _chunks(connection, start_ms, end_ms, ("time_ms", "checked", *channels)):
        time_ms = _integers(columns["time_ms"])
        part = slice(*np.searchsorted(time_ms, [start_ms, end_ms]))
        yield (
            time_ms[part],
            _integers(columns["checked"])[part],
            {channel: _numbers(columns[channel])[part] for channel in channels if channel in columns},
        )


def sealed_rows(connection: sqlite3.Connection, start_ms: int, end_ms: int) -> Iterator[tuple[Any, ...]]:
    """Yield the sealed readings with start <= time < end in the form of `READINGS_BETWEEN`, chunk by chunk."""
    names = ("id", "time_ms", *CHANNELS, "checked", "faults")
    for columns in _chunks(connection, start_ms, end_ms, names):
        time_ms = unpack_integers(columns["time_ms"])
        nothing = [None] * time_ms.size
        values = [with_none(unpack_numbers(columns[name])) if name in columns else nothing for name in CHANNELS]
        rows = zip(
            unpack_integers(columns["id"]).tolist(),
            time_ms.tolist(),
            *values,
            unpack_integers(columns["checked"]).tolist(),
            unpack_texts(columns["faults"], time_ms.size),
            strict=True,
        )
        yield from (row for row in rows if start_ms <= row[1] < end_ms)


def sealed_typed_rows(connection: sqlite3.Connection, start_ms: int, end_ms: int) -> Iterator[tuple[Any, ...]]:
    """Yield the sealed readings that were typed with start <= time < end, as `sealed_rows` does with all."""
    found = connection.execute(_FAULTS_BETWEEN, (start_ms - HOUR_MS, end_ms, start_ms)).fetchall()
    hours = {chunk_ms // HOUR_MS for chunk_ms, data in found if _is_marked_typed(data)}
    for hour in sorted(hours):
        rows = sealed_rows(connection, max(hour * HOUR_MS, start_ms), min((hour + 1) * HOUR_MS, end_ms))
        yield from (row for row in rows if row[-1] is not None and MARKED_TYPED in row[-1])


@lru_cache(maxsize=_REMEMBERED)  # most hours hold no fault, and so the same bytes
def _is_marked_typed(faults: bytes) -> bool:
    return any(MARKED_TYPED in text for text in texts_by_place(faults).values())


def sealed_buckets(
    connection: sqlite3.Connection,
    channel: Channel,
    width_ms: int,
    start_ms: int,
    end_ms: int,
) -> Buckets:
    """Return one level of the pyramid, of the width `width_ms`, between two multiples of that width."""
    first, end = start_ms // width_ms, end_ms // width_ms
    blocks = _blocks(connection, channel, width_ms, first // BUCKETS_PER_BLOCK, end // BUCKETS_PER_BLOCK)
    return merge([_buckets(data) for data in blocks]).between(first, end)


def _blocks(connection: sqlite3.Connection, channel: Channel, width_ms: int, first: int, last: int) -> list[bytes]:
    return [data for (data,) in connection.execute(_BLOCKS_BETWEEN, (channel, width_ms, first, last))]


def _add_to_pyramid(connection: sqlite3.Connection, channel: Channel, time_ms: Integers, values: Numbers) -> None:
    buckets = bucket_values(time_ms, values, LEVELS_MS[0])
    width_ms = LEVELS_MS[0]
    for level_ms in LEVELS_MS:
        buckets = coarsen(buckets, level_ms // width_ms)
        width_ms = level_ms
        for block in np.unique(buckets.index // BUCKETS_PER_BLOCK).tolist():
            start, end = block * BUCKETS_PER_BLOCK, (block + 1) * BUCKETS_PER_BLOCK
            old = [unpack_buckets(data) for data in _blocks(connection, channel, width_ms, block, block)]
            whole = merge([*old, buckets.between(start, end)])
            connection.execute(_PUT_BLOCK, (channel, width_ms, block, pack_buckets(whole)))


def put_blocks(connection: sqlite3.Connection, channel: Channel, width_ms: int, buckets: Buckets) -> None:
    """Write `buckets` as the blocks of one level, in the place of those that are there."""
    for block in np.unique(buckets.index // BUCKETS_PER_BLOCK).tolist():
        part = buckets.between(block * BUCKETS_PER_BLOCK, (block + 1) * BUCKETS_PER_BLOCK)
        connection.execute(_PUT_BLOCK, (channel, width_ms, block, pack_buckets(part)))


def _chunks(
    connection: sqlite3.Connection,
    start_ms: int,
    end_ms: int,
    names: Sequence[str],
) -> Iterator[dict[str, bytes]]:
    found = connection.execute(
        _COLUMNS_BETWEEN,
        (start_ms - HOUR_MS, end_ms, start_ms, json.dumps(list(names))),
    ).fetchall()
    chunks: dict[int, dict[str, bytes]] = {}
    for chunk_id, name, data in found:
        chunks.setdefault(chunk_id, {})[name] = data
    yield from chunks.values()


def pack_texts(texts: Sequence[str | None]) -> bytes:
    """Return a column of texts, most of them None, as bytes."""
    kept = [[at, text] for at, text in enumerate(texts) if text is not None]
    return zlib.compress(json.dumps(kept).encode())


def unpack_texts(data: bytes, count: int) -> list[str | None]:
    """Return what `pack_texts` was given."""
    return list(map(texts_by_place(data).get, range(count)))


def texts_by_place(data: bytes) -> dict[int, str]:
    """Return the texts that `pack_texts` was given, by their places."""
    return dict(json.loads(zlib.decompress(data)))
