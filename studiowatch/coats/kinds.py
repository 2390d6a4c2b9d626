"""The kinds of coat behind one door: each loses what is free in its own way, then rests."""

from __future__ import annotations

from studiowatch.coats import paint, resting, solventborne, waterborne
from studiowatch.coats.anchoring import Anchor
from studiowatch.coats.bound_water import Drift
from studiowatch.coats.film_state import Film, State
from studiowatch.coats.free_water import Layer
from studiowatch.coats.paint import PaintProduct, PaintState
from studiowatch.coats.seal import Hold, Seep
from studiowatch.coats.solventborne import SolventProduct, SolventState, lose_free_solvent
from studiowatch.coats.waterborne import Product, WaterState, lose_free_water
from studiowatch.physics.plate_transfer import PlateAir
from studiowatch.physics.ranges import Array


def freshly_laid(anchor: Anchor, laid: Layer, film_K: Array) -> State:
    """Return the state of a coat of this product laid this moment at `film_K`."""
    if isinstance(anchor.product, PaintProduct):
        return paint.freshly_laid(film_K)
    if isinstance(anchor.product, SolventProduct):
        return solventborne.freshly_laid(laid, anchor.product, film_K)
    return waterborne.freshly_laid(laid, film_K)


def lose_free(
    film: Film, state: State, plate: PlateAir, *, longest_s: float, elapsed_s: float
) -> tuple[State, float, Array | float]:
    """Return the state one step on, the length of the step, and how long in it each draw had nothing free, s.

    While there is something free the step is as short as the film needs; else it is `longest_s`.
    """
    coat, lost = film.layer, None
    match state, film.anchor.product:
        case WaterState(wet=True), Product() as product:
            state, lost = lose_free_water(coat, product, state, plate, longest_s=longest_s, elapsed_s=elapsed_s)
        case SolventState(wet=True), SolventProduct() as solvent:
            state, lost = lose_free_solvent(coat, solvent, state, plate, longest_s=longest_s, elapsed_s=elapsed_s)
    if lost is not None:
        return state, lost.dt_s, lost.dt_s - lost.used_s
    return state, longest_s, longest_s


def rest(
    film: Film,
    state: State,
    plate: PlateAir,
    *,
    drift: Drift,
    dry_s: Array | float,
    end_s: float,
    seep: Seep | None = None,
    hold: Hold | None = None,
) -> State:
    """Return the state after each draw had nothing free for the last `dry_s` of a step that ends at the age `end_s`.

    Raises
    ------
    TypeError
        If the film's anchor belongs to another kind of coat.
    """
    product = film.anchor.product
    match state, product:
        case WaterState(), Product():
            return resting.rest(
                film.layer,
                product,
                state,
                plate,
                drift=drift,
                dry_s=dry_s,
                end_s=end_s,
                seal=film.seal,
                seep=seep,
                hold=hold,
            )
        case SolventState(), SolventProduct():
            return solventborne.rest(
                film.layer, product, state, drift=drift, dry_s=dry_s, end_s=end_s, seal=film.seal, hold=hold
            )
        case PaintState(), PaintProduct():
            return paint.rest(
                film.layer, product, state, plate, drift=drift, dry_s=dry_s, end_s=end_s, seal=film.seal, hold=hold
            )
    raise TypeError(f"{film.sheet.name}: the anchor belongs to another kind of sheet")
