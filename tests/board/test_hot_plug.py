"""Boards that come and go, several ports, ports that are refused, and other devices beside the board."""

from __future__ import annotations

import re
from itertools import pairwise
from pathlib import Path

import pytest

from studiowatch.board.baud import RATES
from studiowatch.board.events import (
    BoardNamed,
    LineCounts,
    LineRefused,
    MappingAsked,
    MappingHolds,
    PortLost,
    PortOpened,
    ReadingArrived,
)
from studiowatch.board.intake import Intake
from studiowatch.board.loose_intake import LooseIntake
from studiowatch.board.loose_ways import every_way
from studiowatch.board.mapping import ColumnMapping
from studiowatch.board.patience import SILENT_S
from studiowatch.board.port import READ_TIMEOUT_S, PortSeen
from studiowatch.board.reader import NO_BOARD
from studiowatch.board.ways import CHECKED_LINES, Heard, Way
from studiowatch.studio.watch import SILENT_AFTER_S

from .computer import START_MS, Computer, Device, Talk, board, noise, silent

BOARD = PortSeen(name="/dev/ttyACM0", vid=0x2341, pid=0x43, serial="A1")
OTHER = PortSeen(name="/dev/ttyACM1", vid=0x2341, pid=0x43, serial="B2")
LINUX, WINDOWS, MACOS = "/dev/ttyUSB0", "COM7", "/dev/cu.usbserial-110"


def kinds(events: list) -> list[type]:
    return [type(event) for event in events if not isinstance(event, ReadingArrived)]


def the(kind: type, events: list) -> list:
    return [event for event in events if isinstance(event, kind)]


@pytest.mark.parametrize("name", [LINUX, WINDOWS, MACOS])
def test_that_a_board_that_is_plugged_in_is_opened_within_two_seconds(name: str) -> None:
    computer = Computer()
    computer.at(10.05, lambda: computer.plug_in(Device(PortSeen(name=name, vid=1, pid=2), board())))
    told = computer.watch(20)
    assert kinds(told) == [PortLost, PortOpened, BoardNamed]
    assert computer.told_s(the(PortOpened, told)[0]) <= 12.05
    assert len([at_s for at_s in computer.listed_s if at_s < 10]) <= 11  # once a second while there is none


def test_that_a_board_is_opened_within_two_seconds_while_another_port_is_listened_to() -> None:
    computer = Computer([Device(OTHER, silent)])
    computer.at(100.5, lambda: computer.plug_in(Device(BOARD, board())))
    told = computer.watch(110)
    assert [event.port for event in the(PortOpened, told)] == [OTHER.name, BOARD.name]
    assert min(at_s for at_s, name, _ in computer.opened if name == BOARD.name) <= 102.5
    assert the(PortLost, told)[0].reason == "/dev/ttyACM1 sends nothing that can be read."


@pytest.mark.parametrize("refusal", ["", "You may not open the port."])
def test_that_a_built_in_port_with_nothing_behind_it_is_no_board(refusal: str) -> None:
    built_in = Device(PortSeen(name="/dev/ttyS0"), silent, refusal=refusal)
    computer = Computer([built_in])
    computer.at(100.5, lambda: computer.plug_in(Device(BOARD, board())))
    told = computer.watch(110)
    assert kinds(told) == [PortLost, PortOpened, BoardNamed]
    assert (told[0].port, told[0].reason) == ("", NO_BOARD)
    assert told[1].port == BOARD.name
    assert min(at_s for at_s, name, _ in computer.opened if name == BOARD.name) <= 102.5


def test_that_a_board_on_a_built_in_port_is_read_all_the_same() -> None:
    built_in = PortSeen(name="COM1", description="Communications Port (COM1)")
    told = Computer([Device(built_in, board())]).watch(20)
    assert kinds(told) == [PortLost, PortOpened, BoardNamed]
    assert told[1].port == "COM1"


def test_that_a_built_in_port_beside_a_mute_board_is_tried_once_and_the_board_kept_to() -> None:
    computer = Computer([Device(PortSeen(name="/dev/ttyS0"), silent), Device(BOARD, silent)])
    told = computer.watch(600)
    assert kinds(told) == [PortOpened, PortLost, PortOpened]
    assert {event.port for event in told} == {BOARD.name}
    assert told[1].reason == "/dev/ttyACM0 sends nothing that can be read."
    assert [name for _, name, _ in computer.opened] == [BOARD.name, "/dev/ttyS0", BOARD.name]


def test_that_a_usb_board_beside_a_built_in_port_is_told_open_while_it_boots() -> None:
    told = Computer([Device(PortSeen(name="/dev/ttyS0"), silent), Device(BOARD, board(boot_ms=3000))]).watch(10)
    assert kinds(told) == [PortOpened, BoardNamed]
    assert told[0].time_ms == START_MS


