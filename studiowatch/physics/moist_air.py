"""Moist air as a mixture of ideal gases: what the film's balance, the window and the limits need of it.

Temperatures are °C, humidity is % relative to saturation over liquid water, also below 0 °C, where most sensors
report it so. Every function takes scalars or arrays, which broadcast, and returns the same shape. Values outside the
ranges raise `OutOfRange`; NaN is refused. The ideal mixture reads 0.4 to 0.5 % less vapour than a real gas would.
Sources stand at the formulas in `moist_air_core`.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike

from studiowatch.physics import moist_air_core as core
from studiowatch.physics.constants import HEAT_DRY_AIR, HEAT_VAPOUR, STANDARD_PRESSURE_PA, ZERO_CELSIUS_K
from studiowatch.physics.ranges import Array, within
from studiowatch.speech.words import mark

TEMPERATURE_C = (-40.0, 60.0)  # °C, range of every function here
HUMIDITY_PCT = (0.0, 100.0)  # %
PRESSURE_PA = (50_000.0, 110_000.0)  # Pa: from 5500 m up to a deep valley in a high
DRIEST_PCT = 0.01  # %, below which a dew point means nothing

_DEW_POINT_STEPS = 4  # Newton steps; the start is within 0.3 K, each step squares the error
_WET_BULB_STEPS = 40  # halvings of 60 K: 1e-10 K


def saturation_pressure(temperature_C: ArrayLike) -> Array:
    """Return the saturation vapour pressure over liquid water, Pa.

    Within 0.01 % of IAPWS-95 from 0 to 50 °C. Below 0 °C it is that of supercooled water, not of ice.

    Parameters
    ----------
    temperature_C : array_like
        From -40 to 60 °C.

    Raises
    ------
    OutOfRange
        Names the value, the unit and the allowed range.
    """
    return core.saturation_pressure(_kelvin(temperature_C))


def vapour_pressure(temperature_C: ArrayLike, humidity_pct: ArrayLike) -> Array:
    """Return the partial pressure of the vapour, Pa."""
    return saturation_pressure(temperature_C) * _share(humidity_pct)


def humidity_with(temperature_C: ArrayLike, vapour_Pa: ArrayLike) -> Array:
    """Return the humidity of air that holds vapour of this partial pressure, %: 100 at most, for the rest condenses.

    Parameters
    ----------
    vapour_Pa : array_like
        Pa, none of it negative.
    """
    share: Array = np.asarray(vapour_Pa, dtype=np.float64) / saturation_pressure(temperature_C)
    return np.minimum(100.0 * share, HUMIDITY_PCT[1])


def vapour_pressure_deficit(temperature_C: ArrayLike, humidity_pct: ArrayLike) -> Array:
    """Return how much vapour pressure is missing to saturation, Pa."""
    return saturation_pressure(temperature_C) * (1.0 - _share(humidity_pct))


def vapour_concentration(temperature_C: ArrayLike, humidity_pct: ArrayLike) -> Array:
    """Return the mass of vapour in a volume of air (the absolute humidity), g/m³."""
    return 1000.0 * core.vapour_density(vapour_pressure(temperature_C, humidity_pct), _kelvin(temperature_C))


def humidity_ratio(
    temperature_C: ArrayLike, humidity_pct: ArrayLike, pressure_Pa: ArrayLike = STANDARD_PRESSURE_PA
) -> Array:
    """Return the mass of vapour per mass of dry air, kg/kg.

    Parameters
    ----------
    pressure_Pa : array_like
        Barometric pressure, 50 to 110 kPa.
    """
    return core.mixing_ratio(vapour_pressure(temperature_C, humidity_pct), _pressure(pressure_Pa))


def dew_point(temperature_C: ArrayLike, humidity_pct: ArrayLike) -> Array:
    """Return the temperature at which this air is saturated over liquid water, °C.

    Parameters
    ----------
    humidity_pct : array_like
        From 0.01 to 100 %: drier air has no dew point worth naming.
    """
    within(mark("humidity"), humidity_pct, DRIEST_PCT, HUMIDITY_PCT[1], "%")
    vapour_Pa = vapour_pressure(temperature_C, humidity_pct)
    # start: a Magnus form, whose inverse is closed; coefficients of A. L. Buck (1981), J. Appl. Meteorol. 20, 1527
    log_ratio = np.log(vapour_Pa / 611.21)
    dew_K = 240.97 * log_ratio / (17.502 - log_ratio) + ZERO_CELSIUS_K
    for _ in range(_DEW_POINT_STEPS):
        saturation_Pa = core.saturation_pressure(dew_K)
        excess = np.log(saturation_Pa / vapour_Pa)
        dew_K = dew_K - excess * saturation_Pa / core.saturation_slope(saturation_Pa, dew_K)
    return dew_K - ZERO_CELSIUS_K


def dew_point_if_any(temperature_C: float, humidity_pct: float) -> float | None:
    """Return `dew_point` of one air, °C, or None where it is too dry to have one, as a sensor that reads 0 % has it."""
    return None if humidity_pct < DRIEST_PCT else float(dew_point(temperature_C, humidity_pct))


def wet_bulb(temperature_C: ArrayLike, humidity_pct: ArrayLike, pressure_Pa: ArrayLike = STANDARD_PRESSURE_PA) -> Array:
    """Return the thermodynamic wet-bulb temperature over liquid water, °C.

    The temperature that air takes when water evaporates into it until it is saturated and the air itself gives all
    the heat: ASHRAE Handbook Fundamentals 2017, ch. 1, eq. 33, solved by halving the bracket from 60 K below to the
    dry bulb.
    """
    pressure = _pressure(pressure_Pa)
    ratio = humidity_ratio(temperature_C, humidity_pct, pressure)
    dry_C = np.asarray(temperature_C, dtype=np.float64)
    high = dry_C + np.zeros_like(ratio)
    low = high - 60.0
    for _ in range(_WET_BULB_STEPS):
        middle = (low + high) / 2.0
        too_warm = _ratio_left_by(middle, dry_C, pressure) > ratio
        high = np.where(too_warm, middle, high)
        low = np.where(too_warm, low, middle)
    return (low + high) / 2.0


def _ratio_left_by(wet_C: Array, dry_C: Array, pressure_Pa: Array) -> Array:
    """Return the humidity ratio of air at `dry_C` whose wet bulb would be `wet_C`: rises with `wet_C`."""
    saturated = core.mixing_ratio(core.saturation_pressure(wet_C + ZERO_CELSIUS_K), pressure_Pa)
    latent = 2.501e6 - 2326.0 * wet_C
    return (latent * saturated - HEAT_DRY_AIR * (dry_C - wet_C)) / (2.501e6 + HEAT_VAPOUR * dry_C - 4186.0 * wet_C)


def density(temperature_C: ArrayLike, humidity_pct: ArrayLike, pressure_Pa: ArrayLike = STANDARD_PRESSURE_PA) -> Array:
    """Return the density of the moist air, kg/m³."""
    vapour_Pa = vapour_pressure(temperature_C, humidity_pct)
    return core.density(_kelvin(temperature_C), vapour_Pa, _pressure(pressure_Pa))


def heat_capacity(
    temperature_C: ArrayLike, humidity_pct: ArrayLike, pressure_Pa: ArrayLike = STANDARD_PRESSURE_PA
) -> Array:
    """Return the heat capacity of the moist air at constant pressure, J/(kg K)."""
    return core.heat_capacity(humidity_ratio(temperature_C, humidity_pct, pressure_Pa))


def viscosity(temperature_C: ArrayLike) -> Array:
    """Return the dynamic viscosity of dry air, Pa s; room vapour lowers it by under 1 %."""
    return core.viscosity(_kelvin(temperature_C))


def conductivity(temperature_C: ArrayLike) -> Array:
    """Return the thermal conductivity of dry air, W/(m K); room vapour lowers it by under 1 %."""
    return core.conductivity(_kelvin(temperature_C))


def diffusivity(temperature_C: ArrayLike, pressure_Pa: ArrayLike = STANDARD_PRESSURE_PA) -> Array:
    """Return the diffusivity of water vapour in air, m²/s."""
    return core.diffusivity(_kelvin(temperature_C), _pressure(pressure_Pa))


def _kelvin(temperature_C: ArrayLike) -> Array:
    return within(mark("temperature"), temperature_C, *TEMPERATURE_C, "°C") + ZERO_CELSIUS_K


def _share(humidity_pct: ArrayLike) -> Array:
    return within(mark("humidity"), humidity_pct, *HUMIDITY_PCT, "%") / 100.0


def _pressure(pressure_Pa: ArrayLike) -> Array:
    return within(mark("pressure"), pressure_Pa, *PRESSURE_PA, "Pa")
