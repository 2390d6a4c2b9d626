"""The window as she uses it, on a keeper, a store and a board in the test's hand.

Left running beside the rack for hours, and asked why a coat clouded.
"""

from __future__ import annotations

import queue
import threading
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import replace
from itertools import groupby
from pathlib import Path

import pytest
from PySide6.QtCore import QObject, QSettings, Qt
from PySide6.QtWidgets import QApplication, QDialog, QFileDialog, QLabel, QMessageBox, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from studiowatch.board.events import LineCounts, PortOpened, ReadingArrived
from studiowatch.compose import outfit
from studiowatch.room.readings import Reading
from studiowatch.service.commands import Command, LayCoat, RegisterPiece
from studiowatch.service.happenings import Happening, PromptHappened, WarningHappened
from studiowatch.service.keeper import Keeper
from studiowatch.service.review_desk import ReviewDesk
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.snapshot import Snapshot
from studiowatch.store.folder import StudioFolder
from studiowatch.studio.concern import Kind
from studiowatch.studio.pieces import Outcome
from studiowatch.studio.review_causes import TITLES, Cause
from studiowatch.studio.warnings import StudioWarning, WarningState
from studiowatch.ui.app import build_window
from studiowatch.ui.models.review import review_words
from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.widgets.outcome_dialog import OutcomeDialog
from studiowatch.ui.window import StudioWindow

from .held import OPENED_MS, HeldBoard, SetClock, held_watch
from .whole import NoTray, QuietSpeaker

pytestmark = pytest.mark.window
MINUTE_MS, HOUR_MS = 60_000, 3_600_000
PATIENCE_S, PATIENCE_MS = 20.0, 20_000
SILENT_S = 400.0  # s: longer than the longest step between two readings here
FAN_WORDS = "Air is moving over a wet coat"
A_ROW = 40  # objects: a row of a prompt that came meanwhile, with its labels and buttons
STILL = Reading(time_ms=0, temperature_C=20.6, humidity_pct=52.0, air_speed_m_s=0.04)


def stirred(reading: Reading, number: int) -> Reading:
    """Return `reading` as a sensor that lives says it: no two alike for long, and none beyond its last digit."""
    return replace(
        reading,
        temperature_C=reading.temperature_C + 0.01 * (number * 3 % 5 - 2),
        humidity_pct=reading.humidity_pct + 0.1 * (number * 2 % 7 - 3),
        air_speed_m_s=reading.air_speed_m_s + 0.002 * (number % 3 - 1),
    )


class Rack:
    """An empty studio that a keeper watches, with the window open on it."""

    def __init__(self, folder: Path) -> None:
        self.clock, self.board, self.speaker = SetClock(), HeldBoard(), QuietSpeaker()
        self.parts = replace(outfit(), clock=self.clock)
        self.folder = StudioFolder(path=folder / "studio")
        self.settings = ViewSettings(QSettings(str(folder / "window.ini"), QSettings.Format.IniFormat))
        self.seen: queue.Queue[Snapshot] = queue.Queue()
        self.told: list[Happening] = []
        self.sent = 0
        self.latest: Snapshot | None = None

    @contextmanager
    def watched(self) -> Iterator[StudioWindow]:
        self.folder.make()
        self.parts.open_store(self.folder.database).close()
        shelf = SheetShelf.open(self.folder.sheets)
        self.keeper = Keeper(
            open_watch=lambda: held_watch(self.parts, self.folder, shelf, self.told.append, SILENT_S),
            source=self.board,
            clock=self.clock,
            shelf=shelf,
        )
        self.keeper.subscribe(self.seen.put)
        self.keeper.start()
        try:
            self.window = build_window(
                self.keeper,
                self.parts.open_history(self.folder.database),
                self.clock,
                reviews=ReviewDesk(folder=self.folder),
                settings=self.settings,
                speaker=self.speaker,
                tray=NoTray(),
            )
            self.window.show()
            try:
                self.board.say(PortOpened(time_ms=OPENED_MS, port="made-up", board="made-up"))
                yield self.window
            finally:
                self.window.leave()
                self.window.deleteLater()
        finally:
            self.keeper.stop()

    def do(self, command: Command) -> str:
        return self.keeper.submit(command).result(PATIENCE_S)

    def run(self, hours: float, step_s: float = 60.0, reading: Reading = STILL) -> None:
        """Let the board say nearly the same every `step_s`; each reading is taken before the next comes."""
        end_ms = self.clock.now_ms + round(hours * HOUR_MS)
        while self.clock.now_ms < end_ms:
            self.clock.now_ms += round(step_s * 1000)
            self.sent += 1
            taken = stirred(replace(reading, time_ms=self.clock.now_ms), self.sent)
            self.board.say(ReadingArrived(reading=taken, counts=LineCounts(good=self.sent)))
            while self.latest is None or self.latest.board.counts.good < self.sent:
                self.latest = self.seen.get(timeout=PATIENCE_S)
            if self.sent % 10 == 0:
                QApplication.processEvents()

    def shown(self, qtbot: QtBot) -> list[str]:
        """Return all words on the page once it shows the latest reading."""
        qtbot.waitUntil(self._is_up_to_date, timeout=PATIENCE_MS)
        self.window.feed.draw()
        return words_of(self.window.page)

    def _is_up_to_date(self) -> bool:
        seen = self.window.feed.latest
        return seen is not None and seen.board.counts.good == self.sent

    def warned(self) -> Sequence[StudioWarning]:
        """Return what was told of warnings."""
        return [one.warning for one in list(self.told) if isinstance(one, WarningHappened)]

    def stored(self) -> int:
        """Return how many readings are on disk."""
        store = self.parts.open_store(self.folder.database)
        try:
            return len(store.log.between(OPENED_MS, self.clock.now_ms + 1))
        finally:
            store.close()


