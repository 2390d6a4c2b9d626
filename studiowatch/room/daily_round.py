"""What this room usually is at each time of day, the last days weighing most."""

from __future__ import annotations

import numpy as np

from studiowatch.physics.ranges import Array
from studiowatch.room.hourly_log import DAY_H, known_rows

MEMORY_DAYS = (7.0, 60.0)  # days in which a day's weight falls to 1/e, temperature and humidity: see SOURCES.md
SMOOTH_H = 1.5  # h, s.d. of the weights of neighbouring hours; assumption
SHARED = 0.3  # weight of the mean of all hours beside one day at this hour; assumption


def daily_round(pairs: Array) -> Array:
    """Return the usual temperature and humidity at each of the 24 hours of the day from now on.

    Parameters
    ----------
    pairs : ndarray, (hours, 2)
        Hourly °C and %, the oldest first, now last; NaN where nothing was read. At least one hour was.

    Returns
    -------
    ndarray, (24, 2)
        Row h is what is usual h hours after this time of day: row 0 now, row 1 an hour from now.
    """
    back_h = np.arange(len(pairs))[::-1]
    there = known_rows(pairs)
    values = np.where(there[:, np.newaxis], pairs, 0.0)
    days = (back_h / DAY_H)[:, np.newaxis]
    weights = there[:, np.newaxis] * np.exp(-days / np.array(MEMORY_DAYS))
    mean = (weights * values).sum(axis=0) / weights.sum(axis=0)
    hour = -back_h % DAY_H
    at_hour = np.zeros((DAY_H, 2, 2))
    np.add.at(at_hour[..., 0], hour, weights)
    np.add.at(at_hour[..., 1], hour, weights * values)
    shared = _neighbours() @ at_hour.reshape(DAY_H, -1)
    smooth = shared.reshape(DAY_H, 2, 2)
    usual: Array = (smooth[..., 1] + SHARED * mean) / (smooth[..., 0] + SHARED)
    return usual


def _neighbours() -> Array:
    """Return how much each hour of the day counts for each, (24, 24); each row adds up to 1."""
    apart = np.arange(DAY_H)
    apart = np.minimum(apart, DAY_H - apart)
    share = np.exp(-0.5 * (apart / SMOOTH_H) ** 2)
    share /= share.sum()
    return np.array([np.roll(share, hour) for hour in range(DAY_H)])