def test_that_a_board_on_a_built_in_port_beside_another_usb_device_is_found() -> None:
    built_in = Device(PortSeen(name="COM1"), board())
    told = Computer([Device(BOARD, noise), built_in]).watch(60)
    assert told[-1].reading.temperature_C == 21.4
    assert [event.port for event in the(PortOpened, told)] == [BOARD.name, "COM1"]
    assert the(ReadingArrived, told)[-1].counts.faulty == 0


@pytest.mark.parametrize("vanishes_silently", [False, True])
def test_that_a_loss_is_told_within_two_seconds_and_the_board_read_again_without_a_fault(
    *, vanishes_silently: bool
) -> None:
    device = Device(BOARD, board(), vanishes_silently=vanishes_silently)
    computer = Computer([device])
    computer.at(10.05, lambda: computer.pull_out(device))
    computer.at(30.05, lambda: computer.plug_in(device))
    told = computer.watch(40)
    assert kinds(told) == [PortOpened, BoardNamed, PortLost, PortOpened, BoardNamed]
    assert computer.told_s(the(PortLost, told)[0]) <= 12.05
    assert computer.told_s(the(PortOpened, told)[1]) <= 32.05
    counts = the(ReadingArrived, told)[-1].counts
    assert (counts.faulty, counts.lost) == (0, 0)
    assert counts.resets == 1


def test_that_a_board_that_its_opening_restarts_is_waited_for_and_read_within_its_boot_and_a_second() -> None:
    told = Computer([Device(BOARD, board(boot_ms=3000))]).watch(10)
    assert kinds(told) == [PortOpened, BoardNamed]
    first = the(ReadingArrived, told)[0]
    assert first.counts == LineCounts(good=2)
    assert first.reading.time_ms - told[0].time_ms <= 4000


def test_that_a_board_pulled_out_and_put_back_is_read_before_anyone_is_told_that_it_is_silent() -> None:
    device = Device(BOARD, board(boot_ms=3000))
    computer = Computer([device])
    computer.at(10.05, lambda: computer.pull_out(device))
    computer.at(12.05, lambda: computer.plug_in(device))
    times_ms = [event.reading.time_ms for event in the(ReadingArrived, computer.watch(40))]
    assert max(later - earlier for earlier, later in pairwise(times_ms)) < SILENT_AFTER_S * 1000


def test_that_the_ports_are_not_listed_while_a_board_is_heard() -> None:
    computer = Computer([Device(BOARD, board())])
    computer.watch(600)
    assert [at_s for at_s in computer.listed_s if at_s > 3] == []


def test_that_the_port_that_sends_checked_lines_is_found_among_others_and_only_it_is_told() -> None:
    gps, mute = PortSeen(name="/dev/ttyUSB0", vid=1, pid=1), PortSeen(name="/dev/ttyUSB1", vid=1, pid=2)
    late = PortSeen(name="/dev/ttyUSB2", vid=1, pid=3)
    told = Computer([Device(gps, noise), Device(mute, silent), Device(late, board())]).watch(30)
    assert kinds(told) == [PortOpened, BoardNamed]
    assert told[0].port == late.name
    assert the(ReadingArrived, told)[-1].counts.faulty == 0


def test_that_the_board_read_last_is_tried_first_and_the_one_read_now_is_remembered() -> None:
    devices = [Device(BOARD, board()), Device(OTHER, board())]
    kept: list[PortSeen] = []
    computer = Computer(devices)
    computer.watch(10, last=OTHER, remember=kept.append)
    assert [name for _, name, _ in computer.opened] == [OTHER.name]
    assert kept == []
    computer = Computer(devices)
    computer.watch(10, remember=kept.append)
    assert kept == [BOARD]


def test_that_a_board_that_is_lost_is_replaced_by_another_and_read_again_when_it_is_back() -> None:
    first, second = Device(BOARD, board()), Device(OTHER, board())
    computer = Computer([first, second])
    computer.at(10, lambda: computer.pull_out(first))
    computer.at(30, lambda: computer.pull_out(second))
    computer.at(30, lambda: computer.plug_in(first))
    told = computer.watch(50)
    assert [event.port for event in the(PortOpened, told)] == [BOARD.name, OTHER.name, BOARD.name]


def test_that_ports_that_are_refused_are_told_with_the_reason_of_each_and_once() -> None:
    taken = Device(BOARD, board(), refusal="The port /dev/ttyACM0 is in use by another program: close that program.")
    computer = Computer([taken, Device(OTHER, silent)])
    told = computer.watch(60)
    assert kinds(told) == [PortLost]
    assert told[0].reason == (
        "No board answers. The port /dev/ttyACM0 is in use by another program: close that program. "
        "/dev/ttyACM1 sends nothing that can be read."
    )
    assert not the(LineRefused, told)


