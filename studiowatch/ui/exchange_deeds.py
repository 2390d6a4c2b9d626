"""What goes out of the records from the window: a file dialog, then long work with its own dialog."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QFileDialog, QWidget

from studiowatch.service.exchange import Exchange
from studiowatch.service.ports import Clock
from studiowatch.speech.words import say
from studiowatch.ui.documents import documents
from studiowatch.ui.long_work import LongWork, Work
from studiowatch.ui.models.exchange import (
    NO_FILES,
    NOTHING_BEHIND,
    TAKEN_FILES,
    TAKEN_SO_FAR,
    SavePlan,
    readings_plan,
    records_plan,
)
from studiowatch.ui.models.history_range import TimeRange
from studiowatch.ui.models.work import WorkState, WorkView
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.work_dialog import WorkDialog


class ExchangeDeeds(QObject):
    """Asks where to, and has `exchange` do it; `done` and `refused` tell in words how it went."""

    done = Signal(str)
    refused = Signal(str)

    def __init__(self, exchange: Exchange | None, clock: Clock, window: QWidget) -> None:
        super().__init__(window)
        self._exchange = exchange
        self._clock = clock
        self._window = window
        self._works: list[LongWork] = []
        self.style = Style()

    def save_readings(self, chosen: TimeRange, *, senml: bool = False) -> QFileDialog | None:
        """Save the readings of `chosen`."""
        exchange = self._there()
        if exchange is None:
            return None
        if chosen.first_ms >= self._clock.utc_ms():
            self.refused.emit(say(NOTHING_BEHIND))
            return None
        plan = readings_plan(chosen, senml=senml)

        def save(path: Path) -> Work:
            return lambda show, _: exchange.readings_out(path, chosen.first_ms, chosen.last_ms + 1, show, senml=senml)

        return self._ask_file(plan, save)

    def save_records(self) -> QFileDialog | None:
        """Save all records as one studio file."""
        exchange = self._there()
        if exchange is None:
            return None
        return self._ask_file(
            records_plan(self._clock.utc_ms()), lambda path: lambda show, _: exchange.records_out(path, show)
        )

    def back_up(self) -> QFileDialog | None:
        """Copy the whole studio into a folder of her choice."""
        exchange = self._there()
        if exchange is None:
            return None
        title = say("Back up now")
        dialog = QFileDialog(self._window, say("Back up now: choose a folder"), documents())
        dialog.setFileMode(QFileDialog.FileMode.Directory)
        dialog.setOption(QFileDialog.Option.ShowDirsOnly)
        dialog.fileSelected.connect(lambda name: self.run(title, lambda show, _: exchange.back_up(Path(name), show)))
        return _opened(dialog)

    def take_in(self) -> QFileDialog | None:
        """Take another logger's readings in, and show every fault by its line."""
        exchange = self._there()
        if exchange is None:
            return None
        title = say("Take a file in")
        dialog = QFileDialog(self._window, title, documents(), say(TAKEN_FILES))
        dialog.setFileMode(QFileDialog.FileMode.ExistingFile)
        dialog.fileSelected.connect(
            lambda name: self.run(
                title, lambda show, tell: exchange.take_in(Path(name), show, tell), cancelled_words=say(TAKEN_SO_FAR)
            )
        )
        return _opened(dialog)

    def run(self, title: str, work: Work, *, cancelled_words: str = "") -> WorkDialog:
        """Do `work` on a thread of its own, in sight."""
        view = WorkView(title=title, cancelled_words=cancelled_words) if cancelled_words else WorkView(title=title)
        running = LongWork(work)
        dialog = WorkDialog(view, running, self.style, self._window)
        self._works.append(running)
        dialog.over.connect(lambda ended: self._over(running, ended))
        dialog.open()
        running.start()
        return dialog

    def close(self) -> None:
        """End what runs: the window is going."""
        works, self._works = self._works, []
        for work in works:
            work.stop()

    def _there(self) -> Exchange | None:
        if self._exchange is None:
            self.refused.emit(say(NO_FILES))
        return self._exchange

    def _ask_file(self, plan: SavePlan, work: Callable[[Path], Work]) -> QFileDialog:
        dialog = QFileDialog(self._window, plan.title, documents(), plan.files)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setDefaultSuffix(Path(plan.name).suffix.lstrip("."))
        dialog.selectFile(plan.name)
        dialog.fileSelected.connect(lambda name: self.run(plan.title, work(Path(name))))
        return _opened(dialog)

    def _over(self, work: LongWork, view: WorkView) -> None:
        if work in self._works:
            self._works.remove(work)
        if view.state is WorkState.DONE:
            self.done.emit(view.words)
        elif view.state is WorkState.FAILED:
            self.refused.emit(view.words)


def _opened(dialog: QFileDialog) -> QFileDialog:
    dialog.finished.connect(dialog.deleteLater)
    dialog.open()
    return dialog
