"""A water-borne coat: the state of its draws, and one step of losing free water. What comes then is `resting`'s."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass, replace
from functools import partial

import numpy as np

from studiowatch.coats.bound_water import BOUND_AS_LAID
from studiowatch.coats.draws import Draws
from studiowatch.coats.free_water import DUST_FREE_SHARE, TACK_FREE_SHARE, Evaporation, Layer, evaporate
from studiowatch.coats.stage_table import enter, nothing_reached
from studiowatch.coats.stages import Stage
from studiowatch.physics import equivalent_age
from studiowatch.physics.plate_transfer import PlateAir
from studiowatch.physics.ranges import Array

_LEVELS = (  # free water over that at packing, at which each stage of the first part is reached
    (Stage.SET_TO_TOUCH, 1.0),
    (Stage.DUST_FREE, DUST_FREE_SHARE),
    (Stage.TACK_FREE, TACK_FREE_SHARE),
    (Stage.DRY_TO_TOUCH, 0.0),
)

LATE_STAGES = (Stage.CLEAR, Stage.DRY_HARD, Stage.DRY_THROUGH, Stage.DRY_TO_RECOAT, Stage.CURED)
_AFTER_CLEAR = {Stage.DRY_HARD, Stage.DRY_THROUGH, Stage.DRY_TO_RECOAT}  # none of them before it


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Product:
    """What the anchoring found of one product, per draw.

    Attributes
    ----------
    kappa : ndarray
        Vapour transfer of this product over that of a plate of water.
    bound_rate_per_s : ndarray
        Rate at which bound water leaves the sheet's own film at 23 °C, 1/s.
    recoat_age_s, cure_age_s : ndarray
        Ages at which the coat is ready for the next, and cured, s at 23 °C.
    mfft_K : ndarray
        Minimum film-forming temperature, K; 1, which no film meets, if the sheet names none.
    """

    draws: Draws
    kappa: Array
    bound_rate_per_s: Array
    recoat_age_s: Array
    cure_age_s: Array
    mfft_K: Array


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class WaterState:
    """The state of a water-borne coat, one value per draw.

    Attributes
    ----------
    free : ndarray
        Free water, kg/m²; 0 once it has gone.
    bound : ndarray
        Bound water, kg per kg of dry polymer.
    film_K : ndarray
        Film temperature, K.
    recoat_age_s, cure_age_s : ndarray
        Ages gathered so far, s at 23 °C.
    e_folds : ndarray
        How often the bound water had the time to fall to 1/e of what was to leave, in air of any humidity.
    below_mfft_s : ndarray
        Time from packing to clear in which the film was too cold to form; it never falls.
    fastest : ndarray
        Largest wet thickness x flux / temperature before packing: the Péclet number but for the product's own factor.
    reached : ndarray, (stages, draws)
        See `stage_table`.
    awaited : tuple of Stage
        The stages of the second part that some draw has not reached yet; one that is not among them is not entered.
    """

    free: Array
    bound: Array
    film_K: Array
    recoat_age_s: Array
    cure_age_s: Array
    e_folds: Array
    below_mfft_s: Array
    fastest: Array
    reached: Array
    awaited: tuple[Stage, ...] = LATE_STAGES

    @property
    def wet(self) -> bool:
        """Whether any draw still has free water."""
        return bool((self.free > 0.0).any())


def awaiting(state: WaterState, wanted: Collection[Stage]) -> WaterState:
    """Return the state as one that goes on to no stage of the second part but those `wanted`: that is quicker."""
    needed = set(wanted) | ({Stage.CLEAR} if _AFTER_CLEAR & set(wanted) else set())
    return replace(state, awaited=tuple(stage for stage in state.awaited if stage in needed))


def freshly_laid(coat: Layer, film_K: Array) -> WaterState:
    """Return the state of a coat laid this moment at `film_K`."""
    zero = np.zeros(film_K.size)
    return WaterState(
        free=coat.free_laid,
        bound=np.full(film_K.size, BOUND_AS_LAID),
        film_K=film_K,
        recoat_age_s=zero,
        cure_age_s=zero,
        e_folds=zero,
        below_mfft_s=zero,
        fastest=zero,
        reached=nothing_reached(film_K.size),
    )


def lose_free_water(
    coat: Layer,
    product: Product,
    before: WaterState,
    plate: PlateAir,
    *,
    longest_s: float,
    elapsed_s: float,
    coarse: float = 1.0,
) -> tuple[WaterState, Evaporation]:
    """Return the state with the free water of one step gone, and the step; draws without any stay as they are."""
    lost = evaporate(
        coat, plate, before.free, before.film_K, longest_s, kappa=product.kappa, draws=product.draws, coarse=coarse
    )
    cure_age_s, below_mfft_s = before.cure_age_s, before.below_mfft_s
    fastest, reached = before.fastest, before.reached
    open_film = before.free > coat.free_packed
    if open_film.any():
        pace = np.where(open_film, coat.wet_m * lost.flux / lost.mean_K, 0.0)
        fastest = np.maximum(fastest, pace)
    packed = lost.free <= coat.free_packed
    if packed.any():
        losing = np.where(lost.flux == 0.0, 1.0, lost.flux)
        to_packing = np.where(open_film, (before.free - coat.free_packed) / losing, 0.0)
        packed_s = np.where(packed, lost.used_s - to_packing, 0.0)
        cure_age_s = cure_age_s + packed_s * equivalent_age.rate(lost.mean_K, product.draws.cure_energy_J_mol)
        below_mfft_s = below_mfft_s + np.where(lost.mean_K < product.mfft_K, packed_s, 0.0)
        reached = enter_surface_stages(reached, coat, before.free, lost, elapsed_s=elapsed_s)
    state = WaterState(
        free=lost.free,
        bound=before.bound,
        film_K=lost.film_K,
        recoat_age_s=before.recoat_age_s,
        cure_age_s=cure_age_s,
        e_folds=before.e_folds,
        below_mfft_s=below_mfft_s,
        fastest=fastest,
        reached=reached,
        awaited=before.awaited,
    )
    return state, lost


def enter_surface_stages(reached: Array, coat: Layer, free: Array, lost: Evaporation, *, elapsed_s: float) -> Array:
    """Return the table with the stages that a step reached, which began with `free` at the age `elapsed_s`."""
    losing = np.where(lost.flux == 0.0, 1.0, lost.flux)
    for stage, share in _LEVELS:
        level = share * coat.free_packed
        reached = enter(reached, stage, lost.free <= level, partial(_when_free, free, level, losing, elapsed_s))
    return reached


def _when_free(free: Array, level: Array, flux: Array, elapsed_s: float) -> Array:
    return elapsed_s + (free - level) / flux
