"""How fast a wet water-borne coat dries now, in times of its sheet's own run: what the watch judges skinning by."""

from __future__ import annotations

from functools import lru_cache
from math import exp

from studiowatch.coats.anchoring import REFERENCE_AIR, REFERENCE_SIDE_M, anchor
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.film import advance, lay
from studiowatch.coats.film_state import Film
from studiowatch.coats.waterborne import WaterState

SMOOTHED_S = 300.0  # s over which the pace is averaged: who walks by dries no skin; assumption
_SETTLED_S = 300.0  # s, at most, that a film takes to cool as it dries


def pace_after(pace: float, before: Film, after: Film) -> float:
    """Return the pace once `after` followed on `before`, from the `pace` until then; 0 once the film has packed.

    The pace is the Péclet number of the drying, averaged over minutes, over that of the sheet's own run once its film
    has cooled, in the run with every draw at its centre. (`Film.skinning` compares the fastest moments, when both
    films are still as warm as the air; a fresh coat begins at 0 here, so that this moment counts for little.)
    """
    elapsed_s = after.elapsed_s - before.elapsed_s
    if not isinstance(after.state, WaterState) or elapsed_s <= 0.0:
        return pace
    if after.state.free[0] <= after.layer.free_packed[0]:
        return 0.0
    now = _peclet(before, after) / _of_sheet(after.sheet)
    return now + (pace - now) * exp(-elapsed_s / SMOOTHED_S)


def _peclet(before: Film, after: Film) -> float:
    """Return the Péclet number between two moments, but for the product's own factor, m kg/(m² s K)."""
    lost = (before.water_g_m2 - after.water_g_m2) / 1000.0
    flux = lost / (after.elapsed_s - before.elapsed_s)
    return float(after.layer.wet_m[0]) * flux / float(after.state.film_K[0])


@lru_cache(maxsize=128)
def _of_sheet(sheet: DataSheet) -> float:
    """Return the Péclet number of the sheet's own run once its film has cooled."""
    settled_s = min(_SETTLED_S, sheet.touch_dry_min * 60.0 / 4.0)
    laid = lay(sheet, anchor(sheet), wet_um=sheet.wet_um, side_m=REFERENCE_SIDE_M)
    cooled, _ = advance(laid, REFERENCE_AIR, settled_s)
    later, _ = advance(cooled, REFERENCE_AIR, settled_s / 10.0)
    return _peclet(cooled, later)
