"""Wait until flat: when a sealed box counts as settled, and what it settled at."""

from __future__ import annotations

from collections.abc import Callable
from math import exp

import numpy as np
import pytest

from studiowatch.room.plateau import FLAT_MINUTES, Plateau, settle
from studiowatch.room.readings import Reading

START_MS = 1_772_460_000_000  # a whole minute
NOISE_PCT = 0.06


def watched(
    minutes: int,
    humidity_pct: Callable[[float], float],
    temperature_C: Callable[[float], float] = lambda _: 22.0,
    plateau: Plateau | None = None,
    from_minute: int = 0,
) -> Plateau:
    rng = np.random.default_rng(7)
    plateau = Plateau() if plateau is None else plateau
    for second in range(60 * from_minute, 60 * (from_minute + minutes) + 1, 2):
        reading = Reading(
            time_ms=START_MS + 1000 * second,
            humidity_pct=humidity_pct(second / 60) + float(rng.normal(0.0, NOISE_PCT)),
            temperature_C=temperature_C(second / 60),
        )
        plateau = settle(plateau, reading)
    return plateau


def test_that_a_settled_box_is_flat_after_thirty_minutes_and_not_before() -> None:
    early = watched(FLAT_MINUTES - 1, lambda _: 33.0)
    assert early.sentence.startswith("Read for 29 of the 30 minutes")
    flat = watched(FLAT_MINUTES, lambda _: 33.0)
    assert flat.is_flat
    # 900 readings of noise 0.06: the mean errs by 0.002
    assert flat.humidity_pct == pytest.approx(33.0, abs=0.01)
    assert flat.temperature_C == pytest.approx(22.0)
    assert flat.ended_ms == START_MS + FLAT_MINUTES * 60_000


@pytest.mark.parametrize("time_constant_min", [15.0, 60.0])
def test_that_a_box_is_flat_only_once_it_is_near_where_it_goes(time_constant_min: float) -> None:
    # a first-order approach: with 0.2 %RH left to change in 30 minutes, at most 0.2 / (exp(30/60) - 1) = 0.31 %RH are
    # still to come after them, and the mean of those minutes lies under their end by less than the 0.2
    plateau, minute = Plateau(), 0
    while not plateau.is_flat:
        plateau = watched(1, lambda at: 75.3 - 25.3 * exp(-at / time_constant_min), plateau=plateau, from_minute=minute)
        minute += 1
    assert plateau.humidity_pct == pytest.approx(75.3, abs=0.5)


def test_that_a_slow_rise_is_not_flat_and_says_how_much() -> None:
    rising = watched(FLAT_MINUTES, lambda minute: 60.0 + minute / 60)
    assert "rose by 0.5 %RH in 30 minutes" in rising.sentence
    falling = watched(FLAT_MINUTES, lambda minute: 60.0 - minute / 60)
    assert "fell by 0.5 %RH" in falling.sentence


def test_that_a_lifted_lid_is_not_flat() -> None:
    assert "leave the box shut" in watched(FLAT_MINUTES, lambda minute: 75.0 - 3.0 * (14 <= minute < 16)).sentence


def test_that_a_box_that_warms_is_not_flat() -> None:
    warming = watched(FLAT_MINUTES, lambda _: 75.0, temperature_C=lambda minute: 20.0 + minute / 20)
    assert "temperature strayed" in warming.sentence


def test_that_a_hole_and_a_clock_set_back_begin_anew() -> None:
    flat = watched(FLAT_MINUTES, lambda _: 33.0)
    for jump_ms in (3 * 60_000, -60 * 60_000):
        time_ms = (flat.ended_ms or 0) + jump_ms
        after = settle(flat, Reading(time_ms=time_ms, humidity_pct=33.0, temperature_C=22.0))
        assert after.minutes_seen == 0


def test_that_a_reading_that_lacks_a_channel_is_passed_over() -> None:
    flat = watched(FLAT_MINUTES, lambda _: 33.0)
    assert settle(flat, Reading(time_ms=(flat.ended_ms or 0) + 1, humidity_pct=33.0)) == flat


def test_that_the_memory_is_bounded_and_follows() -> None:
    plateau = watched(3 * FLAT_MINUTES, lambda minute: 33.0 if minute < 2 * FLAT_MINUTES else 75.0)
    assert plateau.minutes_seen == FLAT_MINUTES
    assert plateau.humidity_pct == pytest.approx(75.0, abs=0.1)
