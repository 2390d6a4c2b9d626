"""The room's outlook as the air that a film's draws will dry in."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from studiowatch.coats.exposure import TEMPERATURE_C
from studiowatch.physics.air import AirDraws
from studiowatch.physics.moist_air import HUMIDITY_PCT
from studiowatch.physics.ranges import Array
from studiowatch.room.outlook import Outlook
from studiowatch.service.air_ahead import CALM_M_S

HOUR_S = 3600.0
WIDTHS_H = ((12.0, 1), (36.0, 2), (np.inf, 4))  # up to how many hours ahead how many of them are taken as one air


def coming_air(
    outlook: Outlook, count: int, *, passed_s: float, horizon_s: float, pressure_Pa: float = 101325.0
) -> tuple[tuple[AirDraws, float], ...]:
    """Return the air from now on for `count` draws of a film, each with how long it holds, s, `horizon_s` in all.

    Draw 0, the nominal run, has the median room; the others have a room each. A fan over a wet coat is not there to
    stay: air is not taken to move faster than `CALM_M_S`, but in hours in which one is meant to be on. The last air
    holds on beyond the outlook.

    Parameters
    ----------
    passed_s : float
        How long ago `outlook` was made, s; less than it reaches.
    """
    outlook = replace(outlook, air_speed_m_s=_staying(outlook))
    spans: list[tuple[AirDraws, float]] = []
    at_s, end_s = passed_s, passed_s + horizon_s
    while at_s < end_s:
        hour = min(int(at_s / HOUR_S), outlook.hours - 1)
        last = min(hour + _width_h(at_s - passed_s), outlook.hours)
        until_s = end_s if last == outlook.hours else min(last * HOUR_S, end_s)
        air = _between(outlook, count, at_s / HOUR_S, min(until_s / HOUR_S, float(outlook.hours)), pressure_Pa)
        spans.append((air, until_s - at_s))
        at_s = until_s
    return tuple(spans)


def _staying(outlook: Outlook) -> Array:
    """Return the air speeds without what will not stay."""
    calm: Array = np.minimum(outlook.air_speed_m_s, CALM_M_S)
    return calm if outlook.fanned is None else np.where(outlook.fanned, outlook.air_speed_m_s, calm)


def _width_h(ahead_s: float) -> int:
    """Return how many hours are taken together so far ahead: what is farther off is known less, and matters less."""
    return next(width for until_h, width in WIDTHS_H if ahead_s < until_h * HOUR_S)


def _between(outlook: Outlook, count: int, first_h: float, last_h: float, pressure_Pa: float) -> AirDraws:
    """Return the mean air from `first_h` to `last_h`, in hours of the outlook; the nominal run has the median."""
    hours = np.unique(np.concatenate([[first_h, last_h], np.arange(np.ceil(first_h), last_h)]))
    return AirDraws(
        temperature_C=np.clip(_drawn(outlook.temperature_C, count, hours), *TEMPERATURE_C),
        humidity_pct=np.clip(_drawn(outlook.humidity_pct, count, hours), *HUMIDITY_PCT),
        air_speed_m_s=_drawn(outlook.air_speed_m_s, count, hours),
        pressure_Pa=pressure_Pa,
    )


def _drawn(draws: Array, count: int, hours: Array) -> Array:
    """Return the mean over `hours`, the corners of a line, with one value for each draw of the film; median first."""
    before = np.minimum(hours.astype(np.intp), draws.shape[1] - 2)
    part = hours - before
    corners = (1.0 - part) * draws[:, before] + part * draws[:, before + 1]
    if hours.size > 1:
        widths = np.diff(hours)
        mean = (0.5 * (corners[:, 1:] + corners[:, :-1])) @ widths / widths.sum()
    else:
        mean = corners[:, 0]
    drawn: Array = np.resize(mean, count)
    drawn[0] = np.median(mean)
    return drawn
