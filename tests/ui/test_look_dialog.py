"""The touch test: its words for a solvent-borne coat, what was learnt, and what a test moved."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from studiowatch.service.commands import RecordLook, RecordOutcome
from studiowatch.service.snapshot import Snapshot
from studiowatch.studio.pieces import Finding, Outcome
from studiowatch.ui.models.learning import WAIT_MS
from studiowatch.ui.models.times import clock_words, near_words

from .conftest import Show
from .scenes import FOUR_WARNED, HERONS, LEARNT, NOW_MS, ORCHARD, TOLD, ScriptedDesk

pytestmark = pytest.mark.window
HOUR_MS = 3_600_000


def moved_by(hours: float, seconds: int = 1) -> Snapshot:
    blushed = replace(TOLD.pieces[3], next_ms=HERONS.next_ms + round(hours * HOUR_MS))
    return replace(TOLD, time_ms=NOW_MS + seconds * 1000, pieces=(*TOLD.pieces[:3], blushed))


def test_that_a_solvent_borne_coat_is_dull_and_never_milky(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    window = shown(TOLD)
    form = window.deeds.touch_test("herons")
    answer = form.answers[Finding.MILKY]
    assert (answer.text(), answer.accessibleName()) == ("Dull, blushed", "Dull, blushed")
    assert "stays" in answer.accessibleDescription()
    form.piece_field.setCurrentText("Orchard at Low Water")
    assert answer.text() == "Still milky"
    form.piece_field.setCurrentText("Two Herons, Waiting")
    answer.click()
    # a blush does not clear: recorded as a coat that is not clear yet, it would teach that the product dries slowly
    assert desk.commands == [RecordOutcome(coat_key="h1", seen_ms=NOW_MS, outcome=Outcome.DULL_IN_DARKS)]
    qtbot.waitUntil(lambda: window.foot.words == "Recorded: Two Herons, Waiting, dull, blushed")


def test_that_a_long_title_pushes_no_answer_out(shown: Show) -> None:
    long = replace(TOLD.pieces[0], title="A long evening at the edge of the marsh, seen from the old mill, " * 2)
    form = shown(replace(TOLD, pieces=(long, *TOLD.pieces[1:]))).deeds.touch_test("herons")
    QApplication.processEvents()
    right_px = max(one.mapTo(form, one.rect().topRight()).x() for one in form.answers.values())
    assert right_px < form.width()


def test_that_touch_teaches_of_a_solvent_borne_coat_and_the_eye_does_not(shown: Show, desk: ScriptedDesk) -> None:
    for finding in (Finding.TACKY, Finding.CLEAR):
        shown(TOLD).deeds.touch_test("herons").answers[finding].click()
    assert desk.commands == [
        RecordLook(coat_key="h1", time_ms=NOW_MS, finding=Finding.TACKY),
        RecordOutcome(coat_key="h1", seen_ms=NOW_MS, outcome=Outcome.CLEAR),
    ]


def test_that_what_was_learnt_is_shown_where_there_is_something(shown: Show) -> None:
    form = shown(TOLD).deeds.touch_test("orchard")
    assert form.learnt_words == LEARNT.sentence
    form.piece_field.setCurrentText("Two Herons, Waiting")
    assert form.learnt_words == ""


def test_that_a_ready_time_that_a_test_moved_is_said_at_the_foot_once(
    shown: Show, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    window = shown(TOLD)
    window.deeds.touch_test("herons").answers[Finding.TACKY].click()
    qtbot.waitUntil(lambda: window.foot.words == "Recorded: Two Herons, Waiting, tacky")
    told: list[str] = []
    window.deeds.done.connect(told.append)
    desk.publish(moved_by(5.0))
    then, now = (near_words(HERONS.next_ms + hours * HOUR_MS, NOW_MS) for hours in (0, 5))
    said = f"Ready time moved from {then} to {now[-5:]} · Two Herons, Waiting"
    qtbot.waitUntil(lambda: window.foot.words == said)
    window.deeds.set_snapshot(moved_by(9.0, seconds=2))
    assert told == [said]


def test_that_a_move_that_comes_before_the_answer_is_not_lost(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    window = shown(TOLD)
    desk.hold = True
    window.deeds.touch_test("herons").answers[Finding.TACKY].click()
    window.deeds.set_snapshot(moved_by(5.0))
    assert "moved" not in window.foot.words
    desk.settle(desk.futures[-1])
    qtbot.waitUntil(lambda: "Ready time moved" in window.foot.words)


def test_that_a_move_long_after_or_without_a_test_is_the_rooms(shown: Show, qtbot: QtBot) -> None:
    window = shown(TOLD)
    window.deeds.set_snapshot(moved_by(5.0))
    assert "moved" not in window.foot.words
    window.deeds.touch_test("herons").answers[Finding.DRY].click()
    qtbot.waitUntil(lambda: window.foot.words.startswith("Recorded"))
    window.deeds.set_snapshot(moved_by(5.0, seconds=WAIT_MS // 1000 + 2))
    window.deeds.set_snapshot(moved_by(11.0, seconds=WAIT_MS // 1000 + 3))
    assert "moved" not in window.foot.words


def test_that_a_refused_test_moves_nothing(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    window = shown(TOLD)
    desk.refuse("The coat is gone.")
    form = window.deeds.touch_test("herons")
    form.answers[Finding.DRY].click()
    qtbot.waitUntil(lambda: form.fault_words == "The coat is gone.")
    window.deeds.set_snapshot(moved_by(5.0))
    QApplication.processEvents()
    assert "moved" not in window.foot.words


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
