"""What she can do to have the sensors read right: the times a calibration was made at, tried, kept, taken back."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.room.king_law import BEAD_C


@dataclass(frozen=True, slots=True, kw_only=True)
class CalibrateHumidity:
    """The box read flat over each salt at these UTC ms; the readings of the half hour before are in the log."""

    magnesium_ms: int
    sodium_ms: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Spell:
    """From `start_ms` to `end_ms`, UTC ms."""

    start_ms: int
    end_ms: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Walk:
    """The sensor was carried over `distance_m` through still air, evenly, from `start_ms` to `end_ms`, UTC ms."""

    start_ms: int
    end_ms: int
    distance_m: float


@dataclass(frozen=True, slots=True, kw_only=True)
class CalibrateAirSpeed:
    """The bead was under a cup, and then walked; the readings are in the log. `bead_C` is what the bead is held at."""

    still: Spell
    walks: tuple[Walk, ...]
    bead_C: float = BEAD_C


@dataclass(frozen=True, slots=True, kw_only=True)
class TryCalibration:
    """Show what a calibration would be, in the snapshot; nothing is kept."""

    of: CalibrateHumidity | CalibrateAirSpeed


@dataclass(frozen=True, slots=True, kw_only=True)
class WithdrawCalibration:
    """Take a calibration back: readings show what they would without it."""

    calibration_key: str


CalibrationCommand = CalibrateHumidity | CalibrateAirSpeed | TryCalibration | WithdrawCalibration
