"""Reads stretches of the log for the room history, beside the writer and without holding it up."""

from __future__ import annotations

import sqlite3
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from studiowatch.room.corrections import Imported, Kept, Sighting
from studiowatch.room.readings import Channel
from studiowatch.store.buckets import Buckets, bucket_values, coarsen, merge
from studiowatch.store.calibrations import all_calibrations, all_sightings
from studiowatch.store.database import open_database
from studiowatch.store.imported import all_imported
from studiowatch.store.minutes import typed_between
from studiowatch.store.packing import Integers, Numbers
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
_VALUES_OF_ROWS = {
    channel: (
        f"SELECT time_ms, {channel}, checked = 0 FROM reading "  # noqa: S608 - names of our own enum
        f"WHERE time_ms >= ? AND time_ms < ? AND {channel} IS NOT NULL ORDER BY time_ms, id"
    )
    for channel in CHANNELS
}
Marks = NDArray[np.bool_]


@dataclass(frozen=True, slots=True, kw_only=True)
class Grid:
    """What a stretch of the log is read and shown in.

    Attributes
    ----------
    width_ms : int
        Width of a bucket that is shown, ms: a whole multiple of `step_ms`.
    step_ms : int
        Width of a bucket that is read, ms.
    first_ms, after_ms : int
        UTC ms, multiples of `width_ms`: first <= time < after.
    """

    width_ms: int
    step_ms: int
    first_ms: int
    after_ms: int

    def series(self, steps: Buckets) -> Series:
        """Return `steps`, buckets of `step_ms`, as they are shown."""
        buckets = coarsen(steps, self.width_ms // self.step_ms)
        spacing = _spacing(buckets, self.width_ms)
        buckets = coarsen(buckets, spacing)
        width_ms = self.width_ms * spacing
        return Series(
            time_ms=buckets.index * width_ms + width_ms // 2,
            low=buckets.low,
            high=buckets.high,
            mean=buckets.mean,
            bucket_ms=width_ms,
        )


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
        grid = asked_grid(start_ms, end_ms, buckets)
        return grid.series(self.buckets(channel, grid))

    def buckets(self, channel: Channel, grid: Grid) -> Buckets:
        """Return `channel` in the steps of `grid`."""
        with self._database.view() as connection:
            return merge([_sealed(connection, channel, grid), _recent(connection, channel, grid)])

    def values(self, channel: Channel, start_ms: int, end_ms: int) -> tuple[Integers, Numbers, Marks]:
        """Return times, values and which were read without a checksum, all (n,), with start <= time < end."""
        with self._database.view() as connection:
            parts = [
                (time_ms, columns[channel], checked == 0)
                for time_ms, checked, columns in sealed_columns(connection, start_ms, end_ms, (channel,))
                if channel in columns
            ]
            rows = connection.execute(_VALUES_OF_ROWS[channel], (start_ms, end_ms)).fetchall()
        times, recent, unchecked = zip(*rows, strict=True) if rows else ((),) * 3
        parts.append((integers(times), numbers(recent), np.array(unchecked, dtype=np.bool_)))
        time_ms, values, marks = zip(*parts, strict=True)
        return np.concatenate(time_ms), np.concatenate(values), np.concatenate(marks)

    def typed_ms(self, grid: Grid) -> Integers:
        """Return the times of the readings within `grid` that were typed, (n,) int64, UTC ms, rising."""
        with self._database.view() as connection:
            return integers(reading.time_ms for reading in typed_between(connection, grid.first_ms, grid.after_ms))

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


def asked_grid(start_ms: int, end_ms: int, buckets: int) -> Grid:
    """Return the grid of at most about `buckets` buckets between two times, UTC ms.

    Raises
    ------
    ValueError
        If the range is empty or `buckets` is not positive.
    """
    if end_ms <= start_ms or buckets < 1:
        given = f"{end_ms - start_ms} ms in {buckets} buckets"  # not said
        raise ValueError(f"a range of {given}; both must be more than 0")  # not said
    wanted_ms = -(-(end_ms - start_ms) // buckets)
    step_ms = _step_ms(wanted_ms)
    width_ms = -(-wanted_ms // step_ms) * step_ms
    return Grid(
        width_ms=width_ms,
        step_ms=step_ms,
        first_ms=start_ms // width_ms * width_ms,
        after_ms=-(-end_ms // width_ms) * width_ms,
    )


def _step_ms(wanted_ms: int) -> int:
    """Return the width to read: the next fine one, or else the widest of the pyramid that is not too wide."""
    if wanted_ms <= _FINE_MS[-1]:
        return min(width for width in _FINE_MS if width >= wanted_ms)
    return max(width for width in LEVELS_MS if width <= wanted_ms)


def _sealed(connection: sqlite3.Connection, channel: Channel, grid: Grid) -> Buckets:
    if grid.step_ms in LEVELS_MS:
        return sealed_buckets(connection, channel, grid.step_ms, grid.first_ms, grid.after_ms)
    return merge(
        [
            bucket_values(time_ms, columns[channel], grid.step_ms)
            for time_ms, _, columns in sealed_columns(connection, grid.first_ms, grid.after_ms, (channel,))
            if channel in columns
        ],
    )


def _recent(connection: sqlite3.Connection, channel: Channel, grid: Grid) -> Buckets:
    asked = (grid.step_ms, grid.first_ms, grid.after_ms)
    rows = connection.execute(_BUCKETS_OF_ROWS[channel], asked).fetchall()
    index, low, high, total, count = zip(*rows, strict=True) if rows else ((),) * 5
    return Buckets(
        index=integers(index),
        low=numbers(low),
        high=numbers(high),
        total=numbers(total),
        count=integers(count),
    )


def _spacing(buckets: Buckets, width_ms: int) -> int:
    """Return how many widths apart the buckets usually are: a slow board would else seem to have a gap every time."""
    if buckets.index.size < _ENOUGH_TO_TELL:
        return 1
    spacing = int(np.median(np.diff(buckets.index)))
    return spacing if spacing * width_ms <= _SLOWEST_MS else 1
