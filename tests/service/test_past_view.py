"""The time behind, named for the window."""

from __future__ import annotations

import pytest

from studiowatch.service.past import past_view
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.store.past import Past, PastCoat, PastPiece

LEFT_MS = 1_795_000_000_000
LAID = PastCoat(key="c1", sheet="gloss-waterborne", laid_ms=LEFT_MS - 86_400_000, outcome=None)
PLANNED = PastCoat(key="c2", sheet="matt-waterborne", laid_ms=None, outcome=None)


@pytest.mark.parametrize("coats", [(), (PLANNED,)], ids=["no coat", "planned only"])
def test_that_a_piece_that_left_before_any_coat_was_laid_leaves_the_others_their_lanes(
    coats: tuple[PastCoat, ...],
) -> None:
    bare = PastPiece(key="p1", title="Planned", left_ms=LEFT_MS, coats=coats)
    laid = PastPiece(key="p2", title="Kiln Light", left_ms=LEFT_MS, coats=(LAID, PLANNED))
    (piece,) = past_view(Past(pieces=(bare, laid)), SheetShelf.open()).pieces
    assert piece.title == "Kiln Light"
    assert [(coat.key, coat.laid_ms, coat.end_ms) for coat in piece.coats] == [("c1", LAID.laid_ms, LEFT_MS)]
