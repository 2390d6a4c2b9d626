"""Why a laid coat could not be watched."""

from __future__ import annotations

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.film import lay
from studiowatch.physics.ranges import OutOfRange
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.speech.words import say
from studiowatch.studio.amounts import wet_um_of
from studiowatch.studio.pieces import Coat, Piece

YEAR_MS = 365 * 86_400_000  # ms
OLDEST_MS = 10 * YEAR_MS  # ms, a coat laid before that is a slip of the date; assumption


def coat_fault(coat: Coat, piece: Piece, shelf: SheetShelf, now_ms: int | None = None) -> str:
    """Return why a laid coat could not be watched, one sentence, or ""; without `now_ms` it may be of any age."""
    if now_ms is not None and coat.laid_ms is not None and now_ms - coat.laid_ms > OLDEST_MS:
        return say("The coat was laid more than {years} years ago; check its date.", years=OLDEST_MS // YEAR_MS)
    sheet = shelf.get(coat.sheet)
    wet_um = wet_um_of(coat, area_m2=piece.area_m2, density_kg_m3=sheet.density_kg_m3, sheet_wet_um=sheet.wet_um)
    try:
        lay(sheet, anchor(sheet), wet_um=wet_um, side_m=piece.side_m, thinned_pct=coat.thinned_pct)
    except OutOfRange as fault:
        sentence = str(fault)
        return say("{fault}. Check the amount and the size.", fault=f"{sentence[:1].upper()}{sentence[1:]}")
    return ""
