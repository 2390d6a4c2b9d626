"""Finding a piece by what she remembers of it: every word she types must be met somewhere."""

from __future__ import annotations

from collections.abc import Iterable

from studiowatch.service.piece_view import ArchivedView, PieceView
from studiowatch.service.snapshot import Snapshot


def is_met(asked: str, told: Iterable[str]) -> bool:
    """Return whether each word of `asked` stands in one of the texts `told`; large and small letters are the same."""
    texts = [text.casefold() for text in told]
    return all(any(word in text for text in texts) for word in asked.casefold().split())


def found_on_rack(snapshot: Snapshot, asked: str) -> frozenset[str]:
    """Return the keys of the pieces on the rack that meet `asked`."""
    return frozenset(piece.key for piece in snapshot.pieces if is_met(asked, _told_of(piece)))


def found_in_archive(snapshot: Snapshot, asked: str) -> tuple[ArchivedView, ...]:
    """Return the archived pieces that meet `asked`, by title."""
    return tuple(
        piece for piece in snapshot.archived if is_met(asked, (piece.title, piece.support, piece.notes, *piece.sheets))
    )


def _told_of(piece: PieceView) -> tuple[str, ...]:
    coats = (text for coat in piece.coats for text in (coat.label, coat.sheet))
    return (piece.title, piece.support, piece.notes, *coats)
