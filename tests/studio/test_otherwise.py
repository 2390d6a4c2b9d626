"""Air that is held: what is held is so, the rest comes as it comes, and vapour is kept."""

from __future__ import annotations

import numpy as np
import psychrolib
import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.physics.air import Air, AirDraws
from studiowatch.physics.ranges import OutOfRange
from studiowatch.studio.otherwise import Otherwise

DAMP = Air(temperature_C=16.0, humidity_pct=80.0, air_speed_m_s=0.3, age_s=7200.0)


@pytest.fixture(autouse=True)
def _si() -> None:
    psychrolib.SetUnitSystem(psychrolib.SI)


@given(
    st.floats(min_value=10.0, max_value=30.0),
    st.floats(min_value=10.0, max_value=95.0),
    st.floats(min_value=10.0, max_value=30.0),
)
def test_that_a_warmed_room_keeps_its_vapour(own_C: float, own_pct: float, held_C: float) -> None:
    """Psychrolib (ASHRAE Handbook Fundamentals 2017, ch. 1) from vapour pressure to humidity at the other temperature.

    Its saturation pressures over water and the project's differ by less than 0.03 % here, so the ratio of two of them
    by less than 0.06 %.
    """
    held = Otherwise(temperature_C=held_C).of(Air(temperature_C=own_C, humidity_pct=own_pct))
    vapour_Pa = psychrolib.GetVapPresFromRelHum(own_C, own_pct / 100.0)
    expected_pct = min(100.0 * vapour_Pa / psychrolib.GetSatVapPres(held_C), 100.0)
    assert held.humidity_pct == pytest.approx(expected_pct, rel=6e-4)
    assert held.temperature_C == held_C


def test_that_draws_are_held_as_each_of_them_alone() -> None:
    airs = [Air(temperature_C=t, humidity_pct=h, air_speed_m_s=v) for t, h, v in ((15, 90, 0.02), (25, 40, 0.4))]
    draws = AirDraws(
        temperature_C=np.array([air.temperature_C for air in airs]),
        humidity_pct=np.array([air.humidity_pct for air in airs]),
        air_speed_m_s=np.array([air.air_speed_m_s for air in airs]),
    )
    held = Otherwise(temperature_C=21.0, most_air_speed_m_s=0.05, most_humidity_pct=55.0)
    together = held.of(draws)
    for at, air in enumerate(airs):
        alone = held.of(air)
        assert together.temperature_C[at] == alone.temperature_C
        assert together.humidity_pct[at] == pytest.approx(alone.humidity_pct)
        assert together.air_speed_m_s[at] == alone.air_speed_m_s


def test_that_what_is_let_come_up_to_a_limit_stays_where_it_is_lower() -> None:
    held = Otherwise(most_humidity_pct=50.0, most_air_speed_m_s=0.05)
    assert held.of(DAMP).humidity_pct == 50.0
    assert held.of(DAMP).air_speed_m_s == 0.05
    dry = Air(temperature_C=20.0, humidity_pct=40.0, air_speed_m_s=0.02)
    assert held.of(dry) == dry


def test_that_air_nobody_measures_is_known_only_where_both_its_figures_are_held() -> None:
    assert Otherwise(temperature_C=20.0, humidity_pct=50.0).of(DAMP).age_s is None
    assert Otherwise(temperature_C=20.0).of(DAMP).age_s == DAMP.age_s
    assert Otherwise(most_air_speed_m_s=0.05).of(DAMP).age_s == DAMP.age_s


def test_that_it_is_held_from_its_beginning_until_before_its_end() -> None:
    held = Otherwise(temperature_C=20.0, from_ms=1000, until_ms=2000)
    assert [held.holds_at(at) for at in (999, 1000, 1999, 2000)] == [False, True, True, False]
    assert Otherwise(temperature_C=20.0).holds_at(0)


def test_that_a_room_left_alone_is_as_it_comes() -> None:
    assert Otherwise(until_ms=5).is_as_it_comes
    assert Otherwise().of(DAMP) == DAMP
    assert not Otherwise(most_humidity_pct=50.0).is_as_it_comes


@pytest.mark.parametrize(
    ("held", "words"),
    [
        (Otherwise(temperature_C=21.0, humidity_pct=50.0), "Room kept at 21 °C, 50 %"),
        (Otherwise(temperature_C=21.0), "Room kept at 21 °C"),
        (Otherwise(temperature_C=21.0, most_humidity_pct=50.0), "Room kept at 21 °C, at most 50 %"),
        (Otherwise(humidity_pct=50.0), "Humidity kept at 50 %"),
        (Otherwise(most_humidity_pct=50.0), "Humidity kept at 50 % at most"),
        (Otherwise(most_air_speed_m_s=0.05), "Fan off, still air"),
        (Otherwise(temperature_C=18.5, air_speed_m_s=0.3), "Room kept at 18.5 °C · Air moving at 0.3 m/s"),
        (Otherwise(), ""),
    ],
)
def test_that_it_says_in_words_what_is_held(held: Otherwise, words: str) -> None:
    assert held.words == words


@pytest.mark.parametrize(
    ("values", "said"),
    [
        ({"temperature_C": 60.0}, "temperature of the room is 60 °C; it must be a number from 5 to 40 °C"),
        ({"humidity_pct": 101.0}, "humidity of the room is 101 %; it must be a number from 10 to 95 %"),
        ({"air_speed_m_s": float("nan")}, "speed of the air is nan m/s; it must be a number from 0 to 3 m/s"),
    ],
)
def test_that_a_room_that_cannot_be_is_refused_in_one_sentence(values: dict[str, float], said: str) -> None:
    with pytest.raises(OutOfRange) as refused:
        Otherwise(**values)
    assert str(refused.value) == said


def test_that_hours_that_end_before_they_begin_are_refused() -> None:
    with pytest.raises(OutOfRange, match="give a later one"):
        Otherwise(temperature_C=20.0, from_ms=2000, until_ms=2000)
