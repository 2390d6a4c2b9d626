"""One call on a thread of its own, answered by a future."""

from __future__ import annotations

import threading
from collections.abc import Callable
from concurrent.futures import Future
from typing import ParamSpec, TypeVar

P = ParamSpec("P")
Answer = TypeVar("Answer")


def in_a_thread(work: Callable[P, Answer], *arguments: P.args, **named: P.kwargs) -> Future[Answer]:
    """Begin `work` and return the future of its answer; it does not keep the program from ending."""
    answer: Future[Answer] = Future()

    def run() -> None:
        if not answer.set_running_or_notify_cancel():
            return
        try:
            result = work(*arguments, **named)
        except BaseException as fault:  # noqa: BLE001 - handed to whoever asked
            answer.set_exception(fault)
        else:
            answer.set_result(result)

    threading.Thread(target=run, name="errand", daemon=True).start()
    return answer
