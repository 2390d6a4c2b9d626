"""An air speed sensor calibrated by still air under a cup and by walks of known speed: the fit, and how good it is."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from studiowatch.physics.ranges import Array
from studiowatch.room import figures
from studiowatch.room.air_points import AirPoint, check_point, check_rise, check_speeds, mean_temperature_C, squares_mV2
from studiowatch.room.humidity_calibration import CalibrationRefused
from studiowatch.room.king_law import BEAD_C, COOLEST_BEAD_C, FREE_CONVECTION_M_S, HOTTEST_BEAD_C, KingLaw
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say

# wires have 0.45 to 0.51 (King 1914; Collis and Williams 1959), simulated beads of 0.5 to 3 mm 0.44 to 0.54
EXPONENTS = np.linspace(0.3, 0.7, 401)  # 1
WALK_ERROR = 0.05  # share of its speed by which a walk errs: 0.1 m in 4 m and half a second in 12 s; assumption
STILL_ERROR_M_S = FREE_CONVECTION_M_S / 2  # m/s by which the bead's own rising air may differ from that; assumption
ROOM_M_S = 0.02  # m/s by which a still room's air adds to a walk or takes from it; assumption
SIGNAL_ERROR = 0.003  # share of its voltage by which a mean of a walk errs: 3 mV in 1 V; assumption
HUBER = 1.345  # standard deviations beyond which a walk loses weight; P. J. Huber: 95 % efficient for normal errors
ROUNDS = 10  # of weighing the walks anew
MOST_MISFIT = 0.25  # share of its speed by which a walk may lie off the law; assumption: five times `WALK_ERROR`
TWO_SIGMA = 2.0  # standard deviations, 95 % of normal errors
AIM = ((0.2, 0.2), (0.5, 0.1))  # m/s, and the share of it by which the law should be off at most


@dataclass(frozen=True, slots=True, kw_only=True)
class AirSpeedCalibration:
    """A law and the points that it was fitted to, the still air first; made by `calibrate_air_speed` only."""

    law: KingLaw
    points: tuple[AirPoint, ...]

    def signals_mV(self) -> tuple[float, ...]:
        """Return each point's voltage as it would be at the law's reference temperature, for drawing beside the law."""
        return tuple(np.sqrt(squares_mV2(self.points, self.law.reference_C, self.law.bead_C)).tolist())

    def misfits(self) -> tuple[float, ...]:
        """Return by which share of its speed each walk lies above the law's; still air is left out."""
        speeds = [self.law.speed_m_s(point.signal_mV, point.temperature_C) for point in self.points]
        return tuple(
            point.speed_m_s / speed - 1.0
            for point, speed in zip(self.points, speeds, strict=True)
            if point.speed_m_s > 0.0
        )

    def error_m_s(self, speed_m_s: float) -> float:
        """Return by how much the law may be off at `speed_m_s`, 19 times in 20, m/s.

        Twice the standard error of the fit, from the assumed errors of walks, voltages and the bead's own rising air.
        """
        weights = 1.0 / _errors(self.points, self.law)
        slopes = _slopes(_speeds(self.points), self.law) * weights[:, None]
        here = _slopes(np.array([speed_m_s]), self.law)[0]
        error_mV2 = float(np.sqrt(here @ np.linalg.solve(slopes.T @ slopes, here)))
        rising = _rising(np.array([speed_m_s]), self.law)[0]
        return float(TWO_SIGMA * error_mV2 / rising)

    @property
    def sentence(self) -> str:
        """How good it is, in one sentence, with what to do if that is not good enough."""
        (slow_m_s, slow_aim), (fast_m_s, fast_aim) = AIM
        slow, fast = (round(self.error_m_s(speed_m_s) / speed_m_s, 2) for speed_m_s in (slow_m_s, fast_m_s))
        sentence = say(
            "Good to {slow_share}% at {slow} and {fast_share}% at {fast}.",
            slow_share=f"{100 * slow:.0f}",
            slow=chosen().air_speed_limit(slow_m_s),
            fast_share=f"{100 * fast:.0f}",
            fast=chosen().air_speed_limit(fast_m_s),
        )
        if slow <= slow_aim and fast <= fast_aim:
            return sentence
        return f"{sentence} {say('More walks would narrow that, slow ones above all.')}"


