"""How fast a speck of dust falls through still air: Stokes' law, with slip for fine specks and drag for coarse ones.

In a stirred room the same speed says how many specks land: on a face that looks up, concentration times speed, per
area and time. Sources stand at the formulas.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike

from studiowatch.physics import moist_air
from studiowatch.physics.air import Air
from studiowatch.physics.constants import GRAVITY, STANDARD_PRESSURE_PA, ZERO_CELSIUS_K
from studiowatch.physics.ranges import Array, check, within
from studiowatch.speech.words import mark

DIAMETER_UM = (0.1, 500.0)  # µm, from fine smoke to a coarse grain; the drag law holds throughout
DENSITY_KG_M3 = (100.0, 8000.0)  # kg/m³, from fluff to steel
_FREE_PATH_M = 67.3e-9  # m, mean free path in air at 23 °C and 101325 Pa; ISO 15900:2009, from memory
_FREE_PATH_K = 296.15  # K, temperature of that value; ISO 15900:2009, from memory
_SUTHERLAND_K = 110.4  # K, Sutherland's constant of air; U.S. Standard Atmosphere (1976)
_DRAG_STEPS = 10  # Newton steps; the start is off by a factor of ten at most, and 1e-12 is reached in eight


def mean_free_path(air: Air) -> float:
    """Return the mean free path of the molecules of air, m.

    Source: ISO 15900:2009, after K. Willeke (1976), J. Aerosol Sci. 7, 381-387; from memory.

    Raises
    ------
    OutOfRange
        Names the value, the unit and the allowed range.
    """
    check(mark("temperature"), air.temperature_C, *moist_air.TEMPERATURE_C, "°C")
    check(mark("pressure"), air.pressure_Pa, *moist_air.PRESSURE_PA, "Pa")
    air_K = air.temperature_C + ZERO_CELSIUS_K
    warming = (air_K / _FREE_PATH_K) ** 2 * (_FREE_PATH_K + _SUTHERLAND_K) / (air_K + _SUTHERLAND_K)
    return _FREE_PATH_M * warming * STANDARD_PRESSURE_PA / air.pressure_Pa


def slip_correction(diameter_um: ArrayLike, air: Air) -> Array:
    """Return how much faster than by Stokes' law a small sphere falls (Cunningham's factor), 1 for a large one.

    Source: J. H. Kim et al. (2005), J. Res. Natl. Inst. Stand. Technol. 110, 31-54, as in ISO 15900:2009; from memory.

    Parameters
    ----------
    diameter_um : array_like
        From 0.1 to 500 µm.

    Raises
    ------
    OutOfRange
        Names the value, the unit and the allowed range.
    """
    knudsen = 2.0 * mean_free_path(air) / _diameter(diameter_um)
    return 1.0 + knudsen * (1.165 + 0.483 * np.exp(-0.997 / knudsen))


def settling_velocity(diameter_um: ArrayLike, density_kg_m3: ArrayLike, air: Air) -> Array:
    """Return the steady speed at which spheres fall through still air, m/s.

    The drag law of L. Schiller, A. Naumann (1933), C_D = 24/Re (1 + 0.15 Re^0.687), within 5 % up to Re = 800 (R. Clift
    et al., Bubbles, Drops and Particles, 1978, ch. 5), holds throughout: it takes off 0.2 % at 10 µm, 2 % at 30 µm and
    17 % at 100 µm. A flake or a fibre falls more slowly than a sphere of its length.

    Parameters
    ----------
    diameter_um : array_like
        From 0.1 to 500 µm.
    density_kg_m3 : array_like
        Of the speck itself, 100 to 8000 kg/m³; water has 1000, mineral dust about 2600, skin and lint 1000 to 1500.

    Returns
    -------
    ndarray
        m/s, of the shape to which the two broadcast.

    Raises
    ------
    OutOfRange
        Names the value, the unit and the allowed range.
    """
    diameter_m = _diameter(diameter_um)
    density = within(mark("density of dust"), density_kg_m3, *DENSITY_KG_M3, "kg/m³")
    air_density = moist_air.density(air.temperature_C, air.humidity_pct, air.pressure_Pa)
    viscosity = moist_air.viscosity(air.temperature_C)
    slow_flow = (density - air_density) * GRAVITY * diameter_m**2 / (18.0 * viscosity)
    reynolds_per_speed = air_density * diameter_m / viscosity
    falling = slow_flow * slip_correction(diameter_um, air)
    return _dragged(falling * reynolds_per_speed) / reynolds_per_speed


def _dragged(stokes_reynolds: Array) -> Array:
    """Return the Reynolds number of the fall whose Reynolds number would be `stokes_reynolds` by Stokes' law."""
    reynolds = stokes_reynolds
    for _ in range(_DRAG_STEPS):
        power = 0.15 * reynolds**0.687
        excess = reynolds * (1.0 + power) - stokes_reynolds
        reynolds = reynolds - excess / (1.0 + 1.687 * power)
    return reynolds


def _diameter(diameter_um: ArrayLike) -> Array:
    """Return the checked diameter, m."""
    return within(mark("diameter of dust"), diameter_um, *DIAMETER_UM, "µm") * 1e-6
