"""Formulas of moist air in K and Pa, unchecked, for inner loops; `moist_air` is the checked shell over them."""

from __future__ import annotations

import numpy as np

from studiowatch.physics.constants import (
    GAS_CONSTANT_DRY_AIR,
    GAS_CONSTANT_VAPOUR,
    HEAT_DRY_AIR,
    HEAT_VAPOUR,
    LATENT_HEAT_0C,
    LATENT_HEAT_SLOPE,
    MASS_RATIO,
    STANDARD_PRESSURE_PA,
    ZERO_CELSIUS_K,
)
from studiowatch.physics.ranges import Array


def saturation_pressure(temperature_K: Array) -> Array:
    """Return the saturation vapour pressure over liquid water, Pa.

    Source: D. Sonntag (1990), Zeitschrift für Meteorologie 40(5), 340-344.
    """
    return np.exp(
        21.2409642
        - 6096.9385 / temperature_K
        + temperature_K * (1.673952e-5 * temperature_K - 2.711193e-2)
        + 2.433502 * np.log(temperature_K)
    )


def saturation_slope(saturation_Pa: Array, temperature_K: Array) -> Array:
    """Return the change of saturation pressure with temperature, Pa/K, after Clausius and Clapeyron."""
    return saturation_Pa * latent_heat(temperature_K) / (GAS_CONSTANT_VAPOUR * temperature_K**2)


def vapour_density(vapour_Pa: Array, temperature_K: Array) -> Array:
    """Return the mass of vapour in a volume, kg/m³."""
    return vapour_Pa / (GAS_CONSTANT_VAPOUR * temperature_K)


def mixing_ratio(vapour_Pa: Array, pressure_Pa: Array) -> Array:
    """Return kg vapour per kg dry air."""
    return MASS_RATIO * vapour_Pa / (pressure_Pa - vapour_Pa)


def virtual_temperature(temperature_K: Array, vapour_Pa: Array, pressure_Pa: Array) -> Array:
    """Return the temperature at which dry air is as light as this moist air, K."""
    return temperature_K / (1.0 - (1.0 - MASS_RATIO) * vapour_Pa / pressure_Pa)


def density(temperature_K: Array, vapour_Pa: Array, pressure_Pa: Array) -> Array:
    """Return the density of the moist air, kg/m³."""
    return pressure_Pa / (GAS_CONSTANT_DRY_AIR * virtual_temperature(temperature_K, vapour_Pa, pressure_Pa))


def heat_capacity(ratio: Array) -> Array:
    """Return the heat capacity at constant pressure, J/(kg K), of moist air with `ratio` kg vapour per kg dry air."""
    return (HEAT_DRY_AIR + HEAT_VAPOUR * ratio) / (1.0 + ratio)


def viscosity(temperature_K: Array) -> Array:
    """Return the dynamic viscosity of dry air, Pa s; room vapour lowers it by under 1 %.

    Source: U.S. Standard Atmosphere (1976), eq. 51 (Sutherland).
    """
    return 1.458e-6 * temperature_K * np.sqrt(temperature_K) / (temperature_K + 110.4)


def conductivity(temperature_K: Array) -> Array:
    """Return the thermal conductivity of dry air, W/(m K); room vapour lowers it by under 1 %.

    Source: U.S. Standard Atmosphere (1976), eq. 53.
    """
    return (
        2.64638e-3 * temperature_K * np.sqrt(temperature_K) / (temperature_K + 245.4 * 10.0 ** (-12.0 / temperature_K))
    )


def diffusivity(temperature_K: Array, pressure_Pa: Array) -> Array:
    """Return the diffusivity of water vapour in air, m²/s.

    Source: W. J. Massman (1998), Atmospheric Environment 32(6), 1111-1127.
    """
    return 2.178e-5 * (temperature_K / 273.15) ** 1.81 * (STANDARD_PRESSURE_PA / pressure_Pa)


def latent_heat(temperature_K: Array) -> Array:
    """Return the heat of evaporation of water, J/kg.

    Source: FAO Irrigation and Drainage Paper 56 (1998), annex 3.
    """
    return LATENT_HEAT_0C - LATENT_HEAT_SLOPE * (temperature_K - ZERO_CELSIUS_K)
