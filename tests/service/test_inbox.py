"""The inbox: bounded, counted, in order, and never blocking the one who delivers."""

from __future__ import annotations

import queue

import pytest

from studiowatch.board.events import BoardTrouble, LineCounts, PortLost, ReadingArrived
from studiowatch.room.readings import Reading
from studiowatch.service.commands import HearWarning, Refused
from studiowatch.service.inbox import AT_ONCE, Errand, Inbox


def arrived(time_ms: int) -> ReadingArrived:
    return ReadingArrived(reading=Reading(time_ms=time_ms), counts=LineCounts(good=time_ms))


def test_that_events_and_commands_keep_their_order() -> None:
    inbox = Inbox()
    inbox.deliver(arrived(1))
    inbox.ask(HearWarning(warning_key="w"))
    inbox.deliver(arrived(2))
    first, second, third = inbox.take(0.0)
    assert isinstance(first, ReadingArrived)
    assert isinstance(second, Errand)
    assert isinstance(third, ReadingArrived)
    assert third.reading.time_ms == 2


def test_that_readings_beyond_the_limit_are_counted_and_a_lost_port_is_still_told() -> None:
    inbox = Inbox(limit=3)
    for number in range(10):
        inbox.deliver(arrived(number))
    inbox.deliver(BoardTrouble(time_ms=0, code="bus", message="", counts=LineCounts()))
    inbox.deliver(PortLost(time_ms=0, port="p", reason="gone"))
    taken = inbox.take(0.0)
    assert [type(event) for event in taken] == [ReadingArrived] * 3 + [PortLost]
    assert inbox.overflowed == 8


def test_that_taking_from_an_empty_inbox_ends_and_a_wake_ends_the_wait() -> None:
    inbox = Inbox()
    assert inbox.take(0.0) == []
    inbox.wake()
    assert inbox.take(60.0) == []


class Delivering:
    """A queue that delivers its items one by one, then nothing; it keeps how long it was asked to wait for each, s."""

    def __init__(self, *items: object) -> None:
        self.items = list(items)
        self.waits_s: list[float] = []

    def get(self, timeout: float) -> object:
        self.waits_s.append(timeout)
        if not self.items:
            raise queue.Empty
        return self.items.pop(0)


LOST = PortLost(time_ms=0, port="p", reason="gone")


@pytest.mark.parametrize(
    ("items", "together", "waits_s"),
    [
        pytest.param((arrived(1),), 1, [5.0, 0.0], id="the-first-alone"),
        pytest.param((arrived(1), arrived(2)), 2, [5.0, 5.0, 0.0], id="the-second-too"),
        pytest.param((arrived(1),), 2, [5.0, 5.0], id="a-second-that-does-not-come"),
        pytest.param((LOST,), 2, [5.0, 0.0], id="what-cannot-wait"),
        pytest.param((arrived(1), LOST), 3, [5.0, 5.0, 0.0], id="what-cannot-wait-after-a-reading"),
        pytest.param((arrived(1), None), 3, [5.0, 5.0, 0.0], id="a-wake"),
    ],
)
def test_that_readings_are_waited_for_and_nothing_else(
    items: tuple[object, ...], together: int, waits_s: list[float]
) -> None:
    inbox = Inbox()
    inbox._queue = delivering = Delivering(*items)
    assert inbox.take(5.0, together) == [item for item in items if item is not None]
    assert delivering.waits_s == waits_s


def test_that_a_backlog_is_taken_in_parts() -> None:
    inbox = Inbox()
    for number in range(2 * AT_ONCE + 5):
        inbox.deliver(arrived(number))
    assert [len(inbox.take(0.0)) for _ in range(4)] == [AT_ONCE, AT_ONCE, 5, 0]


def test_that_nothing_is_taken_in_after_the_end_and_whoever_asks_is_answered() -> None:
    inbox = Inbox()
    waiting = inbox.ask(HearWarning(warning_key="w"))
    cancelled = inbox.ask(HearWarning(warning_key="w"))
    cancelled.cancel()
    inbox.deliver(arrived(1))
    inbox.refuse_rest()
    for answer in (waiting, inbox.ask(HearWarning(warning_key="w"))):
        with pytest.raises(Refused, match="closing"):
            answer.result(0)
    inbox.deliver(arrived(2))
    inbox.deliver(LOST)
    assert inbox.take(0.0) == []
    assert inbox.overflowed == 0  # it was closed, not full
