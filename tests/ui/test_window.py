"""The window on a scripted desk: what comes in is seen, and nothing waits."""

from __future__ import annotations

import threading
from dataclasses import replace

import pytest
from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QApplication, QLabel, QMessageBox, QWidget
from pytestqt.qtbot import QtBot

from studiowatch.service.commands import (
    ArchivePiece,
    CoverCoat,
    MovePiece,
)
from studiowatch.ui import feed
from studiowatch.ui.dressing import first_size
from studiowatch.ui.models.pace import NEVER_SPOKE, STALLED, stalled
from studiowatch.ui.window import StudioWindow

from .conftest import Show, activate, push
from .scenes import (
    AIR,
    EMPTY,
    FIRST_RUN,
    FOUR_CALM,
    FOUR_WARNED,
    NOW_MS,
    ONE_WET,
    SCENES,
    SILENT,
    TWELVE,
    ScriptedClock,
    ScriptedDesk,
)

pytestmark = pytest.mark.window


def test_that_a_warning_reaches_the_visible_banner(shown: Show) -> None:
    window = shown(FOUR_WARNED)
    banner = window.page.sentence
    assert banner.isVisible()
    assert banner.headline == AIR.headline
    assert banner.property("card") == "act"
    assert "act now" in banner.accessibleName()


def test_that_before_the_first_snapshot_nothing_is_called_good(window: StudioWindow) -> None:
    assert window.page.sentence.headline == "Starting"
    assert window.page.sentence.property("card") == "caution"


def test_that_a_snapshot_from_another_thread_is_drawn(window: StudioWindow, desk: ScriptedDesk, qtbot: QtBot) -> None:
    keeper = threading.Thread(target=desk.publish, args=(FOUR_WARNED,))
    keeper.start()
    keeper.join()
    qtbot.waitUntil(lambda: window.page.sentence.headline == AIR.headline)


def test_that_the_newest_of_many_snapshots_wins(window: StudioWindow, desk: ScriptedDesk, qtbot: QtBot) -> None:
    for _ in range(500):
        desk.publish(FOUR_CALM)
    desk.publish(FOUR_WARNED)
    qtbot.waitUntil(lambda: window.page.sentence.headline == AIR.headline)
    QApplication.processEvents()
    assert window.page.sentence.headline == AIR.headline


