"""The first part of drying: free water leaves and cools the film.

Vapour goes through the air and, once the polymer is packed, through a dry layer that grows from the top. All arrays
hold one value per draw.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from studiowatch.coats.bound_water import BOUND_AS_LAID
from studiowatch.coats.draws import Draws
from studiowatch.physics import moist_air_core as core
from studiowatch.physics.constants import GAS_CONSTANT_VAPOUR, STEFAN_BOLTZMANN, WATER_DENSITY
from studiowatch.physics.plate_transfer import Face, PlateAir
from studiowatch.physics.ranges import Array

PACKING = 0.74  # volume share of polymer when its particles touch; Kiil (2006), Prog. Org. Coat. 57, 236-250
POLYMER_DENSITY = 1100.0  # kg/m³; from memory
FINE_STEP_S = 10.0  # s, fine enough at any time: the film cools within a minute or two
_SHARE_PER_STEP = 0.04  # of the free water laid that one step may take: steps of 1 s differ by under 0.1 %
_WARMING_PER_STEP_K = 0.3  # K that the film may change in one step, at the pace it starts with
_STEADY_SPAN_K = 60.0  # K under the air: deeper than any film in hot dry wind
_STEADY_HALVINGS = 40  # to 1e-11 of the span
EMISSIVITY = 0.95  # of a wet film and of the room around it; from memory
HEAT_CAPACITY_J_M2_K = 1500.0  # J/(m² K) of film and support that follow the film's temperature; from memory

DUST_FREE_SHARE = 0.5  # of the free water at packing still there when dust no longer sticks; assumption
TACK_FREE_SHARE = 0.2  # of the free water at packing still there when a finger no longer sticks; assumption


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Layer:
    """What was laid, per draw, and what does not change while it dries.

    Attributes
    ----------
    dry_m, packed_m : ndarray
        Thickness of the polymer alone, and of the packed polymer with its voids, m.
    polymer_kg_m2, free_laid, free_packed : ndarray
        Polymer, free water as laid, and free water when the polymer packs, kg/m².
    slowness : ndarray
        How much longer water takes to the surface than in the sheet's own film: (h/h_ref)ⁿ.
    """

    side_m: float
    face: Face
    wet_m: Array
    dry_m: Array
    packed_m: Array
    polymer_kg_m2: Array
    free_laid: Array
    free_packed: Array
    slowness: Array


def layer(
    *, wet_m: Array, solids: Array, reference_dry_m: Array, thickness_power: Array, side_m: float, face: Face
) -> Layer:
    """Return the layer of `wet_m` with the volume share `solids` of polymer."""
    dry_m = wet_m * solids
    polymer = POLYMER_DENSITY * dry_m
    return Layer(
        side_m=side_m,
        face=face,
        wet_m=wet_m,
        dry_m=dry_m,
        packed_m=dry_m / PACKING,
        polymer_kg_m2=polymer,
        free_laid=WATER_DENSITY * (wet_m - dry_m) - BOUND_AS_LAID * polymer,
        free_packed=WATER_DENSITY * (dry_m / PACKING - dry_m) - BOUND_AS_LAID * polymer,
        slowness=(dry_m / reference_dry_m) ** thickness_power,
    )


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Balance:
    """Heat and vapour at a wet film at one moment.

    Attributes
    ----------
    resistance_s_m : ndarray
        Of air and dry layer to vapour, s/m.
    conductance_W_m2_K : ndarray
        Heat from the room per kelvin: air, radiation and back.
    deficit_kg_m3 : ndarray
        Vapour over the film less vapour in the room.
    deficit_slope : ndarray
        Its change with film temperature, kg/(m³ K).
    latent_J_kg : ndarray
        Heat of evaporation.
    """

    resistance_s_m: Array
    conductance_W_m2_K: Array
    deficit_kg_m3: Array
    deficit_slope: Array
    latent_J_kg: Array

    @property
    def flux(self) -> Array:
        """Water leaving, kg/(m² s); negative when it condenses."""
        return self.deficit_kg_m3 / self.resistance_s_m

    def warming(self, plate: PlateAir, film_K: Array) -> Array:
        """Return how fast the film warms, K/s."""
        gain = self.conductance_W_m2_K * (plate.air_K - film_K) - self.latent_J_kg * self.flux
        return gain / HEAT_CAPACITY_J_M2_K


def balance(plate: PlateAir, film_K: Array, dry_layer_m: Array, *, kappa: Array, draws: Draws) -> Balance:
    """Return the balance of a film at `film_K` under a dry layer of `dry_layer_m`."""
    vapour_Pa = core.saturation_pressure(film_K)
    heat, mass = plate.coefficients(film_K, vapour_Pa)
    latent = core.latent_heat(film_K)
    vapour = core.vapour_density(vapour_Pa, film_K)
    return Balance(
        resistance_s_m=1.0 / (kappa * mass) + dry_layer_m / draws.layer_diffusivity_m2_s,
        conductance_W_m2_K=room_conductance(heat, plate, film_K, draws),
        deficit_kg_m3=vapour - plate.vapour_kg_m3,
        deficit_slope=vapour * (latent / (GAS_CONSTANT_VAPOUR * film_K) - 1.0) / film_K,
        latent_J_kg=latent,
    )


def room_conductance(heat: Array, plate: PlateAir, film_K: Array, draws: Draws) -> Array:
    """Return the heat that a film gets from the room per kelvin, W/(m² K): through the air, by radiation, its back."""
    mean_K = 0.5 * (film_K + plate.air_K)
    radiation = (4.0 * EMISSIVITY * STEFAN_BOLTZMANN) * (mean_K * mean_K * mean_K)
    return heat + radiation + draws.back_conductance_W_m2_K


def dry_layer(coat: Layer, free: Array) -> Array:
    """Return the thickness of the dry layer over the wet part of the packed film, m; 0 before packing."""
    return coat.packed_m * (1.0 - np.minimum(free / coat.free_packed, 1.0))


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Evaporation:
    """What a step did while free water was there.

    Attributes
    ----------
    free, film_K : ndarray
        Free water, kg/m², and film temperature, K, at the end.
    flux : ndarray
        Mean over the step, kg/(m² s).
    dt_s : float
        Length of the step, s.
    used_s : ndarray
        Time until free water had gone, s: the whole step where it has not.
    mean_K : ndarray
        Mean film temperature, K.
    """

    free: Array
    film_K: Array
    flux: Array
    dt_s: float
    used_s: Array
    mean_K: Array


def evaporate(
    coat: Layer,
    plate: PlateAir,
    free: Array,
    film_K: Array,
    longest_s: float,
    *,
    kappa: Array,
    draws: Draws,
    coarse: float = 1.0,
) -> Evaporation:
    """Return the film after at most `longest_s` of losing free water: less where that would be too coarse a step.

    The film's heat is linear about its present temperature, so its course within the step is an exponential, and the
    flux is averaged over that; the dry layer is taken as it will be in mid-step. Where `free` is 0 nothing happens.
    """
    layer_m = dry_layer(coat, free)
    now = balance(plate, film_K, layer_m, kappa=kappa, draws=draws)
    wet = free > 0.0
    dt_s = longest_s
    if dt_s > FINE_STEP_S:
        shares, warming = now.flux / coat.free_laid, now.warming(plate, film_K)
        dt_s = min(dt_s, fitting_step_s(shares[wet], warming[wet], coarse))
    middle_m = dry_layer(coat, np.maximum(free - now.flux * (0.5 * dt_s), 0.5 * free))
    resistance = now.resistance_s_m + (middle_m - layer_m) / draws.layer_diffusivity_m2_s
    return course(now, resistance, plate, free=free, film_K=film_K, dt_s=dt_s)


def course(now: Balance, resistance: Array, plate: PlateAir, *, free: Array, film_K: Array, dt_s: float) -> Evaporation:
    """Return the film after `dt_s` of a balance that is linear about `now`, its `resistance` that of mid-step, s/m."""
    wet = free > 0.0
    latent_flux = now.latent_J_kg / resistance
    pull = (now.conductance_W_m2_K + latent_flux * now.deficit_slope) / HEAT_CAPACITY_J_M2_K
    push = now.conductance_W_m2_K * (plate.air_K - film_K) - latent_flux * now.deficit_kg_m3
    reach = push / (HEAT_CAPACITY_J_M2_K * pull)
    shift = reach * (1.0 + np.expm1(-pull * dt_s) / (pull * dt_s))
    flux = (now.deficit_kg_m3 + now.deficit_slope * shift) / resistance
    left = free - flux * dt_s
    used_s = np.where(wet, dt_s, 0.0)
    ends = wet & (left <= 0.0)
    if ends.any():
        used_s = np.where(ends, free / np.where(ends, flux, 1.0), used_s)
    return Evaporation(
        free=np.where(wet & ~ends, left, 0.0),
        film_K=film_K - reach * np.expm1(-pull * used_s),
        flux=flux,
        dt_s=dt_s,
        used_s=used_s,
        mean_K=film_K + shift,
    )


def fitting_step_s(share_per_s: Array, warming_K_s: Array, coarse: float = 1.0) -> float:
    """Return how long a step may be so that no draw dries or warms too far in it, s; `coarse` times as far."""
    hurry = max(
        float(np.abs(share_per_s).max()) / _SHARE_PER_STEP, float(np.abs(warming_K_s).max()) / _WARMING_PER_STEP_K
    )
    return max(FINE_STEP_S, coarse / hurry) if hurry > 0.0 else np.inf


def steady(plate: PlateAir, kappa: Array, draws: Draws) -> tuple[Array, Array]:
    """Return the flux, kg/(m² s), and the temperature, K, at which a wet film's heat is in balance.

    These are the rate and the film temperature of the constant-rate period, before the polymer packs.
    """
    dry = np.zeros(plate.air_K.size)
    low_K, high_K = plate.air_K - _STEADY_SPAN_K, plate.air_K
    for _ in range(_STEADY_HALVINGS):
        film_K = 0.5 * (low_K + high_K)
        warms = balance(plate, film_K, dry, kappa=kappa, draws=draws).warming(plate, film_K) > 0.0
        low_K, high_K = np.where(warms, film_K, low_K), np.where(warms, high_K, film_K)
    film_K = 0.5 * (low_K + high_K)
    return balance(plate, film_K, dry, kappa=kappa, draws=draws).flux, film_K
