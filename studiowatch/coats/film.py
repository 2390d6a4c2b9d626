"""A coat on a piece, from the brush to cured: laid once, then advanced by the air as it comes.

The same `advance` serves the live coat, the replayed log and the look ahead. The film carries many draws at once; its
properties speak of draw 0, the nominal run.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from math import inf

import numpy as np

from studiowatch.coats import kinds, stack
from studiowatch.coats.anchoring import Anchor
from studiowatch.coats.bound_water import Drift
from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.exposure import air_at_film
from studiowatch.coats.film_state import Film, StageReached, State
from studiowatch.coats.free_water import Layer
from studiowatch.coats.stack import sealed_in_g_m2
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Orientation
from studiowatch.coats.support import SOAKED_SHARE, Support
from studiowatch.physics.air import Air
from studiowatch.physics.constants import REFERENCE_TEMPERATURE_K
from studiowatch.physics.plate_transfer import Face, PlateAir
from studiowatch.physics.ranges import Array, check

__all__ = ["Film", "StageReached", "advance", "advance_through", "lay", "newly_reached", "sealed_in_g_m2"]

WET_UM = (1.0, 10_000.0)  # µm, film that may be laid
SIDE_M = (0.01, 10.0)  # m, side of the square of the piece's area
THINNED_PCT = (0.0, 100.0)  # % of the volume
LONGEST_STEP_S = 4.0e8  # s, over twelve years


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
    check("wet film", wet_um, *WET_UM, "µm")
    check("side of the piece", side_m, *SIDE_M, "m")
    check("thinning", thinned_pct, *THINNED_PCT, "% of the volume")
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


def advance(film: Film, air: Air, dt_s: float, *, covered: bool = False) -> tuple[Film, tuple[StageReached, ...]]:
    """Return the film after `dt_s` in `air`, and the stages that its nominal run reached meanwhile, in order of time.

    Any step may be taken at once: it is cut inside as finely as the film needs. A fresh film takes the temperature of
    the first air that it meets. The coats below are advanced along with it.

    Raises
    ------
    OutOfRange
        If `dt_s` or a value of `air` is not a number or out of range; the film is unchanged.
    """
    check("time step", dt_s, 0.0, LONGEST_STEP_S, "s")
    plate = air_at_film(air, film.anchor.draws, covered=covered, side_m=film.layer.side_m, face=film.layer.face)
    before = film.state
    state = before if film.elapsed_s > 0.0 else replace(before, film_K=plate.air_K)
    below, elapsed_s, left_s = film.below, film.elapsed_s, dt_s
    while left_s > 0.0:
        state, below, step_s = _step(film, state, below, plate, longest_s=left_s, elapsed_s=elapsed_s)
        elapsed_s += step_s
        left_s -= step_s
    after = replace(film, state=state, below=below, elapsed_s=film.elapsed_s + dt_s)
    return after, newly_reached(film, after)


def advance_through(
    film: Film, spans: Iterable[tuple[Air, float]], *, covered: bool = False
) -> tuple[Film, tuple[StageReached, ...]]:
    """Return the film after all of `spans`, each an air and how long it held, s, as `advance` does one by one.

    Raises
    ------
    OutOfRange
        As `advance`.
    """
    after = film
    for air, dt_s in spans:
        after, _ = advance(after, air, dt_s, covered=covered)
    return after, newly_reached(film, after)


def _step(
    film: Film, state: State, below: tuple[Film, ...], plate: PlateAir, *, longest_s: float, elapsed_s: float
) -> tuple[State, tuple[Film, ...], float]:
    """Return the state and the films below one step on, and the length of that step, s."""
    state, step_s, dry_s = kinds.lose_free(film, state, plate, longest_s=longest_s, elapsed_s=elapsed_s)
    if below:
        below = stack.drained(below, state, step_s)
    if not np.greater(dry_s, 0.0).any():
        return state, below, step_s
    end_s = elapsed_s + step_s
    drift = Drift(film_K=state.film_K, air_K=plate.air_K, draws=film.anchor.product.draws)
    if not below:
        return kinds.rest(film, state, plate, drift=drift, dry_s=dry_s, end_s=end_s), (), step_s
    seep = stack.seep_from(below)
    below = stack.rested(below, plate, drift=drift, dry_s=dry_s)
    hold = stack.hold_on(below, end_s)
    return kinds.rest(film, state, plate, drift=drift, dry_s=dry_s, end_s=end_s, seep=seep, hold=hold), below, step_s


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
