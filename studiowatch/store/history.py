"""Reads stretches of the log for the room history, beside the writer and without holding it up."""

from __future__ import annotations

import sqlite3
from collections.abc import Sequence
from pathlib import Path

import numpy as np

from studiowatch.room.corrections import Imported, Kept, Sighting
from studiowatch.room.readings import Channel
from studiowatch.store.buckets import Buckets, bucket_values, coarsen, merge
from studiowatch.store.calibrations import all_calibrations, all_sightings
from studiowatch.store.database import open_database
from studiowatch.store.imported import all_imported
from studiowatch.store.past import Past, PastReader
from studiowatch.store.rows import CHANNELS, integers, numbers
from studiowatch.store.sealing import LEVELS_MS, sealed_buckets, sealed_columns
from studiowatch.store.shapes import Series

_FINE_MS = (1_000, 2_000, 5_000, LEVELS_MS[0])  # ms, from one bucket per reading at 1 Hz up to the pyramid's lowest
_SLOWEST_MS = 600_000  # ms, assumption: a log with longer pauses has gaps, not a slow board
_ENOUGH_TO_TELL = 8  # buckets, assumption: fewer say nothing about the spacing
SPAN = (
    "SELECT min(first), max(last) FROM ("
    "SELECT min(time_ms) AS first, max(time_ms) AS last FROM reading "
    "UNION ALL SELECT min(start_ms), max(last_ms) FROM chunk)"
)
_BUCKETS_OF_ROWS = {
    channel: (
        f"SELECT time_ms / ?, min({channel}), max({channel}), sum({channel}), count({channel}) "  # noqa: S608 - our enum
        f"FROM reading WHERE time_ms >= ? AND time_ms < ? AND {channel} IS NOT NULL GROUP BY 1"
    )
    for channel in CHANNELS
}


class HistoryReader:
    """The log at `path`, through a connection of its own that cannot write. For one thread at a time.

    Raises
    ------
    StoreRefused
        If there is no file yet, or it is not ours.
    """

    def __init__(self, path: Path) -> None:
        self._database = open_database(path, read_only=True)
        self._past = PastReader(self._database)

    def past(self) -> Past:
        """Return what her records hold of the time behind; the same value until they change."""
        return self._past.read()

    def span_ms(self) -> tuple[int, int] | None:
        """Return the times of the first and the last reading, UTC ms, or None if there is none."""
        ((first_ms, last_ms),) = self._database.rows(SPAN)
        return None if first_ms is None else (first_ms, last_ms)

    def series(self, channel: Channel, start_ms: int, end_ms: int, buckets: int) -> Series:
        """Return `channel` between two times in at most about `buckets` buckets.

        Buckets begin at multiples of their width since 1970, so that they stand still while the view moves; the first
        and the last may reach beyond the range. They are as wide as the usual spacing of a slow log, if that is wider.

        Raises
        ------
        ValueError
            If the range is empty or `buckets` is not positive.
        """
        if end_ms <= start_ms or buckets < 1:
            given = f"{end_ms - start_ms} ms in {buckets} buckets"  # not said
            raise ValueError(f"a range of {given}; both must be more than 0")  # not said
        wanted_ms = -(-(end_ms - start_ms) // buckets)
        base_ms = _base_ms(wanted_ms)
        width_ms = -(-wanted_ms // base_ms) * base_ms
        first_ms = start_ms // width_ms * width_ms
        after_ms = -(-end_ms // width_ms) * width_ms
        with self._database.view() as connection:
            sealed = _sealed(connection, channel, base_ms, first_ms, after_ms)
            recent = _recent(connection, channel, base_ms, first_ms, after_ms)
        return _series(coarsen(merge([sealed, recent]), width_ms // base_ms), width_ms)

    def calibrations(self) -> Sequence[Kept]:
        """Return all calibrations, withdrawn ones too."""
        return all_calibrations(self._database)

    def sightings(self) -> Sequence[Sighting]:
        """Return which sensor was on from when."""
        return all_sightings(self._database)

    def imported(self) -> Sequence[Imported]:
        """Return which stretches of the log came from outside."""
        return all_imported(self._database)

    def close(self) -> None:
        """Let go of the file."""
        self._database.close()


def _base_ms(wanted_ms: int) -> int:
    """Return the width to read: the next fine one, or else the widest of the pyramid that is not too wide."""
    if wanted_ms <= _FINE_MS[-1]:
        return min(width for width in _FINE_MS if width >= wanted_ms)
    return max(width for width in LEVELS_MS if width <= wanted_ms)


def _sealed(connection: sqlite3.Connection, channel: Channel, base_ms: int, first_ms: int, after_ms: int) -> Buckets:
    if base_ms in LEVELS_MS:
        return sealed_buckets(connection, channel, base_ms, first_ms, after_ms)
    return merge(
        [
            bucket_values(time_ms, columns[channel], base_ms)
            for time_ms, _, columns in sealed_columns(connection, first_ms, after_ms, (channel,))
            if channel in columns
        ],
    )


def _recent(connection: sqlite3.Connection, channel: Channel, base_ms: int, first_ms: int, after_ms: int) -> Buckets:
    rows = connection.execute(_BUCKETS_OF_ROWS[channel], (base_ms, first_ms, after_ms)).fetchall()
    index, low, high, total, count = zip(*rows, strict=True) if rows else ((),) * 5
    return Buckets(
        index=integers(index),
        low=numbers(low),
        high=numbers(high),
        total=numbers(total),
        count=integers(count),
    )


def _series(buckets: Buckets, width_ms: int) -> Series:
    spacing = _spacing(buckets, width_ms)
    buckets = coarsen(buckets, spacing)
    width_ms *= spacing
    return Series(
        time_ms=buckets.index * width_ms + width_ms // 2,
        low=buckets.low,
        high=buckets.high,
        mean=buckets.total / buckets.count,
        bucket_ms=width_ms,
    )


def _spacing(buckets: Buckets, width_ms: int) -> int:
    """Return how many widths apart the buckets usually are: a slow board would else seem to have a gap every time."""
    if buckets.index.size < _ENOUGH_TO_TELL:
        return 1
    spacing = int(np.median(np.diff(buckets.index)))
    return spacing if spacing * width_ms <= _SLOWEST_MS else 1
