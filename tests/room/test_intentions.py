"""What is meant to be done with the room, against the mixing-ratio relations of a general moist-air library."""

from __future__ import annotations

from dataclasses import replace
from math import exp

import numpy as np
import psychrolib
import pytest

from studiowatch.physics.ranges import Array, OutOfRange
from studiowatch.room.hourly_log import HourlyLog
from studiowatch.room.intentions import Balance, Doing, Intention, balance_of, with_intentions
from studiowatch.room.outlook import Outlook

psychrolib.SetUnitSystem(psychrolib.SI)
PRESSURE_PA = 101_325.0
BALANCE = Balance(keeps_warm_h=5.0, keeps_vapour_h=2.0, warms_K_h=3.0)


def _steady(temperature_C: float = 16.0, humidity_pct: float = 70.0, hours: int = 24) -> Outlook:
    shape = (3, hours + 1)
    return Outlook(
        temperature_C=np.full(shape, temperature_C),
        humidity_pct=np.full(shape, humidity_pct),
        air_speed_m_s=np.full(shape, 0.06),
    )


def _heater(start_h: float, end_h: float, target_C: float = 21.0) -> Intention:
    return Intention(doing=Doing.HEATER, start_h=start_h, end_h=end_h, target=target_C)


def test_that_heated_air_keeps_its_vapour() -> None:
    told = with_intentions(_steady(), [_heater(0.0, 8.0)], BALANCE)
    ratio = psychrolib.GetHumRatioFromRelHum(16.0, 0.70, PRESSURE_PA)
    expected_pct = 100.0 * psychrolib.GetRelHumFromHumRatio(21.0, ratio, PRESSURE_PA)
    assert told.temperature_C[0, 6] == pytest.approx(21.0)
    assert told.humidity_pct[0, 6] == pytest.approx(expected_pct, rel=1e-3)  # two formulas of saturation


def test_that_a_heater_warms_no_faster_than_the_room_was_seen_to() -> None:
    told = with_intentions(_steady(), [_heater(0.0, 8.0)], BALANCE)
    assert told.temperature_C[0, 1] == pytest.approx(16.0 + 3.0)


def test_that_the_surplus_leaks_away_as_the_room_keeps_warmth() -> None:
    told = with_intentions(_steady(), [_heater(0.0, 8.0)], BALANCE)
    assert told.temperature_C[0, 13] - 16.0 == pytest.approx(5.0 * exp(-1.0), rel=1e-9)


def test_that_a_heater_set_below_the_room_changes_nothing() -> None:
    free = _steady(temperature_C=23.0)
    told = with_intentions(free, [_heater(0.0, 8.0)], BALANCE)
    assert told.temperature_C == pytest.approx(free.temperature_C)
    assert told.humidity_pct == pytest.approx(free.humidity_pct)


def test_that_a_dehumidifier_comes_to_its_humidity_and_the_vapour_comes_back() -> None:
    dry = Intention(doing=Doing.DEHUMIDIFIER, start_h=0.0, end_h=12.0, target=50.0)
    told = with_intentions(_steady(), [dry], BALANCE)
    assert told.humidity_pct[0, 1] == pytest.approx(70.0 - 20.0 * (1.0 - exp(-1.0)))
    assert told.humidity_pct[0, 12] == pytest.approx(50.0, abs=0.01)
    assert told.humidity_pct[0, 14] == pytest.approx(70.0 - 20.0 * exp(-1.0), abs=0.01)
    assert told.temperature_C == pytest.approx(_steady().temperature_C)


def test_that_a_fan_blows_in_its_hours_alone() -> None:
    fan = Intention(doing=Doing.FAN, start_h=2.0, end_h=4.0, target=0.5)
    told = with_intentions(_steady(), [fan], BALANCE)
    half = (0.06 + 0.5) / 2.0  # it is on for half of the hour about its beginning, and about its end
    assert told.air_speed_m_s[0, 1:6] == pytest.approx([0.06, half, 0.5, half, 0.06])
    assert told.fanned is not None
    assert np.flatnonzero(told.fanned).tolist() == [2, 3, 4]
    blown_m = 0.5 * 2.0 + 0.06 * 22.0  # m/s times h: as much air as two hours of a fan and a day of none move
    assert np.trapezoid(told.air_speed_m_s[0]) == pytest.approx(blown_m)


