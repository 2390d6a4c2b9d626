"""The fit of an air speed calibration as a picture: law, error band and points, on two scales."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from studiowatch.physics.ranges import Array
from studiowatch.room.air_speed_calibration import AirSpeedCalibration
from studiowatch.room.king_law import FREE_CONVECTION_M_S
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.ui.models.history_axis import ValueScale, value_scale

CURVE_POINTS = 96
BEYOND = 1.15  # the curve goes on beyond the fastest walk, as far as readings soon will
TICKS = 6


@dataclass(frozen=True, slots=True, kw_only=True)
class FitPicture:
    """All of it in m/s and mV.

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
    return FitPicture(
        speeds=speeds,
        signals=signals,
        slowest=np.maximum(speeds - errors, 0.0),
        fastest=speeds + errors,
        points=tuple(zip(walked, measured, strict=True)),
        across=value_scale(0.0, float(speeds[-1]), TICKS),
        up=value_scale(lowest - margin, highest + margin, TICKS),
        across_name=say("air speed, m/s"),
        up_name=say("bead's voltage at {temperature}, mV", temperature=chosen().temperature(law.reference_C, 0)),
    )


def fit_spoken(calibration: AirSpeedCalibration) -> str:
    """Return the picture in words."""
    points = ", ".join(
        say(
            "{signal} millivolts at {speed} metres per second",
            signal=chosen().number(point.signal_mV),
            speed=chosen().number(point.speed_m_s, 2),
        )
        for point in calibration.points
    )
    return f"{say('The law through the points measured: {points}.', points=points)} {calibration.sentence}"
