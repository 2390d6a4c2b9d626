"""What was: a concern that is over, or that nobody can look at now, told as past."""

from __future__ import annotations

from collections.abc import Sequence

from studiowatch.studio.concern import Kind
from studiowatch.studio.counting import counted, listed
from studiowatch.studio.words import Level, Sentence

WAS = {
    Kind.AIR_MOVING: "Air was moving over",
    Kind.TOO_COLD: "It was cold for",
    Kind.NEAR_DEW_POINT: "The dew point was near for",
    Kind.DAMP: "It was damp for",
    Kind.DRYING_TOO_FAST: "The air was too dry or too warm for",
    Kind.DUST: "Dust was falling on",
}
WAS_AT_ALL = {
    Kind.BOARD_SILENT: "The board was silent",
    Kind.RECOAT_EARLY: "A coat was laid early over one that was not ready",
    Kind.MATTING_BUILD_UP: "Matting agent was built up",
    Kind.READING_IMPLAUSIBLE: "A reading could not be right",
    Kind.READING_OLD: "The room was not read for long",
}


def over(kind: Kind, level: Level, titles: Sequence[str]) -> Sentence:
    """Return what is kept of a warning of `kind` once it is over; `titles` are all the pieces that it touched."""
    headline = WAS_AT_ALL.get(kind) or f"{WAS[kind]} {counted(len(titles), 'wet coat')}"
    return Sentence(level=level, headline=headline, detail=f"{listed(titles)}." if titles else "")