def test_that_a_drift_waits_and_a_warning_does_not(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    window = shown(FOUR_CALM)
    qtbot.waitUntil(lambda: window.history.plot is not None)
    plot = window.history.plot
    drawn = len(plot.snapshots)
    desk.publish(replace(FOUR_CALM, room=replace(FOUR_CALM.room, temperature_C=20.7)))
    QApplication.processEvents()
    assert len(plot.snapshots) == drawn
    desk.publish(FOUR_WARNED)
    QApplication.processEvents()
    assert plot.snapshots[-1] is FOUR_WARNED
    assert window.page.sentence.headline == AIR.headline


def test_that_a_drift_is_drawn_within_about_a_second(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    window = shown(FOUR_CALM)
    qtbot.waitUntil(lambda: window.history.plot is not None)
    warmer = replace(FOUR_CALM, room=replace(FOUR_CALM.room, temperature_C=20.7))
    desk.publish(warmer)
    qtbot.waitUntil(lambda: window.history.plot.snapshots[-1] is warmer, timeout=5000)


def test_that_the_history_comes_after_the_window_is_shown(shown: Show, qtbot: QtBot) -> None:
    window = shown(ONE_WET)
    qtbot.waitUntil(lambda: window.history.plot is not None)
    assert window.history.plot.snapshots[-1] is ONE_WET


def test_that_cards_show_the_rack_in_her_order(shown: Show) -> None:
    window = shown(TWELVE)
    assert [view.key for view in window.page.rack._views] == [piece.key for piece in TWELVE.pieces]
    shorter = replace(TWELVE, pieces=TWELVE.pieces[3:1:-1])
    window._parts.desk.publish(shorter)
    QApplication.processEvents()
    assert [view.key for view in window.page.rack._views] == ["herons", "lamp"]


def test_that_the_keyboard_walks_moves_and_opens(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    window = shown(FOUR_WARNED)
    activate(window, qtbot)
    views = window.page.rack._views
    views[0].setFocus()
    qtbot.keyClick(views[0], Qt.Key.Key_Down)
    assert views[1].hasFocus()
    assert window.page.rack.chosen_key == "ladder"
    qtbot.keyClick(views[1], Qt.Key.Key_Down, Qt.KeyboardModifier.AltModifier)
    assert desk.commands == [MovePiece(piece_key="ladder", place=2)]
    qtbot.keyClick(views[1], Qt.Key.Key_Return)
    assert [one.windowTitle() for one in QApplication.topLevelWidgets() if one.isVisible() and one is not window] == [
        "Lay a coat"
    ]


def test_that_the_menu_covers_a_wet_coat_and_takes_a_piece_off(
    shown: Show, desk: ScriptedDesk, clock: ScriptedClock
) -> None:
    window = shown(FOUR_WARNED)
    entries = {action.text().replace("&", ""): action for action in window.deeds.menu_for("orchard").actions()}
    entries["The mesh cover is set"].trigger()
    assert desk.commands == [CoverCoat(coat_key="o2", covered_ms=clock.utc_ms())]
    covered = {action.text().replace("&", ""): action for action in window.deeds.menu_for("lamp").actions()}
    assert not covered["The mesh cover is set"].isEnabled()
    entries["Take off the rack…"].trigger()
    box = window.findChild(QMessageBox)
    push(box, "Take it off").click()
    assert desk.commands[-1] == ArchivePiece(piece_key="orchard")


def test_that_a_lane_opened_in_the_history_chooses_its_piece(shown: Show, qtbot: QtBot) -> None:
    window = shown(FOUR_WARNED)
    qtbot.waitUntil(lambda: window.history.plot is not None)
    window.history.plot.lane_opened.emit("q3")
    assert window.page.rack.chosen_key == "lamp"


def test_that_every_widget_of_every_state_has_a_name_to_be_read_out(shown: Show) -> None:
    nameless = []
    for snapshot in SCENES.values():
        window = shown(snapshot)
        forms = [window.deeds.register_piece()]
        forms += [one for one in (window.deeds.lay_coat("orchard"), window.deeds.touch_test("orchard")) if one]
        for top in (window, *forms):
            nameless += [one for one in top.findChildren(QWidget) if needs_name(one) and not spoken(one)]
        for form in forms:
            form.close()
    assert [f"{type(one).__name__} in {type(one.parent()).__name__}" for one in nameless] == []


def needs_name(widget: QWidget) -> bool:
    """Say whether a reader of the screen comes to `widget`: it takes the keyboard, or is one of ours."""
    if widget.objectName().startswith("qt_"):
        return False
    holds = type(widget).__name__ in {"_Column", "Steady"}  # what stands in them speaks
    ours = type(widget).__module__.startswith("studiowatch") and not holds
    return widget.isVisible() and (ours or widget.focusPolicy() is not Qt.FocusPolicy.NoFocus)


def spoken(widget: QWidget) -> str:
    text = getattr(widget, "text", None)
    return widget.accessibleName() or (str(text()) if callable(text) else "")


def test_that_every_action_is_reached_by_tab(shown: Show, qtbot: QtBot) -> None:
    window = shown(FOUR_WARNED)
    activate(window, qtbot)
    window.page.rack._views[0].setFocus()
    seen = set()
    for _ in range(60):
        focus = QApplication.focusWidget()
        seen.add(spoken(focus))
        qtbot.keyClick(focus, Qt.Key.Key_Tab)
    wanted = {"Heard", "Remind me in 10 min", "+ register a piece", "Lay a coat", "Record a touch test"}
    assert wanted <= seen
    assert any(name.startswith("Done: Second bubble pass") for name in seen)


def test_that_the_first_run_says_what_to_plug_in(shown: Show) -> None:
    window = shown(FIRST_RUN)
    assert window.page.rack._empty.isVisible()
    assert "plug it in" in window.foot.words


def test_that_text_grows_by_steps_to_twice_and_is_kept(shown: Show, qtbot: QtBot) -> None:
    window = shown(FOUR_WARNED)
    activate(window, qtbot)
    for _ in range(9):
        qtbot.keyClick(window, Qt.Key.Key_Plus, Qt.KeyboardModifier.ControlModifier)
    assert window._parts.settings.text_pct == 200
    assert window.dressing.style.scale == 2.0
    qtbot.keyClick(window, Qt.Key.Key_0, Qt.KeyboardModifier.ControlModifier)
    assert window._parts.settings.text_pct == 100


@pytest.mark.parametrize(("width", "height", "percent"), [(1280, 800, 100), (1920, 1080, 200), (1280, 800, 200)])
def test_that_nothing_is_pushed_out_sideways(shown: Show, width: int, height: int, percent: int) -> None:
    window = shown(TWELVE)
    window.dressing.set_text_pct(percent)
    window.resize(width, height)
    QApplication.processEvents()
    assert window.page.widget().minimumSizeHint().width() <= window.page.viewport().width()
    assert window.page.horizontalScrollBar().maximum() == 0


def test_that_a_silent_board_at_twice_the_text_leaves_the_window_as_wide_as_the_screen(shown: Show) -> None:
    window = shown(SILENT)
    window.dressing.set_text_pct(200)
    window.resize(1280, 800)
    QApplication.processEvents()
    assert window.minimumSizeHint().width() <= 1280
    inside = window.foot.rect()
    for action in window.foot._actions:
        assert action.isVisible()
        assert inside.contains(action.geometry())
        assert action.width() >= action.sizeHint().width()


def test_that_the_boards_words_leave_the_actions_line_when_one_more_stands_there(shown: Show) -> None:
    window = shown(FOUR_WARNED)
    window.dressing.set_text_pct(200)
    foot, words = window.foot, window.foot._words
    foot.setFixedWidth(foot.minimumSizeHint().width() + 60)
    QApplication.processEvents()
    beside = words.geometry().bottom() >= foot._board.geometry().top()
    assert beside
    shown(SILENT)
    QApplication.processEvents()
    assert words.geometry().bottom() < foot._board.geometry().top()


def test_that_night_colours_reach_the_history_and_are_kept(shown: Show, qtbot: QtBot) -> None:
    window = shown(ONE_WET)
    qtbot.waitUntil(lambda: window.history.plot is not None)
    window.menus.night.trigger()
    assert window.history.plot.themes[-1] == "night"
    assert window._parts.settings.night


def test_that_a_silent_board_shows_old_figures_as_old(shown: Show) -> None:
    window = shown(SILENT)
    names = [view.accessibleName() for view in window.page.band._views]
    assert all("last heard" in name for name in names)


def test_that_a_watch_that_never_spoke_is_noticed(window: StudioWindow, monkeypatch: pytest.MonkeyPatch) -> None:
    assert window.page.sentence.headline == "Starting"
    monkeypatch.setattr(feed, "STALLED_AFTER_MS", -1)
    window.feed._tick()
    assert window.page.sentence.headline == NEVER_SPOKE.headline


def test_that_trouble_of_our_own_stands_in_the_foot(shown: Show) -> None:
    fault = "The watch met a fault of its own: close studiowatch and start it again."
    window = shown(replace(FOUR_WARNED, own_fault=fault, store_trouble="The disk is full: free some space."))
    assert window.foot.trouble == f"{fault} The disk is full: free some space."
    assert "Board on ttyUSB0" in window.foot.words
    window.pages.toggle_across()
    assert any(fault in one.text() for one in window.across.findChildren(QLabel) if one.isVisible())


def test_that_the_first_window_fits_on_the_screen_with_its_frame() -> None:
    assert first_size(QSize(1920, 1080)) == QSize(1280, 800)
    small = first_size(QSize(1280, 770))
    assert small.width() < 1280
    assert small.height() < 770 - 24  # a title bar is at least about as tall as a line of text


@pytest.mark.parametrize("width", [1160, 1280])
def test_that_figures_stand_still_while_their_words_change(shown: Show, desk: ScriptedDesk, width: int) -> None:
    window = shown(FOUR_WARNED)
    window.resize(width, 800)
    QApplication.processEvents()
    assert all(view._value.sizeHint().width() <= view.width() for view in window.page.band._views)
    before = [view.geometry() for view in window.page.band._views], window.page.sentence.geometry().x()
    room = replace(FOUR_WARNED.room, temperature_C=9.5, humidity_pct=100, air_speed_m_s=0.05, particles_per_m3_5um=4e4)
    desk.publish(replace(FOUR_WARNED, room=room, sentence=EMPTY.sentence))
    QApplication.processEvents()
    after = [view.geometry() for view in window.page.band._views], window.page.sentence.geometry().x()
    assert [(one.x(), one.width()) for one in after[0]] == [(one.x(), one.width()) for one in before[0]]
    assert after[1] == before[1]
    assert all(view._value.sizeHint().width() <= view.width() for view in window.page.band._views)


def test_that_a_watch_that_stopped_is_not_shown_as_live(shown: Show) -> None:
    window = shown(stalled(FOUR_CALM, NOW_MS))
    assert window.page.sentence.headline == STALLED.headline
    assert "last heard" in window.page.band._views[0].accessibleName()


def test_that_the_menu_sets_a_cover_once_and_asks_before_a_piece_is_taken_off(
    window: StudioWindow, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    actions = {action.text(): action for action in window.actions()}
    told: list[str] = []
    window.deeds.refused.connect(told.append)
    desk.publish(FOUR_CALM)
    bare = next(piece for piece in FOUR_CALM.pieces if piece.top is not None and not piece.top.covered)
    qtbot.waitUntil(lambda: window.deeds.piece(bare.key) is not None)
    window.page.rack.reveal(bare.key)
    actions["The &mesh cover is set"].trigger()
    qtbot.waitUntil(lambda: bool(desk.commands))
    assert desk.commands[-1].coat_key == bare.top.key
    sent = len(desk.commands)
    actions["Ta&ke off the rack…"].trigger()
    assert any(box.isVisible() for box in window.findChildren(QMessageBox))
    assert len(desk.commands) == sent
    assert told == []
