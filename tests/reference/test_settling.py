"""Falling dust against a reference library and printed tables."""

from __future__ import annotations

import fluids
import numpy as np
import pytest

from studiowatch.physics import moist_air
from studiowatch.physics.air import Air
from studiowatch.physics.settling import mean_free_path, settling_velocity, slip_correction

HINDS_AIR = Air(temperature_C=20.0, humidity_pct=0.0)
WATER_DENSITY = 1000.0


@pytest.mark.parametrize(("diameter_um", "printed_m_s"), [(1.0, 3.48e-5), (10.0, 3.06e-3)])
def test_that_specks_fall_as_in_hinds(diameter_um: float, printed_m_s: float) -> None:
    # source: W. C. Hinds, Aerosol Technology, 2nd ed. (1999), table A11: spheres of standard density at 20 °C, from
    # memory. Tolerance: half the last digit, 0.2 %, and what his viscosity (1.81e-5, 0.2 %), his slip (0.3 % at 1 µm)
    # and leaving out buoyancy (0.1 %) and inertia (0.2 % at 10 µm) come to, at most 0.8 % together
    fall = settling_velocity(diameter_um, WATER_DENSITY, HINDS_AIR)
    assert fall == pytest.approx(printed_m_s, rel=8e-3)


def test_that_the_mean_free_path_is_the_printed_one() -> None:
    # source: W. C. Hinds (1999), appendix of the properties of air at 20 °C: 0.066 µm; half the last digit
    assert 1e6 * mean_free_path(HINDS_AIR) == pytest.approx(0.066, abs=5e-4)


@pytest.mark.parametrize("temperature_C", [5.0, 20.0, 35.0])
def test_that_the_mean_free_path_is_what_viscosity_says(temperature_C: float) -> None:
    # source: kinetic theory as S. G. Jennings (1988), J. Aerosol Sci. 19, 159, puts it, from viscosity, density and
    # pressure, from memory; tolerance 2 %: the numbers put for 0.4987 run from 0.491 to 0.499
    density = float(moist_air.density(temperature_C, 0.0))
    kinetic_m = np.sqrt(np.pi / 8.0) * moist_air.viscosity(temperature_C) / 0.4987 / np.sqrt(density * 101_325.0)
    path_m = mean_free_path(Air(temperature_C=temperature_C, humidity_pct=0.0))
    assert path_m == pytest.approx(float(kinetic_m), rel=0.02)


@pytest.mark.parametrize("diameter_um", [0.1, 0.3, 1.0, 3.0, 10.0])
def test_that_slip_follows_older_measurements(diameter_um: float) -> None:
    # source: C. N. Davies (1945), Proc. Phys. Soc. 57, 259: 1 + Kn (1.257 + 0.400 e^(-1.10/Kn)) with a mean free path
    # of 0.066 µm, from memory; tolerance 2 %: by that much the formulas of the trade differ at 0.1 µm
    knudsen = 2.0 * 0.066 / diameter_um
    older = 1.0 + knudsen * (1.257 + 0.4 * np.exp(-1.1 / knudsen))
    assert slip_correction(diameter_um, HINDS_AIR) == pytest.approx(older, rel=0.02)


@pytest.mark.parametrize("density_kg_m3", [1000.0, 2600.0])
@pytest.mark.parametrize("diameter_um", [0.5, 2.0, 5.0])
def test_that_fine_specks_fall_by_stokes_law(diameter_um: float, density_kg_m3: float) -> None:
    # source: fluids, v_terminal by Stokes' law, which knows no slip; tolerance: inertia takes off under 0.2 % here
    room = Air(temperature_C=23.0, humidity_pct=50.0)
    creeping = _by_library(diameter_um, density_kg_m3, room, "Stokes")
    fall = settling_velocity(diameter_um, density_kg_m3, room)
    assert fall / slip_correction(diameter_um, room) == pytest.approx(creeping, rel=2e-3)


@pytest.mark.parametrize("law", ["Clift", "Clift_Gauvin", "Haider_Levenspiel", "Khan_Richardson"])
@pytest.mark.parametrize("diameter_um", [30.0, 50.0, 100.0, 200.0, 500.0])
def test_that_coarse_specks_fall_as_measured_drag_allows(diameter_um: float, law: str) -> None:
    # source: fluids, v_terminal by four fits of measured drag; tolerance: the 5 % by which Schiller and Naumann's law
    # is said to keep to them (Clift et al. 1978)
    room = Air(temperature_C=20.0, humidity_pct=50.0)
    fall = settling_velocity(diameter_um, WATER_DENSITY, room)
    assert fall == pytest.approx(_by_library(diameter_um, WATER_DENSITY, room, law), rel=0.05)


def _by_library(diameter_um: float, density_kg_m3: float, air: Air, law: str) -> float:
    air_density = float(moist_air.density(air.temperature_C, air.humidity_pct, air.pressure_Pa))
    viscosity = float(moist_air.viscosity(air.temperature_C))
    return fluids.v_terminal(diameter_um * 1e-6, density_kg_m3, air_density, viscosity, Method=law)
