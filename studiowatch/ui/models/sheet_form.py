"""A data sheet as a form: the figures in the units that bottles print, and each fault at its line."""

from __future__ import annotations

import re
from collections.abc import Collection, Mapping
from dataclasses import dataclass, field

from studiowatch.coats.data_sheet import DataSheet, Kind, Sheen
from studiowatch.coats.sheet_check import check_fields
from studiowatch.coats.sheet_units import FAHRENHEIT, MIL, PERCENT_AS_SHARE
from studiowatch.speech.units import Degrees, Thickness, chosen
from studiowatch.speech.words import mark, say
from studiowatch.ui.models.seen_words import capital
from studiowatch.ui.models.sheet_figures import LINES, FigureLine

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
_ORIGIN = "sheet"
_NAME_MOST = 60  # characters of a name, which is a file's too
_DIGITS = 4  # shown of a figure that was converted into her unit
_KEPT_DIGITS = 6  # that a figure is kept with, and shown in ours: what stays as it is shown is kept as it was
_LINE_OF = {"apply_C": "apply_low"}  # a fault of the pair stands at its first line


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
        figures[line.field] = ("" if value is None else _shown(line, value, unit), unit)
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
    read = line.in_ours(_rounded(line.in_unit(value, hers), _DIGITS), hers)
    return hers if _rounded(read, _KEPT_DIGITS) == _rounded(value, _KEPT_DIGITS) else line.ours


def _her_unit(line: FigureLine) -> str:
    units = chosen()
    if MIL in line.others and units.thickness is Thickness.MILS:
        return MIL.name
    if FAHRENHEIT in line.others and units.degrees is Degrees.FAHRENHEIT:
        return FAHRENHEIT.name
    return line.ours


def _shown(line: FigureLine, value: float, unit: str) -> str:
    is_converted = unit == _her_unit(line) and unit != line.ours
    digits = _DIGITS if is_converted else _KEPT_DIGITS
    return chosen().plain(_rounded(line.in_unit(value, unit), digits))


def _rounded(value: float, digits: int) -> float:
    return float(f"{value:.{digits}g}")


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
            numbers[line.field] = _rounded(line.in_ours(float(text.strip().replace(",", ".")), unit), _KEPT_DIGITS)
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
