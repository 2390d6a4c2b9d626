"""The first run in three steps: what each says, and when they are shown. Without Qt."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import mark, say
from studiowatch.studio.sentence import OPENING
from studiowatch.ui.models.board import board_line
from studiowatch.ui.models.guide import Steps

DONE = 3
"""The step after the last one."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Offer:
    """Something to do in a step: its name with a letter to press, and which deed of the page it is."""

    words: str
    deed: str


@dataclass(frozen=True, slots=True, kw_only=True)
class FirstStep:
    """One step: a heading, what it is for, and what she may do in it; every one of them may be left out."""

    heading: str
    words: str
    offers: tuple[Offer, ...]


def _said_steps() -> tuple[FirstStep, ...]:
    return (
        FirstStep(
            heading=say("Your board"),
            words=say(
                "Plug the board in by USB: it is found by itself, and its readings come every second. Without one you "
                "can read any hygrometer and type what it says (Ctrl+G): ready times are then wider, and moving air is "
                "not seen."
            ),
            offers=(
                Offer(words=say("&Look at the board"), deed="board"),
                Offer(words=say("I have &no board yet: type a reading"), deed="reading"),
                Offer(words=say("Look around with a &made-up studio"), deed="demo"),
            ),
        ),
        FirstStep(
            heading=say("Your room and hours"),
            words=say(
                "Lay the board flat beside the pieces, out of the sun and away from the heater. Say when you work, so "
                "that coats are planned only then, and when a sound must not wake you."
            ),
            offers=(Offer(words=say("&Working hours…"), deed="hours"), Offer(words=say("&Quiet hours…"), deed="quiet")),
        ),
        FirstStep(
            heading=say("Your first piece"),
            words=say(
                "Register a piece with its title, its size and the coats to come. Press “Lay a coat” (Ctrl+L) when you "
                "lay the first one: from then on the rack shows when it will be dry, and you are warned while it is "
                "wet."
            ),
            offers=(Offer(words=say("&Register a piece…"), deed="register"),),
        ),
    )


STEPS = Steps(_said_steps)
ELSEWHERE = mark("It opens in a window of its own, with records of its own: nothing of yours is touched.")


def is_first_run(snapshot: Snapshot, step: int) -> bool:
    """Return whether the steps are to be shown: the records are read and empty, and step `step` is still to come."""
    is_empty = not snapshot.pieces and not snapshot.archived
    return step < DONE and is_empty and snapshot.sentence != OPENING.said


def state_words(step: int, snapshot: Snapshot) -> str:
    """Return how it stands with what a step asks for, or ""."""
    return board_line(snapshot).words if step == 0 else ""
