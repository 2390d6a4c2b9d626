"""The words for what a coat is and how it came out: as she reads them, not as they are stored."""

from __future__ import annotations

from studiowatch.coats.data_sheet import Kind, Sheen
from studiowatch.coats.stages import Stage, Surface
from studiowatch.speech.words import mark
from studiowatch.studio.pieces import Outcome

STAGE_WORDS = {
    Stage.SET_TO_TOUCH: mark("set to touch"),
    Stage.DUST_FREE: mark("dust-free"),
    Stage.TACK_FREE: mark("tack-free"),
    Stage.DRY_TO_TOUCH: mark("dry to touch"),
    Stage.CLEAR: mark("clear"),
    Stage.DRY_TO_RECOAT: mark("dry to recoat"),
    Stage.DRY_HARD: mark("dry hard"),
    Stage.DRY_THROUGH: mark("dry through"),
    Stage.CURED: mark("cured"),
}
SURFACE_WORDS = {Surface.WET: mark("wet"), Surface.TACKY: mark("tacky"), Surface.DRY: mark("dry")}
OUTCOME_WORDS = {
    Outcome.CLEAR: mark("clear"),
    Outcome.MILKY_ALL_OVER: mark("milky all over"),
    Outcome.MILKY_IN_PATCHES: mark("milky in patches"),
    Outcome.DULL_IN_DARKS: mark("dull in darks"),
    Outcome.POWDERY: mark("powdery"),
    Outcome.SPECKS: mark("specks"),
}
KIND_WORDS = {
    Kind.WATERBORNE: mark("waterborne"),
    Kind.SOLVENTBORNE: mark("solventborne"),
    Kind.PAINT: mark("paint"),
}
SHEEN_WORDS = {Sheen.GLOSS: mark("gloss"), Sheen.SATIN: mark("satin"), Sheen.MATT: mark("matt")}


def capital(words: str) -> str:
    """Return `words` with a large first letter."""
    return words[:1].upper() + words[1:]
