"""Coats on each other: what is sealed in when one is laid too early, and how it leaves through both.

While the coat on top has free water, the coats below neither dry nor gather age. A coat below that is still wet gives
its free water to the pool of the one on top; what its polymer holds leaves later, see `seal`. All of a stack has one
temperature.
"""

from __future__ import annotations

from dataclasses import replace
from functools import partial
from math import inf

import numpy as np

from studiowatch.coats.anchoring import Anchor
from studiowatch.coats.data_sheet import Kind
from studiowatch.coats.film_state import Film, State
from studiowatch.coats.free_water import Layer
from studiowatch.coats.kinds import rest
from studiowatch.coats.paint import LATE_RATE, PaintProduct, PaintState
from studiowatch.coats.seal import Hold, Seal, Seep
from studiowatch.coats.solventborne import SolventState
from studiowatch.coats.stage_table import ROW, enter
from studiowatch.coats.stages import Stage
from studiowatch.coats.stretch import Stretch
from studiowatch.coats.waterborne import WaterState
from studiowatch.physics.ranges import Array, Mask

_SURFACE = (Stage.SET_TO_TOUCH, Stage.DUST_FREE, Stage.TACK_FREE, Stage.DRY_TO_TOUCH)
_HELD = (Stage.CLEAR, Stage.DRY_TO_RECOAT, Stage.DRY_HARD, Stage.DRY_THROUGH)
_HELD_BY_PAINT = (Stage.DRY_HARD, Stage.DRY_THROUGH)  # it dries on for weeks: only its water holds a coat back


def sealed_in_g_m2(film: Film) -> float:
    """Return the water that a coat laid now would seal in, g/m²: none from what is ready."""
    return sum(one.water_g_m2 for one in (*film.below, film) if one.unready[0])


def covered_by(anchor: Anchor, top: Layer, over: Film) -> tuple[tuple[Film, ...], Layer]:
    """Return the films of `over` as they lie under a coat laid on them now, and the layer `top` as it then dries.

    Raises
    ------
    ValueError
        If the films have not as many draws as each other.
    """
    if len(anchor.draws) != len(over.anchor.draws):
        other = len(over.anchor.draws)
        raise ValueError(f"the coat has {len(anchor.draws)} draws and the one below {other}")  # not said
    films = (*over.below, replace(over, state=_own(over), below=()))
    rate_per_s, slowness = _clock(anchor, top, films)
    covered = []
    for film in films:
        slowest = np.maximum(slowness, film.layer.slowness)
        seal = Seal(mask=film.unready, rate_per_s=rate_per_s, slowness=slowest)
        mixes = _mix(anchor.product, film.anchor.product)
        state = film.state if mixes else _all_bound(film)
        covered.append(replace(film, state=state, seal=seal))
        if mixes and not isinstance(state, PaintState):
            top = _pooled(top, film, state.free)
    return tuple(covered), top


def _mix(upper: object, lower: object) -> bool:
    """Return whether what is free in one coat mixes with what is free in the other: both water, or both solvent."""
    return isinstance(lower, type(upper)) and not isinstance(upper, PaintProduct)


def _own(film: Film) -> State:
    """Return the state with the free water of this coat alone."""
    if isinstance(film.state, PaintState):
        return film.state
    return replace(film.state, free=film.state.free - film.pooled_kg_m2)


def _all_bound(film: Film) -> State:
    """Return the state under a coat that does not mix with what is free in this one: all must leave the slow way."""
    match film.state:
        case WaterState() as state:
            bound = state.bound + state.free / film.layer.polymer_kg_m2
            return replace(state, free=np.zeros(state.free.size), bound=bound)
        case SolventState() as state:
            return replace(state, free=np.zeros(state.free.size), retained=state.retained + state.free)
    return film.state


def _clock(anchor: Anchor, top: Layer, films: tuple[Film, ...]) -> tuple[Array, Array]:
    """Return how fast what is sealed in leaves: the rate, 1/s at 23 °C, and the slowness of the ages below.

    All clear films count as the one on top: the time goes with the power of the thickness of all of them, and none
    dries faster covered than bare. Water moves faster in paint: its part of that time is by its own diffusivity, H²/D.
    """
    draws = anchor.draws
    paint_m, clear_m = np.zeros(len(draws)), top.dry_m
    for film in films:
        sealed_m = np.where(film.unready, film.layer.dry_m, 0.0)
        if film.sheet.kind is Kind.PAINT:
            paint_m = paint_m + sealed_m
        else:
            clear_m = clear_m + sealed_m
    reference_m = anchor.wet_m * anchor.solids
    slowness = ((paint_m + clear_m) / reference_m) ** draws.thickness_power
    in_paint_s = paint_m**2 / (LATE_RATE * draws.paint_diffusivity_m2_s)
    if isinstance(anchor.product, PaintProduct):
        return LATE_RATE * draws.paint_diffusivity_m2_s / (paint_m + clear_m) ** 2, slowness
    in_clear = slowness - (paint_m / reference_m) ** draws.thickness_power
    rate_per_s = 1.0 / (in_clear / anchor.product.bound_rate_per_s + in_paint_s)
    for film in films:
        if not isinstance(film.anchor.product, PaintProduct):
            bare_per_s = film.anchor.product.bound_rate_per_s / film.layer.slowness
            rate_per_s = np.where(film.unready, np.minimum(rate_per_s, bare_per_s), rate_per_s)
    return rate_per_s, slowness


