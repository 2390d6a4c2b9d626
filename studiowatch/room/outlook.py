"""Where the room is heading: draws of its temperature, humidity and air speed, hour by hour, from its own log.

What is usual at a time of day, plus how far the room is from it now, which fades as such distances faded before (a
first-order vector autoregression), plus what was left over then, drawn again in blocks of a day, temperature and
humidity together. A room that is hardly known yet is taken for a common one, and its draws lie the wider apart.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from studiowatch.physics.ranges import Array, Mask, check
from studiowatch.room.daily_round import daily_round
from studiowatch.room.hourly_log import DAY_H, HourlyLog, known_rows
from studiowatch.speech.words import say

LONGEST_H = 96  # h, as far as an outlook goes
DRAWS = 256
FITTED_DAYS = 42  # days of log that an outlook is fitted to: older weather is another season's; see SOURCES.md
PRIOR_H = 40.0  # h of log that say against a distance lasting: a room hardly known fades fast; see SOURCES.md
PRIOR_SPREAD = np.array([1.8, 7.0])  # K and %RH, s.d. of a common room about its daily round; assumption
PRIOR_PAIRED = -0.3  # correlation of the two: warmer air is drier at the same vapour; assumption
PRIOR_SPREAD_H = 24.0  # h of log that the prior spread weighs as much as; assumption
LEFT_OVER = 1.1  # what is left over in the fit is this much smaller than what is left over later; see SOURCES.md
LEVEL_SHARE = 0.35  # s.d. of the error of the daily round, as a share of the room's about it; see SOURCES.md
BLOCK_H = 24  # h
FEWEST_BLOCKS = 3.0  # blocks of own log that count as much as the prior; assumption
HUMIDITY_PCT = (1.0, 100.0)  # %, that a draw may take
STILL_M_S = 0.05  # m/s, where the log tells no air speed; assumption
_TINY = 1e-6  # K² and %², so that a room that stands still has a fade
GUST_DAYS = 14  # days of log from which the air's habits are taken; assumption


@dataclass(frozen=True, slots=True, kw_only=True)
class Outlook:
    """Draws of the room: column h is h hours from now, column 0 now.

    Attributes
    ----------
    temperature_C, humidity_pct, air_speed_m_s : ndarray, (draws, hours + 1)
        °C, %, m/s; the speed is the mean from half an hour before to half an hour after.
    fanned : ndarray of bool, (hours + 1,), or None
        Whether a fan is meant to be on within that hour; None where none is. Its air is there to stay.
    """

    temperature_C: Array
    humidity_pct: Array
    air_speed_m_s: Array
    fanned: Mask | None = None

    @property
    def hours(self) -> int:
        """How far it goes, h."""
        return int(self.temperature_C.shape[1]) - 1


@dataclass(frozen=True, slots=True, kw_only=True)
class Habits:
    """What of a room's ways its log shows.

    Attributes
    ----------
    usual : ndarray, (24, 2)
        Temperature and humidity usual at each hour from now on.
    distance : ndarray, (2,)
        How far the room is from that now.
    fade : ndarray, (2, 2)
        What is left of a distance after an hour.
    left_over : ndarray, (hours, 2)
        What that does not explain, by the hour at whose end it was seen; NaN where not known; now last.
    spread : ndarray, (2, 2)
        Covariance of the distances.
    """

    usual: Array
    distance: Array
    fade: Array
    left_over: Array
    spread: Array


def look_ahead(log: HourlyLog, hours: int, *, draws: int = DRAWS, seed: int = 0) -> Outlook:
    """Return draws of the room for `hours` hours from now.

    Raises
    ------
    OutOfRange
        If `hours` is not 1 to 96, or the log holds no hour with temperature and humidity.
    """
    check(say("time to look ahead"), hours, 1, LONGEST_H, "h")
    known = np.flatnonzero(known_rows(log.climate))
    check(say("hours of log with temperature and humidity"), known.size, 1, np.inf, "h")
    chance = np.random.default_rng(seed)
    habits = habits_of(log)
    unheard_h = log.temperature_C.size - 1 - int(known[-1])
    distance = _drawn_level(habits, chance, draws)
    paths = np.empty((draws, hours + 1, 2))
    level = habits.distance - distance
    noise = _drawn_left_over(habits, chance, draws, unheard_h + hours, unheard_h)
    for hour in range(-unheard_h, hours + 1):
        if hour > -unheard_h:
            distance = distance @ habits.fade.T + noise[:, hour + unheard_h - 1]
        if hour >= 0:
            paths[:, hour] = habits.usual[hour % DAY_H] + level + distance
    return Outlook(
        temperature_C=paths[..., 0],
        humidity_pct=np.clip(paths[..., 1], *HUMIDITY_PCT),
        air_speed_m_s=_drawn_speed(log, chance, draws, hours),
    )


def habits_of(log: HourlyLog) -> Habits:
    """Return what the last weeks of `log` show; the distance is that of the last hour that was read."""
    pairs = log.climate[-FITTED_DAYS * DAY_H :]
    usual = daily_round(pairs)
    back_h = np.arange(len(pairs))[::-1]
    distances = pairs - usual[-back_h % DAY_H]
    known = known_rows(distances)
    fade = _fade(distances)
    left_over = distances[1:] - distances[:-1] @ fade.T
    there = known_rows(left_over)
    if there.any():
        left_over = LEFT_OVER * (left_over - left_over[there].mean(axis=0))
    return Habits(
        usual=usual,
        distance=distances[known][-1],
        fade=fade,
        left_over=left_over,
        spread=_spread(distances[known]),
    )


def _fade(distances: Array) -> Array:
    """Return how distances faded from one hour to the next, by least squares shrunk as `PRIOR_H` says."""
    known = known_rows(distances)
    both = known[:-1] & known[1:]
    if not both.any():
        return np.zeros((2, 2))
    before, after = distances[:-1][both], distances[1:][both]
    against = PRIOR_H * np.diag(before.var(axis=0) + _TINY)
    fade: Array = np.asarray(np.linalg.solve(before.T @ before + against, before.T @ after).T, dtype=np.float64)
    return fade


def _spread(distances: Array) -> Array:
    hours = len(distances)
    own = distances.T @ distances
    spread: Array = (own + PRIOR_SPREAD_H * _prior_spread()) / (hours + PRIOR_SPREAD_H)
    return spread


def _prior_spread() -> Array:
    paired = np.array([[1.0, PRIOR_PAIRED], [PRIOR_PAIRED, 1.0]])
    return paired * np.outer(PRIOR_SPREAD, PRIOR_SPREAD)


def _drawn_level(habits: Habits, chance: np.random.Generator, draws: int) -> Array:
    """Return the distance now in each draw: the daily round itself is known only so well."""
    error = chance.standard_normal((draws, 2)) @ np.linalg.cholesky(habits.spread).T
    distance: Array = habits.distance - LEVEL_SHARE * error
    return distance


def _drawn_left_over(habits: Habits, chance: np.random.Generator, draws: int, hours: int, unheard_h: int) -> Array:
    """Return what is left over in each hour to come, (draws, hours, 2): days of the log again, or of a common room."""
    noise = _common(habits, chance, draws, hours)
    known = known_rows(habits.left_over)
    starts = _whole_days(known, unheard_h)
    if not starts.size:
        return noise
    days = (known.size - int(np.argmax(known))) / BLOCK_H  # since the room was first heard of
    own = chance.random((draws, -(-hours // BLOCK_H))) < days / (days + FEWEST_BLOCKS)
    picked = starts[chance.integers(0, starts.size, own.shape)]
    for block in range(own.shape[1]):
        first = block * BLOCK_H
        width = min(BLOCK_H, hours - first)
        rows = own[:, block]
        places = picked[rows, block][:, np.newaxis] + np.arange(width)
        noise[rows, first : first + width] = habits.left_over[places]
    return noise


def _common(habits: Habits, chance: np.random.Generator, draws: int, hours: int) -> Array:
    """Return what would be left over in a room that spreads as this one, with nothing of its days in it."""
    innovation = habits.spread - habits.fade @ habits.spread @ habits.fade.T
    values, vectors = np.linalg.eigh(0.5 * (innovation + innovation.T))
    root = vectors * np.sqrt(np.maximum(values, 0.0))
    noise: Array = chance.standard_normal((draws, hours, 2)) @ root.T
    return noise


def _whole_days(known: Mask, unheard_h: int) -> NDArray[np.intp]:
    """Return where blocks of a day begin that are known whole, at the time of day heard last or an hour beside it."""
    if len(known) < BLOCK_H:
        return np.empty(0, dtype=np.intp)
    whole = np.lib.stride_tricks.sliding_window_view(known, BLOCK_H).all(axis=1)
    off_h = (known.size - np.arange(whole.size) - unheard_h) % DAY_H
    starts: NDArray[np.intp] = np.flatnonzero(whole & ((off_h + 1) % DAY_H <= 2))  # noqa: PLR2004 - it, and one beside
    return starts


def _drawn_speed(log: HourlyLog, chance: np.random.Generator, draws: int, hours: int) -> Array:
    """Return the air speed in each hour to come: that of the same hours of one of the last days."""
    speeds = log.air_speed_m_s[-GUST_DAYS * DAY_H :]
    there = np.isfinite(speeds)
    if not there.any():
        return np.full((draws, hours + 1), STILL_M_S)
    usual = float(np.median(speeds[there]))
    days = (speeds.size - 1 - int(np.argmax(there))) // DAY_H
    if not days:
        return np.full((draws, hours + 1), usual)
    filled = np.where(there, speeds, usual)
    ahead = np.arange(hours + 1)
    back_days = chance.integers(1, days + 1, (draws, 1))
    places = filled.size - 1 - back_days * DAY_H + ahead % DAY_H
    speed: Array = filled[np.minimum(places, filled.size - 1)]
    return speed
