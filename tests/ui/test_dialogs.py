"""The forms: bad input is told in one sentence, nothing typed is lost, and a closed form is gone."""

from __future__ import annotations

import gc
from collections.abc import Callable
from dataclasses import replace
from datetime import date

import pytest
from PySide6.QtCore import QDate, QDateTime, QEvent, Qt
from PySide6.QtWidgets import QApplication, QDialog, QLabel, QMessageBox
from pytestqt.qtbot import QtBot
from shiboken6 import isValid

from studiowatch.coats.stages import Orientation
from studiowatch.service.commands import LayCoat, RecordLook, RegisterPiece
from studiowatch.service.snapshot import Snapshot
from studiowatch.studio.pieces import Finding
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.bridge import FAULT_WORDS
from studiowatch.ui.models.piece_form import NO_COATS
from studiowatch.ui.models.times import clock_words
from studiowatch.ui.widgets.sentence import SentenceView
from studiowatch.ui.window import StudioWindow

from .conftest import activate
from .scenes import EMPTY, FOUR_WARNED, NOW_MS, ORCHARD, ScriptedDesk

pytestmark = pytest.mark.window
Show = Callable[[Snapshot], StudioWindow]


def let_go() -> None:
    """Carry out what Qt was asked to delete."""
    QApplication.processEvents()
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


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


def test_that_the_planned_coat_is_offered_first_with_its_amount(shown: Show, desk: ScriptedDesk) -> None:
    form = shown(FOUR_WARNED).deeds.lay_coat("orchard")
    assert form.sheet_field.currentText().startswith("gloss 2, planned")
    # 60 cm x 90 cm is 0.54 m2; 100 um of wet film on it is 0.54e-4 m3, that is 54 mL.
    assert form.amount_field.placeholderText() == "54"
    form.amount_field.setText("54")
    form.command_or_fault()
    assert desk.commands == [
        LayCoat(piece_key="orchard", laid_ms=NOW_MS, sheet="gloss-waterborne", coat_key="o3", volume_mL=54.0)
    ]


def test_that_grams_are_suggested_from_the_density(shown: Show, desk: ScriptedDesk) -> None:
    form = shown(FOUR_WARNED).deeds.lay_coat("orchard")
    form.unit_field.setCurrentText("g")
    assert form.amount_field.placeholderText() == "56"  # 54 mL at 1.04 g/mL
    form.amount_field.setText("50")
    form.thinned_field.setText("5")
    form.command_or_fault()
    laid = desk.commands[-1]
    assert isinstance(laid, LayCoat)
    assert (laid.grams, laid.volume_mL, laid.thinned_pct) == (50.0, None, 5.0)


def test_that_a_coat_laid_earlier_keeps_its_time(shown: Show, desk: ScriptedDesk) -> None:
    form = shown(FOUR_WARNED).deeds.lay_coat("orchard")
    form.earlier_field.setChecked(True)
    earlier_ms = NOW_MS - 45 * 60_000
    form.time_field.setDateTime(QDateTime.fromMSecsSinceEpoch(earlier_ms))
    form.command_or_fault()
    assert desk.commands[-1].laid_ms == earlier_ms


def test_that_a_coat_cannot_be_laid_tomorrow(shown: Show, desk: ScriptedDesk) -> None:
    form = shown(FOUR_WARNED).deeds.lay_coat("orchard")
    form.earlier_field.setChecked(True)
    form.time_field.setDateTime(QDateTime.fromMSecsSinceEpoch(NOW_MS + 86_400_000))
    form.command_or_fault()
    assert "future" in form.fault_words
    assert desk.commands == []


def test_that_the_look_at_the_room_is_live(shown: Show) -> None:
    window = shown(FOUR_WARNED)
    form = window.deeds.lay_coat("lamp")
    room = form.findChild(SentenceView)
    assert room.headline == "Not yet: a fan is on"  # the planned coat is satin, whose check says so
    good = dict(FOUR_WARNED.room_checks)["gloss-waterborne"]
    shown(
        type(FOUR_WARNED)(
            time_ms=NOW_MS,
            board=FOUR_WARNED.board,
            room=FOUR_WARNED.room,
            sentence=EMPTY.sentence,
            pieces=FOUR_WARNED.pieces,
            room_checks=(("satin-waterborne", good),),
        )
    )
    assert room.headline == "Go: good to lay a coat"
    assert good.detail in room.accessibleName()


def test_that_a_solvent_sheet_shows_its_hazards_before_the_brush_goes_down(shown: Show) -> None:
    form = shown(FOUR_WARNED).deeds.lay_coat("orchard")
    index = form.sheet_field.findText("Gloss varnish, solvent-borne")
    form.sheet_field.setCurrentIndex(index)
    let_go()
    said = " ".join((*form._cautions.cautions, *form._own_cautions.cautions))
    assert "fresh air" in said
    assert "no flame" in said
    assert "The product's own sheet" in said


