"""The kinds of coat behind one door: each loses what is free in its own way, then rests."""

from __future__ import annotations

from collections.abc import Collection

import numpy as np

from studiowatch.coats import paint, resting, solventborne, waterborne
from studiowatch.coats.anchoring import Anchor
from studiowatch.coats.bound_water import Drift
from studiowatch.coats.film_state import Film, State
from studiowatch.coats.free_water import Evaporation, Layer
from studiowatch.coats.paint import PaintProduct, PaintState
from studiowatch.coats.seal import Hold, Seep
from studiowatch.coats.solventborne import SolventProduct, SolventState, lose_free_solvent
from studiowatch.coats.stages import Stage
from studiowatch.coats.stretch import Stretch
from studiowatch.coats.waterborne import Product, WaterState, lose_free_water
from studiowatch.physics.constants import WATER_DENSITY
from studiowatch.physics.plate_transfer import PlateAir
from studiowatch.physics.ranges import Array


def freshly_laid(anchor: Anchor, laid: Layer, film_K: Array) -> State:
    """Return the state of a coat of this product laid this moment at `film_K`."""
    if isinstance(anchor.product, PaintProduct):
        return paint.freshly_laid(film_K)
    if isinstance(anchor.product, SolventProduct):
        return solventborne.freshly_laid(laid, anchor.product, film_K)
    return waterborne.freshly_laid(laid, film_K)


def awaiting(state: State, wanted: Collection[Stage]) -> State:
    """Return the state as one that need go on to the stages `wanted` only; it may go on to others too."""
    return waterborne.awaiting(state, wanted) if isinstance(state, WaterState) else state


def is_wet(state: State) -> bool:
    """Return whether anything is still free in any draw."""
    return not isinstance(state, PaintState) and state.wet


def lose_free(film: Film, plate: PlateAir, *, longest_s: float, coarse: float = 1.0) -> tuple[State, Evaporation]:
    """Return the state after one step of losing what is free, as short as the film needs, and that step.

    `coarse` is how many times as far as usual the film may go in it.

    Raises
    ------
    TypeError
        If the film's anchor belongs to another kind of coat, or to paint, in which nothing is free.
    """
    layer, aged_s = film.layer, film.elapsed_s
    match film.state, film.anchor.product:
        case WaterState() as water, Product() as product:
            return lose_free_water(layer, product, water, plate, longest_s=longest_s, elapsed_s=aged_s, coarse=coarse)
        case SolventState() as solvent, SolventProduct() as product:
            return lose_free_solvent(
                layer, product, solvent, plate, longest_s=longest_s, elapsed_s=aged_s, coarse=coarse
            )
    raise TypeError(f"{film.sheet.name}: nothing is free in this kind of coat")  # not said


def rest(
    film: Film, state: State, stretch: Stretch, *, ended_s: float, seep: Seep | None = None, hold: Hold | None = None
) -> tuple[State, Array | None]:
    """Return the state after a stretch in which nothing was free, at whose end the coat is `ended_s` old.

    Beside it, the water that the coat held as each step began, kg/m², (steps, draws), for what lies on it: None where
    it gives none, being bare or solvent-borne.

    Raises
    ------
    TypeError
        If the film's anchor belongs to another kind of coat.
    """
    product, coat, seal = film.anchor.product, film.layer, film.seal
    match state, product:
        case WaterState(), Product():
            after, bound = resting.rest(coat, product, state, stretch, ended_s=ended_s, seal=seal, seep=seep, hold=hold)
            return after, None if seal is None else state.free + bound[:-1] * coat.polymer_kg_m2
        case SolventState(), SolventProduct():
            return solventborne.rest(coat, product, state, stretch, ended_s=ended_s, seal=seal, hold=hold), None
        case PaintState(), PaintProduct():
            return _paint_rested(film, product, state, stretch, ended_s=ended_s, hold=hold)
    raise TypeError(f"{film.sheet.name}: the anchor belongs to another kind of sheet")  # not said


def _paint_rested(
    film: Film, product: PaintProduct, state: PaintState, stretch: Stretch, *, ended_s: float, hold: Hold | None
) -> tuple[PaintState, Array | None]:
    """Return what `rest` does for paint, step by step: what is sealed in it diffuses no more, it only leaves."""
    sealed_left, drift = [], stretch.drift
    after = state
    for at, humidity in enumerate(stretch.airs.humidity):
        sealed_left.append(after.sealed_left)
        after = paint.rest(
            film.layer,
            product,
            after,
            humidity,
            drift=Drift(inverse_film=drift.inverse_film[at], inverse_air=drift.inverse_air[at], draws=drift.draws),
            dry_s=stretch.dry_s[at],
            end_s=ended_s - float(stretch.to_end_s[at, 0]),
            seal=film.seal,
            hold=hold,
        )
    if film.seal is None:
        return after, None
    as_sealed = WATER_DENSITY * (film.layer.wet_m - film.layer.dry_m) * paint.share_kept(state.fourier)
    return after, as_sealed * np.array(sealed_left)
