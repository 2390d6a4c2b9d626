"""A data sheet as a form: the figures in the units that bottles print, and each fault at its line."""

from __future__ import annotations

import re
from collections.abc import Collection, Mapping
from dataclasses import dataclass, field

from studiowatch.coats.data_sheet import DataSheet, Kind, Sheen
from studiowatch.coats.sheet_check import check_fields
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
from studiowatch.speech.units import Degrees, Thickness, chosen
from studiowatch.speech.words import mark, say
from studiowatch.ui.models import sheet_summary
from studiowatch.ui.models.seen_words import capital

FT2_PER_GAL_m2_L = 0.09290304 / 3.785411784  # 1 ft²/US gal in m²/L; both exact, by definition
M2_PER_L = "m²/L"
FT2_PER_GAL = "ft²/gal (US)"  # not said
_UM_TIMES_M2_L = 1000.0  # 1 L spread over 1 m² is 1000 µm
KINDS = {
    mark("Water-borne"): Kind.WATERBORNE,
    mark("Solvent-borne"): Kind.SOLVENTBORNE,
    mark("Paint"): Kind.PAINT,
}
SHEENS = {
    mark("no sheen named"): None,
    mark("Gloss"): Sheen.GLOSS,
    mark("Satin"): Sheen.SATIN,
    mark("Matt"): Sheen.MATT,
}
summary_lines = sheet_summary.summary_lines
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
_ORIGIN = "sheet"
_NAME_MOST = 60  # characters of a name, which is a file's too
_DIGITS = 4  # shown of a figure that was converted


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
_LINE_OF = {"apply_C": "apply_low"}  # a fault of the pair stands at its first line


def unit_words(unit: str) -> str:
    """Return a unit of a figure as she reads it."""
    return say(UNIT_WORDS.get(unit, unit))


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetTyped:
    """What stands in the form: each figure's text and unit by field."""

    title: str = ""
    kind: Kind = Kind.WATERBORNE
    sheen: Sheen | None = None
    matting_agent: bool = False
    figures: Mapping[str, tuple[str, str]] = field(default_factory=dict)
    removable_with: str = ""
    cautions: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetRead:
    """What the form comes to.

    Attributes
    ----------
    fields : mapping
        The sheet as its file would have it.
    faults : mapping
        One sentence by the field at whose line it belongs, of all that keeps the sheet from being used.
    doubts : mapping
        The same of what may be used but looks like a slip.
    assumed : tuple of str
        What will be assumed, one sentence each.
    """

    fields: Mapping[str, object]
    faults: Mapping[str, str]
    doubts: Mapping[str, str]
    assumed: tuple[str, ...] = ()


def shown_of(sheet: DataSheet) -> SheetTyped:
    """Return a sheet as the form shows it: each figure in her unit where that says it whole, else in ours.

    Solids stand in percent, as bottles print them.
    """
    low, high = sheet.apply_C or (None, None)
    guessed = {sentence.split(" ", 1)[0] for sentence in sheet.assumed}
    values: dict[str, float | None] = {
        line.field: getattr(sheet, line.field, None) for line in LINES if line.field not in guessed
    }
    values |= {"apply_low": low, "apply_high": high, "dry_um": None if "wet_um" in values else sheet.dry_um}
    figures = {}
    for line in LINES:
        value = values.get(line.field)
        unit = _unit_for(line, value)
        figures[line.field] = ("" if value is None else _shown(line.in_unit(value, unit)), unit)
    return SheetTyped(
        title=sheet.title,
        kind=sheet.kind,
        sheen=sheet.sheen,
        matting_agent=sheet.matting_agent,
        figures=figures,
        removable_with=sheet.removable_with,
        cautions="\n".join(sheet.cautions),
    )


def _unit_for(line: FigureLine, value: float | None) -> str:
    if line.field == "volume_solids":
        return PERCENT_AS_SHARE.name
    hers = _her_unit(line)
    if hers == line.ours or value is None:
        return hers
    read = line.in_ours(float(f"{line.in_unit(value, hers):.{_DIGITS}g}"), hers)
    return hers if f"{read:.6g}" == f"{value:.6g}" else line.ours


