"""The overview of sealed hours: compared with the readings it sums up, and made anew from them."""

from __future__ import annotations

from collections.abc import Iterator
from sqlite3 import Connection

import numpy as np

from studiowatch.room.readings import Channel
from studiowatch.speech.words import say
from studiowatch.store.buckets import Buckets, bucket_values, coarsen, merge
from studiowatch.store.chunk_check import UNREADABLE, channel_hours, moment
from studiowatch.store.rows import CHANNELS
from studiowatch.store.sealing import BUCKETS_PER_BLOCK, LEVELS_MS, put_blocks, sealed_buckets

_STRETCH_MS = BUCKETS_PER_BLOCK * LEVELS_MS[-1]  # ms, a block of the widest level: no block of any reaches beyond
_ROUNDING = 1e-9  # of what was summed: sums in another order differ by less, by far


def pyramid_faults(connection: Connection) -> Iterator[str]:
    """Yield a sentence for each channel whose overview does not sum up its sealed hours.

    Hours that are damaged must be told and mended first: their overview cannot be compared.
    """
    for channel in CHANNELS:
        wrong = [
            first_ms
            for first_ms in _stretches(connection)
            for width_ms, expected in _levels(connection, channel, first_ms)
            if not _is_stored(connection, channel, width_ms, first_ms, expected)
        ]
        if wrong:
            yield say(
                "The overview of {channel} does not sum up its readings between {first} and {last}.",
                channel=channel,
                first=moment(min(wrong)),
                last=moment(max(wrong) + _STRETCH_MS),
            )


def rebuild_pyramid(connection: Connection) -> None:
    """Make the overview anew from all sealed hours that can be read. To be called inside a transaction."""
    connection.execute("DELETE FROM pyramid")
    for first_ms in _stretches(connection):
        for channel in CHANNELS:
            for width_ms, buckets in _levels(connection, channel, first_ms):
                put_blocks(connection, channel, width_ms, buckets)


def _stretches(connection: Connection) -> list[int]:
    """Return the beginnings of the stretches that hold a chunk or a block."""
    found = {
        start_ms // _STRETCH_MS * _STRETCH_MS
        for (start_ms,) in connection.execute("SELECT start_ms FROM chunk").fetchall()
    }
    blocks = connection.execute("SELECT DISTINCT width_ms, block FROM pyramid").fetchall()
    found |= {width_ms * block * BUCKETS_PER_BLOCK // _STRETCH_MS * _STRETCH_MS for width_ms, block in blocks}
    return sorted(found)


def _levels(connection: Connection, channel: Channel, first_ms: int) -> Iterator[tuple[int, Buckets]]:
    """Yield the width and the buckets of each level, as the hours of a stretch have them."""
    buckets = merge(
        [
            bucket_values(time_ms, values, LEVELS_MS[0])
            for time_ms, values in channel_hours(connection, channel, first_ms, first_ms + _STRETCH_MS)
        ]
    )
    width_ms = LEVELS_MS[0]
    for level_ms in LEVELS_MS:
        buckets = coarsen(buckets, level_ms // width_ms)
        width_ms = level_ms
        yield level_ms, buckets


def _is_stored(connection: Connection, channel: Channel, width_ms: int, first_ms: int, expected: Buckets) -> bool:
    try:
        stored = sealed_buckets(connection, channel, width_ms, first_ms, first_ms + _STRETCH_MS)
    except UNREADABLE:
        return False
    return _agree(stored, expected)


def _agree(stored: Buckets, expected: Buckets) -> bool:
    if not np.array_equal(stored.index, expected.index):
        return False
    same = np.array_equal(stored.low, expected.low) and np.array_equal(stored.high, expected.high)
    largest = expected.count * np.maximum(np.abs(expected.low), np.abs(expected.high))
    return bool(
        same
        and np.array_equal(stored.count, expected.count)
        and (np.abs(stored.total - expected.total) <= _ROUNDING * largest).all()
    )