def _habit() -> Outlook:
    """Return a room with a fan at noon in each of its ways."""
    free = _steady()
    speed_m_s = free.air_speed_m_s.copy()
    speed_m_s[:, 11:14] = 0.4
    return replace(free, air_speed_m_s=speed_m_s)


def test_that_a_fan_that_stays_off_leaves_the_calmest_air_that_the_room_has() -> None:
    off = Intention(doing=Doing.FAN, start_h=0.0, end_h=24.5, target=0.0)
    told = with_intentions(_habit(), [off], BALANCE)
    assert told.air_speed_m_s == pytest.approx(_steady().air_speed_m_s)
    assert told.fanned is None
    morning = replace(off, end_h=6.0)
    assert with_intentions(_habit(), [morning], BALANCE).air_speed_m_s[0, 12] == pytest.approx(0.4)


def test_that_of_two_at_one_time_the_one_said_last_holds() -> None:
    off = Intention(doing=Doing.FAN, start_h=0.0, end_h=24.5, target=0.0)
    on = Intention(doing=Doing.FAN, start_h=2.0, end_h=4.0, target=0.5)
    for meant, expected_m_s in (([off, on], 0.5), ([on, off], 0.06)):
        told = with_intentions(_steady(), meant, BALANCE)
        assert told.air_speed_m_s[0, 3] == pytest.approx(expected_m_s)
        assert (told.fanned is not None) == (expected_m_s > 0.1)
    warm = with_intentions(_steady(), [_heater(0.0, 8.0), _heater(0.0, 8.0, 18.0)], BALANCE)
    assert warm.temperature_C[0, 6] == pytest.approx(18.0)


def test_that_nothing_meant_changes_nothing() -> None:
    free = _steady()
    assert with_intentions(free, [], BALANCE) is free


@pytest.mark.parametrize(
    ("doing", "target", "told"),
    [
        (Doing.HEATER, 60.0, "target of the heater is 60 °C; it must be a number from 5 to 35 °C"),
        (Doing.DEHUMIDIFIER, 5.0, "target of the dehumidifier is 5 %; it must be a number from 25 to 80 %"),
        (Doing.FAN, float("nan"), "target of the fan is nan m/s; it must be a number from 0 to 3 m/s"),
    ],
)
def test_that_what_cannot_be_meant_is_refused(doing: Doing, target: float, told: str) -> None:
    with pytest.raises(OutOfRange, match=told):
        Intention(doing=doing, start_h=0.0, end_h=2.0, target=target)


def test_that_an_end_before_the_start_is_refused() -> None:
    with pytest.raises(OutOfRange, match="end of what is meant to be on is 1 h from now"):
        _heater(3.0, 1.0)


def _wandering(hours: int, keeps_h: float, spread: float, seed: int) -> Array:
    chance = np.random.default_rng(seed)
    fade = exp(-1.0 / keeps_h)
    away = np.zeros(hours)
    for hour in range(1, hours):
        away[hour] = fade * away[hour - 1] + spread * chance.standard_normal()
    return away


def test_that_the_rooms_own_times_are_found_in_six_weeks_of_log() -> None:
    hours = 42 * 24
    temperature_C = 19.0 + _wandering(hours, 12.0, 0.3, seed=1)
    ratio = 0.007 + _wandering(hours, 4.0, 0.0002, seed=2)
    humidity_pct = np.array(
        [
            100.0 * psychrolib.GetRelHumFromHumRatio(each_C, float(each), PRESSURE_PA)
            for each_C, each in zip(temperature_C, ratio, strict=True)
        ]
    )
    log = HourlyLog(temperature_C=temperature_C, humidity_pct=humidity_pct, air_speed_m_s=np.full(hours, np.nan))
    found = balance_of(log)
    # s.e. of a lag-one share φ over n hours is √((1 - φ²) / n) (Bartlett); here 0.013 and 0.020, three times that
    assert found.keeps_warm_h == pytest.approx(12.0, rel=0.45)
    assert found.keeps_vapour_h == pytest.approx(4.0, rel=0.30)


def test_that_a_room_nobody_knows_is_a_common_one() -> None:
    unknown = np.full(3, np.nan)
    assert balance_of(HourlyLog(temperature_C=unknown, humidity_pct=unknown, air_speed_m_s=unknown)) == Balance()
