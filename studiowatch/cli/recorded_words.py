"""What the command line and the records name by a word of their own, as she reads it."""

from __future__ import annotations

from enum import StrEnum

from studiowatch.coats.stages import Orientation, Surface
from studiowatch.coats.support import Support
from studiowatch.room.air_movement import Movement
from studiowatch.speech.words import mark, say
from studiowatch.studio.pieces import Finding, Outcome

WORDS: dict[StrEnum, str] = {
    Orientation.FACE_UP: mark("face-up"),
    Orientation.FACE_DOWN: mark("face-down"),
    Orientation.VERTICAL: mark("vertical"),
    Finding.TACKY: mark("tacky"),
    Finding.DRY: mark("dry"),
    Finding.MILKY: mark("still milky"),
    Finding.CLEAR: mark("clear"),
    Outcome.MILKY_ALL_OVER: mark("milky all over"),
    Outcome.MILKY_IN_PATCHES: mark("milky in patches"),
    Outcome.DULL_IN_DARKS: mark("dull in darks"),
    Outcome.POWDERY: mark("powdery"),
    Outcome.SPECKS: mark("specks"),
    Surface.WET: mark("wet"),
}
"""From a word to its text; two enums may share a word."""

STRAIGHT_ON = {
    Support.PANEL: mark("straight on bare panel"),
    Support.CANVAS: mark("straight on raw canvas"),
    Support.PAPER: mark("straight on bare paper"),
}
AIR = {
    Movement.UNKNOWN: mark("air unknown"),
    Movement.STILL: mark("air still"),
    Movement.MOVING: mark("air moving"),
    Movement.FAN: mark("air fan"),
}


def told(word: Orientation | Finding | Outcome | Surface) -> str:
    """Return the text of a word."""
    return say(WORDS[word])
