"""The air that a look ahead counts on, and when it has changed enough to look again."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import Protocol

from studiowatch.coats.exposure import ahead
from studiowatch.physics.air import Air, AnyAir

CALM_M_S = 0.1  # m/s, the most that a look ahead counts on: a fan over a wet coat is not there to stay; assumption
OTHER_K, OTHER_PCT = 1.0, 5.0  # changes of the air that make it another room: something was put on in it; assumption
STEADY_K, STEADY_PCT, STEADY_M_S = 0.2, 1.0, 0.02  # changes of the air that move a time by a percent or so; assumption


def calm(air: Air) -> Air:
    """Return the air as it is without what moves it."""
    return replace(air, air_speed_m_s=min(air.air_speed_m_s, CALM_M_S))


def alike(before: Air, after: Air) -> bool:
    """Return whether a look ahead in the one would say the same as in the other."""
    return (
        is_within(before, after, STEADY_K, STEADY_PCT)
        and abs(after.air_speed_m_s - before.air_speed_m_s) < STEADY_M_S
        and not _is_read_anew(before, after)
    )


def is_another(before: Air, after: Air) -> bool:
    """Return whether the room is another than it was, and does not only wander."""
    return not is_within(before, after, OTHER_K, OTHER_PCT) or _is_read_anew(before, after)


def is_within(before: Air, after: Air, below_K: float, below_pct: float) -> bool:
    """Return whether temperature and humidity changed by less than so much, K and %RH."""
    return (
        abs(after.temperature_C - before.temperature_C) < below_K
        and abs(after.humidity_pct - before.humidity_pct) < below_pct
    )


def _is_read_anew(before: Air, after: Air) -> bool:
    """Return whether the room was typed, or is measured, since: that narrows a range."""
    if before.age_s is None or after.age_s is None:
        return before.age_s is not after.age_s
    return after.age_s < before.age_s


class RoomToCome(Protocol):
    """Foretells the room for the films in it."""

    @property
    def made_ms(self) -> int | None:
        """UTC ms at which it was last foretold; None before that."""
        ...

    def spans(self, air: Air, at_ms: int, horizon_s: float) -> Sequence[tuple[AnyAir, float]] | None:
        """Return the air from `at_ms`, UTC ms, on, each with how long it holds, s; None if it stays as `air` is."""
        ...


class Stays:
    """A room that stays as it is."""

    made_ms: int | None = None

    def spans(self, air: Air, at_ms: int, horizon_s: float) -> None:
        """Return None."""
        del air, at_ms, horizon_s


STAYS: RoomToCome = Stays()

AirAhead = Callable[[int, float], Sequence[tuple[AnyAir, float]]]
"""The air of so many seconds from a UTC ms on: airs in order and how long each holds, s; the last is carried on."""


def steady(air: Air) -> AirAhead:
    """Return an air ahead that stays as it is now; what nobody measures is less and less certain to stay."""
    still = calm(air)
    spans: dict[float, tuple[tuple[Air, float], ...]] = {}

    def air_ahead(_from_ms: int, horizon_s: float) -> Sequence[tuple[Air, float]]:
        if horizon_s not in spans:
            spans[horizon_s] = tuple(ahead(still, horizon_s))
        return spans[horizon_s]

    return air_ahead
