"""A coat from "prepare" through a sleeping computer, on the watch as it runs: what is told, once, and what it means."""

from __future__ import annotations

from datetime import UTC, datetime

import pytest

from studiowatch.board.events import LineCounts, ReadingArrived
from studiowatch.service.commands import LayCoat, Refused, SnoozePrompt
from studiowatch.service.happenings import Happening, PromptHappened
from studiowatch.service.preparation_commands import StartPreparation, TickChore
from studiowatch.service.replaying import MemoryRecords
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.studio.chores import Task
from studiowatch.studio.pieces import Piece
from studiowatch.studio.preparation import CoatToLay
from studiowatch.studio.words import Level

from .racks import ListedLog
from .scripted import ScriptedClock, still

SHEET = "gloss-waterborne"


class Studio:
    """A watch with a clock and a board in the test's hand; the log and the records outlive a restart."""

    def __init__(self) -> None:
        self.clock = ScriptedClock()
        self.log = ListedLog()
        self.records = MemoryRecords(
            held={
                key: Piece(key=key, title=key.title(), width_cm=60, height_cm=90, place=place)
                for place, key in enumerate(("marsh", "kiln"))
            }
        )
        self.told: list[Happening] = []
        self.start()

    def start(self) -> None:
        self.watch = Watchkeeping(
            log=self.log,
            records=self.records,
            shelf=SheetShelf.open(),
            clock_text=str,
            local_date=lambda time_ms: datetime.fromtimestamp(time_ms / 1000, UTC).date(),
            began_ms=self.clock.now_ms,
            tell=self.told.append,
        )
        self.watch.open()

    def run(self, minutes: float, humidity_pct: float = 50.0) -> None:
        """Let time pass under the watch, with a reading every ten seconds."""
        for _ in range(round(minutes * 6)):
            self.clock.pass_s(10)
            self.watch.mind_the_clock(self.clock.now_ms, self.clock.now_s)
            reading = still(self.clock.now_ms, humidity_pct=humidity_pct)
            self.watch.take(ReadingArrived(reading=reading, counts=LineCounts()), self.clock.now_s)
            self.look()

    def look(self) -> None:
        self.watch.look(self.clock.now_ms, self.clock.now_s)
        self.watch.speak()
        self.watch.write(self.clock.now_ms, self.clock.now_s)

    def ask(self, command: object) -> str:
        key = self.watch.carry_out(command, self.clock.now_ms, self.clock.now_s)
        self.look()
        return key

    def prompts(self) -> list[str]:
        return [one.text for one in self.told if isinstance(one, PromptHappened)]


@pytest.fixture
def studio() -> Studio:
    made = Studio()
    made.run(2)
    return made


def test_that_a_preparation_ends_with_the_brush_and_its_timers_were_told_once(studio: Studio) -> None:
    coats = tuple(CoatToLay(piece_key=key, sheet=SHEET) for key in ("marsh", "kiln"))
    key = studio.ask(StartPreparation(coats=coats))
    studio.ask(TickChore(preparation_key=key, task=Task.BOTTLE))
    studio.run(14.5)
    assert studio.prompts() == []
    studio.run(1)
    assert studio.prompts() == ["The bottle has rested."]
    for piece_key in ("marsh", "kiln"):
        (view,) = studio.watch.snapshot(studio.clock.now_ms).preparations
        assert view.preparation.turn is not None
        assert view.preparation.turn.piece_key == piece_key
        studio.ask(LayCoat(piece_key=piece_key, laid_ms=studio.clock.now_ms, sheet=SHEET, volume_mL=43))
    assert studio.watch.snapshot(studio.clock.now_ms).preparations == ()
    assert studio.records.preparations() == ()


def test_that_what_fell_into_a_sleep_is_told_once_after_it_as_the_film_then_is(studio: Studio) -> None:
    studio.ask(LayCoat(piece_key="marsh", laid_ms=studio.clock.now_ms, sheet=SHEET, volume_mL=43))
    studio.run(5)
    studio.clock.pass_s(3 * 3600)  # asleep: no readings, and both clocks run on
    studio.run(2)
    told = studio.prompts()
    assert sum(one.startswith("Second pass missed: leave it") for one in told) == 1
    assert not any(one.startswith("Second bubble pass") for one in told)
    studio.start()
    studio.run(2)
    assert studio.prompts() == told


def test_that_a_clock_that_was_set_makes_no_prompt_late(studio: Studio) -> None:
    studio.ask(LayCoat(piece_key="marsh", laid_ms=studio.clock.now_ms, sheet=SHEET, volume_mL=43))
    studio.run(5)
    studio.clock.now_ms += 3 * 3_600_000  # the wall clock alone
    studio.run(5)
    assert studio.prompts() == []
    studio.run(6)
    assert len(studio.prompts()) == 1
    assert studio.prompts()[0].startswith("Second bubble pass")


def test_that_a_prompt_put_off_comes_again_and_not_into_a_film_that_has_set(studio: Studio) -> None:
    coat_key = studio.ask(LayCoat(piece_key="marsh", laid_ms=studio.clock.now_ms, sheet=SHEET, volume_mL=43))
    studio.run(15.5)
    studio.ask(SnoozePrompt(prompt_key=f"{coat_key}:bubbles", until_ms=studio.clock.now_ms + 120 * 60_000))
    studio.run(125)
    assert sum("Second" in one for one in studio.prompts()) == 2
    assert studio.prompts()[-1].startswith("Second pass missed: leave it")
    with pytest.raises(Refused, match="no use"):
        studio.ask(SnoozePrompt(prompt_key=f"{coat_key}:bubbles", until_ms=studio.clock.now_ms + 60_000))


def test_that_a_damp_room_says_about_how_long_once_it_dries_and_that_nobody_knows_before(studio: Studio) -> None:
    studio.run(1, humidity_pct=82.0)
    check = studio.watch.snapshot(studio.clock.now_ms).room_check(SHEET)
    assert check is not None
    assert check.level is Level.CAUTION
    assert "How long that takes is not known." in check.detail
    for minute in range(61):
        studio.run(1, humidity_pct=82.0 - minute / 15)  # 4 % an hour
    check = studio.watch.snapshot(studio.clock.now_ms).room_check(SHEET)
    assert check is not None
    # from 78 % at 4 % an hour it takes three quarters of an hour to 75 %
    assert "(45 min): the humidity is falling" in check.detail
