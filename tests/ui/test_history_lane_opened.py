"""The lanes of the room history under mouse and keys: a coat opened, a lane chosen, lanes scrolled."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from pytestqt.qtbot import QtBot

from studiowatch.ui.models.history_view import HOUR_MS
from studiowatch.ui.widgets.history import RoomHistory

from .history_scenes import NOW_MS, snapshot, wheel


def lane_middle(plot: RoomHistory, row: int, time_ms: int) -> QPoint:
    layout = plot.canvas.arrange()
    y = layout.lanes.top_px + (row + 0.5) * layout.rows.row_px
    return QPoint(round(plot.canvas.time_scale(layout).x(time_ms)), round(y))


def test_that_a_double_click_opens_the_coat(qtbot: QtBot, plot: RoomHistory) -> None:
    plot.set_snapshot(snapshot(pieces=3))
    with qtbot.waitSignal(plot.lane_opened) as opened:
        qtbot.mouseDClick(plot.canvas, Qt.MouseButton.LeftButton, pos=lane_middle(plot, 1, NOW_MS - HOUR_MS // 2))
    assert opened.args == ["coat 1"]


def test_that_a_double_click_goes_to_the_time_of_the_coat(qtbot: QtBot, plot: RoomHistory) -> None:
    plot.set_snapshot(snapshot(pieces=3))
    qtbot.mouseDClick(plot.canvas, Qt.MouseButton.LeftButton, pos=lane_middle(plot, 1, NOW_MS - HOUR_MS // 2))
    assert plot.view.start_ms == NOW_MS - 2 * HOUR_MS
    assert NOW_MS + HOUR_MS < plot.view.end_ms < NOW_MS + 2 * HOUR_MS


def test_that_a_double_click_on_an_empty_part_of_a_lane_opens_its_topmost_coat(qtbot: QtBot, plot: RoomHistory) -> None:
    plot.set_snapshot(snapshot(pieces=3))
    with qtbot.waitSignal(plot.lane_opened) as opened:
        qtbot.mouseDClick(plot.canvas, Qt.MouseButton.LeftButton, pos=lane_middle(plot, 2, NOW_MS - 6 * HOUR_MS))
    assert opened.args == ["coat 2"]


def test_that_a_single_click_moves_nothing(qtbot: QtBot, plot: RoomHistory) -> None:
    plot.set_snapshot(snapshot(pieces=3))
    before = plot.view
    with qtbot.assertNotEmitted(plot.lane_opened):
        qtbot.mouseClick(plot.canvas, Qt.MouseButton.LeftButton, pos=lane_middle(plot, 1, NOW_MS - HOUR_MS // 2))
    assert plot.view == before


def test_that_a_double_click_on_the_curves_opens_nothing(qtbot: QtBot, plot: RoomHistory) -> None:
    plot.set_snapshot(snapshot(pieces=3))
    with qtbot.assertNotEmitted(plot.lane_opened):
        qtbot.mouseDClick(plot.canvas, Qt.MouseButton.LeftButton, pos=QPoint(300, 120))


def test_that_keys_choose_a_lane_bring_it_into_view_and_open_it(qtbot: QtBot, plot: RoomHistory) -> None:
    plot.set_snapshot(snapshot(pieces=30))
    for _ in range(31):
        qtbot.keyClick(plot, Qt.Key.Key_Down)
    assert plot.canvas.scroll_px == pytest.approx(plot.canvas.arrange().rows.furthest_px)
    with qtbot.waitSignal(plot.lane_opened) as opened:
        qtbot.keyClick(plot, Qt.Key.Key_Return)
    assert opened.args == ["coat 29"]


def test_that_the_wheel_scrolls_lanes_that_do_not_fit_instead_of_zooming(plot: RoomHistory) -> None:
    plot.set_snapshot(snapshot(pieces=30))
    view = plot.view
    wheel(plot, QPointF(lane_middle(plot, 1, NOW_MS)), -2)
    assert plot.canvas.scroll_px > 0
    assert plot.view == view


def test_that_a_rack_that_shrinks_lets_go_of_the_chosen_lane(qtbot: QtBot, plot: RoomHistory) -> None:
    plot.set_snapshot(snapshot(pieces=3))
    for _ in range(3):
        qtbot.keyClick(plot, Qt.Key.Key_Down)
    plot.set_snapshot(snapshot(pieces=1))
    with qtbot.assertNotEmitted(plot.lane_opened):
        qtbot.keyClick(plot, Qt.Key.Key_Return)
