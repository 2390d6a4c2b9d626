"""Tones and shapes: what a colour or a mark means, before anyone picks the colour."""

from __future__ import annotations

from enum import StrEnum

from studiowatch.studio.words import Level


class Tone(StrEnum):
    """The part a piece of text plays; the theme picks the colour."""

    INK = "ink"
    MUTED = "muted"
    LINK = "link"
    GOOD = "good"
    CAUTION = "caution"
    ACT = "act"


class Shape(StrEnum):
    """The mark of a level, told apart without colour."""

    TRIANGLE = "triangle"
    DIAMOND = "diamond"
    CIRCLE = "circle"


SHAPES = {Level.ACT: Shape.TRIANGLE, Level.CAUTION: Shape.DIAMOND, Level.CALM: Shape.CIRCLE}
LEVEL_WORDS = {Level.ACT: "act now", Level.CAUTION: "caution", Level.CALM: "calm"}
LEVEL_TONES = {Level.ACT: Tone.ACT, Level.CAUTION: Tone.CAUTION, Level.CALM: Tone.INK}
