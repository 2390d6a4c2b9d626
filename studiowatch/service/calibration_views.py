"""What the window may know of the calibrations, frozen."""

from __future__ import annotations

from dataclasses import dataclass, field

from studiowatch.room.air_speed_calibration import AirSpeedCalibration
from studiowatch.room.humidity_calibration import HumidityCalibration
from studiowatch.room.plateau import Plateau
from studiowatch.service.calibration_commands import CalibrateAirSpeed, CalibrateHumidity


@dataclass(frozen=True, slots=True, kw_only=True)
class CalibrationView:
    """A calibration that holds.

    Attributes
    ----------
    sensor : str
        Serial number of its sensor; `is_present` tells whether that is on the board now.
    made_ms, recheck_ms : int
        UTC ms from which it holds, and from which it is due to be checked.
    sentence : str
        What it does, or how good it is.
    calibration : HumidityCalibration or AirSpeedCalibration
        Its points and its line or law, for drawing.
    """

    key: str
    sensor: str
    made_ms: int
    recheck_ms: int
    is_present: bool
    sentence: str
    calibration: HumidityCalibration | AirSpeedCalibration


@dataclass(frozen=True, slots=True, kw_only=True)
class DraftView:
    """What a calibration that was tried would be; `of` would make it hold."""

    of: CalibrateHumidity | CalibrateAirSpeed
    calibration: HumidityCalibration | AirSpeedCalibration


@dataclass(frozen=True, slots=True, kw_only=True)
class CalibrationsView:
    """What she may know of the calibrations.

    Attributes
    ----------
    sensor : str
        The sensor that is on now, "" if it says no name.
    plateau : Plateau
        Whether it reads flat.
    holding : tuple of CalibrationView
        What holds for each sensor.
    draft : DraftView or None
        What was tried last.
    """

    sensor: str = ""
    plateau: Plateau = field(default_factory=Plateau)
    holding: tuple[CalibrationView, ...] = ()
    draft: DraftView | None = None
