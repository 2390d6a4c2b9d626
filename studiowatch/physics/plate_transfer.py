"""Heat and vapour between a room and a square plate that lies or stands in it.

Forced and free flow act together. The free part is driven by the virtual-temperature difference, for vapour is lighter
than air: a wet film is colder than the room but damper, and which of the two wins decides whether air rises from it.
Functions of dimensionless numbers are unchecked: they run in the film's inner loop.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from functools import cached_property

import numpy as np

from studiowatch.physics import moist_air_core as core
from studiowatch.physics.constants import GRAVITY, ZERO_CELSIUS_K
from studiowatch.physics.ranges import Array

STILLEST_K = 0.1  # K, virtual-temperature difference that a room's own unrest makes; assumption


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


def free_nusselt(rayleigh: Array, prandtl: Array, face: Face, rising: Array) -> Array:
    """Return the free Nusselt number, or the Sherwood number if given Ra and Sc of the vapour.

    Parameters
    ----------
    rayleigh : ndarray
        Of either sign: only its size counts.
    rising : ndarray
        Share of the time in which the air at the film is lighter than the room's, 0-1.
    """
    size = np.abs(rayleigh)
    if face is Face.VERTICAL:
        return vertical_nusselt(size, prandtl)
    away = rising if face is Face.UP else 1.0 - rising
    lingering = lingering_nusselt(size)
    if (away <= 0.0).all():
        return lingering
    return lingering + away * (rising_nusselt(size) - lingering)


def mixed(forced_cubed: Array, free: Array) -> Array:
    """Return the joint Nusselt number of forced and free flow: the cube root of the sum of cubes.

    Source: Incropera et al., Fundamentals of Heat and Mass Transfer, 7th ed., sec. 9.9, with n = 3.
    """
    return np.cbrt(forced_cubed + _cubed(free))


def _cubed(value: Array) -> Array:
    return value * value * value  # many times as quick as **3


@dataclass(frozen=True, kw_only=True, eq=False)
class PlateAir:
    """The room's air at one plate, and all of the transfer that does not depend on the film's temperature, per draw.

    Properties are those of the room's air: a film 4 K colder would change either coefficient by about 1 %. They are
    worked out when first asked for: a film without free water never asks.

    Attributes
    ----------
    air_K, humidity, air_speed_m_s, pressure_Pa : ndarray
        The room: K, share of saturation (0-1), m/s, Pa.
    side_m : float
        Side of the square, m; also the length of the free flow, as McAdams takes it for a square.
    """

    face: Face
    side_m: float
    air_K: Array
    humidity: Array
    air_speed_m_s: Array
    pressure_Pa: Array

    @cached_property
    def vapour_Pa(self) -> Array:
        """Pressure of the room's vapour, Pa."""
        return core.saturation_pressure(self.air_K) * self.humidity

    @cached_property
    def vapour_kg_m3(self) -> Array:
        """Vapour in the room, kg/m³."""
        return core.vapour_density(self.vapour_Pa, self.air_K)

    @cached_property
    def virtual_K(self) -> Array:
        """Virtual temperature of the room, K."""
        return core.virtual_temperature(self.air_K, self.vapour_Pa, self.pressure_Pa)

    @cached_property
    def prandtl(self) -> Array:
        """Prandtl number."""
        return self._kinematic / self._thermal

    @cached_property
    def schmidt(self) -> Array:
        """Schmidt number of water vapour."""
        return self._kinematic / self._diffusivity

    @cached_property
    def forced_heat(self) -> Array:
        """Cube of the forced Nusselt number."""
        return _cubed(forced_nusselt(self._reynolds, self.prandtl))

    @cached_property
    def forced_mass(self) -> Array:
        """Cube of the forced Sherwood number."""
        return _cubed(forced_nusselt(self._reynolds, self.schmidt))

    @cached_property
    def rayleigh_per_K(self) -> Array:
        """Rayleigh number per kelvin of virtual-temperature difference, 1/K."""
        return GRAVITY * self.side_m**3 / (self.virtual_K * self._kinematic * self._thermal)

    @cached_property
    def heat_per_nusselt(self) -> Array:
        """Coefficient of heat at a Nusselt number of 1, W/(m² K)."""
        return self._conductivity / self.side_m

    @cached_property
    def mass_per_sherwood(self) -> Array:
        """Coefficient of vapour at a Sherwood number of 1, m/s."""
        return self._diffusivity / self.side_m

    @cached_property
    def _conductivity(self) -> Array:
        return core.conductivity(self.air_K)

    @cached_property
    def _diffusivity(self) -> Array:
        return core.diffusivity(self.air_K, self.pressure_Pa)

    @cached_property
    def _density(self) -> Array:
        return core.density(self.air_K, self.vapour_Pa, self.pressure_Pa)

    @cached_property
    def _kinematic(self) -> Array:
        return core.viscosity(self.air_K) / self._density

    @cached_property
    def _thermal(self) -> Array:
        ratio = core.mixing_ratio(self.vapour_Pa, self.pressure_Pa)
        return self._conductivity / (self._density * core.heat_capacity(ratio))

    @cached_property
    def _reynolds(self) -> Array:
        return self.air_speed_m_s * self.side_m / self._kinematic

    def rayleigh(self, virtual_K: Array) -> Array:
        """Return the Rayleigh number over a film whose air has the virtual temperature `virtual_K`, signed.

        It never falls below that of the room's own unrest. Where heat and vapour were to cancel, the bare correlations
        leave no free flow at all and two film temperatures in balance, which no room is still enough to show.
        """
        difference_K = virtual_K - self.virtual_K
        return np.copysign(np.hypot(difference_K, STILLEST_K), difference_K) * self.rayleigh_per_K

    def rising(self, virtual_K: Array) -> Array:
        """Return the share of the time in which air of the virtual temperature `virtual_K` is lighter than the room's.

        It goes from 0 to 1 over the width of the room's own unrest. A film that lies settles where heat and vapour
        cancel: with a jump there it would hop between the two laws, and its flux hang on the length of the steps.
        """
        return np.minimum(np.maximum(0.5 + (virtual_K - self.virtual_K) / STILLEST_K, 0.0), 1.0)

    def coefficients(self, film_K: Array, film_vapour_Pa: Array) -> tuple[Array, Array]:
        """Return the coefficients of heat, W/(m² K), and of vapour, m/s, over a film at `film_K`."""
        virtual_K = core.virtual_temperature(film_K, film_vapour_Pa, self.pressure_Pa)
        rayleigh, rising = self.rayleigh(virtual_K), self.rising(virtual_K)
        free_heat = free_nusselt(rayleigh, self.prandtl, self.face, rising)
        free_mass = free_nusselt(rayleigh * (self.schmidt / self.prandtl), self.schmidt, self.face, rising)
        return (
            self.heat_per_nusselt * mixed(self.forced_heat, free_heat),
            self.mass_per_sherwood * mixed(self.forced_mass, free_mass),
        )


def plate_air(
    *, temperature_C: Array, humidity_pct: Array, air_speed_m_s: Array, pressure_Pa: Array, side_m: float, face: Face
) -> PlateAir:
    """Return the air at a square plate of `side_m`, unchecked; °C, %, m/s and Pa, one value per draw."""
    return PlateAir(
        face=face,
        side_m=side_m,
        air_K=temperature_C + ZERO_CELSIUS_K,
        humidity=humidity_pct / 100.0,
        air_speed_m_s=air_speed_m_s,
        pressure_Pa=pressure_Pa,
    )
