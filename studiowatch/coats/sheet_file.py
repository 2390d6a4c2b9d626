"""Data sheets read from TOML, with every fault named at once."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping

from studiowatch.coats.data_sheet import DataSheet, Kind, Sheen
from studiowatch.coats.sheet_fields import Fields, Range
from studiowatch.speech.words import mark, say

DEFAULT_DRY_UM = 25.0  # µm dry, when a sheet names no thickness; ASTM D1640
DEFAULT_CLEAR_MIN = 60.0  # min from dry-to-touch to clear, when a sheet names none; common practice, no source
DEFAULT_CURE_DAYS = 14.0  # days, when a sheet names none; common practice, no source
DEFAULT_DENSITY_KG_M3 = 1030.0  # kg/m³ of a water-borne clear coat; from memory
DEFAULT_SOLVENTBORNE_DENSITY_KG_M3 = 900.0  # kg/m³ of a resin in white spirit; from memory
THICKNESS_TOLERANCE = 0.05  # stated wet and dry film may differ by this share: sheets round


class SheetFaults(ValueError):  # noqa: N818 - it carries several faults
    """A data sheet cannot be used. `faults` has one sentence for each thing to put right."""

    def __init__(self, faults: tuple[str, ...]) -> None:
        super().__init__("\n".join(faults))
        self.faults = faults


NUMBERS = {
    "volume_solids": Range(0.05, 1.0, mark("of the volume"), required=True),
    "density_kg_m3": Range(600.0, 2500.0, "kg/m³"),
    "wet_um": Range(5.0, 10_000.0, "µm"),
    "dry_um": Range(2.0, 10_000.0, "µm"),
    "touch_dry_min": Range(1.0, 2880.0, "min", required=True),
    "recoat_h": Range(0.1, 2000.0, "h", required=True),
    "clear_h": Range(0.05, 500.0, "h"),
    "cure_days": Range(0.1, 365.0, mark("days")),
    "mfft_C": Range(-20.0, 60.0, "°C"),
    "max_humidity_pct": Range(20.0, 100.0, "%"),
    "max_matting_coats": Range(0.0, 20.0, mark("coats"), whole=True),
    "flash_point_C": Range(-50.0, 300.0, "°C"),
}
APPLY_C = Range(-10.0, 60.0, "°C")
_OTHERS = ("name", "title", "removable_with", "kind", "sheen", "apply_C", "matting_agent", "cautions", "basis")
_QUOTED = 80  # characters of a line that are enough to find it
_MOST_SOLIDS = {
    Kind.WATERBORNE: 0.70,  # of the volume, below packing at 0.74: a coat above it would set as it is laid
    Kind.SOLVENTBORNE: 0.90,  # of the volume: a coat above it does not dry by its solvent; assumption
}


def read_sheet(text: str, origin: str) -> DataSheet:
    """Return the data sheet in `text` (TOML); `origin` names the file in faults.

    A field that may be left out takes the default of this module, and `assumed` says so. A table `basis` may hold
    where each number comes from, for people.

    Raises
    ------
    SheetFaults
        Lists every fault found, each as one sentence with origin, field, value, unit and what is allowed.
    """
    return sheet_of(parsed(text, origin), origin)


def parsed(text: str, origin: str) -> dict[str, object]:
    """Return the fields in `text` as they stand.

    Raises
    ------
    SheetFaults
        If it is not TOML: where, and what stands there.
    """
    try:
        return tomllib.loads(text.removeprefix("\ufeff"))
    except (ValueError, RecursionError) as error:  # beside its own, a number of thousands of digits, deep nesting
        raise SheetFaults(
            (
                say(
                    "{origin}: this is not a TOML file: {trouble}, in {line}; {mend}",
                    origin=origin,
                    trouble=error,
                    **_offending_line(text, str(error)),
                ),
            )
        ) from error


def _offending_line(text: str, error: str) -> dict[str, str]:
    """Return the line that the parser named, quoted, for people count lines badly, and how to mend it."""
    place = re.search(r"line (\d+)", error)
    lines = text.rstrip().splitlines() or [""]
    line = lines[min(int(place[1]), len(lines)) - 1 if place else -1].strip()
    comma = re.fullmatch(r"(\w+ *= *-?\d+),(\d+)", line)
    mend = say("mend that line and read it again")
    if comma:
        mend = say("write {line}", line=f"{comma[1]}.{comma[2]}")
    return {"line": repr(line[:_QUOTED]), "mend": mend}


def sheet_of(raw: Mapping[str, object], origin: str) -> DataSheet:
    """Return the data sheet of fields as they stand; see `read_sheet`."""
    fields = Fields(raw, origin)
    fields.refuse_others_than((*NUMBERS, *_OTHERS))
    kind = fields.choice("kind", Kind)
    if "kind" not in raw:
        fields.missing("kind", say("it must be one of {choices}", choices=", ".join(Kind)))
    words = {field: fields.text(field, required=field == "name") for field in ("name", "title", "removable_with")}
    sheen = fields.choice("sheen", Sheen)
    numbers = {field: fields.number(field, allowed) for field, allowed in NUMBERS.items()}
    apply_C = fields.interval("apply_C", APPLY_C)
    matting_agent = fields.flag("matting_agent")
    cautions = fields.sentences("cautions")
    fields.notes("basis", (*NUMBERS, *_OTHERS))
    _compare(fields, kind, numbers)
    if fields.faults or kind is None:
        raise SheetFaults(tuple(fields.faults))
    values, assumed = _completed(kind, {field: value for field, value in numbers.items() if value is not None})
    coats = values.pop("max_matting_coats", None)
    return DataSheet(
        name=words["name"],
        title=words["title"] or words["name"],
        kind=kind,
        sheen=sheen,
        apply_C=apply_C,
        matting_agent=matting_agent,
        max_matting_coats=None if coats is None else int(coats),
        removable_with=words["removable_with"],
        cautions=cautions,
        assumed=assumed,
        **values,
    )


def _compare(fields: Fields, kind: Kind | None, numbers: Mapping[str, float | None]) -> None:
    """Write down faults between fields: times out of order, thicknesses that contradict the solids."""
    solids = numbers["volume_solids"]
    most = _MOST_SOLIDS.get(kind, 1.0) if kind is not None else 1.0
    if kind is not None and solids is not None and solids > most:
        fields.fault(
            mark("{field} is {solids} of the volume; a {kind} coat is a liquid only up to {most}"),
            "volume_solids",
            solids=f"{solids:g}",
            kind=kind,
            most=f"{most:g}",
        )
    wet, dry = numbers["wet_um"], numbers["dry_um"]
    if solids and wet and dry and abs(wet * solids / dry - 1.0) > THICKNESS_TOLERANCE:
        fields.fault(
            mark("{field} is {dry} µm; {wet} µm wet at {solids} solids gives {gives} µm"),
            "dry_um",
            dry=f"{dry:g}",
            wet=f"{wet:g}",
            solids=f"{solids:g}",
            gives=f"{wet * solids:.3g}",
        )
    most_um = NUMBERS["wet_um"].high
    if solids and dry and not wet and dry / solids > most_um:
        fields.fault(
            mark("{field} is {dry} µm: at {solids} solids {wet} µm wet; at most {most} can be"),
            "dry_um",
            dry=f"{dry:g}",
            solids=f"{solids:g}",
            wet=f"{dry / solids:.0f}",
            most=f"{most_um:g}",
        )
    _compare_times(fields, numbers)


def _compare_times(fields: Fields, numbers: Mapping[str, float | None]) -> None:
    """Write down faults where a later stage is given an earlier time."""
    stages = (("touch_dry_min", 1.0 / 60.0), ("clear_h", 1.0), ("recoat_h", 1.0), ("cure_days", 24.0))
    before: tuple[str, float] | None = None
    for field, hours in stages:
        value = numbers[field]
        if value is None:
            continue
        if before and (value * hours < before[1] or (field == "clear_h" and value * hours == before[1])):
            fields.fault(
                mark("{field} is {hours} h; it must not be shorter than {before} ({least} h)"),
                field,
                hours=f"{value * hours:g}",
                before=before[0],
                least=f"{before[1]:g}",
            )
        before = (field, value * hours)


def _completed(kind: Kind, values: dict[str, float]) -> tuple[dict[str, float], tuple[str, ...]]:
    """Return the numbers with what can be derived or must be assumed, and a sentence for each that was assumed."""
    assumed: list[str] = []

    def assume(field: str, value: float, unit: str, why: str) -> None:
        if field not in values:
            values[field] = value
            assumed.append(
                say(
                    "{field} is not on the sheet: {value} {unit} is assumed ({reason})",
                    field=field,
                    value=f"{value:.4g}",
                    unit=say(unit),
                    reason=say(why),
                )
            )

    solids, touch_h = values["volume_solids"], values["touch_dry_min"] / 60.0
    if "wet_um" in values:
        values.setdefault("dry_um", values["wet_um"] * solids)
    assume("dry_um", DEFAULT_DRY_UM, "µm", mark("the film of ASTM D1640"))
    values.setdefault("wet_um", values["dry_um"] / solids)
    if kind is Kind.SOLVENTBORNE:
        assume("density_kg_m3", DEFAULT_SOLVENTBORNE_DENSITY_KG_M3, "kg/m³", mark("usual for a solvent-borne coat"))
    assume("density_kg_m3", DEFAULT_DENSITY_KG_M3, "kg/m³", mark("usual for a water-borne coat"))
    if kind is Kind.WATERBORNE:
        clear_h = min(touch_h + DEFAULT_CLEAR_MIN / 60.0, (touch_h + values["recoat_h"]) / 2.0)
        assume("clear_h", clear_h, "h", mark("common practice"))
    assume("cure_days", max(DEFAULT_CURE_DAYS, values["recoat_h"] / 24.0), mark("days"), mark("common practice"))
    return values, tuple(assumed)
