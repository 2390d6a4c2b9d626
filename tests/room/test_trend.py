"""Where a figure is heading: from a line with noise, doors and turns."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.room.trend import HORIZON_MS, LEAST_MS, trend_of

MINUTE_MS = 60_000.0
TIMES_MS = np.arange(60) * MINUTE_MS


def noisy(values: np.ndarray, seed: int, scatter: float = 0.1) -> np.ndarray:
    return values + np.random.default_rng(seed).normal(0.0, scatter, values.size)


@pytest.mark.parametrize("per_h", [6.0, 12.0, -6.0])
def test_that_a_straight_way_is_followed_to_the_limit(per_h: float) -> None:
    values = 60.0 + per_h * np.arange(60) / 60.0
    trend = trend_of(TIMES_MS, values)
    assert trend is not None
    crossing = trend.until(0.75 * per_h)  # so far as it goes in three quarters of an hour
    assert crossing is not None
    assert crossing.middle_ms == pytest.approx(45 * MINUTE_MS, rel=1e-6)


def test_that_the_range_holds_the_truth_as_often_as_it_says_and_is_no_wider_than_that_takes() -> None:
    held, widths_min = 0, []
    for seed in range(200):
        trend = trend_of(TIMES_MS, noisy(60.0 + 6.0 * np.arange(60) / 60.0, seed, 0.3))
        assert trend is not None
        crossing = trend.until(4.5)
        if crossing is None:
            continue
        held += crossing.low_ms <= 45 * MINUTE_MS <= crossing.high_ms
        widths_min.append((crossing.high_ms - crossing.low_ms) / MINUTE_MS)
    assert held >= 160  # p10 to p90 of a straight line; more, since a room is not one
    # by hand: 60 minutes of 17.3 min s.d. know a slope to 0.3 %/(17.3 √60) = 0.0022 % a minute, four times that is
    # allowed for, and p10 and p90 lie 1.28 of it away: 11.5 % of the slope, or 45 min less 4.7 and more 5.8. The last
    # minutes, which alone know it to a tenth, may add as much again
    assert 10.5 < np.median(widths_min) < 2.0 * 10.5


@pytest.mark.parametrize("seed", range(20))
def test_that_a_room_that_stays_as_it_is_heads_nowhere(seed: int) -> None:
    # by hand: noise of 0.1 % alone gives an hour a slope of 0.1/(17.3 √60) = 0.045 % an hour, s.d.: so near a limit is
    # passed within the hour by the bare line in two rooms of three
    trend = trend_of(TIMES_MS, noisy(np.full(60, 70.0), seed))
    assert trend is not None
    assert trend.until(0.02) is None
    assert trend.until(-0.02) is None


def test_that_a_door_that_opened_once_turns_nothing() -> None:
    values = 60.0 + 6.0 * np.arange(60) / 60.0
    opened = values.copy()
    opened[20:26] += 8.0
    with_door, without = trend_of(TIMES_MS, opened), trend_of(TIMES_MS, values)
    assert with_door is not None
    assert without is not None
    assert with_door.slope == pytest.approx(without.slope, rel=0.1)


def test_that_a_room_that_has_turned_is_not_told_by_its_hour() -> None:
    rising_then_level = np.minimum(60.0 + 9.0 * np.arange(60) / 60.0, 65.5)
    trend = trend_of(TIMES_MS, rising_then_level)
    assert trend is not None
    assert trend.until(5.0) is None


def test_that_half_an_hour_is_needed_and_an_hour_is_the_end() -> None:
    short = TIMES_MS[: int(LEAST_MS / MINUTE_MS)]
    assert trend_of(short, 60.0 + short / 1e6) is None
    trend = trend_of(TIMES_MS, 60.0 + np.arange(60) / 60.0)
    assert trend is not None
    assert trend.until(0.95) is not None
    assert trend.until(1.05) is None
    assert trend.until(1.05, said_before=True) is not None
    assert trend.until(-1.0) is None
    assert trend.until(0.0) is None


@given(st.lists(st.floats(-50.0, 100.0), min_size=40, max_size=60), st.floats(-50.0, 50.0))
def test_that_whatever_is_said_lies_ahead_and_within_the_horizon(values: list[float], distance: float) -> None:
    trend = trend_of(TIMES_MS[: len(values)], np.array(values))
    crossing = None if trend is None else trend.until(distance)
    if crossing is not None:
        assert 0 <= crossing.low_ms <= crossing.middle_ms <= crossing.high_ms
        assert crossing.middle_ms <= HORIZON_MS