def _pooled(top: Layer, film: Film, free: Array) -> Layer:
    """Return the layer on top with the free water of a still wet one below, and as much of its packing as is wet."""
    bare = film.anchor.bare(film.layer)
    wet_share = np.minimum(free / bare.free_packed, 1.0)
    return replace(
        top,
        free_laid=top.free_laid + free,
        free_packed=top.free_packed + wet_share * bare.free_packed,
        packed_m=top.packed_m + wet_share * bare.packed_m,
    )


def older(below: tuple[Film, ...], passed_s: float) -> tuple[Film, ...]:
    """Return the films below `passed_s` later, otherwise as they were."""
    return tuple(replace(film, elapsed_s=film.elapsed_s + passed_s) for film in below)


def drained(below: tuple[Film, ...], top: State) -> tuple[Film, ...]:
    """Return the films below with what the coat on top left in the pool: the water from below leaves last.

    Once the pool is empty they cannot be touched any more, and count as dry to touch.
    """
    pool = np.zeros(top.film_K.size) if isinstance(top, PaintState) else top.free
    dry = pool <= 0.0
    films = []
    for film in below:
        lower = film
        if np.isinf(film.state.reached[ROW[Stage.DRY_TO_TOUCH]]).any():
            lower, pool = _drained(film, pool, dry)
        films.append(lower)
    return tuple(films)


def _drained(film: Film, pool: Array, dry: Mask) -> tuple[Film, Array]:
    """Return a film below that was not dry to touch yet, and what of the pool is left for those above it."""
    reached = film.state.reached
    for stage in _SURFACE:
        reached = enter(reached, stage, dry, partial(np.full, dry.size, film.elapsed_s))
    state = replace(film.state, reached=reached)
    if not isinstance(state, PaintState):
        state = replace(state, free=np.minimum(state.free, pool))
        pool = pool - state.free
    return replace(film, state=state), pool


def rested(below: tuple[Film, ...], stretch: Stretch) -> tuple[tuple[Film, ...], Seep | None]:
    """Return the films below after a stretch without free water on top, and what they gave to the coat there.

    `below` stand as they were when the stretch began, but are as old as at its end. None is given if none is sealed in.
    """
    films, seep = [], None
    for film in below:
        state, water_kg_m2 = rest(film, film.state, stretch, ended_s=film.elapsed_s)
        films.append(replace(film, state=state))
        if film.seal is not None and water_kg_m2 is not None and film.seal.mask.any():
            seep = _more(seep, film, film.seal, water_kg_m2)
    return tuple(films), seep


def _more(seep: Seep | None, film: Film, seal: Seal, water_kg_m2: Array) -> Seep:
    """Return what seeps with that of another film."""
    bound = isinstance(film.state, WaterState)
    water = np.where(seal.mask, water_kg_m2, 0.0)
    polymer = np.where(seal.mask & bound, film.layer.polymer_kg_m2, 0.0)
    if seep is not None:
        water, polymer = seep.water_kg_m2 + water, seep.polymer_kg_m2 + polymer
    return Seep(water_kg_m2=water, polymer_kg_m2=polymer, rate_per_s=seal.rate_per_s)


def hold_on(below: tuple[Film, ...], elapsed_s: float) -> Hold | None:
    """Return what the films below keep a coat of the age `elapsed_s` from, or None if none is sealed in."""
    if not any(film.seal is not None and film.seal.mask.any() for film in below):
        return None
    hold: dict[Stage, Array] = {}
    for stage in _HELD:
        until_s = np.full(below[0].state.film_K.size, -inf)
        for film in below:
            held = film.sheet.clear_film or stage in _HELD_BY_PAINT
            if held and film.seal is not None:
                own_s = film.state.reached[ROW[stage]] - (film.elapsed_s - elapsed_s)
                until_s = np.where(film.seal.mask, np.maximum(until_s, own_s), until_s)
        hold[stage] = until_s
    return hold
