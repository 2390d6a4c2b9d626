"""A coat that was found tacky or milky last is called ready nowhere before a new test, or well after that one."""

from __future__ import annotations

import pytest

from studiowatch.coats.stages import Stage
from studiowatch.service.commands import ArchivePiece, RecordLook, RecordOutcome
from studiowatch.service.happenings import PromptHappened, StageHappened
from studiowatch.service.local_time import when_text
from studiowatch.service.piece_view import PieceView
from studiowatch.service.what_if import WhatIf
from studiowatch.studio.otherwise import Otherwise
from studiowatch.studio.pieces import Coat, Finding, Outcome

from .scripted import START_MS
from .typed_studio import HOUR_MS, MINUTE_MS, Studio

DAY_MS = 24 * HOUR_MS
NEXT = Coat(key="i", sheet="isolation-waterborne")
LAY, TEST, LOOK = "Lay isolation", "Touch test", "Has the milkiness cleared?"


def painted(days: float, sheet: str = "paint-brushed", *above: Coat) -> Studio:
    """Return a studio with a coat of unknown thickness of so many days on its piece, and one to come."""
    studio = Studio(coats=(Coat(key="p", sheet=sheet, laid_ms=START_MS - round(days * DAY_MS)), *(above or (NEXT,))))
    studio.type_in()
    return studio


def found(studio: Studio, finding: Finding) -> PieceView:
    look = RecordLook(coat_key="p", time_ms=studio.now_ms, finding=finding)
    studio.watch.carry_out(look, studio.now_ms, studio.now_ms / 1000)
    studio.look()
    return studio.wait(MINUTE_MS).pieces[0]


def due(studio: Studio, words: str) -> list[int]:
    return [prompt.due_ms for prompt in studio.snapshot().prompts if prompt.text.startswith(words)]


def planned_ms(studio: Studio) -> tuple[int | None, str]:
    (plan,) = studio.watch.make_plan(studio.now_ms).pieces
    return plan.coats[0].lay_ms, plan.unsure


def verdict(piece: PieceView) -> tuple[str, str]:
    assert piece.not_yet is not None
    return piece.not_yet.headline, piece.not_yet.detail


@pytest.mark.parametrize("days", [3, 9])
def test_that_a_coat_just_found_tacky_is_called_ready_nowhere(days: int) -> None:
    studio = painted(days)
    before = studio.snapshot().pieces[0]
    assert before.next_ms is not None
    assert before.next_ms < START_MS  # it was ready until she touched it
    assert due(studio, LAY) == [START_MS]
    piece = found(studio, Finding.TACKY)
    again_ms = START_MS + days * DAY_MS // 10
    assert (piece.next_ms, piece.next_p10_ms) == (None, None)
    assert verdict(piece) == (
        f"Not yet: paint was found tacky, {when_text(START_MS, studio.now_ms)}",
        f"Test it again from {when_text(again_ms, studio.now_ms)}: a new test decides.",
    )
    assert due(studio, LAY) == []
    assert due(studio, TEST) == [again_ms]
    assert planned_ms(studio) == (None, "The paint was found tacky: nothing is dated before a new test.")
    assert [time.stage for time in piece.coats[0].stages if time.reached] == [
        Stage.SET_TO_TOUCH,
        Stage.DUST_FREE,
        Stage.TACK_FREE,
        Stage.DRY_TO_TOUCH,
    ]


def test_that_one_stage_is_not_called_by_the_name_of_another_before_laying() -> None:
    # 44 h old, of unknown thickness: dry through by the model, and the late end of its range at 47.5 h still to come
    studio = painted(44 / 24)
    piece = studio.snapshot().pieces[0]
    through = piece.coats[0].stage(Stage.DRY_THROUGH)
    assert through is not None
    assert through.reached
    assert verdict(piece)[0] == "Not yet: paint is not surely ready for the next coat"


def test_that_nothing_is_called_ready_while_nobody_tests_again_and_a_dry_finding_brings_it_back() -> None:
    studio = painted(3)
    found(studio, Finding.TACKY)
    piece = studio.wait(30 * HOUR_MS, step_ms=10 * MINUTE_MS).pieces[0]
    assert piece.next_ms is None
    assert piece.not_yet is not None
    assert due(studio, LAY) == []
    assert planned_ms(studio)[0] is None
    dry_ms = studio.now_ms
    piece = found(studio, Finding.DRY)
    assert piece.next_ms is not None
    assert piece.next_ms <= studio.now_ms
    assert piece.not_yet is None
    assert due(studio, LAY) == [dry_ms]
    assert (planned_ms(studio)[0] or 0) > studio.now_ms


