"""What a hard life does to the watch: a locked or broken disk, a broken reading, a restart in the middle of it.

The watch is stepped by hand on a scripted clock over the real store; the lock is held by a second connection of
SQLite's own.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Iterator
from contextlib import closing
from dataclasses import dataclass, field
from math import nan
from pathlib import Path

import pytest

from studiowatch.board.events import LineCounts, PortLost, ReadingArrived
from studiowatch.compose import open_store
from studiowatch.service.commands import Command, HearWarning, LayCoat, MovePiece, Refused, RegisterPiece, TickPrompt
from studiowatch.service.disk import RETRY_S
from studiowatch.service.happenings import Happening, PromptHappened, WarningHappened
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.snapshot import Snapshot
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.warnings import WarningState

from ..service.scripted import START_MS, ScriptedClock, lock_held, still  # noqa: TID252 - shared with the keeper's tests

GLOSS = "gloss-waterborne"


class Listed:
    """Passes everything on to a part of the store, and lists the names of what it was asked for, in order."""

    def __init__(self, part: object, asked: list[str]) -> None:
        self._part = part
        self._asked = asked
        self.unreadable = False

    def __getattr__(self, name: str) -> Callable[..., object]:
        def ask(*arguments: object, **named: object) -> object:
            self._asked.append(name)
            if name == "minute_means" and self.unreadable:
                raise StoreTrouble("The log could not be read.")
            return getattr(self._part, name)(*arguments, **named)

        return ask


@dataclass
class Stepped:
    """A watch over a real store that the test steps as the keeper does."""

    path: Path
    clock: ScriptedClock = field(default_factory=ScriptedClock)
    told: list[Happening] = field(default_factory=list)
    asked: list[str] = field(default_factory=list)
    good: int = 0

    def open(self) -> None:
        store = open_store(self.path, self.clock.utc_ms)
        self.log = Listed(store.log, self.asked)
        self.watch = Watchkeeping(
            log=self.log,
            records=Listed(store.records, self.asked),
            shelf=SheetShelf.open(),
            clock_text=str,
            local_date=lambda _: None,  # type: ignore[arg-type, return-value] - no piece here has a day
            began_ms=self.clock.now_ms,
            tell=self.tell,
            shut=store.close,
        )
        self.watch.open()

    def tell(self, happening: Happening) -> None:
        self.asked.append("told")
        self.told.append(happening)

    def close(self) -> None:
        self.watch.close(self.clock.now_s)

    def restart(self) -> None:
        self.close()
        self.told.clear()
        self.open()

    def do(self, command: Command) -> str:
        return self.watch.carry_out(command, self.clock.now_ms, self.clock.now_s)

    def look(self) -> None:
        self.watch.look(self.clock.now_ms, self.clock.now_s)
        self.watch.speak()
        self.watch.write(self.clock.now_ms, self.clock.now_s)

    def read(self, seconds: int, **changes: object) -> None:
        for _ in range(seconds):
            self.clock.pass_s(1)
            self.good += 1
            event = ReadingArrived(reading=still(self.clock.now_ms, **changes), counts=LineCounts(good=self.good))
            self.watch.take(event, self.clock.now_s)
            self.watch.speak()
            self.look()

    def idle(self, seconds: int) -> None:
        for _ in range(seconds):
            self.clock.pass_s(1)
            self.look()

    def lay(self, title: str = "Low Tide") -> str:
        piece_key = self.do(RegisterPiece(title=title, width_cm=40, height_cm=40))
        coat_key = self.do(LayCoat(piece_key=piece_key, laid_ms=self.clock.now_ms, sheet=GLOSS, volume_mL=13))
        self.look()
        return coat_key

    def warned(self, kind: str) -> list[WarningHappened]:
        return [one for one in self.told if isinstance(one, WarningHappened) and one.warning.kind == kind]

    def stored(self, sql: str) -> list[tuple[object, ...]]:
        with closing(sqlite3.connect(self.path)) as reader:
            return reader.execute(sql).fetchall()

    def snapshot(self) -> Snapshot:
        return self.watch.snapshot(self.clock.now_ms)


@pytest.fixture
def stepped(tmp_path: Path) -> Iterator[Stepped]:
    made = Stepped(tmp_path / "studio.sqlite3")
    made.open()
    yield made
    made.close()


def test_that_under_a_held_lock_a_warning_is_told_at_once_and_the_disk_is_tried_once_in_a_while(
    stepped: Stepped,
) -> None:
    stepped.lay()
    stepped.read(120)
    stored = len(stepped.stored("SELECT id FROM reading"))
    with lock_held(stepped.path):
        stepped.asked.clear()
        stepped.read(round(RETRY_S))
        on_ms = stepped.clock.now_ms
        stepped.read(round(4 * RETRY_S), air_speed_m_s=0.6)
        raised = stepped.warned("air-moving")[0]
        assert 0 < raised.time_ms - on_ms <= 3000  # s, the job: a fan is told within three
        read = [name for name in stepped.asked if name == "minute_means"]  # the weeks before: no lock hinders a reader
        assert len(read) <= 5
        assert 0 < len([name for name in stepped.asked if name != "told"]) - len(read) <= 5
        assert "in use by another program" in stepped.snapshot().store_trouble
        assert stepped.stored("SELECT * FROM warning") == []
    stepped.read(10)
    assert stepped.snapshot().store_trouble == ""
    assert len(stepped.stored("SELECT id FROM reading")) >= stored + 25
    assert stepped.stored("SELECT state FROM warning") == [("raised",)]


def test_that_on_a_full_disk_the_watch_warns_from_memory_says_so_and_catches_up(stepped: Stepped) -> None:
    stepped.lay()
    stepped.read(120)
    database = stepped.log._part._database  # type: ignore[attr-defined]
    ((pages,),) = database.rows("PRAGMA page_count")
    database.rows(f"PRAGMA max_page_count = {pages}")  # the disk has room for not one page more
    while "is full" not in stepped.snapshot().store_trouble:
        stepped.read(1)
    on_ms = stepped.clock.now_ms
    stepped.read(60, air_speed_m_s=0.6)
    assert 0 < stepped.warned("air-moving")[0].time_ms - on_ms <= 3000  # s, the job: a fan is told within three
    assert "is full; make room" in stepped.snapshot().store_trouble
    database.rows("PRAGMA max_page_count = 1000000")
    stepped.read(10)
    assert stepped.snapshot().store_trouble == ""
    times = [time_ms for (time_ms,) in stepped.stored("SELECT time_ms FROM reading ORDER BY id")]
    assert times == list(range(START_MS + 1000, times[-1] + 1, 1000))
    assert stepped.clock.now_ms - times[-1] <= 5000  # ms, the job: what is not on disk yet is five seconds old at most
    assert stepped.stored("SELECT raised_ms FROM warning") == [(stepped.warned("air-moving")[0].warning.raised_ms,)]


def test_that_a_warning_is_told_before_it_is_saved(stepped: Stepped) -> None:
    stepped.lay()
    stepped.read(120)
    stepped.asked.clear()
    stepped.read(5, air_speed_m_s=0.6)
    assert [name for name in stepped.asked if name in {"told", "save_warning"}] == ["told", "save_warning"]


def test_that_the_keeper_s_connection_waits_for_a_lock_for_less_than_a_second(tmp_path: Path) -> None:
    store = open_store(tmp_path / "studio.sqlite3", lambda: START_MS)
    ((wait_ms,),) = store.records._database.rows("PRAGMA busy_timeout")  # type: ignore[attr-defined]
    store.close()
    assert 0 < wait_ms < 1000


def test_that_a_reading_that_cannot_be_stored_neither_blinds_the_watch_nor_keeps_the_others_off_the_disk(
    stepped: Stepped,
) -> None:
    stepped.lay()
    stepped.read(120)
    stepped.read(1, particles_per_m3_5um=nan)
    stepped.read(30)
    stepped.read(10, air_speed_m_s=0.6)
    assert stepped.warned("air-moving")
    assert "cannot be stored" in stepped.snapshot().store_trouble
    stepped.close()
    assert len(stepped.stored("SELECT id FROM reading")) == 160
    left = stepped.watch.leavings()
    assert [reading.time_ms for reading in left.readings] == [START_MS + 121_000]
    stepped.open()


def test_that_notes_made_while_the_disk_refuses_are_kept(stepped: Stepped) -> None:
    stepped.read(10)
    with lock_held(stepped.path):
        for number in range(3):
            stepped.watch.take(
                PortLost(time_ms=stepped.clock.now_ms, port="p", reason=f"Loss {number}."), stepped.clock.now_s
            )
            stepped.read(10)
        assert stepped.stored("SELECT text FROM note WHERE kind = 'port-lost'") == []
    stepped.read(10)
    texts = stepped.stored("SELECT text FROM note WHERE kind = 'port-lost' ORDER BY time_ms, text")
    assert texts == [("Loss 0.",), ("Loss 1.",), ("Loss 2.",)]


def test_that_a_heard_warning_is_quiet_at_once_though_the_disk_refuses(stepped: Stepped) -> None:
    stepped.lay()
    stepped.read(120)
    stepped.read(60, air_speed_m_s=0.6)
    key = stepped.warned("air-moving")[0].warning.key
    with lock_held(stepped.path):
        stepped.do(HearWarning(warning_key=key))
        stepped.read(10, air_speed_m_s=0.6)
        assert not any(warning.sound for warning in stepped.snapshot().warnings)
    stepped.read(10, air_speed_m_s=0.6)
    assert stepped.stored(f"SELECT state FROM warning WHERE key = '{key}'") == [("heard",)]  # noqa: S608 - our own key


def test_that_a_restart_neither_ends_nor_repeats_a_heard_warning(stepped: Stepped) -> None:
    stepped.lay()
    stepped.read(60)
    stepped.read(60, humidity_pct=93.0)
    raised = stepped.warned("damp")[0].warning
    stepped.do(HearWarning(warning_key=raised.key))
    stepped.look()
    stepped.restart()
    stepped.idle(8)
    assert stepped.told == []
    stepped.read(60, humidity_pct=93.0)
    assert {(one.warning.key, one.warning.state, one.is_new) for one in stepped.warned("damp")} <= {
        (raised.key, WarningState.HEARD, False)
    }
    standing = [warning for warning in stepped.snapshot().warnings if warning.kind == "damp"]
    assert [(warning.key, warning.sound) for warning in standing] == [(raised.key, False)]
    stepped.read(120)
    assert stepped.warned("damp")[-1].warning.state is WarningState.CLEARED


def test_that_prompts_fall_due_and_are_ticked_with_the_board_unplugged(stepped: Stepped) -> None:
    stepped.lay()
    stepped.idle(21 * 60)
    due = [one for one in stepped.told if isinstance(one, PromptHappened)]
    assert 15 * 60_000 <= due[0].time_ms - START_MS <= 15 * 60_000 + 2000  # the second pass: common practice
    first = stepped.snapshot().prompts[0]
    with lock_held(stepped.path), pytest.raises(Refused, match="in use by another program"):
        stepped.do(TickPrompt(prompt_key=first.key))
    assert first.key in {prompt.key for prompt in stepped.snapshot().prompts}
    stepped.do(TickPrompt(prompt_key=first.key))
    stepped.idle(2)
    assert first.key not in {prompt.key for prompt in stepped.snapshot().prompts}
    assert stepped.stored("SELECT count(*) FROM prompt WHERE done_ms IS NOT NULL") == [(1,)]


def test_that_a_coat_that_is_on_disk_is_not_refused_for_a_log_that_cannot_be_read(stepped: Stepped) -> None:
    piece_key = stepped.do(RegisterPiece(title="Low Tide", width_cm=40, height_cm=40))
    stepped.read(120)
    stepped.log.unreadable = True
    laid_ms = stepped.clock.now_ms - 60_000
    coat_key = stepped.do(LayCoat(piece_key=piece_key, laid_ms=laid_ms, sheet=GLOSS, volume_mL=13))
    stepped.look()
    assert "could not be read" in stepped.snapshot().store_trouble
    assert stepped.stored("SELECT key FROM coat") == [(coat_key,)]
    stepped.log.unreadable = False
    stepped.read(10)
    ((coat,),) = [piece.coats for piece in stepped.snapshot().pieces]
    assert coat.surface is not None
    assert coat.unlogged_ms == 0


def test_that_a_move_that_the_disk_refuses_moves_nothing(stepped: Stepped) -> None:
    keys = [stepped.do(RegisterPiece(title=title, width_cm=40, height_cm=40)) for title in ("A", "B", "C")]
    with lock_held(stepped.path), pytest.raises(Refused, match="in use"):
        stepped.do(MovePiece(piece_key=keys[2], place=0))
    assert [piece.title for piece in stepped.snapshot().pieces] == ["A", "B", "C"]
    stepped.do(MovePiece(piece_key=keys[2], place=0))
    assert [piece.title for piece in stepped.snapshot().pieces] == ["C", "A", "B"]
    assert stepped.stored("SELECT title FROM piece ORDER BY place") == [("C",), ("A",), ("B",)]
