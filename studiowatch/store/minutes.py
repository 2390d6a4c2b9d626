"""Means of each minute, summed where the readings lie: by the database for rows, in arrays for sealed hours.

Typed readings are no part of a mean: they are few, and each holds until the next. Of air speed is summed what it
carries off: see `physics.air.carried`.
"""

from __future__ import annotations

import sqlite3
from typing import Any

import numpy as np

from studiowatch.physics.air import carried, speed_that_carries
from studiowatch.room.readings import Channel, Reading
from studiowatch.room.typed import is_typed
from studiowatch.store.packing import Integers, Numbers
from studiowatch.store.rows import CHANNELS, MARKED_TYPED, TYPED_BETWEEN, reading_of
from studiowatch.store.sealing import sealed_columns, sealed_typed_rows

_MINUTE_MS = 60_000
# a row of sums: minute, lines without a checksum, then sum and count of each channel
_SUMS_OF_ROWS = (
    f"SELECT time_ms / {_MINUTE_MS}, sum(checked = 0), "  # noqa: S608 - names of our own enum
    + ", ".join(
        f"total({'carried(' + channel + ')' if channel is Channel.AIR_SPEED else channel}), count({channel})"
        for channel in CHANNELS
    )
    + " FROM reading WHERE time_ms >= ? AND time_ms < ? GROUP BY 1"
)
_WIDTH = 2 + 2 * len(CHANNELS)


def minute_means(connection: sqlite3.Connection, start_ms: int, end_ms: int) -> list[Reading]:
    """Return one reading per minute that has any with start <= time < end, at the minute's middle, rising.

    Typed ones are left out of the means and stand among them as they are.
    """
    typed = typed_between(connection, start_ms, end_ms)
    rows = connection.execute(_SUMS_OF_ROWS, (start_ms, end_ms)).fetchall()
    parts = [np.array(rows, dtype=np.float64).reshape(-1, _WIDTH)]
    parts += [
        _sums_of_chunk(time_ms, checked, columns)
        for time_ms, checked, columns in sealed_columns(connection, start_ms, end_ms, CHANNELS)
    ]
    parts += [_less(reading) for reading in typed]
    every = np.concatenate(parts)
    minutes, where = np.unique(every[:, 0], return_inverse=True)
    sums = np.zeros((minutes.size, _WIDTH))
    np.add.at(sums, where, every)
    sums[:, 0] = minutes
    typed_minutes = {reading.time_ms // _MINUTE_MS for reading in typed}
    means = [_reading(row) for row in sums.tolist() if row[0] not in typed_minutes or row[1] or any(row[3::2])]
    return sorted((*means, *typed), key=lambda reading: reading.time_ms) if typed else means


def typed_between(connection: sqlite3.Connection, start_ms: int, end_ms: int) -> list[Reading]:
    """Return the readings that were typed with start <= time < end, rising."""
    rows = list(sealed_typed_rows(connection, start_ms, end_ms))
    rows += connection.execute(TYPED_BETWEEN, (start_ms, end_ms, MARKED_TYPED)).fetchall()
    return sorted(filter(is_typed, map(reading_of, rows)), key=lambda reading: reading.time_ms)


def _less(typed: Reading) -> Numbers:
    """Return the row of sums that takes a typed reading out of those of its minute."""
    pairs = [pair for channel in CHANNELS for pair in _counted(channel, typed.value(channel))]
    return np.array([[typed.time_ms // _MINUTE_MS, -1.0, *pairs]])


def _counted(channel: Channel, value: float | None) -> tuple[float, float]:
    if value is None:
        return 0.0, 0.0
    return -(carried(value) if channel is Channel.AIR_SPEED else value), -1.0


def _sums_of_chunk(time_ms: Integers, checked: Integers, columns: dict[Channel, Numbers]) -> Numbers:
    minutes, where = np.unique(time_ms // _MINUTE_MS, return_inverse=True)
    sums = np.zeros((minutes.size, _WIDTH))
    sums[:, 0] = minutes
    sums[:, 1] = np.bincount(where, weights=checked == 0, minlength=minutes.size)
    for channel, values in columns.items():
        there = ~np.isnan(values)
        summed = carried(values) if channel is Channel.AIR_SPEED else values
        at = 2 + 2 * CHANNELS.index(channel)
        sums[:, at] = np.bincount(where, weights=np.where(there, summed, 0.0), minlength=minutes.size)
        sums[:, at + 1] = np.bincount(where, weights=there, minlength=minutes.size)
    return sums


def _mean(channel: Channel, mean: float) -> float:
    return speed_that_carries(mean) if channel is Channel.AIR_SPEED else mean


def _reading(sums: list[float]) -> Reading:
    minute, unchecked, *pairs = sums
    means: dict[str, Any] = {
        channel: _mean(channel, total / count) if count else None
        for channel, total, count in zip(CHANNELS, pairs[::2], pairs[1::2], strict=True)
    }
    return Reading(time_ms=int(minute) * _MINUTE_MS + _MINUTE_MS // 2, checked=not unchecked, **means)
