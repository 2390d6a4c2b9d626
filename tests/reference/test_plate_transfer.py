"""Heat and vapour at a plate against the correlations of a reference library."""

from __future__ import annotations

import ht
import numpy as np
import pytest

from studiowatch.physics.plate_transfer import (
    Face,
    forced_nusselt,
    lingering_nusselt,
    plate_air,
    rising_nusselt,
    vertical_nusselt,
)

RAYLEIGHS = (1e4, 1e5, 1e6, 9e6)
PRANDTL = 0.71


@pytest.mark.parametrize("reynolds", [50.0, 1e3, 2e4, 2e5])
def test_that_forced_flow_follows_ht(reynolds: float) -> None:
    # source: ht, Nu_horizontal_plate_laminar_Baehr: the same closed law, tolerance rounding
    expected = ht.Nu_horizontal_plate_laminar_Baehr(reynolds, PRANDTL)
    assert forced_nusselt(np.array([reynolds]), np.array([PRANDTL]))[0] == pytest.approx(expected, rel=1e-9)


@pytest.mark.parametrize("rayleigh", RAYLEIGHS)
def test_that_free_flow_over_a_flat_plate_follows_ht(rayleigh: float) -> None:
    # source: ht, Nu_horizontal_plate_McAdams below its change to turbulence at 1e7: the same closed law
    grashof = rayleigh / PRANDTL
    rising = ht.Nu_horizontal_plate_McAdams(PRANDTL, grashof, buoyancy=True)
    lingering = ht.Nu_horizontal_plate_McAdams(PRANDTL, grashof, buoyancy=False)
    assert rising_nusselt(np.array([rayleigh]))[0] == pytest.approx(rising, rel=1e-9)
    assert lingering_nusselt(np.array([rayleigh]))[0] == pytest.approx(lingering, rel=1e-9)


def test_that_turbulent_free_flow_lies_between_the_two_published_factors() -> None:
    # source: McAdams (1954) prints 0.14, the later books that ht follows 0.15: 7 % apart
    rayleigh = 1e9
    other = ht.Nu_horizontal_plate_McAdams(PRANDTL, rayleigh / PRANDTL, buoyancy=True)
    assert rising_nusselt(np.array([rayleigh]))[0] == pytest.approx(other, rel=0.07)


@pytest.mark.parametrize("rayleigh", [1e3, *RAYLEIGHS, 1e9])
def test_that_free_flow_along_an_upright_plate_follows_ht(rayleigh: float) -> None:
    # source: ht, Nu_vertical_plate_Churchill: the same closed law
    expected = ht.Nu_vertical_plate_Churchill(PRANDTL, rayleigh / PRANDTL)
    assert vertical_nusselt(np.array([rayleigh]), np.array([PRANDTL]))[0] == pytest.approx(expected, rel=1e-9)


def test_that_heat_and_vapour_obey_the_lewis_relation_in_forced_flow() -> None:
    # source: Chilton-Colburn analogy: h over k_m, density and heat capacity is Le^(2/3), with Le about 0.85 for vapour
    # in air at 20 °C (ASHRAE Handbook Fundamentals 2017, ch. 6: 0.845 to 0.865); tolerance 3 %
    one = np.ones(1)
    plate = plate_air(
        temperature_C=20.0 * one,
        humidity_pct=50.0 * one,
        air_speed_m_s=5.0 * one,
        pressure_Pa=101_325.0 * one,
        side_m=0.1,
        face=Face.UP,
    )
    heat, mass = plate.coefficients(plate.air_K, plate.vapour_Pa)
    density_heat = 1.199 * 1013.0  # kg/m³ and J/(kg K) of this air; psychrolib and CoolProp
    assert heat[0] / (mass[0] * density_heat) == pytest.approx(0.85 ** (2.0 / 3.0), rel=0.03)
