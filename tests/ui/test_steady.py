"""Words that change with each reading lay the page out anew only where they need another height."""

from __future__ import annotations

from PySide6.QtWidgets import QApplication, QLabel, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from studiowatch.ui.widgets.steady import Steady

from . import counting
from .counting import EventCount

MARGIN_PX = 8
LONG = "The film is 4.2 °C above the dew point (13.5 °C), and two pieces are still drying. " * 2


def settle() -> None:
    """Have what was asked for laid out, and what is asked for then."""
    for _ in range(4):
        QApplication.processEvents()


def page_with(qtbot: QtBot, label: QLabel) -> tuple[QWidget, EventCount]:
    page = QWidget()
    qtbot.addWidget(page)
    column = QVBoxLayout(page)
    column.setContentsMargins(MARGIN_PX, MARGIN_PX, MARGIN_PX, MARGIN_PX)
    column.addWidget(Steady(label))
    column.addStretch(1)
    page.resize(300, 300)
    page.show()
    qtbot.waitExposed(page)
    settle()
    return page, counting.layouts(page)


def test_that_words_as_tall_as_before_do_not_lay_the_page_out(qtbot: QtBot) -> None:
    label = QLabel("dew point 13.4 °C")
    page, layouts = page_with(qtbot, label)
    label.setText("dew point 13.5 °C, and more of it")
    settle()
    assert layouts.count == 0
    assert label.width() == page.contentsRect().width() - 2 * MARGIN_PX


def test_that_words_that_wrap_have_the_height_they_need(qtbot: QtBot) -> None:
    label = QLabel("Calm.")
    label.setWordWrap(True)
    _, layouts = page_with(qtbot, label)
    one_line = label.height()
    label.setText(LONG)
    settle()
    assert layouts.count
    assert label.height() >= label.heightForWidth(label.width()) > one_line
    label.setText("Calm.")
    settle()
    assert label.height() == one_line


def test_that_words_that_came_at_another_width_have_their_own_height_where_the_old_ones_were_laid_out(
    qtbot: QtBot,
) -> None:
    label = QLabel("missed, was due 12:42 · Blue Ladder")
    label.setWordWrap(True)
    page, _ = page_with(qtbot, label)
    one_line = label.height()
    narrow = label.sizeHint().width() // 2 + 2 * MARGIN_PX
    page.resize(narrow, 300)
    settle()
    assert label.height() > one_line
    page.resize(300, 300)
    settle()
    label.setText("now")  # one line too at this width
    settle()
    page.resize(narrow, 300)
    settle()
    assert label.height() == one_line


def test_that_words_that_came_out_of_sight_have_their_own_height_once_they_are_seen(qtbot: QtBot) -> None:
    label = QLabel(LONG)
    label.setWordWrap(True)
    page, _ = page_with(qtbot, label)
    page.hide()
    label.setText("Calm.")
    page.show()
    settle()
    assert label.height() == label.heightForWidth(label.width()) < 2 * label.fontMetrics().height()
    page.hide()
    label.setText(LONG)
    page.show()
    settle()
    assert label.height() == label.heightForWidth(label.width()) > 2 * label.fontMetrics().height()
