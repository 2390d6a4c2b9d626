"""The thread that asks the lent films what another room would make of them; the window never waits for it."""

from __future__ import annotations

import logging
from dataclasses import dataclass

from PySide6.QtCore import QObject, Signal

from studiowatch.service.films_to_come import FilmsToCome
from studiowatch.service.local_time import clock_text
from studiowatch.service.what_if import Otherways, WhatIf
from studiowatch.service.what_if_room import care, refusal, warnings_in
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.studio.otherwise import Otherwise
from studiowatch.studio.words import Sentence
from studiowatch.ui.latest_thread import LatestThread

logger = logging.getLogger(__name__)


@dataclass(frozen=True, slots=True, kw_only=True)
class Question:
    """Which films in which room."""

    films: FilmsToCome
    held: Otherwise
    cover: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """The answer. `refused` is one sentence where none is given; `is_whole` says whether all draws were asked."""

    question: Question
    pieces: tuple[Otherways, ...] = ()
    warnings: tuple[Sentence, ...] = ()
    care: tuple[str, ...] = ()
    refused: str = ""
    is_whole: bool = False


class WhatIfWorker(QObject):
    """Answers what was asked last, first by few draws and then by all.

    What is begun with few draws is told even if something else has been asked by then: a slider that never rests is
    followed all the same. All draws are given up then.
    """

    answered = Signal(object)
    _worked = Signal(int, object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._thread = LatestThread[Question]("otherwise", self._work)
        self._what_if: WhatIf | None = None
        self._worked.connect(self._tell)

    def ask(self, question: Question) -> None:
        """Have `question` answered."""
        self._thread.put(question)

    def close(self) -> None:
        """Bring no more answers: the window is going."""
        self._thread.close()

    def _work(self, serial: int, question: Question) -> None:
        try:
            refused = refusal(question.films, question.held)
            for whole in (False,) if refused else (False, True):
                told = self._told(serial, question, refused, whole=whole)
                if told is None:
                    return
                self._thread.tell(self._worked.emit, serial, told)
            if not refused:
                self._prepare(serial)
        except Exception as error:  # the thread's top: said on the page, and loud in the log
            logger.exception("what another room would do could not be worked out")  # not said
            trouble = say("This cannot be worked out: {reason}", reason=error)
            self._thread.tell(self._worked.emit, serial, Told(question=question, refused=trouble))

    def _told(self, serial: int, question: Question, refused: str, *, whole: bool) -> Told | None:
        """Return the answer, or None once nothing is wanted any more, or for all draws something else."""
        films, held = question.films, question.held
        if refused:
            return Told(question=question, refused=refused, care=care(films, held))
        if self._what_if is None or self._what_if.lent is not films:
            self._what_if = WhatIf(lent=films)
        pieces = []
        for piece in self._what_if.answers(held, cover=question.cover, whole=whole):
            if self._thread.is_closed or (whole and not self._thread.is_newest(serial)):
                return None
            pieces.append(piece)
        return Told(
            question=question,
            pieces=tuple(pieces),
            warnings=warnings_in(films, held, cover=question.cover, clock_text=clock_text, units=chosen()),
            care=care(films, held),
            is_whole=whole,
        )

    def _prepare(self, serial: int) -> None:
        """Use the time until she asks for something."""
        for _ in () if self._what_if is None else self._what_if.prepare():
            if not self._thread.is_newest(serial):
                return

    def _tell(self, serial: int, told: Told) -> None:
        if not self._thread.is_closed and (self._thread.is_newest(serial) or not told.is_whole):
            self.answered.emit(told)
