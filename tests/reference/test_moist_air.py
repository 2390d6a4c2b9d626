"""Moist air against reference libraries and printed tables."""

from __future__ import annotations

import CoolProp.CoolProp
import numpy as np
import psychrolib
import pytest
from chemicals import iapws95_Psat

from studiowatch.physics import moist_air

TEMPERATURES_C = (0.01, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0)
HUMIDITIES_PCT = (20.0, 35.0, 50.0, 65.0, 80.0, 95.0)
ROOMS = [(t, h) for t in (5.0, 12.0, 18.0, 23.0, 30.0, 40.0) for h in HUMIDITIES_PCT]
PRESSURES_PA = (80_000.0, 101_325.0)

psychrolib.SetUnitSystem(psychrolib.SI)


@pytest.mark.parametrize("temperature_C", TEMPERATURES_C)
def test_that_saturation_pressure_follows_iapws95(temperature_C: float) -> None:
    # source: IAPWS-95 as in chemicals, which inverts the equation of state itself; tolerance: the stated 0.05 %
    exact = iapws95_Psat(temperature_C + 273.15)
    assert moist_air.saturation_pressure(temperature_C) == pytest.approx(exact, rel=5e-4)


@pytest.mark.parametrize(("temperature_C", "printed_kPa"), [(24.5, 3.075), (15.0, 1.705)])
def test_that_saturation_pressure_follows_fao56_example_3(temperature_C: float, printed_kPa: float) -> None:
    # source: FAO Irrigation and Drainage Paper 56 (1998), example 3. It prints the Tetens formula, which lies under
    # IAPWS-95 (3.0767 and 1.7058 kPa) by 0.06 and 0.05 %; tolerance: 0.06 % and half the last digit
    assert moist_air.saturation_pressure(temperature_C) / 1000.0 == pytest.approx(
        printed_kPa, abs=6e-4 * printed_kPa + 5e-4
    )


@pytest.mark.parametrize(
    ("temperature_C", "printed_Pa"),
    # source: D. M. Murphy, T. Koop (2005), Q. J. R. Meteorol. Soc. 131, 1539, table C1 (supercooled water), from
    # memory; tolerance: the 0.5 % by which published formulas differ there
    [(-20.0, 125.6), (-10.0, 286.6)],
)
def test_that_below_freezing_saturation_is_over_water_not_ice(temperature_C: float, printed_Pa: float) -> None:
    assert moist_air.saturation_pressure(temperature_C) == pytest.approx(printed_Pa, rel=5e-3)
    over_ice = psychrolib.GetSatVapPres(temperature_C)
    assert moist_air.saturation_pressure(temperature_C) > 1.08 * over_ice


@pytest.mark.parametrize(("temperature_C", "humidity_pct"), ROOMS)
def test_that_dew_point_follows_psychrolib(temperature_C: float, humidity_pct: float) -> None:
    # source: psychrolib 2.5 (ASHRAE 2017); it turns to ice below 0 °C, which is left out; its own solver stops at
    # 0.001 K and its saturation formula differs from ours by 0.01 %
    reference_C = psychrolib.GetTDewPointFromRelHum(temperature_C, humidity_pct / 100.0)
    if reference_C > 0.01:
        assert moist_air.dew_point(temperature_C, humidity_pct) == pytest.approx(reference_C, abs=0.005)


@pytest.mark.parametrize("pressure_Pa", PRESSURES_PA)
@pytest.mark.parametrize(("temperature_C", "humidity_pct"), ROOMS)
def test_that_wet_bulb_follows_psychrolib(temperature_C: float, humidity_pct: float, pressure_Pa: float) -> None:
    # source: psychrolib 2.5 (ASHRAE 2017), left out where it turns to ice; its own solver stops at 0.001 K
    reference_C = psychrolib.GetTWetBulbFromRelHum(temperature_C, humidity_pct / 100.0, pressure_Pa)
    if reference_C > 0.01:
        assert moist_air.wet_bulb(temperature_C, humidity_pct, pressure_Pa) == pytest.approx(reference_C, abs=0.005)


@pytest.mark.parametrize(("temperature_C", "humidity_pct"), ROOMS)
def test_that_humidity_ratio_density_and_deficit_follow_psychrolib(temperature_C: float, humidity_pct: float) -> None:
    # source: psychrolib 2.5 (ASHRAE 2017); tolerance: its saturation formula (Hyland, Wexler 1983)
    # lies up to 0.023 % under IAPWS-95 here, ours within 0.01 %: together 0.033 %
    share, pressure_Pa = humidity_pct / 100.0, 101_325.0
    ratio = psychrolib.GetHumRatioFromRelHum(temperature_C, share, pressure_Pa)
    density = psychrolib.GetMoistAirDensity(temperature_C, ratio, pressure_Pa)
    deficit = psychrolib.GetVaporPressureDeficit(temperature_C, ratio, pressure_Pa)
    assert moist_air.humidity_ratio(temperature_C, humidity_pct) == pytest.approx(ratio, rel=3.3e-4)
    assert moist_air.density(temperature_C, humidity_pct) == pytest.approx(density, rel=3.3e-4)
    assert moist_air.vapour_pressure_deficit(temperature_C, humidity_pct) == pytest.approx(deficit, rel=3.3e-4)


