"""Where the room is heading, checked on rooms whose law is known: a daily round and a first-order autoregression."""

from __future__ import annotations

from math import pi, sqrt

import numpy as np
import pytest

from studiowatch.physics.ranges import Array, OutOfRange
from studiowatch.room.hourly_log import DAY_H, HourlyLog, hourly
from studiowatch.room.outlook import look_ahead
from studiowatch.room.readings import Reading

FADE = 0.8  # 1/h
SPREAD = np.array([1.0, 5.0])  # K and %RH, s.d. of what each hour brings
PAIRED = -0.6  # correlation of the two
DRAWS = 2000
WEEKS_6 = 42 * DAY_H


def _round(hours: Array) -> Array:
    return np.column_stack(
        [20.0 + 2.0 * np.sin(2.0 * pi * hours / DAY_H), 55.0 - 6.0 * np.sin(2.0 * pi * hours / DAY_H)]
    )


def _room(hours: int, seed: int = 1) -> Array:
    """Return (hours + 1, 2) of a room with a daily round about which it wanders; hour 0 comes last."""
    chance = np.random.default_rng(seed)
    root = np.linalg.cholesky(np.array([[1.0, PAIRED], [PAIRED, 1.0]]) * np.outer(SPREAD, SPREAD))
    distance = np.zeros((hours + 1, 2))
    for hour in range(1, hours + 1):
        distance[hour] = FADE * distance[hour - 1] + root @ chance.standard_normal(2)
    return distance + _round(np.arange(-hours, 1))


def _log(pairs: Array, speed_m_s: Array | None = None) -> HourlyLog:
    unknown = np.full(len(pairs), np.nan)
    speed = unknown if speed_m_s is None else speed_m_s
    return HourlyLog(temperature_C=pairs[:, 0], humidity_pct=pairs[:, 1], air_speed_m_s=speed)


def test_that_the_distance_from_the_usual_fades_as_the_law_says() -> None:
    pairs = _room(WEEKS_6)
    pairs[-1] = _round(np.zeros(1))[0] + (4.0, -20.0)
    told = look_ahead(_log(pairs), 24, draws=DRAWS)
    for hour in (1, 3, 6):
        usual = _round(np.array([hour]))[0]
        # s.e. of a mean of draws, and of the usual itself: six weeks, of which a week counts for the temperature
        allowed = 3.0 * SPREAD / sqrt(1.0 - FADE**2) * (1.0 / sqrt(DRAWS) + 1.0 / sqrt(7.0))
        means = np.array([told.temperature_C[:, hour].mean(), told.humidity_pct[:, hour].mean()])
        assert np.all(np.abs(means - usual - FADE**hour * np.array([4.0, -20.0])) < allowed)


def test_that_the_bands_hold_eight_in_ten_of_what_comes() -> None:
    whole = _room(WEEKS_6 + 400 * DAY_H, seed=3)
    held = []
    for now in range(WEEKS_6, len(whole) - DAY_H, 2 * DAY_H + 5):
        past = whole[now - WEEKS_6 : now + 1]
        told = look_ahead(_log(past), DAY_H, draws=200, seed=now)
        for draws, column in ((told.temperature_C, 0), (told.humidity_pct, 1)):
            low, high = np.quantile(draws[:, 1:], [0.1, 0.9], axis=0)
            seen = whole[now + 1 : now + 1 + DAY_H, column]
            held.append(((low <= seen) & (seen <= high)).mean())
    share = float(np.mean(held))
    assert 0.75 < share < 0.85, share


def test_that_temperature_and_humidity_stay_together() -> None:
    told = look_ahead(_log(_room(WEEKS_6)), 2, draws=DRAWS)
    warmer, damper = (draws[:, 2] - draws[:, 1] for draws in (told.temperature_C, told.humidity_pct))
    paired = np.corrcoef(warmer, damper)
    assert paired[0, 1] == pytest.approx(PAIRED, abs=0.15)  # 42 blocks: s.e. of a correlation is about (1 - r²) / √42


def test_that_an_hour_of_log_gives_what_is_now_and_widens() -> None:
    told = look_ahead(_log(np.array([[19.0, 60.0], [19.2, 61.0]])), 48, draws=DRAWS)
    spread = told.temperature_C.std(axis=0)
    assert told.temperature_C[:, 0].mean() == pytest.approx(19.2, abs=0.1)
    assert spread[0] < 0.1 * spread[24]
    assert spread[1] < spread[6] <= spread[24] * 1.05
    assert 1.0 < spread[24] < 4.0  # K, a common room over a day; assumption


