"""The best hours beside the watch: worked out by a worker, kept for ten minutes, and said by the plan beside them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from dataclasses import replace
from threading import get_ident

import pytest

from studiowatch.room.readings import Reading
from studiowatch.service.best_hours_desk import RoomHours
from studiowatch.service.commands import SpeakIn
from studiowatch.service.local_time import when_text
from studiowatch.service.plan_commands import SetWorkingHours
from studiowatch.service.plan_desk import UNSEEN_AGAIN_MS
from studiowatch.service.room_ahead import AGAIN_MS
from studiowatch.speech.units import US, choose
from studiowatch.studio.best_hours import SURE, Reason
from studiowatch.studio.pieces import Coat
from studiowatch.studio.plan_shapes import Times
from studiowatch.studio.working_hours import WorkingHours

from .meant_rooms import (
    GLOSS,
    HOUR_MS,
    MINUTE_MS,
    NOW_MS,
    SATIN,
    ColdNights,
    heater,
    piece,
    reason_at,
    watch_over,
)


def test_that_the_hours_stay_the_same_for_ten_minutes_but_for_other_working_hours() -> None:
    watch = watch_over(GLOSS)
    first = watch.snapshot(NOW_MS).best_hours
    assert watch.snapshot(NOW_MS + AGAIN_MS - 1).best_hours is first
    watch.carry_out(SetWorkingHours(hours=WorkingHours(days=(None,) * 7)), NOW_MS, 0.0)
    assert reason_at(watch, 0.0) is Reason.OUTSIDE_HOURS
    before = watch.snapshot(NOW_MS + 1).best_hours
    assert watch.snapshot(NOW_MS + 1 + AGAIN_MS).best_hours is not before


def test_that_hours_that_nobody_sees_stay_until_somebody_looks() -> None:
    watch = watch_over(GLOSS)
    first = watch.snapshot(NOW_MS).best_hours
    watch.desks.see(is_seen=False)
    assert watch.snapshot(NOW_MS + UNSEEN_AGAIN_MS - 1).best_hours is first
    watch.desks.see(is_seen=True)
    assert watch.snapshot(NOW_MS + UNSEEN_AGAIN_MS - 1).best_hours is not first
    second = watch.snapshot(NOW_MS + UNSEEN_AGAIN_MS - 1).best_hours
    watch.desks.see(is_seen=False)
    assert watch.snapshot(NOW_MS + 2 * UNSEEN_AGAIN_MS).best_hours is not second


def test_that_hours_by_an_old_plan_are_worked_out_anew_with_the_new_one() -> None:
    watch = watch_over(GLOSS)
    later_ms = NOW_MS + AGAIN_MS
    by_the_old = watch.snapshot(later_ms).best_hours
    watch.make_plan(later_ms - 1)
    assert watch.snapshot(later_ms).best_hours is by_the_old  # by one that is hardly newer they would say the same
    watch.make_plan(later_ms)
    assert watch.snapshot(later_ms).best_hours is not by_the_old


def test_that_hours_that_are_as_good_are_told_by_time_though_those_of_tomorrow_are_more() -> None:
    (told,) = watch_over(GLOSS).snapshot(NOW_MS).best_hours
    assert all(one.chance >= SURE for one in told.good)
    firsts_ms = [one.first_ms for one in told.good]
    assert firsts_ms != sorted(firsts_ms)  # the longest goes first: the room is warmest now, half of today's is over
    for line, first_ms in zip(told.lines, sorted(firsts_ms), strict=True):
        assert line.startswith(f"lay from {when_text(first_ms, NOW_MS)} to ")


def test_that_the_hours_are_said_by_the_clock_that_she_turns_to() -> None:
    watch = watch_over(GLOSS)
    (before,) = watch.snapshot(NOW_MS).best_hours
    assert not any(line.endswith((" am", " pm")) or " am " in line or " pm " in line for line in before.lines)
    choose(US)
    watch.carry_out(SpeakIn(units=US), NOW_MS, 0.0)
    (after,) = watch.snapshot(NOW_MS + 1000).best_hours
    firsts = sorted(one.first_ms for one in after.good)
    assert [line.split(" to ")[0] for line in after.lines] == [f"lay from {when_text(ms, NOW_MS)}" for ms in firsts]
    assert all(" am" in words or " pm" in words for words in (*after.lines, after.next_line))


def test_that_the_hours_are_said_by_the_plan_beside_them_with_nothing_worked_out_anew() -> None:
    watch = watch_over(
        piece("kiln", Coat(key="g", sheet="gloss-waterborne", laid_ms=NOW_MS), Coat(key="h", sheet=SATIN))
    )
    watch.snapshot(NOW_MS)
    worker = watch.desks.best_hours.work = Later()
    plan = watch.desks.plans.plan
    assert plan is not None
    (kiln,) = plan.pieces
    later_ms = NOW_MS + 7 * HOUR_MS
    coats = (replace(kiln.coats[0], ready=Times(p10=NOW_MS, p50=NOW_MS, p90=later_ms)),)
    watch.desks.plans.plan = replace(plan, made_ms=NOW_MS + MINUTE_MS, pieces=(replace(kiln, coats=coats),))
    (told,) = watch.snapshot(NOW_MS + MINUTE_MS).best_hours
    assert told.ready_ms == later_ms
    assert f"before {when_text(later_ms, NOW_MS)}: what lies below is not ready" in told.aside_lines
    assert {hour.reason for hour in told.hours if hour.start_ms < later_ms} == {Reason.NOT_READY}
    assert worker.asked == []


def test_that_what_lies_below_is_told_once_where_it_is_not_ready_over_the_nights() -> None:
    watch = watch_over(
        piece("kiln", Coat(key="g", sheet="gloss-waterborne", laid_ms=NOW_MS), Coat(key="h", sheet=SATIN)),
        hours=WorkingHours(),
    )
    watch.snapshot(NOW_MS)
    plan = watch.desks.plans.plan
    assert plan is not None
    (kiln,) = plan.pieces
    later_ms = NOW_MS + 60 * HOUR_MS  # past two days, with a night between her working hours
    coats = (replace(kiln.coats[0], ready=Times(p10=NOW_MS, p50=NOW_MS, p90=later_ms)),)
    watch.desks.plans.plan = replace(plan, made_ms=NOW_MS + MINUTE_MS, pieces=(replace(kiln, coats=coats),))
    (told,) = watch.snapshot(NOW_MS + MINUTE_MS).best_hours
    below = [line for line in told.aside_lines if line.endswith("what lies below is not ready")]
    assert below == [f"before {when_text(later_ms, NOW_MS)}: what lies below is not ready"]


class Later:
    """A worker that works on another thread, when it is told to."""

    def __init__(self) -> None:
        self.asked: list[tuple[Callable[[], RoomHours], Future[RoomHours]]] = []
        self.threads: set[int] = set()

    def __call__(self, make: Callable[[], RoomHours]) -> Future[RoomHours]:
        self.asked.append((make, Future()))
        return self.asked[-1][1]

    def do(self) -> None:
        make, answer = self.asked.pop()

        def run() -> RoomHours:
            self.threads.add(get_ident())
            return make()

        with ThreadPoolExecutor(max_workers=1) as pool:
            answer.set_result(pool.submit(run).result())


def test_that_a_worker_works_the_hours_out_as_the_watch_would_while_it_goes_on_with_the_earlier_ones() -> None:
    at_once = watch_over(GLOSS)
    worker = Later()
    watch = watch_over(GLOSS)
    watch.desks.best_hours.work = worker
    assert watch.snapshot(NOW_MS).best_hours == ()
    assert watch.snapshot(NOW_MS + 1000).best_hours == ()
    assert len(worker.asked) == 1  # asked once while it is at it
    worker.do()
    first = watch.snapshot(NOW_MS + 2000).best_hours
    assert first == at_once.snapshot(NOW_MS).best_hours
    assert get_ident() not in worker.threads
    for one in (watch, at_once):
        one.carry_out(heater(), NOW_MS + 3000, 3.0)
    assert watch.snapshot(NOW_MS + 3000).best_hours is first
    worker.do()
    assert watch.snapshot(NOW_MS + 4000).best_hours == at_once.snapshot(NOW_MS + 3000).best_hours
    assert reason_at(watch, 12.0, NOW_MS + 4000) is None
    assert worker.asked == []


def test_that_what_a_worker_fails_at_is_not_hidden_and_the_earlier_hours_stand() -> None:
    watch, worker = watch_over(GLOSS), Later()
    first = watch.snapshot(NOW_MS).best_hours
    watch.desks.best_hours.work = worker
    watch.snapshot(NOW_MS + AGAIN_MS)
    _, answer = worker.asked.pop()
    answer.set_exception(ValueError("a fault of ours"))
    with pytest.raises(ValueError, match="a fault of ours"):
        watch.snapshot(NOW_MS + AGAIN_MS + 1000)
    assert watch.snapshot(NOW_MS + AGAIN_MS + 2000).best_hours is first


def test_that_a_room_logged_for_less_than_a_day_is_said_to_be_unknown() -> None:
    class Short(ColdNights):
        def minute_means(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
            return [one for one in super().minute_means(start_ms, end_ms) if one.time_ms > NOW_MS - 20 * HOUR_MS]

    (told,) = watch_over(GLOSS, log=Short()).snapshot(NOW_MS).best_hours
    assert told.hours == told.lines == ()
    assert told.unknown.startswith("Not known yet")
