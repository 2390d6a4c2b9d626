"""The keeper when what it rests on fails: it ends when told to, answers, and loses nothing without a word."""

from __future__ import annotations

import sqlite3
import threading
from collections.abc import Callable
from contextlib import AbstractContextManager, closing
from dataclasses import dataclass, field, replace
from functools import partial
from pathlib import Path
from queue import Queue

import pytest

from studiowatch.board.events import BoardEvent, LineCounts, ReadingArrived
from studiowatch.board.mapping import ColumnMapping
from studiowatch.board.onlooker import Onlooker
from studiowatch.board.room_log import open_room_log
from studiowatch.compose import open_store
from studiowatch.compose import outfit as own_outfit
from studiowatch.service import keeper as keeper_module
from studiowatch.service import watched_studio
from studiowatch.service.commands import HearWarning, LayCoat, Refused, RegisterPiece
from studiowatch.service.happenings import Happening
from studiowatch.service.keeper import Keeper
from studiowatch.service.outfit import OpenStore
from studiowatch.service.snapshot import Snapshot
from studiowatch.service.watched_studio import watching
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.store.folder import FolderRefused, StudioFolder
from studiowatch.store.trouble import StoreTrouble

from .scripted import START_MS, ScriptedClock, lock_held, still

WAIT_S = 20.0
GLOSS = "gloss-waterborne"


class ScriptedBoard:
    """A board that says what the test says, and fails where it is told to."""

    def __init__(self, fails: str = "") -> None:
        self._fails = fails
        self.onlooker = Onlooker()
        self.say: Callable[[BoardEvent], None] = lambda _: None

    def start(self, deliver: Callable[[BoardEvent], None]) -> None:
        if self._fails == "start":
            raise OSError("no thread to be had")
        self.say = deliver

    def accept(self, board: str, mapping: ColumnMapping) -> None:
        raise NotImplementedError

    def choose(self, port: str | None) -> None:
        raise NotImplementedError

    def stop(self) -> None:
        if self._fails == "stop":
            raise RuntimeError("the reader lives on")


@dataclass
class Threaded:
    """A studio that is watched as the program does it."""

    folder: StudioFolder
    clock: ScriptedClock = field(default_factory=ScriptedClock)
    seen: Queue[Snapshot] = field(default_factory=Queue)
    good: int = 0

    def watched(self, board: ScriptedBoard | None = None, **changes: object) -> AbstractContextManager[Keeper]:
        outfit = replace(own_outfit(), clock=self.clock, open_store=partial(open_store, utc_ms=self.clock.utc_ms))
        self.board = board or ScriptedBoard()
        return watching(outfit, self.folder, self.board, **({"listener": self.seen.put} | changes))

    def read(self, seconds: int) -> None:
        for _ in range(seconds):
            self.clock.pass_s(1)
            self.good += 1
            self.board.say(ReadingArrived(reading=still(self.clock.now_ms), counts=LineCounts(good=self.good)))

    def until(self, fits: Callable[[Snapshot], bool]) -> Snapshot:
        while True:
            snapshot = self.seen.get(timeout=WAIT_S)
            if fits(snapshot):
                return snapshot


@pytest.fixture
def threaded(tmp_path: Path) -> Threaded:
    return Threaded(StudioFolder(path=tmp_path / "studio"))


def test_that_readings_that_could_not_be_stored_at_the_end_lie_beside_the_records_as_a_room_log(
    threaded: Threaded,
) -> None:
    watch = threaded.watched()
    watch.__enter__()
    with lock_held(threaded.folder.database):
        threaded.read(30)
        with pytest.raises(StoreTrouble) as said:
            watch.__exit__(None, None, None)
    (path,) = threaded.folder.path.glob("*.csv")
    assert str(path) in str(said.value)
    assert "in use by another program" in str(said.value)
    assert list(open_room_log(path).readings()) == [still(START_MS + 1000 * second) for second in range(1, 31)]


@pytest.mark.parametrize(
    ("fails", "kind", "words"),
    [("start", OSError, "no thread to be had"), ("stop", RuntimeError, "the reader lives on")],
)
def test_that_a_board_that_fails_to_start_or_stop_leaves_no_thread_and_no_lock(
    threaded: Threaded, fails: str, kind: type[Exception], words: str
) -> None:
    with pytest.raises(kind, match=words), threaded.watched(ScriptedBoard(fails)):
        threaded.read(5)
    assert "keeper" not in {thread.name for thread in threading.enumerate()}
    with threaded.watched():
        pass


