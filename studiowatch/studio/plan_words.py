"""What a plan says in words: why a piece will be late, what could help, what to do first."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from functools import partial

from studiowatch.speech.dates import day_seen_from
from studiowatch.speech.words import say, say_counted
from studiowatch.studio.labels import volume_text
from studiowatch.studio.plan_dates import Course
from studiowatch.studio.plan_shapes import Milestone, PiecePlan, TodayStep
from studiowatch.studio.working_hours import WallClock

DAY_MS = 86_400_000
HOUR_MS = 3_600_000
MINUTES = 60
LONG_DAYS = 2  # days from which a wait is told in days


def days_text(days: int) -> str:
    """Return "1 day", "3 days"."""
    return say_counted(days, "{n} day", "{n} days")


def span_text(span_ms: int) -> str:
    """Return how long something takes: "45 min", "5 h", "12 days"."""
    if span_ms < 2 * HOUR_MS:
        return say("{minutes} min", minutes=round(span_ms / (HOUR_MS / MINUTES)))
    if span_ms < LONG_DAYS * DAY_MS:
        return say("{hours} h", hours=round(span_ms / HOUR_MS))
    return days_text(round(span_ms / DAY_MS))


def slack_text(slack_days: int | None) -> str:
    """Return "3 days to spare", "no day to spare", "2 days late", or "" if nothing is known."""
    if slack_days is None:
        return ""
    if slack_days < 0:
        return say_counted(-slack_days, "{n} day late", "{n} days late")
    if slack_days == 0:
        return say("no day to spare")
    return say_counted(slack_days, "{n} day to spare", "{n} days to spare")


def late_text(course: Course, alone: Course, due: date, slack_days: int) -> str:
    """Return that a piece cannot be ready, how late it will be, and what of its way takes longest; "" if it can."""
    if slack_days >= 0:
        return ""
    return say_counted(
        -slack_days,
        "Cannot be ready by {day}: about {n} day late, because {reason}.",
        "Cannot be ready by {day}: about {n} days late, because {reason}.",
        day=day_seen_from(due, course.desk.clock.day(course.desk.now_ms)),
        reason=_because(course, alone),
    )


def _because(course: Course, alone: Course) -> str:
    piece, now_ms = course.piece, course.desk.now_ms
    last_ms = course.placed[-1].lay_ms if course.placed else None
    cured = course.cured.p90 if course.cured else None
    first_ms = max((piece.ready.p90 or now_ms) - now_ms, 0) if piece.coats else 0
    hands_ms = max(course.idle_ms - alone.idle_ms, 0)
    label = piece.coats[-1].label if piece.coats else piece.top
    parts: list[tuple[int, Callable[[str], str]]] = [
        (
            (cured or now_ms) - (last_ms or now_ms),
            lambda span: say("the {label} must cure before it may be wrapped (about {span})", label=label, span=span),
        ),
        (first_ms, partial(_not_ready, piece.top)),
        (course.waited_ms, partial(_still_to_come, len(piece.coats))),
        (alone.idle_ms, lambda span: say("its coats wait for your working hours (about {span})", span=span)),
        (hands_ms, lambda span: say("other pieces need your hands first (about {span})", span=span)),
    ]
    longest, words = max(parts, key=lambda part: part[0])
    return words(span_text(longest))


def _not_ready(top: str, span: str) -> str:
    if not top:
        return say("the coat below is not ready for the next coat (about {span})", span=span)
    return say("the {label} is not ready for the next coat (about {span})", label=top, span=span)


def _still_to_come(number: int, span: str) -> str:
    return say_counted(
        number,
        "one coat is still to come, and each waits for the one below (about {span})",
        "{n} coats are still to come, and each waits for the one below (about {span})",
        span=span,
    )


def helps(course: Course, alone: Course, plan: PiecePlan, clock: WallClock) -> tuple[str, ...]:
    """Return what could help a piece that will be late, the best first."""
    told, today = [], clock.day(course.desk.now_ms)
    handle = plan.milestone(Milestone.HANDLE)
    handle_ms = None if handle is None else handle.times.p90
    if handle_ms is not None and plan.due is not None and clock.day(handle_ms) <= plan.due:
        told.append(
            say(
                "Handed over by hand, unwrapped and with nothing on its face, it can go from {day} (dry-hard).",
                day=day_seen_from(clock.day(handle_ms), today),
            )
        )
    if alone.idle_ms >= DAY_MS:
        told.append(say("Longer hours, or one more day a week, save up to {span}.", span=span_text(alone.idle_ms)))
    if course.idle_ms - alone.idle_ms >= DAY_MS:
        told.append(say("Lay its coats before those of the other pieces."))
    ship = plan.milestone(Milestone.SHIP)
    if ship is not None and ship.times.p90 is not None:
        day = day_seen_from(clock.day(ship.times.p90), today)
        told.append(say("Tell the client early: {day} is what the plan gives.", day=day))
    return tuple(told)


def unsure_text(course: Course) -> str:
    """Return why a piece has no dates, or not all of them, or ""."""
    if course.desk.hours.is_never:
        return say("No day of the week has working hours, so nothing can be dated: set them.")
    if course.piece.unready is not None and course.piece.ready.p90 is None:
        finding = course.piece.unready.finding.word
        return say(
            "The {top} was found {finding}: nothing is dated before a new test.", top=course.piece.top, finding=finding
        )
    missing = next((planned for planned in course.placed if planned.lay_ms is None), None)
    if missing is not None:
        return _out_of_sight(missing.coat.label, course.piece.top if missing is course.placed[0] else "")
    if not course.placed and course.handle is None:
        return say("Plan its coats: there is nothing to date yet.")
    if course.ship_ms() is None:
        return say("When it will be cured is not in sight, in this room as it is.")
    return ""


def _out_of_sight(label: str, top: str) -> str:
    if not top:
        return say("No time for {label} is in sight, in this room as it is.", label=label)
    return say("No time for {label} after the {top} is in sight, in this room as it is.", label=label, top=top)


def first_text(
    today: Sequence[TodayStep], following: TodayStep | None, clock: WallClock, now_ms: int, *, is_undated: bool
) -> str:
    """Return what to do first today, or when the next coat comes; `is_undated` says that coats come without a time."""
    if today:
        step = today[0]
        return say("First {title}: {coat}.", title=step.piece_title, coat=amount_text(step))
    if following is None or following.coat.lay_ms is None:
        return say("No coat to come can be dated yet.") if is_undated else say("No coat is to come.")
    day = day_seen_from(clock.day(following.coat.lay_ms), clock.day(now_ms))
    title, coat = following.piece_title, amount_text(following)
    return say("Nothing to lay today. Next: {title}, {coat}, {day}.", title=title, coat=coat, day=day)


def amount_text(step: TodayStep) -> str:
    """Return "gloss 2, 62 mL"."""
    coat = step.coat.coat
    return coat.label if coat.volume_mL is None else f"{coat.label}, {volume_text(coat.volume_mL)}"
