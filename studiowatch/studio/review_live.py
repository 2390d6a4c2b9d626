"""The same weighing for coats that are wet now, and for one that is about to be laid."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Callable, Mapping, Sequence
from functools import lru_cache
from types import MappingProxyType

import numpy as np

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.draws import sample
from studiowatch.coats.film import advance, lay
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air
from studiowatch.physics.ranges import Array
from studiowatch.speech.words import say
from studiowatch.studio.review_causes import MEASURED, WITHIN, Cause
from studiowatch.studio.review_course import SEED
from studiowatch.studio.review_curves import Curves, chance, shares
from studiowatch.studio.review_severity import columns, film_severities, matting_over
from studiowatch.studio.review_tally import nothing_met, tallied
from studiowatch.studio.review_views import Risk
from studiowatch.studio.review_words import amount

FEW = 0.10  # chance under which nothing needs saying; judgement
AHEAD_DRAWS = 4  # draws of a coat that is about to be laid: a look ahead, not a verdict
AHEAD_STEPS_S = (*(600.0,) * 12, *(1800.0,) * 8, *(3600.0,) * 6)  # s, twelve hours
# what a look ahead is rounded to, so that it is seldom dried anew: °C, %, m/s, and sides of a piece, m
_EVEN_C, _EVEN_PCT, _EVEN_M_S, _LEAST_M_S = 1.0, 3.0, 0.1, 0.05
_SIDES_M = (0.15, 0.3, 0.6, 1.2)


_FIGURES: Mapping[Cause, Callable[[float], str]] = MappingProxyType(
    {
        Cause.SEALED_IN_WATER: lambda value: say(
            "{cause} ({figure} g/m² that had still to leave)",
            cause=say(WITHIN[Cause.SEALED_IN_WATER]),
            figure=amount(value),
        ),
        Cause.BELOW_MFFT: lambda value: say(
            "{cause} ({minutes} min under its least temperature)",
            cause=say(WITHIN[Cause.BELOW_MFFT]),
            minutes=round(value),
        ),
        Cause.CONDENSATION: lambda value: say(
            "{cause} (about {minutes} min at the dew point)",
            cause=say(WITHIN[Cause.CONDENSATION]),
            minutes=round(max(value, 1.0)),
        ),
        Cause.SKINNED: lambda value: say(
            "{cause} ({figure} times as fast as in its sheet's room)",
            cause=say(WITHIN[Cause.SKINNED]),
            figure=amount(value),
        ),
        Cause.TOO_THICK: lambda value: say(
            "{cause} ({figure} times its sheet's film)", cause=say(WITHIN[Cause.TOO_THICK]), figure=amount(value)
        ),
        Cause.THINNED: lambda value: say(
            "{cause} ({share} % added)", cause=say(WITHIN[Cause.THINNED]), share=round(value)
        ),
        Cause.DAMP_AIR: lambda value: say(
            "{cause} ({hours} h that count as damp)", cause=say(WITHIN[Cause.DAMP_AIR]), hours=amount(value)
        ),
        Cause.MATTING_BUILD_UP: lambda _: say(WITHIN[Cause.MATTING_BUILD_UP]),
        Cause.TOUCHED: lambda _: say(WITHIN[Cause.TOUCHED]),
        Cause.STILL_CLEARING: lambda _: say(WITHIN[Cause.STILL_CLEARING]),
        Cause.UNKNOWN: lambda _: say(WITHIN[Cause.UNKNOWN]),
    }
)


def present_risk(curves: Curves, severities: Array) -> Risk:
    """Return the risk of a coat by what it has met so far; `severities` is (draws, measured causes)."""
    risk = chance(curves, severities)
    first, _ = max(shares(curves, severities, None).items(), key=lambda item: item[1])
    if risk < FEW or first is Cause.UNKNOWN:
        return Risk(chance=risk, cause=first, sentence=say("Nothing so far that clouds a coat."))
    value = float(severities[:, MEASURED.index(first)].mean())
    many = max(round(10.0 * risk), 1)
    return Risk(
        chance=risk,
        cause=first,
        sentence=say("Of ten like it about {many} cloud: {cause}.", many=many, cause=_FIGURES[first](value)),
    )


def laying_risk(
    curves: Curves, sheet: DataSheet, air: Air, *, below: Sequence[DataSheet], sealed_g_m2: float, side_m: float
) -> Risk:
    """Return the risk of a coat of `sheet` that were laid now, if the air stayed about as it is.

    Parameters
    ----------
    below : sequence of DataSheet
        Of the coats that it would lie on, lowest first.
    sealed_g_m2 : float
        Water that has still to leave them, g/m².
    """
    size = _SIDES_M[bisect_left(_SIDES_M, side_m, hi=len(_SIDES_M) - 1)]
    return _laying_risk(
        curves,
        sheet,
        _even(air),
        matting=matting_over([*below, sheet]),
        sealed_g_m2=round(sealed_g_m2, 2),
        side_m=size,
    )


@lru_cache(maxsize=64)  # the coats that a dozen pieces wait for, as they are asked for again
def _laying_risk(
    curves: Curves, sheet: DataSheet, air: Air, *, matting: float, sealed_g_m2: float, side_m: float
) -> Risk:
    severities = in_this_air(sheet, air, side_m).copy()
    severities[:, MEASURED.index(Cause.SEALED_IN_WATER)] = sealed_g_m2
    severities[:, MEASURED.index(Cause.MATTING_BUILD_UP)] = matting
    return present_risk(curves, severities)


def _even(air: Air) -> Air:
    return Air(
        temperature_C=_EVEN_C * round(air.temperature_C / _EVEN_C),
        humidity_pct=min(_EVEN_PCT * round(air.humidity_pct / _EVEN_PCT), 100.0),
        air_speed_m_s=max(_EVEN_M_S * round(air.air_speed_m_s / _EVEN_M_S), _LEAST_M_S),
    )


@lru_cache(maxsize=32)  # three sheets on two sizes of piece, while the air changes by steps
def in_this_air(sheet: DataSheet, air: Air, side_m: float) -> Array:
    """Return the severities of a coat as thick as its sheet says, alone in air that stays, for twelve hours."""
    film = lay(sheet, anchor(sheet, sample(AHEAD_DRAWS, SEED, measured=True)), wet_um=sheet.wet_um, side_m=side_m)
    tally = nothing_met(AHEAD_DRAWS)
    for dt_s in AHEAD_STEPS_S:
        before = film
        film, _ = advance(before, air, dt_s)
        tally = tallied(tally, before, film, air)
        if not np.isinf(film.state.reached[ROW[Stage.DRY_TO_RECOAT]]).any():
            break
    return columns(film_severities(film, tally, sheets=[sheet], sealed_g_m2=None, hands=0.0))
