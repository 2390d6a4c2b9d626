"""A humidity sensor put right with two saturated salts: a straight line through two fixed points."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from studiowatch.physics.ranges import Array
from studiowatch.room import figures
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say

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

    MAGNESIUM_CHLORIDE = Humidities(word=mark("magnesium chloride"), at_20C_pct=33.07, at_25C_pct=32.78)
    SODIUM_CHLORIDE = Humidities(word=mark("sodium chloride (table salt)"), at_20C_pct=75.47, at_25C_pct=75.29)

    @property
    def word(self) -> str:
        """Its name for her."""
        return say(self.value.word)


def salt_humidity_pct(salt: Salt, temperature_C: float) -> float:
    """Return the humidity over `salt`, %RH, at 20 to 25 °C, between the table's two columns.

    Raises
    ------
    CalibrationRefused
        If the temperature lies outside.
    """
    if not COLDEST_C <= temperature_C <= WARMEST_C:
        raise CalibrationRefused(
            say(
                "The box with {salt} is at {temperature}; the salts are known here from {low} to {high}: "
                "move it to a place of that temperature.",
                salt=salt.word,
                temperature=chosen().temperature(temperature_C),
                low=figures.degrees(COLDEST_C),
                high=chosen().limit(WARMEST_C),
            )
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
            say(
                "The sensor read {magnesium} %RH over magnesium chloride and {sodium} %RH over sodium chloride, "
                "which is the damper one: the salts seem swapped; name them the other way round.",
                magnesium=chosen().number(magnesium.raw_pct, 1),
                sodium=chosen().number(sodium.raw_pct, 1),
            )
        )
    if sodium.raw_pct - magnesium.raw_pct < LEAST_APART_PCT:
        raise CalibrationRefused(
            say(
                "The two readings, {magnesium} and {sodium} %RH, lie too close together for two different salts, "
                "which are 42 %RH apart: check what is in each box, and that it is a wet slurry.",
                magnesium=chosen().number(magnesium.raw_pct, 1),
                sodium=chosen().number(sodium.raw_pct, 1),
            )
        )
    calibration = HumidityCalibration(magnesium=magnesium, sodium=sodium)
    if not LEAST_GAIN <= calibration.gain <= MOST_GAIN:
        raise CalibrationRefused(
            say(
                "The sensor's gain would be {gain}; {low} to {high} is allowed: check both slurries and the seal of "
                "the box, and replace the sensor if it comes out so again.",
                gain=chosen().number(calibration.gain, 2),
                low=chosen().plain(LEAST_GAIN),
                high=chosen().plain(MOST_GAIN),
            )
        )
    return calibration


def _check_point(salt: Salt, point: SaltPoint, now_ms: int) -> None:
    if not 0.0 <= point.raw_pct <= FULL_PCT:
        raise CalibrationRefused(
            say(
                "The humidity read over {salt} is {given} %RH; 0 to 100 is allowed.",
                salt=salt.word,
                given=chosen().plain(point.raw_pct),
            )
        )
    salt_humidity_pct(salt, point.temperature_C)
    age_ms = now_ms - point.time_ms
    if not 0 <= age_ms <= OLDEST_MS:
        oldest_h = OLDEST_MS // 3_600_000
        raise CalibrationRefused(
            say(
                "The reading over {salt} lies in the future; both must be from the last {most} h: take it anew.",
                salt=salt.word,
                most=oldest_h,
            )
            if age_ms < 0
            else say(
                "The reading over {salt} is {age} h old; both must be from the last {most} h: take it anew.",
                salt=salt.word,
                age=f"{age_ms / 3_600_000:.0f}",
                most=oldest_h,
            )
        )
