"""Whether a coat may go on a piece now: the piece and the room in one verdict, with what to wait for."""

from __future__ import annotations

from dataclasses import replace

from studiowatch.speech.words import say
from studiowatch.studio.words import Level, Sentence


def lay_check(*, room: Sentence, piece: Sentence | None, untested: str = "") -> Sentence:
    """Return "Go", or what stands against it, the worse first and the other behind it.

    Parameters
    ----------
    room : Sentence
        Whether the room is fit, from `studiowatch.studio.sentence.room_check`.
    piece : Sentence or None
        Why the piece is not, from `studiowatch.studio.laying.not_yet`; None if it is.
    untested : str
        Label of the coat below that nobody has tested or looked at, or "".
    """
    waits = room.level > Level.CALM
    if piece is None:
        return room if waits else _go(room, untested)
    return piece.with_other(room) if waits else piece


def _go(room: Sentence, untested: str) -> Sentence:
    test = say("Test {label} at an edge first: nobody has touched it yet.", label=untested) if untested else ""
    return replace(room, headline=say("Go: good to lay a coat"), advice=test or room.advice)
