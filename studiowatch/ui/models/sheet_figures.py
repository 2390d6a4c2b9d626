"""The figures of a data sheet's form: each one's words, and the units that it may be typed in."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.coats.sheet_units import (
    DAY_AS_H,
    FAHRENHEIT,
    GRAM_PER_ML,
    HOUR_AS_DAYS,
    HOUR_AS_MIN,
    MIL,
    MINUTE_AS_H,
    PERCENT_AS_SHARE,
    POUND_PER_GALLON,
    WEEK_AS_DAYS,
    OtherUnit,
)
from studiowatch.speech.words import mark, say

FT2_PER_GAL_m2_L = 0.09290304 / 3.785411784  # 1 ft²/US gal in m²/L; both exact, by definition
M2_PER_L = "m²/L"
FT2_PER_GAL = "ft²/gal (US)"  # not said
_UM_TIMES_M2_L = 1000.0  # 1 L spread over 1 m² is 1000 µm
UNIT_WORDS = {
    "of 1": mark("of 1"),
    "min": mark("min"),
    "h": mark("h"),
    "days": mark("days"),
    "weeks": mark("weeks"),
    "coats": mark("coats"),
    FT2_PER_GAL: mark("ft²/gal (US)"),
    POUND_PER_GALLON.name: mark("lb/US gal"),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class FigureLine:
    """One figure of the form: its field in the sheet, its words, and its units, ours first; None is ours.

    `hint` says where on the bottle it stands, or what holds if it does not.
    """

    field: str
    words: str
    ours: str
    others: tuple[OtherUnit, ...] = ()
    spreads: bool = False
    hint: str = ""
    required: bool = False

    @property
    def units(self) -> tuple[str, ...]:
        """Names of the units that it may be typed in."""
        spreading = (M2_PER_L, FT2_PER_GAL) if self.spreads else ()
        return (self.ours, *(unit.name for unit in self.others), *spreading)

    def in_ours(self, typed: float, unit: str) -> float:
        """Return a figure typed in `unit`, in ours."""
        if unit == M2_PER_L:
            return _UM_TIMES_M2_L / typed
        if unit == FT2_PER_GAL:
            return _UM_TIMES_M2_L / (typed * FT2_PER_GAL_m2_L)
        other = next((other for other in self.others if other.name == unit), None)
        return typed if other is None else other.converted(typed)

    def in_unit(self, ours: float, unit: str) -> float:
        """Return a figure in `unit` that is given in ours."""
        if unit == M2_PER_L:
            return _UM_TIMES_M2_L / ours
        if unit == FT2_PER_GAL:
            return _UM_TIMES_M2_L / ours / FT2_PER_GAL_m2_L
        other = next((other for other in self.others if other.name == unit), None)
        return ours if other is None else ours / other.size + other.zero


LINES = (
    FigureLine(
        field="volume_solids",
        words=mark("Solids, of the volume"),
        ours="of 1",
        others=(PERCENT_AS_SHARE,),
        required=True,
    ),
    FigureLine(
        field="wet_um",
        words=mark("Wet film, or how far it spreads"),
        ours="µm",
        others=(MIL,),
        spreads=True,
        hint=mark("one coat as the sheet recommends it"),
    ),
    FigureLine(field="dry_um", words=mark("Dry film"), ours="µm", others=(MIL,), hint=mark("wet or dry, or both")),
    FigureLine(field="density_kg_m3", words=mark("Density"), ours="kg/m³", others=(GRAM_PER_ML, POUND_PER_GALLON)),
    FigureLine(
        field="touch_dry_min", words=mark("Dry to touch after"), ours="min", others=(HOUR_AS_MIN,), required=True
    ),
    FigureLine(
        field="clear_h", words=mark("Clear after"), ours="h", others=(MINUTE_AS_H,), hint=mark("water-borne coats")
    ),
    FigureLine(
        field="recoat_h", words=mark("Next coat after"), ours="h", others=(MINUTE_AS_H, DAY_AS_H), required=True
    ),
    FigureLine(field="cure_days", words=mark("Cured after"), ours="days", others=(WEEK_AS_DAYS, HOUR_AS_DAYS)),
    FigureLine(
        field="mfft_C",
        words=mark("Least film-forming temperature"),
        ours="°C",
        others=(FAHRENHEIT,),
        hint=mark("MFFT, ISO 2115"),
    ),
    FigureLine(field="apply_low", words=mark("Lay at, from"), ours="°C", others=(FAHRENHEIT,)),
    FigureLine(field="apply_high", words=mark("Lay at, up to"), ours="°C", others=(FAHRENHEIT,)),
    FigureLine(field="max_humidity_pct", words=mark("Relative humidity up to"), ours="%"),
    FigureLine(
        field="flash_point_C", words=mark("Flash point"), ours="°C", others=(FAHRENHEIT,), hint=mark("solvent-borne")
    ),
    FigureLine(field="max_matting_coats", words=mark("Coats with matting agent, at most"), ours="coats"),
)


def unit_words(unit: str) -> str:
    """Return a unit of a figure as she reads it."""
    return say(UNIT_WORDS.get(unit, unit))
