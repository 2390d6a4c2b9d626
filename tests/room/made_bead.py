"""A made-up heated bead, from heat transfer alone: a small sphere held at one temperature in moving air.

Nothing here knows King's law. Forced flow: W. E. Ranz and W. R. Marshall (1952), Nu = 2 + 0.6 Re^½ Pr^⅓. Free flow:
Churchill (1983) as the ht library has it. Both joined as cubes. Radiation, and heat that leaves by the leads, come on
top. Air: U.S. Standard Atmosphere (1976), eqs. 51 and 53. Size, leads and full voltage are assumptions.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import pi, sqrt

from ht import Nu_sphere_Churchill

GRAVITY = 9.80665  # m/s²
HEAT_AIR = 1006.0  # J/(kg K)
AT_ONE_M_S_mV = 1500.0


@dataclass(frozen=True, kw_only=True)
class MadeBead:
    """A bead of `diameter_m` at `bead_C`, whose leads take `leads_W_K`."""

    diameter_m: float = 1e-3
    leads_W_K: float = 1e-4
    bead_C: float = 80.0

    def signal_mV(self, speed_m_s: float, air_C: float = 21.0) -> float:
        """Return the voltage that keeps the bead at its temperature: the heat lost goes with its square."""
        return AT_ONE_M_S_mV * sqrt(self._heat_W(speed_m_s, air_C) / self._heat_W(1.0, 21.0))

    def _heat_W(self, speed_m_s: float, air_C: float) -> float:
        overheat_K, air_K = self.bead_C - air_C, air_C + 273.15
        film_K = air_K + overheat_K / 2
        density = 101_325.0 / (287.05 * film_K)
        viscosity = 1.458e-6 * film_K**1.5 / (film_K + 110.4) / density
        conductivity = 2.64638e-3 * film_K**1.5 / (film_K + 245.4 * 10 ** (-12 / film_K))
        prandtl = viscosity * density * HEAT_AIR / conductivity
        grashof = GRAVITY * overheat_K / film_K * self.diameter_m**3 / viscosity**2
        forced = 0.6 * sqrt(speed_m_s * self.diameter_m / viscosity) * prandtl ** (1 / 3)
        free = Nu_sphere_Churchill(prandtl, grashof) - 2.0
        nusselt = 2.0 + (forced**3 + free**3) ** (1 / 3)
        surface_m2 = pi * self.diameter_m**2
        radiated_W = 0.9 * 5.670374e-8 * surface_m2 * ((air_K + overheat_K) ** 4 - air_K**4)
        return (nusselt * conductivity / self.diameter_m * surface_m2 + self.leads_W_K) * overheat_K + radiated_W
