"""Faults on the line and in the reader's thread, each scripted: what comes through, and what she is told."""

import random
from collections.abc import Callable
from queue import Queue
from typing import TypeVar

import pytest

from studiowatch.board.events import BoardEvent, LineRefused, PortLost, PortOpened, ReadingArrived
from studiowatch.board.port import BytePort, PortRefused
from studiowatch.board.reader import Reader
from studiowatch.board.simulated import SimulatedPort, SteppedClock
from studiowatch.board.simulated_room import SimulatedRoom
from studiowatch.board.wire import LineParser, WireFault, WireLine

START_MS = 1_772_442_000_000  # 2026-03-02T09:00:00Z
WITHIN_S = 20.0  # a wait that is not met by then is a failure; nothing here waits for it to pass

Events = Queue[BoardEvent]
E = TypeVar("E")


def the_next(events: Events, kind: type[E]) -> E:
    while not isinstance(event := events.get(timeout=WITHIN_S), kind):
        pass
    return event


class Worn:
    """A port whose bytes are spoilt by `spoil` on their way."""

    def __init__(self, port: SimulatedPort, spoil: Callable[[bytes], bytes]) -> None:
        self._port = port
        self._spoil = spoil

    def read_some(self, timeout_s: float) -> bytes:
        return self._spoil(self._port.read_some(timeout_s))

    def write(self, data: bytes) -> None:
        self._port.write(data)

    def cancel(self) -> None:
        self._port.cancel()

    def close(self) -> None:
        self._port.close()


@pytest.fixture
def clock() -> SteppedClock:
    return SteppedClock(START_MS)


@pytest.fixture
def port(clock: SteppedClock) -> SimulatedPort:
    return SimulatedPort(clock=clock, room=SimulatedRoom(seed=7), advance=clock.advance)


def reader_of(clock: SteppedClock, open_port: Callable[[str, int], BytePort]) -> Reader:
    return Reader(clock=clock, wanted="board", open_port=open_port, list_ports=list, look_every_s=0.01)


@pytest.mark.parametrize("kind", ["flip", "drop"])
def test_that_a_bad_cable_never_makes_a_wrong_reading_and_every_line_is_counted(kind: str, port: SimulatedPort) -> None:
    drawn = random.Random(3)
    sent, arrived = LineParser(), LineParser()
    sent_lines: list[WireLine | WireFault] = []
    arrived_lines: list[WireLine] = []
    refused = 0
    for _ in range(2000):
        data = port.read_some(1.0)
        sent_lines += sent.feed(data)
        spoilt = bytearray(data)
        at = drawn.randrange(len(data))
        if drawn.random() < 0.3:
            spoilt[at : at + 1] = b"" if kind == "drop" else bytes([data[at] ^ 1 << drawn.randrange(8)])
        for found in arrived.feed(bytes(spoilt)):
            if isinstance(found, WireLine):
                arrived_lines.append(found)
            else:
                refused += 1
    remaining = iter(sent_lines)
    assert all(line in remaining for line in arrived_lines)  # each one was sent, and in this order
    assert refused > 300
    # a lost LF joins two lines: the first is refused when the second begins
    assert len(arrived_lines) + refused >= len(sent_lines) - 1


def test_that_an_hour_of_garbage_is_counted_and_the_board_heard_after_it(
    clock: SteppedClock, port: SimulatedPort
) -> None:
    drawn, garbage_s = random.Random(11), iter(range(3600))

    def spoil(data: bytes) -> bytes:
        return drawn.randbytes(960) if next(garbage_s, None) is not None else data  # 960 B/s is 9600 baud, 8N1

    events = Events()
    reader = reader_of(clock, lambda name, baud: Worn(port.open(name, baud), spoil))
    reader.start(events.put)
    try:
        first = the_next(events, ReadingArrived)
        assert first.counts.faulty > 3600
        assert first.counts.good <= 2
    finally:
        reader.stop()


def test_that_garbage_is_told_with_its_bytes(clock: SteppedClock, port: SimulatedPort) -> None:
    events = Events()
    reader = reader_of(clock, lambda name, baud: Worn(port.open(name, baud), lambda data: b"T=21.4;H=48\n" + data))
    reader.start(events.put)
    try:
        refused = the_next(events, LineRefused)
        assert refused.quoted == "T=21.4;H=48"
        assert refused.reason == "The bytes do not begin with $: noise between lines."
    finally:
        reader.stop()


def test_that_a_pulled_plug_is_told_once_and_the_board_read_when_it_is_back(
    clock: SteppedClock, port: SimulatedPort
) -> None:
    events = Events()
    reader = reader_of(clock, port.open)
    reader.start(events.put)
    try:
        the_next(events, ReadingArrived)
        port.unplug()
        assert "plug it in again" in the_next(events, PortLost).reason
        port.replug()
        assert isinstance(events.get(timeout=WITHIN_S), PortOpened)
        assert the_next(events, ReadingArrived).counts.resets == 1
    finally:
        reader.stop()


def test_that_a_listener_that_fails_is_told_and_the_reading_goes_on(clock: SteppedClock, port: SimulatedPort) -> None:
    events, planted = Events(), [RuntimeError("planted")]

    def deliver(event: BoardEvent) -> None:
        if isinstance(event, ReadingArrived) and planted:
            raise planted.pop()
        events.put(event)

    reader = reader_of(clock, port.open)
    reader.start(deliver)
    try:
        lost = the_next(events, PortLost)
        assert "planted" in lost.reason
        assert isinstance(events.get(timeout=WITHIN_S), PortOpened)
        the_next(events, ReadingArrived)
    finally:
        reader.stop()


def test_that_a_listener_that_fails_at_the_loss_too_does_not_end_the_thread(
    clock: SteppedClock, port: SimulatedPort
) -> None:
    events, planted = Events(), [RuntimeError("second"), RuntimeError("first")]

    def deliver(event: BoardEvent) -> None:
        if isinstance(event, (ReadingArrived, PortLost)) and planted:
            raise planted.pop()
        events.put(event)

    reader = reader_of(clock, port.open)
    reader.start(deliver)
    try:
        the_next(events, ReadingArrived)
        assert not planted
    finally:
        reader.stop()


def test_that_a_port_that_is_refused_is_told_once_until_the_reason_changes(
    clock: SteppedClock, port: SimulatedPort
) -> None:
    events = Events()
    reasons = iter(["in use"] * 5 + ["not permitted"] * 5)

    def open_port(name: str, baud: int) -> BytePort:
        reason = next(reasons, None)
        if reason:
            raise PortRefused(reason)
        return port.open(name, baud)

    reader = reader_of(clock, open_port)
    reader.start(events.put)
    try:
        told = [events.get(timeout=WITHIN_S) for _ in range(3)]
        assert [event.reason for event in told[:2] if isinstance(event, PortLost)] == ["in use", "not permitted"]
        assert isinstance(told[2], PortOpened)
    finally:
        reader.stop()