def test_that_a_port_that_is_free_again_is_read() -> None:
    taken = Device(BOARD, board(), refusal="in use")
    computer = Computer([taken])
    computer.at(10, lambda: setattr(taken, "refusal", ""))
    assert kinds(computer.watch(20)) == [PortLost, PortOpened, BoardNamed]


def test_that_a_device_that_is_no_board_is_opened_ever_more_seldom() -> None:
    computer = Computer([Device(BOARD, silent), Device(OTHER, noise)])
    computer.watch(3600)
    assert len(computer.opened) <= 2 * 3600 / 60
    assert len([at_s for at_s, *_ in computer.opened if at_s < 60]) >= 6


def test_that_a_slow_board_is_found_in_the_end() -> None:
    def slow(opened_ms: int) -> bytes:
        return board(boot_ms=12_000)(opened_ms)

    told = Computer([Device(BOARD, silent), Device(OTHER, slow)]).watch(120)
    assert told[-1].reading.temperature_C == 21.4


def test_that_the_only_port_is_never_left_however_long_it_says_nothing() -> None:
    computer = Computer([Device(BOARD, silent)])
    told = computer.watch(600)
    assert kinds(told) == [PortOpened]
    assert len(computer.opened) == 1


def hanging(*, after_ms: int) -> Talk:
    """Return a board that hangs so many ms after it was opened, until it is opened again."""
    whole = board(boot_ms=0)
    return lambda opened_ms: whole(opened_ms) if opened_ms < after_ms else b""


def test_that_a_board_that_hangs_is_opened_anew_after_a_minute_and_read_again() -> None:
    computer = Computer([Device(BOARD, hanging(after_ms=30_000))])
    told = computer.watch(100)
    (first, again) = [at_s for at_s, _, _ in computer.opened]
    last_s = first + 29.2  # a line each second, 0.2 s after it
    assert last_s + SILENT_S <= again <= last_s + SILENT_S + 2 * READ_TIMEOUT_S
    arrived = [(event.reading.time_ms - START_MS) / 1000 for event in the(ReadingArrived, told)]
    assert [at_s for at_s in arrived if last_s + 1 < at_s < again] == []
    assert len([at_s for at_s in arrived if at_s > again]) >= 5
    assert the(PortLost, told) == []


def test_that_a_board_that_hangs_on_a_built_in_port_is_read_again_too() -> None:
    computer = Computer([Device(PortSeen(name="/dev/ttyS0"), hanging(after_ms=30_000))])
    told = computer.watch(100)
    (first, again) = [at_s for at_s, _, _ in computer.opened]
    arrived = [(event.reading.time_ms - START_MS) / 1000 for event in the(ReadingArrived, told)]
    assert len([at_s for at_s in arrived if first < at_s < again]) >= 25
    assert len([at_s for at_s in arrived if at_s > again]) >= 5


def test_that_a_board_that_stays_silent_is_opened_ever_more_seldom_and_at_last_once_an_hour() -> None:
    device = Device(BOARD, board(boot_ms=0))
    computer = Computer([device])
    computer.at(10.0, lambda: setattr(device, "talk", silent))
    computer.watch(4 * 3600)
    waits_s = [after - before for (before, *_), (after, *_) in pairwise(computer.opened[1:])]
    assert waits_s == pytest.approx([120, 240, 480, 960, 1920, *[3600] * (len(waits_s) - 5)], abs=2 * READ_TIMEOUT_S)
    assert len(waits_s) >= 7


def test_that_a_board_that_speaks_every_few_minutes_is_not_opened_before_it_could() -> None:
    whole = board(boot_ms=0)

    def slow(opened_ms: int) -> bytes:
        """Say hello and a line as it is opened, and then a line every 200 s."""
        return whole(opened_ms) if opened_ms == 0 or opened_ms % 200_000 == 200 else b""

    computer = Computer([Device(BOARD, slow)])
    told = computer.watch(3600)
    assert len(computer.opened) == 3  # again after 60 s and after 120 s; then it is waited for through 240 s
    last_s = computer.opened[-1][0]
    assert len(the(ReadingArrived, told)) == 2 + 1 + (3600 - last_s) // 200


def test_that_a_board_that_hung_and_was_steady_since_is_opened_within_a_minute_when_it_hangs_again() -> None:
    computer = Computer([Device(BOARD, hanging(after_ms=300_000))])
    computer.watch(1200)
    hung_s = [299.2 + at_s for at_s, _, _ in computer.opened]
    opened_s = [at_s for at_s, _, _ in computer.opened[1:]]
    assert opened_s == pytest.approx([at_s + SILENT_S for at_s in hung_s[: len(opened_s)]], abs=2 * READ_TIMEOUT_S)
    assert len(opened_s) == 3


