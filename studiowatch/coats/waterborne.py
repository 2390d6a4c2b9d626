"""A water-borne coat from wet to cured: the state of its draws, and one step of all of them."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import partial

import numpy as np

from studiowatch.coats.bound_water import (
    BOUND_AS_LAID,
    CLEAR_BELOW,
    Drift,
    humidity_rate,
    through_below,
    water_content,
)
from studiowatch.coats.draws import Draws
from studiowatch.coats.free_water import DUST_FREE_SHARE, TACK_FREE_SHARE, Evaporation, Layer, evaporate
from studiowatch.coats.stage_table import ROW, enter, nothing_reached
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
_TINY = 1e-12  # keeps a rate that is 0 in a saturated room from dividing


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
    below_mfft_s : ndarray
        Time from packing to clear in which the film was too cold to form; it never falls.
    fastest : ndarray
        Largest wet thickness x flux / temperature before packing: the Péclet number but for the product's own factor.
    reached : ndarray, (stages, draws)
        See `stage_table`.
    """

    free: Array
    bound: Array
    film_K: Array
    recoat_age_s: Array
    cure_age_s: Array
    below_mfft_s: Array
    fastest: Array
    reached: Array

    @property
    def wet(self) -> bool:
        """Whether any draw still has free water."""
        return bool((self.free > 0.0).any())


def freshly_laid(coat: Layer, film_K: Array) -> WaterState:
    """Return the state of a coat laid this moment at `film_K`."""
    zero = np.zeros(film_K.size)
    return WaterState(
        free=coat.free_laid,
        bound=np.full(film_K.size, BOUND_AS_LAID),
        film_K=film_K,
        recoat_age_s=zero,
        cure_age_s=zero,
        below_mfft_s=zero,
        fastest=zero,
        reached=nothing_reached(film_K.size),
    )


def step(
    coat: Layer, product: Product, state: WaterState, plate: PlateAir, *, longest_s: float, elapsed_s: float
) -> tuple[WaterState, float]:
    """Return the state one step on in one air, and the length of that step, s.

    While there is free water the step is as short as the film needs; without it, `longest_s`.

    Parameters
    ----------
    longest_s : float
        Time that the step may take at most, s.
    elapsed_s : float
        Age of the coat before the step, s.
    """
    dt_s, dry_s = longest_s, np.full(state.free.size, longest_s)
    if state.wet:
        state, lost = lose_free_water(coat, product, state, plate, longest_s=longest_s, elapsed_s=elapsed_s)
        dt_s, dry_s = lost.dt_s, lost.dt_s - lost.used_s
        if not (dry_s > 0.0).any():
            return state, dt_s
    return _without_free_water(coat, product, state, plate, dry_s=dry_s, end_s=elapsed_s + dt_s), dt_s


def lose_free_water(
    coat: Layer, product: Product, before: WaterState, plate: PlateAir, *, longest_s: float, elapsed_s: float
) -> tuple[WaterState, Evaporation]:
    """Return the state with the free water of one step gone, and the step; draws without any stay as they are."""
    lost = evaporate(coat, plate, before.free, before.film_K, longest_s, kappa=product.kappa, draws=product.draws)
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
        for stage, share in _LEVELS:
            level = share * coat.free_packed
            reached = enter(
                reached, stage, lost.free <= level, partial(_when_free, before.free, level, losing, elapsed_s)
            )
    state = WaterState(
        free=lost.free,
        bound=before.bound,
        film_K=lost.film_K,
        recoat_age_s=before.recoat_age_s,
        cure_age_s=cure_age_s,
        below_mfft_s=below_mfft_s,
        fastest=fastest,
        reached=reached,
    )
    return state, lost


def _when_free(free: Array, level: Array, flux: Array, elapsed_s: float) -> Array:
    return elapsed_s + (free - level) / flux


def _without_free_water(
    coat: Layer, product: Product, before: WaterState, plate: PlateAir, *, dry_s: Array, end_s: float
) -> WaterState:
    """Return the state after each draw was without free water for the last `dry_s` of a step that ends at `end_s`."""
    drift = Drift(film_K=before.film_K, air_K=plate.air_K, draws=product.draws)
    kept = water_content(plate.humidity)
    age_s = drift.diffusion_age(dry_s) / coat.slowness
    after = WaterState(
        free=before.free,
        bound=kept + (before.bound - kept) * np.exp(-product.bound_rate_per_s * age_s),
        film_K=drift.temperature(dry_s),
        recoat_age_s=before.recoat_age_s + humidity_rate(plate.humidity, product.draws.humidity_term) * age_s,
        cure_age_s=before.cure_age_s + drift.cure_age(dry_s),
        below_mfft_s=before.below_mfft_s,
        fastest=before.fastest,
        reached=before.reached,
    )
    start_s = end_s - dry_s
    reached = _late_stages(coat, product, before, after, plate=plate, drift=drift, start_s=start_s)
    below_mfft_s = before.below_mfft_s
    if (np.minimum(before.film_K, plate.air_K) < product.mfft_K).any():
        forming_s = np.clip(reached[ROW[Stage.CLEAR]] - start_s, 0.0, dry_s)
        below_mfft_s = below_mfft_s + drift.time_below(product.mfft_K, forming_s)
    return replace(after, below_mfft_s=below_mfft_s, reached=reached)


def _late_stages(
    coat: Layer,
    product: Product,
    before: WaterState,
    after: WaterState,
    *,
    plate: PlateAir,
    drift: Drift,
    start_s: Array,
) -> Array:
    """Return the table with the stages that come after free water has gone, each draw having begun at `start_s`."""
    kept = water_content(plate.humidity)
    pace = humidity_rate(plate.humidity, product.draws.humidity_term)

    def when_bound(level: Array | float) -> Array:
        gap = np.maximum(level - kept, _TINY)
        age_s = np.log(np.maximum((before.bound - kept) / gap, 1.0)) / product.bound_rate_per_s
        return start_s + drift.diffusion_time(age_s * coat.slowness)

    def when_recoat() -> Array:
        age_s = np.maximum(product.recoat_age_s - before.recoat_age_s, 0.0) / np.maximum(pace, _TINY)
        return start_s + drift.diffusion_time(age_s * coat.slowness)

    def when_cured() -> Array:
        return start_s + drift.cure_time(np.maximum(product.cure_age_s - before.cure_age_s, 0.0))

    through = through_below(plate.humidity)
    reached = enter(before.reached, Stage.CLEAR, after.bound < CLEAR_BELOW, lambda: when_bound(CLEAR_BELOW))
    clear_s = reached[ROW[Stage.CLEAR]]
    clear = np.isfinite(clear_s)
    reached = enter(
        reached, Stage.DRY_THROUGH, clear & (after.bound <= through), lambda: np.maximum(when_bound(through), clear_s)
    )
    reached = enter(
        reached,
        Stage.DRY_TO_RECOAT,
        clear & (after.recoat_age_s >= product.recoat_age_s),
        lambda: np.maximum(when_recoat(), clear_s),
    )
    cured = (after.free <= 0.0) & (after.cure_age_s >= product.cure_age_s)
    return enter(reached, Stage.CURED, cured, when_cured)
