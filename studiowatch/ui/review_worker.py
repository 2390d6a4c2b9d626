"""The thread that works a review out; the window never waits for it."""

from __future__ import annotations

import logging
from collections.abc import Callable
from threading import Thread

from PySide6.QtCore import QObject, Signal

from studiowatch.service.review_ports import ReviewRefused, Reviews

logger = logging.getLogger(__name__)


class ReviewWorker(QObject):
    """Works one review out at a time; of those asked for meanwhile, only the answer to the last is told.

    `answered` carries a `Review` or a `Reliability`, `refused` one sentence.
    """

    answered = Signal(object)
    refused = Signal(str)
    _worked = Signal(int, object, str)

    def __init__(self, reviews: Reviews, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._reviews = reviews
        self._serial = 0
        self._closed = False
        self._worked.connect(self._tell)

    def ask(self, coat_key: str) -> None:
        """Have the review of a coat worked out."""
        self._begin(lambda: self._reviews.review(coat_key))

    def ask_reliability(self) -> None:
        """Have it worked out how often each chance came true."""
        self._begin(lambda: self._reviews.reliability(lambda _share: None))

    def forget(self) -> None:
        """Tell nothing of what is still worked out."""
        self._serial += 1

    def close(self) -> None:
        """Bring no more answers: the window is going. What is being worked out only reads, and is let go."""
        self._closed = True

    def _begin(self, work: Callable[[], object]) -> None:
        self._serial += 1
        Thread(target=self._work, args=(self._serial, work), name="review", daemon=True).start()

    def _work(self, serial: int, work: Callable[[], object]) -> None:
        answer: object = None
        trouble = ""
        try:
            answer = work()
        except ReviewRefused as refusal:
            trouble = str(refusal)
        except Exception as error:  # the thread's top: said on the page, and loud in the log
            logger.exception("a review could not be worked out")
            trouble = f"The review cannot be worked out: {error}"
        if not self._closed:
            self._worked.emit(serial, answer, trouble)

    def _tell(self, serial: int, answer: object, trouble: str) -> None:
        if serial != self._serial:
            return
        if trouble:
            self.refused.emit(trouble)
        else:
            self.answered.emit(answer)
