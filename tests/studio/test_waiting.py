"""About how long until the room is fit: against rooms that are made so that the answer is known."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from studiowatch.coats.data_sheet import DataSheet
from studiowatch.physics.moist_air import dew_point
from studiowatch.room.air_movement import Movement
from studiowatch.service.sheet_shelf import built_in_sheets
from studiowatch.studio.concern import AirNow
from studiowatch.studio.sentence import room_check
from studiowatch.studio.waiting import UNKNOWN, Guess, Need, Quantity, RoomPast, how_long, unmet
from studiowatch.studio.words import Level

NOW_MS = 1_772_460_000_000
MINUTE_MS = 60_000
DAY_MS = 86_400_000
DRY_ENOUGH = Need(quantity=Quantity.HUMIDITY, limit=75.0, is_least=False)
WARM_ENOUGH = Need(quantity=Quantity.TEMPERATURE, limit=16.0, is_least=True)
SHEETS = built_in_sheets()


def past(minutes: int, humidity_pct: np.ndarray | float, temperature_C: np.ndarray | float = 20.0) -> RoomPast:
    times_ms = NOW_MS - MINUTE_MS * np.arange(minutes - 1, -1, -1, dtype=np.int64)
    full = np.ones(minutes)
    return RoomPast(time_ms=times_ms, humidity_pct=humidity_pct * full, temperature_C=temperature_C * full)


def noise(seed: int, minutes: int, spread: float) -> np.ndarray:
    """Return noise whose minutes are alike over about three minutes, as of a room in which doors open."""
    drawn = np.random.default_rng(seed).normal(size=minutes + 50)
    made = np.zeros(minutes + 50)
    for at in range(1, made.size):
        made[at] = 0.7 * made[at - 1] + drawn[at]
    return spread * made[50:] / made[50:].std()


@pytest.mark.parametrize("rate_pct_h", [-4.0, -8.0, -20.0])
def test_that_a_room_that_dries_evenly_is_fit_when_its_line_says_so(rate_pct_h: float) -> None:
    falling = 81.0 + rate_pct_h * np.arange(-89, 1) / 60.0 + noise(3, 90, 0.1)
    guess = past(90, falling).met(DRY_ENOUGH, NOW_MS)
    assert guess is not None
    assert (guess.time_ms - NOW_MS) / MINUTE_MS == pytest.approx(60.0 * 6.0 / -rate_pct_h, rel=0.12)
    assert guess.basis.startswith("the humidity is falling")


def test_that_a_room_that_moves_away_or_hardly_moves_promises_nothing() -> None:
    assert past(90, 81.0 + 5.0 * np.arange(-89, 1) / 60.0).met(DRY_ENOUGH, NOW_MS) is None
    assert past(90, 81.0).met(DRY_ENOUGH, NOW_MS) is None
    assert past(90, 81.0 - 1.0 * np.arange(-89, 1) / 60.0).met(DRY_ENOUGH, NOW_MS) is None  # six hours off


def test_that_the_noise_of_a_steady_room_is_seldom_taken_for_a_trend() -> None:
    told = [past(90, 76.0 + noise(seed, 90, 0.5)).met(DRY_ENOUGH, NOW_MS) for seed in range(400)]
    # three standard errors, one side: 0.13 % if they are right, a few times that where the noise is alike for longer
    assert sum(guess is not None for guess in told) <= 4


def test_that_the_hour_at_which_the_days_before_were_dry_is_told_with_how_many_they_were() -> None:
    minutes = 5 * 1440
    at_min = np.arange(-minutes + 1, 1)
    humidity_pct = np.where((at_min % 1440 >= 200) & (at_min % 1440 < 500), 60.0, 85.0)  # dry from 200 min on
    guess = past(minutes, humidity_pct).met(DRY_ENOUGH, NOW_MS)
    assert guess is not None
    assert (guess.time_ms - NOW_MS) / MINUTE_MS == pytest.approx(200, abs=1)
    assert guess.basis == "so it was on 5 of the last 5 days"


def test_that_two_days_or_a_dry_spell_too_short_to_lay_a_coat_make_no_habit() -> None:
    at_min = np.arange(-5 * 1440 + 1, 1)
    short = np.where((at_min % 1440 >= 200) & (at_min % 1440 < 220), 60.0, 85.0)
    assert past(5 * 1440, short).met(DRY_ENOUGH, NOW_MS) is None
    long = np.where((at_min % 1440 >= 200) & (at_min % 1440 < 500), 60.0, 85.0)
    assert past(2 * 1440, long[-2 * 1440 :]).met(DRY_ENOUGH, NOW_MS) is None


def test_that_an_empty_log_knows_nothing() -> None:
    assert RoomPast().met(WARM_ENOUGH, NOW_MS) is None
    assert how_long((WARM_ENOUGH,), RoomPast(), NOW_MS, str) == UNKNOWN
    assert how_long((), RoomPast(), NOW_MS, str) == ""


def test_that_minutes_without_a_reading_are_left_out() -> None:
    falling = 81.0 - 8.0 * np.arange(-89, 1) / 60.0
    falling[::2] = np.nan
    assert past(90, falling).met(DRY_ENOUGH, NOW_MS) is not None


class Fixed:
    """Another outlook: each quantity is met at a time of its own, or at none."""

    def __init__(self, **minutes: int) -> None:
        self._minutes = minutes

    def met(self, need: Need, now_ms: int) -> Guess | None:
        minutes = self._minutes.get(need.quantity.value)
        return None if minutes is None else Guess(time_ms=now_ms + minutes * MINUTE_MS, basis=need.quantity.value)


def test_that_the_last_of_several_needs_counts_and_one_unknown_makes_all_unknown() -> None:
    both = (DRY_ENOUGH, WARM_ENOUGH)
    words = how_long(both, Fixed(humidity=40, temperature=130), NOW_MS, lambda ms: f"+{(ms - NOW_MS) // MINUTE_MS}")
    assert words == "That is likely from about +130 (2 h): temperature."
    assert how_long(both, Fixed(humidity=40), NOW_MS, str) == UNKNOWN


@pytest.mark.parametrize("sheet", SHEETS.values(), ids=SHEETS)
def test_that_the_room_waits_for_something_exactly_where_the_check_says_to_wait(sheet: DataSheet) -> None:
    plain = AirNow(movement=Movement.STILL)
    for temperature_C in np.arange(4.0, 40.0, 1.5):
        for humidity_pct in np.arange(20.0, 99.0, 4.5):
            dew_C = float(dew_point(temperature_C, humidity_pct))
            air = replace(
                plain, temperature_C=float(temperature_C), humidity_pct=float(humidity_pct), dew_point_C=dew_C
            )
            waits = room_check(air, sheet, clock_text=str).level > Level.CALM
            assert waits == bool(unmet(air, sheet)), (temperature_C, humidity_pct)
