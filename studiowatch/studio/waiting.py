"""What the room must come to before a coat may be laid, and about how long that takes: as it heads now, or as usual.

`Outlook` is what anything must offer that foretells the room; `RoomPast` is the plain one: a straight line through the
last hour, else what the days before did from this time of day on. Where neither tells, nobody knows, and that is said.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from enum import StrEnum
from typing import Protocol

import numpy as np
from numpy.typing import NDArray

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.physics.moist_air import dew_point
from studiowatch.room.limits import DEW_MARGIN, FILM_MARGIN, HUMIDITY
from studiowatch.speech.words import mark, say
from studiowatch.studio.concern import AirNow

FILM_COOLING_K = 3.0  # K that a drying film may be colder than the air in an ordinary room; assumption
MINUTE_MS = 60_000  # ms
DAY_MS = 86_400_000  # ms
TREND_MS = 60 * MINUTE_MS  # ms of the past that the present trend is read from; assumption
LEAST_MINUTES = 30  # readings, one a minute, that a trend rests on at least; assumption
SURE = 3.0  # times its standard error that a slope must be, so that noise is no trend; assumption
FURTHEST_MS = 3 * 3_600_000  # ms ahead that a straight line is believed; assumption
LASTS_MS = 30 * MINUTE_MS  # ms that the room must have stayed fit on a day before, to count; assumption
LEAST_DAYS = 3  # days before that "usually" rests on at least; assumption
MOST_DAYS = 14  # days before that are looked at; assumption
USUAL_SHARE = 2 / 3  # of those days on which it must have come; assumption
LEAST_C, LEAST_PCT = -40.0, 0.5  # °C and %, below which no dew point is asked for

UNKNOWN = mark("How long that takes is not known.")


class Quantity(StrEnum):
    """What must change."""

    HUMIDITY = "humidity"
    TEMPERATURE = "temperature"
    DEW_MARGIN = "air above its dew point"  # not said


@dataclass(frozen=True, slots=True, kw_only=True)
class Need:
    """The room must come to `limit` (%, °C or K) or less, or, where `is_least`, to it or more."""

    quantity: Quantity
    limit: float
    is_least: bool

    def is_met(self, value: float) -> bool:
        """Return whether `value` will do."""
        return value >= self.limit if self.is_least else value <= self.limit


@dataclass(frozen=True, slots=True, kw_only=True)
class Guess:
    """When a need is met, UTC ms, and on what that rests, in words."""

    time_ms: int
    basis: str


class Outlook(Protocol):
    """Foretells the room."""

    def met(self, need: Need, now_ms: int) -> Guess | None:
        """Return when `need` is likely met, or None if that is not known."""
        ...


def needs_of(sheet: DataSheet | None) -> tuple[Need, ...]:
    """Return what the room must be to lay a coat of `sheet`; None takes the general limits."""
    needs = [Need(quantity=Quantity.DEW_MARGIN, limit=DEW_MARGIN.act, is_least=True)]
    if sheet is None:
        return (*needs, Need(quantity=Quantity.HUMIDITY, limit=HUMIDITY.caution, is_least=False))
    if sheet.max_humidity_pct is not None or sheet.kind is not Kind.SOLVENTBORNE:
        limit_pct = HUMIDITY.caution if sheet.max_humidity_pct is None else sheet.max_humidity_pct
        needs.append(Need(quantity=Quantity.HUMIDITY, limit=limit_pct, is_least=False))
    least_C = [] if sheet.apply_C is None else [sheet.apply_C[0]]
    if sheet.mfft_C is not None:
        least_C.append(sheet.mfft_C + FILM_MARGIN.act + FILM_COOLING_K)
    if least_C:
        needs.append(Need(quantity=Quantity.TEMPERATURE, limit=max(least_C), is_least=True))
    if sheet.apply_C is not None:
        needs.append(Need(quantity=Quantity.TEMPERATURE, limit=sheet.apply_C[1], is_least=False))
    return tuple(needs)


def unmet(air: AirNow, sheet: DataSheet | None) -> tuple[Need, ...]:
    """Return what the room must still come to; what is not measured is not among it."""
    dew_K = None if None in (air.temperature_C, air.dew_point_C) else _margin_K(air)
    now = {
        Quantity.HUMIDITY: air.humidity_pct,
        Quantity.TEMPERATURE: air.temperature_C,
        Quantity.DEW_MARGIN: dew_K,
    }
    return tuple(
        need for need in needs_of(sheet) if (value := now[need.quantity]) is not None and not need.is_met(value)
    )


def _margin_K(air: AirNow) -> float:
    return (air.temperature_C or 0.0) - (air.dew_point_C or 0.0)


def how_long(needs: Sequence[Need], outlook: Outlook, now_ms: int, when_text: Callable[[int], str]) -> str:
    """Return about how long it takes until all `needs` are met, in one sentence, or "" if there are none."""
    if not needs:
        return ""
    guesses = [outlook.met(need, now_ms) for need in needs]
    known = [guess for guess in guesses if guess is not None]
    if len(known) < len(guesses):
        return say(UNKNOWN)
    last = max(known, key=lambda guess: guess.time_ms)
    return say(
        "That is likely from about {time} ({span}): {reason}.",
        time=when_text(last.time_ms),
        span=_span(last.time_ms - now_ms),
        reason=last.basis,
    )


def _span(ms: int) -> str:
    minutes = max(1, round(ms / MINUTE_MS))
    if minutes < 90:  # noqa: PLR2004 - minutes are read more easily up to an hour and a half
        return say("{minutes} min", minutes=5 * max(1, round(minutes / 5)))
    return say("{hours} h", hours=round(minutes / 60))


@dataclass(frozen=True, slots=True, kw_only=True)
class RoomPast:
    """The room by the minute, as far back as is known.

    Attributes
    ----------
    time_ms : (n,) int64
        UTC ms, rising; a minute without a reading is not there.
    temperature_C, humidity_pct : (n,) float64
        NaN where not measured.
    """

    time_ms: NDArray[np.int64] = field(default_factory=lambda: np.empty(0, np.int64))
    temperature_C: NDArray[np.float64] = field(default_factory=lambda: np.empty(0))
    humidity_pct: NDArray[np.float64] = field(default_factory=lambda: np.empty(0))

    def met(self, need: Need, now_ms: int) -> Guess | None:
        """Return when `need` is met as the room heads now, else as it usually is from this time of day on."""
        values = self._values(need.quantity)
        known = ~np.isnan(values)
        times_ms, values = self.time_ms[known], values[known]
        return _by_trend(times_ms, values, need, now_ms) or _as_usual(times_ms, values, need, now_ms)

    def _values(self, quantity: Quantity) -> NDArray[np.float64]:
        if quantity is Quantity.HUMIDITY:
            return self.humidity_pct
        if quantity is Quantity.TEMPERATURE:
            return self.temperature_C
        usable = (self.temperature_C > LEAST_C) & (self.humidity_pct > LEAST_PCT)
        margins = np.full(self.time_ms.size, np.nan)
        margins[usable] = self.temperature_C[usable] - dew_point(self.temperature_C[usable], self.humidity_pct[usable])
        return margins


def _by_trend(times_ms: NDArray[np.int64], values: NDArray[np.float64], need: Need, now_ms: int) -> Guess | None:
    """Return when the straight line through the last hour meets the limit, if it is steep enough to be one."""
    recent = (times_ms > now_ms - TREND_MS) & (times_ms <= now_ms)
    if int(recent.sum()) < LEAST_MINUTES:
        return None
    at_min, value = (times_ms[recent] - now_ms) / MINUTE_MS, values[recent]
    spread = at_min - at_min.mean()
    slope = float(spread @ value / (spread @ spread))
    now_value = float(value.mean() - slope * at_min.mean())
    residual = value - now_value - slope * at_min
    # minutes of one room are alike: as many are counted as there are spans of five
    error = float(np.sqrt(residual @ residual / max(1, value.size - 2) * 5.0 / (spread @ spread)))
    gap = need.limit - now_value
    if gap == 0 or slope * gap <= 0 or abs(slope) <= SURE * error:
        return None
    ahead_ms = round(gap / slope * MINUTE_MS)
    if ahead_ms > FURTHEST_MS:
        return None
    return Guess(time_ms=now_ms + ahead_ms, basis=say(_TRENDS[need.quantity, slope > 0]))


_TRENDS = {
    (Quantity.HUMIDITY, True): mark("the humidity is rising as it did in the last hour"),
    (Quantity.HUMIDITY, False): mark("the humidity is falling as it did in the last hour"),
    (Quantity.TEMPERATURE, True): mark("the temperature is rising as it did in the last hour"),
    (Quantity.TEMPERATURE, False): mark("the temperature is falling as it did in the last hour"),
    (Quantity.DEW_MARGIN, True): mark("the air above its dew point is rising as it did in the last hour"),
    (Quantity.DEW_MARGIN, False): mark("the air above its dew point is falling as it did in the last hour"),
}
"""By what changes, and whether it rises."""


def _as_usual(times_ms: NDArray[np.int64], values: NDArray[np.float64], need: Need, now_ms: int) -> Guess | None:
    """Return the middle of the times at which the days before met the limit, counted from this time of day on."""
    afters_ms: list[int] = []
    days = 0
    for day in range(1, MOST_DAYS + 1):
        from_ms = now_ms - day * DAY_MS
        within = (times_ms >= from_ms) & (times_ms < from_ms + DAY_MS)
        if int(within.sum()) < LEAST_MINUTES:
            continue
        days += 1
        after_ms = _first_lasting(times_ms[within], values[within], need)
        if after_ms is not None:
            afters_ms.append(after_ms - from_ms)
    if days < LEAST_DAYS or len(afters_ms) < USUAL_SHARE * days:
        return None
    middle_ms = int(np.median(afters_ms))
    return Guess(
        time_ms=now_ms + middle_ms,
        basis=say("so it was on {many} of the last {days} days", many=len(afters_ms), days=days),
    )


def _first_lasting(times_ms: NDArray[np.int64], values: NDArray[np.float64], need: Need) -> int | None:
    """Return when the limit was first met for as long as it takes to lay a coat, UTC ms, or None."""
    since_ms: int | None = None
    for time_ms, value in zip(times_ms.tolist(), values.tolist(), strict=True):
        if not need.is_met(value):
            since_ms = None
        elif since_ms is None:
            since_ms = time_ms
        if since_ms is not None and time_ms - since_ms >= LASTS_MS:
            return since_ms
    return None
