"""How much to pour: from area and sheet, panel by panel, with what stays in the brush only where she says so."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.studio.labels import suggested_mL
from studiowatch.studio.words import Level

THICK = 1.5  # times the sheet's thickness, from which time to dry grows past twice: common practice, no source
VERY_THICK = 2.0  # times the sheet's thickness, from which it may stay milky: common practice, no source
THINNED_MUCH_PCT = 10.0  # % of the volume added, beyond which sheets seldom go: common practice, no source
THINNED_FAR_PCT = 25.0  # % of the volume added, beyond which the binder may no longer close: from memory
ALLOWANCE_PCT = (0.0, 50.0)  # % that may be added for brush and cup; assumption
_G_PER_ML_PER_KG_M3 = 1e-3


@dataclass(frozen=True, slots=True, kw_only=True)
class Pour:
    """What to pour for one panel: on its face, and in all with what stays in brush and cup; mL and grams."""

    area_m2: float
    laid_mL: float
    poured_mL: float
    poured_g: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Verdict:
    """What is to be said of an amount, and how much it matters; "" says nothing."""

    words: str
    level: Level = Level.CALM


def pours(
    areas_m2: Sequence[float], *, wet_um: float, density_kg_m3: float, allowance_pct: float = 0.0
) -> tuple[Pour, ...]:
    """Return what to pour for each panel: one mL over one m² makes one µm.

    Parameters
    ----------
    areas_m2 : sequence of float
        Area of each panel's face, m².
    wet_um : float
        Wet film of the sheet, µm.
    density_kg_m3 : float
        Of the wet product, kg/m³.
    allowance_pct : float
        What is poured on top for brush and cup, % of what lies on the piece; 0 unless she set it.
    """
    made = []
    for area_m2 in areas_m2:
        laid_mL = suggested_mL(area_m2, wet_um)
        poured_mL = laid_mL * (1.0 + allowance_pct / 100.0)
        poured_g = poured_mL * density_kg_m3 * _G_PER_ML_PER_KG_M3
        made.append(Pour(area_m2=area_m2, laid_mL=laid_mL, poured_mL=poured_mL, poured_g=poured_g))
    return tuple(made)


def laid_of(poured: float, allowance_pct: float) -> float:
    """Return how much of an amount poured lies on the piece, in the unit of `poured`."""
    return poured / (1.0 + allowance_pct / 100.0)


def thickness(*, laid_mL: float, area_m2: float, sheet_wet_um: float) -> Verdict:
    """Return what an amount on the piece makes, and whether that is too thick."""
    wet_um = laid_mL / area_m2
    times = wet_um / sheet_wet_um
    figures = {"film": chosen().film(wet_um), "times": chosen().number(times, 1)}
    if times > VERY_THICK:
        return Verdict(
            words=say(
                "{film} wet, {times} × the sheet: far too thick, it will dry slowly and may stay milky", **figures
            ),
            level=Level.ACT,
        )
    if times > THICK:
        words = say("{film} wet, {times} × the sheet: thick, it will dry slowly", **figures)
        return Verdict(words=words, level=Level.CAUTION)
    return Verdict(words=say("{film} wet, {times} × the sheet", **figures))


def thinning(thinned_pct: float, *, thinner: str) -> Verdict:
    """Return what is to be said of `thinned_pct` % of the volume added as `thinner`: "water", "thinner"."""
    if thinned_pct > THINNED_FAR_PCT:
        words = say(
            "{share} % {thinner}: the film may not close, and stay soft or cloudy. Keep to the sheet.",
            share=chosen().plain(thinned_pct),
            thinner=thinner,
        )
        return Verdict(words=words, level=Level.ACT)
    if thinned_pct > THINNED_MUCH_PCT:
        words = say(
            "{share} % {thinner} is more than most sheets allow: see yours first.",
            share=chosen().plain(thinned_pct),
            thinner=thinner,
        )
        return Verdict(words=words, level=Level.CAUTION)
    return Verdict(words="")
