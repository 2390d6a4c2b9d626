"""Work that takes long, on a thread of its own: the window shows how far it is, and can end it."""

from __future__ import annotations

import logging
import threading
import time
from collections.abc import Callable

from PySide6.QtCore import QObject, Signal

from studiowatch.service.exchange import ExchangeFault, Interrupted
from studiowatch.service.readings_out import Show
from studiowatch.speech.words import mark, say

logger = logging.getLogger(__name__)
EVERY_S = 0.05  # s between two signals of progress: more would only be painted over
JOIN_S = 10.0  # s, longer than any step between two looks at whether it is to end
OWN_FAULT = mark("This could not be done because of a fault in the program: {fault}. Please report it.")

Tell = Callable[[str], None]
Work = Callable[[Show, Tell], str]


class LongWork(QObject):
    """Runs one piece of work; every signal comes on the thread that made it.

    `progressed` carries the share that is done and words, `told` a sentence on something on the way; at the end one of
    `done` and `failed` carries a sentence, or `cancelled` comes.
    """

    progressed = Signal(float, str)
    told = Signal(str)
    done = Signal(str)
    failed = Signal(str)
    cancelled = Signal()

    def __init__(self, work: Work, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._work = work
        self._ending = threading.Event()
        self._shown_s = -EVERY_S
        self._thread = threading.Thread(target=self._run, name="long-work", daemon=True)

    def start(self) -> None:
        """Begin."""
        self._thread.start()

    def cancel(self) -> None:
        """End at the next step; `cancelled` comes then, or the work was done first."""
        self._ending.set()

    def stop(self) -> None:
        """Cancel and join.

        Raises
        ------
        RuntimeError
            If the thread lives on.
        """
        self.cancel()
        if self._thread.is_alive():
            self._thread.join(JOIN_S)
        if self._thread.is_alive():
            raise RuntimeError(f"the work's thread did not end within {JOIN_S:g} s")  # not said

    def _show(self, share: float, words: str) -> None:
        if self._ending.is_set():
            raise Interrupted
        now_s = time.monotonic()
        if now_s - self._shown_s >= EVERY_S:
            self._shown_s = now_s
            self.progressed.emit(share, words)

    def _run(self) -> None:
        try:
            words = self._work(self._show, self.told.emit)
        except Interrupted:
            self.cancelled.emit()
        except ExchangeFault as fault:
            self.failed.emit(str(fault))
        except Exception as fault:  # the thread's top
            logger.exception("long work failed")  # not said
            self.failed.emit(say(OWN_FAULT, fault=fault))
        else:
            self.done.emit(words)
