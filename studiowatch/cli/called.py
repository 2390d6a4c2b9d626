"""Which piece a call means by its title."""

from __future__ import annotations

from collections.abc import Sequence

from studiowatch.cli.answers import wrong
from studiowatch.speech.words import say
from studiowatch.studio.pieces import Piece


def called(title: str, pieces: Sequence[Piece], origin: str) -> Piece | None:
    """Return the piece that is called so, or None; of several the call is refused.

    Capitals count where they tell two apart, and a piece on the rack goes before those in the archive.
    """
    wanted = " ".join(title.split())
    found = [piece for piece in pieces if piece.title.casefold() == wanted.casefold()]
    found = [piece for piece in found if piece.title == wanted] or found
    found = [piece for piece in found if not piece.archived] or found
    if len(found) > 1:
        wrong(
            say(
                "{number} pieces in {origin} are called {given}; give all but one another title first.",
                number=len(found),
                origin=origin,
                given=repr(title),
            )
        )
    return found[0] if found else None
