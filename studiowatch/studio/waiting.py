"""What the room must come to before a coat may be laid, and about how long that takes: as it heads now, or as usual.

`Outlook` is what anything must offer that foretells the room. Where it does not know, that is said.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from enum import StrEnum
from typing import Protocol

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.room.limits import DEW_MARGIN, FILM_MARGIN, HUMIDITY
from studiowatch.speech.words import mark, say
from studiowatch.studio.concern import AirNow

FILM_COOLING_K = 3.0  # K that a drying film may be colder than the air in an ordinary room; assumption
MINUTE_MS = 60_000  # ms

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
