"""Stages of a drying coat, in the words of ASTM D1640 and ISO 9117."""

from __future__ import annotations

from enum import StrEnum

from studiowatch.speech.words import mark, say


class Stage(StrEnum):
    """What a coat has reached. The order is the usual one; the sheet, or a damp room, may swap those after CLEAR.

    DRY_HARD is the stage at which the strongest pressure of thumb and finger leaves no mark (ASTM D1640). Here nine
    tenths of what makes the film soft must have left it, and at DRY_THROUGH nineteen twentieths: assumption.
    """

    SET_TO_TOUCH = "set_to_touch"
    DUST_FREE = "dust_free"
    TACK_FREE = "tack_free"
    DRY_TO_TOUCH = "dry_to_touch"
    CLEAR = "clear"
    DRY_TO_RECOAT = "dry_to_recoat"
    DRY_HARD = "dry_hard"
    DRY_THROUGH = "dry_through"
    CURED = "cured"

    @property
    def word(self) -> str:
        """What a coat is then, in her language."""
        return say(_STAGES[self])


_STAGES = {
    Stage.SET_TO_TOUCH: mark("set to touch"),
    Stage.DUST_FREE: mark("dust free"),
    Stage.TACK_FREE: mark("tack free"),
    Stage.DRY_TO_TOUCH: mark("dry to touch"),
    Stage.CLEAR: mark("clear"),
    Stage.DRY_TO_RECOAT: mark("dry to recoat"),
    Stage.DRY_HARD: mark("dry hard"),
    Stage.DRY_THROUGH: mark("dry through"),
    Stage.CURED: mark("cured"),
}


class Surface(StrEnum):
    """What a fingertip, and the picture of the film, would show."""

    WET = "wet"
    TACKY = "tacky"
    DRY = "dry"

    @property
    def word(self) -> str:
        """How it feels, in her language."""
        return say(_SURFACES[self])


_SURFACES = {Surface.WET: mark("wet"), Surface.TACKY: mark("tacky"), Surface.DRY: mark("dry")}


class Orientation(StrEnum):
    """How the piece lies while the coat dries."""

    FACE_UP = "face-up"
    FACE_DOWN = "face-down"
    VERTICAL = "vertical"

    @property
    def word(self) -> str:
        """How it lies, in her language."""
        return say(_ORIENTATIONS[self])


_ORIENTATIONS = {
    Orientation.FACE_UP: mark("face-up"),
    Orientation.FACE_DOWN: mark("face-down"),
    Orientation.VERTICAL: mark("vertical"),
}
