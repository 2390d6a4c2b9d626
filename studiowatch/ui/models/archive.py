"""The archive: what is said of a piece that is off the rack."""

from __future__ import annotations

from datetime import tzinfo

from studiowatch.service.piece_view import ArchivedView
from studiowatch.speech.dates import day_of_year
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio.supports import support_words
from studiowatch.ui.models.times import local

NONE_FOUND = mark("No archived piece has all these words in its title, support, notes or data sheets.")
NONE_THERE = mark(
    "Nothing was taken off the rack yet. What you take off it (in its menu) comes here with all its records."
)


def archive_line(piece: ArchivedView, zone: tzinfo | None = None) -> str:
    """Return a piece in one line of the list."""
    if piece.last_ms is None:
        return say("{title} · no coat was laid", title=piece.title)
    day = day_of_year(local(piece.last_ms, zone).date())
    return say("{title} · last coat {day}", title=piece.title, day=day)


def archive_words(piece: ArchivedView, zone: tzinfo | None = None) -> tuple[str, ...]:
    """Return what is known of a piece, line by line."""
    lines = [f"{chosen().size(piece.width_cm, piece.height_cm)}, {support_words(piece.support)}"]
    if piece.last_ms is not None:
        lines.append(say("Last coat laid {day}", day=day_of_year(local(piece.last_ms, zone).date())))
    if piece.due is not None:
        lines.append(say("Was due {day}", day=day_of_year(piece.due)))
    if piece.sheets:
        lines.append(say("Data sheets: {sheets}", sheets=", ".join(piece.sheets)))
    if piece.notes:
        lines.append(piece.notes)
    return tuple(lines)
