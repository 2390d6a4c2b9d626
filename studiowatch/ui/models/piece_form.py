"""Registering a piece: from what she typed to a command."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date

from studiowatch.coats.stages import Orientation
from studiowatch.coats.support import SOAKED_SHARE, Support
from studiowatch.service.commands import RegisterPiece
from studiowatch.service.product_views import SheetChoice
from studiowatch.ui.models.forms import FormError, number

LEAST_SIDE_CM = 1.0
GREATEST_SIDE_CM = 500.0
LONGEST_TITLE = 120
SUPPORTS = ("canvas", "panel", "paper on panel", "paper", "board", *(bare for bare in Support if SOAKED_SHARE[bare]))

NO_COATS = "No coats to come are listed. Add them now, or press again to register without."
_ISOLATION = "isolation"
_SHEENS = ("gloss", "satin", "matt")  # the order in which coats are laid: common practice, no source


def in_trade_order(sheets: Iterable[SheetChoice]) -> tuple[SheetChoice, ...]:
    """Return `sheets` as they come on a piece: paint, isolation, gloss, satin, matt."""
    return tuple(sorted(sheets, key=_trade_place))


def _trade_place(sheet: SheetChoice) -> int:
    if not sheet.clear_film:
        return -2
    if _ISOLATION in f"{sheet.name} {sheet.title}".lower():
        return -1
    return _SHEENS.index(sheet.sheen) if sheet.sheen in _SHEENS else len(_SHEENS)


def read_piece(
    *,
    title: str,
    width: str,
    height: str,
    due: date | None,
    support: str,
    orientation: Orientation,
    sheets: tuple[str, ...],
) -> RegisterPiece:
    """Return the command to register a piece.

    Raises
    ------
    FormError
        If a field cannot be taken.
    """
    title = " ".join(title.split())
    if not title:
        raise FormError("title", "The title is empty: type what you call the piece, such as Kiln Light.")
    if len(title) > LONGEST_TITLE:
        raise FormError("title", f"The title has {len(title)} letters: shorten it to {LONGEST_TITLE} or fewer.")
    return RegisterPiece(
        title=title,
        width_cm=_side(width, "width", "The width", "60"),
        height_cm=_side(height, "height", "The height", "90"),
        due=due,
        support=support.strip() or "canvas",
        orientation=orientation,
        sheets=sheets,
    )


def _side(text: str, field: str, name: str, example: str) -> float:
    return number(text, field=field, name=name, unit="cm", low=LEAST_SIDE_CM, high=GREATEST_SIDE_CM, example=example)
