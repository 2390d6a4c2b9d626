"""Putting off, calling, quiet hours, trying the sound, the tray, and why a limit is what it is."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC
from itertools import combinations
from pathlib import Path

import pytest
from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QColor, QFontMetrics, QIcon, QImage
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from studiowatch.service.commands import HearWarning, RemindLater
from studiowatch.service.login_entry import LoginEntry
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.words import Level
from studiowatch.ui.app import app_icon, build_window
from studiowatch.ui.models.alarm import LOUDNESS, REPEAT_S, Sound, Step
from studiowatch.ui.models.notices import warning_rows
from studiowatch.ui.models.quiet_hours import QuietHours
from studiowatch.ui.models.reminders import IN_TEN, IN_THIRTY, ONCE_DRY, dry_at_ms, reminders
from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.style import Style
from studiowatch.ui.theme import LIGHT
from studiowatch.ui.tray import marked
from studiowatch.ui.warning_deeds import NOTHING_HEARD, NOTHING_WAITS, SOUNDED
from studiowatch.ui.widgets.quiet_dialog import QuietDialog
from studiowatch.ui.widgets.sentence import HEARD_WORDS
from studiowatch.ui.widgets.warning_answers import WHY, OpenAnswers
from studiowatch.ui.widgets.warning_rows import WarningRowView

from .conftest import KeptSpeaker, KeptTray, Show, StandInPlot, push
from .scenes import AIR, AIR_WARNING, EMPTY, FOUR_CALM, FOUR_WARNED, NOW_MS, MadeUpHistory, ScriptedClock, ScriptedDesk

pytestmark = pytest.mark.window
MINUTE_MS = 60_000


def test_that_a_warning_may_wait_ten_minutes_thirty_or_until_its_coats_are_dry() -> None:
    choices = reminders(FOUR_WARNED, AIR_WARNING, NOW_MS)
    assert [one.words for one in choices] == [IN_TEN, IN_THIRTY, ONCE_DRY]
    assert [one.until_ms - NOW_MS for one in choices[:2]] == [10 * MINUTE_MS, 30 * MINUTE_MS]
    assert choices[2].until_ms == dry_at_ms(FOUR_WARNED, AIR_WARNING) > NOW_MS


def test_that_a_coat_whose_time_is_not_in_sight_offers_no_such_choice() -> None:
    bare = replace(FOUR_WARNED, pieces=tuple(replace(piece, coats=()) for piece in FOUR_WARNED.pieces))
    assert [one.words for one in reminders(bare, AIR_WARNING, NOW_MS)] == [IN_TEN, IN_THIRTY]


def test_that_the_menu_puts_off_by_the_choice(shown: Show, desk: ScriptedDesk, clock: ScriptedClock) -> None:
    window = shown(FOUR_WARNED)
    menu = window.warned.menu_for(AIR_WARNING.key)
    assert [action.text() for action in menu.actions()] == [IN_TEN, IN_THIRTY, ONCE_DRY]
    menu.actions()[1].trigger()
    assert desk.commands[-1] == RemindLater(warning_key=AIR_WARNING.key, until_ms=clock.utc_ms() + 30 * MINUTE_MS)


def test_that_nothing_to_answer_is_said(shown: Show) -> None:
    window = shown(EMPTY)
    window.warned.put_off_first(2)
    assert NOTHING_WAITS in window.foot.words


def test_that_who_does_not_react_is_called_and_then_the_window_comes(
    shown: Show, speaker: KeptSpeaker, clock: ScriptedClock, tray: KeptTray, qtbot: QtBot
) -> None:
    tray.exists = True
    window = shown(FOUR_WARNED)
    window.close()
    assert not window.isVisible()
    before = len(tray.said)
    for _ in range(6):
        clock.seconds += REPEAT_S
        window.feed._tick()
    assert speaker.loud == [LOUDNESS[Step.SOUND]] * 3 + [LOUDNESS[Step.CALL]] * 3 + [LOUDNESS[Step.FRONT]]
    assert tray.said[before:] == [AIR]
    qtbot.waitUntil(window.isVisible)


def test_that_where_nothing_is_heard_the_sentence_flashes(shown: Show, speaker: KeptSpeaker, qtbot: QtBot) -> None:
    speaker.trouble = "no sound on this machine"
    window = shown(FOUR_WARNED)
    assert window.page.sentence.property("flash") == "true"
    qtbot.waitUntil(lambda: window.page.sentence.property("flash") == "false")


def test_that_the_words_stand_out_while_the_card_flashes(shown: Show, speaker: KeptSpeaker, qtbot: QtBot) -> None:
    speaker.trouble = "no sound on this machine"
    window = shown(FOUR_WARNED)
    card = window.page.sentence
    headline = next(label for label in card.findChildren(QLabel) if label.text() == card.headline)
    ground, words = QColor(LIGHT.act), headline.palette().color(headline.foregroundRole())
    assert words == QColor(LIGHT.card) != ground
    qtbot.waitUntil(lambda: card.property("flash") == "false")
    assert headline.palette().color(headline.foregroundRole()) == ground


@pytest.mark.parametrize(("trouble", "words"), [("", SOUNDED), ("no sound", NOTHING_HEARD)])
def test_that_the_sound_may_be_tried(shown: Show, speaker: KeptSpeaker, trouble: str, words: str) -> None:
    speaker.trouble = trouble
    window = shown(EMPTY)
    window.warned.try_sound()
    assert (speaker.played, speaker.loud) == ([Sound.INSISTENT], [1.0])
    assert words in window.foot.words


def test_that_quiet_hours_are_chosen_kept_and_heeded(
    shown: Show, settings: ViewSettings, speaker: KeptSpeaker, clock: ScriptedClock
) -> None:
    window = shown(EMPTY)
    form = window.warned.choose_quiet_hours()
    assert isinstance(form, QuietDialog)
    assert not form.from_field.isEnabled()
    form.on_field.setChecked(True)
    form.from_field.setCurrentText("00:00")
    form.to_field.setCurrentText("00:00")
    push(form, "Take it").click()
    assert settings.quiet_hours == QuietHours(on=True, from_min=0, to_min=0)
    assert "Quiet from 00:00 to 00:00." in window.foot.words
    shown(FOUR_WARNED)
    clock.seconds += 10 * REPEAT_S
    window.feed._tick()
    assert len(speaker.played) == 1
    assert speaker.loud[0] < LOUDNESS[Step.SOUND]


def test_that_quiet_hours_dropped_change_nothing(shown: Show, settings: ViewSettings, qtbot: QtBot) -> None:
    form = shown(EMPTY).warned.choose_quiet_hours()
    form.on_field.setChecked(True)
    qtbot.keyClick(form, Qt.Key.Key_Escape)
    assert not settings.quiet_hours.on


def test_that_a_limit_names_its_basis_on_request(shown: Show) -> None:
    based = replace(AIR_WARNING, basis="Draught rate of ISO 7730.")
    window = shown(replace(FOUR_WARNED, warnings=(based,)))
    row = next(one for one in window.page.findChildren(OpenAnswers) if one.isVisible())
    assert not row._basis.isVisible()
    push(row, WHY).click()
    assert row._basis.isVisible()
    assert row._basis.text() == based.basis
    assert based.basis in window.page.sentence.toolTip()


def test_that_answers_are_made_for_an_open_warning_only_and_gone_once_it_is_past(
    shown: Show, desk: ScriptedDesk
) -> None:
    past = replace(AIR_WARNING, state=WarningState.CLEARED, cleared_ms=NOW_MS)
    over = replace(FOUR_CALM, warnings=(past,))
    window = shown(over)
    (row,) = window.page.warnings.views
    assert row.findChildren(QWidget) == []
    desk.publish(FOUR_WARNED)
    QApplication.processEvents()
    push(row, HEARD_WORDS).click()
    assert desk.commands[-1] == HearWarning(warning_key=AIR_WARNING.key)
    desk.publish(over)
    QApplication.processEvents()
    assert not any(one.isVisible() for one in row.findChildren(QPushButton))


def test_that_a_row_has_room_for_its_words_answers_and_basis_at_any_width(shown: Show, qtbot: QtBot) -> None:
    based = replace(AIR_WARNING, basis="Draught rate of ISO 7730. " * 5)
    window = shown(replace(FOUR_WARNED, warnings=(based,)))
    (row,) = window.page.warnings.views
    (answers,) = row.findChildren(OpenAnswers)
    line = QFontMetrics(row.font()).height()
    narrow, wide = row.minimumSizeHint().width(), 2000
    assert row.heightForWidth(narrow) >= row.heightForWidth(wide) + 2 * line, "the words wrap where it is narrow"
    before = row.height()
    push(row, WHY).click()
    qtbot.waitUntil(lambda: row.height() >= before + line)
    assert answers.geometry().top() > 2 * line
    assert row.rect().contains(answers.geometry())
    push(row, WHY).click()
    qtbot.waitUntil(lambda: row.height() == before)


def test_that_no_answer_is_cut_off_beside_the_bar_at_twice_the_text(shown: Show, qtbot: QtBot) -> None:
    based = replace(AIR_WARNING, basis="Draught rate of ISO 7730. " * 5)
    window = shown(replace(FOUR_WARNED, warnings=(based, *FOUR_WARNED.warnings)))
    window.dressing.set_text_pct(200)
    window.resize(1270, 760)
    row, *_ = window.page.warnings.views
    seen = window.page.warnings._scroll.viewport()
    QApplication.processEvents()
    qtbot.waitUntil(lambda: row.width() <= seen.width(), timeout=5_000)
    answers = [one for one in row.findChildren(QPushButton) if not one.isHidden()]
    assert len(answers) == 4
    for one in answers:
        assert one.width() >= one.sizeHint().width()
        assert seen.rect().right() >= one.mapTo(seen, one.rect().topRight()).x()
    boxes = [QRect(one.mapTo(row, one.rect().topLeft()), one.size()) for one in answers]
    assert not any(one.intersects(other) for one, other in combinations(boxes, 2))
    assert all(row.rect().contains(box) for box in boxes)


def test_that_a_row_draws_what_and_since_when_in_the_text_size_of_the_window(qtbot: QtBot) -> None:
    (shown_row,) = warning_rows(replace(FOUR_WARNED, warnings=(AIR_WARNING,)), UTC)
    past = replace(shown_row, is_open=False, can_hear=False, can_remind=False)
    tall = {}
    for scale in (1.0, 2.0):
        row = WarningRowView(lambda _: None)
        qtbot.addWidget(row)
        row.set_style(Style(scale=scale))
        row.set_row(past)
        tall[scale] = row.heightForWidth(3000)
        row.resize(3000, tall[scale])
        drawn = row.grab().toImage()
        row.set_row(replace(past, when=""))
        assert row.grab().toImage() != drawn
        row.set_row(replace(past, headline=""))
        assert row.grab().toImage() != drawn
    assert tall[2.0] == pytest.approx(2 * tall[1.0], rel=0.1)


def test_that_the_tray_follows_the_sentence_while_the_window_is_away(shown: Show, tray: KeptTray) -> None:
    tray.exists = True
    window = shown(FOUR_CALM)
    window.close()
    window._parts.desk.publish(FOUR_WARNED)
    QApplication.processEvents()
    sentence, prompt = tray.shown[-1]
    assert sentence == FOUR_WARNED.sentence
    assert prompt
    tray.across_asked.emit()
    assert window.pages.currentWidget() is window.across


def image(icon: QIcon, side: int) -> QImage:
    return icon.pixmap(side, side).toImage().convertToFormat(QImage.Format.Format_Alpha8)


@pytest.mark.parametrize("side", [16, 22, 64])
@pytest.mark.usefixtures("qapp")
def test_that_the_levels_differ_in_the_tray_by_shape_alone(side: int) -> None:
    shapes = [bytes(image(marked(QIcon(), level), side).constBits()) for level in Level]
    assert len(set(shapes)) == len(shapes)
    assert image(marked(app_icon(), Level.ACT), side) != image(app_icon(), side)


def test_that_the_menu_makes_it_start_at_login(
    desk: ScriptedDesk, clock: ScriptedClock, settings: ViewSettings, tmp_path: Path, qtbot: QtBot
) -> None:
    entry = LoginEntry(path=tmp_path / "autostart" / "studiowatch.desktop", command=("studiowatch",), platform="linux")
    parts = {"settings": settings, "speaker": KeptSpeaker(), "tray": KeptTray(), "make_plot": StandInPlot}
    window = build_window(desk, MadeUpHistory(), clock, login=entry, **parts)
    qtbot.addWidget(window)
    tick = next(action for action in window.actions() if action.text() == "&Start at login")
    assert not tick.isChecked()
    tick.trigger()
    assert entry.is_on
    assert "Opens at login from now on." in window.foot.words
    tick.trigger()
    assert not entry.is_on
    assert "No longer opens at login." in window.foot.words
    window.leave()
