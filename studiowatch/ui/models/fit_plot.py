"""The fit of an air speed calibration as a picture: law, error band and points, on two scales."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from studiowatch.physics.ranges import Array
from studiowatch.room.air_speed_calibration import AirSpeedCalibration
from studiowatch.room.king_law import FREE_CONVECTION_M_S
from studiowatch.speech.units import Speed, chosen
from studiowatch.speech.words import mark, say
from studiowatch.ui.models.history_axis import ValueScale, value_scale

CURVE_POINTS = 96
BEYOND = 1.15  # the curve goes on beyond the fastest walk, as far as readings soon will
TICKS = 6
_POINT = {
    Speed.METRES_PER_SECOND: mark("{signal} millivolts at {speed} metres per second"),
    Speed.FEET_PER_MINUTE: mark("{signal} millivolts at {speed} feet per minute"),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class FitPicture:
    """All of it in the unit in which she reads air speed, and in mV.

    Attributes
    ----------
    speeds, signals : ndarray, (96,)
        The law.
    slowest, fastest : ndarray, (96,)
        At each of its voltages, the speeds between which the true one lies 19 times in 20.
    points : tuple of (float, float)
        What was measured, the still air first.
    """

    speeds: Array
    signals: Array
    slowest: Array
    fastest: Array
    points: tuple[tuple[float, float], ...]
    across: ValueScale
    up: ValueScale
    across_name: str
    up_name: str


def fit_picture(calibration: AirSpeedCalibration) -> FitPicture:
    """Return the picture of `calibration`."""
    law = calibration.law
    walked = [point.speed_m_s or FREE_CONVECTION_M_S for point in calibration.points]
    measured = calibration.signals_mV()
    speeds = np.geomspace(FREE_CONVECTION_M_S, BEYOND * max(walked), CURVE_POINTS)
    signals = law.signals(speeds)
    errors = np.array([calibration.error_m_s(float(speed)) for speed in speeds])
    lowest, highest = min(*measured, float(signals[0])), max(*measured, float(signals[-1]))
    margin = 0.06 * (highest - lowest)
    unit, point = chosen().speed, chosen().numbers.value
    per_m_s = unit.from_si(1.0)
    return FitPicture(
        speeds=speeds * per_m_s,
        signals=signals,
        slowest=np.maximum(speeds - errors, 0.0) * per_m_s,
        fastest=(speeds + errors) * per_m_s,
        points=tuple((speed * per_m_s, signal) for speed, signal in zip(walked, measured, strict=True)),
        across=replace(value_scale(0.0, float(speeds[-1]) * per_m_s, TICKS), point=point),
        up=replace(value_scale(lowest - margin, highest + margin, TICKS), point=point),
        across_name=say("air speed, {unit}", unit=unit.value),
        up_name=say("bead's voltage at {temperature}, mV", temperature=chosen().temperature(law.reference_C, 0)),
    )


def fit_spoken(calibration: AirSpeedCalibration) -> str:
    """Return the picture in words."""
    units = chosen()
    points = ", ".join(
        say(
            _POINT[units.speed],
            signal=units.number(point.signal_mV),
            speed=units.number(units.speed.from_si(point.speed_m_s), units.speed.places),
        )
        for point in calibration.points
    )
    return f"{say('The law through the points measured: {points}.', points=points)} {calibration.sentence}"
