"""The guides of the board page: humidity, air speed and columns, step by step, nothing lost when one is left midway."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QComboBox
from pytestqt.qtbot import QtBot

from studiowatch.board.column_tests import ACT_MS, QUIET_MS, Kind
from studiowatch.board.mapping import Choice
from studiowatch.room.readings import Channel
from studiowatch.service.calibration_commands import CalibrateAirSpeed, CalibrateHumidity, TryCalibration
from studiowatch.service.commands import AcceptColumns
from studiowatch.service.snapshot import Snapshot
from studiowatch.ui.models.air_guide import AirGuide, AirStep
from studiowatch.ui.models.humidity_guide import HumidityStep
from studiowatch.ui.theme import LIGHT, NIGHT
from studiowatch.ui.widgets.board_page import BoardPage
from studiowatch.ui.widgets.columns_page import TAKEN
from studiowatch.ui.window import StudioWindow

from .board_scenes import WALKED, ask_columns, drafted, in_box
from .conftest import activate, push
from .scenes import MINUTE_MS, NOW_MS, ScriptedClock, ScriptedDesk

pytestmark = pytest.mark.window


def test_that_humidity_is_calibrated_step_by_step(
    board_page: BoardPage,
    desk: ScriptedDesk,
    clock: ScriptedClock,
    show_board: Callable[[Snapshot], None],
    qtbot: QtBot,
) -> None:
    board_page.overview.humidity.click()
    guide = board_page.humidity
    assert any("food" in caution for caution in guide.cautions)
    guide.onward.click()
    clock.now_ms = NOW_MS - 41 * MINUTE_MS
    guide.onward.click()
    clock.now_ms = NOW_MS
    show_board(in_box(36.1, minutes=12))
    assert not guide.onward.isEnabled()
    show_board(in_box(36.1, minutes=40, from_pct=36.1))
    assert guide.onward.isEnabled()
    assert guide.state_words.startswith("Flat: 36.1 %RH")
    guide.onward.click()
    assert guide.guide.step is HumidityStep.SHUT_SODIUM
    guide.onward.click()
    assert not guide.onward.isEnabled()
    guide.guide = replace(guide.guide, shut_ms=NOW_MS - 41 * MINUTE_MS)
    show_board(in_box(77.2, minutes=40, from_pct=77.2))
    guide.onward.click()
    salts = CalibrateHumidity(magnesium_ms=NOW_MS, sodium_ms=NOW_MS)
    assert desk.commands == [TryCalibration(of=salts)]
    assert not guide.onward.isEnabled()
    show_board(drafted(salts))
    assert guide.onward.text() == "Accept"
    with qtbot.waitSignal(board_page.done) as told:
        guide.onward.click()
    assert told.args == ["Humidity is put right from now on."]
    assert desk.commands[-1] == salts
    qtbot.waitUntil(board_page.overview.isVisible)
    assert guide.guide.step is HumidityStep.NEEDED


def test_that_a_humidity_calibration_that_is_refused_says_why_and_goes_back(
    board_page: BoardPage, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    guide = board_page.humidity
    board_page.overview.humidity.click()
    sentence = "The sensor's gain would be 0.62; 0.8 to 1.2 is allowed: check both slurries."
    desk.refuse(sentence)
    guide._turn_to(replace(guide.guide, step=HumidityStep.RESULT, magnesium_ms=1, sodium_ms=2))
    qtbot.waitUntil(lambda: guide.state_words == sentence)
    assert not guide.onward.isEnabled()
    push(guide, "Back").click()
    assert guide.guide.step is HumidityStep.WAIT_SODIUM
    assert guide.guide.magnesium_ms == 1


def test_that_a_guide_that_is_left_midway_goes_on_where_it_was(window: StudioWindow, board_page: BoardPage) -> None:
    board_page.overview.humidity.click()
    board_page.humidity.onward.click()
    board_page.go_back()
    window.pages.show_rack()
    window.pages.show_board()
    board_page.overview.humidity.click()
    assert board_page.humidity.guide.step is HumidityStep.SHUT_MAGNESIUM


def test_that_air_speed_is_calibrated_with_the_space_bar(
    board_page: BoardPage,
    desk: ScriptedDesk,
    clock: ScriptedClock,
    show_board: Callable[[Snapshot], None],
    qtbot: QtBot,
) -> None:
    activate(board_page.window(), qtbot)
    board_page.overview.air.click()
    guide = board_page.air
    guide.onward.click()
    assert guide.run.hasFocus()
    qtbot.keyClick(guide.run, Qt.Key.Key_Space)
    clock.now_ms += 30_000
    qtbot.waitUntil(lambda: guide.guide.still is not None)
    guide.onward.click()
    guide.distance_field.setText("4,5")
    for seconds in (15, 7, 4):
        guide.run.setFocus()
        qtbot.keyClick(guide.run, Qt.Key.Key_Space)
        assert guide.run.text() == "Stop"
        clock.now_ms += seconds * 1000
        qtbot.keyClick(guide.run, Qt.Key.Key_Space)
    assert [walk.distance_m for walk in guide.guide.walks] == [4.5] * 3
    guide.onward.click()
    command = guide.guide.command
    assert isinstance(command, CalibrateAirSpeed)
    assert desk.commands == [TryCalibration(of=command)]
    show_board(drafted(command))
    assert guide.plot.isVisible()
    with qtbot.waitSignal(board_page.done) as told:
        guide.onward.click()
    assert told.args == ["Air speed is shown from now on."]
    assert desk.commands[-1] == command


def test_that_a_distance_that_cannot_be_is_said_and_nothing_starts(board_page: BoardPage) -> None:
    board_page.overview.air.click()
    guide = board_page.air
    guide.guide = replace(guide.guide, step=AirStep.WALKS)
    guide._draw()
    guide.distance_field.setText("0")
    guide.run.click()
    assert "0.5 to 200" in guide.state_words
    assert guide.guide.started_ms is None
    assert guide.distance_field.property("wrong") == "true"
    guide.distance_field.setText("4")
    assert guide.state_words == ""


def test_that_the_fit_is_painted_where_its_points_are(
    board_page: BoardPage, show_board: Callable[[Snapshot], None], qtbot: QtBot
) -> None:
    board_page.overview.air.click()
    board_page.air.guide = AirGuide(step=AirStep.RESULT, still=WALKED.still, walks=WALKED.walks)
    show_board(drafted(WALKED))
    plot = board_page.air.plot
    qtbot.waitUntil(lambda: plot.isVisible() and plot.width() > 300)
    image = plot.grab().toImage()
    ratio = image.devicePixelRatio()
    for speed, signal in plot._picture.points:  # type: ignore[union-attr]
        at: QPoint = (plot.point_at(speed, signal) * ratio).toPoint()
        assert image.pixelColor(at).name() == LIGHT.ink
    law = plot.point_at(float(plot._picture.speeds[80]), float(plot._picture.signals[80]))  # type: ignore[union-attr]
    column = [image.pixelColor((law * ratio).toPoint() + QPoint(0, down)).name() for down in (-1, 0, 1)]
    assert LIGHT.film_wet in column  # smoothed edges: one of the three is the line's own
    assert "millivolts" in plot.accessibleDescription()


def test_that_columns_are_said_and_used(
    board_page: BoardPage, desk: ScriptedDesk, show_board: Callable[[Snapshot], None], qtbot: QtBot
) -> None:
    show_board(ask_columns())
    board_page.overview.columns.click()
    form = board_page.columns
    form.use.click()
    assert desk.commands == []
    assert "choose “not used”" in form.told_words
    for box, words in zip(
        form.findChildren(QComboBox),
        ("air temperature in °C", "relative humidity in %", "not used"),
        strict=True,
    ):
        box.setCurrentText(words)
        box.activated.emit(box.currentIndex())
    form.use.click()
    sent = desk.commands[-1]
    assert isinstance(sent, AcceptColumns)
    assert sent.board == "usb 2341:0043"
    assert list(sent.mapping.chosen.values()) == [Choice(Channel.TEMPERATURE, "°C"), Choice(Channel.HUMIDITY, "%")]
    qtbot.waitUntil(lambda: form.told_words == TAKEN)


def test_that_what_she_said_of_one_board_is_not_said_of_another_with_like_columns(
    board_page: BoardPage, show_board: Callable[[Snapshot], None]
) -> None:
    asked = ask_columns()
    show_board(asked)
    form = board_page.columns
    box = form.findChildren(QComboBox)[0]
    box.setCurrentText("air temperature in °C")
    box.activated.emit(box.currentIndex())
    show_board(replace(asked, board=replace(asked.board, connected=False, columns=None)))
    show_board(asked)
    assert form.draft.said
    show_board(replace(asked, board=replace(asked.board, connected=False, columns=None)))
    show_board(replace(asked, board=replace(asked.board, board="usb 1a86:7523")))
    assert not form.draft.said


def test_that_the_breath_test_names_the_humidity(
    board_page: BoardPage, clock: ScriptedClock, show_board: Callable[[Snapshot], None]
) -> None:
    asked = ask_columns()
    show_board(asked)
    board_page.overview.columns.click()
    form = board_page.columns
    form.tests[Kind.BREATH].click()
    assert form.told_words.startswith("Stand back")
    columns = asked.board.columns
    assert columns is not None
    one, two, three = columns.mapping.keys
    for second in range((QUIET_MS + ACT_MS) // 1000 + 2):
        clock.now_ms = NOW_MS + second * 1000
        blown = max(0, second - QUIET_MS // 1000)
        # breath is warm and damp: tens of per cent, and a degree or two (the column tests' own source)
        humid, warm = 47.0 + min(blown * 3, 35), 21.0 + min(blown * 0.2, 2.0) + 0.1 * (second % 2)
        numbers = ((one, warm), (two, humid), (three, 512.0))
        view = replace(columns, numbers=numbers, numbers_ms=clock.now_ms)
        show_board(replace(asked, board=replace(asked.board, columns=view)))
    assert f"{two} jumped" in form.told_words
    found = form.draft.mapping(columns).column(two)
    offered = [found.choice] if found.choice else found.candidates
    assert {choice.channel for choice in offered if choice} == {Channel.HUMIDITY}


def test_that_the_keyboard_stays_in_a_guide_whose_way_onward_is_shut(
    window: StudioWindow, board_page: BoardPage, qtbot: QtBot
) -> None:
    activate(window, qtbot)
    board_page.overview.humidity.click()
    board_page.humidity.onward.setFocus()
    board_page.humidity.onward.click()
    board_page.humidity.onward.click()
    assert not board_page.humidity.onward.isEnabled()
    assert board_page.humidity.isAncestorOf(board_page.humidity.focusWidget())
    assert not window.foot.isAncestorOf(QGuiApplication.focusObject())  # type: ignore[arg-type]


def test_that_night_and_twice_the_text_keep_what_was_begun(window: StudioWindow, board_page: BoardPage) -> None:
    board_page.overview.air.click()
    board_page.air.onward.click()
    window.dressing.set_night(True)
    window.dressing.set_text_pct(200)
    assert window.dressing.style.theme is NIGHT
    assert board_page.air.guide.step is AirStep.STILL
    assert board_page.air.cautions
    assert board_page.air.run.isVisibleTo(board_page)
