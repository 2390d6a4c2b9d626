"""What to see to before the brush goes down. The steps and their times are common practice, no source."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import StrEnum

from studiowatch.speech.words import mark, say

MINUTE_MS = 60_000  # ms
DRIES_MS = 10 * MINUTE_MS  # ms from wiping until the surface is dry; common practice, no source
SETTLES_MS = 10 * MINUTE_MS  # ms from turning off what moves the air until dust has settled; common practice, no source
BUBBLES_RISE_MS = 15 * MINUTE_MS  # ms that a rolled bottle stands until bubbles have risen; common practice, no source
CLEAN_FOR_MS = 60 * MINUTE_MS  # ms after which dust lies again on what was wiped; assumption


class Task(StrEnum):
    """One thing to see to; the value is what the records keep."""

    WINDOW = "window"
    NO_SOLVENT = "no-solvent"
    EXTINGUISHER = "extinguisher"
    AIR_OFF = "air-off"
    WIPE = "wipe"
    BOTTLE = "bottle"
    LEVEL = "level"
    TAPE = "tape"
    BRUSH = "brush"
    COVER = "cover"


@dataclass(frozen=True, slots=True, kw_only=True)
class Chore:
    """A thing to see to.

    Attributes
    ----------
    words, caution : str
        What to do, and what to heed while doing it, or "".
    wait_ms : int
        How long it rests once it is ticked, ms; 0 if it does not.
    resting, rested : str
        What rests meanwhile, "The bottle rests", and what is said when that is over.
    good_for_ms : int or None
        How long it holds from the tick on, ms; None for as long as the preparation.
    """

    task: Task
    words: str
    caution: str = ""
    wait_ms: int = 0
    resting: str = ""
    rested: str = ""
    good_for_ms: int | None = None


WINDOW_SOLVENT = Chore(
    task=Task.WINDOW,
    words=mark("Fresh air on: a window open, away from the piece"),
    caution=mark("Keep it open until the vapour is gone: fresh air comes before a perfect coat."),
)
WINDOW_WATER = Chore(task=Task.WINDOW, words=mark("No draught over the piece from a window or a door"))
WINDOW_WATER_BY_VAPOUR = Chore(
    task=Task.WINDOW,
    words=mark("Fresh air stays on, led away from the piece"),
    caution=mark("Another coat in the room gives off solvent vapour: keep the air coming."),
)
AIR_OFF = Chore(
    task=Task.AIR_OFF,
    words=mark("Fans and heater fan off"),
    wait_ms=SETTLES_MS,
    resting=mark("Dust settles"),
    rested=mark("The dust has settled"),
)
AIR_AWAY = Chore(
    task=Task.AIR_OFF,
    words=mark("Fans turned away from the piece; heaters and anything that glows or sparks off"),
    caution=mark("Solvent vapour is lit by a spark or a hot element."),
    wait_ms=SETTLES_MS,
    resting=mark("Dust settles"),
    rested=mark("The dust has settled"),
)
NO_SOLVENT = Chore(
    task=Task.NO_SOLVENT,
    words=mark("No solvent, solvent rag or solvent-borne coat in the room: a torch is used"),
    caution=mark("The torch stays far from the mesh cover too."),
)
EXTINGUISHER = Chore(task=Task.EXTINGUISHER, words=mark("Extinguisher at hand: a torch is used"))
WIPE = Chore(
    task=Task.WIPE,
    words=mark("Wiped clean of dust and hair"),
    wait_ms=DRIES_MS,
    resting=mark("The surface dries"),
    rested=mark("The surface is dry"),
    good_for_ms=CLEAN_FOR_MS,
)
BOTTLE = Chore(
    task=Task.BOTTLE,
    words=mark("Bottle rolled gently, not shaken, and set down"),
    wait_ms=BUBBLES_RISE_MS,
    resting=mark("The bottle rests"),
    rested=mark("The bottle has rested"),
)
LEVEL = Chore(task=Task.LEVEL, words=mark("Piece level on its supports"))
TAPE = Chore(task=Task.TAPE, words=mark("Back edges taped"))
WET_BRUSH = Chore(task=Task.BRUSH, words=mark("Thin, wide synthetic brush, wetted and pressed out"))
DRY_BRUSH = Chore(task=Task.BRUSH, words=mark("Wide, soft brush, clean and dry; gloves on"))
COVER = Chore(task=Task.COVER, words=mark("Mesh cover at hand"))


def chores_for(*, solvent: bool, torch: bool, vapour_in_room: bool = False) -> tuple[Chore, ...]:
    """Return what to see to, in the order of work: what takes time comes first.

    Parameters
    ----------
    solvent : bool
        Whether a solvent-borne coat is to be laid; no torch is prepared for then.
    torch : bool
        Whether she means to break bubbles with a torch.
    vapour_in_room : bool
        Whether another coat in the room gives off solvent vapour still: no torch then either, and fresh air stays on.
    """
    flame = (NO_SOLVENT, EXTINGUISHER) if torch and not (solvent or vapour_in_room) else ()
    window = WINDOW_SOLVENT if solvent else WINDOW_WATER_BY_VAPOUR if vapour_in_room else WINDOW_WATER
    air = AIR_AWAY if solvent or vapour_in_room else AIR_OFF
    chores = (BOTTLE, window, air, WIPE, LEVEL, TAPE, *flame, DRY_BRUSH if solvent else WET_BRUSH, COVER)
    return tuple(_said(chore) for chore in chores)


def _said(chore: Chore) -> Chore:
    """Return a chore in her language."""
    words, caution, resting, rested = (
        text and say(text) for text in (chore.words, chore.caution, chore.resting, chore.rested)
    )
    return replace(chore, words=words, caution=caution, resting=resting, rested=rested)
