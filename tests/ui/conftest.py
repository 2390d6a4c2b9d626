"""A whole window on a scripted desk, with nothing of this machine's: no sound, no tray, settings of its own."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, QObject, QSettings, Signal
from PySide6.QtWidgets import QAbstractButton, QApplication, QFrame, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from studiowatch.service.snapshot import Snapshot
from studiowatch.studio.words import Sentence
from studiowatch.ui.app import build_window
from studiowatch.ui.models.alarm import Sound
from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.widgets.board_page import BoardPage
from studiowatch.ui.widgets.history import RoomHistory
from studiowatch.ui.window import StudioWindow

from .board_scenes import READ, heard
from .history_scenes import HourOfReadings, snapshot
from .scenes import MadeUpHistory, ScriptedClock, ScriptedDesk

MakeWindow = Callable[[ViewSettings], StudioWindow]
Show = Callable[[Snapshot], StudioWindow]


class StandInPlot(QFrame):
    """Stands where the room history stands, and keeps what it was given."""

    lane_opened = Signal(str)
    review_asked = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName("Room history")
        self.snapshots: list[Snapshot] = []
        self.spans: list[str] = []
        self.themes: list[str] = []
        self.stopped = False

    def set_theme(self, theme: object) -> None:
        self.themes.append(getattr(theme, "name", ""))

    def set_history(self, history: object) -> None:
        self.history = history

    def set_snapshot(self, snapshot: Snapshot) -> None:
        self.snapshots.append(snapshot)

    def set_span(self, span: str) -> None:
        self.spans.append(span)

    def stop(self) -> None:
        self.stopped = True


class KeptSpeaker:
    """Keeps what it was asked to play."""

    def __init__(self) -> None:
        self.played: list[Sound] = []
        self.loud: list[float] = []
        self.trouble = ""
        self.closed = False

    def play(self, sound: Sound, loudness: float = 1.0) -> None:
        self.played.append(sound)
        self.loud.append(loudness)

    def close(self) -> None:
        self.closed = True


class KeptTray(QObject):
    """A tray that may or may not exist, and keeps what it said."""

    opened = Signal()
    across_asked = Signal()
    quit_asked = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.exists = False
        self.said: list[Sentence] = []
        self.shown: list[tuple[Sentence, str]] = []

    def say(self, sentence: Sentence) -> None:
        self.said.append(sentence)

    def show(self, sentence: Sentence, prompt: str) -> None:
        self.shown.append((sentence, prompt))

    def close(self) -> None:
        self.exists = False


@pytest.fixture
def desk() -> ScriptedDesk:
    return ScriptedDesk()


@pytest.fixture
def clock() -> ScriptedClock:
    return ScriptedClock()


@pytest.fixture
def speaker() -> KeptSpeaker:
    return KeptSpeaker()


@pytest.fixture
def tray() -> KeptTray:
    return KeptTray()


@pytest.fixture
def settings(tmp_path: Path) -> ViewSettings:
    return ViewSettings(QSettings(str(tmp_path / "window.ini"), QSettings.Format.IniFormat))


@pytest.fixture
def make_window(
    qapp: QApplication, desk: ScriptedDesk, clock: ScriptedClock, speaker: KeptSpeaker, tray: KeptTray
) -> MakeWindow:
    """Return how a window is made on the scripted parts, with settings of one's own."""
    del qapp  # it only has to be there

    def make(settings: ViewSettings) -> StudioWindow:
        parts = {"settings": settings, "speaker": speaker, "tray": tray, "make_plot": StandInPlot}
        return build_window(desk, MadeUpHistory(), clock, **parts)

    return make


@pytest.fixture
def window(qtbot: QtBot, make_window: MakeWindow, settings: ViewSettings) -> Iterator[StudioWindow]:
    made = make_window(settings)
    made.show()
    qtbot.waitExposed(made)
    yield made
    made.leave()
    made.deleteLater()


@pytest.fixture
def shown(window: StudioWindow, desk: ScriptedDesk, qtbot: QtBot) -> Show:
    """Publish a snapshot and return the window once it is drawn."""

    def publish(snapshot: Snapshot) -> StudioWindow:
        desk.publish(snapshot)
        headline = snapshot.sentence.headline
        qtbot.waitUntil(lambda: window.page.sentence.headline == headline)
        return window

    return publish


@pytest.fixture
def plot(qtbot: QtBot) -> Iterator[RoomHistory]:
    """Show a history without a log."""
    shown = RoomHistory()
    qtbot.addWidget(shown)
    shown.resize(700, 560)
    shown.set_snapshot(snapshot())
    with qtbot.waitExposed(shown):
        shown.show()
    yield shown
    shown.stop()


@pytest.fixture
def filled(qtbot: QtBot, plot: RoomHistory) -> RoomHistory:
    """Show one with an hour of readings in view."""
    plot.set_history(HourOfReadings())
    plot.set_span("week")
    qtbot.waitUntil(lambda: len(plot.canvas.data.temperature.time_ms) > 0)
    return plot


@pytest.fixture
def board_page(window: StudioWindow, desk: ScriptedDesk, qtbot: QtBot) -> BoardPage:
    """Return the page with a board that is read."""
    desk.publish(READ)
    qtbot.waitUntil(lambda: window.feed.latest is READ)
    window.pages.show_board()
    heard(desk.onlooker)
    window.board._look()
    return window.board


@pytest.fixture
def show_board(
    window: StudioWindow, board_page: BoardPage, desk: ScriptedDesk, qtbot: QtBot
) -> Callable[[Snapshot], None]:
    """Publish a snapshot and return once it has arrived and is drawn."""

    def publish(snapshot: Snapshot) -> None:
        desk.publish(snapshot)
        qtbot.waitUntil(lambda: window.feed.latest is snapshot)
        window.feed.draw()
        assert board_page._snapshot is snapshot

    return publish


def push(parent: QWidget, name: str) -> QAbstractButton:
    found = [one for one in parent.findChildren(QPushButton) if one.text() == name and one.isVisibleTo(parent)]
    assert found, f"no button {name!r}"
    return found[0]


def let_go() -> None:
    """Carry out what Qt was asked to delete."""
    QApplication.processEvents()
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def activate(window: StudioWindow, qtbot: QtBot) -> None:
    """Give `window` the keyboard, as a click on it would."""
    with qtbot.waitActive(window):
        window.activateWindow()
