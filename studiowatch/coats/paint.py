"""A layer of paint below the clear coats: dry on top by its sheet's times, dry through by diffusion.

What the paint loses last has to come from the bottom of the layer. The share still in it falls as in a plane sheet
that loses from one face: J. Crank, The Mathematics of Diffusion, 2nd ed. (1975), eq. 4.18.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import partial

import numpy as np

from studiowatch.coats.bound_water import Drift, humidity_rate
from studiowatch.coats.draws import Draws
from studiowatch.coats.free_water import Layer
from studiowatch.coats.stage_table import ROW, enter, nothing_reached
from studiowatch.coats.stages import Stage
from studiowatch.physics.plate_transfer import PlateAir
from studiowatch.physics.ranges import Array

THROUGH_NUMBER = 1.13  # D t/H² at which a plane sheet has lost 95 % through one face; Crank (1975), eq. 4.18
_SLOWEST = 1e-6  # of the pace at 50 % RH: in a saturated room paint stands still, as near as numbers need
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
        Diffusion so far: ∫ D dt / H².
    reached : ndarray, (stages, draws)
        See `stage_table`.
    """

    film_K: Array
    surface_age_s: Array
    cure_age_s: Array
    fourier: Array
    reached: Array


def share_kept(fourier: Array) -> Array:
    """Return the share of the water that a plane sheet still holds at D t/H² = `fourier`, 1 at 0."""
    odd = (2.0 * np.arange(_SERIES) + 1.0)[:, None]
    terms: Array = np.exp(-((odd * np.pi / 2.0) ** 2) * fourier) / odd**2
    return np.where(fourier <= 0.0, 1.0, 8.0 / np.pi**2 * terms.sum(axis=0))


def freshly_laid(film_K: Array) -> PaintState:
    """Return the state of paint laid this moment at `film_K`."""
    zero = np.zeros(film_K.size)
    return PaintState(
        film_K=film_K, surface_age_s=zero, cure_age_s=zero, fourier=zero, reached=nothing_reached(film_K.size)
    )


def step(
    coat: Layer, product: PaintProduct, before: PaintState, plate: PlateAir, *, dt_s: float, elapsed_s: float
) -> PaintState:
    """Return the state after `dt_s`, of any length, in one air; `elapsed_s` is the layer's age before."""
    draws = product.draws
    drift = Drift(film_K=before.film_K, air_K=plate.air_K, draws=draws)
    span_s = np.full(before.film_K.size, dt_s)
    age_s = drift.diffusion_age(span_s)
    surface_pace, through_pace = _paces(coat, draws, plate)
    after = PaintState(
        film_K=drift.temperature(span_s),
        surface_age_s=before.surface_age_s + surface_pace * age_s,
        cure_age_s=before.cure_age_s + drift.cure_age(span_s),
        fourier=before.fourier + through_pace * age_s,
        reached=before.reached,
    )

    def when_surface(age: Array) -> Array:
        return elapsed_s + drift.diffusion_time(np.maximum(age - before.surface_age_s, 0.0) / surface_pace)

    def when_through() -> Array:
        return elapsed_s + drift.diffusion_time(np.maximum(THROUGH_NUMBER - before.fourier, 0.0) / through_pace)

    def when_cured() -> Array:
        return elapsed_s + drift.cure_time(np.maximum(product.cure_age_s - before.cure_age_s, 0.0))

    reached = before.reached
    for stage, share in _SURFACE:
        age = share * product.touch_age_s
        reached = enter(reached, stage, after.surface_age_s >= age, partial(when_surface, age))
    reached = enter(reached, Stage.DRY_THROUGH, after.fourier >= THROUGH_NUMBER, when_through)
    through_s = reached[ROW[Stage.DRY_THROUGH]]
    ready = (after.surface_age_s >= product.recoat_age_s) & np.isfinite(through_s)
    reached = enter(
        reached, Stage.DRY_TO_RECOAT, ready, lambda: np.maximum(when_surface(product.recoat_age_s), through_s)
    )
    reached = enter(reached, Stage.CURED, after.cure_age_s >= product.cure_age_s, when_cured)
    return replace(after, reached=reached)


def _paces(coat: Layer, draws: Draws, plate: PlateAir) -> tuple[Array, Array]:
    """Return how fast the top dries and, as D/H² in 1/s, the depth, per second at 23 °C.

    Damp air slows both as it slows the recoat age of a clear coat: assumption.
    """
    pace = np.maximum(humidity_rate(plate.humidity, draws.humidity_term), _SLOWEST)
    return pace / coat.slowness, pace * draws.paint_diffusivity_m2_s / coat.dry_m**2
