"""The view from across the room: what it shows, and that one can answer there."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from studiowatch.service.commands import (
    HearWarning,
    RemindLater,
)
from studiowatch.ui.window import StudioWindow

from .conftest import Show, activate, push
from .scenes import (
    AIR,
    FOUR_WARNED,
    SCENES,
    ScriptedDesk,
)

pytestmark = pytest.mark.window


def test_that_f11_shows_only_what_matters_and_escape_leaves(shown: Show, qtbot: QtBot) -> None:
    window = shown(FOUR_WARNED)
    activate(window, qtbot)
    qtbot.keyClick(window, Qt.Key.Key_F11)
    assert window.across.isVisible()
    assert not window.page.isVisible()
    assert not window.foot.isVisible()
    qtbot.keyClick(window.across, Qt.Key.Key_Escape)
    assert window.page.isVisible()


def test_that_the_window_is_its_own_size_again_before_it_must_hold_more(
    shown: Show, monkeypatch: pytest.MonkeyPatch
) -> None:
    # a full screen that must hold the menu and the foot too is taken for a window taller than the screen
    window = shown(FOUR_WARNED)
    window.pages.toggle_across()
    was_full = []
    monkeypatch.setattr(window.menuBar(), "setVisible", lambda _: was_full.append(window.isFullScreen()))
    window.pages.toggle_across()
    assert was_full == [False]


def test_that_the_view_from_across_the_room_hears(shown: Show, desk: ScriptedDesk) -> None:
    window = shown(FOUR_WARNED)
    window.pages.toggle_across()
    push(window.across, "Heard").click()
    assert desk.commands == [HearWarning(warning_key="w1")]


def test_that_the_keys_work_in_the_view_from_across_the_room(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    window = shown(FOUR_WARNED)
    activate(window, qtbot)
    window.page.across.click()
    assert window.across.isVisible()
    qtbot.keyClick(window, Qt.Key.Key_H, Qt.KeyboardModifier.ControlModifier)
    push(window.across, "Remind me in 10 min").click()
    assert [type(one) for one in desk.commands] == [HearWarning, RemindLater]
    shown_text = " ".join(one.text() for one in window.across.findChildren(QLabel))
    assert "Orchard at Low Water, Blue Ladder · since" in shown_text
    qtbot.keyClick(window, Qt.Key.Key_F11)
    assert window.page.isVisible()


def wait_until_whole(
    qtbot: QtBot, window: StudioWindow, parts: Sequence[QLabel], width: int = 1280, height: int = 800
) -> None:
    """Wait until the view has this size, and all of the words of `parts` stand in it."""
    window.setWindowState(Qt.WindowState.WindowNoState)

    def is_whole() -> None:
        window.resize(width, height)  # anew each time: a display gives up the whole screen when it likes
        QApplication.processEvents()
        assert (window.across.width(), window.across.height()) == (width, height)
        for part in parts:
            assert part.heightForWidth(part.width()) <= part.height()

    qtbot.waitUntil(is_whole)


@pytest.mark.parametrize(("width", "height"), [(1280, 800), (1920, 1080), (1024, 768)])
@pytest.mark.parametrize("headline", [AIR.headline, "No board: the room is not watched", "All is well"])
def test_that_the_sentence_stays_whole_across_the_room(
    qtbot: QtBot, shown: Show, width: int, height: int, headline: str
) -> None:
    window = shown(replace(FOUR_WARNED, sentence=replace(AIR, headline=headline)))
    window.pages.toggle_across()
    across = window.across
    wait_until_whole(qtbot, window, (across._headline, across._where, across._advice), width, height)


@pytest.mark.parametrize("name", ["foretold", "four-warned", "silent", "many-warned", "typed-long-ago"])
def test_that_no_advice_loses_its_end_in_any_state_of_warning(shown: Show, qtbot: QtBot, name: str) -> None:
    window = shown(SCENES[name])
    window.pages.toggle_across()
    window.feed.draw()
    wait_until_whole(qtbot, window, (window.across._headline, window.across._advice))
    window.pages.toggle_across()
