"""The thread that reads the log."""

from __future__ import annotations

from threading import Event, current_thread

import numpy as np
import psychrolib
import pytest
from pytestqt.qtbot import QtBot

from studiowatch.room.readings import Channel
from studiowatch.service.ports import PastView, Series
from studiowatch.ui.models.history_fetch import Request
from studiowatch.ui.models.history_live import EMPTY
from studiowatch.ui.widgets.history_worker import Answer, HistoryWorker, dew_series

START_MS = 1_795_000_000_000
REQUEST = Request(start_ms=START_MS, end_ms=START_MS + 10_000, buckets=10)


def flat(value: float, first: int = 0, last: int = 10) -> Series:
    values = np.full(last - first, value)
    time_ms = START_MS + 1000 * np.arange(first, last)
    return Series(time_ms=time_ms, low=values, high=values, mean=values, bucket_ms=1000)


class ScriptedHistory:
    """Answers from a table of channels; notes who called and in what order."""

    def __init__(self, series: dict[Channel, Series]) -> None:
        self.of_channel = series
        self.calls: list[str] = []
        self.threads: set[str] = set()
        self.fault: Exception | None = None
        self.entered = Event()
        self.may_go_on = Event()
        self.may_go_on.set()

    def _note(self, call: str) -> None:
        self.calls.append(call)
        self.threads.add(current_thread().name)

    def span_ms(self) -> tuple[int, int] | None:
        self._note("span")
        self.entered.set()
        assert self.may_go_on.wait(10)
        return START_MS, START_MS + 9000

    def series(self, channel: Channel, start_ms: int, end_ms: int, buckets: int) -> Series:
        self._note(f"{channel} {start_ms - START_MS} {end_ms - START_MS} {buckets}")
        if self.fault is not None:
            raise self.fault
        return self.of_channel.get(channel, EMPTY)

    def past(self) -> PastView:
        self._note("past")
        return PastView()

    def close(self) -> None:
        self._note("close")


ROOM = {Channel.TEMPERATURE: flat(20.0), Channel.HUMIDITY: flat(50.0), Channel.AIR_SPEED: flat(0.05)}


def ask(qtbot: QtBot, worker: HistoryWorker, serial: int, request: Request | None) -> Answer:
    with qtbot.waitSignal(worker.answered, timeout=5000) as caught:
        worker.ask(serial, request)
    answer: Answer = caught.args[0]
    return answer


def test_that_all_calls_come_from_one_thread_and_the_last_closes(qtbot: QtBot) -> None:
    history = ScriptedHistory(ROOM)
    worker = HistoryWorker(history)
    answer = ask(qtbot, worker, 1, REQUEST)
    worker.stop()
    assert answer.serial == 1
    assert answer.first_ms == START_MS
    assert answer.data is not None
    assert answer.data.temperature is ROOM[Channel.TEMPERATURE]
    assert not answer.data.signal
    assert history.threads == {"room-history"}
    assert history.calls[-1] == "close"
    assert f"{Channel.TEMPERATURE} 0 10000 10" in history.calls


def test_that_the_signal_stands_in_where_no_speed_was_logged(qtbot: QtBot) -> None:
    signal = flat(210.0)
    worker = HistoryWorker(ScriptedHistory({Channel.AIR_SIGNAL: signal}))
    answer = ask(qtbot, worker, 1, REQUEST)
    worker.stop()
    assert answer.data is not None
    assert answer.data.air is signal
    assert answer.data.signal


def test_that_of_waiting_requests_only_the_newest_is_read(qtbot: QtBot) -> None:
    history = ScriptedHistory(ROOM)
    history.may_go_on.clear()
    worker = HistoryWorker(history)
    answers: list[Answer] = []
    worker.answered.connect(answers.append)
    worker.ask(1, REQUEST)
    assert history.entered.wait(5)
    worker.ask(2, REQUEST)
    worker.ask(3, REQUEST)
    history.may_go_on.set()
    qtbot.waitUntil(lambda: len(answers) == 2)
    worker.stop()
    assert [answer.serial for answer in answers] == [1, 3]


def test_that_a_log_that_cannot_be_read_is_told_and_tried_again(qtbot: QtBot, caplog: pytest.LogCaptureFixture) -> None:
    history = ScriptedHistory(ROOM)
    worker = HistoryWorker(history)
    history.fault = OSError("disk on fire")
    assert "disk on fire" in ask(qtbot, worker, 1, REQUEST).trouble
    assert "could not be read" in caplog.text
    history.fault = None
    assert ask(qtbot, worker, 2, REQUEST).data is not None
    worker.stop()


def test_that_the_dew_point_is_that_of_the_means_of_shared_buckets() -> None:
    psychrolib.SetUnitSystem(psychrolib.SI)
    dew = dew_series(flat(20.0, 0, 6), flat(50.0, 3, 9))
    assert dew.time_ms.tolist() == [START_MS + 3000, START_MS + 4000, START_MS + 5000]
    # psychrolib 2.5: ASHRAE Handbook Fundamentals 2017, ch. 1; half of the last digit that the plot tells
    assert dew.mean == pytest.approx(psychrolib.GetTDewPointFromRelHum(20.0, 0.5), abs=0.05)


def test_that_air_without_a_dew_point_leaves_a_gap() -> None:
    assert not len(dew_series(flat(20.0), flat(0.0)).time_ms)
    assert not len(dew_series(flat(400.0), flat(50.0)).time_ms)
