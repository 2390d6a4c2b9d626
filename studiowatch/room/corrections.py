"""Which calibration holds for a reading: that of the sensor that was on at its time, from the day it was made.

What is stored stays what the sensor said. A calibration that was withdrawn counts as never made: the one before it
holds, or none. Readings from outside are corrected by none.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace

from studiowatch.room.air_speed_calibration import AirSpeedCalibration
from studiowatch.room.humidity_calibration import HumidityCalibration
from studiowatch.room.readings import Reading
from studiowatch.room.typed import is_typed

UNNAMED = ""  # a sensor that says no serial number
FOREVER_MS = 1 << 62  # ms, beyond any time


@dataclass(frozen=True, slots=True, kw_only=True)
class Kept:
    """A calibration as it is kept.

    Attributes
    ----------
    sensor : str
        Serial number of the sensor that it belongs to.
    made_ms : int
        UTC ms from which it holds.
    withdrawn_ms : int or None
        UTC ms at which she withdrew it.
    """

    key: str
    sensor: str
    made_ms: int
    calibration: HumidityCalibration | AirSpeedCalibration
    withdrawn_ms: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Sighting:
    """From `time_ms`, UTC ms, on this sensor was the one on the board."""

    time_ms: int
    sensor: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Imported:
    """Readings with start <= time < end, UTC ms, came from outside: no sensor of hers read them."""

    start_ms: int
    end_ms: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Stretch:
    """A stretch of time with one sensor and one set of calibrations, until the next begins."""

    start_ms: int
    sensor: str
    humidity: HumidityCalibration | None = None
    air_speed: AirSpeedCalibration | None = None

    def corrected(self, reading: Reading) -> Reading:
        """Return a reading of this stretch with humidity put right, and air speed where only a voltage was read."""
        if self.humidity is not None and reading.humidity_pct is not None:
            reading = replace(reading, humidity_pct=self.humidity.corrected_pct(reading.humidity_pct))
        if self.air_speed is not None and reading.air_signal_mV is not None and reading.air_speed_m_s is None:
            speed_m_s = self.air_speed.law.speed_m_s(reading.air_signal_mV, reading.temperature_C)
            reading = replace(reading, air_speed_m_s=speed_m_s)
        return reading


@dataclass(frozen=True, slots=True, kw_only=True)
class Corrections:
    """What holds when; made by `corrections`.

    Attributes
    ----------
    stretches : tuple of Stretch
        In the order of time, the first from the beginning of time.
    imported : tuple of Imported
        What came from outside, in the order of arrival; one may lie within another that came before it.
    """

    stretches: tuple[Stretch, ...] = (Stretch(start_ms=-FOREVER_MS, sensor=UNNAMED),)
    imported: tuple[Imported, ...] = ()

    def at(self, time_ms: int) -> Stretch:
        """Return the stretch that `time_ms`, UTC ms, lies in."""
        return self.stretches[bisect_right(self.stretches, time_ms, key=lambda stretch: stretch.start_ms) - 1]

    def corrected(self, reading: Reading) -> Reading:
        """Return `reading` as the calibrations of its time have it; what was typed is no sensor's."""
        return reading if is_typed(reading) else self.at(reading.time_ms).corrected(reading)

    def between(self, start_ms: int, end_ms: int) -> Iterator[tuple[Stretch, int, int]]:
        """Yield the stretches that reach into start <= time < end, with the part of that range that each takes."""
        ends = (*(stretch.start_ms for stretch in self.stretches[1:]), FOREVER_MS)
        for stretch, until_ms in zip(self.stretches, ends, strict=True):
            if stretch.start_ms < end_ms and until_ms > start_ms:
                yield stretch, max(stretch.start_ms, start_ms), min(until_ms, end_ms)


def corrections(kept: Iterable[Kept], sightings: Iterable[Sighting], imported: Iterable[Imported]) -> Corrections:
    """Return what holds when, from all calibrations and all sightings, in any order, and what was imported."""
    imported = tuple(imported)
    valid = sorted((one for one in kept if one.withdrawn_ms is None), key=lambda one: one.made_ms)
    seen = sorted(sightings, key=lambda sighting: sighting.time_ms)
    outside = _apart(imported)
    edges_ms = {edge_ms for one in outside for edge_ms in (one.start_ms, one.end_ms)}
    starts_ms = sorted({one.made_ms for one in valid} | {sighting.time_ms for sighting in seen} | edges_ms)
    stretches = [Stretch(start_ms=-FOREVER_MS, sensor=UNNAMED)]
    for start_ms in starts_ms:
        sensor = next((sighting.sensor for sighting in reversed(seen) if sighting.time_ms <= start_ms), UNNAMED)
        at = bisect_right(outside, start_ms, key=lambda one: one.start_ms) - 1
        is_hers = at < 0 or start_ms >= outside[at].end_ms
        mine = [one.calibration for one in valid if is_hers and one.sensor == sensor and one.made_ms <= start_ms]
        stretches.append(
            Stretch(
                start_ms=start_ms,
                sensor=sensor,
                humidity=next((one for one in reversed(mine) if isinstance(one, HumidityCalibration)), None),
                air_speed=next((one for one in reversed(mine) if isinstance(one, AirSpeedCalibration)), None),
            )
        )
    return Corrections(stretches=tuple(stretches), imported=imported)


def _apart(imported: Iterable[Imported]) -> list[Imported]:
    """Return the same stretches, rising, those that touch or overlap as one."""
    found: list[Imported] = []
    for one in sorted(imported, key=lambda one: one.start_ms):
        if found and one.start_ms <= found[-1].end_ms:
            found[-1] = replace(found[-1], end_ms=max(found[-1].end_ms, one.end_ms))
        else:
            found.append(one)
    return found


def newest(kept: Iterable[Kept]) -> tuple[Kept, ...]:
    """Return, for each sensor and kind, the calibration that holds now, in the order in which they were made."""
    valid = sorted((one for one in kept if one.withdrawn_ms is None), key=lambda one: one.made_ms)
    latest = {(one.sensor, type(one.calibration)): one for one in valid}
    return tuple(one for one in valid if latest[one.sensor, type(one.calibration)] is one)
