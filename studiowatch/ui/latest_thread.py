"""A thread that does what it was asked last, one thing at a time."""

from __future__ import annotations

from collections.abc import Callable
from queue import SimpleQueue
from threading import Lock, Thread
from typing import Generic, TypeVar

Task = TypeVar("Task")


class LatestThread(Generic[Task]):
    """Calls `work` on its own thread with each task and its number; those that are outdated by then are passed over.

    It begins with the first task, and does not keep the program from ending.
    """

    def __init__(self, name: str, work: Callable[[int, Task], None]) -> None:
        self._name, self._work = name, work
        self._newest = 0
        self._waiting: SimpleQueue[tuple[int, Task] | None] = SimpleQueue()
        self._telling = Lock()
        self.is_begun = self.is_closed = False

    def put(self, task: Task) -> None:
        """Have `task` done, and nothing that was asked for before."""
        if not self.is_begun:
            self.is_begun = True
            Thread(target=self._run, name=self._name, daemon=True).start()
        self._newest += 1
        self._waiting.put((self._newest, task))

    def is_newest(self, number: int) -> bool:
        """Return whether the task of this number is still what is wanted."""
        return number == self._newest

    def tell(self, deliver: Callable[..., None], *words: object) -> None:
        """Have the thread deliver `words`, unless it is closed: whom they are for may be gone by then."""
        with self._telling:
            if not self.is_closed:
                deliver(*words)

    def close(self) -> None:
        """Want nothing any more, and let the thread end; nothing is delivered from now on."""
        with self._telling:
            self.is_closed = True
        self._newest += 1
        self._waiting.put(None)

    def _run(self) -> None:
        while (waiting := self._waiting.get()) is not None:
            number, task = waiting
            if self.is_newest(number):
                self._work(number, task)
