"""Tones: what a colour means, before anyone picks the colour."""

from __future__ import annotations

from enum import StrEnum

from studiowatch.speech.words import mark
from studiowatch.studio.words import Level


class Tone(StrEnum):
    """The part a piece of text plays; the theme picks the colour."""

    INK = "ink"
    MUTED = "muted"
    LINK = "link"
    GOOD = "good"
    CAUTION = "caution"
    ACT = "act"


LEVEL_WORDS = {Level.ACT: mark("act now"), Level.CAUTION: mark("caution"), Level.CALM: mark("calm")}
LEVEL_TONES = {Level.ACT: Tone.ACT, Level.CAUTION: Tone.CAUTION, Level.CALM: Tone.INK}
