"""How a coat came out: the six answers, and what each looks like."""

from __future__ import annotations

from studiowatch.speech.words import mark, say
from studiowatch.studio.pieces import Outcome
from studiowatch.ui.models.seen_words import OUTCOME_WORDS, capital

HINTS = {
    Outcome.CLEAR: mark("dark colours as deep as before, all over"),
    Outcome.MILKY_ALL_OVER: mark("a white veil over the whole face"),
    Outcome.MILKY_IN_PATCHES: mark("white veils here and there"),
    Outcome.DULL_IN_DARKS: mark("dark colours greyed, no veil to be seen on the light ones"),
    Outcome.POWDERY: mark("a dusty bloom, or it crumbles under a nail"),
    Outcome.SPECKS: mark("dust, hair or bubbles dried in"),
}


def answer_words(outcome: Outcome) -> str:
    """Return the words on the button of an answer."""
    return capital(say(OUTCOME_WORDS[outcome]))