def test_that_a_piece_that_is_not_ready_says_so_before_the_room(shown: Show) -> None:
    why = Sentence(level=Level.ACT, headline="Not yet: gloss 1 is still wet", advice="Wait.")
    wet = replace(FOUR_WARNED, pieces=(replace(ORCHARD, not_yet=why), *FOUR_WARNED.pieces[1:]))
    form = shown(wet).deeds.lay_coat("orchard")
    verdict = form.findChild(SentenceView)
    assert verdict.headline == why.headline
    assert why.advice in verdict.accessibleName()
    shown(replace(FOUR_WARNED, sentence=EMPTY.sentence))
    assert verdict.headline == "Go: good to lay a coat"
    form.piece_field.setCurrentText("Blue Ladder")
    assert verdict.headline == "Go: good to lay a coat"


def test_that_the_form_and_its_button_name_the_piece(shown: Show) -> None:
    form = shown(FOUR_WARNED).deeds.lay_coat("ladder")
    assert form.heading.text() == "Lay a coat: Blue Ladder"
    assert form.brush_down.text() == "The brush is down on Blue Ladder"
    form.piece_field.setCurrentText("Two Herons, Waiting")
    assert form.brush_down.text() == "The brush is down on Two Herons, Waiting"


def test_that_an_amount_far_too_large_is_asked_once_more(shown: Show, desk: ScriptedDesk) -> None:
    form = shown(FOUR_WARNED).deeds.lay_coat("orchard")
    form.amount_field.setText("4000")
    form.command_or_fault()
    assert "4000 mL is 74 times the sheet's film; did you mean 54?" in form.fault_words
    assert desk.commands == []
    form.amount_field.setText("3000")
    assert form.fault_words == ""
    form.command_or_fault()
    assert desk.commands == []
    form.command_or_fault()
    assert desk.commands[-1].volume_mL == 3000.0


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


def test_that_a_wrong_amount_is_told_once(shown: Show) -> None:
    form = shown(FOUR_WARNED).deeds.lay_coat("orchard")
    form.amount_field.setText("a lot")
    form.command_or_fault()
    said = [one for one in form.findChildren(QLabel) if "a lot" in one.text() and one.isVisible()]
    assert len(said) == 1


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


def test_that_a_wet_coat_is_to_be_looked_at_and_not_touched(shown: Show) -> None:
    form = shown(FOUR_WARNED).deeds.touch_test("orchard")
    until = clock_words(ORCHARD.coats[2].stages[0].time_ms, NOW_MS)
    assert form.care_words == (
        f"It should still be wet until about {until}: a fingertip would mark it. Look, do not touch."
    )
    form.piece_field.setCurrentText("Lamp in the Fog")
    assert "Touch at the edge" in form.care_words


@pytest.mark.parametrize("key", [Qt.Key.Key_Return, Qt.Key.Key_Space])
def test_that_no_answer_of_the_touch_test_is_the_default(
    shown: Show, desk: ScriptedDesk, qtbot: QtBot, key: Qt.Key
) -> None:
    form = shown(FOUR_WARNED).deeds.touch_test("ladder")
    qtbot.keyClick(form.focusWidget() or form, key)
    assert desk.commands == []


def test_that_what_was_recorded_is_said_at_the_foot(shown: Show, qtbot: QtBot) -> None:
    window = shown(FOUR_WARNED)
    window.deeds.touch_test("ladder").answers[Finding.DRY].click()
    qtbot.waitUntil(lambda: window.foot.words == "Recorded: Blue Ladder, dry to the touch")
    form = window.deeds.lay_coat("orchard")
    form.command_or_fault()
    qtbot.waitUntil(lambda: window.foot.words == "Recorded: gloss 2 laid on Orchard at Low Water")


@pytest.mark.parametrize("finding", list(Finding))
def test_that_one_touch_answers_the_test(shown: Show, desk: ScriptedDesk, finding: Finding) -> None:
    form = shown(FOUR_WARNED).deeds.touch_test("ladder")
    form.answers[finding].click()
    assert desk.commands == [RecordLook(coat_key="l1", time_ms=NOW_MS, finding=finding)]


def test_that_the_touch_test_is_answered_by_keyboard(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    form = shown(FOUR_WARNED).deeds.touch_test("ladder")
    form.answers[Finding.DRY].setFocus()
    qtbot.keyClick(form.answers[Finding.DRY], Qt.Key.Key_Space)
    assert desk.commands == [RecordLook(coat_key="l1", time_ms=NOW_MS, finding=Finding.DRY)]


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
