"""The keeper's thread over a real store: readings and commands in, snapshots out, everything on disk at the end."""

from __future__ import annotations

import queue
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path

import pytest

from studiowatch.board.events import BoardEvent, BoardTrouble, LineCounts, PortLost, PortOpened, ReadingArrived
from studiowatch.board.loose_lines import Style
from studiowatch.board.mapping import ColumnMapping
from studiowatch.board.onlooker import Onlooker
from studiowatch.board.port import PortGone
from studiowatch.coats.stages import Surface
from studiowatch.compose import outfit as own_outfit
from studiowatch.service.commands import (
    AcceptColumns,
    ChooseBoard,
    LayCoat,
    RecordLook,
    Refused,
    RegisterPiece,
    TickPrompt,
)
from studiowatch.service.correction_commands import Undo
from studiowatch.service.keeper import Keeper
from studiowatch.service.outfit import Outfit
from studiowatch.service.snapshot import Snapshot
from studiowatch.service.watched_studio import watching
from studiowatch.store.folder import FolderRefused, StudioFolder
from studiowatch.studio.pieces import Finding

from .rooms import START_MS, room

WAIT_S = 20.0


class SetClock:
    """A clock that the test sets; `step_ms` is how far its wall clock was set from the one for durations."""

    def __init__(self) -> None:
        self.now_ms = START_MS
        self.step_ms = 0

    def utc_ms(self) -> int:
        return self.now_ms

    def monotonic_s(self) -> float:
        return (self.now_ms - self.step_ms) / 1000


class ScriptedBoard:
    """A board that says what the test says."""

    def __init__(self, clock: SetClock) -> None:
        self._clock = clock
        self._deliver: Callable[[BoardEvent], None] | None = None
        self.stopped = False
        self.accepted: tuple[str, ColumnMapping] | None = None
        self.chosen: str | None = None
        self.onlooker = Onlooker()

    def start(self, deliver: Callable[[BoardEvent], None]) -> None:
        self._deliver = deliver

    def stop(self) -> None:
        self.stopped = True

    def accept(self, board: str, mapping: ColumnMapping) -> None:
        if self.stopped:
            raise PortGone("No board.")
        self.accepted = board, mapping

    def choose(self, port: str | None) -> None:
        if port == "nowhere":
            raise PortGone("There is no port nowhere any more.")
        self.chosen = port

    def say(self, event: BoardEvent) -> None:
        assert self._deliver is not None
        self._deliver(event)


class Studio:
    """A watched studio in a folder of its own."""

    def __init__(self, folder: Path) -> None:
        self.clock = SetClock()
        self.board = ScriptedBoard(self.clock)
        self.outfit: Outfit = replace(own_outfit(), clock=self.clock)
        self.folder = StudioFolder(path=folder / "studio")
        self.seen: queue.Queue[Snapshot] = queue.Queue()
        self.good = 0

    @contextmanager
    def watched(self) -> Iterator[Keeper]:
        self.board = ScriptedBoard(self.clock)
        with watching(self.outfit, self.folder, self.board, listener=self.seen.put) as keeper:
            yield keeper

    def read(self, seconds: int, *, fan: bool = False) -> None:
        first_ms = self.clock.now_ms
        for reading in room(seconds, fan=lambda _: fan):
            self.clock.now_ms = first_ms + reading.time_ms - START_MS + 1000
            self.good += 1
            reading = replace(reading, time_ms=self.clock.now_ms)  # noqa: PLW2901
            self.board.say(ReadingArrived(reading=reading, counts=LineCounts(good=self.good)))

    def until(self, fits: Callable[[Snapshot], bool]) -> Snapshot:
        while True:
            snapshot = self.seen.get(timeout=WAIT_S)
            if fits(snapshot):
                return snapshot


@pytest.fixture
def studio(tmp_path: Path) -> Studio:
    return Studio(tmp_path)


def register(keeper: Keeper) -> str:
    order = RegisterPiece(title="Low Tide", width_cm=40, height_cm=40, sheets=("isolation-waterborne",))
    return keeper.submit(order).result(WAIT_S)


def test_that_a_reading_reaches_the_snapshot_and_the_disk(studio: Studio) -> None:
    with studio.watched():
        studio.board.say(PortOpened(time_ms=START_MS, port="scripted", board="scripted"))
        studio.read(30)
        snapshot = studio.until(lambda snapshot: snapshot.board.counts.good == 30)
        assert snapshot.board.connected
        assert snapshot.room.temperature_C == pytest.approx(20.5, abs=0.2)
        assert snapshot.room.humidity_pct == pytest.approx(50, abs=1)
    assert studio.board.stopped
    store = studio.outfit.open_store(studio.folder.database)
    try:
        assert len(store.log.between(0, studio.clock.now_ms + 1)) == 30
    finally:
        store.close()


