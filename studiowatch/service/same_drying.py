"""Whether a changed piece or coat dries as it did before, so that its runs may stand."""

from __future__ import annotations

from dataclasses import replace

from studiowatch.coats.support import support_of
from studiowatch.studio.pieces import Coat, Piece


def dried_alike(before: Piece | None, piece: Piece) -> dict[str, Coat]:
    """Return the coats by key whose runs may stand after a change of their piece: none if its face is another."""
    if before is None or _face(before) != _face(piece):
        return {}
    return {coat.key: coat for coat in before.coats}


def _face(piece: Piece) -> tuple[object, ...]:
    return piece.area_m2, piece.side_m, piece.orientation, support_of(piece.support)


def dries_alike(before: Coat | None, after: Coat) -> bool:
    """Return whether a coat's run stands after a change: looks and outcomes do not change how it dried."""
    if before is None:
        return False
    return replace(before, looks=after.looks, outcome=after.outcome, seen_ms=after.seen_ms) == after
