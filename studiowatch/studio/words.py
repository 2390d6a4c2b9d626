"""Levels, and the one sentence that says the most urgent thing; the same words in the window and in the terminal."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import IntEnum

from studiowatch.speech.words import in_turn, say


class Level(IntEnum):
    """How much something matters now."""

    CALM = 0
    CAUTION = 1
    ACT = 2


@dataclass(frozen=True, slots=True, kw_only=True)
class Sentence:
    """What to say: a headline for two metres away, a line of detail, and what to do about it."""

    level: Level
    headline: str
    detail: str = ""
    advice: str = ""

    def with_other(self, other: Sentence) -> Sentence:
        """Return both as one, the worse first: this one where they are alike."""
        first, second = (self, other) if self.level >= other.level else (other, self)
        detail = in_turn(first.detail, f"{second.headline}.", second.detail)
        return replace(first, detail=detail, advice=in_turn(first.advice, second.advice))

    @property
    def said(self) -> Sentence:
        """A sentence that was marked when the program started, in her language."""
        headline, detail, advice = (text and say(text) for text in (self.headline, self.detail, self.advice))
        return replace(self, headline=headline, detail=detail, advice=advice)
