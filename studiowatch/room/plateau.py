"""Wait until flat: whether humidity and temperature in a sealed box have settled, and what they settled at.

One reading at a time; only sums of each minute are kept.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from studiowatch.room import figures
from studiowatch.room.readings import Reading
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say

_ROSE = mark("The humidity rose by {change} %RH in {minutes} minutes; at most {most} %RH counts as flat: wait longer.")
_FELL = mark("The humidity fell by {change} %RH in {minutes} minutes; at most {most} %RH counts as flat: wait longer.")
MINUTE_MS = 60_000
FLAT_MINUTES = 30  # looked back on: at one time constant of an hour the box is then within 0.3 %RH; assumption
MOST_CHANGE_PCT = 0.2  # %RH that the fitted line may change over those minutes; assumption
MOST_STRAY_PCT = 0.5  # %RH that any minute may lie off the mean: a lid that was lifted; assumption
MOST_STRAY_K = 0.5  # K that any minute may lie off the mean; assumption


@dataclass(frozen=True, slots=True, kw_only=True)
class _Minute:
    """Sums of the readings of one minute since 1970."""

    number: int
    count: int = 0
    humidity_pct: float = 0.0
    temperature_C: float = 0.0

    def with_reading(self, humidity_pct: float, temperature_C: float) -> _Minute:
        return replace(
            self,
            count=self.count + 1,
            humidity_pct=self.humidity_pct + humidity_pct,
            temperature_C=self.temperature_C + temperature_C,
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Plateau:
    """The last `FLAT_MINUTES` whole minutes without a hole, as the sensor itself reads them."""

    minutes: tuple[_Minute, ...] = ()
    running: _Minute | None = None

    @property
    def minutes_seen(self) -> int:
        """Whole minutes on end that have been seen, at most `FLAT_MINUTES`."""
        return len(self.minutes)

    @property
    def ended_ms(self) -> int | None:
        """UTC ms at which the last whole minute ended."""
        return (self.minutes[-1].number + 1) * MINUTE_MS if self.minutes else None

    @property
    def humidity_pct(self) -> float | None:
        """Mean over the minutes seen, %RH."""
        return _mean(self.humidities_pct) if self.minutes else None

    @property
    def temperature_C(self) -> float | None:
        """Mean over the minutes seen, °C."""
        return _mean(self._temperatures()) if self.minutes else None

    @property
    def humidities_pct(self) -> tuple[float, ...]:
        """Mean of each minute seen, %RH, the oldest first."""
        return tuple(minute.humidity_pct / minute.count for minute in self.minutes)

    @property
    def change_pct(self) -> float:
        """Change of the fitted line over the minutes seen, %RH; falling is negative."""
        return _change(self.humidities_pct)

    @property
    def is_flat(self) -> bool:
        """Whether `FLAT_MINUTES` have been seen and neither humidity nor temperature moved."""
        return not self.sentence

    @property
    def sentence(self) -> str:
        """Why it is not flat yet, one sentence with what to do, or ""."""
        units = chosen()
        if self.minutes_seen < FLAT_MINUTES:
            return say(
                "Read for {seen} of the {needed} minutes on end that are needed: leave the box shut and the board "
                "plugged in.",
                seen=self.minutes_seen,
                needed=FLAT_MINUTES,
            )
        if abs(self.change_pct) > MOST_CHANGE_PCT:
            return say(
                _ROSE if self.change_pct > 0 else _FELL,
                change=units.number(abs(self.change_pct), 1),
                minutes=FLAT_MINUTES,
                most=units.plain(MOST_CHANGE_PCT),
            )
        if _stray(self.humidities_pct) > MOST_STRAY_PCT:
            return say(
                "The humidity strayed by {strayed} %RH; at most {most} %RH counts as flat: leave the box shut.",
                strayed=units.number(_stray(self.humidities_pct), 1),
                most=units.plain(MOST_STRAY_PCT),
            )
        if _stray(self._temperatures()) > MOST_STRAY_K:
            return say(
                "The temperature strayed by {strayed}; at most {most} is allowed: put the box where it keeps its "
                "temperature, and wait.",
                strayed=figures.span(_stray(self._temperatures()), 1),
                most=figures.span(MOST_STRAY_K),
            )
        return ""

    def _temperatures(self) -> tuple[float, ...]:
        return tuple(minute.temperature_C / minute.count for minute in self.minutes)


def settle(plateau: Plateau, reading: Reading) -> Plateau:
    """Return the plateau after one reading as the sensor gave it.

    A minute without a reading, or a clock that was set back, begins anew; a reading that lacks a channel counts for
    nothing.
    """
    if reading.humidity_pct is None or reading.temperature_C is None:
        return plateau
    number = reading.time_ms // MINUTE_MS
    running = plateau.running
    if running is None or number not in (running.number, running.number + 1):
        plateau, running = Plateau(), _Minute(number=number)
    elif number == running.number + 1:
        plateau = Plateau(minutes=(*plateau.minutes, running)[-FLAT_MINUTES:])
        running = _Minute(number=number)
    return replace(plateau, running=running.with_reading(reading.humidity_pct, reading.temperature_C))


def _mean(values: tuple[float, ...]) -> float:
    return sum(values) / len(values)


def _stray(values: tuple[float, ...]) -> float:
    mean = _mean(values)
    return max(abs(value - mean) for value in values)


def _change(values: tuple[float, ...]) -> float:
    """Return the change of the line of least squares from one end to the other."""
    last = len(values) - 1
    if last < 1:
        return 0.0
    mean = _mean(values)
    moment = sum((at - last / 2) * (value - mean) for at, value in enumerate(values))
    return last * moment / sum((at - last / 2) ** 2 for at in range(last + 1))