def calibrate_air_speed(points: Sequence[AirPoint], *, bead_C: float = BEAD_C) -> AirSpeedCalibration:
    """Return the law that fits best.

    Parameters
    ----------
    points : sequence of AirPoint
        Still air (speed 0) once or more, and three walks of different speed at least, in any order.
    bead_C : float
        Temperature that the bead is held at, °C.

    Raises
    ------
    CalibrationRefused
        If the points are too few, too close together, not rising, or do not fit one law.

    Notes
    -----
    Still air is not quite still at a warm bead: it counts as `FREE_CONVECTION_M_S`. With the simulated beads of the
    tests that takes the law's own misfit at 0.2 m/s from 9 % to 4 %, and brings its exponent to the published ones.

    Least squares in V², each point weighed by its errors in voltage and speed, walks that stray losing weight as in
    Huber's estimate; A and B follow for each exponent from 0.3 to 0.7 in steps of 0.001, and the best is taken.
    """
    points = sorted(points, key=lambda point: point.speed_m_s)
    if not COOLEST_BEAD_C <= bead_C <= HOTTEST_BEAD_C:
        raise CalibrationRefused(
            say(
                "The bead's temperature is {given}; {low} to {high} is allowed: see the bead's own sheet.",
                given=chosen().limit(bead_C),
                low=figures.degrees(COOLEST_BEAD_C),
                high=chosen().limit(HOTTEST_BEAD_C),
            )
        )
    for point in points:
        check_point(point)
    check_speeds([point.speed_m_s for point in points])
    check_rise(points, bead_C)
    calibration = AirSpeedCalibration(law=_fitted(points, bead_C), points=tuple(points))
    walks = [point for point in points if point.speed_m_s > 0.0]
    misfit, walk = max(zip(map(abs, calibration.misfits()), walks, strict=True), key=lambda pair: pair[0])
    if misfit > MOST_MISFIT:
        raise CalibrationRefused(
            say(
                "The walk at {speed} lies {share}% off the law that fits the walks best; at most {most}% is allowed: "
                "walk it again, evenly, away from open doors.",
                speed=chosen().air_speed(walk.speed_m_s),
                share=f"{100 * misfit:.0f}",
                most=f"{100 * MOST_MISFIT:.0f}",
            )
        )
    return calibration


def _fitted(points: Sequence[AirPoint], bead_C: float) -> KingLaw:
    reference_C = mean_temperature_C(points)
    speeds, squares = _speeds(points), squares_mV2(points, reference_C, bead_C)
    slope = float((squares[-1] - squares[0]) / (speeds[-1] ** 0.5 - speeds[0] ** 0.5))
    law = KingLaw(
        offset_mV2=float(squares[0]) - slope * float(speeds[0]) ** 0.5,
        slope=slope,
        exponent=0.5,
        reference_C=reference_C,
        bead_C=bead_C,
    )
    for _ in range(ROUNDS):
        errors = _errors(points, law)
        strayed = np.abs(law.offset_mV2 + law.slope * speeds**law.exponent - squares) / errors
        weights = np.sqrt(np.minimum(1.0, HUBER / np.maximum(strayed, HUBER))) / errors
        law = _best(law, speeds, squares, weights)
    return law


def _speeds(points: Sequence[AirPoint]) -> Array:
    """Return the speeds of the air at the bead, (points,), m/s: in still air its own."""
    return np.array([point.speed_m_s or FREE_CONVECTION_M_S for point in points])


def _best(law: KingLaw, speeds: Array, squares: Array, weights: Array) -> KingLaw:
    """Return the law of the exponent that fits best, A and B by weighted least squares; all exponents at once."""
    powers = speeds[None, :] ** EXPONENTS[:, None]
    squared = weights**2
    total = squared.sum()
    mean_power, mean_square = powers @ squared / total, float(squares @ squared / total)
    centred = powers - mean_power[:, None]
    slopes = (centred * (squares - mean_square)) @ squared / (centred**2 @ squared)
    left = (squares - mean_square)[None, :] - slopes[:, None] * centred
    best = int(np.argmin(left**2 @ squared))
    slope = float(slopes[best])
    return KingLaw(
        offset_mV2=mean_square - slope * float(mean_power[best]),
        slope=slope,
        exponent=float(EXPONENTS[best]),
        reference_C=law.reference_C,
        bead_C=law.bead_C,
    )


def _errors(points: Sequence[AirPoint], law: KingLaw) -> Array:
    """Return the standard error of each point, as one of V², mV²."""
    speeds = _speeds(points)
    still = np.array([point.speed_m_s == 0.0 for point in points])
    squares = law.offset_mV2 + law.slope * speeds**law.exponent
    moved = np.where(still, STILL_ERROR_M_S, np.hypot(WALK_ERROR * speeds, ROOM_M_S))
    return np.hypot(2.0 * SIGNAL_ERROR * squares, _rising(speeds, law) * moved)


def _rising(speeds: Array, law: KingLaw) -> Array:
    """Return how V² rises with the speed, mV² per m/s."""
    return law.slope * law.exponent * speeds ** (law.exponent - 1.0)


def _slopes(speeds: Array, law: KingLaw) -> Array:
    """Return how V² changes with the logarithms of A, B and n at each speed, mV², (points, 3)."""
    moved = law.slope * speeds**law.exponent
    return np.stack([np.full_like(speeds, law.offset_mV2), moved, moved * law.exponent * np.log(speeds)], axis=1)