def _her_unit(line: FigureLine) -> str:
    units = chosen()
    if MIL in line.others and units.thickness is Thickness.MILS:
        return MIL.name
    if FAHRENHEIT in line.others and units.degrees is Degrees.FAHRENHEIT:
        return FAHRENHEIT.name
    return line.ours


def _shown(value: float) -> str:
    return chosen().plain(float(f"{value:.{_DIGITS}g}"))


def read_sheet(typed: SheetTyped, name: str) -> SheetRead:
    """Return what the form comes to as the sheet `name`."""
    fields: dict[str, object] = {"name": name, "title": " ".join(typed.title.split()), "kind": typed.kind.value}
    faults: dict[str, str] = {}
    if not fields["title"]:
        faults["title"] = say("The title is empty: type what the bottle is called.")
    if typed.sheen is not None:
        fields["sheen"] = typed.sheen.value
    fields["matting_agent"] = typed.matting_agent
    numbers = _numbers(typed, faults)
    low, high = numbers.pop("apply_low", None), numbers.pop("apply_high", None)
    if (low is None) != (high is None):
        at = "apply_low" if low is None else "apply_high"
        faults.setdefault(at, say("Give both temperatures to lay it at, or neither."))
    elif low is not None:
        fields["apply_C"] = [low, high]
    fields |= numbers
    fields["removable_with"] = " ".join(typed.removable_with.split())
    fields["cautions"] = [line.strip() for line in typed.cautions.splitlines() if line.strip()]
    report = check_fields(fields, _ORIGIN)
    told = _at_lines(report.faults, {line for line in faults if line != "title"})
    return SheetRead(
        fields=fields,
        faults={**({} if report.sheet is not None else told), **faults},
        doubts=told if report.sheet is not None and not faults else {},
        assumed=report.assumed,
    )


def _numbers(typed: SheetTyped, faults: dict[str, str]) -> dict[str, float]:
    numbers: dict[str, float] = {}
    for line in LINES:
        text, unit = typed.figures.get(line.field, ("", line.ours))
        if not text.strip():
            continue
        try:
            numbers[line.field] = float(f"{line.in_ours(float(text.strip().replace(',', '.')), unit):.6g}")
        except (ValueError, ZeroDivisionError):
            faults[line.field] = say(
                "“{typed}” is no number that can stand here: type one, such as 30.", typed=text.strip()
            )
    return numbers


def _at_lines(faults: Collection[str], ill_typed: Collection[str]) -> dict[str, str]:
    """Return each fault at its line; a field that was typed but could not be read is not called missing too."""
    told: dict[str, str] = {}
    words = {line.field: say(line.words) for line in LINES}
    for fault in faults:
        sentence = fault.removeprefix(f"{_ORIGIN}: ")
        first, _, rest = sentence.partition(" ")
        line = _LINE_OF.get(first, first)
        if line in ill_typed:
            continue
        if line in words:
            told.setdefault(line, _in_words(f"{words[line]} {rest}", words))
        else:
            told.setdefault("touch_dry_min" if sentence.startswith("times") else "title", _in_words(sentence, words))
    return told


def _in_words(sentence: str, words: Mapping[str, str]) -> str:
    """Return `sentence` with the names of fields as the form has them."""
    for name, said in words.items():
        sentence = re.sub(rf"\b{name}\b", say("“{name}”", name=said), sentence)
    return f"{capital(sentence).rstrip('.')}."


def new_name(title: str, taken: Collection[str]) -> str:
    """Return a name for a new sheet that is not `taken`, made from its title."""
    plain = re.sub(r"[^a-z0-9]+", "-", title.casefold()).strip("-")[: _NAME_MOST - 4].strip("-") or "sheet"
    names = [plain, *(f"{plain}-{number}" for number in range(2, len(taken) + 3))]
    return next(name for name in names if name not in taken)
