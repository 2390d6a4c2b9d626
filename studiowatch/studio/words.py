"""Levels, and the one sentence that says the most urgent thing; the same words in the window and in the terminal."""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum


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
