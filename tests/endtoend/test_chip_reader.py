"""The reference sketch's machine code, read by the program: what reaches the room when line, port or board fails."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from contextlib import ExitStack
from pathlib import Path
from queue import Queue
from typing import TypeVar

import pytest

from studiowatch.board.events import (
    BoardEvent,
    BoardNamed,
    BoardTrouble,
    LineCounts,
    LineRefused,
    PortLost,
    PortOpened,
    ReadingArrived,
)
from studiowatch.board.intake import Intake
from studiowatch.board.port import PortSeen, ports
from studiowatch.board.reader import Reader
from studiowatch.board.simulated import SteppedClock
from studiowatch.room.readings import Reading

from .chip import Chip
from .host import Host, checked

NOW_MS = 1_772_442_000_000
WITHIN_S = 20.0  # a wait that is not met by then is a failure; nothing here waits for it to pass
FAST, AS_FAST_AS_IT_CAN = 20, 0  # board seconds in a second
LINES = re.compile(rb"\$[^$\n]*\n")
pytestmark = pytest.mark.machine_code

Events = Queue[BoardEvent]
E = TypeVar("E")


def the_next(events: Events, kind: type[E]) -> E:
    while not isinstance(event := events.get(timeout=WITHIN_S), kind):
        pass
    return event


def next_reading(events: Events, fits: Callable[[Reading], bool]) -> ReadingArrived:
    """Pass over events up to the first reading that fits."""
    while not fits((arrived := the_next(events, ReadingArrived)).reading):
        pass
    return arrived


def is_measured(reading: Reading) -> bool:
    return reading.temperature_C is not None


@pytest.fixture
def listen() -> Iterator[Callable[..., Events]]:
    """Start the program's own reader: ``listen(wanted, list_ports=ports) -> Events``; it stops at the end."""
    with ExitStack() as readers:

        def listen_to(wanted: str | PortSeen, list_ports: Callable[[], Sequence[PortSeen]] = ports) -> Events:
            events = Events()
            reader = Reader(clock=SteppedClock(NOW_MS), wanted=wanted, list_ports=list_ports, look_every_s=0.01)
            reader.start(events.put)
            readers.callback(reader.stop)
            return events

        yield listen_to


def test_that_a_reset_in_the_middle_of_a_line_is_one_fault_and_one_restart(connect: Callable[..., Host]) -> None:
    host, intake = connect(), Intake()
    raw = host.raw_lines(1.35)  # the line of the second second is on its way
    host.chip.tell("reset")
    raw += host.raw_lines(1.5)
    events = intake.feed(b"".join(raw), NOW_MS)
    arrived = [event.reading for event in events if isinstance(event, ReadingArrived)]
    assert [reading.temperature_C for reading in arrived] == [21.4, 21.4, 21.4]  # one before it, two after it
    assert intake.counts.resets == 1
    assert intake.counts.faulty == 1
    assert intake.counts.good == len(arrived) + 2  # and two hellos


@pytest.mark.parametrize("fault", ["drop", "flip"])
def test_that_bytes_dropped_or_flipped_cost_lines_and_never_change_one(
    connect: Callable[..., Host], fault: str
) -> None:
    span_s, share = 30, 0.006  # of the bytes: about one line in four
    sent = connect(seed=5).raw_lines(span_s)
    worn = connect(seed=5)
    worn.chip.tell(f"{fault} {share}")
    came = b"".join(worn.raw_lines(span_s))

    whole = [raw for raw in LINES.findall(came) if checked(raw)]
    assert {raw.rstrip() for raw in whole} < {raw.rstrip() for raw in sent}  # a line may do without its CR
    numbers = [int(line["n"]) for raw in whole if (line := checked(raw)) and line.kind == "D"]
    assert 0.5 * span_s < len(numbers) < span_s - 3

    intake, unworn = Intake(), Intake()
    measured = [event.reading for event in unworn.feed(b"".join(sent), NOW_MS) if isinstance(event, ReadingArrived)]
    arrived = [event.reading for event in intake.feed(came, NOW_MS) if isinstance(event, ReadingArrived)]
    assert len(arrived) == len(numbers)
    assert all(reading in measured for reading in arrived)
    assert intake.counts.good == len(whole)
    assert intake.counts.lost == numbers[-1] - numbers[0] + 1 - len(numbers)
    assert intake.counts.faulty >= 3
    assert intake.counts.resets == 0


def test_that_a_board_pulled_out_is_told_and_read_on_when_it_is_back(
    start_chip: Callable[..., Chip], listen: Callable[..., Events], tmp_path: Path
) -> None:
    chip = start_chip(speed=FAST, link=tmp_path / "board")
    events = listen(chip.pty)
    named = the_next(events, BoardNamed)
    assert named.boots == 1
    next_reading(events, is_measured)
    chip.tell("unplug")
    assert the_next(events, PortLost).reason.endswith("vanished: push its USB plug home.")
    chip.tell("plug")
    assert isinstance(events.get(timeout=WITHIN_S), PortOpened)
    back = the_next(events, BoardNamed)
    assert (back.board_id, back.boots) == (named.board_id, 2)
    assert next_reading(events, is_measured).counts.resets == 1


