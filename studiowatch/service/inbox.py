"""The keeper's inbox: bounded for what the board sends, so that a stall is counted and never eats the memory."""

from __future__ import annotations

import queue
import threading
from concurrent.futures import Future
from dataclasses import dataclass

from studiowatch.board.events import BoardEvent, BoardTrouble, LineRefused, NumbersSeen, ReadingArrived
from studiowatch.service.commands import Command, Refused
from studiowatch.speech.words import mark, say

LIMIT = 4096  # events, over an hour of readings at one a second
AT_ONCE = 256  # items taken between two looks at the clock: a backlog must not keep the watch from looking
FREQUENT = (ReadingArrived, BoardTrouble, LineRefused, NumbersSeen)  # a board may send these faster than they are taken
CLOSING = mark("studiowatch is closing; start it again and repeat what you asked for.")


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
        Most events that may wait; one more reading is refused and counted. Commands are not bounded.
    """

    def __init__(self, limit: int = LIMIT) -> None:
        self._queue: queue.SimpleQueue[BoardEvent | Errand | None] = queue.SimpleQueue()
        self._limit = limit
        self._lock = threading.Lock()
        self._overflowed = 0
        self._closed = False

    @property
    def overflowed(self) -> int:
        """Board events that there was no room for since the start."""
        return self._overflowed

    def deliver(self, event: BoardEvent) -> None:
        """Take a board event without blocking the reader's thread.

        A port's coming and going is taken though it is full. Once it is closed nothing is, and nothing is counted: a
        reader that does not stop is told by its own `stop`, and is not one that was too fast.
        """
        with self._lock:
            if self._closed:
                return
            if isinstance(event, FREQUENT) and self._queue.qsize() >= self._limit:
                self._overflowed += 1
                return
            self._queue.put(event)

    def ask(self, command: Command) -> Future[str]:
        """Take a command and return the future of its answer; once closed, the answer is a refusal."""
        answer: Future[str] = Future()
        with self._lock:
            if not self._closed:
                self._queue.put(Errand(command=command, answer=answer))
                return answer
        answer.set_exception(Refused(say(CLOSING)))
        return answer

    def wake(self) -> None:
        """Let a waiting `take` return."""
        self._queue.put(None)

    def take(self, timeout_s: float, together: int = 1) -> list[BoardEvent | Errand]:
        """Return what has come, so many at the most, waiting up to `timeout_s` for the first.

        It waits as long for each further one until so many readings are `together`; anything else ends the wait.
        """
        items: list[BoardEvent | Errand] = []
        while len(items) < AT_ONCE:
            is_waiting = len(items) < together and all(isinstance(item, ReadingArrived) for item in items)
            try:
                item = self._queue.get(timeout=timeout_s if is_waiting else 0.0)
            except queue.Empty:
                break
            if item is None:
                timeout_s = 0.0
            else:
                items.append(item)
        return items

    def close(self) -> None:
        """Take nothing more; what waits may still be taken."""
        with self._lock:
            self._closed = True

    def refuse_rest(self) -> None:
        """Close, and refuse the commands that nobody will carry out any more."""
        self.close()
        while items := self.take(0.0):
            for item in items:
                if isinstance(item, Errand) and item.answer.set_running_or_notify_cancel():
                    item.answer.set_exception(Refused(say(CLOSING)))
