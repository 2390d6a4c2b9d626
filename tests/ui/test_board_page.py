"""The board page on a scripted desk: all of it by keyboard and mouse, nothing lost when it is left midway."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QAbstractButton, QComboBox, QMessageBox
from pytestqt.qtbot import QtBot

from studiowatch.board.column_tests import ACT_MS, QUIET_MS, Kind
from studiowatch.board.mapping import Choice
from studiowatch.room.readings import Channel
from studiowatch.service.commands import (
    AcceptColumns,
    CalibrateAirSpeed,
    CalibrateHumidity,
    ChooseBoard,
    TryCalibration,
    WithdrawCalibration,
)
from studiowatch.service.snapshot import Snapshot
from studiowatch.ui.models.air_guide import AirGuide, AirStep
from studiowatch.ui.models.board_now import HEALTHY
from studiowatch.ui.models.humidity_guide import HumidityStep
from studiowatch.ui.theme import LIGHT, NIGHT
from studiowatch.ui.widgets.board_page import BoardPage
from studiowatch.ui.widgets.columns_page import TAKEN
from studiowatch.ui.window import StudioWindow

from .board_scenes import (
    BOARD,
    HEALTH,
    LINES,
    READ,
    UNWELL,
    WALKED,
    ask_columns,
    drafted,
    heard,
    in_box,
    refused,
)
from .conftest import activate, push
from .scenes import FOUR_WARNED, MINUTE_MS, NOW_MS, ScriptedClock, ScriptedDesk

pytestmark = pytest.mark.window


@pytest.fixture
def page(window: StudioWindow, desk: ScriptedDesk, qtbot: QtBot) -> BoardPage:
    """Return the page with a board that is read."""
    desk.publish(READ)
    qtbot.waitUntil(lambda: window.feed.latest is READ)
    window.show_board()
    heard(desk.onlooker)
    window.board._look()
    return window.board


@pytest.fixture
def show(window: StudioWindow, page: BoardPage, desk: ScriptedDesk, qtbot: QtBot) -> Callable[[Snapshot], None]:
    """Publish a snapshot and return once it has arrived and is drawn."""

    def publish(snapshot: Snapshot) -> None:
        desk.publish(snapshot)
        qtbot.waitUntil(lambda: window.feed.latest is snapshot)
        window.feed.draw()
        assert page._snapshot is snapshot

    return publish


def test_that_key_menu_and_foot_lead_to_the_board_and_escape_leads_back(window: StudioWindow, qtbot: QtBot) -> None:
    activate(window, qtbot)
    qtbot.keyClick(window, Qt.Key.Key_B, Qt.KeyboardModifier.ControlModifier)
    assert window.board.isVisible()
    qtbot.keyClick(window.board, Qt.Key.Key_Escape)
    assert window.page.isVisible()
    push(window.foot, "Board").click()
    assert window.board.isVisible()
    window.board.back.click()
    assert window.page.isVisible()


def test_that_escape_leads_from_a_guide_to_the_board_first(window: StudioWindow, page: BoardPage, qtbot: QtBot) -> None:
    activate(window, qtbot)
    page.overview.humidity.click()
    assert page.humidity.isVisible()
    qtbot.keyClick(page, Qt.Key.Key_Escape)
    assert page.overview.isVisible()


def test_that_ports_health_and_counts_are_shown(page: BoardPage, show: Callable[[Snapshot], None]) -> None:
    assert [row.name for row in page.overview.ports.rows] == ["ttyUSB0", "ttyACM0", "ttyS0"]
    assert page.overview.health_words == HEALTHY
    show(UNWELL)
    assert page.overview.health_words == HEALTH


def test_that_another_port_is_asked_for_and_a_refusal_is_told(
    window: StudioWindow, page: BoardPage, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    page.overview.ports.views[1].choose.click()
    assert desk.commands == [ChooseBoard(port="/dev/ttyACM0")]
    qtbot.waitUntil(lambda: window.foot.words == "ttyACM0 is read from now on.")
    desk.refuse("There is no port any more.")
    page.overview.any.click()
    assert desk.commands[-1] == ChooseBoard(port=None)
    qtbot.waitUntil(lambda: window.foot.words == "There is no port any more.")


def test_that_the_command_that_mends_a_port_can_be_copied(page: BoardPage, desk: ScriptedDesk) -> None:
    refused(desk.onlooker)
    page._look()
    row = next(view for view in page.overview.ports.views if view.command.text())
    row.copy.click()
    assert QGuiApplication.clipboard().text() == "sudo usermod -aG dialout $USER"


def test_that_lines_come_with_the_reason_of_refused_ones_and_stand_while_paused(
    page: BoardPage, desk: ScriptedDesk
) -> None:
    shown = page.overview.lines
    assert "n=0 u=194 t=21.40" in shown.toPlainText()
    assert "refused: The checksum is not that of the line." in shown.toPlainText()
    page.overview.pause.click()
    before = shown.toPlainText()
    desk.onlooker.heard(BOARD, LINES[1], [], NOW_MS + 5000)
    page._look()
    assert shown.toPlainText() == before
    page.overview.pause.click()
    page._look()
    assert shown.toPlainText().startswith(before)
    assert shown.toPlainText() != before


def test_that_lines_are_listened_to_only_while_the_page_is_shown(window: StudioWindow, desk: ScriptedDesk) -> None:
    assert not desk.onlooker.is_looking
    window.show_board()
    assert desk.onlooker.is_looking
    window.show_rack()
    assert not desk.onlooker.is_looking


def test_that_a_warning_stays_in_sight(page: BoardPage, show: Callable[[Snapshot], None]) -> None:
    show(FOUR_WARNED)
    assert page._sentence.text() == FOUR_WARNED.sentence.headline
    assert page._sentence.isVisible()


def test_that_a_calibration_is_withdrawn_only_after_a_question(
    window: StudioWindow, page: BoardPage, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    page.overview.holding.views[0].withdraw.click()
    assert desk.commands == []
    page.findChildren(QMessageBox)[-1].reject()
    assert desk.commands == []
    page.overview.holding.views[0].withdraw.click()
    page.findChildren(QMessageBox)[-1].accept()
    assert desk.commands == [WithdrawCalibration(calibration_key="a")]
    qtbot.waitUntil(lambda: window.foot.words == "The calibration was withdrawn.")


def test_that_humidity_is_calibrated_step_by_step(
    page: BoardPage,
    desk: ScriptedDesk,
    clock: ScriptedClock,
    show: Callable[[Snapshot], None],
    qtbot: QtBot,
) -> None:
    page.overview.humidity.click()
    guide = page.humidity
    assert any("food" in caution for caution in guide.cautions)
    guide.onward.click()
    clock.now_ms = NOW_MS - 41 * MINUTE_MS
    guide.onward.click()
    clock.now_ms = NOW_MS
    show(in_box(36.1, minutes=12))
    assert not guide.onward.isEnabled()
    show(in_box(36.1, minutes=40, from_pct=36.1))
    assert guide.onward.isEnabled()
    assert guide.state_words.startswith("Flat: 36.1 %RH")
    guide.onward.click()
    assert guide.guide.step is HumidityStep.SHUT_SODIUM
    guide.onward.click()
    assert not guide.onward.isEnabled()
    guide.guide = replace(guide.guide, shut_ms=NOW_MS - 41 * MINUTE_MS)
    show(in_box(77.2, minutes=40, from_pct=77.2))
    guide.onward.click()
    salts = CalibrateHumidity(magnesium_ms=NOW_MS, sodium_ms=NOW_MS)
    assert desk.commands == [TryCalibration(of=salts)]
    assert not guide.onward.isEnabled()
    show(drafted(salts))
    assert guide.onward.text() == "Accept"
    with qtbot.waitSignal(page.done) as told:
        guide.onward.click()
    assert told.args == ["Humidity is put right from now on."]
    assert desk.commands[-1] == salts
    qtbot.waitUntil(page.overview.isVisible)
    assert guide.guide.step is HumidityStep.NEEDED


def test_that_a_humidity_calibration_that_is_refused_says_why_and_goes_back(
    page: BoardPage, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    guide = page.humidity
    page.overview.humidity.click()
    sentence = "The sensor's gain would be 0.62; 0.8 to 1.2 is allowed: check both slurries."
    desk.refuse(sentence)
    guide._turn_to(replace(guide.guide, step=HumidityStep.RESULT, magnesium_ms=1, sodium_ms=2))
    qtbot.waitUntil(lambda: guide.state_words == sentence)
    assert not guide.onward.isEnabled()
    push(guide, "Back").click()
    assert guide.guide.step is HumidityStep.WAIT_SODIUM
    assert guide.guide.magnesium_ms == 1


def test_that_a_guide_that_is_left_midway_goes_on_where_it_was(window: StudioWindow, page: BoardPage) -> None:
    page.overview.humidity.click()
    page.humidity.onward.click()
    page.go_back()
    window.show_rack()
    window.show_board()
    page.overview.humidity.click()
    assert page.humidity.guide.step is HumidityStep.SHUT_MAGNESIUM


def test_that_air_speed_is_calibrated_with_the_space_bar(
    page: BoardPage,
    desk: ScriptedDesk,
    clock: ScriptedClock,
    show: Callable[[Snapshot], None],
    qtbot: QtBot,
) -> None:
    activate(page.window(), qtbot)
    page.overview.air.click()
    guide = page.air
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
    show(drafted(command))
    assert guide.plot.isVisible()
    with qtbot.waitSignal(page.done) as told:
        guide.onward.click()
    assert told.args == ["Air speed is shown from now on."]
    assert desk.commands[-1] == command


def test_that_a_distance_that_cannot_be_is_said_and_nothing_starts(page: BoardPage) -> None:
    page.overview.air.click()
    guide = page.air
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
    page: BoardPage, show: Callable[[Snapshot], None], qtbot: QtBot
) -> None:
    page.overview.air.click()
    page.air.guide = AirGuide(step=AirStep.RESULT, still=WALKED.still, walks=WALKED.walks)
    show(drafted(WALKED))
    plot = page.air.plot
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
    page: BoardPage, desk: ScriptedDesk, show: Callable[[Snapshot], None], qtbot: QtBot
) -> None:
    show(ask_columns())
    page.overview.columns.click()
    form = page.columns
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
    assert list(sent.mapping.chosen.values()) == [Choice(Channel.TEMPERATURE, "°C"), Choice(Channel.HUMIDITY, "%")]
    qtbot.waitUntil(lambda: form.told_words == TAKEN)


def test_that_the_breath_test_names_the_humidity(
    page: BoardPage, clock: ScriptedClock, show: Callable[[Snapshot], None]
) -> None:
    asked = ask_columns()
    show(asked)
    page.overview.columns.click()
    form = page.columns
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
        show(replace(asked, board=replace(asked.board, columns=view)))
    assert f"{two} jumped" in form.told_words
    found = form.draft.mapping(columns).column(two)
    offered = [found.choice] if found.choice else found.candidates
    assert {choice.channel for choice in offered if choice} == {Channel.HUMIDITY}


def test_that_everything_on_the_page_has_a_name_and_can_be_reached_by_keyboard(page: BoardPage) -> None:
    for button in page.findChildren(QAbstractButton):
        if button.isVisibleTo(page):
            assert button.accessibleName() or button.text()
            assert button.focusPolicy() & Qt.FocusPolicy.TabFocus
    assert page.overview.lines.tabChangesFocus()
    names = [view.choose.accessibleName() for view in page.overview.ports.views]
    assert len(set(names)) == len(names)


def test_that_the_keyboard_goes_from_the_page_to_the_foot_and_through_the_rows_in_order(
    window: StudioWindow, page: BoardPage
) -> None:
    order, part = [], page.back
    while not order or part is not page.back:
        order.append(part)
        part = part.nextInFocusChain()
    overview = page.overview
    expected = [page.back, overview.any, *(view.choose for view in overview.ports.views), overview.humidity]
    expected += [overview.air, *(view.withdraw for view in overview.holding.views), overview.lines, window.foot._board]
    places = [order.index(part) for part in expected]
    assert places == sorted(places)


def test_that_the_keyboard_stays_in_a_guide_whose_way_onward_is_shut(
    window: StudioWindow, page: BoardPage, qtbot: QtBot
) -> None:
    activate(window, qtbot)
    page.overview.humidity.click()
    page.humidity.onward.setFocus()
    page.humidity.onward.click()
    page.humidity.onward.click()
    assert not page.humidity.onward.isEnabled()
    assert page.humidity.isAncestorOf(page.humidity.focusWidget())
    assert not window.foot.isAncestorOf(QGuiApplication.focusObject())  # type: ignore[arg-type]


def test_that_a_board_that_is_alone_is_not_left_for_whichever_answers(page: BoardPage, desk: ScriptedDesk) -> None:
    assert page.overview.any.isVisibleTo(page)
    desk.onlooker.listed([BOARD])
    page._look()
    assert not page.overview.any.isVisibleTo(page)


def test_that_night_and_twice_the_text_keep_what_was_begun(window: StudioWindow, page: BoardPage) -> None:
    page.overview.air.click()
    page.air.onward.click()
    window.dressing.set_night(True)
    window.dressing.set_text_pct(200)
    assert window.dressing.style.theme is NIGHT
    assert page.air.guide.step is AirStep.STILL
    assert page.air.cautions
    assert page.air.run.isVisibleTo(page)
