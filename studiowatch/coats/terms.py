"""What one moment of a coat is told in: terms with their units, in groups; and those of the room and the film."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from enum import StrEnum

import numpy as np

from studiowatch.coats.bound_water import RELAXATION_S
from studiowatch.coats.draws import Draws
from studiowatch.coats.film_state import Film
from studiowatch.coats.free_water import EMISSIVITY, HEAT_CAPACITY_J_M2_K, Balance
from studiowatch.physics import equivalent_age, moist_air
from studiowatch.physics.air import Air
from studiowatch.physics.constants import STEFAN_BOLTZMANN, ZERO_CELSIUS_K
from studiowatch.physics.plate_transfer import PlateAir
from studiowatch.physics.ranges import Array
from studiowatch.speech.words import mark, say

G_M2 = 1000.0  # g/m² in a kg/m²
G_M2_H = 3.6e6  # g/(m² h) in a kg/(m² s)
HOUR_S = 3600.0  # s in an hour


class Phase(StrEnum):
    """Which part of its drying a coat is in."""

    OPEN = "open"
    PACKED = "packed"
    BOUND = "bound"
    SOLVENT = "solvent"
    RETAINED = "retained"
    PAINT = "paint"


@dataclass(frozen=True, slots=True, kw_only=True)
class Term:
    """One term: what it is, with its formula where it has one, its unit, and its value or None."""

    says: str
    unit: str
    value: float | None


Terms = Mapping[str, Term]


@dataclass(frozen=True, slots=True, kw_only=True)
class MomentTerms:
    """The balance of one coat at one moment; `groups` are terms by name, in groups by name."""

    elapsed_s: float
    phase: Phase
    groups: Mapping[str, Terms]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Here:
    """A film in its room: `speed_m_s` is the air speed at the film, `film_K` its temperature."""

    film: Film
    air: Air
    plate: PlateAir
    speed_m_s: Array
    film_K: Array

    @property
    def viscosity_m2_s(self) -> Array:
        """Kinematic viscosity of the air, m²/s."""
        return moist_air.viscosity(self.air.temperature_C) / self.density_kg_m3

    @property
    def density_kg_m3(self) -> Array:
        """Density of the air, kg/m³."""
        return moist_air.density(self.air.temperature_C, self.air.humidity_pct, self.air.pressure_Pa)


def term(unit: str, value: Array | float | None, says: str) -> Term:
    """Return a term of the nominal run: the first of an array of values; what has words in `says` is marked."""
    return Term(says=say(says), unit=unit, value=None if value is None else float(np.ravel(value)[0]))


def air_terms(here: Here) -> Terms:
    """Return the state of the air, and what it is like at the film."""
    air_C, pressure_Pa = here.air.temperature_C, here.air.pressure_Pa
    humidity_pct = here.air.humidity_pct
    dew_C = moist_air.dew_point_if_any(air_C, humidity_pct)
    return {
        "temperature_C": term("°C", air_C, mark("T_a, air")),
        "humidity_pct": term("%", humidity_pct, "RH"),
        "pressure_Pa": term("Pa", pressure_Pa, "P"),
        "dew_point_C": term("°C", dew_C, mark("dew point")),
        "air_speed_m_s": term("m/s", here.air.air_speed_m_s, mark("air speed as read")),
        "air_speed_at_film_m_s": term(
            "m/s", here.speed_m_s, mark("v, at the film: at least the sensor's floor, less a cover")
        ),
        "density_kg_m3": term("kg/m³", here.density_kg_m3, mark("of the moist air")),
        "kinematic_viscosity_m2_s": term("m²/s", here.viscosity_m2_s, mark("of the air")),
        "conductivity_W_m_K": term("W/(m K)", moist_air.conductivity(air_C), mark("λ, of the air")),
        "diffusivity_m2_s": term("m²/s", moist_air.diffusivity(air_C, pressure_Pa), mark("D, water vapour in air")),
    }


def film_terms(here: Here, *, drifts: bool) -> Terms:
    """Return the film itself; `drifts` says that no free water cools it any more."""
    film = here.film
    return {
        "temperature_C": term("°C", here.film_K - ZERO_CELSIUS_K, mark("T_f, film")),
        "side_m": term("m", film.layer.side_m, mark("L, side of the square of the piece's area")),
        "wet_um": term("µm", film.wet_um, mark("wet film as laid")),
        "dry_um": term("µm", film.dry_um, mark("h, film when dry")),
        "soaked_g_m2": term("g/m²", film.soaked_g_m2, mark("taken up by a bare support as it was laid")),
        "drift_s": term(
            "s", RELAXATION_S if drifts else None, mark("τ, in which T_f drifts to T_a without free water")
        ),
    }


def heat_terms(here: Here, now: Balance, draws: Draws) -> Terms:
    """Return the heat that reaches the film, and what takes it."""
    film_K, air_K = here.film_K, here.plate.air_K
    radiation = 4.0 * EMISSIVITY * STEFAN_BOLTZMANN * (0.5 * (film_K + air_K)) ** 3
    back = draws.back_conductance_W_m2_K
    convection = now.conductance_W_m2_K - radiation - back
    warming_K_s = now.warming(here.plate, film_K)
    return {
        "convection_W_m2": term("W/m²", convection * (air_K - film_K), "h_c (T_a - T_f)"),
        "radiation_W_m2": term(
            "W/m²", radiation * (air_K - film_K), mark("4 ε S T³ (T_a - T_f), T midway, S of Stefan and Boltzmann")
        ),
        "back_W_m2": term("W/m²", back * (air_K - film_K), mark("U_b (T_a - T_f), through the back")),
        "latent_W_m2": term("W/m²", -now.latent_J_kg * now.flux, mark("-L_v J, taken by what leaves")),
        "stored_W_m2": term("W/m²", HEAT_CAPACITY_J_M2_K * warming_K_s, mark("C dT_f/dt, the sum of these four")),
        "emissivity": term("", EMISSIVITY, "ε"),
        "back_W_m2_K": term("W/(m² K)", back, "U_b"),
        "heat_capacity_J_m2_K": term(
            "J/(m² K)", HEAT_CAPACITY_J_M2_K, mark("C, of the film and the support that follows it")
        ),
        "latent_heat_J_kg": term("J/kg", now.latent_J_kg, mark("L_v at T_f")),
        "warming_K_min": term("K/min", 60.0 * warming_K_s, "dT_f/dt"),
    }


def pace_terms(here: Here, draws: Draws) -> Terms:
    """Return how fast the ages run."""
    return {
        "diffusion_rate": term("", diffusion_rate(here, draws), "a_D, 1 at 23 °C"),
        "slowness": term("", here.film.layer.slowness, mark("(h/h_ref)ⁿ, against the sheet's film")),
        "cure_rate": term("", equivalent_age.rate(here.film_K, draws.cure_energy_J_mol), "a_c, 1 at 23 °C"),
    }


def diffusion_rate(here: Here, draws: Draws) -> Array:
    """Return how much faster than at 23 °C what is left in the film leaves it."""
    return equivalent_age.rate(here.film_K, draws.recoat_energy_J_mol)


def out_of_play(groups: Mapping[str, Terms]) -> Mapping[str, Terms]:
    """Return the same groups with every value None."""
    return {name: {key: replace(told, value=None) for key, told in terms.items()} for name, terms in groups.items()}
