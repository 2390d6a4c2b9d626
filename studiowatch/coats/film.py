"""A coat on a piece, from the brush to cured: laid once, then advanced by the air as it comes.

The same `advance` serves the live coat, the replayed log and the look ahead. The film carries many draws at once; its
properties speak of draw 0, the nominal run.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Sequence
from dataclasses import replace
from math import inf

import numpy as np

from studiowatch.coats import kinds, stack
from studiowatch.coats.anchoring import Anchor
from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.exposure import Airs, air_at_film, airs_at_film, check_air
from studiowatch.coats.film_state import Film, StageReached
from studiowatch.coats.free_water import Layer
from studiowatch.coats.stack import sealed_in_g_m2
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Orientation
from studiowatch.coats.stretch import Stretch
from studiowatch.coats.support import SOAKED_SHARE, Support
from studiowatch.physics.air import AnyAir
from studiowatch.physics.constants import REFERENCE_TEMPERATURE_K
from studiowatch.physics.plate_transfer import Face
from studiowatch.physics.ranges import Array, check
from studiowatch.speech.words import mark

__all__ = ["Film", "StageReached", "advance", "advance_through", "lay", "newly_reached", "sealed_in_g_m2"]

WET_UM = (1.0, 10_000.0)  # µm, film that may be laid
SIDE_M = (0.01, 10.0)  # m, side of the square of the piece's area
THINNED_PCT = (0.0, 100.0)  # % of the volume
LONGEST_STEP_S = 4.0e8  # s, over twelve years
_TOGETHER = 16_384  # spans times draws taken together: their arrays stay in a processor's cache


def lay(
    sheet: DataSheet,
    anchor: Anchor,
    *,
    wet_um: float,
    side_m: float,
    orientation: Orientation = Orientation.FACE_UP,
    thinned_pct: float = 0.0,
    over: Film | None = None,
    support: Support = Support.SEALED,
) -> Film:
    """Return a coat that was laid this moment.

    Parameters
    ----------
    anchor : Anchor
        Of the same sheet; its draws are the film's.
    wet_um : float
        Wet film, µm, 1 to 10 000.
    side_m : float
        Side of the square of the piece's area, m, 0.01 to 10.
    thinned_pct : float
        Water added, % of the volume, 0 to 100.
    over : Film or None
        The coat below, as it stands now, with all that it lies on. It becomes part of this one.
    support : Support
        What the coat lies on if it is the lowest; another meets only the coat below.

    Raises
    ------
    OutOfRange
        Names the quantity, its value, the unit and the allowed range; NaN is refused.
    """
    check(mark("wet film"), wet_um, *WET_UM, "µm")
    check(mark("side of the piece"), side_m, *SIDE_M, "m")
    check(mark("thinning"), thinned_pct, *THINNED_PCT, mark("% of the volume"))
    draws = anchor.draws
    laid = anchor.layer(
        wet_m=wet_um * 1e-6 * draws.thickness_factor,
        thinning=thinned_pct / 100.0,
        side_m=side_m,
        face=Face(orientation.value),
    )
    soaked = np.zeros(len(draws))
    below: tuple[Film, ...] = ()
    if over is not None:
        below, laid = stack.covered_by(anchor, laid, over)
    elif sheet.kind is not Kind.PAINT:
        laid, soaked = _soaked(laid, SOAKED_SHARE[support])
    return Film(
        sheet=sheet,
        anchor=anchor,
        wet_um=wet_um,
        thinned_pct=thinned_pct,
        layer=laid,
        state=kinds.freshly_laid(anchor, laid, np.full(len(draws), REFERENCE_TEMPERATURE_K)),
        sealed_in_g_m2=0.0 if over is None else sealed_in_g_m2(over),
        soaked_g_m2=1000.0 * float(soaked[0]),
        below=below,
    )


def _soaked(laid: Layer, share: float) -> tuple[Layer, Array]:
    """Return the layer as a support that takes up `share` of its free water leaves it, and that water, kg/m²."""
    soaked = np.clip(share * laid.free_laid, 0.0, np.maximum(laid.free_laid - laid.free_packed, 0.0))
    return replace(laid, free_laid=laid.free_laid - soaked), soaked


def advance(film: Film, air: AnyAir, dt_s: float, *, covered: bool = False) -> tuple[Film, tuple[StageReached, ...]]:
    """Return the film after `dt_s` in `air`, and the stages that its nominal run reached meanwhile, in order of time.

    Any step may be taken at once: it is cut inside as finely as the film needs. A fresh film takes the temperature of
    the first air that it meets. The coats below are advanced along with it.

    Raises
    ------
    OutOfRange
        If `dt_s` or a value of `air` is not a number or out of range; the film is unchanged.
    """
    return advance_through(film, ((air, dt_s),), covered=covered)


def advance_through(
    film: Film, spans: Sequence[tuple[AnyAir, float]], *, covered: bool = False, coarse: float = 1.0
) -> tuple[Film, tuple[StageReached, ...]]:
    """Return the film after all of `spans`, each an air and how long it holds, s, as `advance` does one by one.

    Once nothing is free any more, many spans are taken together: a long log then costs little more than its arithmetic.
    With `coarse` over 1 the film may go that many times as far in one step before that: quicker, and less exact.

    Raises
    ------
    OutOfRange
        As `advance`.
    """
    for air, dt_s in spans:
        check(mark("time step"), dt_s, 0.0, LONGEST_STEP_S, "s")
        check_air(air)
    ahead = deque((air, dt_s) for air, dt_s in spans if dt_s > 0.0)
    most = max(_TOGETHER // len(film.anchor.draws), 1)
    after = film
    while ahead:
        if kinds.is_wet(after.state):
            after = _wet_steps(after, ahead, most, covered=covered, coarse=coarse)
        else:
            after = _dry_steps(after, ahead, most)
    after = replace(
        after, elapsed_s=film.elapsed_s + sum(dt_s for _, dt_s in spans)
    )  # free of the inner steps' rounding
    return after, newly_reached(film, after)


def _wet_steps(film: Film, ahead: deque[tuple[AnyAir, float]], most: int, *, covered: bool, coarse: float) -> Film:
    """Return the film after at most so many steps into the spans `ahead`, in which it loses what is free.

    What was used of `ahead` is taken from it. Draws in which nothing is free any more only wait in such a step: what
    they do meanwhile is done for all steps together.
    """
    draws, layer = film.anchor.draws, film.layer
    airs: list[AnyAir] = []
    steps_s: list[float] = []
    dry_s: list[Array] = []
    after = film
    while ahead and len(airs) < most and kinds.is_wet(after.state):
        air, span_s = ahead.popleft()
        plate = air_at_film(air, draws, covered=covered, side_m=layer.side_m, face=layer.face)
        after = _met(after, plate.air_K)
        state, lost = kinds.lose_free(after, plate, longest_s=span_s, coarse=coarse)
        after = _drained(_aged(replace(after, state=state), lost.dt_s))
        airs.append(air)
        steps_s.append(lost.dt_s)
        dry_s.append(lost.dt_s - lost.used_s)
        if lost.dt_s < span_s:
            ahead.appendleft((air, span_s - lost.dt_s))
    if not any(dry.any() for dry in dry_s):
        return after
    return _rested(after, airs_at_film(tuple(airs), draws), np.array(steps_s)[:, np.newaxis], np.array(dry_s))


def _dry_steps(film: Film, ahead: deque[tuple[AnyAir, float]], most: int) -> Film:
    """Return the film after at most so many of the spans `ahead`, in which nothing is free; they are taken from it."""
    taken = [ahead.popleft() for _ in range(min(most, len(ahead)))]
    airs = airs_at_film(tuple(air for air, _ in taken), film.anchor.draws)
    steps_s = np.array([[dt_s] for _, dt_s in taken])
    return _rested(_aged(_drained(_met(film, airs.air_K[0])), float(steps_s.sum())), airs, steps_s, steps_s)


def _met(film: Film, air_K: Array) -> Film:
    """Return the film with the temperature of the air if that is the first that it meets."""
    return film if film.elapsed_s > 0.0 else replace(film, state=replace(film.state, film_K=air_K))


def _drained(film: Film) -> Film:
    """Return the film with those below drained by what it lost."""
    return replace(film, below=stack.drained(film.below, film.state)) if film.below else film


def _aged(film: Film, passed_s: float) -> Film:
    """Return the film `passed_s` later, otherwise as it was."""
    return replace(film, below=stack.older(film.below, passed_s), elapsed_s=film.elapsed_s + passed_s)


def _rested(film: Film, airs: Airs, steps_s: Array, dry_s: Array) -> Film:
    """Return the film, which is as old as at the end, after steps that end with `dry_s` in which nothing is free."""
    stretch = Stretch.of(airs, film_K=film.state.film_K, steps_s=steps_s, dry_s=dry_s, draws=film.anchor.product.draws)
    below, seep = stack.rested(film.below, stretch)
    hold = stack.hold_on(below, film.elapsed_s)
    state, _ = kinds.rest(film, film.state, stretch, ended_s=film.elapsed_s, seep=seep, hold=hold)
    return replace(film, state=state, below=below)


def newly_reached(before: Film, after: Film) -> tuple[StageReached, ...]:
    """Return the stages that the nominal run of one coat reached between two moments, in order of time."""
    old, new = before.state.reached, after.state.reached
    if new is old:
        return ()
    found = [
        StageReached(stage=stage, elapsed_s=float(new[row, 0]))
        for stage, row in ROW.items()
        if old[row, 0] == inf and new[row, 0] < inf
    ]
    return tuple(sorted(found, key=lambda reached: reached.elapsed_s))
