"""The finishing plan as people read it in the terminal."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date

from studiowatch.service.best_hours_view import BestHoursView
from studiowatch.service.local_time import clock_text, when_text
from studiowatch.service.snapshot import PromptView
from studiowatch.speech.dates import day_of_week_and_year, day_seen_from
from studiowatch.speech.words import mark, say
from studiowatch.studio.labels import volume_text
from studiowatch.studio.plan_shapes import FinishingPlan, MilestoneTime, PiecePlan, PlannedCoat, Times
from studiowatch.studio.plan_words import slack_text
from studiowatch.studio.working_hours import WallClock, week_text

_FIT = {"handle": mark("fit to handle"), "wrap": mark("fit to wrap"), "ship": mark("fit to ship")}


def lines(
    plan: FinishingPlan, prompts: Sequence[PromptView], clock: WallClock, best: Sequence[BestHoursView] = ()
) -> Iterator[str]:
    """Yield the plan, a line at a time."""
    today = clock.day(plan.made_ms)
    yield say("Finishing plan of {day}, {time}", day=day_of_week_and_year(today), time=clock_text(plan.made_ms))
    yield plan.air
    yield say("Working hours: {week}", week=week_text(plan.hours))
    yield ""
    yield plan.first
    for step in plan.today:
        prepare = say("prepare from {time}", time=clock_text(step.coat.start_ms or 0))
        note = "; ".join(part for part in (prepare, step.coat.why_first) if part)
        at = clock_text(step.coat.lay_ms or 0)
        yield f"  {at} {step.piece_title}: {_what(step.coat)} ({note})"
    for piece in plan.pieces:
        yield ""
        yield from _piece(piece, plan.made_ms, today)
    if any(piece.milestones for piece in plan.pieces):
        yield ""
        yield from _bases(plan)
    yield from _best(best)
    if prompts:
        yield ""
        yield say("At the rack")
    for prompt in prompts:
        yield f"  {when_text(prompt.due_ms, plan.made_ms)} {prompt.piece_title}: {prompt.text}"
        if prompt.caution:
            yield f"    ! {prompt.caution}"


def _best(best: Sequence[BestHoursView]) -> Iterator[str]:
    for one in best:
        yield ""
        yield say("Best hours in the next two days for {title}", title=one.title)
        for line in (one.caution, one.unknown, *one.lines, *one.aside_lines):
            if line:
                yield f"  {line}"


def _piece(piece: PiecePlan, now_ms: int, today: date) -> Iterator[str]:
    due = say("no day due") if piece.due is None else say("due {day}", day=day_seen_from(piece.due, today))
    slack = slack_text(piece.slack_days)
    yield f"{piece.title}: {due}{', ' + slack if slack else ''}"
    for coat in piece.coats:
        lay = say("not in sight") if coat.lay_ms is None else say("lay {time}", time=when_text(coat.lay_ms, now_ms))
        earliest = _earliest(coat.ready, coat.lay_ms, now_ms)
        ready = [] if earliest is None else [say("perhaps ready {time}", time=earliest)]
        yield f"  {_what(coat):<24} {', '.join([lay, *ready])}"
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
    by = say("not in sight") if p90 is None else say("by {time}", time=when_text(p90, now_ms))
    earliest = _earliest(milestone.times, p90, now_ms)
    ready = [] if earliest is None else [say("perhaps from {time}", time=earliest)]
    return f"  {say(_FIT[milestone.kind.value]):<24} {', '.join([by, *ready])}"


def _earliest(times: Times, beside_ms: int | None, now_ms: int) -> str | None:
    """Return from when something may be ready at the earliest, said after `beside_ms`; None where that lies behind."""
    if times.p10 is None or times.p10 <= now_ms:
        return None
    return when_text(times.p10, now_ms if beside_ms is None else beside_ms)


def _bases(plan: FinishingPlan) -> Iterator[str]:
    told = {milestone.kind: milestone.basis for piece in plan.pieces for milestone in piece.milestones}
    for kind, basis in told.items():
        what = say(_FIT[kind.value])
        yield f"{what[:1].upper()}{what[1:]}: {basis}."
