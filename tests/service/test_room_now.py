"""The room as last read: a channel that failed is not measured, however calm it was before."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.room.air_movement import Movement
from studiowatch.service.room_now import RoomNow

from .rooms import START_MS, room


def fed(seconds: int, *, fan_from_s: int = 10_000) -> RoomNow:
    now = RoomNow(began_ms=START_MS)
    for reading in room(seconds, fan=lambda second: second >= fan_from_s):
        now.take(reading)
    return now


def test_that_a_dead_anemometer_is_neither_still_nor_a_fan() -> None:
    for fan_from_s, before in ((10_000, Movement.STILL), (100, Movement.FAN)):
        now = fed(200, fan_from_s=fan_from_s)
        assert now.moves is before
        for reading in room(260)[200:]:
            now.take(replace(reading, air_speed_m_s=None))
        assert now.moves is Movement.UNKNOWN
        air = now.air_now(now.last_ms or 0)
        assert air.movement is Movement.UNKNOWN
        assert air.moving_since_ms is None
        assert air.air_speed_m_s is None


def test_that_a_board_in_trouble_measures_nothing_until_each_channel_is_read_again() -> None:
    now = fed(60)
    time_ms = START_MS + 60_000
    now.fail(time_ms)
    air = now.air_now(time_ms)
    assert (air.temperature_C, air.humidity_pct, air.air_speed_m_s) == (None, None, None)
    assert air.movement is Movement.UNKNOWN
    assert air.age_s == 0
    assert now.air() is not None  # a film dries on in the last air known
    now.take(replace(room(1)[0], time_ms=time_ms + 1000, humidity_pct=None))
    air = now.air_now(time_ms + 1000)
    assert air.temperature_C is not None
    assert air.humidity_pct is None


def test_that_a_film_dries_on_in_the_last_air_for_ten_minutes_and_no_longer() -> None:
    now = fed(60)
    for second, reading in enumerate(room(1260)[60:], start=60):
        now.take(replace(reading, humidity_pct=None))
        known = now.air() is not None
        assert known == (second - 59 <= 600)


def test_that_a_channel_stays_dead_when_the_clock_is_set_back() -> None:
    now = fed(60)
    late = replace(room(1)[0], time_ms=START_MS - 3_600_000, humidity_pct=None)
    now.take(late)
    assert now.air_now(late.time_ms).humidity_pct is None


def test_that_the_mean_is_of_what_came_since_the_last_one() -> None:
    now = RoomNow(began_ms=START_MS)
    base = room(1)[0]
    for step, humidity_pct in enumerate((40.0, 50.0, 60.0)):
        now.take(replace(base, time_ms=START_MS + step * 1000, humidity_pct=humidity_pct))
    first = now.mean_air()
    assert first is not None
    assert first.humidity_pct == 50.0
    second = now.mean_air()
    assert second is not None
    assert second.humidity_pct == 60.0


def test_that_gusts_count_as_the_steady_speed_that_carries_off_as_much() -> None:
    """Of 0.09 and 0.25 m/s in turn the roots are 0.3 and 0.5: their mean squared, by hand, is 0.16."""
    now = RoomNow(began_ms=START_MS)
    base = room(1)[0]
    for step in range(30):
        now.take(replace(base, time_ms=START_MS + step * 1000, air_speed_m_s=0.25 if step % 2 else 0.09))
    mean = now.mean_air()
    assert mean is not None
    assert mean.air_speed_m_s == pytest.approx(0.16)


def test_that_a_film_dries_on_under_a_sensor_that_stands_still_and_not_under_one_that_leapt() -> None:
    now = RoomNow(began_ms=START_MS)
    base = replace(room(1)[0], temperature_C=20.25, humidity_pct=52.55)
    for second in range(3600):
        now.take(replace(base, time_ms=START_MS + 1000 * second))
    assert "stuck" in now.health.sentence
    air = now.air()
    assert air is not None
    assert (air.temperature_C, air.humidity_pct) == (20.25, 52.55)
    now.take(replace(base, time_ms=START_MS + 3_600_000, temperature_C=44.0))
    leapt = now.air()
    assert leapt is not None
    assert leapt.temperature_C == 20.25


@pytest.mark.parametrize("humidity_pct", [0.0, 0.004])  # under 0.01 % a dew point means nothing
def test_that_air_too_dry_for_a_dew_point_has_none(humidity_pct: float) -> None:
    now = RoomNow(began_ms=START_MS)
    now.take(replace(room(1)[0], humidity_pct=humidity_pct))
    assert now.dew_point_C() is None
    assert now.air_now(START_MS).humidity_pct == humidity_pct