def test_that_a_board_in_trouble_is_told_warned_of_over_a_wet_coat_and_cleared_by_its_next_good_line(
    studio: Studio,
) -> None:
    with studio.watched() as keeper:
        studio.board.say(PortOpened(time_ms=START_MS, port="scripted", board="scripted"))
        piece_key = register(keeper)
        studio.read(60)
        laid = LayCoat(piece_key=piece_key, laid_ms=studio.clock.now_ms, sheet="isolation-waterborne", volume_mL=14)
        keeper.submit(laid).result(WAIT_S)
        for second in range(1, 31):
            studio.clock.now_ms += 1000
            counts = LineCounts(good=studio.good + second, troubles=second)
            studio.board.say(BoardTrouble(time_ms=studio.clock.now_ms, code="bus", message="timeout", counts=counts))
            if second % 10:
                continue  # one looks at every third second at most
            snapshot = studio.until(lambda snapshot, counts=counts: snapshot.board.counts == counts)
            assert "check the sensor's wires (bus timeout)" in snapshot.board.trouble
            assert (snapshot.room.temperature_C, snapshot.room.humidity_pct) == (None, None)
            assert not snapshot.board.silent
        assert [one.kind for one in snapshot.warnings] == ["reading-implausible"]
        assert snapshot.sentence.headline == "Neither temperature nor humidity is measured"
        studio.read(1)
        snapshot = studio.until(lambda snapshot: snapshot.board.counts.good == studio.good)
        assert snapshot.board.trouble == ""
        assert snapshot.room.temperature_C == pytest.approx(20.5, abs=0.2)


def test_that_a_laid_coat_is_wet_warned_for_and_remembered_after_a_restart(studio: Studio) -> None:
    with studio.watched() as keeper:
        piece_key = register(keeper)
        studio.read(60)
        now_ms = studio.clock.now_ms
        coat_key = keeper.submit(
            LayCoat(piece_key=piece_key, laid_ms=now_ms, sheet="isolation-waterborne", volume_mL=14)
        ).result(WAIT_S)
        studio.read(60)
        studio.read(60, fan=True)
        snapshot = studio.until(lambda snapshot: any(one.kind == "air-moving" for one in snapshot.warnings))
        assert snapshot.sentence.headline == "Air is moving over a wet coat"
        assert snapshot.pieces[0].coats[0].surface is Surface.WET
        keeper.submit(RecordLook(coat_key=coat_key, time_ms=studio.clock.now_ms, finding=Finding.MILKY)).result(WAIT_S)
    studio.seen = queue.Queue()
    with studio.watched():
        studio.read(2)
        again = studio.until(lambda snapshot: bool(snapshot.pieces) and snapshot.board.counts.good > 0)
        assert again.pieces[0].title == "Low Tide"
        assert again.pieces[0].coats[0].surface is Surface.WET
        assert again.pieces[0].coats[0].laid_ms == now_ms


def test_that_a_refusal_reaches_the_one_who_asked_and_the_watch_goes_on(studio: Studio) -> None:
    with studio.watched() as keeper:
        with pytest.raises(Refused, match="width"):
            keeper.submit(RegisterPiece(title="Low Tide", width_cm=-3, height_cm=40)).result(WAIT_S)
        with pytest.raises(Refused, match="prompt"):
            keeper.submit(TickPrompt(prompt_key="none")).result(WAIT_S)
        assert register(keeper)


def test_that_a_lost_port_is_shown_with_its_reason(studio: Studio) -> None:
    with studio.watched():
        studio.board.say(PortOpened(time_ms=START_MS, port="scripted", board="scripted"))
        studio.board.say(PortLost(time_ms=START_MS, port="scripted", reason="The board was unplugged."))
        snapshot = studio.until(lambda snapshot: snapshot.board.trouble != "")
        assert not snapshot.board.connected
        assert snapshot.board.trouble == "The board was unplugged."


def test_that_a_second_watcher_is_refused_while_the_first_one_watches(studio: Studio) -> None:
    with studio.watched(), pytest.raises(FolderRefused, match="already"), studio.watched():
        pass


def test_that_prompts_are_ticked_off_for_good(studio: Studio) -> None:
    with studio.watched() as keeper:
        piece_key = register(keeper)
        studio.read(10)
        keeper.submit(LayCoat(piece_key=piece_key, laid_ms=studio.clock.now_ms, sheet="isolation-waterborne")).result(
            WAIT_S
        )
        studio.read(10)
        prompts = studio.until(lambda snapshot: len(snapshot.prompts) > 1).prompts
        keeper.submit(TickPrompt(prompt_key=prompts[0].key)).result(WAIT_S)
    studio.seen = queue.Queue()
    with studio.watched():
        studio.read(10)
        again = studio.until(lambda snapshot: bool(snapshot.prompts)).prompts
        assert prompts[0].key not in {prompt.key for prompt in again}
        assert {prompt.key for prompt in prompts[1:]} <= {prompt.key for prompt in again}


