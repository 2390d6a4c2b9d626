"""Which language is spoken, for what has to name it."""

from __future__ import annotations

from studiowatch.speech.words import say

_SMALL_BEHIND_A_COLON = {"en"}


def language_tag() -> str:
    """Return the tag of the language that she is spoken to in (BCP 47), "en"."""
    return say("en", about="the tag of this language")  # not said


def behind_a_colon(sentence: str) -> str:
    """Return a whole sentence as it begins behind a colon: small in English, as it is elsewhere."""
    small = language_tag() in _SMALL_BEHIND_A_COLON
    return f"{sentence[:1].lower()}{sentence[1:]}" if small else sentence
