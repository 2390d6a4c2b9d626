"""The board page on a scripted desk: ports, health, lines and calibrations, by keyboard and mouse."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QAbstractButton, QMessageBox
from pytestqt.qtbot import QtBot

from studiowatch.service.calibration_commands import WithdrawCalibration
from studiowatch.service.commands import ChooseBoard
from studiowatch.service.snapshot import Snapshot
from studiowatch.ui.models.board_now import HEALTHY
from studiowatch.ui.widgets.board_page import BoardPage
from studiowatch.ui.window import StudioWindow

from .board_scenes import BOARD, HEALTH, LINES, UNWELL, refused
from .conftest import activate, push
from .scenes import FOUR_WARNED, NOW_MS, ScriptedDesk

pytestmark = pytest.mark.window


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


def test_that_escape_leads_from_a_guide_to_the_board_first(
    window: StudioWindow, board_page: BoardPage, qtbot: QtBot
) -> None:
    activate(window, qtbot)
    board_page.overview.humidity.click()
    assert board_page.humidity.isVisible()
    qtbot.keyClick(board_page, Qt.Key.Key_Escape)
    assert board_page.overview.isVisible()


def test_that_ports_health_and_counts_are_shown(board_page: BoardPage, show_board: Callable[[Snapshot], None]) -> None:
    assert [row.name for row in board_page.overview.ports.rows] == ["ttyUSB0", "ttyACM0", "ttyS0"]
    assert board_page.overview.health_words == HEALTHY
    show_board(UNWELL)
    assert board_page.overview.health_words == HEALTH


def test_that_another_port_is_asked_for_and_a_refusal_is_told(
    window: StudioWindow, board_page: BoardPage, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    board_page.overview.ports.views[1].choose.click()
    assert desk.commands == [ChooseBoard(port="/dev/ttyACM0")]
    qtbot.waitUntil(lambda: window.foot.words == "ttyACM0 is read from now on.")
    desk.refuse("There is no port any more.")
    board_page.overview.any.click()
    assert desk.commands[-1] == ChooseBoard(port=None)
    qtbot.waitUntil(lambda: window.foot.words == "There is no port any more.")


def test_that_the_command_that_mends_a_port_can_be_copied(board_page: BoardPage, desk: ScriptedDesk) -> None:
    refused(desk.onlooker)
    board_page._look()
    row = next(view for view in board_page.overview.ports.views if view.command.text())
    row.copy.click()
    assert QGuiApplication.clipboard().text() == "sudo usermod -aG dialout $USER"


def test_that_lines_come_with_the_reason_of_refused_ones_and_stand_while_paused(
    board_page: BoardPage, desk: ScriptedDesk
) -> None:
    shown = board_page.overview.lines
    assert "n=0 u=194 t=21.40" in shown.toPlainText()
    assert "refused: The checksum is not that of the line." in shown.toPlainText()
    board_page.overview.pause.click()
    before = shown.toPlainText()
    desk.onlooker.heard(BOARD, LINES[1], [], NOW_MS + 5000)
    board_page._look()
    assert shown.toPlainText() == before
    board_page.overview.pause.click()
    board_page._look()
    assert shown.toPlainText().startswith(before)
    assert shown.toPlainText() != before


def test_that_lines_are_listened_to_only_while_the_page_is_shown(window: StudioWindow, desk: ScriptedDesk) -> None:
    assert not desk.onlooker.is_looking
    window.pages.show_board()
    assert desk.onlooker.is_looking
    window.pages.show_rack()
    assert not desk.onlooker.is_looking


def test_that_a_warning_stays_in_sight(board_page: BoardPage, show_board: Callable[[Snapshot], None]) -> None:
    show_board(FOUR_WARNED)
    assert board_page.warning.headline.text() == FOUR_WARNED.sentence.headline
    assert board_page.warning.headline.isVisible()


def test_that_a_calibration_is_withdrawn_only_after_a_question(
    window: StudioWindow, board_page: BoardPage, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    board_page.overview.holding.views[0].withdraw.click()
    assert desk.commands == []
    board_page.findChildren(QMessageBox)[-1].reject()
    assert desk.commands == []
    board_page.overview.holding.views[0].withdraw.click()
    board_page.findChildren(QMessageBox)[-1].accept()
    assert desk.commands == [WithdrawCalibration(calibration_key="a")]
    qtbot.waitUntil(lambda: window.foot.words == "The calibration was withdrawn.")


def test_that_everything_on_the_page_has_a_name_and_can_be_reached_by_keyboard(board_page: BoardPage) -> None:
    for button in board_page.findChildren(QAbstractButton):
        if button.isVisibleTo(board_page):
            assert button.accessibleName() or button.text()
            assert button.focusPolicy() & Qt.FocusPolicy.TabFocus
    assert board_page.overview.lines.tabChangesFocus()
    names = [view.choose.accessibleName() for view in board_page.overview.ports.views]
    assert len(set(names)) == len(names)


def test_that_the_keyboard_goes_from_the_page_to_the_foot_and_through_the_rows_in_order(
    window: StudioWindow, board_page: BoardPage
) -> None:
    order, part = [], board_page.back
    while not order or part is not board_page.back:
        order.append(part)
        part = part.nextInFocusChain()
    overview = board_page.overview
    expected = [board_page.back, overview.any, *(view.choose for view in overview.ports.views), overview.humidity]
    expected += [overview.air, *(view.withdraw for view in overview.holding.views), overview.lines, window.foot._board]
    places = [order.index(part) for part in expected]
    assert places == sorted(places)


def test_that_a_board_that_is_alone_is_not_left_for_whichever_answers(
    board_page: BoardPage, desk: ScriptedDesk
) -> None:
    assert board_page.overview.any.isVisibleTo(board_page)
    desk.onlooker.listed([BOARD])
    board_page._look()
    assert not board_page.overview.any.isVisibleTo(board_page)
