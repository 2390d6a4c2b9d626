"""A layer of paint below the clear coats: dry on top by its sheet's times, dry through by diffusion.

What the paint loses last has to come from the bottom of the layer. The share still in it falls as in a plane sheet
that loses from one face: J. Crank, The Mathematics of Diffusion, 2nd ed. (1975), eq. 4.18. Damp air holds up the top,
which gives its water to the air, and not the depth: there it sets how much stays, not how fast the rest comes up.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import partial

import numpy as np

from studiowatch.coats.bound_water import Drift, humidity_rate
from studiowatch.coats.draws import Draws
from studiowatch.coats.free_water import Layer
from studiowatch.coats.seal import Hold, Seal
from studiowatch.coats.stage_table import ROW, enter, enter_held, nothing_reached
from studiowatch.coats.stages import Stage
from studiowatch.physics.ranges import Array

THROUGH_NUMBER = 1.13  # D t/H² at which a plane sheet has lost 95 % through one face; Crank (1975), eq. 4.18
HARD_NUMBER = 0.848  # D t/H² at which it has lost 90 %; Crank (1975), eq. 4.18
LATE_RATE = 2.467  # of D/H²: how fast the last of it leaves, (π/2)²; Crank (1975), eq. 4.18
_DEEP = ((Stage.DRY_HARD, HARD_NUMBER), (Stage.DRY_THROUGH, THROUGH_NUMBER))
_SLOWEST = 1e-6  # of the pace at 50 % RH: in a saturated room the top stands still, as near as numbers need
_SERIES = 40  # terms; enough for the share kept from D t/H² = 1e-4 on
_SURFACE = (  # share of the sheet's touch-dry time at which the top reaches each stage; assumption
    (Stage.SET_TO_TOUCH, 0.5),
    (Stage.DUST_FREE, 0.65),
    (Stage.TACK_FREE, 0.8),
    (Stage.DRY_TO_TOUCH, 1.0),
)


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class PaintProduct:
    """The sheet's times of one paint, per draw: ages at 23 °C and 50 % RH in the sheet's own film, s."""

    draws: Draws
    touch_age_s: Array
    recoat_age_s: Array
    cure_age_s: Array


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class PaintState:
    """The state of a layer of paint, one value per draw.

    Attributes
    ----------
    film_K : ndarray
        Temperature, K.
    surface_age_s, cure_age_s : ndarray
        Ages gathered so far, s at 23 °C.
    fourier : ndarray
        Diffusion so far: ∫ D dt / H²; it stands still while the water is sealed in.
    sealed_left : ndarray
        Share still there of the water that was sealed in; 1 where none was.
    reached : ndarray, (stages, draws)
        See `stage_table`.
    """

    film_K: Array
    surface_age_s: Array
    cure_age_s: Array
    fourier: Array
    sealed_left: Array
    reached: Array

    def share_kept(self, of: slice = slice(None)) -> Array:
        """Return the share of its water that the layer still holds, in all draws or those `of` a slice."""
        return share_kept(self.fourier[of]) * self.sealed_left[of]


def share_kept(fourier: Array) -> Array:
    """Return the share of the water that a plane sheet still holds at D t/H² = `fourier`, 1 at 0."""
    odd = (2.0 * np.arange(_SERIES) + 1.0)[:, None]
    terms: Array = np.exp(-((odd * np.pi / 2.0) ** 2) * fourier) / odd**2
    return np.where(fourier <= 0.0, 1.0, 8.0 / np.pi**2 * terms.sum(axis=0))


def freshly_laid(film_K: Array) -> PaintState:
    """Return the state of paint laid this moment at `film_K`."""
    zero = np.zeros(film_K.size)
    return PaintState(
        film_K=film_K,
        surface_age_s=zero,
        cure_age_s=zero,
        fourier=zero,
        sealed_left=np.ones(film_K.size),
        reached=nothing_reached(film_K.size),
    )


def rest(
    coat: Layer,
    product: PaintProduct,
    before: PaintState,
    humidity: Array,
    *,
    drift: Drift,
    dry_s: Array | float,
    end_s: float,
    seal: Seal | None = None,
    hold: Hold | None = None,
) -> PaintState:
    """Return the state after each draw dried for the last `dry_s` of a step in one air that ends at the age `end_s`.

    `seal` and `hold` are as for a clear coat: how it lies under another, and what the films below keep it from.
    """
    age_s = drift.diffusion_age(dry_s)
    surface_pace, through_pace = _paces(coat, product.draws, humidity)
    sealed_left = before.sealed_left
    if seal is not None:
        surface_pace = np.where(seal.mask, surface_pace * coat.slowness / seal.slowness, surface_pace)
        through_pace = np.where(seal.mask, 0.0, through_pace)
        sealed_left = np.where(seal.mask, sealed_left * np.exp(-seal.rate_per_s * age_s), sealed_left)
    after = PaintState(
        film_K=drift.temperature(dry_s),
        surface_age_s=before.surface_age_s + surface_pace * age_s,
        cure_age_s=before.cure_age_s + drift.cure_age(dry_s),
        fourier=before.fourier + through_pace * age_s,
        sealed_left=sealed_left,
        reached=before.reached,
    )
    start_s = end_s - dry_s
    number = after.fourier if seal is None else _number_as_kept(after, seal)

    def when_surface(age: Array) -> Array:
        return start_s + drift.diffusion_time(np.maximum(age - before.surface_age_s, 0.0) / surface_pace)

    def when_deep(wanted: float) -> Array:  # no layer is dry below that is wet on top
        pace = through_pace
        start = before.fourier
        if seal is not None:
            pace = np.where(seal.mask, seal.rate_per_s / LATE_RATE, pace)
            start = _number_as_kept(before, seal)
        deep_s = start_s + drift.diffusion_time(np.maximum(wanted - start, 0.0) / pace)
        later_s: Array = np.maximum(deep_s, touch_s)
        return later_s

    def when_cured() -> Array:
        return start_s + drift.cure_time(np.maximum(product.cure_age_s - before.cure_age_s, 0.0))

    reached = before.reached
    for stage, share in _SURFACE:
        age = share * product.touch_age_s
        reached = enter(reached, stage, after.surface_age_s >= age, partial(when_surface, age))
    touch_s = reached[ROW[Stage.DRY_TO_TOUCH]]
    for stage, wanted in _DEEP:
        reached = enter_held(
            reached, stage, (number >= wanted) & np.isfinite(touch_s), partial(when_deep, wanted), hold
        )
    through_s = reached[ROW[Stage.DRY_THROUGH]]
    ready = (after.surface_age_s >= product.recoat_age_s) & np.isfinite(through_s)
    reached = enter(
        reached, Stage.DRY_TO_RECOAT, ready, lambda: np.maximum(when_surface(product.recoat_age_s), through_s)
    )
    reached = enter(reached, Stage.CURED, after.cure_age_s >= product.cure_age_s, when_cured)
    return replace(after, reached=reached)


def _number_as_kept(state: PaintState, seal: Seal) -> Array:
    """Return D t/H² of a bare layer that would hold as much; of the late part, where the first term is all."""
    left = np.maximum(state.sealed_left, np.finfo(np.float64).tiny)  # after years nothing is left
    return np.where(seal.mask, state.fourier - np.log(left) / LATE_RATE, state.fourier)


def _paces(coat: Layer, draws: Draws, humidity: Array) -> tuple[Array, Array]:
    """Return how fast the top dries and, as D/H² in 1/s, the depth, per second at 23 °C.

    Damp air slows the top as it slows the recoat age of a clear coat: assumption.
    """
    pace = np.maximum(humidity_rate(humidity, draws.humidity_term), _SLOWEST)
    return pace / coat.slowness, draws.paint_diffusivity_m2_s / coat.dry_m**2
