"""Registering and editing a piece: from what she typed to a command, and from a piece to what the form shows."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date

from studiowatch.coats.stages import Orientation
from studiowatch.coats.support import SOAKED_SHARE, Support
from studiowatch.service.commands import AmendPiece, Paint, RegisterPiece
from studiowatch.service.product_views import SheetChoice
from studiowatch.service.snapshot import CoatView, PieceView
from studiowatch.studio.pieces import PANELS_MOST, Shape, face_m2
from studiowatch.ui.models.forms import FormError, number, optional_number

LEAST_SIDE_CM = 1.0
GREATEST_SIDE_CM = 500.0
LONGEST_TITLE = 120
LONGEST_NOTES = 4000
PAINT_UM = (5.0, 5000.0)
SUPPORTS = ("canvas", "panel", "paper on panel", "paper", "board", *(bare for bare in Support if SOAKED_SHARE[bare]))
SHAPES = {"Rectangle": Shape.RECTANGLE, "Round or oval": Shape.ROUND, "Set of panels": Shape.PANELS}
SIZE_NAMES = {
    Shape.RECTANGLE: ("Width, cm", "Height, cm"),
    Shape.ROUND: ("Across, cm", "Top to bottom, cm"),
    Shape.PANELS: ("Width of each, cm", "Height of each, cm"),
}
NO_PAINT = "No paint layer recorded"

NO_COATS = "No coats to come are listed. Add them now, or press again to register without."
_ISOLATION = "isolation"
_SHEENS = ("gloss", "satin", "matt")  # the order in which coats are laid: common practice, no source


@dataclass(frozen=True, slots=True, kw_only=True)
class PieceTyped:
    """What stands in the form, as typed.

    Attributes
    ----------
    paint : str or None
        Name of the sheet of the paint layer, or None.
    paint_um : str
        How thick it was laid, µm, or "" for not known.
    painted_ms : int
        When the last of it was laid, UTC ms.
    """

    title: str = ""
    shape: Shape = Shape.RECTANGLE
    width: str = ""
    height: str = ""
    panels: int = 2
    support: str = "canvas"
    orientation: Orientation = Orientation.FACE_UP
    paint: str | None = None
    paint_um: str = ""
    painted_ms: int = 0
    due: date | None = None
    photo: str = ""
    notes: str = ""
    sheets: tuple[str, ...] = ()


def in_trade_order(sheets: Iterable[SheetChoice]) -> tuple[SheetChoice, ...]:
    """Return `sheets` as they come on a piece: paint, isolation, gloss, satin, matt."""
    return tuple(sorted(sheets, key=_trade_place))


def clear_coats(sheets: Iterable[SheetChoice]) -> tuple[SheetChoice, ...]:
    """Return the sheets of what goes on over the paint, as they come."""
    return tuple(sheet for sheet in in_trade_order(sheets) if sheet.clear_film)


def paints(sheets: Iterable[SheetChoice]) -> tuple[SheetChoice, ...]:
    """Return the sheets of paint."""
    return tuple(sheet for sheet in sheets if not sheet.clear_film)


def _trade_place(sheet: SheetChoice) -> int:
    if not sheet.clear_film:
        return -2
    if _ISOLATION in f"{sheet.name} {sheet.title}".lower():
        return -1
    return _SHEENS.index(sheet.sheen) if sheet.sheen in _SHEENS else len(_SHEENS)


def shown_of(piece: PieceView, now_ms: int) -> PieceTyped:
    """Return what the form shows of a piece."""
    paint = _paint_of(piece)
    return PieceTyped(
        title=piece.title,
        shape=piece.shape,
        width=f"{piece.width_cm:g}",
        height=f"{piece.height_cm:g}",
        panels=max(piece.panels, 2),
        support=piece.support,
        orientation=piece.orientation,
        paint=None if paint is None else paint.sheet,
        paint_um="" if paint is None else _measured_um(paint),
        painted_ms=now_ms if paint is None or paint.laid_ms is None else paint.laid_ms,
        due=piece.due,
        photo=piece.photo,
        notes=piece.notes,
        sheets=tuple(coat.sheet for coat in piece.coats if coat.laid_ms is None),
    )


def _paint_of(piece: PieceView) -> CoatView | None:
    lowest = piece.coats[0] if piece.coats else None
    return lowest if lowest is not None and not lowest.clear_film and lowest.laid_ms is not None else None


def _measured_um(paint: CoatView) -> str:
    kept = paint.recorded
    is_known = kept is not None and (kept.wet_um, kept.volume_mL, kept.grams) != (None, None, None)
    return f"{paint.wet_um:.4g}" if is_known else ""


def read_registration(typed: PieceTyped, now_ms: int) -> RegisterPiece:
    """Return the command to register a piece.

    Raises
    ------
    FormError
        If a field cannot be taken.
    """
    return RegisterPiece(
        title=_title(typed.title),
        width_cm=_side(typed, "width"),
        height_cm=_side(typed, "height"),
        due=typed.due,
        support=typed.support.strip() or "canvas",
        orientation=typed.orientation,
        shape=typed.shape,
        panels=_panels(typed),
        photo=typed.photo,
        notes=_notes(typed.notes),
        paint=_paint(typed, now_ms),
        sheets=typed.sheets,
    )


def read_amendment(typed: PieceTyped, shown: PieceTyped, piece_key: str, now_ms: int) -> AmendPiece:
    """Return the command to amend a piece: paint and coats to come only where they are not as they were shown.

    Raises
    ------
    FormError
        If a field cannot be taken.
    """
    painted = (typed.paint, typed.paint_um.strip(), typed.painted_ms)
    as_before = painted == (shown.paint, shown.paint_um, shown.painted_ms)
    if typed.paint is None and shown.paint is not None:
        raise FormError("paint", "The paint layer is recorded as laid: take it back under Corrections if it was not.")
    return AmendPiece(
        piece_key=piece_key,
        title=_title(typed.title),
        width_cm=_side(typed, "width"),
        height_cm=_side(typed, "height"),
        due=typed.due,
        no_due=typed.due is None,
        support=typed.support.strip() or "canvas",
        orientation=typed.orientation,
        shape=typed.shape,
        panels=_panels(typed),
        photo=typed.photo,
        notes=_notes(typed.notes),
        paint=None if as_before else _paint(typed, now_ms),
        sheets=None if typed.sheets == shown.sheets else typed.sheets,
    )


def area_words(typed: PieceTyped) -> str:
    """Return the area that is to be coated, or "" while the size cannot be read."""
    try:
        area_m2 = face_m2(typed.shape, _side(typed, "width"), _side(typed, "height")) * _panels(typed)
    except FormError:
        return ""
    return f"{area_m2:.3g} m² to be coated"


def is_changed(typed: PieceTyped, shown: PieceTyped) -> bool:
    """Return whether something would be lost if the form were dropped; the hour of a paint that is not there is not."""
    if typed.paint is None:
        typed, shown = replace(typed, painted_ms=0), replace(shown, painted_ms=0)
    return typed != shown


def _title(text: str) -> str:
    title = " ".join(text.split())
    if not title:
        raise FormError("title", "The title is empty: type what you call the piece, such as Kiln Light.")
    if len(title) > LONGEST_TITLE:
        raise FormError("title", f"The title has {len(title)} letters: shorten it to {LONGEST_TITLE} or fewer.")
    return title


def _side(typed: PieceTyped, field: str) -> float:
    text, example = (typed.width, "60") if field == "width" else (typed.height, "90")
    named: Sequence[str] = SIZE_NAMES[typed.shape]
    name = (
        f"“{named[field == 'height'].removesuffix(', cm')}”" if typed.shape is not Shape.RECTANGLE else f"The {field}"
    )
    return number(text, field=field, name=name, unit="cm", low=LEAST_SIDE_CM, high=GREATEST_SIDE_CM, example=example)


def _panels(typed: PieceTyped) -> int:
    if typed.shape is not Shape.PANELS:
        return 1
    if not 1 <= typed.panels <= PANELS_MOST:
        raise FormError("panels", f"The set has {typed.panels} panels: choose 1 to {PANELS_MOST}.")
    return typed.panels


def _notes(text: str) -> str:
    notes = text.strip()
    if len(notes) > LONGEST_NOTES:
        raise FormError("notes", f"The notes have {len(notes)} letters: shorten them to {LONGEST_NOTES} or fewer.")
    return notes


def _paint(typed: PieceTyped, now_ms: int) -> Paint | None:
    if typed.paint is None:
        return None
    low, high = PAINT_UM
    wet_um = optional_number(
        typed.paint_um, field="paint_um", name="The paint's thickness", unit="µm", low=low, high=high, example="1500"
    )
    if typed.painted_ms > now_ms:
        raise FormError("painted", "The paint was finished in the future: choose a time that has passed.")
    return Paint(sheet=typed.paint, finished_ms=typed.painted_ms, wet_um=wet_um)
