"""What a plan says in words: why a piece will be late, what could help, what to do first."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from studiowatch.studio.labels import volume_text
from studiowatch.studio.plan_dates import Course
from studiowatch.studio.plan_shapes import Milestone, PiecePlan, TodayStep
from studiowatch.studio.working_hours import WallClock

DAY_MS = 86_400_000
HOUR_MS = 3_600_000
MINUTES = 60
LONG_DAYS = 2  # days from which a wait is told in days


def day_text(day: date) -> str:
    """Return "Fri 20 Mar"."""
    return f"{day:%a} {day.day} {day:%b}"


def days_text(days: int) -> str:
    """Return "1 day", "3 days"."""
    return f"{days} day" if days == 1 else f"{days} days"


def span_text(span_ms: int) -> str:
    """Return how long something takes: "45 min", "5 h", "12 days"."""
    if span_ms < 2 * HOUR_MS:
        return f"{round(span_ms / (HOUR_MS / MINUTES))} min"
    if span_ms < LONG_DAYS * DAY_MS:
        return f"{round(span_ms / HOUR_MS)} h"
    return days_text(round(span_ms / DAY_MS))


def slack_text(slack_days: int | None) -> str:
    """Return "3 days to spare", "no day to spare", "2 days late", or "" if nothing is known."""
    if slack_days is None:
        return ""
    if slack_days < 0:
        return f"{days_text(-slack_days)} late"
    return "no day to spare" if slack_days == 0 else f"{days_text(slack_days)} to spare"


def late_text(course: Course, alone: Course, due: date, slack_days: int) -> str:
    """Return that a piece cannot be ready, how late it will be, and what of its way takes longest; "" if it can."""
    if slack_days >= 0:
        return ""
    return (
        f"Cannot be ready by {day_text(due)}: about {days_text(-slack_days)} late, because {_because(course, alone)}."
    )


def _because(course: Course, alone: Course) -> str:
    piece, now_ms = course.piece, course.desk.now_ms
    last_ms = course.placed[-1].lay_ms if course.placed else None
    cured = course.cured.p90 if course.cured else None
    first_ms = max((piece.ready.p90 or now_ms) - now_ms, 0) if piece.coats else 0
    hands_ms = max(course.idle_ms - alone.idle_ms, 0)
    label = piece.coats[-1].label if piece.coats else piece.top
    coats = "one coat is" if len(piece.coats) == 1 else f"{len(piece.coats)} coats are"
    parts = [
        ((cured or now_ms) - (last_ms or now_ms), f"the {label} must cure before it may be wrapped"),
        (first_ms, f"the {piece.top or 'coat below'} is not ready for the next coat"),
        (course.waited_ms, f"{coats} still to come, and each waits for the one below"),
        (alone.idle_ms, "its coats wait for your working hours"),
        (hands_ms, "other pieces need your hands first"),
    ]
    longest, words = max(parts)
    return f"{words} (about {span_text(longest)})"


def helps(course: Course, alone: Course, plan: PiecePlan, clock: WallClock) -> tuple[str, ...]:
    """Return what could help a piece that will be late, the best first."""
    told = []
    handle = plan.milestone(Milestone.HANDLE)
    handle_ms = None if handle is None else handle.times.p90
    if handle_ms is not None and plan.due is not None and clock.day(handle_ms) <= plan.due:
        told.append(
            f"Handed over by hand, unwrapped and with nothing on its face, it can go from "
            f"{day_text(clock.day(handle_ms))} (dry-hard)."
        )
    if alone.idle_ms >= DAY_MS:
        told.append(f"Longer hours, or one more day a week, save up to {span_text(alone.idle_ms)}.")
    if course.idle_ms - alone.idle_ms >= DAY_MS:
        told.append("Lay its coats before those of the other pieces.")
    ship = plan.milestone(Milestone.SHIP)
    if ship is not None and ship.times.p90 is not None:
        told.append(f"Tell the client early: {day_text(clock.day(ship.times.p90))} is what the plan gives.")
    return tuple(told)


def unsure_text(course: Course) -> str:
    """Return why a piece has no dates, or not all of them, or ""."""
    if course.desk.hours.is_never:
        return "No day of the week has working hours, so nothing can be dated: set them."
    missing = next((planned for planned in course.placed if planned.lay_ms is None), None)
    if missing is not None:
        after = f" after the {course.piece.top}" if missing is course.placed[0] and course.piece.top else ""
        return f"No time for {missing.coat.label}{after} is in sight, in this room as it is."
    if not course.placed and course.handle is None:
        return "Plan its coats: there is nothing to date yet."
    if course.ship_ms() is None:
        return "When it will be cured is not in sight, in this room as it is."
    return ""


def first_text(today: Sequence[TodayStep], following: TodayStep | None, clock: WallClock) -> str:
    """Return what to do first today, or when the next coat comes."""
    if today:
        step = today[0]
        return f"First {step.piece_title}: {amount_text(step)}."
    if following is None or following.coat.lay_ms is None:
        return "No coat is to come."
    day = day_text(clock.day(following.coat.lay_ms))
    return f"Nothing to lay today. Next: {following.piece_title}, {amount_text(following)}, {day}."


def amount_text(step: TodayStep) -> str:
    """Return "gloss 2, 62 mL"."""
    coat = step.coat.coat
    return coat.label if coat.volume_mL is None else f"{coat.label}, {volume_text(coat.volume_mL)}"