@pytest.fixture
def rack(tmp_path: Path) -> Rack:
    return Rack(tmp_path)


def words_of(page: QWidget) -> list[str]:
    """Return the words of all labels that are shown, mark-up of the figures left out."""
    labels = [one for one in page.findChildren(QLabel) if one.isVisibleTo(page)]
    return [one.accessibleName() or one.text() for one in labels if one.text()]


def has(words: Sequence[str], part: str) -> bool:
    return any(part in one for one in words)


def press(qtbot: QtBot, window: StudioWindow, letter: Qt.Key) -> None:
    with qtbot.waitActive(window):
        window.activateWindow()
    qtbot.keyClick(window, letter, Qt.KeyboardModifier.ControlModifier)


def lay(rack: Rack, piece_key: str, sheet: str, volume_mL: float) -> None:
    rack.do(LayCoat(piece_key=piece_key, laid_ms=rack.clock.now_ms, sheet=sheet, volume_mL=volume_mL))


def hold_the_figures_and_the_first_prompt(rack: Rack, qtbot: QtBot, laid_ms: int) -> None:
    words = rack.shown(qtbot)
    assert has(words, "20.6")
    assert has(words, "52 %")
    assert has(words, "bubble pass")
    told = [one.time_ms for one in rack.told if isinstance(one, PromptHappened) and "bubble pass" in one.text]
    assert [10 * MINUTE_MS <= time_ms - laid_ms <= 20 * MINUTE_MS for time_ms in told] == [True]


def has_unheard(window: StudioWindow) -> bool:
    """Return whether the window shows a warning that sounds."""
    return any(one.sound and one.state is WarningState.RAISED for one in window.feed.latest.warnings)


def let_a_fan_run(rack: Rack, qtbot: QtBot) -> None:
    """Turn a fan on, hear its warning, take that back, hear it again, and turn the fan off."""
    window = rack.window
    rack.run(0.05, step_s=5.0, reading=replace(STILL, air_speed_m_s=0.35))
    qtbot.waitUntil(lambda: window.page.sentence.headline == FAN_WORDS, timeout=PATIENCE_MS)
    qtbot.waitUntil(lambda: bool(rack.speaker.played), timeout=PATIENCE_MS)
    press(qtbot, window, Qt.Key.Key_H)
    qtbot.waitUntil(lambda: rack.warned()[-1].state is WarningState.HEARD, timeout=PATIENCE_MS)
    press(qtbot, window, Qt.Key.Key_Z)
    qtbot.waitUntil(lambda: has_unheard(window), timeout=PATIENCE_MS)
    qtbot.waitUntil(lambda: f"heard “{FAN_WORDS}”" in window.foot.words, timeout=PATIENCE_MS)
    press(qtbot, window, Qt.Key.Key_H)
    qtbot.waitUntil(lambda: rack.warned()[-1].state is WarningState.HEARD, timeout=PATIENCE_MS)
    rack.run(0.3, step_s=10.0)


