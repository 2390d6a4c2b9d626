"""Choosing a stretch of time in the room history."""

from __future__ import annotations

from datetime import UTC

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtWidgets import QApplication, QMenu
from pytestqt.qtbot import QtBot

from studiowatch.coats.stages import Surface
from studiowatch.ui.models.history_range import TimeRange, beginning_ms, dragged, dried_within, stepped
from studiowatch.ui.models.history_view import View
from studiowatch.ui.models.times import DAY_MS, HOUR_MS, MINUTE_MS
from studiowatch.ui.widgets.history import RoomHistory

from .scenes import FOUR_WARNED, NOW_MS

VIEW = View(start_ms=NOW_MS - 10 * HOUR_MS, end_ms=NOW_MS, following=False)
SHIFT = Qt.KeyboardModifier.ShiftModifier
LEFT = Qt.MouseButton.LeftButton


@given(anchor=st.floats(-1e6, 1e6), to=st.floats(-1e6, 1e6))
def test_that_a_range_never_reaches_beyond_now_and_is_at_least_a_second(anchor: float, to: float) -> None:
    found = dragged(anchor, to, 0)
    if found is None:
        assert abs(min(round(anchor), 0) - min(round(to), 0)) < 1000
    else:
        assert found.first_ms <= found.last_ms <= 0
        assert found.length_ms >= 1000


def test_that_keys_grow_it_shrink_it_and_turn_it_over() -> None:
    one = stepped(None, 1, VIEW, NOW_MS - 5 * HOUR_MS, NOW_MS)
    assert one == TimeRange(anchor_ms=NOW_MS - 5 * HOUR_MS, end_ms=NOW_MS - 5 * HOUR_MS + 12 * MINUTE_MS)
    assert stepped(one, -1, VIEW, 0.0, NOW_MS) is None
    over = stepped(one, -2, VIEW, 0.0, NOW_MS)
    assert over is not None
    assert (over.first_ms, over.last_ms) == (NOW_MS - 5 * HOUR_MS - 12 * MINUTE_MS, NOW_MS - 5 * HOUR_MS)


def test_that_by_keyboard_it_begins_at_the_pointer_else_at_now_else_in_the_middle() -> None:
    assert beginning_ms(NOW_MS - 7.0, VIEW, NOW_MS) == NOW_MS - 7
    assert beginning_ms(None, VIEW, NOW_MS) == NOW_MS
    assert beginning_ms(None, VIEW, NOW_MS + DAY_MS) == NOW_MS - 5 * HOUR_MS


def test_that_it_says_from_to_and_how_long() -> None:
    one = TimeRange(anchor_ms=NOW_MS, end_ms=NOW_MS - 98 * MINUTE_MS)  # 4 March 2026, 14:12 UTC, a Wednesday
    assert one.words(VIEW, UTC) == "Wed 4 Mar 12:34 to 14:12, 1 h 38 min"
    days = TimeRange(anchor_ms=NOW_MS - 2 * DAY_MS, end_ms=NOW_MS)
    assert days.words(VIEW, UTC) == "Mon 2 Mar 14:12 to Wed 4 Mar 14:12, 2 days"


@pytest.fixture
def plot(qtbot: QtBot) -> RoomHistory:
    shown = RoomHistory()
    qtbot.addWidget(shown)
    shown.resize(900, 620)
    shown.show()
    shown.set_snapshot(FOUR_WARNED)
    shown._move(VIEW)
    return shown


def at(plot: RoomHistory, time_ms: int) -> QPoint:
    layout = plot.canvas.arrange()
    return QPoint(round(plot.canvas.time_scale(layout).x(time_ms)), round(layout.panels[0].plot.top_px + 5))


def test_that_a_drag_with_shift_chooses_a_range_and_moves_nothing(qtbot: QtBot, plot: RoomHistory) -> None:
    told: list[TimeRange | None] = []
    plot.range_chosen.connect(told.append)
    qtbot.mousePress(plot.canvas, LEFT, SHIFT, at(plot, NOW_MS - 6 * HOUR_MS))
    qtbot.mouseMove(plot.canvas, at(plot, NOW_MS - 3 * HOUR_MS))
    qtbot.mouseRelease(plot.canvas, LEFT, SHIFT, at(plot, NOW_MS - 3 * HOUR_MS))
    chosen = plot.canvas.chosen_range
    assert chosen is not None
    pixel_ms = plot.canvas.time_scale(plot.canvas.arrange()).ms_per_px
    assert chosen.first_ms == pytest.approx(NOW_MS - 6 * HOUR_MS, abs=pixel_ms)
    assert chosen.last_ms == pytest.approx(NOW_MS - 3 * HOUR_MS, abs=pixel_ms)
    assert told[-1] == chosen
    assert plot.view == VIEW
    assert plot.shown_range == chosen