def test_that_two_boards_are_told_apart_even_when_their_ports_change_places(
    start_chip: Callable[..., Chip], listen: Callable[..., Events], tmp_path: Path
) -> None:
    names = [tmp_path / "port0", tmp_path / "port1"]
    boards = {"N1": start_chip(speed=FAST, seed=1, link=tmp_path / "N1"), "N2": start_chip(speed=FAST, seed=2)}
    boards["N1"].tell("t 18")
    boards["N2"].tell("t 25")
    targets = {boards["N1"].pty: "N1", boards["N2"].pty: "N2"}

    def plug_into(name: Path, serial: str) -> None:
        name.symlink_to(boards[serial].pty)

    def list_ports() -> list[PortSeen]:
        there = [(name, str(name.readlink())) for name in names if name.is_symlink()]
        return [
            PortSeen(name=str(name), vid=1, pid=1, serial=targets[pty]) for name, pty in there if Path(pty).exists()
        ]

    plug_into(names[0], "N1")
    plug_into(names[1], "N2")
    cold, warm = (listen(PortSeen(name="", vid=1, pid=1, serial=serial), list_ports) for serial in boards)
    cold_board, warm_board = the_next(cold, BoardNamed), the_next(warm, BoardNamed)
    assert cold_board.board_id != warm_board.board_id
    assert next_reading(cold, is_measured).reading.temperature_C == pytest.approx(18, abs=0.01)
    assert next_reading(warm, is_measured).reading.temperature_C == pytest.approx(25, abs=0.01)

    boards["N1"].tell("unplug")
    the_next(cold, PortLost)
    names[0].unlink()
    names[0].symlink_to(boards["N2"].pty)  # the name that the first board had is now another name of the second
    boards["N1"].tell("plug")
    names[1].unlink()
    plug_into(names[1], "N1")
    assert the_next(cold, PortOpened).port == str(names[1])
    assert the_next(cold, BoardNamed).board_id == cold_board.board_id
    assert next_reading(cold, is_measured).reading.temperature_C == pytest.approx(18, abs=0.01)


def test_that_a_second_program_is_refused_the_port_and_the_first_reads_on(
    start_chip: Callable[..., Chip], listen: Callable[..., Events]
) -> None:
    chip = start_chip(speed=FAST)
    first = listen(chip.pty)
    next_reading(first, is_measured)
    assert the_next(listen(chip.pty), PortLost).reason.endswith("is in use by another program: close that program.")
    before = next_reading(first, is_measured).counts
    after = next_reading(first, is_measured).counts
    assert after == LineCounts(good=before.good + 1)


@pytest.mark.parametrize("baud", [1200, 2400, 4800, 19200, 38400, 57600, 115200])
def test_that_a_wrong_speed_gives_no_line_and_few_printable_bytes(connect: Callable[..., Host], baud: int) -> None:
    host = connect(baud=baud)
    host.chip.tell("run 5")
    host.port.timeout = 0  # all that came is there
    came = host.port.read(4096)
    assert len(came) > 40
    printable = sum(byte in b"\t\r\n" or 0x20 <= byte < 0x7F for byte in came)
    assert printable < 0.9 * len(came)  # the wire format's threshold for trying another speed
    intake = Intake()
    intake.feed(came, NOW_MS)
    assert intake.counts.good == 0


def test_that_a_board_at_another_speed_is_refused_until_it_starts_anew(
    start_chip: Callable[..., Chip], listen: Callable[..., Events]
) -> None:
    chip = start_chip(speed=AS_FAST_AS_IT_CAN)
    events = listen(chip.pty)
    good = next_reading(events, is_measured).counts.good
    chip.tell("baud 19200")  # until the sketch sets its own speed again
    refused = the_next(events, LineRefused)
    while "longer" not in refused.reason:  # a whole line's worth of garbage
        refused = the_next(events, LineRefused)
    assert refused.counts.good <= good + 2  # what was under way when the speed changed
    chip.tell("reset")
    assert next_reading(events, is_measured).counts.resets == 1


def test_that_a_stuck_bus_reaches_the_room_as_a_fault_and_air_is_still_measured(
    start_chip: Callable[..., Chip], listen: Callable[..., Events]
) -> None:
    chip = start_chip(speed=FAST)
    events = listen(chip.pty)
    next_reading(events, is_measured)
    chip.tell("stuck 1")
    trouble = the_next(events, BoardTrouble)
    assert (trouble.code, trouble.counts.troubles) == ("bus", 1)
    assert trouble.message
    blind = next_reading(events, lambda reading: not is_measured(reading) and reading.air_signal_mV is not None).reading
    assert {fault.code for fault in blind.faults} == {trouble.code}
    chip.tell("stuck 0")
    counts = next_reading(events, is_measured).counts
    assert (counts.lost, counts.troubles) == (0, 1)
