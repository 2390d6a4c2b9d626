"""`boards`: every port there is, what answers on it, and in which format; on a clock that only reading moves on."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path

import pytest

from studiowatch.board.intake import Intake
from studiowatch.board.port import PortGone, PortRefused, PortSeen
from studiowatch.board.simulated import SteppedClock
from studiowatch.board.ways import CHECKED_LINES, ChooseWay, Heard, Way, checked_lines_only
from studiowatch.board.wire import Kind, encode
from studiowatch.cli.commands import run
from studiowatch.compose import outfit

from .conftest import Answer

HELLO = encode(
    Kind.HELLO, {"v": "1", "id": "8DF9E785", "fw": "rack-ref/0.2", "b": "1", "th": "sht4x", "sn": "CAFE0042"}
)
DATA = encode(Kind.DATA, {"n": "0", "u": "194", "t": "21.40", "h": "48.00"})
STUCK = encode(Kind.ERROR, {"n": "1", "u": "1194", "c": "bus", "m": "timeout"})


@dataclass
class Desk:
    """Ports, each with what it sends at 9600 baud, or why it cannot be opened."""

    says: dict[str, bytes | Exception]
    clock: SteppedClock = field(default_factory=lambda: SteppedClock(1_772_442_000_000))
    opened: list[tuple[str, int]] = field(default_factory=list)

    def open_port(self, name: str, baud: int) -> LinePort:
        self.opened.append((name, baud))
        said = self.says.get(name, PortGone("There is no such port."))
        if isinstance(said, Exception):
            raise said
        return LinePort(self.clock, said if baud == 9600 else b"\x80\xff" * 50)


class LinePort:
    """A port that sends its bytes once and is silent after them."""

    def __init__(self, clock: SteppedClock, data: bytes) -> None:
        self._clock = clock
        self._data = data

    def read_some(self, timeout_s: float) -> bytes:
        data, self._data = self._data, b""
        if not data:
            self._clock.advance(round(timeout_s * 1000))
        return data

    def write(self, data: bytes) -> None:
        assert data == b"?"

    def cancel(self) -> None: ...

    def close(self) -> None: ...


@pytest.fixture
def boards(capsys: pytest.CaptureFixture[str], tmp_path: Path):  # noqa: ANN201 - a local function
    def answer(
        desk: Desk, *words: str, ports: Sequence[PortSeen] = (), choose_way: ChooseWay | None = checked_lines_only
    ) -> Answer:
        seen = ports or [PortSeen(name=name) for name in desk.says]
        parts = replace(
            outfit(), clock=desk.clock, data_folder=tmp_path, list_ports=lambda: seen, open_port=desk.open_port
        )
        if choose_way is not None:
            parts = replace(parts, choose_way=lambda _: choose_way)
        code = run(["boards", *words], parts)
        captured = capsys.readouterr()
        return Answer(code, captured.out, captured.err)

    return answer


def test_that_a_board_is_told_with_its_sensor_its_format_and_what_it_reads(boards) -> None:  # noqa: ANN001
    usb = PortSeen(name="COM7", description="USB serial (COM7)", vid=0x1A86, pid=0x7523, serial="5")
    (one,) = boards(Desk({"COM7": HELLO + DATA}), "--json", ports=[usb]).document["boards"]
    assert one == {
        "port": "COM7",
        "description": "USB serial (COM7)",
        "usb": {"vid": 0x1A86, "pid": 0x7523, "serial": "5"},
        "format": "checked lines",
        "baud": 9600,
        "board": "8DF9E785",
        "sensor": "sht4x",
        "sensor_serial": "CAFE0042",
        "firmware": "rack-ref/0.2",
        "reading": {"temperature_C": 21.4, "humidity_pct": 48.0},
        "lines": {"good": 2, "faulty": 0},
        "sample": None,
        "columns": None,
        "trouble": None,
    }


def test_that_the_table_says_the_same_in_a_line(boards) -> None:  # noqa: ANN001
    answer = boards(Desk({"COM7": HELLO + DATA}))
    assert answer.code == 0
    assert answer.out == (
        "COM7: checked lines at 9600 baud, sht4x, board 8DF9E785, rack-ref/0.2; temperature_C 21.4, humidity_pct 48\n"
    )


def test_that_what_cannot_be_read_is_shown_and_is_a_fault_to_act_on(boards) -> None:  # noqa: ANN001
    desk = Desk({"/dev/ttyUSB0": b"T=21.4;H=48\r\n", "/dev/ttyUSB1": b""})
    answer = boards(desk)
    assert answer.code == 1
    assert answer.out == (
        "/dev/ttyUSB0: sends what cannot be read at 9600 baud: T=21.4;H=48\\x0d\\x0a\n/dev/ttyUSB1: silent\n"
    )
    noisy, mute = boards(desk, "--json").document["boards"]
    assert (noisy["format"], noisy["sample"]) == ("unknown", "T=21.4;H=48\\x0d\\x0a")
    assert (mute["format"], mute["sample"], mute["baud"]) == (None, None, 9600)


def test_that_a_board_in_trouble_answers_and_says_so(boards) -> None:  # noqa: ANN001
    answer = boards(Desk({"COM7": HELLO + STUCK}))
    assert answer.code == 0
    assert "check the sensor's wires (bus timeout)" in answer.out
    assert "checked lines" in answer.out


def test_that_ports_that_cannot_be_opened_say_why(boards) -> None:  # noqa: ANN001
    refusals = {
        "a": PortRefused("The port a is in use by another program: close that program."),
        "b": PortGone("Gone."),
    }
    answer = boards(Desk(refusals))
    assert answer.code == 1
    assert answer.out == "a: The port a is in use by another program: close that program.\nb: Gone.\n"


def test_that_wireless_links_are_listed_last_and_not_opened(boards) -> None:  # noqa: ANN001
    ports = [PortSeen(name="/dev/cu.Bluetooth-Incoming-Port"), PortSeen(name="/dev/cu.usbmodem1", vid=1, pid=2)]
    desk = Desk({"/dev/cu.usbmodem1": HELLO + DATA})
    first, last = boards(desk, "--json", ports=ports).document["boards"]
    assert first["port"] == "/dev/cu.usbmodem1"
    assert (last["baud"], last["format"]) == (None, None)
    assert "not listened to" in last["trouble"]
    assert desk.opened == [("/dev/cu.usbmodem1", 9600)]


def test_that_each_way_is_tried_and_the_one_that_makes_sense_is_named(boards) -> None:  # noqa: ANN001
    fast = Way(format="fast lines", baud=115_200, make_intake=Intake)

    def fast_first(_: PortSeen, heard: Heard) -> Way | None:
        return {(): fast, (fast,): CHECKED_LINES}.get(heard.tried)

    desk = Desk({"COM7": HELLO + DATA})
    (one,) = boards(desk, "--json", choose_way=fast_first).document["boards"]
    assert (one["format"], one["baud"]) == ("checked lines", 9600)
    assert desk.opened == [("COM7", 115_200), ("COM7", 9600)]


OWN_SKETCH = b"\r\n" + b"T %.1f H %.1f\r\n" % (21.4, 48.0) * 8


def test_that_the_columns_of_an_own_sketch_are_shown_and_kept_once_they_are_said(boards) -> None:  # noqa: ANN001
    desk = Desk({"COM7": OWN_SKETCH})
    shown = boards(desk, choose_way=None)
    assert "unchecked lines at 9600 baud" in shown.out
    assert "temperature_C" not in [word for word in shown.out.split() if word.startswith("temperature_C 2")]
    refused = boards(desk, "--accept", "COM7", choose_way=None)
    assert refused.code == 2
    assert "--column T=CHANNEL:UNIT" in refused.err
    said = ("--column", "T=temperature_C:°C", "--column", "H=humidity_pct:%")
    kept = boards(desk, "--accept", "COM7", *said, choose_way=None)
    assert kept.code == 0
    assert kept.out == "T: temperature_C in °C\nH: humidity_pct in %\n"
    (one,) = boards(desk, "--json", choose_way=None).document["boards"]
    assert one["reading"] == {"temperature_C": 21.4, "humidity_pct": 48.0}
    assert [column["channel"] for column in one["columns"]] == ["temperature_C", "humidity_pct"]


def test_that_other_programs_read_what_was_accepted(boards) -> None:  # noqa: ANN001
    said = ("--column", "T=temperature_C:°C", "--column", "H=none")
    kept = boards(Desk({"COM7": OWN_SKETCH}), "--accept", "COM7", *said, "--json", choose_way=None)
    assert (kept.code, kept.document["port"]) == (0, "COM7")
    assert [(one["key"], one["channel"], one["unit"]) for one in kept.document["columns"]] == [
        ("T", "temperature_C", "°C"),
        ("H", None, None),
    ]


def test_that_a_port_that_is_not_listed_may_be_accepted_as_it_may_be_recorded(boards) -> None:  # noqa: ANN001
    desk = Desk({"/dev/pts/7": OWN_SKETCH})
    said = ("--column", "T=temperature_C:°C", "--column", "H=none")
    kept = boards(desk, "--accept", "/dev/pts/7", *said, ports=[PortSeen(name="COM3")], choose_way=None)
    assert (kept.code, kept.out) == (0, "T: temperature_C in °C\nH: not used\n")


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (("--column", "T=none"), "--column goes with --accept"),
        (("--accept", "."), "--accept is '.', which is no serial port"),
        (("--accept", "COM8"), "No unchecked lines with numbers came from COM8"),
        (("--accept", "COM7", "--column", "T=none", "--column", "H=none"), "No column of COM7 would be read"),
        (("--accept", "COM7", "--column", "X=none"), "There is no column 'X'"),
        (("--accept", "COM7", "--column", "T=warmth:°C"), "channels are temperature_C"),
        (("--accept", "COM7", "--column", "T=temperature_C:%"), "unit '%' cannot be of temperature_C"),
    ],
)
def test_that_columns_that_cannot_be_are_refused(boards, words: Sequence[str], told: str) -> None:  # noqa: ANN001
    answer = boards(Desk({"COM7": OWN_SKETCH}), *words, choose_way=None)
    assert answer.code == 2
    assert told in answer.err