def test_that_shift_and_arrows_choose_and_escape_drops(qtbot: QtBot, plot: RoomHistory) -> None:
    plot.canvas.pointer = QPointF(at(plot, NOW_MS - 6 * HOUR_MS))
    qtbot.keyClick(plot, Qt.Key.Key_Right, SHIFT)
    qtbot.keyClick(plot, Qt.Key.Key_Right, SHIFT)
    chosen = plot.canvas.chosen_range
    assert chosen is not None
    assert chosen.length_ms == 24 * MINUTE_MS
    assert plot.view == VIEW
    qtbot.keyClick(plot, Qt.Key.Key_Escape)
    assert plot.canvas.chosen_range is None


def test_that_without_a_range_what_is_shown_and_behind_now_counts(plot: RoomHistory) -> None:
    plot._move(View(start_ms=NOW_MS - HOUR_MS, end_ms=NOW_MS + HOUR_MS, following=False))
    assert (plot.shown_range.first_ms, plot.shown_range.last_ms) == (NOW_MS - HOUR_MS, NOW_MS)


def test_that_a_range_is_shaded(plot: RoomHistory) -> None:
    place = at(plot, NOW_MS - 5 * HOUR_MS)
    before = plot.canvas.grab().toImage().pixelColor(place)
    plot.canvas.chosen_range = TimeRange(anchor_ms=NOW_MS - 6 * HOUR_MS, end_ms=NOW_MS - 4 * HOUR_MS)
    assert plot.canvas.grab().toImage().pixelColor(place) != before
    beside = at(plot, NOW_MS - 7 * HOUR_MS)
    assert plot.canvas.grab().toImage().pixelColor(beside) == before


def menu_of(plot: RoomHistory, qtbot: QtBot) -> list[str]:
    layout = plot.canvas.arrange()
    place = QPoint(round(layout.left_px + 50), round(layout.lanes.top_px + layout.rows.row_px / 2))
    from PySide6.QtGui import QContextMenuEvent  # noqa: PLC0415 - only here

    QApplication.sendEvent(
        plot, QContextMenuEvent(QContextMenuEvent.Reason.Mouse, place, plot.canvas.mapToGlobal(place))
    )
    qtbot.waitUntil(lambda: bool(plot.findChildren(QMenu)))
    (menu,) = plot.findChildren(QMenu)
    words = [action.text() for action in menu.actions()]
    menu.close()
    return words


def test_that_a_review_is_offered_only_where_someone_gives_one(qtbot: QtBot, plot: RoomHistory) -> None:
    assert len(menu_of(plot, qtbot)) == 1
    plot.review_asked.connect(lambda _: None)
    qtbot.waitUntil(lambda: not plot.findChildren(QMenu))
    assert len(menu_of(plot, qtbot)) == 2


def test_that_what_dried_in_a_range_can_be_reviewed(plot: RoomHistory) -> None:
    asked: list[str] = []
    plot.review_asked.connect(asked.append)
    assert not plot.review_range()
    whole = TimeRange(anchor_ms=NOW_MS - 30 * MINUTE_MS, end_ms=NOW_MS)
    drying = dried_within(whole, plot.canvas.lanes)
    wet = {coat.key for piece in FOUR_WARNED.pieces for coat in piece.coats if coat.surface is Surface.WET}
    assert wet
    assert wet <= {key for key, _ in drying}
    plot.canvas.chosen_range = whole
    assert plot.review_range()
    (menu,) = plot.findChildren(QMenu)
    first = menu.actions()[0]
    assert drying[0][1] in first.text()
    first.trigger()
    assert asked == [drying[0][0]]
    menu.close()


def test_that_a_range_before_any_coat_was_laid_offers_nothing(plot: RoomHistory) -> None:
    laid = [coat.laid_ms for piece in FOUR_WARNED.pieces for coat in piece.coats if coat.laid_ms is not None]
    before = TimeRange(anchor_ms=min(laid) - DAY_MS, end_ms=min(laid) - HOUR_MS)
    assert dried_within(before, plot.canvas.lanes) == ()
