"""Ready times: when a coat will reach each stage, as a range over the draws."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace
from math import inf, isfinite

import numpy as np

from studiowatch.coats import kinds
from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.exposure import ahead
from studiowatch.coats.film import Film, advance, advance_through
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air, AirDraws, AnyAir
from studiowatch.physics.ranges import Array

BEYOND_S = 1000 * 86400.0  # s, how far a slow stage is carried on beyond the horizon
_ROUNDING = 1e-12  # of a place between draws, so that a quantile that falls on a draw is that draw

_SLOW = (Stage.CURED,)
_SLOW_IN_PAINT = (Stage.DRY_HARD, Stage.DRY_THROUGH, Stage.CURED)


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


def outlook(
    film: Film,
    air: AnyAir,
    *,
    horizon_s: float,
    covered: bool = False,
    coming: Sequence[tuple[AnyAir, float]] | None = None,
    beyond: AnyAir | None = None,
    coarse: float = 1.0,
    wanted: Collection[Stage] = tuple(Stage),
    carried_on: Collection[Stage] = (),
) -> Array:
    """Return when each draw of `film` reaches each stage `wanted`: a table, see `stage_table`.

    The air will be as `coming` says, each with how long it holds, s, `horizon_s` in all; without it, it stays as it is.
    What nobody measures is less and less certain to stay: see `exposure.ahead`.

    Stages that lie behind keep the times at which they were reached. Cure, and the depth of paint, take so long that
    they are carried on beyond `horizon_s`, which counts from now, in `beyond`, or the mean of what is coming; so are
    those `carried_on`. `coarse` as in `advance_through`.

    Raises
    ------
    OutOfRange
        As `advance`.
    """
    spans = _held(air, horizon_s) if coming is None else coming
    awaiting = replace(film, state=kinds.awaiting(film.state, wanted))
    later, _ = advance_through(awaiting, spans, covered=covered, coarse=coarse)
    table = later.state.reached.copy()
    carried = {*carried_on, *(_SLOW_IN_PAINT if film.sheet.kind is Kind.PAINT else _SLOW)}
    slow = [ROW[stage] for stage in Stage if stage in carried and stage in wanted]
    if slow:
        last = beyond or (lasting(spans) if spans else air)
        cured, _ = advance(later, last, BEYOND_S, covered=covered)
        table[slow] = cured.state.reached[slow]
    return table


def _held(air: AnyAir, horizon_s: float) -> tuple[tuple[AnyAir, float], ...]:
    return tuple(ahead(air, horizon_s)) if isinstance(air, Air) else ((air, horizon_s),)


def lasting(spans: Sequence[tuple[AnyAir, float]]) -> AnyAir:
    """Return the air that is carried on beyond the horizon: the mean of what is drawn, else the last."""
    last = spans[-1][0]
    if isinstance(last, Air):
        return last
    drawn = [(one, span_s) for one, span_s in spans if isinstance(one, AirDraws)]
    lengths_s = np.array([span_s for _, span_s in drawn])
    return AirDraws(
        temperature_C=np.average([one.temperature_C for one, _ in drawn], axis=0, weights=lengths_s),
        humidity_pct=np.average([one.humidity_pct for one, _ in drawn], axis=0, weights=lengths_s),
        air_speed_m_s=np.average([one.air_speed_m_s for one, _ in drawn], axis=0, weights=lengths_s),
        pressure_Pa=last.pressure_Pa,
    )


def ready_times(sheet: DataSheet, table: Array, weights: Array | None = None) -> Mapping[Stage, Ready]:
    """Return the range of each stage that a coat of this sheet goes through; `weights` as in `ready_at`."""
    return {stage: ready_at(table[ROW[stage]], weights) for stage in stages_of(sheet)}


def stages_of(sheet: DataSheet) -> tuple[Stage, ...]:
    """Return the stages that a coat of this sheet goes through: paint does not clear."""
    return tuple(stage for stage in Stage if stage is not Stage.CLEAR or sheet.clear_film)


def ready_at(reached_s: Array, weights: Array | None = None) -> Ready:
    """Return the range of one row of reached times: draw 0 is the nominal run, the others are the range.

    Parameters
    ----------
    reached_s : ndarray, (draws,)
        s since laying; infinite where not reached.
    weights : ndarray, (draws,), optional
        How likely each draw is against the others; that of draw 0 is not used.
    """
    others = slice(1, None) if reached_s.size > 1 else slice(None)
    order = np.argsort(reached_s[others], kind="stable")
    times_s = reached_s[others][order]
    share = np.ones(times_s.size) if weights is None else weights[others][order]
    places = _places(share)
    return Ready(
        p10_s=_quantile(times_s, places, 0.1),
        p50_s=_quantile(times_s, places, 0.5),
        p90_s=_quantile(times_s, places, 0.9),
        nominal_s=_known(float(reached_s[0])),
    )


def _places(weights: Array) -> Array:
    """Return where each of the draws, in order of time, lies from 0 to 1: evenly spaced where the weights are equal."""
    between = np.concatenate([[0.0], np.cumsum(0.5 * (weights[1:] + weights[:-1]))])
    return between / between[-1] if between[-1] > 0.0 else between


def next_ready(times: Mapping[Stage, Ready], *, through: bool) -> Ready:
    """Return when the film is ready for the next coat: dry to recoat, and where `through` asks for it dry through too.

    The later of both, each bound by itself; None where one of them is not reached.
    """
    recoat = times[Stage.DRY_TO_RECOAT]
    if not through:
        return recoat
    deep = times[Stage.DRY_THROUGH]
    return Ready(
        p10_s=_later(recoat.p10_s, deep.p10_s),
        p50_s=_later(recoat.p50_s, deep.p50_s),
        p90_s=_later(recoat.p90_s, deep.p90_s),
        nominal_s=_later(recoat.nominal_s, deep.nominal_s),
    )


def _later(one_s: float | None, other_s: float | None) -> float | None:
    return None if one_s is None or other_s is None else max(one_s, other_s)


def ready_by_s(sheet: DataSheet, ready: Ready) -> float | None:
    """Return the age at which the painter is told that the next coat may go on, s.

    That is p90 of dry-to-recoat, and never before the sheet's own recoat time.
    """
    return recoat_s(sheet, ready.p90_s)


def recoat_s(sheet: DataSheet, age_s: float | None) -> float | None:
    """Return the age at which the next coat may go on where the film is ready for it at `age_s`, s; None stays None.

    No bound of the range, not the early one either, lies before the sheet's own recoat time.
    """
    return None if age_s is None else max(age_s, sheet.recoat_h * 3600.0)


def _quantile(times_s: Array, places: Array, share: float) -> float | None:
    """Return the quantile between its two neighbours, or None where the upper one is not reached."""
    high = min(int(np.searchsorted(places, share - _ROUNDING)), times_s.size - 1)
    if times_s[high] == inf:
        return None
    if high == 0 or places[high] <= share:
        return float(times_s[high])
    low = high - 1
    part = (share - places[low]) / (places[high] - places[low])
    return float(times_s[low] + part * (times_s[high] - times_s[low]))


def _known(value: float) -> float | None:
    return value if isfinite(value) else None
