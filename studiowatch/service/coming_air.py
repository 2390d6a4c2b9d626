"""The room's outlook as the air that a film's draws will dry in."""

from __future__ import annotations

import numpy as np

from studiowatch.coats.exposure import TEMPERATURE_C
from studiowatch.physics.air import AirDraws
from studiowatch.physics.moist_air import HUMIDITY_PCT
from studiowatch.physics.ranges import Array
from studiowatch.room.outlook import Outlook
from studiowatch.service.air_ahead import CALM_M_S

HOUR_S = 3600.0


def coming_air(
    outlook: Outlook, count: int, *, passed_s: float, horizon_s: float
) -> tuple[tuple[AirDraws, float], ...]:
    """Return the air from now on for `count` draws of a film, each with how long it holds, s, `horizon_s` in all.

    Draw 0, the nominal run, has the median room; the others have a room each. A fan over a wet coat is not there to
    stay: air is not taken to move faster than `CALM_M_S`. The last air holds on beyond the outlook.

    Parameters
    ----------
    passed_s : float
        How long ago `outlook` was made, s; less than it reaches.
    """
    spans: list[tuple[AirDraws, float]] = []
    at_s, end_s = passed_s, passed_s + horizon_s
    while at_s < end_s:
        hour = min(int(at_s / HOUR_S), outlook.hours - 1)
        until_s = end_s if hour == outlook.hours - 1 else min((hour + 1) * HOUR_S, end_s)
        middle_h = min((at_s + min(until_s, (hour + 1) * HOUR_S)) / (2.0 * HOUR_S), float(outlook.hours))
        spans.append((_at(outlook, count, hour, middle_h - hour), until_s - at_s))
        at_s = until_s
    return tuple(spans)


def _at(outlook: Outlook, count: int, hour: int, part: float) -> AirDraws:
    return AirDraws(
        temperature_C=np.clip(_drawn(outlook.temperature_C, count, hour, part), *TEMPERATURE_C),
        humidity_pct=np.clip(_drawn(outlook.humidity_pct, count, hour, part), *HUMIDITY_PCT),
        air_speed_m_s=np.minimum(_drawn(outlook.air_speed_m_s, count, hour, part), CALM_M_S),
    )


def _drawn(draws: Array, count: int, hour: int, part: float) -> Array:
    """Return one value for each draw of the film, between two hours; the median first."""
    between = (1.0 - part) * draws[:, hour] + part * draws[:, hour + 1]
    drawn: Array = np.resize(between, count)
    drawn[0] = np.median(between)
    return drawn
