import threading
from collections.abc import Callable, Mapping
from pathlib import Path
from queue import Queue
from typing import Any, TypeVar

import pytest

from studiowatch.board.events import (
    BoardEvent,
    BoardNamed,
    BoardTrouble,
    LineCounts,
    MappingAsked,
    MappingHolds,
    PortLost,
    PortOpened,
    ReadingArrived,
)
from studiowatch.board.loose_intake import LooseIntake
from studiowatch.board.loose_lines import Style
from studiowatch.board.mapping import ColumnMapping
from studiowatch.board.port import PortGone, PortSeen
from studiowatch.board.reader import Reader
from studiowatch.board.simulated import SteppedClock
from studiowatch.board.ways import Way

NOW_MS = 1_772_442_000_000
WITHIN_S = 20.0  # a wait that is not met by then is a failure; nothing here waits for it to pass
LOOK_OFTEN_S = 0.01

Events = Queue[BoardEvent]
E = TypeVar("E")


def the_next(events: Events, kind: type[E]) -> E:
    while not isinstance(event := events.get(timeout=WITHIN_S), kind):
        pass
    return event


def reader_of(wanted: str | PortSeen | None, **how: Callable[..., Any]) -> Reader:
    return Reader(clock=SteppedClock(NOW_MS), wanted=wanted, look_every_s=LOOK_OFTEN_S, **how)


@pytest.fixture
def lines(vectors: Mapping) -> list[bytes]:
    return [vector["line"].encode() for vector in vectors["accepted"]]


def test_that_lines_through_a_pty_arrive_as_readings(make_device: Callable[[], Any], lines: list[bytes]) -> None:
    device, events = make_device(), Events()
    reader = reader_of(device.path)
    reader.start(events.put)
    try:
        assert the_next(events, PortOpened) == PortOpened(time_ms=NOW_MS, port=device.path, board=device.path)
        assert device.receive() == b"?"
        device.send(b"41 u=41003 t=half*0000\r\n" + b"".join(lines))
        assert the_next(events, BoardNamed).sensor == "sht4x"
        arrived = [the_next(events, ReadingArrived) for _ in range(3)]
        assert arrived[0].reading.temperature_C == 21.40
        assert arrived[0].reading.time_ms == NOW_MS
        assert the_next(events, BoardTrouble).counts == LineCounts(good=5, lost=39, troubles=1)
    finally:
        reader.stop()
    assert events.empty()


def test_that_a_board_that_vanishes_and_returns_is_read_again(
    make_device: Callable[[], Any], lines: list[bytes], tmp_path: Path
) -> None:
    name, events = tmp_path / "board", Events()
    device = make_device()
    name.symlink_to(device.path)
    reader = reader_of(str(name))
    reader.start(events.put)
    try:
        the_next(events, PortOpened)
        device.send(lines[1])
        the_next(events, ReadingArrived)
        name.unlink()
        device.vanish()
        lost = the_next(events, PortLost)
        assert lost.port == str(name)
        assert lost.reason.endswith("vanished: push its USB plug home.")
        device = make_device()
        name.symlink_to(device.path)
        assert isinstance(events.get(timeout=WITHIN_S), PortOpened)
        device.send(lines[2])
        assert the_next(events, ReadingArrived).counts == LineCounts(good=2, lost=2)
    finally:
        reader.stop()


def test_that_stop_delivers_what_has_come_and_ends_the_thread(
    make_device: Callable[[], Any], lines: list[bytes]
) -> None:
    device, events = make_device(), Events()
    in_hand, go_on = threading.Event(), threading.Event()

    def deliver(event: BoardEvent) -> None:
        events.put(event)
        if isinstance(event, PortOpened):
            in_hand.set()
            go_on.wait(WITHIN_S)

    reader = reader_of(device.path)
    reader.start(deliver)
    assert in_hand.wait(WITHIN_S)
    device.send(lines[1] + lines[2])
    reader._stopping.set()  # as stop() does first, while the reader is busy delivering
    go_on.set()
    reader.stop()
    assert the_next(events, ReadingArrived).counts.good == 1
    assert the_next(events, ReadingArrived).counts.good == 2
    assert "board-reader" not in {thread.name for thread in threading.enumerate()}


def test_that_a_reader_that_was_never_started_may_be_stopped() -> None:
    reader_of("nowhere").stop()


def test_that_stop_raises_if_the_thread_lives_on(
    monkeypatch: pytest.MonkeyPatch, make_device: Callable[[], Any]
) -> None:
    go_on = threading.Event()
    held = threading.Event()

    def never_returns(_: BoardEvent) -> None:
        held.set()
        go_on.wait(WITHIN_S)

    monkeypatch.setattr("studiowatch.board.reader.STOP_WITHIN_S", 0.01)
    reader = reader_of(make_device().path)
    reader.start(never_returns)
    assert held.wait(WITHIN_S)
    with pytest.raises(RuntimeError, match="did not stop"):
        reader.stop()
    go_on.set()
    reader._thread.join(WITHIN_S)


class Script:
    """A port that gives its portions and then vanishes; `opened` keeps the names under which it was opened."""

    def __init__(self, *portions: bytes) -> None:
        self._portions = portions
        self.opened: list[str] = []

    def open(self, name: str, baud: int) -> "Script":
        assert baud == 9600
        self.opened.append(name)
        self._left = list(self._portions)
        return self

    def read_some(self, timeout_s: float) -> bytes:
        if self._left and timeout_s > 0:
            return self._left.pop(0)
        raise PortGone("The board vanished.")

    def write(self, data: bytes) -> None:
        assert data == b"?"

    def cancel(self) -> None: ...

    def close(self) -> None: ...


