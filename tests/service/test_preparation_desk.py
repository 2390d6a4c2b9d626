"""Preparations on the desk: on disk before they are answered, over restarts and sleep, and over with the last brush."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.service.commands import Refused
from studiowatch.service.disk import Disk
from studiowatch.service.preparation_commands import ChooseTorch, EndPreparation, StartPreparation, TickChore
from studiowatch.service.preparation_desk import PreparationDesk
from studiowatch.service.rack import Rack
from studiowatch.service.replaying import MemoryRecords, NoLog
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.chores import Task
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.studio.preparation import ChoreState, CoatToLay, Preparation

NOW_MS = 1_772_442_000_000
MINUTE_MS = 60_000
GLOSS, SOLVENT = "gloss-waterborne", "gloss-solventborne"


class RefusingRecords(MemoryRecords):
    """Records that take no preparation while told so."""

    refuses = False

    def save_preparation(self, preparation: Preparation) -> None:
        if self.refuses:
            raise StoreTrouble("It is in use.")
        super().save_preparation(preparation)


def studio(*solvent_on: str) -> tuple[RefusingRecords, Rack, PreparationDesk]:
    pieces = {}
    for place, key in enumerate(("a", "b", "c")):
        sheet = SOLVENT if key in solvent_on else GLOSS
        coats = (Coat(key=f"{key}1", sheet=sheet, laid_ms=NOW_MS),) if key in solvent_on else ()
        pieces[key] = Piece(key=key, title=key.upper(), width_cm=40, height_cm=40, place=place, coats=coats)
    records = RefusingRecords(held=pieces)
    rack = Rack(shelf=SheetShelf.open(), records=records, log=NoLog())
    rack.open(NOW_MS)
    desk = PreparationDesk(records=records, disk=Disk())
    desk.reopen()
    return records, rack, desk


def start(*keys: str, sheet: str = GLOSS, torch: bool = False) -> StartPreparation:
    return StartPreparation(coats=tuple(CoatToLay(piece_key=key, sheet=sheet) for key in keys), torch=torch)


def state_of(desk: PreparationDesk, rack: Rack, task: Task, now_ms: int) -> ChoreState:
    (view,) = desk.views(rack, now_ms)
    return next(one.state for one in view.chores if one.chore.task is task)


def test_that_a_timer_runs_on_over_a_restart_and_is_told_once() -> None:
    records, rack, desk = studio()
    key = desk.carry_out(start("a", "b"), rack, NOW_MS)
    desk.carry_out(TickChore(preparation_key=key, task=Task.BOTTLE), rack, NOW_MS)
    again = PreparationDesk(records=records, disk=Disk())
    again.reopen()
    assert state_of(again, rack, Task.BOTTLE, NOW_MS + 14 * MINUTE_MS) is ChoreState.RESTING
    assert again.due(rack, NOW_MS + 14 * MINUTE_MS) == []
    slept_ms = NOW_MS + 40 * MINUTE_MS
    assert [(one.piece_title, one.text) for one in again.due(rack, slept_ms)] == [("A and B", "The bottle has rested.")]
    assert again.due(rack, slept_ms) == []
    again.disk.catch_up(0.0)
    third = PreparationDesk(records=records, disk=Disk())
    third.reopen()
    assert third.due(rack, slept_ms) == []


def test_that_three_pieces_are_laid_one_after_the_other_and_then_it_is_over() -> None:
    records, rack, desk = studio()
    desk.carry_out(start("a", "b", "c"), rack, NOW_MS)
    for key, following in (("a", "b"), ("b", "c")):
        desk.laid(key, NOW_MS)
        (view,) = desk.views(rack, NOW_MS)
        assert view.preparation.turn is not None
        assert view.preparation.turn.piece_key == following
    desk.laid("c", NOW_MS)
    assert desk.views(rack, NOW_MS) == ()
    desk.disk.catch_up(0.0)
    assert records.preparations() == ()


def test_that_beginning_again_for_the_same_piece_keeps_what_still_holds() -> None:
    _, rack, desk = studio()
    key = desk.carry_out(start("a", "b"), rack, NOW_MS)
    for task in (Task.BOTTLE, Task.WIPE, Task.COVER):
        desk.carry_out(TickChore(preparation_key=key, task=task), rack, NOW_MS)
    assert desk.carry_out(start("a", sheet="satin-waterborne"), rack, NOW_MS) == key
    assert state_of(desk, rack, Task.BOTTLE, NOW_MS) is ChoreState.TO_DO  # another bottle
    assert state_of(desk, rack, Task.WIPE, NOW_MS) is ChoreState.RESTING
    desk.carry_out(start("a", "c", sheet="satin-waterborne"), rack, NOW_MS)
    assert state_of(desk, rack, Task.WIPE, NOW_MS) is ChoreState.TO_DO  # another piece
    assert state_of(desk, rack, Task.COVER, NOW_MS) is ChoreState.DONE


def test_that_solvent_on_the_rack_takes_the_torch_away_and_keeps_fresh_air_on() -> None:
    _, rack, desk = studio("b")
    desk.carry_out(start("a", torch=True), rack, NOW_MS)
    (view,) = desk.views(rack, NOW_MS)
    tasks = {one.chore.task: one.chore for one in view.chores}
    assert Task.EXTINGUISHER not in tasks
    assert "Fresh air stays on" in tasks[Task.WINDOW].words
    _, plain_rack, plain = studio()
    key = plain.carry_out(start("a"), plain_rack, NOW_MS)
    plain.carry_out(ChooseTorch(preparation_key=key, torch=True), plain_rack, NOW_MS)
    assert state_of(plain, plain_rack, Task.EXTINGUISHER, NOW_MS) is ChoreState.TO_DO


def test_that_a_refusing_disk_leaves_it_as_it_was() -> None:
    records, rack, desk = studio()
    key = desk.carry_out(start("a"), rack, NOW_MS)
    records.refuses = True
    for command in (TickChore(preparation_key=key, task=Task.LEVEL), EndPreparation(preparation_key=key), start("b")):
        with pytest.raises(StoreTrouble):
            desk.carry_out(command, rack, NOW_MS)
    assert state_of(desk, rack, Task.LEVEL, NOW_MS) is ChoreState.TO_DO
    assert len(desk.views(rack, NOW_MS)) == 1


@pytest.mark.parametrize(
    ("command", "words"),
    [
        (start(), "choose at least one"),
        (start("a", "a"), "twice"),
        (start("z"), "not on the rack"),
        (start("a", sheet="mud"), "no data sheet 'mud'"),
        (TickChore(preparation_key="?", task=Task.LEVEL), "over"),
    ],
)
def test_that_what_cannot_be_prepared_is_refused_in_one_sentence(command: object, words: str) -> None:
    _, rack, desk = studio()
    with pytest.raises(Refused, match=words):
        desk.carry_out(command, rack, NOW_MS)
    assert desk.views(rack, NOW_MS) == ()


def test_that_it_ends_when_forgotten_or_when_its_piece_left_the_rack() -> None:
    _, rack, desk = studio()
    desk.carry_out(start("a"), rack, NOW_MS)
    desk.settle(rack, NOW_MS + 11 * 60 * MINUTE_MS)
    assert desk.views(rack, NOW_MS)
    desk.settle(rack, NOW_MS + 13 * 60 * MINUTE_MS)
    assert desk.views(rack, NOW_MS) == ()
    desk.carry_out(start("b"), rack, NOW_MS)
    rack.pieces["b"] = replace(rack.pieces["b"], archived=True)
    desk.settle(rack, NOW_MS)
    assert desk.views(rack, NOW_MS) == ()


def test_that_a_clock_that_was_set_shortens_no_rest() -> None:
    _, rack, desk = studio()
    key = desk.carry_out(start("a"), rack, NOW_MS)
    desk.carry_out(TickChore(preparation_key=key, task=Task.BOTTLE), rack, NOW_MS)
    desk.shift(3_600_000)
    assert state_of(desk, rack, Task.BOTTLE, NOW_MS + 3_600_000 + MINUTE_MS) is ChoreState.RESTING
