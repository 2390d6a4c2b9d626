"""The archive: what is said of a piece that is off the rack."""

from __future__ import annotations

from datetime import tzinfo

from studiowatch.service.snapshot import ArchivedView
from studiowatch.ui.models.times import day_words, local

NONE_FOUND = "No archived piece has all these words in its title, support, notes or data sheets."
NONE_THERE = "Nothing was taken off the rack yet. What you take off it (in its menu) comes here with all its records."


def archive_line(piece: ArchivedView, zone: tzinfo | None = None) -> str:
    """Return a piece in one line of the list."""
    if piece.last_ms is None:
        return f"{piece.title} · no coat was laid"
    day = local(piece.last_ms, zone).date()
    return f"{piece.title} · last coat {day_words(day)} {day.year}"


def archive_words(piece: ArchivedView, zone: tzinfo | None = None) -> tuple[str, ...]:
    """Return what is known of a piece, line by line."""
    lines = [f"{piece.width_cm:g} × {piece.height_cm:g} cm, {piece.support}"]
    if piece.last_ms is not None:
        day = local(piece.last_ms, zone).date()
        lines.append(f"Last coat laid {day_words(day)} {day.year}")
    if piece.due is not None:
        lines.append(f"Was due {day_words(piece.due)} {piece.due.year}")
    if piece.sheets:
        lines.append(f"Data sheets: {', '.join(piece.sheets)}")
    if piece.notes:
        lines.append(piece.notes)
    return tuple(lines)
