"""The window on a scripted desk: what comes in is seen, what she does goes out, and nothing waits."""

from __future__ import annotations

import threading
from collections.abc import Callable
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton, QApplication, QMessageBox, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from studiowatch.service.commands import ArchivePiece, CoverCoat, HearWarning, MovePiece, RemindLater, TickPrompt
from studiowatch.service.snapshot import Snapshot
from studiowatch.ui.models.alarm import Sound
from studiowatch.ui.models.pace import STALLED, stalled
from studiowatch.ui.tray import TRAY_WORDS
from studiowatch.ui.window import StudioWindow

from .conftest import KeptSpeaker, KeptTray
from .scenes import (
    AIR,
    EMPTY,
    FIRST_RUN,
    FOUR_CALM,
    FOUR_WARNED,
    HEARD,
    NOW_MS,
    ONE_WET,
    SCENES,
    SILENT,
    TWELVE,
    ScriptedClock,
    ScriptedDesk,
)

pytestmark = pytest.mark.window
Show = Callable[[Snapshot], StudioWindow]


def push(parent: QWidget, name: str) -> QAbstractButton:
    found = [one for one in parent.findChildren(QPushButton) if one.text() == name and one.isVisibleTo(parent)]
    assert found, f"no button {name!r}"
    return found[0]


def activate(window: StudioWindow, qtbot: QtBot) -> None:
    """Give `window` the keyboard, as a click on it would."""
    with qtbot.waitActive(window):
        window.activateWindow()


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
    qtbot.waitUntil(lambda: window._plot is not None)
    plot = window._plot
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
    qtbot.waitUntil(lambda: window._plot is not None)
    warmer = replace(FOUR_CALM, room=replace(FOUR_CALM.room, temperature_C=20.7))
    desk.publish(warmer)
    qtbot.waitUntil(lambda: window._plot.snapshots[-1] is warmer, timeout=5000)


def test_that_the_history_comes_after_the_window_is_shown(shown: Show, qtbot: QtBot) -> None:
    window = shown(ONE_WET)
    qtbot.waitUntil(lambda: window._plot is not None)
    assert window._plot.snapshots[-1] is ONE_WET


def test_that_heard_and_remind_are_submitted(shown: Show, desk: ScriptedDesk, clock: ScriptedClock) -> None:
    window = shown(FOUR_WARNED)
    push(window.page.sentence, "Heard").click()
    push(window.page.sentence, "Remind me in 10 min").click()
    ten_minutes_ms = 600_000
    assert desk.commands == [
        HearWarning(warning_key="w1"),
        RemindLater(warning_key="w1", until_ms=clock.utc_ms() + ten_minutes_ms),
    ]


