"""The finishing plan: the coats to come of all pieces, laid out over her working hours with one pair of hands."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from math import inf

from studiowatch.speech.words import mark, say
from studiowatch.studio import plan_words
from studiowatch.studio.labels import slack_days
from studiowatch.studio.plan_dates import PREPARE_MS, PRESENCE_MS, Course, Desk
from studiowatch.studio.plan_shapes import FinishingPlan, PiecePlan, PieceToPlan, TodayStep
from studiowatch.studio.working_hours import Span, WallClock, WorkingHours

BESIDES = mark("opens a long wait")


def finishing_plan(
    pieces: Sequence[PieceToPlan], hours: WorkingHours, clock: WallClock, *, now_ms: int
) -> FinishingPlan:
    """Return the plan of `pieces`, each with its coats dated and its slack.

    Where two coats would need her at one moment, the piece with the least slack goes first; with equal slack, the one
    whose coat opens the longer wait.

    Parameters
    ----------
    pieces : sequence of PieceToPlan
        Those on the rack, by place.
    now_ms : int
        UTC ms.
    """
    desk = Desk(hours=hours, clock=clock, now_ms=now_ms)
    alone = {piece.key: Course(piece=piece, desk=desk).run_alone() for piece in pieces}
    courses = {piece.key: Course(piece=piece, desk=desk) for piece in pieces}
    _share_hands(courses, {key: _slack(course) for key, course in alone.items()})
    plans = tuple(_piece_plan(courses[piece.key], alone[piece.key]) for piece in pieces)
    steps = sorted(_steps(plans), key=lambda step: step.coat.start_ms or 0)
    today = clock.day(now_ms)
    of_today = tuple(step for step in steps if clock.day(step.coat.lay_ms or 0) == today)
    following = next((step for step in steps if step not in of_today), None)
    return FinishingPlan(
        made_ms=now_ms,
        hours=hours,
        pieces=plans,
        today=of_today,
        first=plan_words.first_text(
            of_today, following, clock, now_ms, is_undated=any(plan.coats for plan in plans) and not steps
        ),
    )


def _share_hands(courses: dict[str, Course], slacks: dict[str, float]) -> None:
    """Lay out all coats, no two at one moment."""
    busy: list[Span] = []
    open_courses = dict(courses)
    while open_courses:
        moments = {key: course.moment(busy) for key, course in open_courses.items() if not course.is_done}
        in_sight = {key: at for key, at in moments.items() if at is not None}
        if not in_sight:
            break
        earliest = min(in_sight.values())
        rivals = [key for key, at in in_sight.items() if at < earliest + PREPARE_MS + PRESENCE_MS]
        key = min(rivals, key=lambda rival: (slacks[rival], -courses[rival].wait_ms(), in_sight[rival]))
        why = _why(key, rivals, slacks) if len(rivals) > 1 else ""
        span = courses[key].lay(in_sight[key], why).span
        busy += [span] if span else []
        open_courses = {key: course for key, course in open_courses.items() if not course.is_done}
    for course in courses.values():
        while not course.is_done:
            course.lay(None)


def _why(key: str, rivals: Sequence[str], slacks: dict[str, float]) -> str:
    others = min(slacks[rival] for rival in rivals if rival != key)
    return say("least time to spare") if slacks[key] < others else say(BESIDES)


def _slack(course: Course) -> float:
    """Return the days to spare, infinite for a piece that is not due."""
    days = _slack_days(course)
    return inf if days is None else float(days)


def _slack_days(course: Course) -> int | None:
    ship_ms = course.ship_ms()
    if course.piece.due is None or ship_ms is None:
        return None
    return slack_days(course.piece.due, course.desk.clock.day(ship_ms))


def _piece_plan(course: Course, alone: Course) -> PiecePlan:
    piece, days = course.piece, _slack_days(course)
    plan = PiecePlan(
        key=piece.key,
        title=piece.title,
        due=piece.due,
        coats=tuple(course.placed),
        milestones=course.milestones(),
        remarks=piece.remarks,
        slack_days=days,
        unsure=plan_words.unsure_text(course),
        top=piece.top,
    )
    if piece.due is None or days is None or days >= 0:
        return plan
    return replace(
        plan,
        late=plan_words.late_text(course, alone, piece.due, days),
        helps=plan_words.helps(course, alone, plan, course.desk.clock),
    )


def _steps(plans: Sequence[PiecePlan]) -> list[TodayStep]:
    return [
        TodayStep(piece_key=plan.key, piece_title=plan.title, coat=coat)
        for plan in plans
        for coat in plan.coats
        if coat.lay_ms is not None
    ]
