"""The forms: bad input is told in one sentence, nothing typed is lost, and a closed form is gone."""

from __future__ import annotations

import gc
from dataclasses import replace
from datetime import date

import pytest
from PySide6.QtCore import QDate, QPointF, Qt
from PySide6.QtWidgets import QApplication, QDialog, QMessageBox, QPushButton
from pytestqt.qtbot import QtBot
from shiboken6 import isValid

from studiowatch.coats.stages import Orientation
from studiowatch.service.commands import RegisterPiece
from studiowatch.studio.pieces import Finding
from studiowatch.ui.bridge import FAULT_WORDS
from studiowatch.ui.models.piece_form import NO_COATS

from .conftest import Show, activate, let_go
from .history_scenes import wheel
from .scenes import EMPTY, FOUR_WARNED, ORCHARD, ScriptedDesk

pytestmark = pytest.mark.window


def test_that_a_piece_is_registered_as_typed(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    form = shown(EMPTY).deeds.register_piece()
    form.title_field.setText("  Gate   in March ")
    form.width_field.setText("60,5")
    form.height_field.setText("90")
    form.due_on.setChecked(True)
    form.due_field.setDate(QDate(2026, 4, 9))
    form.lies_field.setCurrentText("Upright")
    form.coats_field.add()
    form.coats_field.sheet_field.setCurrentIndex(1)
    form.coats_field.add()
    with qtbot.waitSignal(form.recorded):
        form.command_or_fault()
    assert desk.commands == [
        RegisterPiece(
            title="Gate in March",
            width_cm=60.5,
            height_cm=90.0,
            due=date(2026, 4, 9),
            support="canvas",
            orientation=Orientation.VERTICAL,
            sheets=("isolation-waterborne", "gloss-waterborne"),
        )
    ]


def test_that_a_wheel_that_scrolls_past_a_field_changes_nothing(shown: Show) -> None:
    form = shown(EMPTY).deeds.register_piece()
    form.due_on.setChecked(True)
    form.paint_field.setCurrentIndex(1)
    for field in (form.shape_field, form.support_field, form.lies_field, form.painted_field, form.due_field):
        before = form.typed()
        assert not wheel(field, QPointF(10, 10), -1)
        assert form.typed() == before
    form.shape_field.setCurrentText("Set of panels")
    panels = form.panels_field.value()
    assert not wheel(form.panels_field, QPointF(10, 10), 1)
    assert form.panels_field.value() == panels


def test_that_the_number_of_panels_can_be_read(shown: Show) -> None:
    form = shown(EMPTY).deeds.register_piece()
    form.shape_field.setCurrentText("Set of panels")
    QApplication.processEvents()
    digits = form.panels_field.fontMetrics().horizontalAdvance(str(form.panels_field.maximum()))
    assert form.panels_field.lineEdit().width() > digits


def test_that_the_area_pushes_no_field_down(shown: Show) -> None:
    form = shown(EMPTY).deeds.register_piece()
    QApplication.processEvents()
    before = form.support_field.pos()
    form.width_field.setText("60")
    form.height_field.setText("90")
    QApplication.processEvents()
    assert "0.54 m²" in form._area.text()
    assert form.support_field.pos() == before


def test_that_only_what_can_be_done_with_the_chosen_coat_is_offered(shown: Show, qtbot: QtBot) -> None:
    coats = shown(EMPTY).deeds.register_piece().coats_field

    def offered() -> tuple[bool, ...]:
        return tuple(made.isEnabled() for made in (coats.take_out, coats.up, coats.down))

    assert offered() == (False, False, False)
    coats.add()
    assert offered() == (True, False, False)  # the first and the last
    coats.add()
    coats.add()
    assert offered() == (True, True, False)
    coats.list.setCurrentRow(1)
    assert offered() == (True, True, True)
    qtbot.mouseClick(coats.up, Qt.MouseButton.LeftButton)
    assert offered() == (True, False, True)
    coats.list.setCurrentRow(1)
    coats.remove()
    coats.list.setCurrentRow(1)
    assert offered() == (True, True, False)
    coats.remove()
    coats.remove()
    assert offered() == (False, False, False)


def test_that_the_keyboard_goes_to_the_list_where_the_button_under_it_goes(shown: Show, qtbot: QtBot) -> None:
    window = shown(EMPTY)
    form = window.deeds.register_piece()
    coats = form.coats_field
    coats.add()
    coats.add()
    with qtbot.waitActive(form):
        form.activateWindow()
    coats.up.setFocus()
    qtbot.waitUntil(coats.up.hasFocus)
    qtbot.keyClick(coats.up, Qt.Key.Key_Space)
    assert not coats.up.isEnabled()
    assert coats.list.hasFocus()


def test_that_coats_to_come_are_ordered_and_removed(shown: Show) -> None:
    form = shown(EMPTY).deeds.register_piece()
    for index in range(3):
        form.coats_field.sheet_field.setCurrentIndex(index)
        form.coats_field.add()
    form.coats_field.move_by(-1)
    form.coats_field.list.setCurrentRow(0)
    form.coats_field.remove()
    form.title_field.setText("Gate")
    form.width_field.setText("10")
    form.height_field.setText("10")
    assert form.read().sheets == ("gloss-solvent", "gloss-waterborne")


def test_that_a_size_that_is_no_number_is_named_and_kept(shown: Show, desk: ScriptedDesk) -> None:
    form = shown(EMPTY).deeds.register_piece()
    form.title_field.setText("Gate")
    form.width_field.setText("sixty")
    form.height_field.setText("90")
    form.command_or_fault()
    assert "sixty" in form.fault_words
    assert "cm" in form.fault_words
    assert form.isVisible()
    assert form.focusWidget() is form.width_field
    assert (form.title_field.text(), form.width_field.text(), form.height_field.text()) == ("Gate", "sixty", "90")
    assert desk.commands == []


def test_that_a_refusal_stands_in_the_form_with_all_she_typed(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    form = shown(EMPTY).deeds.register_piece()
    desk.refuse("There is a piece called Gate already: choose another title.")
    for field, text in ((form.title_field, "Gate"), (form.width_field, "60"), (form.height_field, "90")):
        field.setText(text)
    form.coats_field.add()
    form.command_or_fault()
    qtbot.waitUntil(lambda: "choose another title" in form.fault_words)
    assert form.isVisible()
    assert form.title_field.text() == "Gate"
    assert form.title_field.isEnabled()
    desk.answer = "new"
    form.command_or_fault()
    qtbot.waitUntil(lambda: not isValid(form) or not form.isVisible())


def test_that_a_registered_piece_stays_chosen_when_the_form_is_gone(
    shown: Show, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    window = shown(FOUR_WARNED)
    activate(window, qtbot)
    window.page.rack._views[0].setFocus()
    form = window.deeds.register_piece()
    with qtbot.waitActive(form):
        form.activateWindow()
    desk.answer = "new"
    for field, text in ((form.title_field, "Gate"), (form.width_field, "60"), (form.height_field, "90")):
        field.setText(text)
    form.coats_field.add()
    form.command_or_fault()
    qtbot.waitUntil(lambda: not isValid(form) or not form.isVisible())
    desk.publish(replace(FOUR_WARNED, pieces=(*FOUR_WARNED.pieces, replace(ORCHARD, key="new", title="Gate"))))
    activate(window, qtbot)
    QApplication.processEvents()
    assert window.page.rack.chosen_key == "new"


def test_that_the_keyboard_goes_from_the_empty_rack_to_its_first_piece(
    shown: Show, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    window = shown(EMPTY)
    activate(window, qtbot)
    next(one for one in window.page.rack.findChildren(QPushButton) if one.text() == "Register a piece").setFocus()
    desk.publish(replace(FOUR_WARNED, pieces=FOUR_WARNED.pieces[:1]))
    qtbot.waitUntil(lambda: bool(window.page.rack._views))
    assert window.focusWidget() is window.page.rack._views[0]


def test_that_a_fault_in_the_program_is_told_and_loud(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    form = shown(EMPTY).deeds.register_piece()
    desk.answer = ZeroDivisionError("a bug")
    for field, text in ((form.title_field, "Gate"), (form.width_field, "60"), (form.height_field, "90")):
        field.setText(text)
    form.coats_field.add()
    with qtbot.captureExceptions() as raised:
        form.command_or_fault()
        qtbot.waitUntil(lambda: form.fault_words == FAULT_WORDS)
    assert [kind for kind, _, _ in raised] == [ZeroDivisionError]


def test_that_an_answer_after_the_form_is_gone_harms_nothing(shown: Show, desk: ScriptedDesk) -> None:
    form = shown(FOUR_WARNED).deeds.touch_test("ladder")
    desk.hold = True
    form.answers[Finding.TACKY].click()
    form.reject()
    let_go()
    assert not isValid(form)
    desk.settle(desk.futures[-1])
    QApplication.processEvents()


def test_that_a_piece_without_coats_to_come_is_asked_once(shown: Show, desk: ScriptedDesk) -> None:
    form = shown(EMPTY).deeds.register_piece()
    for field, text in ((form.title_field, "Gate"), (form.width_field, "60"), (form.height_field, "90")):
        field.setText(text)
    form.command_or_fault()
    assert form.fault_words == NO_COATS
    assert desk.commands == []
    form.command_or_fault()
    assert desk.commands[-1].sheets == ()


def test_that_a_fault_goes_with_the_next_edit_and_the_wrong_field_is_marked(shown: Show) -> None:
    form = shown(EMPTY).deeds.register_piece()
    form.title_field.setText("Gate")
    form.width_field.setText("sixty")
    form.command_or_fault()
    assert form.width_field.property("wrong") == "true"
    form.width_field.setText("60")
    assert form.fault_words == ""
    assert form.width_field.property("wrong") == "false"


def test_that_enter_in_a_list_opens_it_and_sends_nothing(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    form = shown(FOUR_WARNED).deeds.lay_coat("orchard")
    qtbot.keyClick(form.sheet_field, Qt.Key.Key_Return)
    assert form.sheet_field.view().isVisible()
    form.sheet_field.hidePopup()
    assert desk.commands == []


def test_that_escape_asks_before_a_filled_form_is_dropped(shown: Show, qtbot: QtBot) -> None:
    form = shown(FOUR_WARNED).deeds.lay_coat("orchard")
    form.amount_field.setText("54")
    qtbot.keyClick(form, Qt.Key.Key_Escape)
    box = form.findChild(QMessageBox)
    assert form.isVisible()
    assert box.defaultButton().text() == "Keep the form"
    box.reject()
    assert form.isVisible()
    form.reject()
    form.findChildren(QMessageBox)[-1].accept()
    assert not form.isVisible()


def test_that_without_a_piece_the_actions_say_what_comes_first(shown: Show) -> None:
    window = shown(EMPTY)
    assert window.deeds.lay_coat("") is None
    assert "Register a piece first" in window.foot.words
    assert window.deeds.touch_test("") is None
    assert "nothing to touch" in window.foot.words


def test_that_closed_forms_leave_nothing_behind(shown: Show) -> None:
    window = shown(FOUR_WARNED)
    deeds = window.deeds
    for _ in range(20):
        for form in (deeds.register_piece(), deeds.lay_coat("orchard"), deeds.touch_test("ladder")):
            form.close()
        deeds.take_off("orchard")
        window.findChild(QMessageBox).reject()
        deeds.menu_for("orchard").aboutToHide.emit()
        let_go()
    gc.collect()
    assert window.findChildren(QDialog) == []
