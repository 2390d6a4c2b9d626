"""Ready times: when a coat will reach each stage, as a range over the draws."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import inf, isfinite

import numpy as np

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.film import Film, advance
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air
from studiowatch.physics.ranges import Array

BEYOND_S = 1000 * 86400.0  # s, how far a slow stage is carried on beyond the horizon


@dataclass(frozen=True, slots=True, kw_only=True)
class Ready:
    """When one stage is reached, s since the coat was laid; None where it is not reached in the time looked at.

    Attributes
    ----------
    p10_s, p50_s, p90_s : float or None
        One, five and nine draws in ten have reached it by then.
    nominal_s : float or None
        The nominal run.
    """

    p10_s: float | None
    p50_s: float | None
    p90_s: float | None
    nominal_s: float | None


def forecast(film: Film, air: Air, *, horizon_s: float, covered: bool = False) -> Mapping[Stage, Ready]:
    """Return when `film` reaches each of its stages if the air stays as it is.

    Stages that lie behind return the times at which they were reached. Cure, and all that paint does, take so long
    that they are carried on beyond `horizon_s`, which counts from now.

    Raises
    ------
    OutOfRange
        As `advance`.
    """
    ahead, _ = advance(film, air, horizon_s, covered=covered)
    beyond, _ = advance(ahead, air, BEYOND_S, covered=covered)
    slow = tuple(Stage) if film.sheet.kind is Kind.PAINT else (Stage.CURED,)
    return {
        stage: ready_at((beyond if stage in slow else ahead).state.reached[ROW[stage]])
        for stage in stages_of(film.sheet)
    }


def stages_of(sheet: DataSheet) -> tuple[Stage, ...]:
    """Return the stages that a coat of this sheet goes through: paint does not clear."""
    return tuple(stage for stage in Stage if stage is not Stage.CLEAR or sheet.clear_film)


def ready_at(reached_s: Array) -> Ready:
    """Return the range of one row of reached times: draw 0 is the nominal run, the others are the range."""
    others = np.sort(reached_s[1:] if reached_s.size > 1 else reached_s)
    return Ready(
        p10_s=_quantile(others, 0.1),
        p50_s=_quantile(others, 0.5),
        p90_s=_quantile(others, 0.9),
        nominal_s=_known(float(reached_s[0])),
    )


def ready_by_s(sheet: DataSheet, ready: Ready) -> float | None:
    """Return the age at which the painter is told that the next coat may go on, s.

    That is p90 of dry-to-recoat, and never before the sheet's own recoat time.
    """
    return None if ready.p90_s is None else max(ready.p90_s, sheet.recoat_h * 3600.0)


def _quantile(ascending: Array, share: float) -> float | None:
    """Return the quantile between its two neighbours, or None where the upper one is not reached."""
    place = share * (ascending.size - 1)
    low = int(place)
    high = min(low + 1, ascending.size - 1) if place > low else low
    below, above = float(ascending[low]), float(ascending[high])
    return None if above == inf else below + (place - low) * (above - below)


def _known(value: float) -> float | None:
    return value if isfinite(value) else None
