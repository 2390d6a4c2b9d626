"""The finishing plan as entries of a calendar."""

from __future__ import annotations

from collections.abc import Iterator

from studiowatch.speech.words import mark, say
from studiowatch.store.icalendar import AllDay, Event, calendar
from studiowatch.studio.labels import volume_text
from studiowatch.studio.plan_dates import PACK_MS, PREPARE_MS
from studiowatch.studio.plan_shapes import FinishingPlan, Milestone, MilestoneTime, PiecePlan, PlannedCoat
from studiowatch.studio.plan_words import slack_text
from studiowatch.studio.prompts import SOLVENT_NEXT, TORCH

NAME = mark("Finishing plan")
_FIT = {
    Milestone.HANDLE: mark("{title}: fit to handle"),
    Milestone.WRAP: mark("{title}: fit to wrap"),
    Milestone.SHIP: mark("{title}: wrap and pack"),
}


def plan_calendar(plan: FinishingPlan) -> str:
    """Return the calendar file of a plan: her coats, what the pieces become fit for, and the days they are due."""
    entries = [entry for piece in plan.pieces for entry in _entries(piece)]
    return calendar(entries, made_ms=plan.made_ms, name=say(NAME))


def _entries(piece: PiecePlan) -> Iterator[Event | AllDay]:
    for coat in piece.coats:
        if coat.start_ms is not None and coat.end_ms is not None:
            yield _coat(piece, coat, coat.start_ms, coat.end_ms)
    for milestone in piece.milestones:
        if milestone.times.p90 is not None:
            yield _milestone(piece, milestone, milestone.times.p90)
    if piece.due is not None:
        yield AllDay(
            uid=f"{piece.key}-due",
            day=piece.due,
            summary=say("{title}: due", title=piece.title),
            description=piece.late or slack_text(piece.slack_days),
        )


def _coat(piece: PiecePlan, planned: PlannedCoat, start_ms: int, end_ms: int) -> Event:
    coat = planned.coat
    amount = "" if coat.volume_mL is None else f", {volume_text(coat.volume_mL)}"
    lines = [
        f"{coat.title}{amount}",
        say(
            "Prepare for {minutes} min: wipe and let dry, bottle at rest, level, fans off, cover at hand.",
            minutes=PREPARE_MS // 60_000,
        ),
        say("A touch test at an edge comes before the coat."),
        say(SOLVENT_NEXT if coat.solvent else TORCH),
        *(remark.sentence for remark in piece.remarks if remark.coat_key == coat.key),
    ]
    return Event(
        uid=f"{coat.key}-lay",
        start_ms=start_ms,
        end_ms=end_ms,
        summary=say("{title}: lay {coat}", title=piece.title, coat=f"{coat.label}{amount}"),
        description="\n".join(lines),
        alarm_before_ms=0,
    )


def _milestone(piece: PiecePlan, milestone: MilestoneTime, at_ms: int) -> Event:
    start_ms = at_ms - PACK_MS if milestone.kind is Milestone.SHIP else at_ms
    return Event(
        uid=f"{piece.key}-{milestone.kind}",
        start_ms=start_ms,
        end_ms=start_ms + PACK_MS,
        summary=say(_FIT[milestone.kind], title=piece.title),
        description=say("Basis: {basis}. Nine in ten are ready by then.", basis=milestone.basis),
    )
