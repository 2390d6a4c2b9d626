"""Leaving the window: what is asked, what goes on, what is let go."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QMessageBox
from pytestqt.qtbot import QtBot

from studiowatch.ui.app import build_window
from studiowatch.ui.models.alarm import Sound
from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.tray import tray_words

from .conftest import KeptSpeaker, KeptTray, Show, StandInPlot, push
from .scenes import (
    AIR,
    EMPTY,
    FOUR_CALM,
    FOUR_WARNED,
    MadeUpHistory,
    ScriptedClock,
    ScriptedDesk,
)

pytestmark = pytest.mark.window


def test_that_closing_keeps_watching_in_the_tray_and_says_so_once(
    shown: Show, tray: KeptTray, desk: ScriptedDesk, speaker: KeptSpeaker
) -> None:
    window = shown(FOUR_CALM)
    tray.exists = True
    window.close()
    assert not window.isVisible()
    assert tray.said == [tray_words()]
    desk.publish(FOUR_WARNED)
    QApplication.processEvents()
    assert tray.said == [tray_words(), AIR]
    assert speaker.played == [Sound.INSISTENT]
    tray.opened.emit()
    assert window.isVisible()
    assert window.page.sentence.headline == AIR.headline
    window.close()
    assert tray.said == [tray_words(), AIR]


def test_that_closing_without_a_tray_asks_and_names_the_wet_pieces(shown: Show, qtbot: QtBot) -> None:
    window = shown(FOUR_CALM)
    window.close()
    assert window.isVisible()
    box = window.findChild(QMessageBox)
    assert "Orchard at Low Water" in box.informativeText()
    with qtbot.waitSignal(window.left):
        push(box, "Stop watching").click()
    assert not window.isVisible()
    assert window.history.plot.stopped


def test_that_going_on_watching_is_the_default(shown: Show, qtbot: QtBot) -> None:
    window = shown(FOUR_CALM)
    window.quit()
    box = window.findChild(QMessageBox)
    assert box.defaultButton().text() == "Keep watching"
    assert box.escapeButton().text() == "Keep watching"
    qtbot.keyClick(box, Qt.Key.Key_Return)
    assert window.isVisible()


def test_that_the_watch_ends_though_a_part_of_the_window_does_not(
    shown: Show, speaker: KeptSpeaker, tray: KeptTray, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A backup onto a slow disk goes on for longer than it is waited for."""

    def goes_on() -> None:
        raise RuntimeError("the work's thread did not end")

    window = shown(FOUR_CALM)
    tray.exists = True
    monkeypatch.setattr(window.exchange, "close", goes_on)
    left = []
    window.left.connect(lambda: left.append(True))
    with pytest.raises(RuntimeError, match="did not end"):
        window.leave()
    assert left
    assert not window.isVisible()
    assert window.history.plot.stopped
    assert not tray.exists
    assert speaker.closed


def test_that_the_history_is_let_go_when_the_plot_never_came(
    desk: ScriptedDesk, clock: ScriptedClock, settings: ViewSettings, qtbot: QtBot
) -> None:
    history = ClosingHistory()
    parts = {"settings": settings, "speaker": KeptSpeaker(), "tray": KeptTray(), "make_plot": StandInPlot}
    window = build_window(desk, history, clock, **parts)
    qtbot.addWidget(window)
    window.leave()
    assert history.closed == 1


class ClosingHistory(MadeUpHistory):
    closed = 0

    def close(self) -> None:
        self.closed += 1


def test_that_quit_does_not_ask_when_nothing_is_wet(shown: Show, qtbot: QtBot, speaker: KeptSpeaker) -> None:
    window = shown(EMPTY)
    with qtbot.waitSignal(window.left):
        window.quit()
    assert speaker.closed


def test_that_a_snapshot_after_the_end_is_not_taken(shown: Show, desk: ScriptedDesk) -> None:
    window = shown(EMPTY)
    window.leave()
    desk.publish(FOUR_WARNED)
    QApplication.processEvents()
    assert window.page.sentence.headline == EMPTY.sentence.headline
