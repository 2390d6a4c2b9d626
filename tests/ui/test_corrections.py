"""Editing a piece, correcting what was recorded of it, saying how it came out, and undoing: all in the real window."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QDate, QDateTime, Qt
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QMessageBox, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from studiowatch.coats.stages import Orientation, Stage
from studiowatch.service.commands import AmendPiece, LayCoat, Paint, RecordLook, RecordOutcome, RegisterPiece
from studiowatch.service.correction_commands import (
    CorrectCoat,
    CorrectLook,
    Redo,
    TakeBackCoat,
    TakeBackLook,
    TakeBackOutcome,
    TakePhoto,
    Undo,
)
from studiowatch.service.piece_view import CorrectionView, PieceView
from studiowatch.service.snapshot import Snapshot, UndoView
from studiowatch.studio.pieces import Coat, Finding, Look, Outcome, Shape
from studiowatch.ui.models.look_form import tells_outcome
from studiowatch.ui.models.recorded import correction_lines, recorded_lines
from studiowatch.ui.widgets.correction_dialogs import ForgottenCoatDialog
from studiowatch.ui.widgets.outcome_dialog import OutcomeDialog
from studiowatch.ui.window import StudioWindow

from .conftest import Show, activate
from .scenes import EMPTY, FOUR_CALM, NOW_MS, ORCHARD, PAINT_SHEET, SHEETS, ScriptedDesk

pytestmark = pytest.mark.window
LAID_MS = NOW_MS - 3 * 3_600_000


def orchard(**changes: object) -> PieceView:
    """Return the orchard with a gloss coat whose every field was recorded."""
    look = Look(key="seen", time_ms=NOW_MS - 600_000, finding=Finding.TACKY)
    kept = Coat(
        key="o2",
        sheet="gloss-waterborne",
        laid_ms=LAID_MS,
        grams=52,
        thinned_pct=5,
        covered_from_ms=LAID_MS + 1_200_000,
        outcome=Outcome.SPECKS,
        seen_ms=NOW_MS - 60_000,
        looks=(look,),
    )
    coats = tuple(replace(coat, laid_ms=LAID_MS, recorded=kept) if coat.key == "o2" else coat for coat in ORCHARD.coats)
    return replace(ORCHARD, coats=coats, **changes)


def named(parent: QWidget, name: str) -> QPushButton:
    (found,) = [one for one in parent.findChildren(QPushButton) if one.accessibleName() == name]
    return found


def with_orchard(**changes: object) -> Snapshot:
    return replace(FOUR_CALM, pieces=(orchard(**changes), *FOUR_CALM.pieces[1:]))


def test_that_all_of_a_piece_is_registered(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    desk.offered = (*SHEETS, PAINT_SHEET)
    form = shown(EMPTY).deeds.register_piece()
    form.title_field.setText("Tide Tables")
    form.shape_field.setCurrentText("Set of panels")
    form.width_field.setText("30")
    form.height_field.setText("40")
    form.panels_field.setValue(3)
    assert form._area.text() == "0.36 m² to be coated"
    form.support_field.setCurrentText("raw canvas")
    form.paint_field.setCurrentIndex(1)
    form.paint_um_field.setText("1400")
    form.painted_field.setDateTime(QDateTime.fromMSecsSinceEpoch(NOW_MS - 864_000_000))
    form.notes_field.setPlainText("second of two,\nfor the stairs")
    form.coats_field.add()
    with qtbot.waitSignal(form.recorded):
        form.command_or_fault()
    assert desk.commands == [
        RegisterPiece(
            title="Tide Tables",
            width_cm=30,
            height_cm=40,
            support="raw canvas",
            shape=Shape.PANELS,
            panels=3,
            notes="second of two,\nfor the stairs",
            paint=Paint(sheet="paint-poured", finished_ms=NOW_MS - 864_000_000, wet_um=1400),
            sheets=("isolation-waterborne",),
        )
    ]


def test_that_a_piece_is_edited_in_the_same_form_and_what_was_not_touched_stays(
    shown: Show, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    form = shown(with_orchard(notes="client: front door")).deeds.edit_piece("orchard")
    assert form is not None
    assert (form.title_field.text(), form.width_field.text()) == ("Orchard at Low Water", "60")
    assert form.coats_field.sheets == ("gloss-waterborne", "satin-waterborne")
    assert not form.is_filled()
    form.width_field.setText("61")
    form.due_field.setDate(QDate(2026, 4, 1))
    assert form.is_filled()
    with qtbot.waitSignal(form.recorded):
        form.command_or_fault()
    assert desk.commands == [
        AmendPiece(
            piece_key="orchard",
            title="Orchard at Low Water",
            width_cm=61,
            height_cm=90,
            due=date(2026, 4, 1),
            support="canvas",
            orientation=Orientation.FACE_UP,
            shape=Shape.RECTANGLE,
            panels=1,
            photo="",
            notes="client: front door",
        )
    ]


def test_that_a_photo_is_taken_in_shown_and_kept_with_the_piece(
    shown: Show, desk: ScriptedDesk, qtbot: QtBot, tmp_path: Path
) -> None:
    desk.photo_folder, desk.answer = tmp_path, "photo-0123456789abcdef.jpg"
    assert QImage(30, 20, QImage.Format.Format_RGB32).save(str(tmp_path / desk.answer))
    form = shown(with_orchard()).deeds.edit_piece("orchard")
    assert form is not None
    with qtbot.waitSignal(form.photo_field.changed):
        form.photo_field.take(tmp_path / "of mine.png")
    assert desk.commands == [TakePhoto(path=tmp_path / "of mine.png")]
    assert not form.photo_field._picture.pixmap().isNull()
    command = form.read()
    assert isinstance(command, AmendPiece)
    assert command.photo == "photo-0123456789abcdef.jpg"


def test_that_a_photo_that_cannot_be_taken_is_told_and_the_form_stays(
    shown: Show, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    form = shown(with_orchard()).deeds.edit_piece("orchard")
    assert form is not None
    desk.refuse("half.png cannot be shown: it is broken. Choose another picture.")
    form.photo_field.take(Path("half.png"))
    qtbot.waitUntil(lambda: form.fault_words.startswith("half.png cannot be shown"))
    assert form.photo_field.choose.isEnabled()


def test_that_paint_that_is_on_is_not_edited_away(shown: Show, desk: ScriptedDesk) -> None:
    desk.offered = (*SHEETS, PAINT_SHEET)
    kept = Coat(key="o0", sheet="paint-poured", laid_ms=NOW_MS - 864_000_000, wet_um=900)
    paint = replace(ORCHARD.coats[0], sheet="paint-poured", laid_ms=kept.laid_ms, wet_um=900, recorded=kept)
    painted = with_orchard()
    painted = replace(painted, pieces=(replace(ORCHARD, coats=(paint, *ORCHARD.coats[1:])), *painted.pieces[1:]))
    form = shown(painted).deeds.edit_piece("orchard")
    assert form is not None
    assert form.paint_um_field.text() == "900"
    form.paint_field.setCurrentIndex(0)
    form.command_or_fault()
    assert "Corrections" in form.fault_words
    assert desk.commands == []


def test_that_a_coat_is_corrected_as_typed(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    window = shown(with_orchard())
    line = recorded_lines(orchard(), NOW_MS)[0]
    form = window.deeds.records.correct("orchard", line)
    assert form is not None
    assert (form.amount_field.text(), form.measure_field.currentText(), form.thinned_field.text()) == ("52", "g", "5")
    form.laid_field.setDateTime(QDateTime.fromMSecsSinceEpoch(LAID_MS - 2_700_000))
    form.covered_on.setChecked(False)
    with qtbot.waitSignal(form.recorded):
        form.command_or_fault()
    assert desk.commands == [
        CorrectCoat(coat_key="o2", sheet="gloss-waterborne", laid_ms=LAID_MS - 2_700_000, grams=52, thinned_pct=5)
    ]


def test_that_a_correction_that_cannot_be_is_told_at_its_field(shown: Show, desk: ScriptedDesk) -> None:
    form = shown(with_orchard()).deeds.records.correct("orchard", recorded_lines(orchard(), NOW_MS)[0])
    assert form is not None
    form.laid_field.setDateTime(QDateTime.fromMSecsSinceEpoch(NOW_MS + 3_600_000))
    form.command_or_fault()
    assert form.fault_words == "The brush went down in the future: choose a time that has passed."
    form.laid_field.setDateTime(QDateTime.fromMSecsSinceEpoch(LAID_MS))
    form.amount_field.setText("much")
    form.command_or_fault()
    assert "much" in form.fault_words
    assert form.amount_field.property("wrong") == "true"
    assert desk.commands == []


def test_that_what_was_recorded_is_listed_with_its_corrections(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    history = (CorrectionView(time_ms=NOW_MS - 60_000, words="gloss 1: laid 13:05 instead of 13:50"),)
    window = shown(with_orchard(corrections=history))
    listed = window.deeds.records.show_recorded("orchard")
    assert listed is not None
    words = [line.words for line in recorded_lines(orchard(), NOW_MS)]
    assert [named(listed, f"Correct: {line}").isEnabled() for line in words] == [True] * 4
    assert words[0].startswith("gloss 1: laid ")
    assert "52 g, thinned by 5 %, covered " in words[0]
    assert words[1].startswith("tacky ")
    assert words[2].startswith("came out specks, seen ")
    (line,) = correction_lines(orchard(corrections=history), NOW_MS)
    assert line.endswith(": gloss 1: laid 13:05 instead of 13:50")
    named(listed, f"Take back: {words[1]}").click()
    named(listed, f"Take back: {words[2]}").click()
    qtbot.waitUntil(lambda: len(desk.commands) == 2)
    assert desk.commands == [TakeBackLook(look_key="seen"), TakeBackOutcome(coat_key="o2")]


@pytest.mark.parametrize(("words", "again"), [("Not laid, still to come", True), ("Not laid, not to come", False)])
def test_that_a_coat_is_taken_back_only_when_asked(shown: Show, desk: ScriptedDesk, words: str, *, again: bool) -> None:
    box = shown(with_orchard()).deeds.records.take_back("orchard", recorded_lines(orchard(), NOW_MS)[0])
    assert isinstance(box, QMessageBox)
    assert box.defaultButton().text() == "Keep it"
    assert desk.commands == []
    next(one for one in box.buttons() if one.text() == words).click()
    assert desk.commands == [TakeBackCoat(coat_key="o2", plan_again=again)]


def test_that_a_second_press_before_the_answer_records_nothing_twice(
    shown: Show, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    listed = shown(with_orchard()).deeds.records.show_recorded("orchard")
    assert listed is not None
    named(listed, "Add a coat that was forgotten…").click()
    (form,) = listed.findChildren(ForgottenCoatDialog)
    desk.hold = True
    keep = named(form, "Keep the correction")
    keep.click()
    keep.click()
    assert len(desk.commands) == 1
    desk.refuse("The clock stands still; give another time.")
    desk.settle(desk.futures[0])
    qtbot.waitUntil(lambda: form.fault_words.startswith("The clock"))
    keep.click()
    assert len(desk.commands) == 2


def test_that_a_forgotten_coat_is_added_where_its_time_puts_it(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    listed = shown(with_orchard()).deeds.records.show_recorded("orchard")
    assert listed is not None
    named(listed, "Add a coat that was forgotten…").click()
    (form,) = listed.findChildren(ForgottenCoatDialog)
    form.laid_field.setDateTime(QDateTime.fromMSecsSinceEpoch(NOW_MS - 86_400_000))
    form.measure_field.setCurrentText("mL")
    form.amount_field.setText("50")
    with qtbot.waitSignal(form.recorded):
        form.command_or_fault()
    assert desk.commands == [
        LayCoat(
            piece_key="orchard",
            laid_ms=NOW_MS - 86_400_000,
            sheet="isolation-waterborne",
            volume_mL=50,
            below=True,
        )
    ]


def test_that_a_look_is_corrected(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    form = shown(with_orchard()).deeds.records.correct("orchard", recorded_lines(orchard(), NOW_MS)[1])
    assert form is not None
    form.finding_field.setCurrentText("Dry")
    with qtbot.waitSignal(form.recorded):
        form.command_or_fault()
    assert desk.commands == [CorrectLook(look_key="seen", time_ms=NOW_MS - 600_000, finding=Finding.DRY)]


def test_that_a_bad_outcome_offers_the_review_and_a_clear_one_does_not(
    shown: Show, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    window = shown(FOUR_CALM)
    asked: list[str] = []
    window.deeds.records.review_asked.connect(asked.append)
    for outcome, offers in ((Outcome.CLEAR, False), (Outcome.MILKY_IN_PATCHES, True)):
        form = window.deeds.records.ask_outcome("orchard")
        assert form is not None
        with qtbot.waitSignal(form.recorded):
            form.answers[outcome].click()
        boxes = [box for box in window.findChildren(QMessageBox) if box.isVisible()]
        assert bool(boxes) is offers
    next(button for button in boxes[0].buttons() if button.text() == "Look at why").click()
    assert asked == ["o2"]
    assert len(desk.commands) == 2


@pytest.mark.parametrize("outcome", list(Outcome))
def test_that_each_outcome_has_an_answer(shown: Show, desk: ScriptedDesk, qtbot: QtBot, outcome: Outcome) -> None:
    form = shown(FOUR_CALM).deeds.records.ask_outcome("orchard")
    assert form is not None
    assert not any(answer.isDefault() for answer in form.answers.values())
    with qtbot.waitSignal(form.recorded):
        form.answers[outcome].click()
    assert desk.commands == [RecordOutcome(coat_key="o2", seen_ms=NOW_MS, outcome=outcome)]


def test_that_a_clear_look_asks_how_it_came_out(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    window = shown(FOUR_CALM)
    form = window.deeds.touch_test("ladder")
    assert form is not None
    with qtbot.waitSignal(form.recorded):
        form.answers[Finding.CLEAR].click()
    assert isinstance(desk.commands[0], RecordLook)
    (asked,) = window.findChildren(OutcomeDialog)
    assert asked.isVisible()


def test_that_a_milky_look_asks_only_once_the_coat_should_long_be_clear() -> None:
    (coat,) = [coat for coat in ORCHARD.coats if coat.key == "o2"]
    clear = coat.stage(Stage.CLEAR)
    assert clear is not None
    assert clear.time_ms is not None
    assert not tells_outcome(coat, Finding.MILKY, clear.time_ms - 1)
    assert tells_outcome(coat, Finding.MILKY, clear.time_ms + 1)
    assert tells_outcome(coat, Finding.CLEAR, clear.time_ms - 1)
    assert not tells_outcome(coat, Finding.TACKY, clear.time_ms + 1)
    assert not tells_outcome(orchard().coats[2], Finding.CLEAR, clear.time_ms + 1)


def test_that_undo_is_named_in_the_menu_and_on_the_keys(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    gloss = "laid gloss 1 on Kiln & Light"
    window = shown(replace(FOUR_CALM, undo=UndoView(undo=gloss, redo=gloss)))
    assert window.menus.undo.text() == "&Undo: laid gloss 1 on Kiln && Light"
    assert window.menus.redo.text() == "Do a&gain: laid gloss 1 on Kiln && Light"
    activate(window, qtbot)
    told: list[str] = []
    window.deeds.done.connect(told.append)
    desk.answer = "laid gloss 1 on Kiln & Light"
    qtbot.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    qtbot.keyClick(window, Qt.Key.Key_Y, Qt.KeyboardModifier.ControlModifier)
    assert desk.commands == [Undo(), Redo()]
    qtbot.waitUntil(lambda: told[-1:] == ["Done again: laid gloss 1 on Kiln & Light."])


def test_that_undo_and_do_again_are_offered_only_where_there_is_something(
    window: StudioWindow, shown: Show, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    def offered() -> tuple[bool, bool]:
        return window.menus.undo.isEnabled(), window.menus.redo.isEnabled()

    assert offered() == (False, False)
    shown(replace(FOUR_CALM, undo=UndoView(undo="laid gloss 1 on Kiln Light")))
    assert offered() == (True, False)
    assert window.menus.redo.text() == "Do a&gain"
    activate(window, qtbot)
    qtbot.keyClick(window, Qt.Key.Key_Y, Qt.KeyboardModifier.ControlModifier)
    assert desk.commands == []
    window.menus.show_undo(UndoView(redo="laid gloss 1 on Kiln Light"))
    assert offered() == (False, True)


def test_that_the_piece_menu_offers_edit_corrections_and_outcome(shown: Show) -> None:
    words = [action.text().replace("&", "") for action in shown(FOUR_CALM).deeds.menu_for("orchard").actions()]
    assert {"Edit the piece…", "Corrections…", "How did it come out…"} <= set(words)
