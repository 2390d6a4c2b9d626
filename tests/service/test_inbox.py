"""The inbox: bounded, counted, in order, and never blocking the one who delivers."""

from __future__ import annotations

from studiowatch.board.events import LineCounts, PortLost, ReadingArrived
from studiowatch.room.readings import Reading
from studiowatch.service.commands import HearWarning
from studiowatch.service.inbox import Errand, Inbox


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
    inbox.deliver(PortLost(time_ms=0, port="p", reason="gone"))
    taken = list(inbox.take(0.0))
    assert [type(event) for event in taken] == [ReadingArrived] * 3 + [PortLost]
    assert inbox.overflowed == 7


def test_that_taking_from_an_empty_inbox_ends_and_a_wake_ends_the_wait() -> None:
    inbox = Inbox()
    assert list(inbox.take(0.0)) == []
    inbox.wake()
    assert list(inbox.take(60.0)) == []