def test_that_a_board_is_found_again_under_another_name(lines: list[bytes]) -> None:
    script, events = Script(lines[1]), Events()
    other = PortSeen(name="/dev/ttyACM0", vid=0x2341, pid=0x43, serial="B2")
    seen = [[PortSeen(name="/dev/ttyACM0", vid=0x2341, pid=0x43, serial="A1")]]
    seen += [[other, PortSeen(name="/dev/ttyACM1", vid=0x2341, pid=0x43, serial="A1")]]
    reader = reader_of(
        "/dev/ttyACM0", open_port=script.open, list_ports=lambda: seen[min(len(script.opened), len(seen) - 1)]
    )
    reader.start(events.put)
    try:
        for expected in ("/dev/ttyACM0", "/dev/ttyACM1"):
            assert the_next(events, PortOpened).port == expected
            assert the_next(events, PortLost).port == expected
    finally:
        reader.stop()


def test_that_any_usb_board_will_do_if_none_is_named(lines: list[bytes]) -> None:
    script, events = Script(lines[1]), Events()
    seen = [PortSeen(name="/dev/ttyS0"), PortSeen(name="/dev/ttyUSB0", vid=0x1A86, pid=0x7523)]
    reader = reader_of(None, open_port=script.open, list_ports=lambda: seen)
    reader.start(events.put)
    try:
        assert the_next(events, PortOpened).port == "/dev/ttyUSB0"
    finally:
        reader.stop()


def test_that_a_board_that_is_not_there_is_told_once_and_looked_for_until_it_comes(lines: list[bytes]) -> None:
    script, events = Script(lines[1]), Events()
    looks = iter([[]] * 20)
    board = PortSeen(name="/dev/ttyUSB0", vid=0x1A86, pid=0x7523)
    reader = reader_of(board, open_port=script.open, list_ports=lambda: next(looks, [board]))
    reader.start(events.put)
    try:
        assert events.get(timeout=WITHIN_S) == PortLost(
            time_ms=NOW_MS, port="/dev/ttyUSB0", reason="No board was found: push its USB plug home."
        )
        assert isinstance(events.get(timeout=WITHIN_S), PortOpened)
    finally:
        reader.stop()


def test_that_the_ports_are_not_listed_while_a_board_is_read(
    make_device: Callable[[], Any], lines: list[bytes]
) -> None:
    device, events, looks = make_device(), Events(), []
    reader = reader_of(device.path, list_ports=lambda: looks.append(1) or [])
    reader.start(events.put)
    try:
        the_next(events, PortOpened)
        for line in lines[1:]:
            device.send(line)
            the_next(events, ReadingArrived | BoardTrouble)
        assert len(looks) == 1
    finally:
        reader.stop()


def test_that_an_own_sketch_is_read_once_its_columns_are_accepted(make_device: Callable[[], Any]) -> None:
    device, events = make_device(), Events()
    kept: list[tuple[str, ColumnMapping]] = []
    reader = reader_of(
        device.path,
        choose_way=lambda _port, _heard: Way(format="unchecked lines", baud=9600, make_intake=LooseIntake),
        keep_mapping=lambda board, mapping: kept.append((board.name, mapping)),
    )
    reader.start(events.put)
    try:
        the_next(events, PortOpened)
        device.send(b"\n" + b"Temp: 21.0 C, Humidity: 47.0 %\r\n" * 8)
        asked = the_next(events, MappingAsked)
        reader.accept(device.path, asked.mapping)
        device.send(b"Temp: 21.5 C, Humidity: 47.0 %\r\n")
        assert the_next(events, MappingHolds).mapping == asked.mapping
        reading = the_next(events, ReadingArrived).reading
        assert (reading.temperature_C, reading.checked) == (21.5, False)
        assert kept == [(device.path, asked.mapping)]
    finally:
        reader.stop()


def test_that_columns_of_no_board_are_refused() -> None:
    with pytest.raises(PortGone, match="No board"):
        reader_of("/dev/none").accept("/dev/none", ColumnMapping(style=Style.COLUMNS, columns=()))


class SilentPort:
    """A port that sends nothing; each read takes a second of `clock`."""

    def __init__(self, clock: SteppedClock) -> None:
        self._clock = clock

    def read_some(self, _timeout_s: float) -> bytes:
        self._clock.advance(1000)
        return b""

    def write(self, data: bytes) -> None:
        pass

    def cancel(self) -> None:
        pass

    def close(self) -> None:
        pass


def test_that_ports_that_cannot_be_listed_are_looked_for_no_more_often_than_others() -> None:
    """A second board comes, which the first is left for; then the computer refuses to list its ports, eight times."""
    clock, looked, waited = SteppedClock(NOW_MS), [], []
    boards = [PortSeen(name=f"/dev/ttyACM{number}", vid=0x2341, pid=0x43, serial=f"{number}") for number in range(2)]

    def list_ports() -> list[PortSeen]:
        looked.append(clock.utc_ms())
        if len(looked) <= 2:
            return boards[: len(looked)]
        if len(looked) == 10:
            reader._stopping.set()
        raise OSError("no list")

    reader = Reader(
        clock=clock, open_port=lambda *_: SilentPort(clock), list_ports=list_ports, look_every_s=1.0, wait=waited.append
    )
    reader.start(lambda _: None)
    reader._thread.join(WITHIN_S)
    assert len(looked) == 10
    assert waited == [1.0] * 8
