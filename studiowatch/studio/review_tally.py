"""What a film has met so far, per draw: damp, dew, and how fast it dried. Live coats and reviews tally alike."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache
from math import exp, inf, sqrt

import numpy as np

from studiowatch.coats.anchoring import REFERENCE_AIR, REFERENCE_SIDE_M, REMEMBERED, Anchor
from studiowatch.coats.bound_water import BOUND_AS_LAID, water_content
from studiowatch.coats.exposure import air_at_film, airs_at_film
from studiowatch.coats.film import Film
from studiowatch.coats.free_water import steady
from studiowatch.coats.solventborne import SolventState
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.coats.waterborne import Product, WaterState
from studiowatch.physics.air import Air
from studiowatch.physics.constants import ZERO_CELSIUS_K
from studiowatch.physics.moist_air import dew_point
from studiowatch.physics.plate_transfer import Face
from studiowatch.physics.ranges import Array
from studiowatch.room.limits import humidity_limit

DAMP_STEP_PCT = 5.0  # %RH more make damp air e times as bad; judgement: from harmless to bad within 10 %
MOST_DAMP = 3.0  # times as bad as at the limit, at most; judgement
LIMIT_MARGIN_PCT = 8.0  # %RH over a sheet's own limit at which an hour counts as one: sheets are cautious; judgement
DEW_K = 0.3  # K over the dew point at which water settles half of the time: errors of the sensors; judgement
BLUSH_K = 3.0  # K over the dew point at which a solvent-borne film takes up water; ISO 8502-4 practice
DEW_WIDTH_K = 0.2  # K that this is uncertain by; judgement
LAG_S = 600.0  # s by which the face of a thin panel lags behind the air: 5 mm of wood, from memory
COOLING_S = 240.0  # s in which a fresh film loses the warmth it was laid with: fast, but far from skinning; judgement
FORCED_M_S = (0.1, 0.3)  # m/s, from where a stream along the piece counts, and from where it is all; judgement
DEW_NOT_DAMP = 3.0  # air that likely settles as dew counts as that, and not as damp air too; judgement
FORGOTTEN_S = 21_600.0  # s from the nearest reading from which a room that nobody measured accuses nothing; judgement
LATE_DEW = 0.5  # of the harm of dew on an open film that it does once the film has cleared; judgement
_LEAST_RH = 0.01  # so that there is a dew point
_KEPT = float(water_content(0.5))  # kg/kg that stays in the film in an ordinary room


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Tally:
    """What a film has met so far; arrays are per draw.

    Attributes
    ----------
    damp_h : ndarray
        Hours in damp air while it held water, weighed: 1 for each hour at the limit with free water in the film.
    dew_min : ndarray
        Minutes in which water settled on it, each weighed by how likely that was.
    pace : ndarray
        Fastest loss of water per thickness at any place of the film, before packing, over that of the sheet's own run.
    support_K : ndarray or None
        Temperature of the face under the film, which lags behind the air, K; None before the first air.
    wet_s, damp_s, blind_s : float
        How long it was wet; of its time until clear, how long humidity was over the limit, and how long nobody read
        the room, s.
    warmth_C_s, humidity_pct_s, speed_m : float
        Sums over the wet time: °C s, % s, m/s s.
    dampest_pct, least_margin_K, fastest_m_s, warmest_C, driest_pct : float
        Extremes until clear, nominal: humidity; over the dew point; and while wet: air speed, warmth, dryness.
    """

    damp_h: Array
    dew_min: Array
    pace: Array
    support_K: Array | None = None
    wet_s: float = 0.0
    damp_s: float = 0.0
    blind_s: float = 0.0
    forming_s: float = 0.0
    warmth_C_s: float = 0.0
    humidity_pct_s: float = 0.0
    speed_m: float = 0.0
    dampest_pct: float = -inf
    least_margin_K: float = inf
    fastest_m_s: float = -inf
    driest_pct: float = inf
    warmest_C: float = -inf


def nothing_met(draws_n: int) -> Tally:
    """Return the tally of a coat laid this moment."""
    zero = np.zeros(draws_n)
    return Tally(damp_h=zero, dew_min=zero, pace=zero)


def damp_limit_pct(max_humidity_pct: float | None) -> float:
    """Return the humidity at which an hour of a wet film counts as one damp hour, %RH."""
    act = humidity_limit().act
    return act if max_humidity_pct is None else min(act, max_humidity_pct + LIMIT_MARGIN_PCT)


def told_damp_pct(max_humidity_pct: float | None) -> float:
    """Return the humidity above which a review tells of damp air, %RH: what the sheet allows, or the general care."""
    return humidity_limit().caution if max_humidity_pct is None else max_humidity_pct


def tallied(
    tally: Tally, before: Film, after: Film, air: Air, *, is_read: bool = True, surface_C: float | None = None
) -> Tally:
    """Return the tally after a step in which `before` became `after` in `air`.

    Parameters
    ----------
    surface_C : float or None
        Temperature of the surface beside the piece, °C, where it is measured.
    """
    dt_s = after.elapsed_s - before.elapsed_s
    if dt_s <= 0.0:
        return tally
    at_film = airs_at_film((air,), before.anchor.draws)
    air_K, humidity = at_film.air_K[0], at_film.humidity[0]
    support_K = air_K if tally.support_K is None else air_K + (tally.support_K - air_K) * exp(-dt_s / LAG_S)
    clear, wet = _share_before(before, after, Stage.CLEAR), _share_before(before, after, Stage.DRY_TO_TOUCH)
    forming = clear if isinstance(after.state, WaterState) else wet
    margin_K = _margin_K(after, air_K, humidity, support_K, surface_C)
    limit_pct = damp_limit_pct(before.sheet.max_humidity_pct)
    worse = np.minimum(np.exp((100.0 * humidity - limit_pct) / DAMP_STEP_PCT), MOST_DAMP)
    dew_K = BLUSH_K if isinstance(after.state, SolventState) else DEW_K
    settles = 1.0 / (1.0 + np.exp(np.clip((margin_K - dew_K) / DEW_WIDTH_K, -50.0, 50.0)))
    harm = forming + LATE_DEW * np.maximum(_share_before(before, after, Stage.DRY_TO_RECOAT) - forming, 0.0)
    known = 0.0 if not is_read and (air.age_s or 0.0) > FORGOTTEN_S else 1.0
    noted = replace(
        tally,
        damp_h=tally.damp_h
        + known
        * worse
        * np.maximum(1.0 - DEW_NOT_DAMP * settles, 0.0)
        * _open_share(before, after)
        * forming
        * dt_s
        / 3600.0,
        dew_min=tally.dew_min + known * settles * harm * dt_s / 60.0,
        pace=np.maximum(tally.pace, known * _pace(before, after, air, dt_s)),
        support_K=support_K,
    )
    is_damp = air.humidity_pct > told_damp_pct(before.sheet.max_humidity_pct)
    wet_s, forming_s = dt_s * float(wet[0]), dt_s * float(forming[0])
    return _extremes(noted, air, wet_s, forming_s, float(margin_K[0]), is_read=is_read, is_damp=is_damp)


def _extremes(
    tally: Tally, air: Air, wet_s: float, forming_s: float, margin_K: float, *, is_read: bool, is_damp: bool
) -> Tally:
    """Return the tally with what people are told of a step: nominal figures."""
    if forming_s <= 0.0 and wet_s <= 0.0:
        return tally
    noted = replace(
        tally,
        forming_s=tally.forming_s + forming_s,
        blind_s=tally.blind_s + (0.0 if is_read else forming_s),
        damp_s=tally.damp_s + (forming_s if is_damp else 0.0),
        dampest_pct=max(tally.dampest_pct, air.humidity_pct),
        least_margin_K=min(tally.least_margin_K, margin_K),
    )
    if wet_s <= 0.0:
        return noted
    return replace(
        noted,
        wet_s=tally.wet_s + wet_s,
        warmth_C_s=tally.warmth_C_s + wet_s * air.temperature_C,
        humidity_pct_s=tally.humidity_pct_s + wet_s * air.humidity_pct,
        speed_m=tally.speed_m + wet_s * air.air_speed_m_s,
        fastest_m_s=max(tally.fastest_m_s, air.air_speed_m_s),
        driest_pct=min(tally.driest_pct, air.humidity_pct),
        warmest_C=max(tally.warmest_C, air.temperature_C),
    )


def _share_before(before: Film, after: Film, stage: Stage) -> Array:
    """Return the share of a step before the film reached `stage`, 0-1 per draw."""
    reached_s = after.state.reached[ROW[stage]]
    span_s = after.elapsed_s - before.elapsed_s
    share: Array = np.clip((np.minimum(reached_s, after.elapsed_s) - before.elapsed_s) / span_s, 0.0, 1.0)
    return share


def _open_share(before: Film, after: Film) -> Array:
    """Return how open the film is to damp, 0-1 per draw: 1 with free water in it, then as its bound water."""
    if not isinstance(after.state, WaterState) or not isinstance(before.state, WaterState):
        return np.ones(len(after.anchor.draws))
    bound = np.clip((after.state.bound - _KEPT) / (BOUND_AS_LAID - _KEPT), 0.0, 1.0)
    return np.where(after.state.free > 0.0, 1.0, bound)


def _margin_K(after: Film, air_K: Array, humidity: Array, support_K: Array, surface_C: float | None) -> Array:
    """Return how far the coldest of film, support and surface is above the dew point, K per draw."""
    air_C = air_K - ZERO_CELSIUS_K
    dew_C = dew_point(air_C, 100.0 * np.clip(humidity, _LEAST_RH, 1.0))
    coldest_C = np.minimum(after.state.film_K, support_K) - ZERO_CELSIUS_K
    if surface_C is not None:
        coldest_C = np.minimum(coldest_C, surface_C)
    return coldest_C - dew_C


def _pace(before: Film, after: Film, air: Air, dt_s: float) -> Array:
    """Return the loss of water per thickness in a step over the fastest of the sheet's own run, per draw.

    The Péclet number of Routh and Russel (1998) without the thickness, which has a cause of its own. It counts while
    the polymer is not packed. Skin begins at the edge that faces a stream: near it the transfer of a laminar stream
    goes with the speed alone (local Nusselt number, Incropera, 7th ed., eq. 7.23), while the mean falls with the
    square root of the side; so a large piece is brought to the side of the sheet's own panel.
    """
    old, new, draws_n = before.state, after.state, len(after.anchor.draws)
    cools = before.elapsed_s < COOLING_S
    if cools or not isinstance(old, WaterState) or not isinstance(new, WaterState):
        return np.zeros(draws_n)
    flux = (old.free - new.free) / dt_s
    still_m_s, stream_m_s = FORCED_M_S
    forced = min(max((air.air_speed_m_s - still_m_s) / (stream_m_s - still_m_s), 0.0), 1.0)
    edge = 1.0 + forced * (sqrt(before.layer.side_m / REFERENCE_SIDE_M) - 1.0)
    return np.where(old.free > before.layer.free_packed, edge * flux / new.film_K / _own_pace(before.anchor), 0.0)


@lru_cache(maxsize=REMEMBERED)  # each holds its anchor
def _own_pace(tied: Anchor) -> Array:
    """Return the steady loss of water of the sheet's own run over its film's temperature, kg/(m² s K) per draw."""
    draws = tied.draws
    known = draws.in_reference_room()
    plate = air_at_film(REFERENCE_AIR, known, covered=False, side_m=REFERENCE_SIDE_M, face=Face.UP)
    kappa = tied.product.kappa if isinstance(tied.product, Product) else np.ones(len(draws))
    flux, film_K = steady(plate, kappa, draws)
    return flux / film_K