@pytest.mark.parametrize("fails", ["kept_curves", "take_up"])
def test_that_a_watch_that_cannot_take_up_its_records_lets_go_of_them_with_the_folder(
    threaded: Threaded, monkeypatch: pytest.MonkeyPatch, fails: str
) -> None:
    shut: list[str] = []

    def listed(path: Path) -> OpenStore:
        store = open_store(path, threaded.clock.utc_ms)

        def close() -> None:
            store.close()
            shut.append(path.name)

        return replace(store, close=close)

    def fail(*_: object) -> None:
        raise StoreTrouble("The records cannot be read.")

    outfit = replace(own_outfit(), clock=threaded.clock, open_store=listed)
    with monkeypatch.context() as patched:
        patched.setattr(watched_studio if fails == "kept_curves" else Watchkeeping, fails, fail)
        with (
            pytest.raises(StoreTrouble, match="cannot be read"),
            watching(outfit, threaded.folder, ScriptedBoard(), keep_backups=False),
        ):
            pass
    assert shut == [threaded.folder.database.name]
    assert not threaded.folder.database.with_name("studio.sqlite3-wal").exists()  # gone with its last connection
    with threaded.watched():
        pass


def test_that_the_folder_stays_locked_while_the_keeper_lives_on(
    threaded: Threaded, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(keeper_module, "JOIN_S", 0.01)
    freed, entered = threading.Event(), threading.Event()

    def hang(_: Snapshot) -> None:
        entered.set()
        freed.wait(WAIT_S)

    with pytest.raises(RuntimeError, match="did not end"), threaded.watched(listener=hang) as keeper:
        assert entered.wait(WAIT_S)
    with pytest.raises(FolderRefused, match="already"), threaded.watched():
        pass
    freed.set()
    keeper._thread.join(WAIT_S)
    assert not keeper.is_running


def test_that_one_who_cannot_be_told_ends_neither_the_watch_nor_a_command_and_she_sees_it(
    threaded: Threaded, capsys: pytest.CaptureFixture[str]
) -> None:
    def fail(_: Happening) -> None:
        raise OSError("the terminal is gone")

    with threaded.watched(tell=fail) as keeper:
        threaded.read(10)
        piece_key = keeper.submit(RegisterPiece(title="Low Tide", width_cm=40, height_cm=40)).result(WAIT_S)
        laid_ms = threaded.clock.now_ms
        keeper.submit(LayCoat(piece_key=piece_key, laid_ms=laid_ms, sheet=GLOSS, volume_mL=13)).result(WAIT_S)
        threaded.clock.pass_s(15)  # a silent board is told, and the telling fails
        keeper.submit(HearWarning(warning_key="none")).result(WAIT_S)
        snapshot = threaded.until(lambda snapshot: bool(snapshot.own_fault))
        assert "the terminal is gone" in snapshot.own_fault
        threaded.read(10)
        threaded.until(lambda snapshot: snapshot.board.counts.good == 20)
    assert capsys.readouterr().err.count("Traceback") == 1


def test_that_a_listener_that_fails_does_not_keep_the_others_from_seeing(
    threaded: Threaded, capsys: pytest.CaptureFixture[str]
) -> None:
    def fail(_: Snapshot) -> None:
        raise ValueError("no such widget")

    with threaded.watched(listener=fail) as keeper:
        keeper.subscribe(threaded.seen.put)
        threaded.read(10)
        assert "no such widget" in threaded.until(lambda snapshot: bool(snapshot.own_fault)).own_fault
    assert "no such widget" in capsys.readouterr().err


def test_that_a_model_that_fails_leaves_the_room_judged_and_the_readings_kept(
    threaded: Threaded, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    def fail(*_: object) -> None:
        raise ZeroDivisionError("film")

    with threaded.watched() as keeper:
        piece_key = keeper.submit(RegisterPiece(title="Low Tide", width_cm=40, height_cm=40)).result(WAIT_S)
        laid_ms = threaded.clock.now_ms
        keeper.submit(LayCoat(piece_key=piece_key, laid_ms=laid_ms, sheet=GLOSS, volume_mL=13)).result(WAIT_S)
        threaded.read(60)
        threaded.until(lambda snapshot: snapshot.board.counts.good == 60)
        monkeypatch.setattr("studiowatch.service.rack.Rack.advance", fail)
        threaded.read(60)
        for _ in range(30):
            threaded.clock.pass_s(1)
            threaded.good += 1
            reading = still(threaded.clock.now_ms, humidity_pct=95.0)
            threaded.board.say(ReadingArrived(reading=reading, counts=LineCounts(good=threaded.good)))
        snapshot = threaded.until(lambda snapshot: any(warning.kind == "damp" for warning in snapshot.warnings))
        assert "ZeroDivisionError" in snapshot.own_fault
    assert "ZeroDivisionError" in capsys.readouterr().err
    with closing(sqlite3.connect(threaded.folder.database)) as reader:
        assert reader.execute("SELECT count(*) FROM reading").fetchone() == (150,)


def test_that_a_command_after_the_end_is_answered(threaded: Threaded) -> None:
    with threaded.watched() as keeper:
        pass
    with pytest.raises(Refused, match="closing"):
        keeper.submit(RegisterPiece(title="Low Tide", width_cm=40, height_cm=40)).result(0)
