"""All that can be said of a data sheet before a coat is laid by it: faults, doubts, and what must be assumed."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from math import sqrt

import numpy as np

from studiowatch.coats.anchoring import PLAUSIBLE_KAPPA, REFERENCE_AIR, REFERENCE_SIDE_M, Anchor, anchor
from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.film import advance, lay
from studiowatch.coats.paint import PaintProduct
from studiowatch.coats.sheet_fields import numbers_in
from studiowatch.coats.sheet_file import APPLY_C, NUMBERS, SheetFaults, parsed, sheet_of
from studiowatch.coats.sheet_units import slips
from studiowatch.coats.stages import Stage
from studiowatch.speech.words import mark, say

_TIED_TO_TOUCH_DRY = ("kind", "volume_solids", "wet_um", "dry_um", "touch_dry_min")  # all that kappa depends on
_LONG_S = 30 * 86400.0  # s, longer than any film here takes to be touch-dry
_WET_UM = (NUMBERS["wet_um"].low, NUMBERS["wet_um"].high)
_HALVINGS = 16  # of the logarithm of a factor of 2000: a film to 0.02 %
_ALLOWED = {**NUMBERS, "apply_C": APPLY_C}
_UNITS = {field: allowed.unit for field, allowed in _ALLOWED.items()}

_NO_APPLY = mark("no temperature to lay it at is checked")
_UNNAMED = {
    Kind.WATERBORNE: {
        "mfft_C": mark("no film of this coat will be called too cold to form"),
        "apply_C": _NO_APPLY,
        "max_humidity_pct": mark("the general limit for damp air is used"),
    },
    Kind.SOLVENTBORNE: {
        "flash_point_C": mark("take its vapour to catch fire in any room: ventilate, no flame, no spark"),
        "apply_C": _NO_APPLY,
    },
    Kind.PAINT: {},
}


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetReport:
    """What was found in one sheet.

    Attributes
    ----------
    sheet : DataSheet or None
        The sheet, if it can be used: the doubtful one too.
    kappa : float or None
        Vapour transfer that fits its times to its thickness, over that of a plate of water; None where it has none.
    faults : tuple of str
        One sentence for each thing to put right or to look at again.
    assumed : tuple of str
        One sentence for each thing that the sheet does not name.
    """

    sheet: DataSheet | None
    kappa: float | None
    faults: tuple[str, ...]
    assumed: tuple[str, ...]


def check_sheet(text: str, origin: str) -> SheetReport:
    """Return all that is wrong with the sheet in `text` (TOML), and what it leaves open.

    `origin` names the file in faults.
    """
    try:
        raw = parsed(text, origin)
    except SheetFaults as fault:
        return SheetReport(sheet=None, kappa=None, faults=fault.faults, assumed=())
    return check_fields(raw, origin)


def check_fields(raw: Mapping[str, object], origin: str) -> SheetReport:
    """Return what `check_sheet` does of a sheet whose fields are given as they would stand in its file."""
    faults: list[str] = []
    sheet = None
    try:
        sheet = sheet_of(raw, origin)
    except SheetFaults as fault:
        faults.extend(fault.faults)
    faults.extend(_slips(raw, origin))
    tied = _tied(sheet or _film_of(raw, origin))
    if tied is not None and not tied.agrees:
        faults.append(f"{origin}: {_disagreement(tied, raw)}")
    return SheetReport(
        sheet=sheet,
        kappa=None if tied is None else tied.kappa,
        faults=tuple(faults),
        assumed=() if sheet is None else (*sheet.assumed, *_unnamed(sheet)),
    )


def _tied(film: DataSheet | None) -> Anchor | None:
    """Return a coat tied to its times, or None for paint, which has no kappa."""
    return None if film is None or film.kind is Kind.PAINT else anchor(film)


def _slips(raw: Mapping[str, object], origin: str) -> Iterator[str]:
    """Yield a sentence for each number that is allowed but looks like one in another unit."""
    given = {field: numbers_in(raw[field]) for field in _ALLOWED if field in raw}
    allowed = {
        field: numbers
        for field, numbers in given.items()
        if numbers and all(_ALLOWED[field].low <= number <= _ALLOWED[field].high for number in numbers)
    }
    for trouble in slips(allowed, _UNITS, paint=raw.get("kind") == Kind.PAINT):
        yield f"{origin}: {trouble}"


def _film_of(raw: Mapping[str, object], origin: str) -> DataSheet | None:
    """Return a stand-in for a sheet with faults, if what its film and its touch-dry time need is without them."""
    film = {field: raw[field] for field in _TIED_TO_TOUCH_DRY if field in raw}
    if not {"wet_um", "dry_um"} & set(film):
        return None  # a film may be there under a name that was refused
    rest = {"name": "film", "recoat_h": NUMBERS["recoat_h"].high, "cure_days": NUMBERS["cure_days"].high}
    try:
        return sheet_of({**film, **rest}, origin)
    except SheetFaults:
        return None  # they have been told


def _unnamed(sheet: DataSheet) -> Iterator[str]:
    for field, outcome in _UNNAMED[sheet.kind].items():
        if getattr(sheet, field) is None:
            yield say("{field} is not on the sheet: {outcome}", field=field, outcome=say(outcome))


def _disagreement(tied: Anchor, raw: Mapping[str, object]) -> str:
    """Return what came out, and what would mend it."""
    sheet = tied.sheet
    low, high = PLAUSIBLE_KAPPA
    disagreement = say(
        "times and thickness disagree: touch_dry_min {minutes} min for {film} µm wet at {solids} % solids gives kappa "
        "{kappa}, which must be from {low} to {high}",
        minutes=f"{sheet.touch_dry_min:g}",
        film=f"{sheet.wet_um:.3g}",
        solids=f"{100.0 * sheet.volume_solids:.0f}",
        kappa=f"{tied.kappa:.2g}",
        low=f"{low:g}",
        high=f"{high:g}",
    )
    return f"{disagreement}; {_mend(sheet, raw)}"


def _mend(sheet: DataSheet, raw: Mapping[str, object]) -> str:
    """Return what time would fit the film, what film would fit the time, and the likeliest slip."""
    low, high = PLAUSIBLE_KAPPA
    quick_min, slow_min = _touch_dry_min(sheet, high, sheet.wet_um), _touch_dry_min(sheet, low, sheet.wet_um)
    thin_um, thick_um = _wet_um(sheet, low), _wet_um(sheet, high)
    fits = say(
        "this film would take {quick} to {slow} min, and this time would fit {thin} to {thick} µm wet",
        quick=f"{quick_min:.0f}",
        slow=f"{slow_min:.0f}",
        thin=f"{thin_um:.0f}",
        thick=f"{thick_um:.0f}",
    )
    is_wet, is_dry = "wet_um" in raw, "dry_um" in raw
    mend = say("look at both on the product's sheet again")
    if not (is_wet or is_dry):
        mend = say(
            "the sheet names no film and {film} µm dry was assumed, so name wet_um or dry_um", film=f"{sheet.dry_um:g}"
        )
    elif is_wet and not is_dry and thin_um <= sheet.wet_um / sheet.volume_solids <= thick_um:
        mend = say("if {film} µm is the dry film, write it as dry_um", film=f"{sheet.wet_um:g}")
    elif is_dry and not is_wet and thin_um <= sheet.dry_um <= thick_um:
        mend = say("if {film} µm is the wet film, write it as wet_um", film=f"{sheet.dry_um:g}")
    return f"{fits}: {mend}"


def _touch_dry_min(sheet: DataSheet, kappa: float, wet_um: float) -> float:
    """Return how long `wet_um` of this product would take at the sheet's own conditions if it had this `kappa`, min."""
    tied = anchor(sheet)
    if isinstance(tied.product, PaintProduct):
        raise TypeError(f"{sheet.name} has no kappa")  # not said
    supposed = replace(tied, product=replace(tied.product, kappa=np.full(1, kappa)))
    film = lay(sheet, supposed, wet_um=wet_um, side_m=REFERENCE_SIDE_M)
    film, _ = advance(film, REFERENCE_AIR, _LONG_S)
    touch_dry_s = film.reached_s(Stage.DRY_TO_TOUCH)
    return (_LONG_S if touch_dry_s is None else touch_dry_s) / 60.0


def _wet_um(sheet: DataSheet, kappa: float) -> float:
    """Return the film that would be touch-dry at the sheet's time if it had this `kappa`, µm."""
    low, high = _WET_UM
    for _ in range(_HALVINGS):
        middle = sqrt(low * high)
        if _touch_dry_min(sheet, kappa, middle) < sheet.touch_dry_min:
            low = middle
        else:
            high = middle
    return sqrt(low * high)