def test_that_the_keyboard_alone_hears_a_warning(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    window = shown(FOUR_WARNED)
    activate(window, qtbot)
    qtbot.keyClick(window, Qt.Key.Key_H, Qt.KeyboardModifier.ControlModifier)
    assert desk.commands == [HearWarning(warning_key="w1")]


def test_that_a_heard_warning_stays_but_asks_nothing(shown: Show) -> None:
    shown(FOUR_WARNED)
    window = shown(HEARD)
    QApplication.processEvents()
    answers = [one for one in window.page.sentence.findChildren(QPushButton) if one.isVisibleTo(window)]
    assert answers == []
    assert "heard" in window.page.sentence.accessibleName()


def test_that_the_list_of_warnings_answers_too(shown: Show, desk: ScriptedDesk) -> None:
    window = shown(FOUR_WARNED)
    push(window.page.warnings, "Heard").click()
    assert desk.commands == [HearWarning(warning_key="w1")]


def test_that_a_prompt_is_ticked_by_a_target_a_wet_hand_hits(shown: Show, desk: ScriptedDesk) -> None:
    window = shown(FOUR_WARNED)
    target = window.page.prompts.views[0].target
    least_px = 40
    assert target.width() >= least_px
    assert target.height() >= least_px
    target.click()
    assert desk.commands == [TickPrompt(prompt_key="p1")]
    assert not target.isEnabled()


def test_that_a_refused_tick_says_why_and_may_be_tried_again(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    window = shown(FOUR_WARNED)
    desk.refuse("That prompt is gone: look at the list again.")
    target = window.page.prompts.views[0].target
    target.click()
    qtbot.waitUntil(lambda: "That prompt is gone" in window.foot.words)
    assert target.isEnabled()


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
    entries = {action.text(): action for action in window.deeds.menu_for("orchard").actions()}
    entries["The mesh cover is set"].trigger()
    assert desk.commands == [CoverCoat(coat_key="o2", covered_ms=clock.utc_ms())]
    covered = {action.text(): action for action in window.deeds.menu_for("lamp").actions()}
    assert not covered["The mesh cover is set"].isEnabled()
    entries["Take off the rack…"].trigger()
    box = window.findChild(QMessageBox)
    push(box, "Take it off").click()
    assert desk.commands[-1] == ArchivePiece(piece_key="orchard")


def test_that_a_lane_opened_in_the_history_chooses_its_piece(shown: Show, qtbot: QtBot) -> None:
    window = shown(FOUR_WARNED)
    qtbot.waitUntil(lambda: window._plot is not None)
    window._plot.lane_opened.emit("q3")
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
    ours = type(widget).__module__.startswith("studiowatch") and type(widget).__name__ != "_Column"
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


def test_that_f11_shows_only_what_matters_and_escape_leaves(shown: Show, qtbot: QtBot) -> None:
    window = shown(FOUR_WARNED)
    activate(window, qtbot)
    qtbot.keyClick(window, Qt.Key.Key_F11)
    assert window.across.isVisible()
    assert not window.page.isVisible()
    assert not window.foot.isVisible()
    qtbot.keyClick(window.across, Qt.Key.Key_Escape)
    assert window.page.isVisible()


def test_that_the_view_from_across_the_room_hears(shown: Show, desk: ScriptedDesk) -> None:
    window = shown(FOUR_WARNED)
    window.toggle_across()
    push(window.across, "Heard").click()
    assert desk.commands == [HearWarning(warning_key="w1")]


def test_that_text_grows_by_steps_to_twice_and_is_kept(shown: Show, qtbot: QtBot) -> None:
    window = shown(FOUR_WARNED)
    activate(window, qtbot)
    for _ in range(9):
        qtbot.keyClick(window, Qt.Key.Key_Plus, Qt.KeyboardModifier.ControlModifier)
    assert window._parts.settings.text_pct == 200
    assert window._style.scale == 2.0
    qtbot.keyClick(window, Qt.Key.Key_0, Qt.KeyboardModifier.ControlModifier)
    assert window._parts.settings.text_pct == 100


@pytest.mark.parametrize(("width", "height", "percent"), [(1280, 800, 100), (1920, 1080, 200), (1280, 800, 200)])
def test_that_nothing_is_pushed_out_sideways(shown: Show, width: int, height: int, percent: int) -> None:
    window = shown(TWELVE)
    window.set_text_pct(percent)
    window.resize(width, height)
    QApplication.processEvents()
    assert window.page.widget().minimumSizeHint().width() <= window.page.viewport().width()
    assert window.page.horizontalScrollBar().maximum() == 0


def test_that_night_colours_reach_the_history_and_are_kept(shown: Show, qtbot: QtBot) -> None:
    window = shown(ONE_WET)
    qtbot.waitUntil(lambda: window._plot is not None)
    window._night_action.trigger()
    assert window._plot.themes[-1] == "night"
    assert window._parts.settings.night


def test_that_the_sound_repeats_until_the_warning_is_heard(
    shown: Show, speaker: KeptSpeaker, clock: ScriptedClock, desk: ScriptedDesk
) -> None:
    window = shown(FOUR_WARNED)
    assert speaker.played == [Sound.INSISTENT]
    window.feed._tick()
    assert speaker.played == [Sound.INSISTENT]
    clock.seconds += 30
    window.feed._tick()
    assert speaker.played == [Sound.INSISTENT] * 2
    desk.publish(HEARD)
    QApplication.processEvents()
    clock.seconds += 30
    window.feed._tick()
    assert speaker.played == [Sound.INSISTENT] * 2


def test_that_a_machine_without_sound_says_so(shown: Show, speaker: KeptSpeaker) -> None:
    speaker.trouble = "no sound on this machine"
    window = shown(FOUR_WARNED)
    assert "no sound on this machine" in window.foot.words


def test_that_a_new_warning_is_told_beside_the_clock_once(shown: Show, tray: KeptTray) -> None:
    shown(FOUR_CALM)
    window = shown(FOUR_WARNED)
    window._parts.desk.publish(replace(FOUR_WARNED, time_ms=NOW_MS + 1000))
    QApplication.processEvents()
    assert tray.said == [AIR]


def test_that_closing_keeps_watching_in_the_tray_and_says_so_once(
    shown: Show, tray: KeptTray, desk: ScriptedDesk, speaker: KeptSpeaker
) -> None:
    window = shown(FOUR_CALM)
    tray.exists = True
    window.close()
    assert not window.isVisible()
    assert tray.said == [TRAY_WORDS]
    desk.publish(FOUR_WARNED)
    QApplication.processEvents()
    assert tray.said == [TRAY_WORDS, AIR]
    assert speaker.played == [Sound.INSISTENT]
    tray.opened.emit()
    assert window.isVisible()
    assert window.page.sentence.headline == AIR.headline
    window.close()
    assert tray.said == [TRAY_WORDS, AIR]


def test_that_closing_without_a_tray_asks_and_names_the_wet_pieces(shown: Show, qtbot: QtBot) -> None:
    window = shown(FOUR_CALM)
    window.close()
    assert window.isVisible()
    box = window.findChild(QMessageBox)
    assert "Orchard at Low Water" in box.informativeText()
    with qtbot.waitSignal(window.left):
        push(box, "Stop watching").click()
    assert not window.isVisible()
    assert window._plot.stopped


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


def test_that_a_silent_board_shows_old_figures_as_old(shown: Show) -> None:
    window = shown(SILENT)
    names = [view.accessibleName() for view in window.page.band._views]
    assert all("last heard" in name for name in names)


def test_that_a_watch_that_stopped_is_not_shown_as_live(shown: Show) -> None:
    window = shown(stalled(FOUR_CALM))
    assert window.page.sentence.headline == STALLED.headline
    assert "last heard" in window.page.band._views[0].accessibleName()
