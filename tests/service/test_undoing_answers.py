"""Undo of what is no piece: a warning that was heard or put off, a prompt put off, working hours and recipes."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date

import pytest

from studiowatch.board.events import LineCounts, ReadingArrived
from studiowatch.room.readings import Reading
from studiowatch.service.commands import (
    Command,
    HearWarning,
    LayCoat,
    Refused,
    RegisterPiece,
    RemindLater,
    SnoozePrompt,
)
from studiowatch.service.correction_commands import Redo, Undo
from studiowatch.service.plan_commands import SaveRecipe, SetWorkingHours
from studiowatch.service.replaying import MemoryRecords
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.snapshot import Snapshot, WarningView
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.working_hours import WorkingHours

from .racks import ListedLog
from .scripted import START_MS, still

MINUTE_MS = 60_000


class Studio:
    """A watch over one wet coat, and a clock that each reading moves by a second."""

    def __init__(self) -> None:
        self.now_ms, self.now_s = START_MS, 0.0
        self.records = MemoryRecords(held={})
        self.watch = Watchkeeping(
            log=ListedLog(),
            records=self.records,
            shelf=SheetShelf.open(),
            clock_text=str,
            local_date=lambda _: date(2026, 3, 2),
            began_ms=START_MS,
        )
        self.watch.open()
        self.read(still(START_MS))
        piece = self.do(RegisterPiece(title="Low Tide", width_cm=60, height_cm=50))
        self.do(LayCoat(piece_key=piece, laid_ms=self.now_ms, sheet="gloss-waterborne", volume_mL=24))
        self.watch.look(self.now_ms, self.now_s)

    def read(self, *readings: Reading) -> None:
        for reading in readings:
            self.now_ms += 1000
            self.now_s += 1.0
            self.watch.take(
                ReadingArrived(reading=replace(reading, time_ms=self.now_ms), counts=LineCounts()), self.now_s
            )
            self.watch.look(self.now_ms, self.now_s)

    def do(self, command: Command) -> str:
        answer = self.watch.carry_out(command, self.now_ms, self.now_s)
        self.watch.look(self.now_ms, self.now_s)
        return answer

    @property
    def seen(self) -> Snapshot:
        return self.watch.snapshot(self.now_ms)

    @property
    def warning(self) -> WarningView:
        """The one open warning that the room is too damp."""
        (found,) = [one for one in self.seen.warnings if one.kind == "damp" and one.state is not WarningState.CLEARED]
        return found


@pytest.fixture
def studio() -> Studio:
    return Studio()


@pytest.fixture
def damp(studio: Studio) -> Studio:
    """Return a studio whose room became too damp over the wet coat."""
    studio.read(*_damp())
    assert studio.warning.state is WarningState.RAISED
    return studio


def _damp(seconds: int = 20) -> Sequence[Reading]:
    return [still(0, humidity_pct=93.0)] * seconds


def test_that_a_warning_heard_by_mistake_comes_back_as_it_was_and_sounds(damp: Studio) -> None:
    before = damp.warning
    damp.do(HearWarning(warning_key=before.key))
    assert not damp.warning.sound
    assert damp.seen.undo.undo == f"heard “{before.sentence.headline}”"
    damp.do(Undo())
    assert (damp.warning.key, damp.warning.state, damp.warning.sound) == (before.key, WarningState.RAISED, True)
    damp.do(Redo())
    assert damp.warning.state is WarningState.HEARD


def test_that_a_warning_put_off_comes_back_at_once_and_one_put_off_twice_to_the_first_time(damp: Studio) -> None:
    key, first_ms, second_ms = damp.warning.key, damp.now_ms + 10 * MINUTE_MS, damp.now_ms + 60 * MINUTE_MS
    damp.do(RemindLater(warning_key=key, until_ms=first_ms))
    damp.do(RemindLater(warning_key=key, until_ms=second_ms))
    assert damp.warning.remind_ms == second_ms
    damp.do(Undo())
    assert (damp.warning.state, damp.warning.remind_ms) == (WarningState.REMIND, first_ms)
    damp.do(Undo())
    assert (damp.warning.state, damp.warning.remind_ms) == (WarningState.RAISED, None)


def test_that_an_answer_that_lapsed_stands_in_the_way_of_nothing(damp: Studio) -> None:
    damp.do(HearWarning(warning_key=damp.warning.key))
    damp.read(*[still(0)] * 900)
    assert not [one for one in damp.seen.warnings if one.state is not WarningState.CLEARED and one.kind == "damp"]
    assert damp.seen.undo.undo == "laid gloss on Low Tide"
    assert damp.do(Undo()) == "laid gloss on Low Tide"


def test_that_what_the_records_hold_of_a_warning_follows_undo(damp: Studio) -> None:
    key = damp.warning.key
    damp.do(HearWarning(warning_key=key))
    damp.do(Undo())
    damp.watch.write(damp.now_ms, damp.now_s)
    (kept,) = [one for one in damp.records.warnings(9) if one.key == key]
    assert kept.state == WarningState.RAISED.value


def test_that_a_prompt_put_off_is_due_again_when_that_is_undone(studio: Studio) -> None:
    studio.read(*[still(0)] * 1000)
    (late, *_) = [one for one in studio.seen.prompts if one.overdue]
    studio.do(SnoozePrompt(prompt_key=late.key, until_ms=studio.now_ms + 5 * MINUTE_MS))
    (put_off,) = [one for one in studio.seen.prompts if one.key == late.key]
    assert put_off.snoozed
    assert studio.seen.undo.undo == f"put off “{late.text}”"
    studio.do(Undo())
    (again,) = [one for one in studio.seen.prompts if one.key == late.key]
    assert (again.due_ms, again.overdue, again.snoozed) == (late.due_ms, True, False)
    studio.do(Redo())
    (put_off,) = [one for one in studio.seen.prompts if one.key == late.key]
    assert put_off.snoozed


def test_that_a_put_off_that_ran_out_cannot_be_undone_any_more(studio: Studio) -> None:
    studio.read(*[still(0)] * 1000)
    (late, *_) = [one for one in studio.seen.prompts if one.overdue]
    studio.do(SnoozePrompt(prompt_key=late.key, until_ms=studio.now_ms + MINUTE_MS))
    studio.read(*[still(0)] * 90)
    assert studio.seen.undo.undo == "laid gloss on Low Tide"


def test_that_working_hours_go_back_to_what_they_were(studio: Studio) -> None:
    before, after = studio.seen.hours, WorkingHours().with_day("tuesday", "off")
    assert before != after
    studio.do(SetWorkingHours(hours=after))
    assert studio.do(Undo()) == "set your working hours"
    assert studio.seen.hours == before == studio.records.working_hours()
    studio.do(Redo())
    assert studio.seen.hours == after


def test_that_a_recipe_deleted_or_written_over_comes_back(studio: Studio) -> None:
    first, second = ("gloss-waterborne",), ("gloss-waterborne", "satin-waterborne")
    studio.do(SaveRecipe(name="Panels & more", sheets=first))
    studio.do(SaveRecipe(name=" Panels  & more ", sheets=second))
    studio.do(SaveRecipe(name="Panels & more", sheets=()))
    own = [recipe for recipe in studio.seen.recipes if recipe.own]
    assert own == []
    assert studio.do(Undo()) == "deleted the recipe Panels & more"
    assert [recipe.sheets for recipe in studio.seen.recipes if recipe.own] == [second]
    studio.do(Undo())
    assert [recipe.sheets for recipe in studio.seen.recipes if recipe.own] == [first]
    studio.do(Undo())
    assert [recipe for recipe in studio.seen.recipes if recipe.own] == []
    studio.do(Redo())
    assert [recipe.sheets for recipe in studio.seen.recipes if recipe.own] == [first]


def test_that_a_refused_recipe_is_no_deed(studio: Studio) -> None:
    with pytest.raises(Refused, match="no data sheet"):
        studio.do(SaveRecipe(name="Panels", sheets=("gold-leaf",)))
    assert studio.seen.undo.undo == "laid gloss on Low Tide"
