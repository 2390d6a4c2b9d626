"""The plan beside the watch: made by a worker off the keeper's road, and anew where it would say something else."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

import pytest

from studiowatch.room.readings import Reading
from studiowatch.service.commands import Refused, SpeakIn
from studiowatch.service.film_waits import PlanDropped
from studiowatch.service.plan_commands import PlanCoats, SaveRecipe, SetWorkingHours
from studiowatch.service.plan_desk import AGAIN_MS, FORETOLD_MS, last_air
from studiowatch.service.product_views import LearntView
from studiowatch.service.replaying import NoLog
from studiowatch.speech.units import US, choose
from studiowatch.studio.pieces import Coat
from studiowatch.studio.working_hours import GRAIN_MS, WorkingHours

from .planned_studio import AIR, HOUR_MS, Later, live, piece, unread_watch_of, watch_of
from .scripted import START_MS, still


def test_that_a_plan_is_made_by_the_worker_and_the_watch_does_not_wait_for_it() -> None:
    later = Later()
    watch = watch_of(piece(), work=later)
    assert watch.snapshot(START_MS).plan is None
    assert len(later.asked) == 1
    live(watch, 5)
    assert len(later.asked) == 1  # one at a time
    later.work()
    live(watch, 6)
    plan = watch.snapshot(START_MS).plan
    assert plan is not None
    assert plan.made_ms == START_MS


def test_that_a_plan_is_made_anew_after_three_minutes_or_when_something_was_done() -> None:
    later = Later()
    watch = watch_of(piece(), work=later)
    later.work()
    for second in range(1, 40):
        live(watch, second)
    assert not later.asked
    watch.carry_out(PlanCoats(piece_key="p", sheets=("satin-waterborne",)), START_MS + 40_000, 40.0)
    live(watch, 41)
    live(watch, 42)
    assert len(later.asked) == 1
    later.work()
    live(watch, 43)
    plan = watch.snapshot(START_MS).plan
    assert plan is not None
    assert [coat.coat.sheet for coat in plan.pieces[0].coats] == ["satin-waterborne"]
    again_s = (plan.made_ms - START_MS) // 1000 + 180
    for second in range(44, again_s):
        live(watch, second)
    assert not later.asked
    live(watch, again_s)
    assert len(later.asked) == 1


def test_that_a_plan_follows_the_card_of_a_coat_that_lies_there_when_the_room_turns_damp() -> None:
    later = Later()
    watch = watch_of(piece(), work=later)
    later.work()
    live(watch, 1)
    first = watch.snapshot(START_MS).pieces[0].next_ms
    until_s = AGAIN_MS // 1000 - 1
    for second in range(2, until_s):
        live(watch, second, humidity_pct=65.0)
        if later.asked:
            later.work()
    now = watch.snapshot(START_MS + until_s * 1000)
    assert now.plan is not None
    card_ms, plan_ms = now.pieces[0].next_ms, now.plan.pieces[0].coats[0].ready.p90
    assert first is not None
    assert card_ms is not None
    assert plan_ms is not None
    assert card_ms - first > GRAIN_MS
    assert abs(plan_ms - card_ms) < GRAIN_MS


def test_that_a_plan_is_said_anew_in_the_units_that_she_turns_to() -> None:
    # 20.5 °C = 68.9 °F: NIST SP 811 (2008), appendix B.8
    later = Later()
    watch = watch_of(piece(), work=later)
    later.work()
    live(watch, 1)
    before = watch.snapshot(START_MS).plan
    assert before is not None
    assert ("mL" in before.first, "20.5 °C" in before.air) == (True, True)
    choose(US)
    watch.carry_out(SpeakIn(units=US), START_MS + 2000, 2.0)
    live(watch, 2)
    later.work()
    live(watch, 3)
    after = watch.snapshot(START_MS).plan
    assert after is not None
    assert ("fl oz" in after.first, "68.9 °F" in after.air) == (True, True)


def test_that_a_plan_nobody_sees_does_not_follow_the_card() -> None:
    later = Later()
    watch = watch_of(piece(), work=later)
    later.work()
    for second in range(1, AGAIN_MS // 1000 - 1):
        live(watch, second, is_seen=False, humidity_pct=65.0)
    assert not later.asked


def test_that_a_plan_nobody_sees_waits_until_somebody_looks_or_something_is_done() -> None:
    later = Later()
    watch = watch_of(piece(), work=later)
    later.work()
    for second in range(1, 2 * AGAIN_MS // 1000):
        watch.look(START_MS + second * 1000, float(second), is_seen=False)
    assert not later.asked
    again_s = 2 * AGAIN_MS // 1000
    watch.look(START_MS + again_s * 1000, float(again_s), is_seen=True)
    assert len(later.asked) == 1
    later.work()
    watch.carry_out(PlanCoats(piece_key="p", sheets=("satin-waterborne",)), START_MS + again_s * 1000, float(again_s))
    watch.look(START_MS + (again_s + 2) * 1000, again_s + 2.0, is_seen=False)
    watch.look(START_MS + (again_s + 3) * 1000, again_s + 3.0, is_seen=False)
    assert len(later.asked) == 1


def test_that_a_watch_that_is_closed_does_not_wait_for_a_plan_that_is_being_made() -> None:
    later = Later()
    watch = watch_of(piece(), work=later)
    watch.close(0.0)
    make, _ = later.asked.pop()
    with pytest.raises(PlanDropped):
        make()


def test_that_a_room_foretold_anew_keeps_what_was_tied_while_nothing_was_learnt() -> None:
    desk = watch_of(piece()).desks.plans
    first = desk._film_waits(AIR, START_MS)
    later = desk._film_waits(replace(AIR, temperature_C=25.0), START_MS + FORETOLD_MS)
    assert later is not first
    assert later._tied is first._tied
    desk.rack.learning._views = (
        LearntView(sheet="gloss-waterborne", times_as_long=1.2, low=1.1, high=1.3, tests=1, coats=1, sentence=""),
    )
    assert desk._film_waits(AIR, START_MS + FORETOLD_MS)._tied is not first._tied


def test_that_no_reading_yet_is_dated_for_the_sheets_own_air_and_says_so() -> None:
    watch = unread_watch_of(piece(coats=(Coat(key="g", sheet="gloss-waterborne"),)))
    assert watch.make_plan(START_MS).air.startswith("No reading of the room yet: 23 °C and 50 % RH")
    live(watch, 1)
    assert "20.5 °C, 50 % RH" in watch.make_plan(START_MS + 1000).air


class DayLog(NoLog):
    """A day of hourly readings, the last three of them without humidity; counts how often each was read."""

    def __init__(self) -> None:
        faulty = {"humidity_pct": None}
        hours = ((back, START_MS - back * HOUR_MS) for back in range(23, -1, -1))
        self.held = [still(at_ms, temperature_C=10.0 + back, **(faulty if back < 3 else {})) for back, at_ms in hours]
        self.read: Counter[int] = Counter()

    def minute_means(self, start_ms: int, end_ms: int) -> list[Reading]:
        found = [reading for reading in self.held if start_ms <= reading.time_ms < end_ms]
        self.read.update(reading.time_ms for reading in found)
        return found


def test_that_the_last_air_is_sought_back_through_the_day_and_nothing_is_read_twice() -> None:
    log = DayLog()
    air = last_air(log, START_MS)
    assert air is not None
    assert air.temperature_C == 13.0
    assert set(log.read.values()) == {1}
    assert last_air(NoLog(), START_MS) is None


def test_that_hours_and_recipes_are_kept_and_refused_in_one_sentence() -> None:
    watch = watch_of(piece())
    watch.carry_out(SetWorkingHours(hours=WorkingHours()), START_MS, 0.0)
    assert watch.snapshot(START_MS).hours == WorkingHours()
    watch.carry_out(SaveRecipe(name=" Two  gloss ", sheets=("gloss-waterborne",) * 2), START_MS, 0.0)
    assert [recipe.name for recipe in watch.snapshot(START_MS).recipes if recipe.own] == ["Two gloss"]
    for name, sheets, says in (
        ("", ("gloss-waterborne",), "0 characters; give it 1 to 60"),
        ("Thick", ("gloss-waterborne",) * 13, "13 coats; give it 1 to 12"),
        ("Odd", ("nowhere",), "no data sheet 'nowhere'"),
    ):
        with pytest.raises(Refused, match=says):
            watch.carry_out(SaveRecipe(name=name, sheets=sheets), START_MS, 0.0)
    watch.carry_out(SaveRecipe(name="Two gloss", sheets=()), START_MS, 0.0)
    assert not [recipe for recipe in watch.snapshot(START_MS).recipes if recipe.own]


def test_that_a_laid_coat_without_its_sheet_leaves_the_piece_undated_and_the_others_planned() -> None:
    lost = piece(
        key="q", title="Lost", coats=(Coat(key="x", sheet="gone", laid_ms=START_MS - 1000), *piece().coats[1:])
    )
    plan = watch_of(lost, piece()).make_plan(START_MS)
    assert plan.pieces[0].unsure.startswith("No time for gloss")
    assert plan.pieces[1].coats[0].lay_ms is not None