def test_that_more_log_of_a_quiet_room_narrows_the_bands() -> None:
    quiet = _round(np.arange(-10 * DAY_H, 1))
    short, long = (look_ahead(_log(quiet[-days * DAY_H :]), DAY_H, draws=DRAWS) for days in (1, 10))
    assert long.temperature_C[:, 12].std() < 0.5 * short.temperature_C[:, 12].std()


def test_that_a_room_not_heard_for_a_while_is_less_certain() -> None:
    pairs = _room(WEEKS_6)
    heard = look_ahead(_log(pairs), 6, draws=DRAWS)
    pairs[-5:] = np.nan
    unheard = look_ahead(_log(pairs), 6, draws=DRAWS)
    assert unheard.temperature_C[:, 0].std() > 2.0 * heard.temperature_C[:, 0].std()


def test_that_holes_in_the_log_do_no_harm() -> None:
    pairs = _room(WEEKS_6)
    pairs[100:140] = np.nan
    pairs[::37, 1] = np.nan
    pairs[-1] = 20.0, 55.0
    told = look_ahead(_log(pairs), 96)
    assert np.isfinite(told.temperature_C).all()
    assert np.isfinite(told.humidity_pct).all()


def test_that_humidity_stays_possible() -> None:
    damp = _room(WEEKS_6)
    damp[:, 1] += 40.0
    damp[:, 1] = np.minimum(damp[:, 1], 100.0)
    told = look_ahead(_log(damp), 48)
    assert told.humidity_pct.max() <= 100.0


def test_that_a_fan_that_runs_each_evening_is_expected_in_the_evening() -> None:
    hours = np.arange(-10 * DAY_H, 1)
    evening = (hours % DAY_H >= 5) & (hours % DAY_H < 8)
    told = look_ahead(_log(_room(10 * DAY_H), np.where(evening, 0.6, 0.06)), 24)
    assert told.air_speed_m_s[:, 6].mean() == pytest.approx(0.6)
    assert told.air_speed_m_s[:, 12].mean() == pytest.approx(0.06)


def test_that_the_air_moves_as_on_the_days_since_its_speed_is_read() -> None:
    """Eight days without a speed say nothing of how often the fan is on in the evening."""
    hours = np.arange(10 * DAY_H + 1) - 10 * DAY_H
    evening = (hours % DAY_H >= 5) & (hours % DAY_H < 8)
    speed = np.where(hours < -2 * DAY_H, np.nan, np.where(evening, 0.6, 0.06))
    told = look_ahead(_log(_room(10 * DAY_H), speed), 24)
    assert told.air_speed_m_s[:, 6].mean() == pytest.approx(0.6)
    assert told.air_speed_m_s[:, 12].mean() == pytest.approx(0.06)


def test_that_hours_nobody_read_before_the_first_that_was_change_nothing() -> None:
    pairs = _room(5 * DAY_H)
    speed = np.linspace(0.05, 0.15, len(pairs))
    nothing = np.full(30 * DAY_H, np.nan)
    bare = look_ahead(_log(pairs, speed), 24, seed=3)
    padded = look_ahead(
        _log(np.concatenate([np.column_stack([nothing, nothing]), pairs]), np.concatenate([nothing, speed])), 24, seed=3
    )
    assert padded.temperature_C == pytest.approx(bare.temperature_C)
    assert padded.humidity_pct == pytest.approx(bare.humidity_pct)
    assert padded.air_speed_m_s == pytest.approx(bare.air_speed_m_s)


def test_that_the_same_seed_foretells_the_same() -> None:
    pairs = _room(WEEKS_6)
    once, again = (look_ahead(_log(pairs), 6, seed=5) for _ in range(2))
    assert np.array_equal(once.temperature_C, again.temperature_C)


@pytest.mark.parametrize("hours", [0, 97])
def test_that_it_looks_one_to_ninety_six_hours_ahead(hours: int) -> None:
    with pytest.raises(OutOfRange, match=f"time to look ahead is {hours} h; it must be a number from 1 to 96 h"):
        look_ahead(_log(_room(48)), hours)


def test_that_a_log_that_holds_nothing_is_refused() -> None:
    with pytest.raises(OutOfRange, match="hours of log with temperature and humidity is 0 h"):
        look_ahead(_log(np.full((5, 2), np.nan)), 6)


def test_that_hours_are_means_around_each_full_hour_before_now() -> None:
    now_ms = 7 * 3_600_000
    times_h = (3.9, 4.4, 4.6, 6.9, 7.0, 7.2)
    readings = [Reading(time_ms=round(at_h * 3_600_000), temperature_C=10.0 * at_h) for at_h in times_h]
    log = hourly(readings, now_ms, 4)
    assert log.temperature_C == pytest.approx([np.nan, 41.5, 46.0, np.nan, 69.5], nan_ok=True)
    assert np.isnan(log.humidity_pct).all()
