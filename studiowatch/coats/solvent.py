"""The solvent of a solvent-borne coat: its vapour over the film, and how it crosses the air.

The class stands for all white spirits; a product's own solvent enters by its touch-dry time, as water does.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from studiowatch.physics import moist_air_core as core
from studiowatch.physics.constants import GAS_CONSTANT, GAS_CONSTANT_DRY_AIR, STANDARD_PRESSURE_PA
from studiowatch.physics.plate_transfer import PlateAir, free_nusselt, mixed
from studiowatch.physics.ranges import Array

MOLAR_MASS_AIR = GAS_CONSTANT / GAS_CONSTANT_DRY_AIR  # kg/mol
AT_20C_K = 293.15  # K, where vapour pressures are quoted
AT_25C_K = 298.15  # K, where diffusivities are quoted
INTERACTION = 0.4  # Flory-Huggins χ of a resin in a fair solvent, 0.3 to 0.5; from memory


@dataclass(frozen=True, slots=True, kw_only=True)
class Solvent:
    """A solvent, as one substance.

    Attributes
    ----------
    molar_mass_kg_mol, density_kg_m3 : float
        kg/mol; kg/m³ of the liquid.
    vapour_20C_Pa : float
        Saturation pressure at 20 °C, Pa.
    latent_J_kg : float
        Heat of evaporation, J/kg.
    diffusivity_25C_m2_s : float
        In air at 25 °C and 101 325 Pa, m²/s.
    """

    molar_mass_kg_mol: float
    density_kg_m3: float
    vapour_20C_Pa: float
    latent_J_kg: float
    diffusivity_25C_m2_s: float

    @property
    def clapeyron_K(self) -> float:
        """Heat of evaporation over the gas constant, K."""
        return self.latent_J_kg * self.molar_mass_kg_mol / GAS_CONSTANT

    def saturation_pressure(self, temperature_K: Array) -> Array:
        """Return the saturation pressure, Pa, after Clausius and Clapeyron."""
        return self.vapour_20C_Pa * np.exp(self.clapeyron_K * (1.0 / AT_20C_K - 1.0 / temperature_K))

    def vapour_density(self, vapour_Pa: Array, temperature_K: Array) -> Array:
        """Return the mass of vapour in a volume, kg/m³."""
        return vapour_Pa * (self.molar_mass_kg_mol / GAS_CONSTANT) / temperature_K

    def diffusivity(self, temperature_K: Array, pressure_Pa: Array) -> Array:
        """Return the diffusivity in air, m²/s; it goes with T^1.75: E. N. Fuller et al. (1966)."""
        warmer: Array = (temperature_K / AT_25C_K) ** 1.75
        return self.diffusivity_25C_m2_s * warmer * (STANDARD_PRESSURE_PA / pressure_Pa)


WHITE_SPIRIT = Solvent(
    molar_mass_kg_mol=0.142,  # kg/mol: 500 ppm are 2900 mg/m³ at 25 °C; OSHA, 29 CFR 1910.1000 table Z-1
    density_kg_m3=780.0,  # kg/m³; from memory
    vapour_20C_Pa=200.0,  # Pa; safety data name 0.2 to 0.4 kPa, and the heavy part stays longest: from memory
    latent_J_kg=3.6e5,  # J/kg: n-nonane 46.4 and n-decane 51.4 kJ/mol at 25 °C; from memory
    diffusivity_25C_m2_s=5.8e-6,  # m²/s of n-decane by the method of E. N. Fuller et al. (1966)
)


def activity(solvent_m: Array, resin_m: Array) -> Array:
    """Return the vapour pressure over a solution as a share of that over the solvent alone.

    Source: P. J. Flory (1942), M. L. Huggins (1942), long chains: ln a = ln φ + (1 - φ) + χ (1 - φ)².

    Parameters
    ----------
    solvent_m, resin_m : ndarray
        Thickness of each in the film, m; `solvent_m` must be above 0.
    """
    share = solvent_m / (solvent_m + resin_m)
    resin = 1.0 - share
    return share * np.exp(resin + INTERACTION * resin**2)


def coefficients(
    solvent: Solvent, plate: PlateAir, film_K: Array, vapour_Pa: Array, side_m: float
) -> tuple[Array, Array]:
    """Return the coefficients of heat, W/(m² K), and of solvent vapour, m/s, over a film at `film_K`.

    The vapour is heavier than air: over a plate that looks up it lingers.
    """
    diffusivity = solvent.diffusivity(plate.air_K, plate.pressure_Pa)
    schmidt = plate.schmidt * (plate.mass_per_sherwood * side_m) / diffusivity
    excess = solvent.molar_mass_kg_mol / MOLAR_MASS_AIR - 1.0
    damp_K = core.virtual_temperature(film_K, plate.vapour_Pa, plate.pressure_Pa)
    virtual_K = damp_K / (1.0 + excess * vapour_Pa / plate.pressure_Pa)
    rayleigh, rising = plate.rayleigh(virtual_K), plate.rising(virtual_K)
    per_prandtl = schmidt / plate.prandtl
    heat = mixed(plate.forced_heat, free_nusselt(rayleigh, plate.prandtl, plate.face, rising))
    mass = mixed(plate.forced_heat * per_prandtl, free_nusselt(rayleigh * per_prandtl, schmidt, plate.face, rising))
    return plate.heat_per_nusselt * heat, diffusivity / side_m * mass
