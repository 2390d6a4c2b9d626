"""The days of the finishing plan as columns, and what of a piece stands where in them; all in shares of the width."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import timedelta
from enum import StrEnum

from studiowatch.speech.dates import weekday
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio.plan_shapes import FinishingPlan, Milestone, PiecePlan, PlannedCoat, Times
from studiowatch.studio.working_hours import WallClock
from studiowatch.ui.models.times import clock_words, local

SPANS = {mark("4 days"): 4, mark("2 weeks"): 14, mark("5 weeks"): 35}
FEW_DAYS = 7  # days up to which a column has its date written out
_FIT_BY = {
    Milestone.HANDLE: mark("fit to handle by {time}"),
    Milestone.WRAP: mark("fit to wrap by {time}"),
    Milestone.SHIP: mark("fit to ship by {time}"),
}


class MarkKind(StrEnum):
    """What stands in a piece's strip."""

    COAT = "coat"
    HANDLE = "handle"
    WRAP = "wrap"
    SHIP = "ship"
    DUE = "due"


@dataclass(frozen=True, slots=True, kw_only=True)
class DayColumn:
    """One day: where it begins and ends, and where in it she works, if she does; shares of the width."""

    name: str
    left: float
    right: float
    work: tuple[float, float] | None
    week_begins: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Mark:
    """Something at a time. `low` is from when it may be at the earliest, where that is a range.

    `words` name it beside the mark, `told` say it whole.
    """

    kind: MarkKind
    at: float
    low: float | None = None
    words: str = ""
    told: str = ""
    late: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class DayGrid:
    """So many days from the day of the plan on."""

    start_ms: int
    end_ms: int
    now: float
    columns: tuple[DayColumn, ...]
    zone: WallClock

    def share(self, time_ms: int) -> float:
        """Return where a UTC ms stands, 0 to 1 within the days."""
        return (time_ms - self.start_ms) / (self.end_ms - self.start_ms)


def day_grid(plan: FinishingPlan, days_n: int, clock: WallClock, now_ms: int) -> DayGrid:
    """Return the columns of `days_n` days from that of `now_ms` on."""
    first = clock.day(now_ms)
    days = [first + timedelta(days=n) for n in range(days_n + 1)]
    edges_ms = [clock.at(day, 0) for day in days]
    start_ms, end_ms = edges_ms[0], edges_ms[-1]
    whole_ms = end_ms - start_ms
    columns = []
    for number, day in enumerate(days[:-1]):
        hours = plan.hours.of(day)
        work = None
        if hours is not None:
            opens_ms, closes_ms = (clock.at(day, minutes) for minutes in hours)
            work = ((opens_ms - start_ms) / whole_ms, (closes_ms - start_ms) / whole_ms)
        is_named = days_n <= FEW_DAYS or number == 0 or day.weekday() == 0
        name = say("{weekday} {day}", weekday=weekday(day), day=day.day) if is_named else f"{day.day}"
        columns.append(
            DayColumn(
                name=name,
                left=(edges_ms[number] - start_ms) / whole_ms,
                right=(edges_ms[number + 1] - start_ms) / whole_ms,
                work=work,
                week_begins=day.weekday() == 0,
            )
        )
    now = (now_ms - start_ms) / whole_ms
    return DayGrid(start_ms=start_ms, end_ms=end_ms, now=now, columns=tuple(columns), zone=clock)


def marks_of(piece: PiecePlan, grid: DayGrid, now_ms: int) -> tuple[Mark, ...]:
    """Return what of a piece stands within the days of `grid`, or may, in the order of time.

    What is told beyond their end and may be within them has its range there, and no words beside it.
    """
    marks = [
        one if one.at <= 1.0 else replace(one, words="")
        for one in _marks(piece, grid, now_ms)
        if 0.0 <= one.at <= 1.0 or (one.at > 1.0 and one.low is not None and one.low < 1.0)
    ]
    return tuple(sorted(marks, key=lambda one: one.at))


def _marks(piece: PiecePlan, grid: DayGrid, now_ms: int) -> Iterator[Mark]:
    for coat in piece.coats:
        if coat.lay_ms is not None:
            yield _coat(coat, coat.lay_ms, grid, now_ms)
    for milestone in piece.milestones:
        p90 = milestone.times.p90
        if p90 is not None:
            yield Mark(
                kind=MarkKind(milestone.kind.value),
                at=grid.share(p90),
                low=_low(milestone.times, grid, now_ms),
                told=say(_FIT_BY[milestone.kind], time=clock_words(p90, now_ms)),
            )
    if piece.due is not None:
        end_ms = grid.zone.at(piece.due + timedelta(days=1), 0)
        yield Mark(kind=MarkKind.DUE, at=grid.share(end_ms), told=say("due"), late=(piece.slack_days or 0) < 0)


def _coat(coat: PlannedCoat, lay_ms: int, grid: DayGrid, now_ms: int) -> Mark:
    label = coat.coat.label
    clock = chosen().clock(local(lay_ms))
    return Mark(
        kind=MarkKind.COAT,
        at=grid.share(lay_ms),
        low=_low(coat.ready, grid, now_ms),
        words=label if len(grid.columns) > FEW_DAYS else say("{coat} {time}", coat=label, time=clock),
        told=say("lay {coat} {time}", coat=label, time=clock_words(lay_ms, now_ms)),
    )


def _low(times: Times, grid: DayGrid, now_ms: int) -> float | None:
    if times.p10 is None:
        return None
    return grid.share(max(times.p10, now_ms))
