"""A solvent-borne coat: solvent leaves through the air, then, slowly, through the resin. Humidity plays no part in it.

A cold film near the dew point takes up water, which clouds it for good: blushing.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import partial

import numpy as np

from studiowatch.coats.bound_water import HARD_SHARE, THROUGH_SHARE
from studiowatch.coats.draws import RECOAT_ENERGY, Draws
from studiowatch.coats.free_water import (
    FINE_STEP_S,
    POLYMER_DENSITY,
    Balance,
    Evaporation,
    Layer,
    course,
    fitting_step_s,
    room_conductance,
)
from studiowatch.coats.seal import Hold, Seal
from studiowatch.coats.solvent import Solvent, activity, coefficients
from studiowatch.coats.stage_table import ROW, nothing_reached
from studiowatch.coats.stages import Stage
from studiowatch.coats.step_paths import Steps, gathering, picked
from studiowatch.coats.stretch import Stretch
from studiowatch.coats.waterborne import enter_surface_stages
from studiowatch.physics import equivalent_age
from studiowatch.physics import moist_air_core as core
from studiowatch.physics.plate_transfer import Face, PlateAir
from studiowatch.physics.ranges import Array

LEFT_WHEN_SET = 0.30  # of the solvent laid: set when about 70 % has gone; from memory
RETAINED = 0.10  # of the solvent laid, which leaves only through the resin; assumption
LEFT_AT_RECOAT = 0.03  # of the solvent laid, still there at the sheet's recoat time; assumption
RECOAT_ENERGY_J_MOL = (65e3, 10e3)  # J/mol, centre and s.d.: 50e3 to 80e3 hold nearly nine draws in ten; from memory
BLUSH_MARGIN_K = 3.0  # K over the dew point below which water settles in the film; ISO 8502-4 practice

_LEAST_KG_M2 = 1e-12  # kg/m², a billionth of a gram: none, as near as the model knows
_FINER = 0.5  # of a step that would do for water: the activity falls as the film dries
_BEYOND_SET = LEFT_WHEN_SET - RETAINED
_DEEP = ((Stage.DRY_HARD, HARD_SHARE), (Stage.DRY_THROUGH, THROUGH_SHARE))


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class SolventProduct:
    """What the anchoring found of one solvent-borne product, per draw.

    Attributes
    ----------
    draws : Draws
        With the energy of solvent in resin in the place of that of water in polymer.
    kappa : ndarray
        Vapour transfer of this product over that of the class's solvent.
    bound_rate_per_s : ndarray
        Rate at which retained solvent leaves the sheet's own film at 23 °C, 1/s.
    recoat_age_s, cure_age_s : ndarray
        Ages at which the coat is ready for the next, and cured, s at 23 °C.
    """

    draws: Draws
    solvent: Solvent
    kappa: Array
    bound_rate_per_s: Array
    recoat_age_s: Array
    cure_age_s: Array


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class SolventState:
    """The state of a solvent-borne coat, one value per draw.

    Attributes
    ----------
    free, retained : ndarray
        Solvent that leaves through the air, and solvent that must leave through the resin, kg/m².
    film_K : ndarray
        Film temperature, K.
    recoat_age_s, cure_age_s : ndarray
        Ages gathered so far, s at 23 °C.
    blush_s, blush_from_s : ndarray
        How long the wet film was within 3 K of the dew point, s, and the age when that began; infinite if never.
    reached : ndarray, (stages, draws)
        See `stage_table`.
    """

    free: Array
    retained: Array
    film_K: Array
    recoat_age_s: Array
    cure_age_s: Array
    blush_s: Array
    blush_from_s: Array
    reached: Array

    @property
    def wet(self) -> bool:
        """Whether any draw still has free solvent."""
        return bool((self.free > 0.0).any())


def solvent_draws(draws: Draws) -> Draws:
    """Return the draws with the energy of solvent in resin, each at the same place in its range as that of water."""
    centre, spread = RECOAT_ENERGY
    place = (draws.recoat_energy_J_mol - centre) / spread
    return replace(draws, recoat_energy_J_mol=RECOAT_ENERGY_J_MOL[0] + RECOAT_ENERGY_J_MOL[1] * place)


def solvent_layer(
    solvent: Solvent,
    *,
    wet_m: Array,
    solids: Array,
    reference_dry_m: Array,
    thickness_power: Array,
    side_m: float,
    face: Face,
) -> Layer:
    """Return the layer of `wet_m` with the volume share `solids` of resin."""
    dry_m = wet_m * solids
    laid = solvent.density_kg_m3 * (wet_m - dry_m)
    return Layer(
        side_m=side_m,
        face=face,
        wet_m=wet_m,
        dry_m=dry_m,
        packed_m=dry_m,
        polymer_kg_m2=POLYMER_DENSITY * dry_m,
        free_laid=(1.0 - RETAINED) * laid,
        free_packed=_BEYOND_SET * laid,
        slowness=(dry_m / reference_dry_m) ** thickness_power,
    )


def retained_as_laid(solvent: Solvent, coat: Layer) -> Array:
    """Return the solvent that a coat retains, kg/m²."""
    return RETAINED * solvent.density_kg_m3 * (coat.wet_m - coat.dry_m)


def freshly_laid(coat: Layer, product: SolventProduct, film_K: Array) -> SolventState:
    """Return the state of a coat laid this moment at `film_K`."""
    zero = np.zeros(film_K.size)
    return SolventState(
        free=coat.free_laid,
        retained=retained_as_laid(product.solvent, coat),
        film_K=film_K,
        recoat_age_s=zero,
        cure_age_s=zero,
        blush_s=zero,
        blush_from_s=np.full(film_K.size, np.inf),
        reached=nothing_reached(film_K.size),
    )


def solvent_balance(coat: Layer, product: SolventProduct, state: SolventState, plate: PlateAir) -> Balance:
    """Return the balance of heat and solvent vapour at the film as it stands; the room's air holds none of it."""
    film_K, solvent = state.film_K, product.solvent
    vapour_Pa = solvent.saturation_pressure(film_K)
    heat, mass = coefficients(solvent, plate, film_K, vapour_Pa, coat.side_m)
    vapour = solvent.vapour_density(vapour_Pa, film_K)
    return Balance(
        resistance_s_m=1.0 / (product.kappa * mass * _activity(coat, product, state, state.free)),
        conductance_W_m2_K=room_conductance(heat, plate, film_K, product.draws),
        deficit_kg_m3=vapour,
        deficit_slope=vapour * (solvent.clapeyron_K / film_K - 1.0) / film_K,
        latent_J_kg=np.full(film_K.size, solvent.latent_J_kg),
    )


