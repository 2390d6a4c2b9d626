"""The keeper's inbox: bounded for what the board sends, so that a stall is counted and never eats the memory."""

from __future__ import annotations

import queue
import threading
from collections.abc import Iterator
from concurrent.futures import Future
from dataclasses import dataclass

from studiowatch.board.events import BoardEvent, LineRefused, ReadingArrived
from studiowatch.service.commands import Command

LIMIT = 4096  # events, over an hour of readings at one a second


@dataclass(frozen=True, slots=True, kw_only=True)
class Errand:
    """A command and the future that answers it."""

    command: Command
    answer: Future[str]


class Inbox:
    """Hands board events and commands to one thread, in the order they came.

    Parameters
    ----------
    limit : int
        Most events that may wait; one more reading is refused and counted. Commands are never refused.
    """

    def __init__(self, limit: int = LIMIT) -> None:
        self._queue: queue.SimpleQueue[BoardEvent | Errand | None] = queue.SimpleQueue()
        self._limit = limit
        self._lock = threading.Lock()
        self._overflowed = 0

    @property
    def overflowed(self) -> int:
        """Board events refused since the start."""
        return self._overflowed

    def deliver(self, event: BoardEvent) -> None:
        """Take a board event without blocking the reader's thread; a port's coming and going is never refused."""
        with self._lock:
            if isinstance(event, ReadingArrived | LineRefused) and self._queue.qsize() >= self._limit:
                self._overflowed += 1
                return
            self._queue.put(event)

    def ask(self, command: Command) -> Future[str]:
        """Take a command and return the future of its answer."""
        answer: Future[str] = Future()
        self._queue.put(Errand(command=command, answer=answer))
        return answer

    def wake(self) -> None:
        """Let a waiting `take` return."""
        self._queue.put(None)

    def take(self, timeout_s: float) -> Iterator[BoardEvent | Errand]:
        """Yield what has come, waiting up to `timeout_s` for the first."""
        try:
            item = self._queue.get(timeout=timeout_s)
        except queue.Empty:
            return
        while True:
            if item is not None:
                yield item
            try:
                item = self._queue.get_nowait()
            except queue.Empty:
                return