def test_that_a_tick_and_a_laid_coat_are_undone_in_turn_and_stay_undone_after_a_restart(studio: Studio) -> None:
    with studio.watched() as keeper:
        piece_key = register(keeper)
        studio.read(10)
        lay = LayCoat(piece_key=piece_key, laid_ms=studio.clock.now_ms, sheet="isolation-waterborne")
        keeper.submit(lay).result(WAIT_S)
        studio.read(10)
        first = studio.until(lambda snapshot: len(snapshot.prompts) > 1).prompts[0]
        keeper.submit(TickPrompt(prompt_key=first.key)).result(WAIT_S)
        ticked = studio.until(lambda snapshot: snapshot.undo.undo.startswith("ticked off"))
        assert first.key not in {prompt.key for prompt in ticked.prompts}
        keeper.submit(Undo()).result(WAIT_S)
        undone = studio.until(lambda snapshot: snapshot.undo.redo.startswith("ticked off"))
        assert undone.undo.undo == "laid isolation 1 on Low Tide"
        studio.read(10)
        studio.until(lambda snapshot: first.key in {prompt.key for prompt in snapshot.prompts})
        assert keeper.submit(Undo()).result(WAIT_S) == "laid isolation 1 on Low Tide"
        studio.read(10)
        bare = studio.until(lambda snapshot: not snapshot.prompts)
        assert bare.pieces[0].top is None
    studio.seen = queue.Queue()
    with studio.watched():
        studio.read(10)
        again = studio.until(lambda snapshot: bool(snapshot.pieces) and snapshot.board.counts.good > 0)
        assert (again.pieces[0].top, again.prompts, again.undo.undo) == (None, (), "")
        assert [one.words.split(";")[0] for one in again.pieces[0].corrections] == ["isolation 1: not on"]


def test_that_what_she_says_of_a_boards_columns_reaches_it_or_is_refused(studio: Studio) -> None:
    mapping = ColumnMapping(style=Style.COLUMNS, columns=())
    with studio.watched() as keeper:
        keeper.submit(AcceptColumns(board="usb 2341:0043", mapping=mapping)).result(WAIT_S)
        assert studio.board.accepted == ("usb 2341:0043", mapping)
        studio.board.stop()
        with pytest.raises(Refused, match="No board"):
            keeper.submit(AcceptColumns(board="usb 2341:0043", mapping=mapping)).result(WAIT_S)


def test_that_the_board_is_asked_for_another_port_and_its_refusal_is_told(studio: Studio) -> None:
    with studio.watched() as keeper:
        keeper.submit(ChooseBoard(port="other")).result(WAIT_S)
        assert studio.board.chosen == "other"
        with pytest.raises(Refused, match="no port nowhere"):
            keeper.submit(ChooseBoard(port="nowhere")).result(WAIT_S)
        assert keeper.onlooker is studio.board.onlooker


def test_that_a_clock_that_lies_behind_all_records_is_said_first(studio: Studio) -> None:
    with studio.watched() as keeper:
        studio.read(20)
        laying = LayCoat(piece_key=register(keeper), laid_ms=studio.clock.now_ms, sheet="isolation-waterborne")
        keeper.submit(laying).result(WAIT_S)
    studio.clock.now_ms -= 30 * 86_400_000
    studio.seen = queue.Queue()
    with studio.watched():
        studio.read(2)
        seen = studio.until(lambda seen: bool(seen.pieces) and seen.board.counts.good > 0)
        assert "clock is behind" in seen.sentence.headline
        assert "Set the computer's date" in seen.sentence.advice


def test_that_a_coat_is_as_old_as_it_is_after_the_clock_was_set_back_and_a_restart(studio: Studio) -> None:
    back_ms = 3_600_000
    with studio.watched() as keeper:
        studio.read(20)
        laid_ms = studio.clock.now_ms
        keeper.submit(LayCoat(piece_key=register(keeper), laid_ms=laid_ms, sheet="isolation-waterborne")).result(WAIT_S)
        studio.clock.step_ms = -back_ms
        studio.clock.now_ms -= back_ms
        studio.read(20)
        studio.until(lambda seen: bool(seen.pieces) and seen.pieces[0].coats[0].laid_ms == laid_ms - back_ms)
    studio.seen = queue.Queue()
    with studio.watched():
        studio.read(2)
        again = studio.until(lambda seen: bool(seen.pieces) and seen.board.counts.good > 0)
        assert again.pieces[0].coats[0].laid_ms == laid_ms - back_ms
        assert again.pieces[0].coats[0].surface is Surface.WET
