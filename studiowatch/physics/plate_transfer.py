"""Heat and vapour between a room and a square plate that lies or stands in it.

Forced and free flow act together. The free part is driven by the virtual-temperature difference, for vapour is lighter
than air: a wet film is colder than the room but damper, and which of the two wins decides whether air rises from it.
Functions of dimensionless numbers are unchecked: they run in the film's inner loop.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

import numpy as np

from studiowatch.physics import moist_air_core as core
from studiowatch.physics.constants import GRAVITY, ZERO_CELSIUS_K
from studiowatch.physics.ranges import Array


class Face(StrEnum):
    """Which way the wet face looks."""

    UP = "face-up"
    DOWN = "face-down"
    VERTICAL = "vertical"


def forced_nusselt(reynolds: Array, prandtl: Array) -> Array:
    """Return the mean Nusselt number of laminar flow along a plate.

    Source: Pohlhausen; Incropera et al., Fundamentals of Heat and Mass Transfer, 7th ed., eq. 7.30.
    """
    return 0.664 * np.sqrt(reynolds) * np.cbrt(prandtl)


def rising_nusselt(rayleigh: Array) -> Array:
    """Return the free Nusselt number where the air at the plate tends away from it; the larger of the two laws.

    Source: W. H. McAdams, Heat Transmission, 3rd ed. (1954), ch. 7: 0.54 Ra^1/4 laminar, 0.14 Ra^1/3 turbulent.
    """
    return np.maximum(0.54 * np.sqrt(np.sqrt(rayleigh)), 0.14 * np.cbrt(rayleigh))


def lingering_nusselt(rayleigh: Array) -> Array:
    """Return the free Nusselt number where the air at the plate is pressed on to it and can only leave sideways.

    Source: W. H. McAdams, Heat Transmission, 3rd ed. (1954), ch. 7: 0.27 Ra^1/4.
    """
    return 0.27 * np.sqrt(np.sqrt(rayleigh))


def vertical_nusselt(rayleigh: Array, prandtl: Array) -> Array:
    """Return the free Nusselt number of a plate on edge.

    Source: S. W. Churchill, H. H. S. Chu (1975), Int. J. Heat Mass Transfer 18, 1323-1329, eq. 9.
    """
    shape = (1.0 + (0.492 / prandtl) ** (9.0 / 16.0)) ** (8.0 / 27.0)
    return (0.825 + 0.387 * rayleigh ** (1.0 / 6.0) / shape) ** 2


def free_nusselt(rayleigh: Array, prandtl: Array, face: Face) -> Array:
    """Return the free Nusselt number, or the Sherwood number if given Ra and Sc of the vapour.

    Parameters
    ----------
    rayleigh : ndarray
        Signed: positive where the air at the film is lighter than the room's.
    """
    size = np.abs(rayleigh)
    if face is Face.VERTICAL:
        return vertical_nusselt(size, prandtl)
    away = rayleigh if face is Face.UP else -rayleigh
    if (away <= 0.0).all():
        return lingering_nusselt(size)
    return np.where(away > 0.0, rising_nusselt(size), lingering_nusselt(size))


def mixed(forced_cubed: Array, free: Array) -> Array:
    """Return the joint Nusselt number of forced and free flow: the cube root of the sum of cubes.

    Source: Incropera et al., Fundamentals of Heat and Mass Transfer, 7th ed., sec. 9.9, with n = 3.
    """
    return np.cbrt(forced_cubed + free**3)


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class PlateAir:
    """All of the transfer at one plate that does not depend on the film's temperature, one value per draw.

    Properties are those of the room's air: a film 4 K colder would change either coefficient by about 1 %.

    Attributes
    ----------
    air_K, humidity, vapour_Pa, vapour_kg_m3, pressure_Pa : ndarray
        The room: K, share of saturation (0-1), Pa, kg/m³, Pa.
    forced_heat, forced_mass : ndarray
        Cubes of the forced Nusselt and Sherwood numbers.
    rayleigh_per_K : ndarray
        Rayleigh number per kelvin of virtual-temperature difference, 1/K.
    """

    face: Face
    air_K: Array
    humidity: Array
    vapour_Pa: Array
    vapour_kg_m3: Array
    pressure_Pa: Array
    virtual_K: Array
    prandtl: Array
    schmidt: Array
    forced_heat: Array
    forced_mass: Array
    rayleigh_per_K: Array
    heat_per_nusselt: Array
    mass_per_sherwood: Array

    def coefficients(self, film_K: Array, film_vapour_Pa: Array) -> tuple[Array, Array]:
        """Return the coefficients of heat, W/(m² K), and of vapour, m/s, over a film at `film_K`."""
        virtual_K = core.virtual_temperature(film_K, film_vapour_Pa, self.pressure_Pa)
        rayleigh = (virtual_K - self.virtual_K) * self.rayleigh_per_K
        free_heat = free_nusselt(rayleigh, self.prandtl, self.face)
        free_mass = free_nusselt(rayleigh * (self.schmidt / self.prandtl), self.schmidt, self.face)
        return (
            self.heat_per_nusselt * mixed(self.forced_heat, free_heat),
            self.mass_per_sherwood * mixed(self.forced_mass, free_mass),
        )


def plate_air(
    *, temperature_C: Array, humidity_pct: Array, air_speed_m_s: Array, pressure_Pa: Array, side_m: float, face: Face
) -> PlateAir:
    """Return the transfer at a square plate of `side_m` in this air, unchecked.

    Parameters
    ----------
    temperature_C, humidity_pct, air_speed_m_s, pressure_Pa : ndarray
        One value per draw, °C, %, m/s, Pa.
    side_m : float
        Side of the square, m; also the length of the free flow, as McAdams takes it for a square.
    """
    air_K = temperature_C + ZERO_CELSIUS_K
    vapour_Pa = core.saturation_pressure(air_K) * (humidity_pct / 100.0)
    conductivity = core.conductivity(air_K)
    diffusivity = core.diffusivity(air_K, pressure_Pa)
    density = core.density(air_K, vapour_Pa, pressure_Pa)
    kinematic = core.viscosity(air_K) / density
    thermal = conductivity / (density * core.heat_capacity(core.mixing_ratio(vapour_Pa, pressure_Pa)))
    virtual_K = core.virtual_temperature(air_K, vapour_Pa, pressure_Pa)
    prandtl, schmidt = kinematic / thermal, kinematic / diffusivity
    reynolds = air_speed_m_s * side_m / kinematic
    return PlateAir(
        face=face,
        air_K=air_K,
        humidity=humidity_pct / 100.0,
        vapour_Pa=vapour_Pa,
        vapour_kg_m3=core.vapour_density(vapour_Pa, air_K),
        pressure_Pa=pressure_Pa,
        virtual_K=virtual_K,
        prandtl=prandtl,
        schmidt=schmidt,
        forced_heat=forced_nusselt(reynolds, prandtl) ** 3,
        forced_mass=forced_nusselt(reynolds, schmidt) ** 3,
        rayleigh_per_K=GRAVITY * side_m**3 / (virtual_K * kinematic * thermal),
        heat_per_nusselt=conductivity / side_m,
        mass_per_sherwood=diffusivity / side_m,
    )