def _activity(coat: Layer, product: SolventProduct, state: SolventState, free: Array) -> Array:
    """Return the activity of the solvent; the wet part of a coat below retains as much for its thickness.

    It is never 0: a draw that has lost all waits beside others that are wet still.
    """
    solvent = np.maximum(free + state.retained * (coat.packed_m / coat.dry_m), _LEAST_KG_M2)
    return activity(solvent / product.solvent.density_kg_m3, coat.packed_m)


def _evaporate(
    coat: Layer, product: SolventProduct, state: SolventState, plate: PlateAir, longest_s: float, *, coarse: float
) -> Evaporation:
    """Return the film after at most `longest_s` of losing free solvent, as `free_water.evaporate` does for water."""
    now = solvent_balance(coat, product, state, plate)
    free, dt_s = state.free, longest_s
    wet = free > 0.0
    if dt_s > FINE_STEP_S:
        shares, warming = now.flux / coat.free_laid, now.warming(plate, state.film_K)
        dt_s = min(dt_s, _FINER * fitting_step_s(shares[wet], warming[wet], coarse))
    middle = np.maximum(free - now.flux * (0.5 * dt_s), 0.5 * free)
    weaker = _activity(coat, product, state, free) / _activity(coat, product, state, middle)
    return course(now, now.resistance_s_m * weaker, plate, free=free, film_K=state.film_K, dt_s=dt_s)


