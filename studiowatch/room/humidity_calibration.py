"""A humidity sensor put right with two saturated salts: a straight line through two fixed points."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from studiowatch.physics.ranges import Array

COLDEST_C, WARMEST_C = 20.0, 25.0  # °C, the two columns of the table that are interpolated between
LEAST_GAIN, MOST_GAIN = 0.8, 1.2  # beyond, the sensor is broken or a slurry is wrong; assumption
OLDEST_MS = 48 * 3_600_000  # ms, both salts within two days, or the sensor may have shifted between; assumption
FULL_PCT = 100.0  # %RH, saturated; by definition
LEAST_APART_PCT = 20.0  # %RH between the two readings: the salts are 42 apart; assumption


class CalibrationRefused(ValueError):  # noqa: N818 - an answer, not a fault
    """A calibration that cannot be right; the message is one sentence for her."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Humidities:
    """What the air over a saturated salt has at the two temperatures of the table, %RH."""

    word: str
    at_20C_pct: float
    at_25C_pct: float


class Salt(Enum):
    """The two salts. Source: L. Greenspan (1977), J. Res. Natl. Bur. Stand. 81A, 89-96, table 2."""

    MAGNESIUM_CHLORIDE = Humidities(word="magnesium chloride", at_20C_pct=33.07, at_25C_pct=32.78)
    SODIUM_CHLORIDE = Humidities(word="sodium chloride (table salt)", at_20C_pct=75.47, at_25C_pct=75.29)

    @property
    def word(self) -> str:
        """Its name for her."""
        return self.value.word


def salt_humidity_pct(salt: Salt, temperature_C: float) -> float:
    """Return the humidity over `salt`, %RH, at 20 to 25 °C, between the table's two columns.

    Raises
    ------
    CalibrationRefused
        If the temperature lies outside.
    """
    if not COLDEST_C <= temperature_C <= WARMEST_C:
        raise CalibrationRefused(
            f"The box with {salt.word} is at {temperature_C:.1f} °C; the salts are known here from {COLDEST_C:g} to "
            f"{WARMEST_C:g} °C: move it to a place of that temperature."
        )
    share = (temperature_C - COLDEST_C) / (WARMEST_C - COLDEST_C)
    return salt.value.at_20C_pct + share * (salt.value.at_25C_pct - salt.value.at_20C_pct)


@dataclass(frozen=True, slots=True, kw_only=True)
class SaltPoint:
    """What the sensor itself read over one salt: %RH, °C, and the UTC ms at which that was."""

    raw_pct: float
    temperature_C: float
    time_ms: int


@dataclass(frozen=True, slots=True, kw_only=True)
class HumidityCalibration:
    """The straight line through both points; made by `calibrate_humidity` only.

    Attributes
    ----------
    gain : float
        True %RH per %RH read.
    """

    magnesium: SaltPoint
    sodium: SaltPoint

    @property
    def gain(self) -> float:
        """True %RH per %RH read."""
        low_pct, high_pct = self._true_pct
        return (high_pct - low_pct) / (self.sodium.raw_pct - self.magnesium.raw_pct)

    @property
    def _true_pct(self) -> tuple[float, float]:
        return (
            salt_humidity_pct(Salt.MAGNESIUM_CHLORIDE, self.magnesium.temperature_C),
            salt_humidity_pct(Salt.SODIUM_CHLORIDE, self.sodium.temperature_C),
        )

    def corrected_pct(self, raw_pct: float) -> float:
        """Return what the air has where the sensor reads `raw_pct`, %RH, from 0 to 100."""
        return min(max(self._line(raw_pct), 0.0), FULL_PCT)

    def corrected(self, raw_pct: Array) -> Array:
        """Return the same of an array of any shape."""
        low_pct = self._true_pct[0]
        return (low_pct + self.gain * (raw_pct - self.magnesium.raw_pct)).clip(0.0, FULL_PCT)

    def _line(self, raw_pct: float) -> float:
        return self._true_pct[0] + self.gain * (raw_pct - self.magnesium.raw_pct)


def calibrate_humidity(magnesium: SaltPoint, sodium: SaltPoint, *, now_ms: int) -> HumidityCalibration:
    """Return the calibration that two flat readings give.

    Parameters
    ----------
    magnesium, sodium : SaltPoint
        Means over a flat stretch above each salt, as the sensor itself read them.
    now_ms : int
        UTC ms.

    Raises
    ------
    CalibrationRefused
        If a temperature lies outside 20 to 25 °C, the salts were swapped, a reading is too old, or the gain lies
        outside 0.8 to 1.2.
    """
    for salt, point in ((Salt.MAGNESIUM_CHLORIDE, magnesium), (Salt.SODIUM_CHLORIDE, sodium)):
        _check_point(salt, point, now_ms)
    if sodium.raw_pct < magnesium.raw_pct:
        raise CalibrationRefused(
            f"The sensor read {magnesium.raw_pct:.1f} %RH over magnesium chloride and {sodium.raw_pct:.1f} %RH over "
            "sodium chloride, which is the damper one: the salts seem swapped; name them the other way round."
        )
    if sodium.raw_pct - magnesium.raw_pct < LEAST_APART_PCT:
        raise CalibrationRefused(
            f"The two readings, {magnesium.raw_pct:.1f} and {sodium.raw_pct:.1f} %RH, lie too close together for two "
            "different salts, which are 42 %RH apart: check what is in each box, and that it is a wet slurry."
        )
    calibration = HumidityCalibration(magnesium=magnesium, sodium=sodium)
    if not LEAST_GAIN <= calibration.gain <= MOST_GAIN:
        raise CalibrationRefused(
            f"The sensor's gain would be {calibration.gain:.2f}; {LEAST_GAIN:g} to {MOST_GAIN:g} is allowed: check "
            "both slurries and the seal of the box, and replace the sensor if it comes out so again."
        )
    return calibration


def _check_point(salt: Salt, point: SaltPoint, now_ms: int) -> None:
    if not 0.0 <= point.raw_pct <= FULL_PCT:
        raise CalibrationRefused(f"The humidity read over {salt.word} is {point.raw_pct:g} %RH; 0 to 100 is allowed.")
    salt_humidity_pct(salt, point.temperature_C)
    age_ms = now_ms - point.time_ms
    if not 0 <= age_ms <= OLDEST_MS:
        when = "lies in the future" if age_ms < 0 else f"is {age_ms / 3_600_000:.0f} h old"
        raise CalibrationRefused(
            f"The reading over {salt.word} {when}; both must be from the last {OLDEST_MS // 3_600_000} h: take it anew."
        )
