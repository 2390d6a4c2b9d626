"""Saving from the window: a file dialog, then work in sight that can be ended."""

from __future__ import annotations

import threading
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QDir, QStandardPaths
from PySide6.QtWidgets import QFileDialog, QWidget
from pytestqt.qtbot import QtBot

from studiowatch.service.exchange import ExchangeFault
from studiowatch.service.readings_out import Show
from studiowatch.ui.documents import documents
from studiowatch.ui.exchange_deeds import ExchangeDeeds
from studiowatch.ui.long_work import LongWork
from studiowatch.ui.models.exchange import readings_plan
from studiowatch.ui.models.history_range import TimeRange
from studiowatch.ui.models.times import HOUR_MS
from studiowatch.ui.models.work import MOST_TOLD, WorkState, WorkView, ended, progressed, with_told
from studiowatch.ui.widgets.work_dialog import WorkDialog

from .scenes import NOW_MS, ScriptedClock

CHOSEN = TimeRange(anchor_ms=NOW_MS - HOUR_MS, end_ms=NOW_MS)


class ScriptedExchange:
    """Keeps what it was asked for; waits where it is told to, and fails where it is told to."""

    def __init__(self) -> None:
        self.asked: list[tuple[object, ...]] = []
        self.threads: list[str] = []
        self.may_end = threading.Event()
        self.may_end.set()
        self.fault: Exception | None = None

    def readings_out(self, path: Path, start_ms: int, end_ms: int, show: Show, *, senml: bool = False) -> str:
        self.asked.append((path, start_ms, end_ms, senml))
        return self._done(show)

    def records_out(self, path: Path, show: Show) -> str:
        self.asked.append((path,))
        return self._done(show)

    def back_up(self, into: Path, show: Show) -> str:
        self.asked.append((into,))
        return self._done(show)

    def take_in(self, path: Path, show: Show, tell: Callable[[str], None]) -> str:
        self.asked.append((path,))
        tell("room.csv, line 7: temperature_C 215 is outside -40 to 80 °C.")
        tell("room.csv, line 9: the row has 3 cells; the header has 4.")
        return self._done(show)

    def _done(self, show: Show) -> str:
        self.threads.append(threading.current_thread().name)
        show(0.5, "half of it")
        if self.fault is not None:
            raise self.fault
        while not self.may_end.wait(0.01):
            show(0.6, "more of it")
        return "Written."


@pytest.fixture
def exchange() -> ScriptedExchange:
    return ScriptedExchange()


@pytest.fixture
def deeds(qtbot: QtBot, exchange: ScriptedExchange) -> ExchangeDeeds:
    window = QWidget()
    qtbot.addWidget(window)
    window.show()
    return ExchangeDeeds(exchange, ScriptedClock(), window)


def choose(dialog: QFileDialog | None, path: Path) -> None:
    assert dialog is not None
    dialog.fileSelected.emit(str(path))
    dialog.close()


def test_that_the_chosen_range_is_saved_off_the_windows_thread(
    qtbot: QtBot, deeds: ExchangeDeeds, exchange: ScriptedExchange, tmp_path: Path
) -> None:
    with qtbot.waitSignal(deeds.done) as told:
        choose(deeds.save_readings(CHOSEN, senml=True), tmp_path / "x.senml")
    assert exchange.asked == [(tmp_path / "x.senml", NOW_MS - HOUR_MS, NOW_MS + 1, True)]
    assert exchange.threads == ["long-work"]
    assert told.args == ["Written."]


def test_that_work_can_be_ended_on_the_way(
    qtbot: QtBot, deeds: ExchangeDeeds, exchange: ScriptedExchange, tmp_path: Path
) -> None:
    exchange.may_end.clear()
    choose(deeds.save_records(), tmp_path / "x.toml")
    dialog = deeds._window.findChildren(WorkDialog)[0]
    with qtbot.waitSignal(dialog.over) as over:
        dialog.end.click()
    (view,) = over.args
    assert view.state is WorkState.CANCELLED
    assert dialog.words.text() == "Cancelled. Nothing was written."
    assert dialog.end.text() == "Close"


