"""A week of the made-up studio at speed: the keeper, the store and the real window, one reading after the other."""

from __future__ import annotations

import queue
from collections import Counter
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from studiowatch.board.events import BoardEvent, LineCounts, PortOpened, ReadingArrived
from studiowatch.board.simulated import past_readings
from studiowatch.board.simulated_room import SimulatedRoom
from studiowatch.compose import outfit
from studiowatch.room.readings import Reading
from studiowatch.service.commands import LayCoat
from studiowatch.service.demo import furnish, scenario
from studiowatch.service.happenings import Happening, PromptHappened, WarningHappened
from studiowatch.service.keeper import Keeper
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.snapshot import Snapshot
from studiowatch.store.folder import StudioFolder
from studiowatch.studio.warnings import WarningState
from studiowatch.ui.app import build_window
from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.window import StudioWindow

from .held import OPENED_MS, HeldBoard, SetClock, held_watch
from .whole import NoTray, QuietSpeaker

pytestmark = pytest.mark.window
MINUTE_MS, HOUR_MS, DAY_MS = 60_000, 3_600_000, 86_400_000
STEP_S, CLOSE_STEP_S = 900.0, 60.0  # s of board time between two readings: a week takes seconds, a fan is seen
SILENT_S = 4000.0  # s: four readings missing
PATIENCE_S = 20.0
FAN_M_S = 0.35
FAN_FROM_MS, FAN_TO_MS = OPENED_MS + 2 * DAY_MS + 20 * MINUTE_MS, OPENED_MS + 2 * DAY_MS + 40 * MINUTE_MS
LAID_MS = OPENED_MS + 2 * DAY_MS


class Week:
    """The made-up studio in a folder of its own, with the clock and the board in the test's hand."""

    def __init__(self, folder: Path) -> None:
        self.clock, self.board, self.speaker = SetClock(), HeldBoard(), QuietSpeaker()
        self.parts = replace(outfit(), clock=self.clock)
        self.folder = StudioFolder(path=folder / "studio")
        self.settings = ViewSettings(QSettings(str(folder / "window.ini"), QSettings.Format.IniFormat))
        self.seen: queue.Queue[Snapshot] = queue.Queue()
        self.told: list[Happening] = []
        self.sent: list[Reading] = []
        self.room = SimulatedRoom(seed=scenario().seed)
        self.latest: Snapshot | None = None

    @contextmanager
    def watched(self) -> Iterator[tuple[Keeper, StudioWindow]]:
        """Furnish the studio, and watch it with the window open."""
        self.folder.make()
        store = self.parts.open_store(self.folder.database)
        past: list[Reading] = []
        made_up = scenario()
        furnish(
            made_up,
            now_ms=OPENED_MS,
            log=store.log,
            records=store.records,
            past_readings=lambda first_ms, last_ms, step_s: self._kept(past, first_ms, last_ms, step_s),
        )
        store.close()
        self.furnished = len(past)
        shelf = SheetShelf.open(self.folder.sheets)
        keeper = Keeper(
            open_watch=lambda: held_watch(self.parts, self.folder, shelf, self.told.append, SILENT_S),
            source=self.board,
            clock=self.clock,
            shelf=shelf,
        )
        keeper.subscribe(self.seen.put)
        keeper.start()
        try:
            window = build_window(
                keeper,
                self.parts.open_history(self.folder.database),
                self.clock,
                settings=self.settings,
                speaker=self.speaker,
                tray=NoTray(),
            )
            window.show()
            try:
                yield keeper, window
            finally:
                window.leave()
                window.deleteLater()
        finally:
            keeper.stop()

    def _kept(self, past: list[Reading], first_ms: int, last_ms: int, step_s: float) -> Iterator[Reading]:
        for reading in past_readings(self.room, first_ms, last_ms, step_s):
            past.append(reading)
            yield reading

    def say(self, event: BoardEvent) -> None:
        self.board.say(event)

    def run_until(self, end_ms: int, step_s: float = STEP_S) -> None:
        """Let the board speak every `step_s` up to `end_ms`; each reading is taken before the next comes."""
        for reading in past_readings(self.room, self.clock.now_ms + 1000, end_ms, step_s):
            told = _with_fan(reading)
            self.clock.now_ms = told.time_ms
            self.sent.append(told)
            self.say(ReadingArrived(reading=told, counts=LineCounts(good=len(self.sent))))
            self.until_counted(len(self.sent))
            if len(self.sent) % 20 == 0:
                QApplication.processEvents()

    def until_counted(self, good: int) -> Snapshot:
        while self.latest is None or self.latest.board.counts.good < good:
            self.latest = self.seen.get(timeout=PATIENCE_S)
        return self.latest

    def stored(self) -> Sequence[Reading]:
        store = self.parts.open_store(self.folder.database)
        try:
            return store.log.between(OPENED_MS, self.clock.now_ms + 1)
        finally:
            store.close()