@pytest.mark.parametrize(("temperature_C", "humidity_pct"), ROOMS)
def test_that_the_real_gas_holds_a_little_more_vapour(temperature_C: float, humidity_pct: float) -> None:
    # source: CoolProp humid air (ASHRAE RP-1485): the enhancement that an ideal mixture leaves out is 0.4 to 0.5 %
    state = ("T", temperature_C + 273.15, "P", 101_325.0, "R", humidity_pct / 100.0)
    real = CoolProp.CoolProp.HAPropsSI("W", *state)
    share = real / float(moist_air.humidity_ratio(temperature_C, humidity_pct)) - 1.0
    assert 0.003 < share < 0.006


@pytest.mark.parametrize(("temperature_C", "humidity_pct"), ROOMS)
def test_that_transport_properties_follow_coolprop(temperature_C: float, humidity_pct: float) -> None:
    # source: CoolProp humid air; ours are of dry air, and vapour lowers them by under 1 % up to 30 °C, 3 % at 40 °C
    state = ("T", temperature_C + 273.15, "P", 101_325.0, "R", humidity_pct / 100.0)
    tolerance = 0.02 if temperature_C <= 30.0 else 0.04
    viscosity = CoolProp.CoolProp.HAPropsSI("mu", *state)
    conductivity = CoolProp.CoolProp.HAPropsSI("k", *state)
    assert moist_air.viscosity(temperature_C) == pytest.approx(viscosity, rel=tolerance)
    assert moist_air.conductivity(temperature_C) == pytest.approx(conductivity, rel=tolerance)


def test_that_vapour_concentration_follows_coolprop() -> None:
    # source: CoolProp humid air, vapour per volume of humid air; tolerance: the 0.4 to 0.5 % of the real gas
    state = ("T", 296.15, "P", 101_325.0, "R", 0.5)
    ratio = CoolProp.CoolProp.HAPropsSI("W", *state)
    volume = CoolProp.CoolProp.HAPropsSI("Vda", *state)
    assert moist_air.vapour_concentration(23.0, 50.0) == pytest.approx(1000.0 * ratio / volume, rel=6e-3)


def test_that_heat_capacity_follows_coolprop() -> None:
    # source: CoolProp humid air, per kg of humid air; tolerance: 0.3 %, of constant heat capacities of the parts
    exact = CoolProp.CoolProp.HAPropsSI("cp_ha", "T", 296.15, "P", 101_325.0, "R", 0.5)
    assert moist_air.heat_capacity(23.0, 50.0) == pytest.approx(exact, rel=3e-3)


@pytest.mark.parametrize("temperature_C", [10.0, 25.0, 40.0])
def test_that_diffusivity_follows_marrero_and_mason(temperature_C: float) -> None:
    # source: T. R. Marrero, E. A. Mason (1972), J. Phys. Chem. Ref. Data 1, 3: D = 1.87e-10 T^2.072 / p (atm) m²/s,
    # from memory; tolerance: 5 %, the uncertainty that the review states for this pair
    assert moist_air.diffusivity(temperature_C) == pytest.approx(1.87e-10 * (temperature_C + 273.15) ** 2.072, rel=0.05)


def test_that_diffusivity_rises_with_temperature_as_published() -> None:
    # sources: E. N. Fuller et al. (1966) give the power 1.75 for gases at large, T. R. Marrero, E. A. Mason (1972)
    # 2.072 for this pair, both from memory; Massman's lies between
    ratio = float(moist_air.diffusivity(50.0) / moist_air.diffusivity(0.0))
    assert (323.15 / 273.15) ** 1.75 < ratio < (323.15 / 273.15) ** 2.072


def test_that_thin_air_lets_vapour_through_faster() -> None:
    # kinetic theory: diffusivity is inversely proportional to pressure
    assert moist_air.diffusivity(20.0, 50_662.5) == pytest.approx(2.0 * float(moist_air.diffusivity(20.0)), rel=1e-12)


def test_that_arrays_and_scalars_agree() -> None:
    temperatures, humidities = np.array([[5.0], [20.0], [35.0]]), np.array([10.0, 55.0])
    wet_bulbs = moist_air.wet_bulb(temperatures, humidities)
    assert wet_bulbs.shape == (3, 2)
    assert wet_bulbs[1, 1] == pytest.approx(float(moist_air.wet_bulb(20.0, 55.0)), abs=1e-9)
