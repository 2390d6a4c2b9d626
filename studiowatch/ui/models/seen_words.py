"""The words for what a coat is, how it came out and what it lies on: as she reads them, not as they are stored."""

from __future__ import annotations

from studiowatch.coats.data_sheet import Kind, Sheen
from studiowatch.coats.stages import Stage, Surface
from studiowatch.speech.words import mark, say
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
SUPPORTS = (
    mark("canvas"),
    mark("panel"),
    mark("paper on panel"),
    mark("paper"),
    "board",
    mark("bare panel"),
    mark("raw canvas"),
    mark("bare paper"),
)
"""Supports by the names they are stored under; any other name is her own."""


def support_words(support: str) -> str:
    """Return a support as she reads it: one of `SUPPORTS` in her language, her own words as they are."""
    if support == "board":
        return say("board", about="support")
    return say(support) if support in SUPPORTS else support


def support_named(words: str) -> str:
    """Return the name under which a support is stored that she chose or typed."""
    typed = words.strip()
    return next((support for support in SUPPORTS if typed == support_words(support)), typed)


def capital(words: str) -> str:
    """Return `words` with a large first letter."""
    return words[:1].upper() + words[1:]
