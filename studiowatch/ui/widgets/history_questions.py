"""What the room history asks of the log: each question has a number, and an answer to an older one is known as such."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt

from studiowatch.service.ports import History
from studiowatch.ui.models.history_fetch import Request
from studiowatch.ui.widgets.history_worker import Answer, HistoryWorker


class LogQuestions:
    """Asks a log on a thread of its own, and nothing twice. Without a log nothing is asked.

    Attributes
    ----------
    serial : int
        Number of the last question.
    oldest_serial : int
        Answers to questions before this one no longer stand.
    """

    def __init__(self) -> None:
        self._worker: HistoryWorker | None = None
        self._asked: Request | None = None
        self.serial = 0
        self.oldest_serial = 0

    def read_from(self, history: History, take: Callable[[Answer], None]) -> None:
        """Ask `history` from now on, and have each answer handed to `take` on the thread of its object."""
        self._worker = HistoryWorker(history)
        self._worker.answered.connect(take, Qt.ConnectionType.QueuedConnection)
        self._asked = None

    @property
    def has_log(self) -> bool:
        """Whether there is a log to ask."""
        return self._worker is not None

    @property
    def is_asked(self) -> bool:
        """Whether what is in view was asked for."""
        return self._asked is not None

    def ask(self, request: Request | None) -> None:
        """Ask for `request`, unless that was asked last; None asks only since when there are readings."""
        if self._worker is None or (request is not None and request == self._asked):
            return
        self._asked = request
        self.serial += 1
        self._worker.ask(self.serial, request)

    def is_news(self, answer: Answer) -> bool:
        """Return whether an answer still stands; from then on no older one does."""
        if answer.serial < self.oldest_serial:
            return False
        self.oldest_serial = answer.serial
        return True

    def ask_again(self) -> None:
        """Have the next question asked, even if it is the last one again."""
        self._asked = None

    def forget(self) -> None:
        """Drop whatever is still answered."""
        self._asked = None
        self.oldest_serial = self.serial + 1

    def stop(self) -> None:
        """End the reading thread. Raises RuntimeError if it lives on."""
        worker, self._worker = self._worker, None
        self.forget()
        if worker is not None:
            worker.stop()
