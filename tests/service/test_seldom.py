"""While nobody looks, the watch hands out what happens at once and mere drift seldom; a look brings the newest."""

from __future__ import annotations

from dataclasses import dataclass, field

import pytest

from studiowatch.board.events import BoardTrouble, LineCounts, LineRefused, PortLost, ReadingArrived
from studiowatch.board.onlooker import Onlooker
from studiowatch.service.commands import LayCoat
from studiowatch.service.keeper import Keeper
from studiowatch.service.pace import SELDOM_S, SOON_MS, TOGETHER
from studiowatch.service.rounds import Rounds
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.snapshot import Snapshot
from studiowatch.studio.watch import SILENT_AFTER_S

from .rooms import FAN_M_S
from .scripted import still
from .test_laying_day import SHEET, Studio, studio

__all__ = ["studio"]
MINUTE_S = 60


class NoBoard:
    """A board that says nothing of its own: what it would send, the test delivers."""

    onlooker = Onlooker()

    def start(self, deliver: object) -> None:
        raise AssertionError(deliver)

    def stop(self) -> None:
        raise AssertionError

    def accept(self, board: object, mapping: object) -> None:
        raise AssertionError(board, mapping)

    def choose(self, port: object) -> None:
        raise AssertionError(port)


@dataclass
class Watched:
    """A keeper whose turns the test takes, and what it handed out."""

    studio: Studio
    keeper: Keeper = field(init=False)
    seen: list[Snapshot] = field(default_factory=list)
    good: int = 0

    def __post_init__(self) -> None:
        self.keeper = Keeper(
            open_watch=lambda: self.studio.watch, source=NoBoard(), clock=self.studio.clock, shelf=SheetShelf.open()
        )
        self.keeper.subscribe(self.seen.append)

    def turn(self, event: object = None) -> int:
        """Let a second pass, and the keeper take `event`; return how many snapshots went out."""
        before = len(self.seen)
        self.studio.clock.pass_s(1)
        if event is not None:
            self.keeper._inbox.deliver(event)
        self.keeper._turn(self.studio.watch, 0.0)
        return len(self.seen) - before

    def read(self, seconds: int, air_speed_m_s: float = 0.04) -> list[int]:
        """Return how many snapshots went out with each of so many readings."""
        counts = []
        for _ in range(seconds):
            self.good += 1
            reading = still(self.studio.clock.now_ms + 1000, air_speed_m_s=air_speed_m_s)
            counts.append(self.turn(ReadingArrived(reading=reading, counts=LineCounts(good=self.good))))
        return counts


@pytest.fixture
def watched(studio: Studio) -> Watched:
    made = Watched(studio=studio)
    made.turn()
    return made


