"""Equivalent age against the form of ASTM C1074."""

from __future__ import annotations

import pytest

from studiowatch.physics.constants import GAS_CONSTANT
from studiowatch.physics.equivalent_age import rate


@pytest.mark.parametrize(
    ("temperature_C", "printed"),
    [(0.0, 0.286), (10.0, 0.547), (20.0, 1.0), (25.0, 1.332), (30.0, 1.756), (40.0, 2.975)],
)
def test_that_the_age_factor_follows_astm_c1074(temperature_C: float, printed: float) -> None:
    # source: ASTM C1074, equivalent age with Q = 5000 K and 20 °C, whose digits follow from K = °C + 273;
    # tolerance half the last digit printed
    factor = rate(temperature_C + 273.0, 5000.0 * GAS_CONSTANT, 293.0)
    assert factor == pytest.approx(printed, abs=5e-4)


def test_that_fifty_kilojoule_double_the_rate_per_ten_kelvin() -> None:
    # common practice: "halves per 10 K" is an activation energy of about 50 kJ/mol near room temperature; 5 %
    assert rate(303.15, 50e3) / rate(293.15, 50e3) == pytest.approx(2.0, rel=0.05)
