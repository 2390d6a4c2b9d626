"""Made-up studios for laying a coat: room and piece ready or not, panels, a batch, prompts missed or put off."""

from __future__ import annotations

from dataclasses import replace

from studiowatch.service.snapshot import PreparationView, PromptView, Snapshot
from studiowatch.studio.chores import Task
from studiowatch.studio.pieces import Shape
from studiowatch.studio.preparation import CoatToLay, Preparation, Tick, chores_now, phase_at
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.models.times import MINUTE_MS

from .scenes import FOUR_CALM, HERONS, LADDER, NOW_MS, ORCHARD, QUARRY, TOLD

DAMP = Sentence(
    level=Level.CAUTION,
    headline="Too damp to lay a coat: 81 %, wait for 75 % or less",
    detail="The product's sheet says so. That is likely from about 15:10 (55 min): the humidity is falling as it "
    "did in the last hour.",
    advice="Warm the room gently; keep the heater's air off the pieces.",
)
FIT = Sentence(level=Level.CALM, headline="Good to lay a coat", detail="20.4 °C, 52 %, no moving air noticed.")
SHEET_NAMES = ("isolation-waterborne", "gloss-waterborne", "satin-waterborne", "gloss-solvent")


def checked(snapshot: Snapshot, check: Sentence) -> Snapshot:
    return replace(snapshot, room_checks=tuple((name, check) for name in SHEET_NAMES))


def preparing(*ticks: Tick, torch: bool = False, laid: int = 0) -> PreparationView:
    keys = (ORCHARD.key, LADDER.key, QUARRY.key)
    preparation = Preparation(
        key="prep",
        began_ms=NOW_MS - 6 * MINUTE_MS,
        coats=tuple(
            CoatToLay(piece_key=key, sheet="gloss-waterborne", laid_ms=NOW_MS if at < laid else None)
            for at, key in enumerate(keys)
        ),
        torch=torch,
        ticks=ticks,
    )
    return PreparationView(
        preparation=preparation,
        phase=phase_at(preparation, NOW_MS),
        chores=chores_now(preparation, NOW_MS),
        titles=(ORCHARD.title, LADDER.title, QUARRY.title),
    )


def tick(task: Task, minutes_ago: float) -> Tick:
    return Tick(task=task, time_ms=NOW_MS - round(minutes_ago * MINUTE_MS))


SET_OF_PANELS = replace(
    HERONS, key="panels", title="Nine Tides", shape=Shape.PANELS, panels=9, width_cm=20, height_cm=20
)
READY_PIECES = tuple(replace(piece, not_yet=None) for piece in (ORCHARD, LADDER, QUARRY, SET_OF_PANELS))
GO = checked(replace(FOUR_CALM, pieces=READY_PIECES), FIT)
WAIT = checked(GO, DAMP)
RESTING = replace(
    GO,
    preparations=(
        preparing(
            tick(Task.BOTTLE, 6),
            tick(Task.AIR_OFF, 11),
            tick(Task.WIPE, 2),
            tick(Task.LEVEL, 1),
            tick(Task.TAPE, 70),
            torch=True,
        ),
    ),
)
SOLVENT_NEAR = replace(GO, vapour_near="gloss 1 on Two Herons, Waiting", pieces=TOLD.pieces)
MISSED = replace(
    RESTING,
    prompts=(
        PromptView(
            key="l1:bubbles",
            due_ms=NOW_MS - 21 * MINUTE_MS,
            text="Second pass missed: leave it",
            piece_key="ladder",
            piece_title=LADDER.title,
            overdue=True,
            caution="The film has begun to set; going back now marks the film. "
            "Look for drips and bubbles once it is dry.",
            missed=True,
            useless=True,
        ),
        PromptView(
            key="o2:cover",
            due_ms=NOW_MS - 1 * MINUTE_MS,
            text="Set the mesh cover when no more bubbles rise",
            piece_key="orchard",
            piece_title=ORCHARD.title,
            overdue=True,
            caution="No torch or flame near the mesh cover.",
        ),
        PromptView(
            key="q3:clarity",
            due_ms=NOW_MS + 4 * MINUTE_MS,
            text="Has the milkiness cleared?",
            piece_key="quarry",
            piece_title=QUARRY.title,
            snoozed=True,
        ),
    ),
)
LAYING_SCENES = {"missed": MISSED}
