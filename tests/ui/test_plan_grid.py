"""The days of the plan as columns, and what stands where in them; shares are counted by hand, in UTC."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.studio.plan_shapes import Times
from studiowatch.studio.working_hours import WorkingHours
from studiowatch.ui.models.plan_grid import MarkKind, day_grid, marks_of

from .plan_scenes import CLOCK, FOUR_PLANNED
from .scenes import NOW_MS

PLAN = FOUR_PLANNED.plan
assert PLAN is not None


def test_that_columns_are_days_with_her_hours_in_them() -> None:
    # 2026-03-04, a Wednesday, at 14:12: now stands 14.2 h into four days
    grid = day_grid(PLAN, 4, CLOCK, NOW_MS)
    assert [column.name for column in grid.columns] == ["Wed 4", "Thu 5", "Fri 6", "Sat 7"]
    assert grid.now == pytest.approx(14.2 / 96)
    assert grid.columns[1].work == pytest.approx(((24 + 9) / 96, (24 + 18) / 96))


def test_that_a_day_off_has_no_hours_and_mondays_begin_weeks() -> None:
    grid = day_grid(PLAN, 14, CLOCK, NOW_MS)
    assert [column.name for column in grid.columns if column.work is None] == ["8", "15"]  # Sundays
    assert [column.name for column in grid.columns if column.week_begins] == ["Mon 9", "Mon 16"]
    never = day_grid(replace(PLAN, hours=WorkingHours(days=(None,) * 7)), 4, CLOCK, NOW_MS)
    assert all(column.work is None for column in never.columns)


def test_that_marks_stand_at_their_times_in_order_with_the_reach_of_their_range() -> None:
    grid = day_grid(PLAN, 35, CLOCK, NOW_MS)
    (orchard, *_) = PLAN.pieces
    marks = marks_of(orchard, grid, NOW_MS)
    assert [mark.kind for mark in marks] == [
        MarkKind.COAT,
        MarkKind.COAT,
        MarkKind.HANDLE,
        MarkKind.WRAP,
        MarkKind.SHIP,
        MarkKind.DUE,
    ]
    for mark, coat in zip(marks, orchard.coats, strict=False):
        assert coat.lay_ms is not None
        assert mark.at == pytest.approx((coat.lay_ms - grid.start_ms) / (35 * 86_400_000))
        assert mark.low is not None
        assert mark.low <= mark.at
    # due on the 20th: the flag stands at the end of that day, 17 days after the fourth began
    assert marks[-1].at == pytest.approx(17 / 35)


def test_that_what_lies_beyond_the_days_is_left_out() -> None:
    grid = day_grid(PLAN, 4, CLOCK, NOW_MS)
    marks = [mark for piece in PLAN.pieces for mark in marks_of(piece, grid, NOW_MS)]
    assert all(mark.at >= 0 for mark in marks)
    assert all(mark.at <= 1 or (mark.low or 0) < 1 for mark in marks)
    assert MarkKind.WRAP not in {mark.kind for mark in marks_of(PLAN.pieces[0], grid, NOW_MS)}


def test_that_a_coat_beyond_the_days_that_may_go_on_within_them_has_its_range_in_them() -> None:
    grid = day_grid(PLAN, 4, CLOCK, NOW_MS)
    (orchard, *_) = PLAN.pieces
    early_ms, lay_ms = grid.start_ms + 72 * 3_600_000, grid.start_ms + 20 * 86_400_000
    ready = Times(p10=early_ms, p50=lay_ms, p90=lay_ms)
    coat = replace(orchard.coats[0], ready=ready, lay_ms=lay_ms)
    (mark,) = marks_of(replace(orchard, coats=(coat,), milestones=(), due=None), grid, NOW_MS)
    assert (mark.kind, mark.low, mark.at, mark.words) == (MarkKind.COAT, 0.75, 5.0, "")
    assert mark.told.startswith("lay ")
    never = replace(coat, ready=replace(ready, p10=grid.end_ms))
    assert marks_of(replace(orchard, coats=(never,), milestones=(), due=None), grid, NOW_MS) == ()


def test_that_a_due_day_that_cannot_be_met_is_marked_so() -> None:
    grid = day_grid(PLAN, 35, CLOCK, NOW_MS)
    late = {piece.title: [mark.late for mark in marks_of(piece, grid, NOW_MS)][-1] for piece in PLAN.pieces}
    flags = [mark for mark in marks_of(PLAN.pieces[2], grid, NOW_MS) if mark.kind is MarkKind.DUE]
    assert [flag.late for flag in flags] == [True]
    assert late["Orchard at Low Water"] is False
