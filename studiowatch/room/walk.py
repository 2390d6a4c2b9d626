"""Walking an air speed sensor through still air: what speed that was, and what the sensor read meanwhile."""

from __future__ import annotations

from collections.abc import Sequence

from studiowatch.room.air_speed_calibration import AirPoint
from studiowatch.room.humidity_calibration import CalibrationRefused
from studiowatch.room.readings import Reading

SETTLE_MS = 3_000  # ms left out at the start: the bead follows with a lag of about 2 s; assumption
LEAST_READINGS = 3  # after that, so that one gust does not make a walk; assumption
SHORTEST_M, LONGEST_M = 0.5, 200.0  # m, a walk; assumption
SHORTEST_STRIDE_M, LONGEST_STRIDE_M = 0.1, 1.5  # m, from heel to toe to a long step; assumption


def walked_speed_m_s(distance_m: float, time_s: float) -> float:
    """Return the speed of a walk over `distance_m` in `time_s`, m/s.

    Raises
    ------
    CalibrationRefused
        If the distance is no walk, or the time not above 0.
    """
    if not SHORTEST_M <= distance_m <= LONGEST_M:
        raise CalibrationRefused(
            f"The distance walked is {distance_m:g} m; {SHORTEST_M:g} to {LONGEST_M:g} m is allowed: measure it anew."
        )
    if not time_s > 0.0:
        raise CalibrationRefused(f"The walk took {time_s:g} s; it must be more than 0: take its time anew.")
    return distance_m / time_s


def strode_m(steps: int, stride_m: float) -> float:
    """Return how far `steps` of `stride_m` (toe to toe) go, m.

    Raises
    ------
    CalibrationRefused
        If the stride is none, or there are no steps.
    """
    if not SHORTEST_STRIDE_M <= stride_m <= LONGEST_STRIDE_M:
        raise CalibrationRefused(
            f"The stride is {stride_m:g} m; {SHORTEST_STRIDE_M:g} to {LONGEST_STRIDE_M:g} m is allowed: "
            "walk ten steps along a tape and take a tenth."
        )
    if steps < 1:
        raise CalibrationRefused(f"The walk has {steps} steps; count at least 1.")
    return steps * stride_m


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
        what = f"walk at {speed_m_s:.2f} m/s" if speed_m_s else "time under the cup"
        raise CalibrationRefused(
            f"The {what} gave {len(pairs)} of the {LEAST_READINGS} readings of voltage and temperature that it takes "
            f"after its first {SETTLE_MS // 1000} s: make it longer."
        )
    return AirPoint(
        speed_m_s=speed_m_s,
        signal_mV=sum(signal for signal, _ in pairs) / len(pairs),
        temperature_C=sum(temperature for _, temperature in pairs) / len(pairs),
    )
