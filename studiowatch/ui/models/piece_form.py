"""Registering and editing a piece: from what she typed to a command, and from a piece to what the form shows."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from datetime import date

from studiowatch.coats.stages import Orientation
from studiowatch.service.commands import AmendPiece, Paint, RegisterPiece
from studiowatch.service.piece_orders import NOTES_MOST
from studiowatch.service.piece_view import CoatView, PieceView
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio import supports
from studiowatch.studio.pieces import PANELS_MOST, TITLE_MOST, Shape, SIDE_cm, face_m2
from studiowatch.studio.supports import support_named, support_words
from studiowatch.ui.models.forms import FormError
from studiowatch.ui.models.measures import FILMS_UM, LENGTHS_CM, film_unit, length_unit, measured, shown_in

LEAST_SIDE_CM, GREATEST_SIDE_CM = SIDE_cm
LONGEST_TITLE = TITLE_MOST
LONGEST_NOTES = NOTES_MOST
PAINT_UM = (5.0, 5000.0)
SUPPORTS = supports.SUPPORTS
SHAPES = {
    mark("Rectangle"): Shape.RECTANGLE,
    mark("Round or oval"): Shape.ROUND,
    mark("Set of panels"): Shape.PANELS,
}
SIZE_NAMES = {
    Shape.RECTANGLE: (mark("Width"), mark("Height")),
    Shape.ROUND: (mark("Across"), mark("Top to bottom")),
    Shape.PANELS: (mark("Width of each"), mark("Height of each")),
}
NO_PAINT = mark("No paint layer recorded")

NO_COATS = mark("No coats to come are listed. Add them now, or press again to register without.")
_SIDE_DIGITS = 5  # shown of a side in another unit than it is stored in: a tenth of a millimetre of a metre
_PAINT_DIGITS = 4


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
    kept_cm : tuple of float, or None
        The stored width and height behind what is shown, cm.
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
    kept_cm: tuple[float, float] | None = field(default=None, compare=False)


def size_names(shape: Shape) -> tuple[str, str]:
    """Return what the two sides of a shape are called, with their unit."""
    unit = chosen().length.value
    width, height = (f"{say(name)}, {unit}" for name in SIZE_NAMES[shape])
    return width, height


def paint_name() -> str:
    """Return what the thickness of the paint is called, with its unit."""
    return say("Laid how thick, {unit}", unit=chosen().thickness.value)


def shown_of(piece: PieceView, now_ms: int) -> PieceTyped:
    """Return what the form shows of a piece."""
    paint = _paint_of(piece)
    return PieceTyped(
        title=piece.title,
        shape=piece.shape,
        width=shown_in(piece.width_cm, length_unit(), _SIDE_DIGITS),
        height=shown_in(piece.height_cm, length_unit(), _SIDE_DIGITS),
        kept_cm=(piece.width_cm, piece.height_cm),
        panels=max(piece.panels, 2),
        support=support_words(piece.support),
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
    return shown_in(float(f"{paint.wet_um:.{_PAINT_DIGITS}g}"), film_unit(), _PAINT_DIGITS) if is_known else ""


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
        support=support_named(typed.support) or "canvas",
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
        raise FormError(
            "paint", say("The paint layer is recorded as laid: take it back under Corrections if it was not.")
        )
    return AmendPiece(
        piece_key=piece_key,
        title=_title(typed.title),
        width_cm=_kept_or_typed(typed, shown, "width"),
        height_cm=_kept_or_typed(typed, shown, "height"),
        due=typed.due,
        no_due=typed.due is None,
        support=support_named(typed.support) or "canvas",
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
    return say("{area} m² to be coated", area=chosen().plain(float(f"{area_m2:.3g}")))


def is_changed(typed: PieceTyped, shown: PieceTyped) -> bool:
    """Return whether something would be lost if the form were dropped; the hour of a paint that is not there is not."""
    if typed.paint is None:
        typed, shown = replace(typed, painted_ms=0), replace(shown, painted_ms=0)
    return typed != shown


def _title(text: str) -> str:
    title = " ".join(text.split())
    if not title:
        raise FormError("title", say("The title is empty: type what you call the piece, such as Kiln Light."))
    if len(title) > LONGEST_TITLE:
        raise FormError(
            "title",
            say("The title has {count} letters: shorten it to {most} or fewer.", count=len(title), most=LONGEST_TITLE),
        )
    return title


def _side(typed: PieceTyped, side: str) -> float:
    is_width = side == "width"
    text, example_cm = (typed.width, 60.0) if is_width else (typed.height, 90.0)
    if typed.shape is Shape.RECTANGLE:
        name = say("The width") if is_width else say("The height")
    else:
        name = say("“{name}”", name=say(SIZE_NAMES[typed.shape][0 if is_width else 1]))
    return measured(
        text,
        field=side,
        name=name,
        known=LENGTHS_CM,
        ours=length_unit(),
        low=LEAST_SIDE_CM,
        high=GREATEST_SIDE_CM,
        example=example_cm,
    )


def _kept_or_typed(typed: PieceTyped, shown: PieceTyped, side: str) -> float:
    """Return the stored side where it stands as it was shown, else what was typed, cm."""
    is_width = side == "width"
    as_shown = typed.width.strip() == shown.width if is_width else typed.height.strip() == shown.height
    if as_shown and shown.kept_cm is not None:
        return shown.kept_cm[0 if is_width else 1]
    return _side(typed, side)


def _panels(typed: PieceTyped) -> int:
    if typed.shape is not Shape.PANELS:
        return 1
    if not 1 <= typed.panels <= PANELS_MOST:
        raise FormError(
            "panels", say("The set has {count} panels: choose 1 to {most}.", count=typed.panels, most=PANELS_MOST)
        )
    return typed.panels


def _notes(text: str) -> str:
    notes = text.strip()
    if len(notes) > LONGEST_NOTES:
        raise FormError(
            "notes",
            say(
                "The notes have {count} letters: shorten them to {most} or fewer.", count=len(notes), most=LONGEST_NOTES
            ),
        )
    return notes


def _paint(typed: PieceTyped, now_ms: int) -> Paint | None:
    if typed.paint is None:
        return None
    if typed.painted_ms > now_ms:
        raise FormError("painted", say("The paint was finished in the future: choose a time that has passed."))
    return Paint(sheet=typed.paint, finished_ms=typed.painted_ms, wet_um=_paint_um(typed.paint_um))


def _paint_um(text: str) -> float | None:
    if not text.strip():
        return None
    low, high = PAINT_UM
    return measured(
        text,
        field="paint_um",
        name=say("The paint's thickness"),
        known=FILMS_UM,
        ours=film_unit(),
        low=low,
        high=high,
        example=1500.0,
    )
