"""The room history as a widget: moving about, asking the log, its lanes."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import numpy as np
import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QPainter, QWheelEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from studiowatch.coats.stages import Orientation, Stage, Surface
from studiowatch.room.readings import Channel
from studiowatch.service.board_view import BoardView
from studiowatch.service.ports import PastView, Series
from studiowatch.service.snapshot import CoatView, PieceView, RoomView, Snapshot, StageTime
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.models.empty import NO_READING
from studiowatch.ui.models.history_live import EMPTY, RoomData
from studiowatch.ui.models.history_panels import panels_of
from studiowatch.ui.models.history_view import HOUR_MS, Span, View
from studiowatch.ui.widgets.history import RoomHistory
from studiowatch.ui.widgets.history_title import TitlePainter
from studiowatch.ui.widgets.history_worker import Answer

NOW_MS = 1_795_000_000_000
VALUES = {Channel.TEMPERATURE: 20.0, Channel.HUMIDITY: 50.0, Channel.AIR_SPEED: 0.05}


class HourOfReadings:
    """An hour at one reading a second, all the same, whatever is asked for."""

    def __init__(self) -> None:
        self.closed = False

    def span_ms(self) -> tuple[int, int] | None:
        return NOW_MS - HOUR_MS, NOW_MS

    def series(self, channel: Channel, start_ms: int, end_ms: int, buckets: int) -> Series:
        del start_ms, end_ms, buckets
        return flat_hour(VALUES.get(channel, 0.0))

    def past(self) -> PastView:
        return PastView()

    def close(self) -> None:
        self.closed = True


def flat_hour(value: float, before_ms: int = 0) -> Series:
    time_ms = NOW_MS - before_ms + 1000 * np.arange(-3600, 0)
    values = np.full(3600, value)
    return Series(time_ms=time_ms, low=values, high=values, mean=values, bucket_ms=1000)


def coat(key: str) -> CoatView:
    return CoatView(
        key=key,
        sheet="sheet",
        label="gloss 1",
        sheen="gloss",
        clear_film=True,
        laid_ms=NOW_MS - HOUR_MS,
        surface=Surface.WET,
        milky=False,
        wet_um=100.0,
        dry_um=40.0,
        stages=(StageTime(stage=Stage.DRY_TO_RECOAT, time_ms=NOW_MS + HOUR_MS, reached=False),),
    )


def piece(key: str) -> PieceView:
    return PieceView(
        key=key,
        title=f"Piece {key}",
        width_cm=60,
        height_cm=90,
        support="canvas",
        orientation=Orientation.FACE_UP,
        due=None,
        coats=(coat(f"coat {key}"),),
    )


def snapshot(time_ms: int = NOW_MS, pieces: int = 0) -> Snapshot:
    return Snapshot(
        time_ms=time_ms,
        board=BoardView(),
        room=RoomView(time_ms=time_ms, film_C=18.5),
        sentence=Sentence(level=Level.CALM, headline=""),
        pieces=tuple(piece(str(number)) for number in range(pieces)),
    )


@pytest.fixture
def plot(qtbot: QtBot) -> Iterator[RoomHistory]:
    """Show a history without a log."""
    shown = RoomHistory()
    qtbot.addWidget(shown)
    shown.resize(700, 560)
    shown.set_snapshot(snapshot())
    with qtbot.waitExposed(shown):
        shown.show()
    yield shown
    shown.stop()


@pytest.fixture
def filled(qtbot: QtBot, plot: RoomHistory) -> RoomHistory:
    """Show one with an hour of readings in view."""
    plot.set_history(HourOfReadings())
    plot.set_span("week")
    qtbot.waitUntil(lambda: len(plot.canvas.data.temperature.time_ms) > 0)
    return plot


def wheel(plot: RoomHistory, place: QPointF, notches: int) -> None:
    where = QPointF(plot.canvas.mapToGlobal(place.toPoint()))
    event = QWheelEvent(
        place,
        where,
        QPoint(),
        QPoint(0, 120 * notches),
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier,
        Qt.ScrollPhase.NoScrollPhase,
        False,  # noqa: FBT003 - Qt's own signature
    )
    QApplication.sendEvent(plot, event)  # a made-up wheel event does not rise from child to parent, a real one does


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


def test_that_dragging_moves_time_with_the_pointer(qtbot: QtBot, plot: RoomHistory) -> None:
    scale = plot.canvas.time_scale(plot.canvas.arrange())
    grabbed_ms = scale.time_ms(300)
    qtbot.mousePress(plot.canvas, Qt.MouseButton.LeftButton, pos=QPoint(300, 150))
    qtbot.mouseMove(plot.canvas, QPoint(360, 150))
    qtbot.mouseRelease(plot.canvas, Qt.MouseButton.LeftButton, pos=QPoint(360, 150))
    after = plot.canvas.time_scale(plot.canvas.arrange())
    assert after.time_ms(360) == pytest.approx(grabbed_ms, abs=2 * after.ms_per_px)


def test_that_the_log_is_shown_once_read(filled: RoomHistory) -> None:
    data = filled.canvas.data
    assert data.temperature.mean.min() == data.temperature.mean.max() == 20.0
    assert len(data.dew.time_ms) == len(data.temperature.time_ms)
    assert not filled.canvas.trouble


def test_that_an_answer_to_an_older_question_is_dropped(filled: RoomHistory) -> None:
    shown = filled.canvas.data
    filled.set_span("day")
    filled.apply(Answer(serial=1, data=RoomData()))
    assert filled.canvas.data is shown


def test_that_nothing_is_taken_in_after_stop(filled: RoomHistory) -> None:
    shown = filled.canvas.data
    asked = filled._serial
    filled.stop()
    filled.apply(Answer(serial=asked, data=RoomData()))
    assert filled.canvas.data is shown


def test_that_stop_closes_the_log_and_may_be_called_again(plot: RoomHistory) -> None:
    history = HourOfReadings()
    plot.set_history(history)
    plot.stop()
    plot.stop()
    assert history.closed


def test_that_trouble_with_the_log_is_told_and_the_next_snapshot_asks_again(qtbot: QtBot, filled: RoomHistory) -> None:
    filled.apply(Answer(serial=filled._serial, trouble="The log cannot be read now: locked"))
    assert filled.canvas.trouble
    filled.set_snapshot(snapshot(NOW_MS + 1000))
    qtbot.waitUntil(lambda: not filled.canvas.trouble)


def test_that_a_hidden_plot_reads_nothing_and_catches_up_when_shown(qtbot: QtBot, filled: RoomHistory) -> None:
    filled.hide()
    asked = filled._serial
    filled.set_snapshot(snapshot(NOW_MS + 2 * HOUR_MS))
    assert filled._serial == asked
    filled.show()
    assert filled._serial == asked + 1
    qtbot.waitUntil(lambda: filled._oldest_serial == asked + 1)


def test_that_moving_about_while_hidden_reads_nothing(filled: RoomHistory) -> None:
    filled.hide()
    asked = filled._serial
    filled.set_span("day")
    assert filled._serial == asked


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


class NothingRead(HourOfReadings):
    """A log without a reading."""

    def span_ms(self) -> tuple[int, int] | None:
        return None

    def series(self, channel: Channel, start_ms: int, end_ms: int, buckets: int) -> Series:
        del channel, start_ms, end_ms, buckets
        return EMPTY


def test_that_an_empty_log_promises_readings_and_an_empty_stretch_says_so(qtbot: QtBot, plot: RoomHistory) -> None:
    assert plot.canvas._empty_words() == ""  # nothing was asked yet
    plot.set_snapshot(replace(snapshot(), room=RoomView(time_ms=NOW_MS)))
    plot.set_history(NothingRead())
    qtbot.waitUntil(lambda: plot.canvas.empty_log)
    assert plot.canvas._empty_words() == NO_READING
    plot.set_history(HourOfReadings())
    qtbot.waitUntil(lambda: len(plot.canvas.data.temperature.time_ms) > 0)
    assert plot.canvas._empty_words() == ""
    plot._move(View(start_ms=NOW_MS - 9 * HOUR_MS, end_ms=NOW_MS - 5 * HOUR_MS, following=False))
    qtbot.waitUntil(lambda: plot.canvas._empty_words() == "no readings in this stretch")


def test_that_hovering_says_nothing_of_a_film_where_nothing_was_wet(plot: RoomHistory) -> None:
    dry = RoomData(temperature=flat_hour(20.0), dew=flat_hour(9.0))
    temperature = panels_of(dry, flat_hour(18.0, before_ms=2 * HOUR_MS), None)[0]
    layout = plot.canvas.arrange()
    paper = plot.canvas._paper(QPainter(), layout)
    words = TitlePainter(paper, temperature, layout.panels[0].title).words(NOW_MS - HOUR_MS // 2)
    assert [word.text for word in words] == ["air", "20.0", "dew point", "9.0"]


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