def test_that_a_time_well_after_the_finding_is_told_with_a_test_at_it() -> None:
    # 48 h old: the next coat may go on at 71 h by what the model learnt, well after the 52.8 h of a new test
    studio = painted(2)
    assert due(studio, LAY) == [START_MS]
    piece = found(studio, Finding.TACKY)
    again_ms = START_MS + 2 * DAY_MS // 10
    assert piece.next_ms is not None
    assert piece.next_p10_ms is not None
    assert again_ms <= piece.next_p10_ms < piece.next_ms
    assert verdict(piece)[0].startswith("Not yet: paint was found tacky")
    assert verdict(piece)[1].startswith(f"Ready from {when_text(piece.next_ms, studio.now_ms)}")
    assert due(studio, LAY) == due(studio, TEST) == [piece.next_ms]
    assert (planned_ms(studio)[0] or 0) >= piece.next_ms
    studio.told.clear()
    later = studio.wait(24 * HOUR_MS, step_ms=10 * MINUTE_MS).pieces[0]
    assert later.not_yet is None
    told = [one.stage for one in studio.told if isinstance(one, StageHappened)]
    assert told.count(Stage.DRY_TO_RECOAT) == 1
    asked = [one.text.split(",")[0] for one in studio.told if isinstance(one, PromptHappened)]
    assert [text for text in asked if text.startswith((LAY, TEST))] == [
        "Touch test at an edge before the next coat",
        "Lay isolation",
    ]


@pytest.mark.parametrize("whole", [False, True])
def test_that_no_other_room_has_it_ready_before_a_new_test(*, whole: bool) -> None:
    # 55.2 h old, a new test from 60.7 h on: ready by the model alone after that in this room, and before it in heat
    studio = painted(2.3)
    card = found(studio, Finding.TACKY)
    again_ms = START_MS + round(2.3 * DAY_MS) // 10
    asked = WhatIf(lent=studio.watch.films_to_come(studio.now_ms))
    (heat,) = asked.answers(Otherwise(temperature_C=40.0, humidity_pct=20.0), whole=whole)
    goal = heat.stages[-1]
    assert goal.stage is Stage.DRY_TO_RECOAT
    assert (goal.as_it_comes.p10_ms, goal.as_it_comes.by_ms) == (card.next_p10_ms, card.next_ms)
    assert goal.as_it_comes.p10_ms == goal.otherwise.p10_ms == goal.otherwise.by_ms == again_ms


def test_that_a_coat_found_milky_long_after_it_should_be_clear_is_not_called_ready() -> None:
    studio = painted(3, "gloss-waterborne")
    piece = found(studio, Finding.MILKY)
    again_ms = START_MS + 3 * DAY_MS // 10
    assert piece.next_ms is None
    assert verdict(piece)[0].startswith("Not yet: gloss was found still milky")
    assert due(studio, "Recoat") == due(studio, TEST) == []
    assert due(studio, LOOK) == [again_ms]
    dry = found(studio, Finding.DRY)
    assert dry.next_ms is None  # a dry film may be milky still
    clear = found(studio, Finding.CLEAR)
    assert clear.not_yet is None
    assert due(studio, LOOK) == []


def test_that_how_a_coat_came_out_answers_whether_it_is_milky() -> None:
    studio = painted(3, "gloss-waterborne")
    found(studio, Finding.MILKY)
    outcome = RecordOutcome(coat_key="p", seen_ms=studio.now_ms, outcome=Outcome.MILKY_ALL_OVER)
    studio.watch.carry_out(outcome, studio.now_ms, studio.now_ms / 1000)
    assert studio.wait(MINUTE_MS).pieces[0].not_yet is None


def last_coat() -> Studio:
    """Return a studio with one coat of 60 days on its piece, cured by its sheet, and none to come."""
    studio = Studio(coats=(Coat(key="p", sheet="gloss-waterborne", laid_ms=START_MS - 60 * DAY_MS),))
    studio.type_in()
    return studio


def test_that_a_last_coat_found_tacky_is_not_fit_to_wrap_and_is_to_be_tested_again() -> None:
    studio = last_coat()
    assert (studio.snapshot().pieces[0].next_ms or START_MS) < START_MS
    assert due(studio, TEST) == []
    assert found(studio, Finding.TACKY).next_ms is None
    assert due(studio, TEST) == [START_MS + 6 * DAY_MS]
    assert found(studio, Finding.TACKY).next_ms is None
    assert due(studio, TEST) == [START_MS + MINUTE_MS + (60 * DAY_MS + MINUTE_MS) // 10]
    found(studio, Finding.DRY)
    assert due(studio, TEST) == []


def test_that_a_piece_off_the_rack_asks_for_no_test() -> None:
    studio = last_coat()
    found(studio, Finding.TACKY)
    assert len(due(studio, TEST)) == 1
    studio.watch.carry_out(ArchivePiece(piece_key="p"), studio.now_ms, studio.now_ms / 1000)
    studio.wait(MINUTE_MS)
    assert due(studio, TEST) == []
