from collections.abc import Callable, Mapping
from queue import Queue
from typing import Any

import pytest

from studiowatch.board.events import BoardEvent, PortOpened, ReadingArrived
from studiowatch.board.intake import Intake
from studiowatch.board.onlooker import KEPT_LINES, HeardLine, Onlooker, PortFound
from studiowatch.board.port import PortGone, PortSeen
from studiowatch.board.reader import Reader
from studiowatch.board.simulated import SteppedClock
from studiowatch.board.ways import CHECKED_LINES
from studiowatch.speech.words import speak_by

from .test_reader import LOOK_OFTEN_S, NOW_MS, the_next

ONE, OTHER = PortSeen(name="/dev/one"), PortSeen(name="/dev/other")
# shared with the sketch's tests: CRC-16/CCITT-FALSE of it is 5962
GOOD = b"$D n=0 u=194 t=21.40 h=48.00 a=596.9 s=5001*5962\r\n"
BAD = b"$D n=0 u=194 t=21.40 h=48.01 a=596.9 s=5001*5962\r\n"


def hear(onlooker: Onlooker, intake: Intake, data: bytes, port: PortSeen = ONE) -> None:
    onlooker.heard(port, data, intake.feed(data, NOW_MS), NOW_MS)


@pytest.fixture
def onlooker() -> Onlooker:
    made = Onlooker()
    made.look(on=True)
    return made


def test_that_lines_are_kept_as_they_came_and_refused_ones_with_the_reason(onlooker: Onlooker) -> None:
    hear(onlooker, Intake(), GOOD + BAD + GOOD)
    first, second, third = onlooker.lines()
    assert first == HeardLine(number=1, time_ms=NOW_MS, text=GOOD.decode().strip())
    assert second.text == BAD.decode().strip()
    assert "checksum" in second.reason
    assert (third.number, third.reason) == (3, "")


def test_that_a_line_in_two_portions_is_one_line(onlooker: Onlooker) -> None:
    intake = Intake()
    hear(onlooker, intake, b"\n" + GOOD[:20])
    hear(onlooker, intake, GOOD[20:])
    assert [line.text for line in onlooker.lines()] == ["", GOOD.decode().strip()]


def test_that_a_line_that_broke_off_is_told_beside_the_one_that_cut_it(onlooker: Onlooker) -> None:
    intake = Intake()
    hear(onlooker, intake, GOOD + b"$D n=1 u=" + GOOD)
    assert [bool(line.reason) for line in onlooker.lines()] == [False, False, True]
    assert onlooker.lines()[-1].text == "$D n=1 u="


def test_that_nothing_is_kept_while_nobody_looks(onlooker: Onlooker) -> None:
    hear(onlooker, Intake(), GOOD)
    onlooker.look(on=False)
    hear(onlooker, Intake(), GOOD)
    assert onlooker.lines() == ()


def test_that_only_the_newest_lines_are_held(onlooker: Onlooker) -> None:
    hear(onlooker, Intake(), GOOD * (KEPT_LINES + 7))
    assert len(onlooker.lines()) == KEPT_LINES
    assert onlooker.lines()[0].number == 8


def test_that_another_port_begins_anew(onlooker: Onlooker) -> None:
    hear(onlooker, Intake(), GOOD + GOOD)
    hear(onlooker, Intake(), GOOD, OTHER)
    assert [line.number for line in onlooker.lines()] == [3]


def test_that_a_port_that_went_is_not_shown_and_one_that_is_read_stays() -> None:
    onlooker = Onlooker()
    onlooker.listed([ONE, OTHER])
    onlooker.gave_up(OTHER, "It is in use.")
    onlooker.reads(ONE, "checked lines", 9600)
    assert onlooker.ports() == (
        PortFound(port=ONE, is_read=True, format="checked lines", baud=9600),
        PortFound(port=OTHER, reason="It is in use."),
    )
    onlooker.listed([])
    assert [one.port for one in onlooker.ports()] == [ONE]


def test_that_the_board_that_is_chosen_is_read_instead(make_device: Callable[[], Any], vectors: Mapping) -> None:
    line = vectors["accepted"][1]["line"].encode()
    first, second = make_device(), make_device()
    ports = [PortSeen(name=device.path, vid=1, pid=n, serial="s") for n, device in enumerate((first, second))]
    events: Queue[BoardEvent] = Queue()
    reader = Reader(clock=SteppedClock(NOW_MS), wanted=ports[0], list_ports=lambda: ports, look_every_s=LOOK_OFTEN_S)
    reader.start(events.put)
    try:
        assert the_next(events, PortOpened).port == first.path
        first.send(line)
        the_next(events, ReadingArrived)
        assert [one.is_read for one in reader.onlooker.ports()] == [True, False]
        reader.choose(second.path)
        assert the_next(events, PortOpened).port == second.path
        second.send(line)
        the_next(events, ReadingArrived)
        left, read = reader.onlooker.ports()
        assert read.is_read
        assert left.reason == f"{first.path} was left: you chose another port."
    finally:
        reader.stop()


def test_that_a_port_that_is_not_there_cannot_be_chosen() -> None:
    with pytest.raises(PortGone, match="plug the board in"):
        Reader(clock=SteppedClock(NOW_MS)).choose("/dev/nowhere")


def test_that_a_format_is_told_in_her_language_and_keeps_its_name_for_programs(onlooker: Onlooker) -> None:
    speak_by(lambda text, _about, _number: {"checked lines": "geprüfte Zeilen"}.get(text, ""))
    onlooker.reads(ONE, CHECKED_LINES.format, CHECKED_LINES.baud)
    onlooker.tries(OTHER, CHECKED_LINES.format, CHECKED_LINES.baud)
    assert [one.format for one in onlooker.ports()] == ["geprüfte Zeilen"] * 2
    assert CHECKED_LINES.format == "checked lines"
