"""What to do when a prompt was missed: that depends on the film, and sometimes it is to leave it alone.

What to do is common practice, no source; whether the film has set or takes dust still is the model's (ASTM D1640).
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from studiowatch.speech.words import mark, say

WET_LATE_MS = 5 * 60_000  # ms after its time that a step at the wet film counts as missed; assumption
OPEN_MS = 20 * 60_000  # ms after its time that nobody goes back into a wet film, set or not; common practice, no source
DRY_LATE_MS = 60 * 60_000  # ms after its time that a look or a touch test counts as missed; assumption

LEAVE_IT = mark("The film has begun to set; going back now marks the film. Look for drips and bubbles once it is dry.")
LIGHTLY = mark("Only while the film still flows: one light pass. If the brush drags, leave it.")
COVER_NOW = mark("Dust sticks until the film is tack-free. Let nothing touch it.")
SPECKS = mark("The film takes no more dust. Look along it in a low light for specks before the next coat.")
STILL_MILKY = mark("Milky now is later than this room should take: nothing on it until it is clear.")
TEST_FIRST = mark("It is not too late: press at an edge before anything goes on it.")


class Step(StrEnum):
    """What is asked; the value is part of a prompt's key."""

    BUBBLES = "bubbles"
    COVER = "cover"
    CLARITY = "clarity"
    TOUCH_TEST = "touch-test"
    RECOAT = "recoat"
    READ_ROOM = "read-room"


@dataclass(frozen=True, slots=True, kw_only=True)
class FilmNow:
    """How far a film has come: begun to set (its particles packed), free of tack."""

    is_set: bool = False
    is_tack_free: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Missed:
    """What to say of a prompt that was missed.

    Attributes
    ----------
    headline : str
        What to do now, "" where that is as ever.
    keeps_caution : bool
        Whether the caution of the step itself bites still.
    is_useless : bool
        True where doing it now would harm, or help no more: it is told once, and goes.
    """

    headline: str
    advice: str
    keeps_caution: bool = False
    is_useless: bool = False

    def with_caution(self, caution: str) -> str:
        """Return the advice, and the step's own caution where it bites still."""
        return f"{self.advice} {caution}" if self.keeps_caution and caution else self.advice


def missed(step: Step, film: FilmNow, late_ms: int) -> Missed | None:
    """Return what to say of `step`, due `late_ms` ago, or None if it is to be done as ever.

    Parameters
    ----------
    late_ms : int
        ms since it was due; negative while it is still to come.
    """
    match step:
        case Step.BUBBLES:
            return _bubbles(film, late_ms)
        case Step.COVER:
            return _cover(film, late_ms)
        case Step.CLARITY if late_ms > DRY_LATE_MS:
            return _late(say("Look now: has the milkiness cleared?"), STILL_MILKY)
        case Step.TOUCH_TEST if late_ms > DRY_LATE_MS:
            return _late("", TEST_FIRST)
        case _:
            return None


def _late(headline: str, advice: str) -> Missed:
    return Missed(headline=headline, advice=say(advice), keeps_caution=True)


def _too_late(headline: str, advice: str) -> Missed:
    return Missed(headline=headline, advice=say(advice), is_useless=True)


def _bubbles(film: FilmNow, late_ms: int) -> Missed | None:
    if film.is_set or late_ms > OPEN_MS:
        return _too_late(say("Second pass missed: leave it"), LEAVE_IT)
    if late_ms > WET_LATE_MS:
        return _late(say("Second pass is late: a light one, or none"), LIGHTLY)
    return None


def _cover(film: FilmNow, late_ms: int) -> Missed | None:
    if film.is_tack_free:
        return _too_late(say("Cover missed: it helps no more"), SPECKS)
    if late_ms > WET_LATE_MS:
        return _late(say("The cover is late: set it now"), COVER_NOW)
    return None
