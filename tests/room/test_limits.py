from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.room.limits import (
    AIR_SPEED,
    DEW_MARGIN,
    FILM_MARGIN,
    HUMIDITY,
    Limit,
    Standing,
    dew_margin_standing,
    film_margin_standing,
    humidity_limit,
    humidity_standing,
    warmth_limit,
)
from studiowatch.speech.units import US, choose
from studiowatch.speech.words import speak_by

LIMITS = (HUMIDITY, DEW_MARGIN, FILM_MARGIN, AIR_SPEED)
FINE, CAUTION, ACT = Standing.FINE, Standing.CAUTION, Standing.ACT


@pytest.mark.parametrize(
    ("humidity_pct", "expected"), [(75.0, FINE), (75.1, CAUTION), (85.0, CAUTION), (85.1, ACT), (100.0, ACT)]
)
def test_that_humidity_has_two_limits_and_the_limit_itself_is_allowed(humidity_pct: float, expected: Standing) -> None:
    assert humidity_standing(humidity_pct) is expected


@pytest.mark.parametrize(("humidity_pct", "expected"), [(65.0, FINE), (65.1, CAUTION), (70.0, CAUTION), (70.1, ACT)])
def test_that_the_sheets_own_humidity_limit_comes_first(humidity_pct: float, expected: Standing) -> None:
    assert humidity_standing(humidity_pct, max_humidity_pct=70.0) is expected
    assert "sheet" in humidity_limit(70.0).basis


@pytest.mark.parametrize(("margin_K", "expected"), [(5.0, FINE), (4.9, CAUTION), (3.0, CAUTION), (2.9, ACT), (-1, ACT)])
def test_that_a_surface_must_stay_3_K_above_the_dew_point(margin_K: float, expected: Standing) -> None:
    # ISO 8502-4: the surface at least 3 °C above the dew point
    assert dew_margin_standing(margin_K) is expected


@pytest.mark.parametrize(("margin_K", "expected"), [(5.0, FINE), (4.9, CAUTION), (0.0, CAUTION), (-0.1, ACT)])
def test_that_a_film_must_stay_above_its_minimum_film_forming_temperature(margin_K: float, expected: Standing) -> None:
    assert film_margin_standing(margin_K) is expected


@pytest.mark.parametrize(("speed_m_s", "expected"), [(0.2, FINE), (0.21, CAUTION), (0.5, CAUTION), (0.51, ACT)])
def test_that_air_at_the_piece_has_two_limits(speed_m_s: float, expected: Standing) -> None:
    assert AIR_SPEED.standing(speed_m_s) is expected


def draught_rate_pct(air_C: float, speed_m_s: float, turbulence_pct: float) -> float:
    # ISO 7730:2005, draught rate, from memory
    return (34 - air_C) * (speed_m_s - 0.05) ** 0.62 * (0.37 * speed_m_s * turbulence_pct + 3.14)


def test_that_the_basis_of_the_draught_limit_quotes_the_standard_rightly() -> None:
    for air_C, speed_m_s in ((18.0, 0.15), (28.0, 0.31)):
        below, above = (draught_rate_pct(air_C, speed_m_s + step, 40.0) for step in (-0.005, 0.005))
        assert below < 20.0 < above
    assert "0.15 to 0.31 m/s at 18 to 28 °C" in AIR_SPEED.basis
    assert 0.15 < AIR_SPEED.caution < 0.31


def test_that_a_value_must_come_well_inside_before_its_standing_falls() -> None:
    assert humidity_standing(74.0, before=CAUTION) is CAUTION
    assert humidity_standing(73.0, before=CAUTION) is FINE
    assert humidity_standing(84.0, before=ACT) is ACT
    assert humidity_standing(83.0, before=ACT) is CAUTION
    assert dew_margin_standing(3.4, before=ACT) is ACT
    assert dew_margin_standing(3.5, before=ACT) is CAUTION


def test_that_a_value_that_falls_far_leaves_both_standings_at_once() -> None:
    assert humidity_standing(50.0, before=ACT) is FINE


@given(limit=st.sampled_from(LIMITS), value=st.floats(-50, 150), before=st.sampled_from(list(Standing)))
def test_that_a_standing_before_never_makes_it_milder(limit: Limit, value: float, before: Standing) -> None:
    fresh = limit.standing(value)
    kept = limit.standing(value, before)
    assert fresh <= kept <= max(fresh, before)


@given(limit=st.sampled_from(LIMITS), value=st.floats(-50, 150))
def test_that_noise_smaller_than_the_release_does_not_flicker(limit: Limit, value: float) -> None:
    standing = limit.standing(value)
    nudge = 0.45 * limit.release
    after = [limit.standing(value + nudge, standing), limit.standing(value - nudge, standing)]
    assert all(standing <= kept for kept in after)


def test_that_every_limit_shows_its_basis() -> None:
    assert all(limit.basis and limit.unit for limit in LIMITS)


def test_that_a_basis_is_told_in_the_units_that_she_chose() -> None:
    # by NIST SP 811 (2008), appendix B.8: 3 K = 5.4 °F, 18 °C = 64.4 °F, 28 °C = 82.4 °F; 0.5 m/s = 98.4 ft/min
    assert DEW_MARGIN.basis == "3 K: ISO 8502-4; 5 K: from memory."
    choose(US)
    assert DEW_MARGIN.basis == "5.4 °F: ISO 8502-4; 9 °F: from memory."
    assert "30 to 61 ft/min at 64.4 to 82.4 °F" in AIR_SPEED.basis
    assert "98 ft/min: assumption" in AIR_SPEED.basis
    assert warmth_limit(25.0).basis == "77 °F: the product's sheet; 9 °F more: from memory."


def test_that_a_basis_is_told_in_her_language_where_it_is_shown() -> None:
    speak_by(lambda text, _about, _number: text.replace("from memory", "aus dem Gedächtnis"))
    assert DEW_MARGIN.basis == "3 K: ISO 8502-4; 5 K: aus dem Gedächtnis."
