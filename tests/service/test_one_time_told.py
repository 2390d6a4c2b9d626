"""One time for one thing: card, plan, prompts and what-if tell the same of a coat that lies there."""

from __future__ import annotations

from datetime import UTC, date, datetime

import pytest

from studiowatch.coats.readiness import outlook, ready_at
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air
from studiowatch.service.coat_run import HORIZON_S
from studiowatch.service.local_time import when_text
from studiowatch.service.plan_commands import PlanCoats
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.service.what_if import WhatIf
from studiowatch.studio.otherwise import Otherwise
from studiowatch.studio.pieces import Coat
from studiowatch.studio.plan_shapes import Milestone

from .planned_studio import HOUR_MS, live, piece, watch_of
from .scripted import START_MS


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
