"""When each draw reached each stage: a table of elapsed seconds, one row per stage, infinite where not reached yet."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from studiowatch.coats.seal import Hold
from studiowatch.coats.stages import Stage
from studiowatch.physics.ranges import Array, Mask

ROW = {stage: row for row, stage in enumerate(Stage)}


def nothing_reached(draws: int) -> Array:
    """Return the table of a coat that was laid this moment."""
    return np.full((len(ROW), draws), np.inf)


def enter(table: Array, stage: Stage, now: Mask, when: Callable[[], Array]) -> Array:
    """Return the table with `stage` entered where `now` is true and it was not reached before.

    `when` gives the elapsed seconds, right where `now` is true; it is asked only if there is something to enter.
    """
    row = ROW[stage]
    new = now & np.isinf(table[row])
    if not new.any():
        return table
    table = table.copy()
    table[row] = np.where(new, when(), table[row])
    return table


def enter_held(table: Array, stage: Stage, now: Mask, when: Callable[[], Array], hold: Hold | None) -> Array:
    """Return the table as `enter` does, but not before the films below let the coat reach `stage`."""
    if hold is None:
        return enter(table, stage, now, when)
    held_s = hold[stage]
    return enter(table, stage, now & np.isfinite(np.maximum(held_s, 0.0)), lambda: np.maximum(when(), held_s))
