"""Walking an air speed sensor through still air: what speed that was, and what the sensor read meanwhile."""

from __future__ import annotations

from collections.abc import Sequence

from studiowatch.room.air_points import AirPoint
from studiowatch.room.humidity_calibration import CalibrationRefused
from studiowatch.room.readings import Reading
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say

SETTLE_MS = 3_000  # ms left out at the start: the bead follows with a lag of about 2 s; assumption
LEAST_READINGS = 3  # after that, so that one gust does not make a walk; assumption
SHORTEST_M, LONGEST_M = 0.5, 200.0  # m, a walk; assumption


def walked_speed_m_s(distance_m: float, time_s: float) -> float:
    """Return the speed of a walk over `distance_m` in `time_s`, m/s.

    Raises
    ------
    CalibrationRefused
        If the distance is no walk, or the time not above 0.
    """
    if not SHORTEST_M <= distance_m <= LONGEST_M:
        raise CalibrationRefused(
            say(
                "The distance walked is {given} m; {low} to {high} m is allowed: measure it anew.",
                given=chosen().plain(distance_m),
                low=chosen().plain(SHORTEST_M),
                high=chosen().plain(LONGEST_M),
            )
        )
    if not time_s > 0.0:
        raise CalibrationRefused(
            say("The walk took {given} s; it must be more than 0: take its time anew.", given=chosen().plain(time_s))
        )
    return distance_m / time_s


def air_point(readings: Sequence[Reading], speed_m_s: float) -> AirPoint:
    """Return the mean of what the sensor itself read at one speed, the first `SETTLE_MS` left out.

    Parameters
    ----------
    readings : sequence of Reading
        Those of the walk, or of the time under the cup, in the order of time.
    speed_m_s : float
        Speed, m/s; 0 for still air.

    Raises
    ------
    CalibrationRefused
        If too few readings with voltage and temperature are left.
    """
    pairs = [
        (reading.air_signal_mV, reading.temperature_C)
        for reading in readings
        if reading.air_signal_mV is not None
        and reading.temperature_C is not None
        and reading.time_ms - readings[0].time_ms >= SETTLE_MS
    ]
    if len(pairs) < LEAST_READINGS:
        counts = {"found": str(len(pairs)), "needed": str(LEAST_READINGS), "settling": str(SETTLE_MS // 1000)}
        raise CalibrationRefused(
            say(
                "The walk at {speed} gave {found} of the {needed} readings of voltage and temperature that it takes "
                "after its first {settling} s: make it longer.",
                speed=chosen().air_speed(speed_m_s),
                **counts,
            )
            if speed_m_s
            else say(
                "The time under the cup gave {found} of the {needed} readings of voltage and temperature that it takes "
                "after its first {settling} s: make it longer.",
                **counts,
            )
        )
    return AirPoint(
        speed_m_s=speed_m_s,
        signal_mV=sum(signal for signal, _ in pairs) / len(pairs),
        temperature_C=sum(temperature for _, temperature in pairs) / len(pairs),
    )