def test_that_a_named_port_is_not_left_for_a_board_that_comes() -> None:
    computer = Computer([Device(BOARD, silent)])
    computer.at(10, lambda: computer.plug_in(Device(OTHER, board())))
    computer.watch(60, wanted=BOARD.name)
    assert {name for _, name, _ in computer.opened} == {BOARD.name}


SLOW = Way(format="checked lines", baud=9600, make_intake=Intake)
FAST = Way(format="checked lines", baud=115_200, make_intake=Intake)
OF_ANOTHER_KIND = Way(format="other lines", baud=9600, make_intake=lambda: Intake())  # noqa: PLW0108 - not the same way


def by_what_was_heard(port: PortSeen, heard: Heard) -> Way | None:
    assert port in {BOARD, OTHER}
    if not heard.tried:
        return SLOW
    if heard.tried == (SLOW,):
        return FAST if any(byte > 0x7F for byte in heard.data) else OF_ANOTHER_KIND
    return None


@pytest.mark.parametrize("others", [[], [Device(OTHER, silent)]])
def test_that_another_baud_is_tried_by_what_was_heard_and_kept_when_the_board_returns(others: list[Device]) -> None:
    fast = Device(BOARD, board(), baud=115_200)
    computer = Computer([fast, *others])
    computer.at(20, lambda: computer.pull_out(fast))
    computer.at(22, lambda: computer.plug_in(fast))
    told = computer.watch(40, choose_way=by_what_was_heard)
    bauds = [baud for _, name, baud in computer.opened if name == BOARD.name]
    assert bauds == [9600, 115_200, 115_200]
    assert the(ReadingArrived, told)[-1].counts.resets == 1


def test_that_another_format_at_the_same_baud_is_tried_without_opening_the_port_again() -> None:
    formats: list[list[str]] = []

    def choose(port: PortSeen, heard: Heard) -> Way | None:
        formats.append([way.format for way in heard.tried])
        return by_what_was_heard(port, heard)

    computer = Computer([Device(BOARD, silent)])
    computer.watch(30, choose_way=choose)
    both = ["checked lines", "other lines"]
    assert formats[:6] == [[], both[:1], both, [], both[:1], both]
    assert len(computer.opened) == 1


def test_that_the_strict_way_is_as_fast_as_the_reference_sketch_speaks() -> None:
    sketch = Path(__file__).parents[2] / "firmware_notes" / "rack_sensor" / "rack_sensor.ino"
    (said,) = re.findall(r"kBaud = (\d+);", sketch.read_text(encoding="utf-8"))
    assert int(said) == CHECKED_LINES.baud


def sketch(every_ms: int = 1000) -> Talk:
    """Return a sketch of her own: two labelled numbers a line, from the first moment on."""
    return lambda opened_ms: b"Temp: 21.4 C, Humidity: 47.0 %\r\n" if opened_ms % every_ms == 300 else b""


def accepted_mapping() -> ColumnMapping:
    intake = LooseIntake()
    intake.feed(b"\n" + b"Temp: 21.4 C, Humidity: 47.0 %\r\n" * 8, START_MS)
    assert intake.mapping is not None
    return intake.mapping


@pytest.mark.parametrize("baud", RATES)
def test_that_an_own_sketch_that_was_accepted_is_found_at_its_rate(baud: int) -> None:
    computer = Computer([Device(BOARD, sketch(), baud=baud)])
    mapping = accepted_mapping()
    told = computer.watch(90, choose_way=every_way(lambda _: mapping))
    assert the(ReadingArrived, told)[-1].reading.temperature_C == 21.4
    assert computer.opened[-1][2] == baud


@pytest.mark.parametrize("is_accepted", [False, True])
def test_that_the_columns_of_an_own_sketch_are_told_again_when_it_is_plugged_in_again(
    is_accepted: bool,  # noqa: FBT001 - given by name
) -> None:
    own = Device(BOARD, sketch())
    computer = Computer([own])
    computer.at(40, lambda: computer.pull_out(own))
    computer.at(42, lambda: computer.plug_in(own))
    mapping = accepted_mapping() if is_accepted else None
    told = computer.watch(80, choose_way=every_way(lambda _: mapping))
    columns = the(MappingHolds if is_accepted else MappingAsked, told)
    assert [computer.told_s(event) > 42 for event in columns] == [False, True]


@pytest.mark.parametrize("every_s", [10, 60])
def test_that_an_own_sketch_that_sends_a_line_now_and_then_is_understood_where_it_is_alone(every_s: int) -> None:
    computer = Computer([Device(BOARD, sketch(every_s * 1000))])
    told = computer.watch(12 * every_s, choose_way=every_way(lambda _: None))
    assert the(MappingAsked, told)