def _with_fan(reading: Reading) -> Reading:
    """Return the reading in a quiet week: no air moves but in the one spell that the test wants."""
    fan = FAN_FROM_MS <= reading.time_ms < FAN_TO_MS
    return replace(reading, air_speed_m_s=FAN_M_S if fan else 0.04)


@pytest.mark.timeout(360)  # 80 s on a machine with nothing else to do
def test_that_a_week_goes_by_with_all_of_it_stored_told_in_order_and_shown(tmp_path: Path, qtbot: QtBot) -> None:
    week = Week(tmp_path)
    with week.watched() as (keeper, window):
        week.say(PortOpened(time_ms=OPENED_MS, port="made-up", board="made-up"))
        week.run_until(LAID_MS)
        waiting = next(piece for piece in week.latest.pieces if any(coat.laid_ms is None for coat in piece.coats))
        sheet = next(coat.sheet for coat in waiting.coats if coat.laid_ms is None)
        coat = LayCoat(piece_key=waiting.key, laid_ms=week.clock.now_ms, sheet=sheet, volume_mL=30)
        keeper.submit(coat).result(PATIENCE_S)

        week.run_until(FAN_FROM_MS + 5 * MINUTE_MS, CLOSE_STEP_S)
        qtbot.waitUntil(lambda: window.page.sentence.headline.startswith("Air is moving over"))
        qtbot.waitUntil(lambda: bool(week.speaker.played))
        (moving,) = [one for one in week.latest.warnings if one.cleared_ms is None and one.sound]
        window.page.heard.emit(moving.key)
        qtbot.waitUntil(lambda: "Heard" in window.foot.words)

        week.run_until(FAN_TO_MS + 20 * MINUTE_MS, CLOSE_STEP_S)
        week.run_until(OPENED_MS + 7 * DAY_MS)
        qtbot.waitUntil(
            lambda: window.feed.latest is not None and window.feed.latest.board.counts.good == len(week.sent)
        )
        assert "Air is moving" not in window.page.sentence.headline
        titles = {piece.title for piece in week.latest.pieces}
        assert titles == {piece["title"] for piece in scenario().pieces}
        assert week.latest.own_fault == ""
        assert week.latest.store_trouble == ""
    assert [one.time_ms for one in week.stored()] == [one.time_ms for one in week.sent]
    _assert_told_in_order(week.told, waiting.title, moving.key)


def _assert_told_in_order(told: Sequence[Happening], title: str, warning_key: str) -> None:
    """Hold that prompts and warnings came in order, each prompt once a coat, the warning to its end."""
    for kind in (PromptHappened, WarningHappened):
        times = [one.time_ms for one in told if isinstance(one, kind)]
        assert times == sorted(times)
    prompts = [(one.piece_title, one.text) for one in told if isinstance(one, PromptHappened)]
    assert prompts
    assert any(whose == title and "bubble pass" in text for whose, text in prompts)
    coats = {whose: 2 if whose == title else 1 for whose, _ in prompts}  # wet that week: one, and the one that was laid
    assert all(times <= coats[whose] for (whose, _), times in Counter(prompts).items())
    warned = [one.warning for one in told if isinstance(one, WarningHappened)]
    states = [one.state for one in warned if one.key == warning_key]
    assert states[0] is WarningState.RAISED
    assert WarningState.HEARD in states
    assert states[-1] is WarningState.CLEARED
