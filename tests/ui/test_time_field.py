"""Times in forms, in the hour that comes twice when clocks are set back.

Europe/Berlin is set back at 01:00 UTC on the last Sunday of October (IANA time zone database): 02:30 is shown at 00:30
UTC, and again at 01:30 UTC.
"""

from __future__ import annotations

from datetime import UTC, datetime

import pytest
from PySide6.QtCore import QDate, QDateTime, QTime
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from studiowatch.speech.units import Degrees
from studiowatch.studio.pieces import Finding, Look
from studiowatch.ui.bridge import Courier
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.coat_when import WhenFields
from studiowatch.ui.widgets.correction_dialogs import LookCorrectionDialog
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.reading_dialog import ReadingDialog

from .scenes import ORCHARD, ScriptedDesk

pytestmark = [pytest.mark.window, pytest.mark.usefixtures("berlin")]
FIRST_MS, SECOND_MS = (round(datetime(2026, 10, 25, hour, 30, tzinfo=UTC).timestamp() * 1000) for hour in (0, 1))
TWICE = pytest.mark.parametrize("time_ms", [FIRST_MS, SECOND_MS], ids=["first", "second"])
MINUTE_MS = 60_000


def window(qtbot: QtBot) -> tuple[QWidget, Courier]:
    parent = QWidget()
    qtbot.addWidget(parent)
    return parent, Courier(ScriptedDesk(), parent)


@TWICE
def test_that_a_look_whose_time_stays_as_it_is_keeps_it(time_ms: int, qtbot: QtBot) -> None:
    parent, courier = window(qtbot)
    form = LookCorrectionDialog(
        title="Orchard",
        coat=ORCHARD.coats[-1],
        look=Look(key="seen", time_ms=time_ms, finding=Finding.TACKY),
        now_ms=lambda: SECOND_MS + 5 * MINUTE_MS,
        courier=courier,
        style=Style(),
        parent=parent,
    )
    form.finding_field.setCurrentIndex(list(Finding).index(Finding.DRY))
    assert (form.read().time_ms, form.read().finding) == (time_ms, Finding.DRY)
    form.time_field.setDateTime(QDateTime(QDate(2026, 10, 24), QTime(22, 0)))  # 20:00 UTC, in summer time
    assert form.read().time_ms == FIRST_MS - round(4.5 * 60 * MINUTE_MS)


@TWICE
def test_that_a_reading_of_now_is_one_of_now(time_ms: int, qtbot: QtBot) -> None:
    parent, courier = window(qtbot)
    form = ReadingDialog(degrees=Degrees.CELSIUS, now_ms=lambda: time_ms, courier=courier, style=Style(), parent=parent)
    form.temperature_field.setText("20.5")
    form.humidity_field.setText("48")
    assert form.read().time_ms == time_ms


@TWICE
def test_that_a_coat_of_ten_minutes_ago_was_laid_ten_minutes_ago(time_ms: int, qtbot: QtBot) -> None:
    parent, courier = window(qtbot)
    when = WhenFields(FormDialog("A coat", courier, Style(), parent), lambda: time_ms)
    qtbot.addWidget(when)
    assert when.time_ms == time_ms
    when.ago[10].click()
    assert when.time_ms == time_ms - 10 * MINUTE_MS