def test_that_every_third_reading_is_handed_out_while_one_looks_and_the_last_when_no_more_come(
    watched: Watched,
) -> None:
    assert watched.read(MINUTE_S) == [0, 0, 1] * (MINUTE_S // 3)
    watched.read(1)
    watched.keeper._turn(watched.studio.watch, 0.0)
    assert watched.seen[-1].board.counts.good == watched.good


def test_that_readings_wait_for_one_another_while_nobody_looks_and_nothing_falls_due(watched: Watched) -> None:
    watched.studio.ask(LayCoat(piece_key="marsh", laid_ms=watched.studio.clock.now_ms, sheet=SHEET, volume_mL=43))
    watched.read(2)
    pace = watched.keeper._pace
    assert pace.latest is not None
    due_ms = min(prompt.due_ms for prompt in pace.latest.prompts)
    assert pace.together(due_ms - SOON_MS - 1, is_stirred=False) == 1  # somebody looks
    pace.closely = False
    moments_ms = (due_ms - SOON_MS - 1, due_ms - SOON_MS, due_ms - SOON_MS + 1, due_ms, due_ms + 1)
    apart = [pace.together(now_ms, is_stirred=False) for now_ms in moments_ms]
    assert apart == [TOGETHER, TOGETHER, 1, 1, TOGETHER]
    assert {pace.together(now_ms, is_stirred=True) for now_ms in moments_ms} == {1}


def test_that_the_air_is_known_to_stir_before_the_reading_that_warns_of_it(watched: Watched) -> None:
    watched.studio.ask(LayCoat(piece_key="marsh", laid_ms=watched.studio.clock.now_ms, sheet=SHEET, volume_mL=43))
    watch = watched.studio.watch
    watched.read(30)
    stirred = [watch.is_stirred]
    while not watch.desks.warnings.book.open and len(stirred) < 30:
        watched.read(1, air_speed_m_s=FAN_M_S)
        stirred.append(watch.is_stirred)
    assert watch.desks.warnings.book.open
    assert stirred == [False, *[True] * (len(stirred) - 1)]
    assert len(stirred) > 2  # it takes more than one reading


def test_that_readings_are_handed_out_seldom_while_nobody_looks_and_the_newest_with_a_look(watched: Watched) -> None:
    watched.keeper.look(closely=False)
    assert sum(watched.read(3 * MINUTE_S)) == 3 * MINUTE_S / SELDOM_S
    watched.read(3)
    watched.keeper.look(closely=True)
    watched.keeper._turn(watched.studio.watch, 0.0)
    assert watched.seen[-1].board.counts.good == watched.good


def test_that_a_warning_goes_out_with_the_reading_that_raised_it_though_nobody_looks(watched: Watched) -> None:
    now_ms = watched.studio.clock.now_ms
    watched.studio.ask(LayCoat(piece_key="marsh", laid_ms=now_ms, sheet=SHEET, volume_mL=43))
    watched.read(30)
    watched.keeper.look(closely=False)
    watched.read(1)
    for _ in range(30):
        (count,) = watched.read(1, air_speed_m_s=FAN_M_S)
        if watched.studio.watch.desks.warnings.book.open:
            break
    assert count == 1
    assert [one.kind for one in watched.seen[-1].warnings] == ["air-moving"]


def test_that_readings_that_came_together_are_judged_by_the_last_and_a_backlog_every_other_second(
    watched: Watched, monkeypatch: pytest.MonkeyPatch
) -> None:
    judged_ms: list[int] = []
    judge = Rounds.judge

    def hear(rounds: Rounds, now_ms: int) -> None:
        judged_ms.append(now_ms)
        judge(rounds, now_ms)

    monkeypatch.setattr(Rounds, "judge", hear)
    watched.read(1)
    for _ in range(10):
        watched.studio.clock.pass_s(1)
        reading = still(watched.studio.clock.now_ms)
        watched.keeper._inbox.deliver(ReadingArrived(reading=reading, counts=LineCounts()))
    judged_ms.clear()
    now_ms = watched.studio.clock.now_ms
    watched.keeper._turn(watched.studio.watch, 0.0)
    assert judged_ms == [now_ms - 1000 * back_s for back_s in (8, 6, 4, 2, 0)]


def test_that_the_board_is_told_of_at_once_though_nobody_looks(watched: Watched) -> None:
    watched.read(3)
    watched.keeper.look(closely=False)
    watched.read(3)
    now_ms = watched.studio.clock.now_ms
    trouble = BoardTrouble(time_ms=now_ms, code="nak", message="", counts=LineCounts(troubles=1))
    assert watched.turn(trouble) == 1
    assert watched.turn(trouble) == 0  # more of the same
    assert watched.turn(PortLost(time_ms=now_ms, port="scripted", reason="It was unplugged.")) == 1


def test_that_garbage_wakes_nobody(watched: Watched) -> None:
    watched.read(3)
    watched.keeper.look(closely=False)
    events = [LineRefused(time_ms=0, reason="noise", quoted="", counts=LineCounts(faulty=n)) for n in range(1, 6)]
    assert sum(watched.turn(event) for event in events) == 0


def test_that_a_board_that_falls_silent_is_told_of_at_once_though_nobody_looks(watched: Watched) -> None:
    now_ms = watched.studio.clock.now_ms
    watched.studio.ask(LayCoat(piece_key="marsh", laid_ms=now_ms, sheet=SHEET, volume_mL=43))
    watched.read(30)
    watched.keeper.look(closely=False)
    watched.read(2)
    for _ in range(round(SILENT_AFTER_S) + 1):
        watched.turn()
    assert watched.seen[-1].board.silent
