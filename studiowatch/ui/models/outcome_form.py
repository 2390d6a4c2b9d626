"""How a coat came out: the six answers, and what each looks like."""

from __future__ import annotations

from studiowatch.studio.pieces import Outcome

HINTS = {
    Outcome.CLEAR: "dark colours as deep as before, all over",
    Outcome.MILKY_ALL_OVER: "a white veil over the whole face",
    Outcome.MILKY_IN_PATCHES: "white veils here and there",
    Outcome.DULL_IN_DARKS: "dark colours greyed, no veil to be seen on the light ones",
    Outcome.POWDERY: "a dusty bloom, or it crumbles under a nail",
    Outcome.SPECKS: "dust, hair or bubbles dried in",
}


def answer_words(outcome: Outcome) -> str:
    """Return the words on the button of an answer."""
    return f"{outcome.value[:1].upper()}{outcome.value[1:]}"
