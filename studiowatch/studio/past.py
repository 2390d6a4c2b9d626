"""What was: a concern that is over, or that nobody can look at now, told as past."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from studiowatch.speech.words import mark, say, say_counted
from studiowatch.studio.concern import Kind
from studiowatch.studio.counting import listed, number_word
from studiowatch.studio.words import Level, Sentence

WAS_AT_ALL = {
    Kind.BOARD_SILENT: mark("The board was silent"),
    Kind.RECOAT_EARLY: mark("A coat was laid early over one that was not ready"),
    Kind.MATTING_BUILD_UP: mark("Matting agent was built up"),
    Kind.READING_IMPLAUSIBLE: mark("A reading could not be right"),
    Kind.READING_OLD: mark("The room was not read for long"),
}

WAS_AHEAD = {
    Kind.AIR_MOVING: mark("A fan was meant to be on"),
    Kind.TOO_COLD: mark("Cold was foreseen"),
    Kind.NEAR_DEW_POINT: mark("A dew point too near was foreseen"),
    Kind.DAMP: mark("Damp air was foreseen"),
}
"""What was ahead, and did not come."""


def never_came(kind: Kind, level: Level, titles: Sequence[str]) -> Sentence:
    """Return what is kept of a warning of `kind` that ended before what it warned of came."""
    return Sentence(level=level, headline=say(WAS_AHEAD[kind]), detail=f"{listed(titles)}." if titles else "")


def over(kind: Kind, level: Level, titles: Sequence[str]) -> Sentence:
    """Return what is kept of a warning of `kind` once it is over; `titles` are all the pieces that it touched."""
    headline = say(WAS_AT_ALL[kind]) if kind in WAS_AT_ALL else WAS_WET[kind](len(titles))
    return Sentence(level=level, headline=headline, detail=f"{listed(titles)}." if titles else "")


def _air_over_wet(number: int) -> str:
    return say_counted(
        number, "Air was moving over a wet coat", "Air was moving over {n} wet coats", n=number_word(number)
    )


def air_over_covered(number: int) -> str:
    """Return that air was moving over so many covered coats."""
    return say_counted(
        number, "Air was moving over a covered coat", "Air was moving over {n} covered coats", n=number_word(number)
    )


def _cold_for_wet(number: int) -> str:
    return say_counted(number, "It was cold for a wet coat", "It was cold for {n} wet coats", n=number_word(number))


def _cold_for_drying(number: int) -> str:
    return say_counted(
        number, "It was cold for a drying coat", "It was cold for {n} drying coats", n=number_word(number)
    )


def _dew_near_wet(number: int) -> str:
    return say_counted(
        number,
        "The dew point was near for a wet coat",
        "The dew point was near for {n} wet coats",
        n=number_word(number),
    )


def _dew_near_drying(number: int) -> str:
    return say_counted(
        number,
        "The dew point was near for a drying coat",
        "The dew point was near for {n} drying coats",
        n=number_word(number),
    )


def _damp_for_wet(number: int) -> str:
    return say_counted(number, "It was damp for a wet coat", "It was damp for {n} wet coats", n=number_word(number))


def _damp_for_drying(number: int) -> str:
    return say_counted(
        number, "It was damp for a drying coat", "It was damp for {n} drying coats", n=number_word(number)
    )


def _fast_for_wet(number: int) -> str:
    return say_counted(
        number,
        "The air was too dry or too warm for a wet coat",
        "The air was too dry or too warm for {n} wet coats",
        n=number_word(number),
    )


def _dust_on_wet(number: int) -> str:
    return say_counted(
        number, "Dust was falling on a wet coat", "Dust was falling on {n} wet coats", n=number_word(number)
    )


WAS_WET: Mapping[Kind, Callable[[int], str]] = {
    Kind.AIR_MOVING: _air_over_wet,
    Kind.TOO_COLD: _cold_for_wet,
    Kind.NEAR_DEW_POINT: _dew_near_wet,
    Kind.DAMP: _damp_for_wet,
    Kind.DRYING_TOO_FAST: _fast_for_wet,
    Kind.DUST: _dust_on_wet,
}
"""What was, of so many wet coats."""

WAS_DRYING: Mapping[Kind, Callable[[int], str]] = {
    Kind.TOO_COLD: _cold_for_drying,
    Kind.NEAR_DEW_POINT: _dew_near_drying,
    Kind.DAMP: _damp_for_drying,
}
"""What was, of so many coats that are drying still."""