def lose_free_solvent(
    coat: Layer,
    product: SolventProduct,
    before: SolventState,
    plate: PlateAir,
    *,
    longest_s: float,
    elapsed_s: float,
    coarse: float = 1.0,
) -> tuple[SolventState, Evaporation]:
    """Return the state with the free solvent of one step gone, and the step; draws without any stay as they are."""
    lost = _evaporate(coat, product, before, plate, longest_s, coarse=coarse)
    blushes = (lost.used_s > 0.0) & (core.saturation_pressure(lost.mean_K - BLUSH_MARGIN_K) < plate.vapour_Pa)
    losing = np.where(lost.flux == 0.0, 1.0, lost.flux)
    to_set_s = np.maximum(before.free - coat.free_packed, 0.0) / losing
    set_s = np.where(lost.free <= coat.free_packed, np.maximum(lost.used_s - to_set_s, 0.0), 0.0)
    state = SolventState(
        free=lost.free,
        retained=before.retained,
        film_K=lost.film_K,
        recoat_age_s=before.recoat_age_s,
        cure_age_s=before.cure_age_s + set_s * equivalent_age.rate(lost.mean_K, product.draws.cure_energy_J_mol),
        blush_s=before.blush_s + np.where(blushes, lost.used_s, 0.0),
        blush_from_s=np.where(blushes, np.minimum(before.blush_from_s, elapsed_s), before.blush_from_s),
        reached=enter_surface_stages(before.reached, coat, before.free, lost, elapsed_s=elapsed_s),
    )
    return state, lost


def rest(
    coat: Layer,
    product: SolventProduct,
    before: SolventState,
    stretch: Stretch,
    *,
    ended_s: float,
    seal: Seal | None = None,
    hold: Hold | None = None,
) -> SolventState:
    """Return the state after a stretch without free solvent, at whose end the coat is `ended_s` old.

    `seal` and `hold` are as for a water-borne coat. It is clear all along: CLEAR says that it can blush no more.
    """
    slowness, rate_per_s = coat.slowness, product.bound_rate_per_s / coat.slowness
    if seal is not None:
        slowness = np.where(seal.mask, seal.slowness, slowness)
        rate_per_s = np.where(seal.mask, seal.rate_per_s, rate_per_s)
    ages_s = gathering(np.zeros(coat.slowness.size), stretch.age_s)
    cure_ages_s = gathering(before.cure_age_s, stretch.cure_age_s)
    starts_s = stretch.starts_s(ended_s)

    def when_gathered(age_s: Array, steps: Steps) -> Array:
        missing_s = np.maximum(age_s - picked(ages_s, steps), 0.0)
        return picked(starts_s, steps) + stretch.drift.at(steps).diffusion_time(missing_s)

    def when_cured(steps: Steps) -> Array:
        missing_s = np.maximum(product.cure_age_s - picked(cure_ages_s, steps), 0.0)
        return picked(starts_s, steps) + stretch.drift.at(steps).cure_time(missing_s)

    laid = retained_as_laid(product.solvent, coat)
    needed_s = {stage: np.log(np.maximum(before.retained / (share * laid), 1.0)) / rate_per_s for stage, share in _DEEP}
    needed_s[Stage.DRY_TO_RECOAT] = np.maximum(product.recoat_age_s - before.recoat_age_s, 0.0) * slowness
    dry = np.broadcast_to(before.free <= 0.0, stretch.age_s.shape)
    touch_dry_s = before.reached[ROW[Stage.DRY_TO_TOUCH]]
    enter = partial(stretch.enter, ended_s=ended_s)
    reached = enter(before.reached, Stage.CLEAR, dry, lambda _: touch_dry_s, hold=hold)
    for stage, age_s in needed_s.items():
        reached = enter(reached, stage, dry & (ages_s[1:] >= age_s), partial(when_gathered, age_s), hold=hold)
    reached = enter(reached, Stage.CURED, cure_ages_s[1:] >= product.cure_age_s, when_cured)
    return replace(
        before,
        retained=before.retained * np.exp(-rate_per_s * ages_s[-1]),
        film_K=stretch.film_K,
        recoat_age_s=before.recoat_age_s + ages_s[-1] / slowness,
        cure_age_s=cure_ages_s[-1],
        reached=reached,
    )
