"""What a piece is painted on, in words: the supports that are offered, and her own."""

from __future__ import annotations

from studiowatch.speech.words import mark, say

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
