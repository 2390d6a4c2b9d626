"""A fan that is meant to go on over a wet coat: said before, to whom it concerns, and no longer than it does."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.room.air_movement import Movement
from studiowatch.room.trend import Crossing
from studiowatch.studio.concern import AirNow, CoatAtRisk, Concern, Kind
from studiowatch.studio.heading import Figure
from studiowatch.studio.watch import find_concerns
from studiowatch.studio.words import Level

from .watched_room import CALM, FAN, KILN, MARSH, NOW_MS, clock_text

HOUR_MS = 3_600_000


class Meant:
    """A room in which a fan is meant to go on at a time."""

    def __init__(self, at_ms: int | None) -> None:
        self.at_ms = at_ms

    def until(self, figure: Figure, distance: float, *, said_before: bool) -> Crossing | None:
        del figure, distance, said_before
        return None

    def fan_from_ms(self, now_ms: int) -> int | None:
        del now_ms
        return self.at_ms


def look(*coats: CoatAtRisk, air: AirNow = CALM, at_ms: int | None = NOW_MS + HOUR_MS) -> tuple[Concern, ...]:
    return find_concerns(air, coats, now_ms=NOW_MS, clock_text=clock_text, heading=Meant(at_ms))


def test_that_it_is_a_caution_that_names_the_time_and_the_coats_and_makes_no_sound() -> None:
    (concern,) = look(MARSH, KILN)
    assert (concern.kind, concern.level, concern.may_sound) == (Kind.AIR_MOVING, Level.CAUTION, False)
    assert concern.sentence.headline == "You mean to have a fan on from 15:12, over two wet coats"
    assert "Salt Marsh and Kiln Light are likely still wet then." in concern.sentence.detail
    assert concern.expected_ms == NOW_MS + HOUR_MS


@pytest.mark.parametrize(
    "coat",
    [
        replace(MARSH, safe_ms=NOW_MS + HOUR_MS),
        replace(MARSH, covered=True),
        replace(MARSH, wet=False),
    ],
)
def test_that_a_coat_that_is_dry_or_covered_by_then_is_none_of_it(coat: CoatAtRisk) -> None:
    assert look(coat) == ()
    assert [one.piece_keys for one in look(coat, KILN)] == [("p2",)]


def test_that_it_is_said_without_an_air_sensor_too_and_never_as_past() -> None:
    blind = replace(CALM, air_speed_m_s=None, movement=Movement.UNKNOWN)
    (concern,) = look(MARSH, air=blind)
    assert concern.expected_ms == NOW_MS + HOUR_MS
    again = find_concerns(
        blind, [MARSH], now_ms=NOW_MS + 1000, clock_text=clock_text, before=[concern], heading=Meant(NOW_MS + HOUR_MS)
    )
    assert [one.sentence for one in again] == [concern.sentence]
    assert find_concerns(blind, [MARSH], now_ms=NOW_MS + 2000, clock_text=clock_text, before=again) == ()


def test_that_air_that_moves_now_goes_before_it_and_no_fan_says_nothing() -> None:
    (concern,) = look(MARSH, air=FAN)
    assert concern.expected_ms is None
    assert concern.level is Level.ACT
    assert look(MARSH, at_ms=None) == ()
