"""The plan beside the watch: its dates are those of the film model, and it is made off the keeper's road."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from concurrent.futures import Future
from dataclasses import replace
from datetime import UTC, date, datetime
from pathlib import Path

import pytest

from studiowatch.board.events import LineCounts, ReadingArrived
from studiowatch.coats.anchoring import Anchor, anchor
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.draws import Draws
from studiowatch.coats.prediction import predict
from studiowatch.coats.readiness import outlook, ready_at
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air
from studiowatch.room.readings import Reading
from studiowatch.service import film_waits
from studiowatch.service.air_ahead import steady
from studiowatch.service.coat_run import HORIZON_S
from studiowatch.service.commands import Refused, SpeakIn
from studiowatch.service.correction_commands import Undo
from studiowatch.service.film_waits import FilmWaits, PlanDropped
from studiowatch.service.local_time import clock_text, local_date, when_text
from studiowatch.service.plan_commands import PlanCoats, SaveRecipe, SetWorkingHours
from studiowatch.service.plan_desk import AGAIN_MS, FORETOLD_MS, Work, last_air
from studiowatch.service.product_views import LearntView
from studiowatch.service.replaying import MemoryRecords, NoLog
from studiowatch.service.sheet_commands import DropSheet, KeepSheet
from studiowatch.service.sheet_folder import SheetFolder
from studiowatch.service.sheet_shelf import SheetShelf, built_in_sheets
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.service.what_if import WhatIf
from studiowatch.speech.units import US, choose
from studiowatch.studio.otherwise import Otherwise
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.studio.plan_shapes import FinishingPlan, Milestone
from studiowatch.studio.working_hours import GRAIN_MS, WorkingHours

from .scripted import START_MS, still

HOUR_MS = 3_600_000
SHEETS = built_in_sheets()
AIR = Air(temperature_C=20.5, humidity_pct=50.0, air_speed_m_s=0.04)
ALWAYS = WorkingHours(days=((0, 24 * 60),) * 7)


class Later:
    """A worker that works when the test says so."""

    def __init__(self) -> None:
        self.asked: list[tuple[Callable[[], FinishingPlan], Future[FinishingPlan]]] = []

    def __call__(self, make: Callable[[], FinishingPlan]) -> Future[FinishingPlan]:
        done: Future[FinishingPlan] = Future()
        self.asked.append((make, done))
        return done

    def work(self) -> None:
        make, done = self.asked.pop(0)
        done.set_result(make())


def piece(**changes: object) -> Piece:
    plain = Piece(
        key="p",
        title="Kiln Light",
        width_cm=40,
        height_cm=40,
        due=date(2026, 4, 20),
        coats=(
            Coat(key="iso", sheet="isolation-waterborne", laid_ms=START_MS - 30 * 60_000),
            Coat(key="gloss", sheet="gloss-waterborne"),
        ),
    )
    return replace(plain, **changes)


def watch_of(
    *pieces: Piece, work: Work | None = None, hours: WorkingHours = ALWAYS, sheets: Path | None = None
) -> Watchkeeping:
    records = MemoryRecords(held={one.key: one for one in pieces}, kept_hours=hours)
    watch = Watchkeeping(
        log=NoLog(),
        records=records,
        shelf=SheetShelf.open(),
        clock_text=clock_text,
        local_date=local_date,
        began_ms=START_MS,
        plan_work=work,
        sheet_folder=None if sheets is None else SheetFolder(folder=sheets),
    )
    watch.open()
    live(watch, 0)
    return watch


def live(watch: Watchkeeping, second: int, *, is_seen: bool = True, **air: object) -> None:
    reading = still(START_MS + second * 1000, **air)
    watch.take(ReadingArrived(reading=reading, counts=LineCounts()), float(second))
    watch.look(START_MS + second * 1000, float(second), is_seen=is_seen)


def test_that_a_coat_to_come_needs_what_predict_says_of_it_in_the_same_air() -> None:
    # predict is another road through the model; it takes the cover from the laying on or not at all, and the waits from
    # the twentieth minute on, so they lie between its two
    sheet = SHEETS["gloss-waterborne"]
    waits = FilmWaits(air_ahead=steady(AIR)).of(
        sheet, side_m=0.4, orientation=piece().orientation, through=False, lay_ms=START_MS
    )
    assert waits is not None
    bare, covered = (
        predict(sheet, wet_um=sheet.wet_um, side_m=0.4, room=AIR, covered=cover, seed=20260301)
        for cover in (False, True)
    )
    for stage, told in ((Stage.DRY_HARD, waits.handle), (Stage.CURED, waits.cured)):
        for share in ("p10", "p50", "p90"):
            low, high = (getattr(one.stages[stage], f"{share}_s") for one in (bare, covered))
            assert low * 0.999 <= getattr(told, share) / 1000 <= high * 1.001
    low, high = (one.stages[Stage.DRY_TO_RECOAT].p90_s for one in (bare, covered))
    assert low is not None
    assert high is not None
    assert low * 0.999 <= (waits.next.p90 or 0) / 1000 <= high * 1.001


def test_that_the_next_coat_never_waits_less_than_the_sheet_says() -> None:
    # 4 h on the generic sheet; its own recoat time is the least, whatever a warm dry room would give
    warm = replace(AIR, temperature_C=29.0, humidity_pct=35.0)
    waits = FilmWaits(air_ahead=steady(warm)).of(
        SHEETS["gloss-waterborne"], side_m=0.4, orientation=piece().orientation, through=False, lay_ms=START_MS
    )
    assert waits is not None
    assert waits.next.p10 is not None
    assert waits.next.p10 >= 4 * HOUR_MS


def test_that_what_was_asked_once_is_remembered_while_the_air_ahead_is_the_same() -> None:
    waits = FilmWaits(air_ahead=steady(AIR))
    for lay_ms in (START_MS, START_MS + 5 * HOUR_MS):
        waits.of(SHEETS["gloss-waterborne"], side_m=0.4, orientation=piece().orientation, through=False, lay_ms=lay_ms)
    assert waits.runs == 1


def test_that_another_room_has_no_sheet_tied_to_its_draws_anew(monkeypatch: pytest.MonkeyPatch) -> None:
    tied: list[str] = []

    def tie(sheet: DataSheet, draws: Draws) -> Anchor:
        tied.append(sheet.name)
        return anchor(sheet, draws)

    monkeypatch.setattr(film_waits, "anchor", tie)
    waits = FilmWaits(air_ahead=steady(AIR))
    warmer = waits.in_air(steady(replace(AIR, temperature_C=27.0)))
    cool, warm = (
        one.of(SHEETS["gloss-waterborne"], side_m=0.4, orientation=piece().orientation, through=False, lay_ms=START_MS)
        for one in (waits, warmer)
    )
    assert tied == ["gloss-waterborne"]
    assert cool is not None
    assert warm is not None
    assert cool.cured.p50 > warm.cured.p50  # type: ignore[operator]


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


def test_that_the_air_ahead_of_the_laying_is_what_counts() -> None:
    cold = replace(AIR, temperature_C=15.0, humidity_pct=70.0)

    def turning(from_ms: int, horizon_s: float) -> tuple[tuple[Air, float], ...]:
        return ((AIR if from_ms < START_MS + HOUR_MS else cold, horizon_s),)

    waits = FilmWaits(air_ahead=turning)
    told = [
        waits.of(SHEETS["gloss-waterborne"], side_m=0.4, orientation=piece().orientation, through=False, lay_ms=lay_ms)
        for lay_ms in (START_MS, START_MS + 2 * HOUR_MS)
    ]
    assert all(one is not None and one.cured.p50 is not None for one in told)
    assert told[0].cured.p50 < told[1].cured.p50  # type: ignore[union-attr, operator]


def test_that_the_first_coat_is_dated_by_the_live_film_and_never_before_the_card_says() -> None:
    watch = watch_of(piece())
    plan = watch.make_plan(START_MS)
    (card,) = watch.snapshot(START_MS).pieces
    (told,) = plan.pieces
    assert told.coats[0].ready.p90 == card.next_ms
    assert card.next_ms is not None
    assert told.coats[0].lay_ms is not None
    assert 0 <= told.coats[0].lay_ms - card.next_ms < 5 * 60_000  # the next five minutes on the clock


def test_that_the_card_says_no_earlier_perhaps_than_the_plan_nor_than_the_sheet_allows() -> None:
    # gloss in 20.5 °C and 35 %: one draw in ten is ready before the 4 h of its sheet
    coats = (Coat(key="one", sheet="gloss-waterborne", laid_ms=START_MS), Coat(key="two", sheet="gloss-waterborne"))
    watch = watch_of(piece(coats=coats))
    for second in range(30, 630, 30):
        live(watch, second, humidity_pct=35.0)
    now_ms = START_MS + 600_000
    early_s = watch.desks.rack.runs["one"].ahead[Stage.DRY_TO_RECOAT].p10_s
    assert early_s is not None
    assert early_s < 4 * 3600
    (card,) = watch.snapshot(now_ms).pieces
    (film,) = watch.desks.films_to_come(now_ms).films
    recoat = card.coats[0].stage(Stage.DRY_TO_RECOAT)
    assert recoat is not None
    told = (
        card.next_p10_ms,
        recoat.p10_ms,
        film.when(Stage.DRY_TO_RECOAT, film.times[Stage.DRY_TO_RECOAT]).p10_ms,
        watch.make_plan(now_ms).pieces[0].coats[0].ready.p10,
    )
    assert told == (START_MS + 4 * HOUR_MS,) * 4


def test_that_paint_that_waits_weeks_has_one_time_on_card_plan_and_what_if() -> None:
    # poured paint waits 7 days by its sheet: more than the four that are followed step by step
    coats = (Coat(key="paint", sheet="paint-poured", laid_ms=START_MS - 40 * HOUR_MS), piece().coats[1])
    watch = watch_of(piece(coats=coats))
    (card,), (told,) = watch.snapshot(START_MS).pieces, watch.make_plan(START_MS).pieces
    (asked,) = WhatIf(lent=watch.desks.films_to_come(START_MS)).answers(Otherwise())
    assert card.next_ms is not None
    assert card.next_ms >= START_MS + (168 - 40) * HOUR_MS
    assert card.not_yet is not None
    assert "no time" not in card.not_yet.detail
    assert told.coats[0].ready.p90 == card.next_ms
    assert asked.stages[-1].stage is Stage.DRY_TO_RECOAT
    assert asked.stages[-1].as_it_comes.by_ms == asked.stages[-1].otherwise.by_ms == card.next_ms


def test_that_a_coat_that_never_dries_here_has_no_time_and_nothing_to_spare_anywhere() -> None:
    watch = watch_of(piece())
    for second in range(30, 1230, 30):
        live(watch, second, temperature_C=12.0, humidity_pct=90.0)
    now_ms = START_MS + 1_200_000
    (told,) = watch.make_plan(now_ms).pieces
    (card,), (film,) = watch.snapshot(now_ms).pieces, watch.desks.films_to_come(now_ms).films
    assert card.next_ms is None
    assert film.when(film.goal, film.times[film.goal]).by_ms is None
    assert told.coats[0].ready.p90 is None
    assert told.coats[0].lay_ms is None
    assert told.slack_days is None
    assert card.slack_days is None


def over_water_borne(laid_h: float, *above: str) -> Watchkeeping:
    """Return a watch of one piece with water-borne gloss of so many hours on it, and what is to come."""
    coats = (Coat(key="low", sheet="gloss-waterborne", laid_ms=START_MS - round(laid_h * HOUR_MS)),)
    watch = watch_of(piece(coats=coats + tuple(Coat(key=name, sheet=name) for name in above)))
    live(watch, 0)
    return watch


def through_ms(watch: Watchkeeping) -> tuple[int, int]:
    """Return when nine draws in ten are dry to recoat, and dry through, UTC ms."""
    run = watch.desks.rack.runs["low"]
    recoat_s, through_s = (run.ahead[stage].p90_s for stage in (Stage.DRY_TO_RECOAT, Stage.DRY_THROUGH))
    assert recoat_s is not None
    assert through_s is not None
    return run.laid_ms + round(recoat_s * 1000), run.laid_ms + round(through_s * 1000)


@pytest.mark.parametrize("laid_h", [0.5, 10.0])
def test_that_a_solvent_borne_coat_waits_until_the_water_borne_below_is_dry_through(laid_h: float) -> None:
    # after 10 h gloss is dry to recoat, as any other coat asks for; all tell the one time at which it is dry through
    watch = over_water_borne(laid_h, "gloss-solventborne")
    (plan,), (card,) = watch.make_plan(START_MS).pieces, watch.snapshot(START_MS).pieces
    (asked,) = WhatIf(lent=watch.desks.films_to_come(START_MS)).answers(Otherwise())
    recoat_ms, deep_ms = through_ms(watch)
    assert deep_ms > START_MS
    assert recoat_ms < deep_ms
    assert (recoat_ms < START_MS) == (laid_h == 10.0)
    prompts = {one.key.rpartition(":")[2]: one.due_ms for one in watch.snapshot(START_MS).prompts}
    goal = asked.stages[-1]
    assert goal.stage is Stage.DRY_TO_RECOAT
    assert {
        card.next_ms,
        plan.coats[0].ready.p90,
        goal.as_it_comes.by_ms,
        goal.otherwise.by_ms,
        prompts["touch-test"],
        prompts["recoat"],
    } == {deep_ms}
    assert card.next_p10_ms == plan.coats[0].ready.p10 == goal.as_it_comes.p10_ms
    stop = card.stop(solvent=True)
    assert stop is not None
    assert stop.detail.startswith(f"Ready from {when_text(deep_ms, START_MS)}")
    assert (card.stop(solvent=False) is None) == (laid_h == 10.0)
    assert "only once that is dry through" in dict(card.stack_checks)["gloss-solventborne"].detail
    assert "solvent-over-water" in [remark.rule.value for remark in plan.remarks]


def test_that_another_room_moves_the_time_at_which_it_is_dry_through() -> None:
    watch = over_water_borne(0.5, "gloss-solventborne")
    films = watch.desks.films_to_come(START_MS)
    (asked,) = WhatIf(lent=films).answers(Otherwise(temperature_C=24.0, humidity_pct=40.0), whole=True)
    (film,) = films.films
    air = Air(temperature_C=24.0, humidity_pct=40.0, air_speed_m_s=0.04)
    table = outlook(film.film, air, horizon_s=HORIZON_S, covered=film.covered)
    expected_s = max(
        ready_at(table[ROW[stage]], film.weights).p90_s or 0.0 for stage in (Stage.DRY_TO_RECOAT, Stage.DRY_THROUGH)
    )
    to_go_s = expected_s - 1800.0
    told_s = ((asked.stages[-1].otherwise.by_ms or 0) - film.laid_ms) / 1000
    assert told_s == pytest.approx(expected_s, abs=0.002 * to_go_s + 1.0)


def test_that_a_coat_that_is_dry_through_may_be_covered_by_any() -> None:
    watch = over_water_borne(24.0, "gloss-solventborne")
    (card,) = watch.snapshot(START_MS).pieces
    _, deep_ms = through_ms(watch)
    assert card.next_ms == deep_ms < START_MS
    assert card.stop(solvent=True) is None
    assert "dry through" not in dict(card.stack_checks)["gloss-solventborne"].detail


def test_that_a_solvent_borne_coat_planned_instead_is_not_due_because_a_water_borne_one_was() -> None:
    watch = over_water_borne(10.0, "satin-waterborne")
    assert {one.due_ms for one in watch.snapshot(START_MS).prompts if one.key.endswith(":recoat")} == {START_MS}
    watch.carry_out(PlanCoats(piece_key="p", sheets=("gloss-solventborne",)), START_MS, 0.0)
    live(watch, 1)
    _, deep_ms = through_ms(watch)
    assert [one.due_ms for one in watch.snapshot(START_MS + 1000).prompts if one.key.endswith(":recoat")] == [deep_ms]


def test_that_slack_on_the_card_comes_from_the_plan() -> None:
    watch = watch_of(piece())
    assert watch.snapshot(START_MS).pieces[0].slack_days is None
    plan = watch.make_plan(START_MS)
    ship = plan.pieces[0].milestone(Milestone.SHIP)
    assert ship is not None
    assert ship.times.p90 is not None
    days = (date(2026, 4, 20) - datetime.fromtimestamp(ship.times.p90 / 1000, UTC).astimezone().date()).days
    assert watch.snapshot(START_MS).pieces[0].slack_days == days


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


def test_that_a_plan_is_made_anew_after_a_minute_or_when_something_was_done() -> None:
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
    for second in range(44, 44 + AGAIN_MS // 1000):
        live(watch, second)
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


def test_that_no_reading_yet_is_dated_for_the_sheets_own_air_and_says_so() -> None:
    records = MemoryRecords(held={"p": piece(coats=(Coat(key="g", sheet="gloss-waterborne"),))}, kept_hours=ALWAYS)
    watch = Watchkeeping(
        log=NoLog(),
        records=records,
        shelf=SheetShelf.open(),
        clock_text=clock_text,
        local_date=local_date,
        began_ms=START_MS,
    )
    watch.open()
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


def test_that_what_a_coat_now_would_break_stands_on_its_piece_for_each_sheet() -> None:
    coats = (
        Coat(key="i", sheet="isolation-waterborne", laid_ms=START_MS - 60 * HOUR_MS),
        Coat(key="s", sheet="satin-waterborne", laid_ms=START_MS - 30 * HOUR_MS),
    )
    (view,) = watch_of(piece(coats=coats)).snapshot(START_MS).pieces
    checks = dict(view.stack_checks)
    assert checks["gloss-waterborne"].headline == "Not in this order: gloss goes below satin and matt"
    assert "satin-waterborne" not in checks  # a second coat with matting agent: the generic sheet allows two
    assert checks["matt-waterborne"].headline == "Too many coats with matting agent"


def test_that_a_sheet_typed_in_edited_or_deleted_is_checked_at_once_by_what_it_says_now(tmp_path: Path) -> None:
    watch = watch_of(piece(), sheets=tmp_path)  # isolation, half an hour old: nothing solvent-borne goes on it yet

    def headline() -> str | None:
        (view,) = watch.snapshot(START_MS).pieces
        sentence = dict(view.stack_checks).get("spirit-gloss")
        return None if sentence is None else sentence.headline

    spirit = {"name": "spirit-gloss", "title": "Spirit gloss", "kind": "solventborne", "sheen": "gloss"}
    spirit |= {"volume_solids": 0.4, "wet_um": 80.0, "touch_dry_min": 240.0, "recoat_h": 24.0, "matting_agent": False}
    on_water = "Only once the coat below is dry through"
    told = [headline()]
    for command in (
        KeepSheet(fields=spirit),
        KeepSheet(fields={**spirit, "kind": "waterborne"}),
        Undo(),
        DropSheet(name="spirit-gloss"),
        Undo(),
    ):
        watch.carry_out(command, START_MS, 0.0)
        told.append(headline())
    assert told == [None, on_water, None, on_water, None, on_water]
