"""What an air speed sensor is calibrated by: its voltage in still air and on walks, and what is refused of that."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import inf

import numpy as np

from studiowatch.physics.ranges import Array
from studiowatch.room import figures
from studiowatch.room.humidity_calibration import CalibrationRefused
from studiowatch.room.king_law import COLDEST_AIR_C, WARMEST_AIR_C, at_reference
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say

LEAST_WALKS = 3
SLOWEST_M_S, FASTEST_M_S = 0.1, 3.0  # m/s, a walk: below, the air of any room is faster; above, it is a run; assumption
SLOW_ENOUGH_M_S = 0.5  # m/s, the slowest walk at most, or nothing is known where a draught begins; assumption
SUCH_AS_M_S = (0.3, 0.6, 1.2)  # m/s, walks that lie well apart, to be named as an example
APART = 1.25  # two walks count as two speeds when one is so many times the other; assumption
LEAST_RISE_mV = 20.0  # mV from still air to the fastest walk: four steps of a 10-bit converter; assumption


@dataclass(frozen=True, slots=True, kw_only=True)
class AirPoint:
    """One mean voltage, mV, at a known speed, m/s (0 for still air under a cup), and the air's temperature, °C."""

    speed_m_s: float
    signal_mV: float
    temperature_C: float


def check_point(point: AirPoint) -> None:
    """Refuse a point that no sensor, room or walk can give."""
    if not 0.0 < point.signal_mV < inf:
        raise CalibrationRefused(
            say(
                "The sensor's voltage is {given} mV; a number above 0 is needed: check the bead's wires.",
                given=chosen().plain(point.signal_mV),
            )
        )
    if not COLDEST_AIR_C <= point.temperature_C <= WARMEST_AIR_C:
        raise CalibrationRefused(
            say(
                "The air is at {given}; {low} to {high} is allowed: check the thermometer.",
                given=chosen().limit(point.temperature_C),
                low=figures.degrees(COLDEST_AIR_C),
                high=chosen().limit(WARMEST_AIR_C),
            )
        )
    if point.speed_m_s != 0.0 and not SLOWEST_M_S <= point.speed_m_s <= FASTEST_M_S:
        raise CalibrationRefused(
            say(
                "A walk at {speed}: {low} to {high} is allowed; check distance and time.",
                speed=chosen().air_speed(point.speed_m_s),
                low=figures.pace(SLOWEST_M_S),
                high=chosen().air_speed_limit(FASTEST_M_S),
            )
        )


def check_speeds(speeds_m_s: Sequence[float]) -> None:
    """Refuse speeds, rising, that cannot carry a law."""
    walks_m_s = [speed for speed in speeds_m_s if speed > 0.0]
    if len(walks_m_s) == len(speeds_m_s):
        raise CalibrationRefused(say("Still air was not measured: hold a cup over the bead for half a minute first."))
    if len(walks_m_s) < LEAST_WALKS:
        raise CalibrationRefused(
            say(
                "{needed} walks of different speed are needed; {made} were made.",
                needed=LEAST_WALKS,
                made=len(walks_m_s),
            )
        )
    different = [walks_m_s[0]]
    for speed_m_s in walks_m_s:
        if speed_m_s >= APART * different[-1]:
            different.append(speed_m_s)
    if len(different) < LEAST_WALKS:
        units = chosen()
        said = ", ".join(units.number(units.speed.from_si(speed), units.speed.places) for speed in walks_m_s)
        slow_m_s, middle_m_s, fast_m_s = SUCH_AS_M_S
        raise CalibrationRefused(
            say(
                "The walks at {speeds} {unit} lie too close together; {needed} speeds are needed, each {apart} times "
                "the one before or more, such as {slow}, {middle} and {fast}.",
                speeds=said,
                unit=units.speed.value,
                needed=LEAST_WALKS,
                apart=units.plain(APART),
                slow=figures.pace(slow_m_s),
                middle=figures.pace(middle_m_s),
                fast=units.air_speed_limit(fast_m_s),
            )
        )
    if walks_m_s[0] > SLOW_ENOUGH_M_S:
        raise CalibrationRefused(
            say(
                "The slowest walk was {speed}; one at {limit} or less is needed, since draughts begin there: "
                "walk slowly once more.",
                speed=chosen().air_speed(walks_m_s[0]),
                limit=chosen().air_speed_limit(SLOW_ENOUGH_M_S),
            )
        )


def check_rise(points: Sequence[AirPoint], bead_C: float) -> None:
    """Refuse voltages that do not rise with the speed, points in the order of speed."""
    squares = squares_mV2(points, mean_temperature_C(points), bead_C)
    rises = list(zip(points, np.sqrt(squares).tolist(), strict=True))
    still_mV = max(signal for point, signal in rises if point.speed_m_s == 0.0)
    for point, signal_mV in rises:
        if point.speed_m_s > 0.0 and signal_mV <= still_mV:
            raise CalibrationRefused(
                say(
                    "Still air read {still} mV and the walk at {speed} no more, {signal} mV: keep the cup over the "
                    "bead for half a minute, and the bead free on the walk.",
                    still=f"{still_mV:.0f}",
                    speed=chosen().air_speed(point.speed_m_s),
                    signal=f"{signal_mV:.0f}",
                )
            )
    for (slow, slow_mV), (fast, fast_mV) in pairwise(rises):
        if fast.speed_m_s >= APART * slow.speed_m_s and fast_mV <= slow_mV:
            raise CalibrationRefused(
                say(
                    "The voltage does not rise: {slow_signal} mV at {slow} and {fast_signal} mV at {fast}; "
                    "walk these again with the bead turned the same way.",
                    slow_signal=f"{slow_mV:.0f}",
                    slow=chosen().air_speed(slow.speed_m_s),
                    fast_signal=f"{fast_mV:.0f}",
                    fast=chosen().air_speed(fast.speed_m_s),
                )
            )
    if rises[-1][1] - still_mV < LEAST_RISE_mV:
        raise CalibrationRefused(
            say(
                "The voltage rose by {rise} mV only from still air to the fastest walk; {needed} mV are needed: "
                "check that the bead is warm and its output is joined to A0.",
                rise=f"{rises[-1][1] - still_mV:.0f}",
                needed=f"{LEAST_RISE_mV:g}",
            )
        )


def mean_temperature_C(points: Sequence[AirPoint]) -> float:
    """Return the mean temperature of the air at the points, °C."""
    return float(np.mean([point.temperature_C for point in points]))


def squares_mV2(points: Sequence[AirPoint], reference_C: float, bead_C: float) -> Array:
    """Return V² of each point as it would be in air of `reference_C`, (points,), mV²."""
    signals = np.array([point.signal_mV for point in points])
    temperatures = np.array([point.temperature_C for point in points])
    return at_reference(signals, temperatures, reference_C=reference_C, bead_C=bead_C)