def hold_that_one_warning_came_and_went(rack: Rack) -> None:
    assert {(one.kind, one.key) for one in rack.warned()} == {(Kind.AIR_MOVING, rack.warned()[0].key)}
    states = [state for state, _ in groupby(one.state for one in rack.warned())]
    raised, heard = WarningState.RAISED, WarningState.HEARD
    assert states == [raised, heard, raised, heard, WarningState.CLEARED]


def test_that_it_stands_beside_the_rack_for_hours_and_warns_once(rack: Rack, qtbot: QtBot) -> None:
    with rack.watched() as window:
        rack.run(0.1)
        piece_key = rack.do(RegisterPiece(title="Low Tide", width_cm=60, height_cm=50, sheets=("satin-waterborne",)))
        lay(rack, piece_key, "gloss-waterborne", 24)
        laid_ms = rack.clock.now_ms
        rack.run(0.28, step_s=20.0)
        hold_the_figures_and_the_first_prompt(rack, qtbot, laid_ms)
        let_a_fan_run(rack, qtbot)
        hold_that_one_warning_came_and_went(rack)

        rack.run(2.0)
        rack.shown(qtbot)
        objects, threads = len(window.findChildren(QObject)), threading.active_count()
        ready_ms = rack.latest.pieces[0].next_ms
        rack.run(6.0)
        words = rack.shown(qtbot)
        assert has(words, "20.6")
        assert len(window.findChildren(QObject)) <= objects + A_ROW
        assert threading.active_count() <= threads
        hold_that_one_warning_came_and_went(rack)
        assert rack.latest.pieces[0].next_ms == pytest.approx(ready_ms, abs=HOUR_MS)  # in a room that stayed as it was
        assert (rack.latest.own_fault, rack.latest.store_trouble) == ("", "")
    assert rack.stored() == rack.sent


@pytest.fixture
def clouded(rack: Rack, qtbot: QtBot) -> Iterator[Rack]:
    """Give a rack with a coat that was laid three quarters of an hour after a thick one, a day later."""
    with rack.watched() as window:
        rack.run(0.1)
        piece_key = rack.do(RegisterPiece(title="Low Tide", width_cm=40, height_cm=40))
        lay(rack, piece_key, "isolation-waterborne", 24)
        rack.run(0.75)
        lay(rack, piece_key, "gloss-waterborne", 16)
        rack.run(20.0, step_s=300.0)
        rack.shown(qtbot)
        window.page.rack.reveal(piece_key)
        yield rack


def say_that_it_came_out_milky(window: StudioWindow, qtbot: QtBot) -> None:
    press(qtbot, window, Qt.Key.Key_O)
    (form,) = [one for one in window.findChildren(OutcomeDialog) if one.isVisible()]
    form.coat_field.setCurrentIndex(form.coat_field.findText("gloss"))
    form.answers[Outcome.MILKY_ALL_OVER].click()
    qtbot.waitUntil(lambda: bool(visible(window, QMessageBox)), timeout=PATIENCE_MS)
    for box in visible(window, QMessageBox):
        box.reject()  # she asks herself, by the key


def visible(window: StudioWindow, kind: type[QDialog]) -> list[QDialog]:
    return [one for one in window.findChildren(kind) if one.isVisible()]


def test_that_a_clouded_coat_is_recorded_asked_about_and_saved(clouded: Rack, qtbot: QtBot, tmp_path: Path) -> None:
    window = clouded.window
    say_that_it_came_out_milky(window, qtbot)
    press(qtbot, window, Qt.Key.Key_E)
    qtbot.waitUntil(lambda: window.why.review is not None, timeout=PATIENCE_MS)
    review = window.why.review
    assert review.outcome is Outcome.MILKY_ALL_OVER
    assert review.causes[0].cause is Cause.SEALED_IN_WATER
    qtbot.waitUntil(lambda: has(words_of(window.why), TITLES[Cause.SEALED_IN_WATER]), timeout=PATIENCE_MS)
    words, meant = words_of(window.why), review_words(review, clouded.clock.now_ms)
    assert has(words, meant.steps[0])
    assert min(change.chance for change in review.changes) < review.chance

    saved = tmp_path / "review.pdf"
    (save,) = [one for one in window.why.findChildren(QPushButton) if one.text() == "Save as PDF…"]
    save.click()
    (chooser,) = visible(window, QFileDialog)
    chooser.fileSelected.emit(str(saved))
    chooser.reject()
    qtbot.waitUntil(lambda: window.foot.words == "Saved as review.pdf.", timeout=PATIENCE_MS)
    assert saved.read_bytes().startswith(b"%PDF-")
