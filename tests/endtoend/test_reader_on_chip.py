"""The reader on the reference sketch's machine code: what the board says is wrong, and its restart."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from queue import Queue
from typing import TypeVar

import pytest

from studiowatch.board.events import BoardEvent, BoardNamed, BoardTrouble, ReadingArrived
from studiowatch.board.reader import Reader
from studiowatch.room.readings import Channel, ChannelFault
from studiowatch.service.clock import SystemClock

from .chip import Chip

WITHIN_S = 30.0  # a wait that is not met by then is a failure; nothing here waits for it to pass
SPEED = 10.0  # chip seconds a second

E = TypeVar("E")


@contextmanager
def read(chip: Chip) -> Iterator[Queue[BoardEvent]]:
    events: Queue[BoardEvent] = Queue()
    reader = Reader(clock=SystemClock(), wanted=chip.pty, list_ports=lambda: ())
    reader.start(events.put)
    try:
        yield events
    finally:
        reader.stop()


def the_next(events: Queue[BoardEvent], kind: type[E], fits: Callable[[E], bool] = lambda _: True) -> E:
    while not (isinstance(event := events.get(timeout=WITHIN_S), kind) and fits(event)):
        pass
    return event


@pytest.mark.machine_code
def test_that_a_stuck_bus_is_told_once_by_the_board_and_by_every_reading_until_it_is_free(
    start_chip: Callable[..., Chip],
) -> None:
    chip = start_chip(speed=SPEED)
    with read(chip) as events:
        the_next(events, ReadingArrived, lambda event: event.reading.temperature_C == 21.4)
        chip.tell("stuck 1")
        trouble = the_next(events, BoardTrouble)
        assert (trouble.code, trouble.message, trouble.counts.troubles) == ("bus", "timeout", 1)
        reading = the_next(events, ReadingArrived).reading
        assert reading.temperature_C is None
        assert ChannelFault(channel=Channel.TEMPERATURE, code=trouble.code) in reading.faults
        chip.tell("stuck 0")
        back = the_next(events, ReadingArrived, lambda event: event.reading.temperature_C == 21.4)
        assert (back.counts.troubles, back.counts.lost, back.counts.faulty) == (1, 0, 0)


@pytest.mark.machine_code
def test_that_a_reset_costs_no_more_than_the_line_that_it_cut(start_chip: Callable[..., Chip]) -> None:
    chip = start_chip(speed=SPEED)
    with read(chip) as events:
        the_next(events, BoardNamed)
        the_next(events, ReadingArrived)
        chip.tell("reset")
        counts = the_next(events, ReadingArrived, lambda event: event.counts.resets == 1).counts
        assert counts.faulty <= 1
        assert counts.lost == 0
