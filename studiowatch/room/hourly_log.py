"""The room hour by hour, counted back from now: what the outlook is fitted to."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from studiowatch.physics.ranges import Array, Mask
from studiowatch.room.readings import Reading

HOUR_MS = 3_600_000  # ms
DAY_H = 24  # h


@dataclass(frozen=True, slots=True, kw_only=True)
class HourlyLog:
    """Means around each full hour before now, the oldest first and now last; NaN where nothing was read.

    Attributes
    ----------
    temperature_C, humidity_pct, air_speed_m_s : ndarray, (hours,)
        °C, %, m/s. The time of day of an hour is known by how many hours it lies back.
    """

    temperature_C: Array
    humidity_pct: Array
    air_speed_m_s: Array

    @property
    def climate(self) -> Array:
        """Temperature and humidity side by side, (hours, 2); an hour that lacks either lacks both."""
        pairs = np.column_stack([self.temperature_C, self.humidity_pct])
        pairs[~known_rows(pairs)] = np.nan
        return pairs


def known_rows(pairs: Array) -> Mask:
    """Return which rows of `pairs`, (rows, columns), hold no NaN."""
    known: Mask = np.asarray(np.isfinite(pairs).all(axis=1))
    return known


def hourly(readings: Sequence[Reading], now_ms: int, hours: int) -> HourlyLog:
    """Return means of `readings` around each of the `hours` full hours before `now_ms` (UTC ms), and of now."""
    sums = np.zeros((hours + 1, 3))
    counts = np.zeros((hours + 1, 3))
    for reading in readings:
        back = round((now_ms - reading.time_ms) / HOUR_MS)
        if 0 <= back <= hours and reading.time_ms <= now_ms:
            values = (reading.temperature_C, reading.humidity_pct, reading.air_speed_m_s)
            for column, value in enumerate(values):
                if value is not None:
                    sums[hours - back, column] += value
                    counts[hours - back, column] += 1.0
    means = np.divide(sums, counts, out=np.full_like(sums, np.nan), where=counts > 0.0)
    return HourlyLog(temperature_C=means[:, 0], humidity_pct=means[:, 1], air_speed_m_s=means[:, 2])
