"""Units against exact definitions: NIST SP 811 (2008), appendix B, and the defining points of the Fahrenheit scale."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.speech.units import US, Degrees, Speed


@pytest.mark.parametrize(
    ("temperature_C", "fahrenheit"),
    # NIST SP 811, B.8: t/°C = (t/°F - 32)/1.8, exact. -40 is where both scales meet.
    [(-40.0, -40.0), (0.0, 32.0), (20.0, 68.0), (37.0, 98.6), (100.0, 212.0)],
)
def test_that_fahrenheit_follows_its_definition(temperature_C: float, fahrenheit: float) -> None:
    assert Degrees.FAHRENHEIT.from_celsius(temperature_C) == pytest.approx(fahrenheit, rel=1e-15)
    assert Degrees.FAHRENHEIT.to_celsius(fahrenheit) == pytest.approx(temperature_C, abs=1e-13)


def test_that_feet_in_a_minute_follow_the_definition_of_the_foot() -> None:
    # NIST SP 811, B.8: foot per minute to metre per second: multiply by 5.08 E-03, exact (0.3048 m in 60 s).
    assert Speed.FEET_PER_MINUTE.from_si(5.08e-03) == pytest.approx(1.0, rel=1e-14)
    assert Speed.FEET_PER_MINUTE.from_si(0.2) == pytest.approx(float(Fraction(2, 10) / Fraction(508, 100_000)))


def test_that_a_difference_knows_no_zero_point() -> None:
    # NIST SP 811, B.8: a temperature interval of 1 °C is one of 1.8 °F.
    assert US.difference(3.0) == "5.4 °F"
    assert US.difference_limit(5.0) == "9 °F"
    assert US.temperature(3.0) == "37.4 °F"


@given(st.floats(min_value=-40.0, max_value=120.0), st.sampled_from(Degrees))
def test_that_what_is_shown_comes_back_within_half_of_its_last_place(value: float, degrees: Degrees) -> None:
    shown = f"{degrees.from_celsius(degrees.to_celsius(value)):.1f}"
    assert abs(float(shown) - value) <= 0.05 + 1e-9
