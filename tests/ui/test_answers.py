"""Warnings and prompts on the screen: heard, put off, ticked."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QEvent, Qt, QTimer
from PySide6.QtWidgets import QApplication, QPushButton
from pytestqt.qtbot import QtBot

from studiowatch.service.commands import (
    HearWarning,
    RecordLook,
    RemindLater,
    TickPrompt,
)
from studiowatch.service.snapshot import PromptView, Snapshot
from studiowatch.studio.pieces import Finding
from studiowatch.studio.prompts import Step, prompt_key
from studiowatch.studio.warnings import WarningState
from studiowatch.ui.models.alarm import Sound
from studiowatch.ui.widgets.coat_dialog import CoatDialog
from studiowatch.ui.widgets.look_dialog import LookDialog
from studiowatch.ui.widgets.prompts import HELD_MS

from .conftest import KeptSpeaker, KeptTray, Show, activate, push
from .scenes import (
    AIR,
    AIR_WARNING,
    FOUR_CALM,
    FOUR_WARNED,
    HEARD,
    NOW_MS,
    ScriptedClock,
    ScriptedDesk,
)

pytestmark = pytest.mark.window


def test_that_heard_and_remind_are_submitted(shown: Show, desk: ScriptedDesk, clock: ScriptedClock) -> None:
    window = shown(FOUR_WARNED)
    push(window.page.sentence, "Heard").click()
    push(window.page.sentence, "Remind me in 10 min").click()
    ten_minutes_ms = 600_000
    assert desk.commands == [
        HearWarning(warning_key="w1"),
        RemindLater(warning_key="w1", until_ms=clock.utc_ms() + ten_minutes_ms),
    ]


def test_that_the_keyboard_stays_with_a_warning_once_it_is_answered(
    shown: Show, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    window = shown(FOUR_WARNED)
    activate(window, qtbot)
    remind = push(window.page.sentence, "Remind me in 10 min")
    remind.setFocus()
    qtbot.keyClick(remind, Qt.Key.Key_Space)
    sent = list(desk.commands)
    put_off = replace(AIR_WARNING, state=WarningState.REMIND, sound=False, remind_ms=NOW_MS + 600_000)
    shown(replace(FOUR_WARNED, warnings=(put_off,)))
    qtbot.waitUntil(remind.isHidden)
    assert QApplication.focusWidget() is window.page.sentence
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return)
    assert desk.commands == sent
    assert not window.board.isVisible()


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


def test_that_a_warning_that_was_put_off_may_still_be_heard(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    put_off = replace(AIR_WARNING, state=WarningState.REMIND, sound=False, remind_ms=NOW_MS + 600_000)
    window = shown(replace(FOUR_WARNED, warnings=(put_off,)))
    names = [one.text() for one in window.page.sentence.findChildren(QPushButton) if one.isVisibleTo(window)]
    assert names == ["Heard"]
    assert "put off until" in window.page.sentence.accessibleName()
    activate(window, qtbot)
    qtbot.keyClick(window, Qt.Key.Key_H, Qt.KeyboardModifier.ControlModifier)
    assert desk.commands == [HearWarning(warning_key="w1")]


def test_that_long_advice_stands_above_the_answers_and_short_advice_beside_them(
    shown: Show, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    advised = {
        "Warm the room gently; keep the heater's air off the pieces, and the heater clear of fabric.": True,
        "Turn it off.": False,
    }
    window = shown(FOUR_WARNED)
    window.resize(1270, 760)
    for advice, is_below in advised.items():
        desk.publish(replace(FOUR_WARNED, sentence=replace(FOUR_WARNED.sentence, advice=advice)))
        words = window.page.sentence._advice
        qtbot.waitUntil(lambda advice=advice, words=words: words.text() == advice)
        QApplication.processEvents()
        heard = push(window.page.sentence, "Heard")
        assert (heard.geometry().top() > words.geometry().bottom()) is is_below
        assert window.page.sentence.rect().contains(heard.geometry())
        assert words.height() >= words.heightForWidth(words.width())


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


def test_that_a_ticked_row_stays_greyed_until_its_time_is_over(shown: Show, desk: ScriptedDesk) -> None:
    window = shown(FOUR_WARNED)
    prompts = window.page.prompts
    prompts.views[1].target.click()
    desk.publish(replace(FOUR_WARNED, prompts=(FOUR_WARNED.prompts[0], *FOUR_WARNED.prompts[2:])))
    QApplication.processEvents()
    assert [row.keys[0] for row in prompts.rows] == ["p1", "p2", "p3", "p4", "p5"]
    assert not prompts.views[1].target.isEnabled()
    (waiting,) = prompts.findChildren(QTimer)
    assert waiting.interval() == HELD_MS
    waiting.timeout.emit()
    assert [row.keys[0] for row in prompts.rows] == ["p1", "p3", "p4", "p5"]
    assert prompts.views[1].target.isEnabled()


def asking(step: Step, key: str, piece: str) -> Snapshot:
    prompt = PromptView(key=prompt_key(key, step), due_ms=NOW_MS, text=step.name, piece_key=piece, piece_title="")
    return replace(FOUR_WARNED, prompts=(prompt,))


def test_that_the_milkiness_is_answered_in_a_form_and_then_ticked(
    shown: Show, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    window = shown(asking(Step.CLARITY, "l1", "ladder"))
    window.page.prompts.views[0].target.click()
    assert desk.commands == []
    form = window.findChild(LookDialog)
    assert list(form.answers) == [Finding.CLEAR, Finding.MILKY]
    assert not form.piece_field.isEnabled()
    form.answers[Finding.CLEAR].click()
    ticked = TickPrompt(prompt_key="l1:clarity")
    looked = RecordLook(coat_key="l1", time_ms=NOW_MS, finding=Finding.CLEAR)
    qtbot.waitUntil(lambda: desk.commands == [looked, ticked])
    assert not window.page.prompts.views[0].target.isEnabled()


def test_that_a_recoat_is_ticked_once_the_coat_is_laid(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    window = shown(asking(Step.RECOAT, "o2", "orchard"))
    target = window.page.prompts.views[0].target
    target.click()
    window.findChild(CoatDialog).reject()
    assert desk.commands == []
    assert target.isEnabled()
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    target.click()
    form = window.findChild(CoatDialog)
    assert form.heading.text() == "Lay a coat: Orchard at Low Water"
    form.command_or_fault()
    qtbot.waitUntil(lambda: desk.commands[1:] == [TickPrompt(prompt_key="o2:recoat")])


def test_that_hovering_draws_no_check_mark(shown: Show) -> None:
    target = shown(FOUR_WARNED).page.prompts.views[0].target
    middle = target.rect().center()
    target.setDown(True)
    pressed = target.grab().toImage().pixel(middle)
    target.setDown(False)
    target.setAttribute(Qt.WidgetAttribute.WA_UnderMouse)
    hovered = target.grab().toImage()
    assert hovered.pixel(middle) != pressed
    row = {hovered.pixel(middle.x() + step, middle.y()) for step in range(-6, 7)}
    assert len(row) == 1  # the lit ring alone: a check mark would cross it


def test_that_a_refused_tick_says_why_and_may_be_tried_again(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    window = shown(FOUR_WARNED)
    desk.refuse("That prompt is gone: look at the list again.")
    target = window.page.prompts.views[0].target
    target.click()
    qtbot.waitUntil(lambda: "That prompt is gone" in window.foot.words)
    assert target.isEnabled()


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
