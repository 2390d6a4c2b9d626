"""Walks: their speed and what the sensor read on them."""

from __future__ import annotations

import pytest

from studiowatch.room.humidity_calibration import CalibrationRefused
from studiowatch.room.readings import Reading
from studiowatch.room.walk import air_point, walked_speed_m_s

START_MS = 1_772_460_000_000


def readings(signals_mV: list[float | None], step_ms: int = 1000) -> list[Reading]:
    return [
        Reading(time_ms=START_MS + step_ms * number, air_signal_mV=signal_mV, temperature_C=20.0 + number)
        for number, signal_mV in enumerate(signals_mV)
    ]


def test_that_distance_and_time_give_the_speed() -> None:
    assert walked_speed_m_s(4.0, 8.0) == 0.5


@pytest.mark.parametrize(
    ("distance_m", "time_s", "words"),
    [(0.2, 1.0, "0.2 m; 0.5 to 200 m"), (float("nan"), 1.0, "nan m"), (4.0, 0.0, "took 0 s"), (4.0, -1.0, "took -1 s")],
)
def test_that_what_is_no_walk_is_refused(distance_m: float, time_s: float, words: str) -> None:
    with pytest.raises(CalibrationRefused, match=words):
        walked_speed_m_s(distance_m, time_s)


def test_that_the_mean_leaves_out_the_bead_s_lag_and_what_was_not_read() -> None:
    point = air_point(readings([900.0, 950.0, 990.0, 1000.0, None, 1010.0, 1020.0]), 0.4)
    assert point.signal_mV == pytest.approx(1010.0)
    assert point.temperature_C == pytest.approx((23.0 + 25.0 + 26.0) / 3)
    assert point.speed_m_s == 0.4


@pytest.mark.parametrize(("speed_m_s", "what"), [(0.4, "walk at 0.40 m/s"), (0.0, "time under the cup")])
def test_that_too_short_a_walk_is_refused(speed_m_s: float, what: str) -> None:
    with pytest.raises(CalibrationRefused, match=f"The {what} gave 2 of the 3 readings.*make it longer"):
        air_point(readings([900.0, 950.0, 990.0, 1000.0, 1010.0]), speed_m_s)
    with pytest.raises(CalibrationRefused, match="gave 0 of the 3"):
        air_point([], speed_m_s)
