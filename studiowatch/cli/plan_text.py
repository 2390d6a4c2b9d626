"""The finishing plan as people read it in the terminal."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from studiowatch.service.local_time import clock_text, when_text
from studiowatch.service.snapshot import PromptView
from studiowatch.studio.labels import volume_text
from studiowatch.studio.plan_shapes import FinishingPlan, MilestoneTime, PiecePlan, PlannedCoat, Times
from studiowatch.studio.plan_words import day_text, slack_text
from studiowatch.studio.working_hours import WallClock, week_text

_FIT = {"handle": "fit to handle", "wrap": "fit to wrap", "ship": "fit to ship"}


def lines(plan: FinishingPlan, prompts: Sequence[PromptView], clock: WallClock) -> Iterator[str]:
    """Yield the plan, a line at a time."""
    yield f"Finishing plan of {day_text(clock.day(plan.made_ms))}, {clock_text(plan.made_ms)}"
    yield plan.air
    yield f"Working hours: {week_text(plan.hours)}"
    yield ""
    yield plan.first
    for step in plan.today:
        why = f"; {step.coat.why_first}" if step.coat.why_first else ""
        start = clock_text(step.coat.start_ms or 0)
        at = clock_text(step.coat.lay_ms or 0)
        yield f"  {at} {step.piece_title}: {_what(step.coat)} (prepare from {start}{why})"
    for piece in plan.pieces:
        yield ""
        yield from _piece(piece, plan.made_ms)
    if any(piece.milestones for piece in plan.pieces):
        yield ""
        yield from _bases(plan)
    if prompts:
        yield ""
        yield "At the rack"
    for prompt in prompts:
        yield f"  {when_text(prompt.due_ms, plan.made_ms)} {prompt.piece_title}: {prompt.text}"


def _piece(piece: PiecePlan, now_ms: int) -> Iterator[str]:
    due = "no day due" if piece.due is None else f"due {day_text(piece.due)}"
    slack = slack_text(piece.slack_days)
    yield f"{piece.title}: {due}{', ' + slack if slack else ''}"
    for coat in piece.coats:
        at = "not in sight" if coat.lay_ms is None else when_text(coat.lay_ms, now_ms)
        yield f"  {_what(coat):<24} lay {at}{_between(coat.ready, 'ready', now_ms)}"
    for milestone in piece.milestones:
        yield _milestone(milestone, now_ms)
    for remark in piece.remarks:
        yield f"  ! {remark.sentence} [{remark.basis}]"
    for sentence in (piece.late, *piece.helps, piece.unsure):
        if sentence:
            yield f"  {sentence}"


def _what(coat: PlannedCoat) -> str:
    volume_mL = coat.coat.volume_mL
    return coat.coat.label if volume_mL is None else f"{coat.coat.label}, {volume_text(volume_mL)}"


def _milestone(milestone: MilestoneTime, now_ms: int) -> str:
    p90 = milestone.times.p90
    at = "not in sight" if p90 is None else when_text(p90, now_ms)
    return f"  {_FIT[milestone.kind.value]:<24} by {at}{_between(milestone.times, 'from', now_ms)}"


def _between(times: Times, word: str, now_ms: int) -> str:
    """Return from when something may be ready at the earliest; nothing where that lies behind."""
    if times.p10 is None or times.p10 <= now_ms:
        return ""
    return f", perhaps {word} {when_text(times.p10, now_ms)}"


def _bases(plan: FinishingPlan) -> Iterator[str]:
    told = {milestone.kind: milestone.basis for piece in plan.pieces for milestone in piece.milestones}
    for kind, basis in told.items():
        yield f"{_FIT[kind.value].capitalize()}: {basis}."
