"""The thread that works reviews out; the window never waits for it."""

from __future__ import annotations

import logging
from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import QObject, Signal

from studiowatch.service.atlas import example_of
from studiowatch.service.review_desk import REFUSALS
from studiowatch.service.review_ports import Reviews
from studiowatch.speech.words import say
from studiowatch.studio.review_causes import Cause
from studiowatch.studio.review_views import Review
from studiowatch.ui.latest_thread import LatestThread

logger = logging.getLogger(__name__)

Work = Callable[[Callable[[float], None]], object]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Example:
    """The review of a made-up coat."""

    review: Review


class _Outdated(Exception):  # noqa: N818 - she has asked for another, or left
    """What is being worked out is not wanted any more."""


class ReviewWorker(QObject):
    """Works one thing out at a time; only what was asked for last is told, and what was before it is given up.

    `answered` carries a `Review`, an `Example`, a `Reliability` or a tuple of `OtherCoat`; `progressed` the share done;
    `refused` one sentence.
    """

    answered = Signal(object)
    progressed = Signal(float)
    refused = Signal(str)
    _worked = Signal(int, object, str)

    def __init__(self, reviews: Reviews, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._reviews = reviews
        self._thread = LatestThread[Work]("review", self._work)
        self._worked.connect(self._tell)

    def ask(self, coat_key: str) -> None:
        """Have the review of a coat worked out."""
        self._thread.put(lambda progress: self._reviews.review(coat_key, progress))

    def ask_others(self, coat_key: str) -> None:
        """Have a coat and her others of the same kind read."""
        self._thread.put(lambda _progress: tuple(self._reviews.others(coat_key)))

    def ask_example(self, cause: Cause) -> None:
        """Have the made-up coat that shows a cause reviewed."""
        self._thread.put(lambda _progress: Example(review=example_of(cause)))

    def ask_reliability(self) -> None:
        """Have it worked out how often each chance came true."""
        self._thread.put(self._reviews.reliability)

    def warm(self) -> None:
        """Have the coats weighed that are not yet, and tell nobody: the next review then opens at once."""
        if not self._thread.is_begun:
            self._thread.put(self._warmed)

    def _warmed(self, progress: Callable[[float], None]) -> object:
        self._reviews.reliability(progress)
        raise _Outdated

    def close(self) -> None:
        """Bring no more answers: the window is going. What is being worked out only reads, and is given up."""
        self._thread.close()

    def _work(self, serial: int, work: Work) -> None:
        answer: object = None
        trouble = ""
        try:
            answer = work(lambda share: self._progress(serial, share))
        except _Outdated:
            return
        except REFUSALS as refusal:
            trouble = str(refusal)
        except Exception as error:  # the thread's top: said on the page, and loud in the log
            logger.exception("a review could not be worked out")  # not said
            trouble = say("The review cannot be worked out: {reason}", reason=error)
        if self._thread.is_newest(serial):
            self._thread.tell(self._worked.emit, serial, answer, trouble)

    def _progress(self, serial: int, share: float) -> None:
        if not self._thread.is_newest(serial):
            raise _Outdated
        self._thread.tell(self.progressed.emit, share)

    def _tell(self, serial: int, answer: object, trouble: str) -> None:
        if not self._thread.is_newest(serial):
            return
        if trouble:
            self.refused.emit(trouble)
        else:
            self.answered.emit(answer)
