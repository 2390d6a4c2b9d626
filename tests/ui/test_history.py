"""The room history as a widget: moving about in time, and being painted."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QScrollArea, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from studiowatch.ui.models.history_live import RoomData
from studiowatch.ui.models.history_panels import panels_of
from studiowatch.ui.models.history_view import HOUR_MS, Span
from studiowatch.ui.widgets.history import RoomHistory
from studiowatch.ui.widgets.history_title import TitlePainter

from .history_scenes import NOW_MS, coat, flat_hour, snapshot, wheel


def test_that_the_view_follows_now(plot: RoomHistory) -> None:
    before = plot.view
    plot.set_snapshot(snapshot(NOW_MS + 60_000))
    assert plot.view.start_ms == before.start_ms + 60_000
    assert plot.view.end_ms == before.end_ms + 60_000


def test_that_a_dragged_view_stays_and_home_returns_to_now(qtbot: QtBot, plot: RoomHistory) -> None:
    qtbot.keyClick(plot, Qt.Key.Key_Left)
    away = plot.view
    assert not away.following
    assert plot.chooser.now_button.isVisible()
    assert not any(button.isChecked() for button in plot.chooser.buttons.values())
    plot.set_snapshot(snapshot(NOW_MS + 60_000))
    assert plot.view == away
    qtbot.keyClick(plot, Qt.Key.Key_Home)
    assert plot.view.following
    assert plot.view.width_ms == away.width_ms
    assert plot.view.start_ms < NOW_MS + 60_000 < plot.view.end_ms
    assert not plot.chooser.now_button.isVisible()


def test_that_plus_and_minus_undo_each_other(qtbot: QtBot, plot: RoomHistory) -> None:
    width_ms = plot.view.width_ms
    qtbot.keyClick(plot, Qt.Key.Key_Plus)
    assert plot.view.width_ms < width_ms
    qtbot.keyClick(plot, Qt.Key.Key_Minus)
    assert plot.view.width_ms == pytest.approx(width_ms, abs=2)


@pytest.mark.parametrize("span", Span)
def test_that_a_span_button_shows_its_span_and_stays_down(qtbot: QtBot, plot: RoomHistory, span: Span) -> None:
    button = plot.chooser.buttons[span]
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert plot.view.span is span
    assert [other for other, one in plot.chooser.buttons.items() if one.isChecked()] == [span]


def test_that_an_unknown_span_is_refused(plot: RoomHistory) -> None:
    with pytest.raises(ValueError, match="fortnight"):
        plot.set_span("fortnight")


def test_that_the_wheel_zooms_about_the_pointer(plot: RoomHistory) -> None:
    place = QPointF(300, 150)
    scale = plot.canvas.time_scale(plot.canvas.arrange())
    before_ms = scale.time_ms(place.x())
    wheel(plot, place, 2)
    after = plot.canvas.time_scale(plot.canvas.arrange())
    assert after.ms_per_px < scale.ms_per_px
    assert after.time_ms(place.x()) == pytest.approx(before_ms, abs=after.ms_per_px)


def test_that_in_a_page_that_is_scrolled_the_wheel_zooms_only_with_ctrl(qtbot: QtBot, plot: RoomHistory) -> None:
    page, inside = QScrollArea(), QWidget()
    qtbot.addWidget(page)
    QVBoxLayout(inside).addWidget(plot)
    page.setWidget(inside)
    page.setWidgetResizable(True)
    page.resize(720, 900)
    with qtbot.waitExposed(page):
        page.show()
    assert page.verticalScrollBar().maximum() == 0
    before = plot.canvas.view.width_ms
    assert wheel(plot, QPointF(300, 150), 1)
    zoomed = plot.canvas.view.width_ms
    assert zoomed < before
    inside.setMinimumHeight(1500)
    qtbot.waitUntil(lambda: page.verticalScrollBar().maximum() > 0)
    assert not wheel(plot, QPointF(300, 150), 1)
    assert plot.canvas.view.width_ms == zoomed
    assert wheel(plot, QPointF(300, 150), 1, Qt.KeyboardModifier.ControlModifier)
    assert plot.canvas.view.width_ms < zoomed
    plot.setParent(None)  # which closes it itself


def test_that_dragging_moves_time_with_the_pointer(qtbot: QtBot, plot: RoomHistory) -> None:
    scale = plot.canvas.time_scale(plot.canvas.arrange())
    grabbed_ms = scale.time_ms(300)
    qtbot.mousePress(plot.canvas, Qt.MouseButton.LeftButton, pos=QPoint(300, 150))
    qtbot.mouseMove(plot.canvas, QPoint(360, 150))
    qtbot.mouseRelease(plot.canvas, Qt.MouseButton.LeftButton, pos=QPoint(360, 150))
    after = plot.canvas.time_scale(plot.canvas.arrange())
    assert after.time_ms(360) == pytest.approx(grabbed_ms, abs=2 * after.ms_per_px)


@pytest.mark.parametrize("text_share", [1.0, 2.0])
@pytest.mark.parametrize("pieces", [0, 1, 12])
def test_that_every_size_is_painted_without_a_fault(
    qtbot: QtBot, filled: RoomHistory, text_share: float, pieces: int
) -> None:
    font = filled.font()
    font.setPointSizeF(text_share * font.pointSizeF())
    filled.setFont(font)
    filled.set_snapshot(snapshot(pieces=pieces))
    filled.canvas.pointer = QPointF(400, 500)
    with qtbot.captureExceptions() as faults:
        filled.canvas.grab()
    assert faults == []


def test_that_a_fault_while_painting_is_reported_and_survived(qtbot: QtBot, plot: RoomHistory) -> None:
    plot.canvas.data = replace(RoomData(), temperature=None)  # type: ignore[arg-type]
    plot.canvas.refresh()
    with qtbot.captureExceptions() as faults:
        plot.canvas.grab()
        plot.canvas.data = RoomData()
        plot.canvas.refresh()
        plot.canvas.grab()
    assert [kind for kind, _, _ in faults] == [AttributeError]


def test_that_hovering_says_nothing_of_a_film_where_nothing_was_wet(plot: RoomHistory) -> None:
    dry = RoomData(temperature=flat_hour(20.0), dew=flat_hour(9.0))
    temperature = panels_of(dry, flat_hour(18.0, before_ms=2 * HOUR_MS), None)[0]
    layout = plot.canvas.arrange()
    paper = plot.canvas._paper(QPainter(), layout)
    words = TitlePainter(paper, temperature, layout.panels[0].title).words(NOW_MS - HOUR_MS // 2)
    assert [word.text for word in words] == ["air", "20.0", "dew point", "9.0"]


def test_that_it_has_a_name_and_tells_what_it_shows(plot: RoomHistory) -> None:
    plot.set_snapshot(snapshot(pieces=1))
    assert plot.accessibleName() == "Room history"
    assert "Piece 0: gloss 1 recoat" in plot.accessibleDescription()


def test_that_the_films_own_trace_is_drawn(plot: RoomHistory) -> None:
    shown = snapshot(pieces=1)
    trace = tuple((NOW_MS - minute * 60_000, 18.5) for minute in range(30, 0, -1))
    traced = replace(shown.pieces[0], coats=(replace(coat("coat 0"), film_trace=trace),))
    plot.set_snapshot(replace(shown, pieces=(traced,)))
    assert plot.canvas.film.mean.tolist() == [18.5] * 30
