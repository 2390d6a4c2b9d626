"""From what she says that she did to a calibration, out of the readings of that time as the sensor gave them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from studiowatch.room.air_speed_calibration import AirSpeedCalibration, calibrate_air_speed
from studiowatch.room.corrections import Corrections
from studiowatch.room.humidity_calibration import (
    CalibrationRefused,
    HumidityCalibration,
    Salt,
    SaltPoint,
    calibrate_humidity,
)
from studiowatch.room.plateau import FLAT_MINUTES, MINUTE_MS, Plateau, settle
from studiowatch.room.readings import Reading
from studiowatch.room.walk import air_point, walked_speed_m_s
from studiowatch.service.calibration_commands import CalibrateAirSpeed, CalibrateHumidity
from studiowatch.service.commands import Refused
from studiowatch.service.language import behind_a_colon
from studiowatch.speech.words import say

BEFORE_FLAT_MS = (FLAT_MINUTES + 2) * MINUTE_MS  # ms of the log that tell whether it was flat: whole minutes, and ends


@dataclass(frozen=True, slots=True, kw_only=True)
class Bench:
    """What a calibration is made from.

    Attributes
    ----------
    readings : callable
        Returns the readings with start <= time < end, UTC ms, as the sensor gave them, in the order of time.
    known : Corrections
        Which sensor was on when.
    sensor : str
        The one that is on now.
    now_ms : int
        UTC ms.
    """

    readings: Callable[[int, int], Sequence[Reading]]
    known: Corrections
    sensor: str
    now_ms: int

    def check_sensor(self, time_ms: int) -> None:
        """Refuse a time at which another sensor was on."""
        if self.known.at(time_ms).sensor != self.sensor:
            raise CalibrationRefused(
                say(
                    "Another sensor was on the board then than now; plug in the one that was measured, or "
                    "measure this one."
                )
            )


def calibrated(
    command: CalibrateHumidity | CalibrateAirSpeed, bench: Bench
) -> HumidityCalibration | AirSpeedCalibration:
    """Return the calibration that is asked for.

    Raises
    ------
    Refused
        If it cannot be right, with one sentence for her.
    """
    try:
        return _humidity(command, bench) if isinstance(command, CalibrateHumidity) else _air_speed(command, bench)
    except CalibrationRefused as refusal:
        raise Refused(str(refusal)) from refusal


def _humidity(command: CalibrateHumidity, bench: Bench) -> HumidityCalibration:
    return calibrate_humidity(
        _salt_point(Salt.MAGNESIUM_CHLORIDE, command.magnesium_ms, bench),
        _salt_point(Salt.SODIUM_CHLORIDE, command.sodium_ms, bench),
        now_ms=bench.now_ms,
    )


def _salt_point(salt: Salt, flat_ms: int, bench: Bench) -> SaltPoint:
    bench.check_sensor(flat_ms)
    plateau = Plateau()
    for reading in bench.readings(flat_ms - BEFORE_FLAT_MS, flat_ms + 1):
        plateau = settle(plateau, reading)
    humidity_pct, temperature_C, ended_ms = plateau.humidity_pct, plateau.temperature_C, plateau.ended_ms
    if humidity_pct is None or temperature_C is None or ended_ms is None or not plateau.is_flat:
        raise CalibrationRefused(say("Over {salt}: {why}", salt=salt.word, why=behind_a_colon(plateau.sentence)))
    return SaltPoint(raw_pct=humidity_pct, temperature_C=temperature_C, time_ms=ended_ms)


def _air_speed(command: CalibrateAirSpeed, bench: Bench) -> AirSpeedCalibration:
    bench.check_sensor(command.still.start_ms)
    points = [air_point(bench.readings(command.still.start_ms, command.still.end_ms + 1), 0.0)]
    for walk in command.walks:
        bench.check_sensor(walk.start_ms)
        speed_m_s = walked_speed_m_s(walk.distance_m, (walk.end_ms - walk.start_ms) / 1000)
        points.append(air_point(bench.readings(walk.start_ms, walk.end_ms + 1), speed_m_s))
    return calibrate_air_speed(points, bead_C=command.bead_C)
