"""Between the keeper's thread and the window's: snapshots come in, commands go out, and nobody waits."""

from __future__ import annotations

import threading
from collections.abc import Callable
from concurrent.futures import Future
from dataclasses import dataclass

from PySide6.QtCore import QObject, Qt, Signal
from shiboken6 import isValid

from studiowatch.service.commands import Command, Refused
from studiowatch.service.ports import Desk
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import mark, say

CLOSING_WORDS = mark("The program is closing: this was not recorded.")
FAULT_WORDS = mark("This could not be done because of a fault in the program; nothing was recorded.")


class SnapshotBridge(QObject):
    """Hands the newest snapshot to the window's thread; older ones that were not fetched are passed over.

    A snapshot is whole, so passing one over never hides a warning.
    """

    arrived = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._lock = threading.Lock()
        self._newest: Snapshot | None = None
        self._open = True

    def offer(self, snapshot: Snapshot) -> None:
        """Take `snapshot`, on any thread, and return at once."""
        with self._lock:
            if not self._open:
                return
            waiting, self._newest = self._newest is not None, snapshot
            if not waiting:
                self.arrived.emit()

    def fetch(self) -> Snapshot | None:
        """Return the newest snapshot that was not fetched yet, or None."""
        with self._lock:
            newest, self._newest = self._newest, None
            return newest

    def close(self) -> None:
        """Take no more snapshots: the window is going."""
        with self._lock:
            self._open = False


@dataclass(frozen=True, slots=True, kw_only=True)
class _Errand:
    owner: QObject
    done: Callable[[str], None]
    refused: Callable[[str], None]


class Courier(QObject):
    """Carries commands to the desk and brings the answers back to the window's thread."""

    _answered = Signal(int, object)

    def __init__(self, desk: Desk, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._errands: dict[int, _Errand] = {}
        self._count = 0
        self._lock = threading.Lock()
        self._open = True
        self._answered.connect(self._deliver, Qt.ConnectionType.QueuedConnection)

    def send(
        self, command: Command, *, owner: QObject, done: Callable[[str], None], refused: Callable[[str], None]
    ) -> None:
        """Submit `command`; later call `done` with its key or `refused` with one sentence, while `owner` lives."""
        self._count += 1
        number = self._count
        self._errands[number] = _Errand(owner=owner, done=done, refused=refused)
        self._desk.submit(command).add_done_callback(lambda future: self._answer(number, future))

    def close(self) -> None:
        """Bring no more answers: the window is going."""
        with self._lock:
            self._open = False

    def _answer(self, number: int, future: Future[str]) -> None:
        with self._lock:
            if self._open:
                self._answered.emit(number, future)

    def _deliver(self, number: int, future: Future[str]) -> None:
        errand = self._errands.pop(number)
        if not isValid(errand.owner):
            return
        if future.cancelled():
            errand.refused(say(CLOSING_WORDS))
            return
        fault = future.exception()
        if fault is None:
            errand.done(future.result())
        elif isinstance(fault, Refused):
            errand.refused(str(fault))
        else:
            errand.refused(say(FAULT_WORDS))
            raise fault
