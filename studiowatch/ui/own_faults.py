"""Faults of ours that nothing else caught, on any thread: to the terminal in full, and to her in one sentence."""

from __future__ import annotations

import sys
import threading
import traceback
from types import TracebackType

from PySide6.QtCore import QObject, Signal

from studiowatch.service.fault_words import fault_words


class OwnFaults(QObject):
    """Stands where Python reports an exception that nobody caught; the same one is told to her once.

    `told` carries the sentence, on whatever thread the fault was: connect it to an object of the window's thread.
    """

    told = Signal(str)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._last = ""

    def listen(self) -> None:
        """Be told of every exception from now on; `stop_listening` gives the place back."""
        sys.excepthook = self._on_this_thread
        threading.excepthook = self._on_another

    def stop_listening(self) -> None:
        """Leave the reporting to Python again."""
        sys.excepthook = sys.__excepthook__
        threading.excepthook = threading.__excepthook__

    def _on_this_thread(
        self, kind: type[BaseException], fault: BaseException, trace: TracebackType | None, where: str = ""
    ) -> None:
        if not issubclass(kind, Exception):
            sys.__excepthook__(kind, fault, trace)
            return
        traceback.print_exception(kind, fault, trace, file=sys.stderr)
        sentence = fault_words(fault, where)
        if sentence != self._last:
            self._last = sentence
            self.told.emit(sentence)

    def _on_another(self, fault: threading.ExceptHookArgs) -> None:
        if fault.exc_value is not None:
            thread = "" if fault.thread is None else fault.thread.name
            self._on_this_thread(fault.exc_type, fault.exc_value, fault.exc_traceback, thread)
