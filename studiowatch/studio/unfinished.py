"""What makes a piece unfinished when its finishing record is made: a top coat that is wet, coats still to come."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.coats.data_sheet import DataSheet
from studiowatch.studio.modelled import Modelled
from studiowatch.studio.pieces import Coat, Finding, Piece
from studiowatch.studio.review_course import LONGEST_MS

SHEETLESS_MIN = 60.0  # min that a coat counts as wet where its sheet is missing; assumption


@dataclass(frozen=True, slots=True, kw_only=True)
class Unfinished:
    """Why a piece is not finished as of `as_of_ms`, UTC ms.

    Attributes
    ----------
    is_wet : bool
        Whether its topmost laid coat is still wet.
    to_come : int
        Coats that are planned and not laid.
    """

    as_of_ms: int
    is_wet: bool
    to_come: int


def wet_until_ms(laid_ms: int, sheet: DataSheet | None, modelled: Modelled | None) -> int:
    """Return until when a coat counts as wet, UTC ms.

    That is until it was set to touch by the model, or for as long as it was followed while it is not, and never less
    than the time to dry to touch of its sheet; by the sheet alone where there is no model.
    """
    sheet_ms = laid_ms + round((SHEETLESS_MIN if sheet is None else sheet.touch_dry_min) * 60_000)
    if modelled is None:
        return sheet_ms
    return max(sheet_ms, modelled.read_ms if modelled.set_ms is None else modelled.set_ms)


def unfinished(piece: Piece, sheet: DataSheet | None, modelled: Modelled | None, now_ms: int) -> Unfinished | None:
    """Return why a piece is not finished, or None if nothing says so. No coat is to come on one that left the rack.

    Parameters
    ----------
    sheet, modelled
        Of its topmost laid coat: its sheet, and what the model says of it; None where there is none.
    now_ms : int
        When the record is made, UTC ms.
    """
    laid = [coat for coat in piece.coats if coat.laid_ms is not None]
    to_come = 0 if piece.archived else len(piece.coats) - len(laid)
    wet_ms = _wet_as_of_ms(laid[-1], sheet, modelled, now_ms) if laid else None
    if wet_ms is None and not to_come:
        return None
    return Unfinished(as_of_ms=now_ms if wet_ms is None else wet_ms, is_wet=wet_ms is not None, to_come=to_come)


def _wet_as_of_ms(coat: Coat, sheet: DataSheet | None, modelled: Modelled | None, now_ms: int) -> int | None:
    """Return the time up to now, UTC ms, as of which a laid coat is known to be wet, or None if it no longer is."""
    seen_dry = coat.outcome is not None or any(look.finding is Finding.DRY for look in coat.looks)
    if coat.laid_ms is None or seen_dry:
        return None
    if now_ms < wet_until_ms(coat.laid_ms, sheet, modelled):
        return now_ms
    if modelled is None or modelled.set_ms is not None or now_ms >= coat.laid_ms + LONGEST_MS:
        return None
    return modelled.read_ms
