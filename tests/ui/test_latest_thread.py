"""A thread that is closed delivers nothing more, whatever it is doing."""

from __future__ import annotations

from threading import Event

from studiowatch.ui.latest_thread import LatestThread

PATIENCE_S = 60.0


def test_that_nothing_is_delivered_once_it_is_closed() -> None:
    begun, closed, over = Event(), Event(), Event()
    delivered: list[str] = []

    def work(_number: int, task: str) -> None:
        thread.tell(delivered.append, f"{task} begun")
        begun.set()
        assert closed.wait(PATIENCE_S)
        thread.tell(delivered.append, f"{task} done")
        over.set()

    thread = LatestThread[str]("tested", work)
    thread.put("film")
    assert begun.wait(PATIENCE_S)
    thread.close()
    closed.set()
    assert over.wait(PATIENCE_S)
    assert delivered == ["film begun"]