def test_that_a_fault_is_told_and_stays_readable(
    qtbot: QtBot, deeds: ExchangeDeeds, exchange: ScriptedExchange, tmp_path: Path
) -> None:
    exchange.fault = ExchangeFault("The disk is full; make room on it.")
    with qtbot.waitSignal(deeds.refused) as told:
        choose(deeds.back_up(), tmp_path)
    assert told.args == ["The disk is full; make room on it."]
    assert deeds._window.findChildren(WorkDialog)[0].words.text() == "The disk is full; make room on it."


def test_that_a_long_fault_stands_whole(
    deeds: ExchangeDeeds, exchange: ScriptedExchange, qtbot: QtBot, tmp_path: Path
) -> None:
    exchange.fault = ExchangeFault("A studio file changes coats, so it is taken in while nothing is watched. " * 6)
    with qtbot.waitSignal(deeds.refused):
        deeds.run("Take in", lambda show, _: exchange.back_up(tmp_path, show))
    dialog = deeds._window.findChildren(WorkDialog)[0]
    words_px = dialog.words.heightForWidth(dialog.words.width())
    assert words_px > 3 * dialog.words.fontMetrics().height()
    assert dialog.minimumHeight() > words_px + dialog.end.height()


def test_that_a_dialog_begins_in_a_folder_that_is_there(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setattr(QStandardPaths, "writableLocation", lambda _: str(tmp_path / "Documents"))
    assert documents() == QDir.homePath()
    (tmp_path / "Documents").mkdir()
    assert documents() == str(tmp_path / "Documents")


def test_that_every_fault_of_a_file_that_is_taken_in_stands_in_a_list(
    qtbot: QtBot, deeds: ExchangeDeeds, tmp_path: Path
) -> None:
    with qtbot.waitSignal(deeds.done):
        choose(deeds.take_in(), tmp_path / "room.csv")
    dialog = deeds._window.findChildren(WorkDialog)[0]
    assert [dialog.told.item(row).text()[:16] for row in range(dialog.told.count())] == [
        "room.csv, line 7",
        "room.csv, line 9",
    ]
    assert dialog.told.isVisible()
    assert dialog.told_words.text() == "2 to look at:"


def test_that_leaving_the_window_ends_the_work(
    qtbot: QtBot, deeds: ExchangeDeeds, exchange: ScriptedExchange, tmp_path: Path
) -> None:
    exchange.may_end.clear()
    choose(deeds.save_records(), tmp_path / "x.toml")
    qtbot.waitUntil(lambda: bool(exchange.threads))
    deeds.close()
    assert not [thread for thread in threading.enumerate() if thread.name == "long-work"]


def test_that_without_a_folder_it_says_so(qtbot: QtBot) -> None:
    window = QWidget()
    qtbot.addWidget(window)
    deeds = ExchangeDeeds(None, ScriptedClock(), window)
    with qtbot.waitSignal(deeds.refused):
        assert deeds.save_readings(CHOSEN) is None


def test_that_a_range_that_lies_ahead_is_refused(qtbot: QtBot, deeds: ExchangeDeeds) -> None:
    with qtbot.waitSignal(deeds.refused):
        assert deeds.save_readings(TimeRange(anchor_ms=NOW_MS + HOUR_MS, end_ms=NOW_MS + 2 * HOUR_MS)) is None


def test_that_a_fault_of_ours_is_told_and_logged(qtbot: QtBot, caplog: pytest.LogCaptureFixture) -> None:
    def broken(_show: Show, _tell: object) -> str:
        raise ValueError("no such thing")

    work = LongWork(broken)
    with qtbot.waitSignal(work.failed) as told:
        work.start()
    assert "no such thing" in told.args[0]
    assert "long work failed" in caplog.text


def test_that_names_tell_the_range() -> None:
    plan = readings_plan(CHOSEN, senml=False)
    assert plan.name.startswith("room-2026-03-04-")
    assert plan.name.endswith(".csv")


def test_that_more_than_can_be_read_is_counted() -> None:
    view = WorkView(title="Take a file in")
    for number in range(MOST_TOLD + 7):
        view = with_told(view, f"line {number}")
    assert len(view.told) == MOST_TOLD
    assert view.list_words.startswith(f"{MOST_TOLD + 7} to look at")


def test_that_what_comes_late_changes_nothing() -> None:
    over = ended(WorkView(title=""), WorkState.DONE, "Written.")
    assert progressed(over, 0.4, "more") is over
    assert over.pct == 100
