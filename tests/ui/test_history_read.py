"""The room history and its log: what is asked, what is taken in, what is said where nothing was read."""

from __future__ import annotations

from dataclasses import replace

from pytestqt.qtbot import QtBot

from studiowatch.service.snapshot import RoomView
from studiowatch.ui.models.empty import NO_READING
from studiowatch.ui.models.history_live import RoomData
from studiowatch.ui.models.history_view import HOUR_MS, View
from studiowatch.ui.widgets.history import RoomHistory
from studiowatch.ui.widgets.history_worker import Answer

from .history_scenes import NOW_MS, HourOfReadings, NothingRead, snapshot


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
    asked = filled._questions.serial
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
    filled.apply(Answer(serial=filled._questions.serial, trouble="The log cannot be read now: locked"))
    assert filled.canvas.trouble
    filled.set_snapshot(snapshot(NOW_MS + 1000))
    qtbot.waitUntil(lambda: not filled.canvas.trouble)


def test_that_a_hidden_plot_reads_nothing_and_catches_up_when_shown(qtbot: QtBot, filled: RoomHistory) -> None:
    filled.hide()
    asked = filled._questions.serial
    filled.set_snapshot(snapshot(NOW_MS + 2 * HOUR_MS))
    assert filled._questions.serial == asked
    filled.show()
    assert filled._questions.serial == asked + 1
    qtbot.waitUntil(lambda: filled._questions.oldest_serial == asked + 1)


def test_that_moving_about_while_hidden_reads_nothing(filled: RoomHistory) -> None:
    filled.hide()
    asked = filled._questions.serial
    filled.set_span("day")
    assert filled._questions.serial == asked


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
