"""The reference sketch's machine code, line by line, over the serial port of the simulated board."""

from __future__ import annotations

import binascii
import re
from collections.abc import Callable, Iterator
from contextlib import ExitStack
from dataclasses import dataclass
from itertools import pairwise
from pathlib import Path

import pytest
import serial

from . import chip as chip_module
from .chip import Chip, ChipError, skip_reason, time_of

NOTES = Path(__file__).resolve().parents[2] / "firmware_notes" / "README.md"
LINE = re.compile(rb"\$([HDE])((?: [a-z][a-z0-9]{0,7}=[!-)+-~]+)+)\*([0-9A-F]{4})\r?\n?")
LONGEST_LINE = 160
READ_WITHIN_S = 5


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """A line whose grammar and checksum are right."""

    kind: str
    values: dict[str, str]

    def __getitem__(self, key: str) -> str:
        return self.values[key]


def checked(raw: bytes) -> Line | None:
    """Check one line; the checksum is the standard library's, not the project's."""
    match = LINE.fullmatch(raw)
    if not match or len(raw.rstrip()) > LONGEST_LINE:
        return None
    covered = raw[1 : raw.index(b"*")]
    if binascii.crc_hqx(covered, 0xFFFF) != int(match[3], 16):
        return None
    pairs = (pair.partition("=") for pair in match[2].decode("ascii").split())
    return Line(kind=match[1].decode("ascii"), values={key: value for key, _, value in pairs})


class Host:
    """A program that listens to a held chip: time passes only in `hear`."""

    def __init__(self, chip: Chip, port: serial.Serial) -> None:
        self.chip = chip
        self.port = port
        self._lines_read = 0

    def raw_lines(self, chip_seconds: float) -> list[bytes]:
        """Let the chip run and take every line it sent."""
        self.chip.tell(f"run {chip_seconds}")
        sent = int(self.chip.tell("time").partition(" lines ")[2].split()[0])
        lines = [self.port.readline() for _ in range(sent - self._lines_read)]
        assert all(line.endswith(b"\n") for line in lines), f"nothing came within {READ_WITHIN_S} s"
        self._lines_read = sent
        return lines

    def hear(self, chip_seconds: float) -> list[Line]:
        """Take the checked lines; blank lines, which a boot sends first, are left out."""
        raw = [line for line in self.raw_lines(chip_seconds) if line.strip()]
        lines = [checked(line) for line in raw]
        assert None not in lines, raw
        return [line for line in lines if line]

    def hear_data(self, chip_seconds: float) -> list[Line]:
        """Take the data lines only."""
        return [line for line in self.hear(chip_seconds) if line.kind == "D"]


@pytest.fixture
def connect(start_chip: Callable[..., Chip]) -> Iterator[Callable[..., Host]]:
    """Power a held board and open its port: ``connect(seed=1, sensor="sht4x") -> Host``."""
    with ExitStack() as ports:

        def connect_one(*, seed: int = 1, sensor: str = "sht4x") -> Host:
            chip = start_chip(speed=None, seed=seed)
            chip.tell(f"sensor {sensor}")
            return Host(chip, ports.enter_context(serial.Serial(chip.pty, 9600, timeout=READ_WITHIN_S)))

        yield connect_one


@pytest.mark.machine_code
@pytest.mark.parametrize(
    ("sensor", "serial_number"), [("sht4x", "CAFE0042"), ("sht3x", "BEEF0031"), ("aht20", "00000000")]
)
def test_that_a_board_introduces_itself_when_it_starts(
    connect: Callable[..., Host], sensor: str, serial_number: str
) -> None:
    hello = connect(sensor=sensor).hear(0.8)[0]
    assert hello.kind == "H"
    assert hello["v"] == "1"
    assert hello["b"] == "1"
    assert hello["rc"] == "p"
    assert (hello["th"], hello["sn"]) == (sensor, serial_number)
    assert hello["per"] == "1000"
    assert hello["ch"] == "t:Cel,h:%RH,a:mV,s:mV"


@pytest.mark.machine_code
@pytest.mark.parametrize("sensor", ["sht4x", "sht3x", "aht20"])
@pytest.mark.parametrize(("temperature_C", "humidity_pct"), [(21.37, 48.25), (-2.25, 61.30), (34.99, 5.05)])
def test_that_a_line_says_what_the_sensor_felt(
    connect: Callable[..., Host], sensor: str, temperature_C: float, humidity_pct: float
) -> None:
    host = connect(sensor=sensor)
    host.chip.tell(f"t {temperature_C}")
    host.chip.tell(f"h {humidity_pct}")
    line = host.hear_data(0.8)[0]
    # resolution 0.01 °C and 0.01 %RH: data sheets of the SHT4x and SHT3x (AHT20: 0.01 °C, 0.024 %RH)
    assert float(line["t"]) == pytest.approx(temperature_C, abs=0.01)
    assert float(line["h"]) == pytest.approx(humidity_pct, abs=0.01)


@pytest.mark.machine_code
@pytest.mark.parametrize(
    ("sensor", "frame", "values", "within"),
    [
        # Figure of a measurement in the SHTC3 data sheet, "63 %RH and 23.7 °C": the SHT3x has its frame and formulas.
        pytest.param("sht3x", "648BC7A1331C", (23.7, 63), (0.05, 0.5), id="sht3x-data-sheet"),
        # Ends of both scales, SHT4x data sheet section 4.6: T = -45 + 175 S/65535, RH = -6 + 125 S/65535.
        pytest.param("sht4x", "000081000081", (-45, -6), (0.005, 0.005), id="sht4x-low-end"),
        pytest.param("sht4x", "FFFFACFFFFAC", (130, 119), (0.005, 0.005), id="sht4x-high-end"),
        # A frame of a real AHT20 with its values, printed beside an open-source reader for it;
        # half the last digit of the line.
        pytest.param("aht20", "1C3B5E8688B2D2", (31.674576, 23.191071), (0.005, 0.005), id="aht20-recorded"),
    ],
)
def test_that_a_published_frame_gives_its_published_values(
    connect: Callable[..., Host],
    sensor: str,
    frame: str,
    values: tuple[float, float],
    within: tuple[float, float],
) -> None:
    host = connect(sensor=sensor)
    host.chip.tell(f"frame {frame}")
    line = host.hear_data(0.8)[0]
    assert float(line["t"]) == pytest.approx(values[0], abs=within[0])
    assert float(line["h"]) == pytest.approx(values[1], abs=within[1])


@pytest.mark.machine_code
def test_that_the_bead_and_the_supply_are_measured(connect: Callable[..., Host]) -> None:
    host = connect()
    host.chip.tell("vcc 4600")
    host.chip.tell("air 900")
    host.chip.tell("noise 0")
    line = host.hear_data(0.8)[0]
    # a 10-bit converter: the 1100 mV reference is one of 1024 steps of the supply, ATmega328P data sheet
    step_mV = 4600 / 1024
    supply_within_mV = 4600 * step_mV / 1100
    assert float(line["s"]) == pytest.approx(4600, abs=supply_within_mV)
    assert float(line["a"]) == pytest.approx(900, abs=step_mV + 900 * supply_within_mV / 4600)


@pytest.mark.machine_code
def test_that_moved_air_shows_in_the_next_line_and_fully_in_the_one_after(connect: Callable[..., Host]) -> None:
    host = connect()
    still = float(host.hear_data(3)[-1]["a"])
    told_at_s = time_of(host.chip.tell("air 900"))
    after = host.hear_data(2)
    assert told_at_s == pytest.approx(3, abs=0.01)
    first, second = (float(line["a"]) for line in after)
    converter_step_mV = 5000 / 1024
    assert first > still + 2 * converter_step_mV
    assert second == pytest.approx(still + 300, abs=2 * converter_step_mV)


@pytest.mark.machine_code
def test_that_a_lost_sensor_is_a_code_and_never_an_old_number(connect: Callable[..., Host]) -> None:
    host = connect()
    assert host.hear_data(0.8)[0]["t"] == "21.40"
    host.chip.tell("sensor none")
    lines = host.hear(3)
    data = [line for line in lines if line.kind == "D"]
    assert [(line["t"], line["h"]) for line in data] == [("!nak", "!nak"), ("!none", "!none"), ("!none", "!none")]
    assert [line["th"] for line in lines if line.kind == "H"] == ["none"]


@pytest.mark.machine_code
def test_that_another_sensor_is_found_and_introduced(connect: Callable[..., Host]) -> None:
    host = connect(sensor="none")
    assert host.hear_data(0.8)[0]["t"] == "!none"
    host.chip.tell("sensor sht3x")
    lines = host.hear(3)
    assert [line["sn"] for line in lines if line.kind == "H"] == ["BEEF0031"]
    assert lines[-1]["t"] == "21.40"


@pytest.mark.machine_code
@pytest.mark.parametrize("sensor", ["sht4x", "sht3x", "aht20"])
def test_that_a_bad_checksum_on_the_bus_costs_one_reading(connect: Callable[..., Host], sensor: str) -> None:
    host = connect(sensor=sensor)
    host.chip.tell("crcbad 1")
    assert [line["t"] for line in host.hear_data(1.8)] == ["!crc", "21.40"]


@pytest.mark.machine_code
def test_that_a_stuck_bus_is_reported_once_and_survived(connect: Callable[..., Host]) -> None:
    host = connect()
    host.hear(0.5)
    host.chip.tell("stuck 1")
    lines = host.hear(3)
    assert [line["t"] for line in lines if line.kind == "D"] == ["!bus"] * 3
    assert [(line["c"], line["m"]) for line in lines if line.kind == "E"] == [("bus", "timeout")]
    assert [int(line["n"]) for line in lines] == [1, 2, 3, 4]
    host.chip.tell("stuck 0")
    assert host.hear_data(2)[-1]["t"] == "21.40"


@pytest.mark.machine_code
def test_that_a_question_mark_is_answered_with_a_hello(connect: Callable[..., Host]) -> None:
    host = connect()
    host.hear(2)
    host.port.write(b"x?")
    assert [line.kind for line in host.hear(0.2)] == ["H"]


@pytest.mark.machine_code
def test_that_a_hello_comes_after_every_sixty_lines(connect: Callable[..., Host]) -> None:
    kinds = "".join(line.kind for line in connect().hear(62))
    assert kinds.startswith("H" + "D" * 60 + "HD")


@pytest.mark.machine_code
def test_that_lines_are_numbered_and_a_second_apart(connect: Callable[..., Host]) -> None:
    data = connect().hear_data(5)
    assert [int(line["n"]) for line in data] == [0, 1, 2, 3, 4]
    uptimes_ms = [int(line["u"]) for line in data]
    # the clock that counts the milliseconds ticks every 1.024 ms
    assert [later - earlier for earlier, later in pairwise(uptimes_ms)] == pytest.approx([1000] * 4, abs=3)


@pytest.mark.machine_code
def test_that_a_reset_in_the_middle_of_a_line_costs_only_that_line(connect: Callable[..., Host]) -> None:
    host = connect()
    (hello, *_) = host.hear(0.5)
    host.chip.tell("run 0.85")
    host.chip.tell("reset")
    cut, *rest = host.raw_lines(1.5)
    assert cut.startswith(b"$D n=1 u=")
    assert checked(cut) is None
    second_hello, first_line, *_ = (checked(line) for line in rest)
    assert second_hello is not None
    assert first_line is not None
    assert int(second_hello["b"]) == int(hello["b"]) + 1
    assert second_hello["id"] == hello["id"]
    assert second_hello["rc"] == "x"
    assert first_line["n"] == "0"


@pytest.mark.machine_code
def test_that_the_watchdog_restarts_a_sketch_that_hangs(connect: Callable[..., Host]) -> None:
    host = connect()
    host.hear(2)
    host.chip.tell("hang")
    lines = host.hear(3)
    assert [line["rc"] for line in lines if line.kind == "H"] == ["w"]
    assert lines[-1]["n"] == "0"


@pytest.mark.machine_code
def test_that_the_same_seed_repeats_a_run_and_another_makes_another_board(connect: Callable[..., Host]) -> None:
    first, again, other = (connect(seed=seed).raw_lines(2) for seed in (1, 1, 2))
    assert first == again
    hello, other_hello = (next(filter(None, map(checked, lines))) for lines in (first, other))
    assert hello["id"] != other_hello["id"]


@pytest.mark.machine_code
def test_that_the_chip_refuses_a_command_in_one_sentence(connect: Callable[..., Host]) -> None:
    chip = connect().chip
    with pytest.raises(ChipError, match=r'^ERROR t: got "400", allowed is a number from -40 to 85$'):
        chip.tell("t 400")
    with pytest.raises(ChipError, match=r'^ERROR sensor: got "dht", allowed is sht4x, sht3x, aht20 or none$'):
        chip.tell("sensor dht")
    with pytest.raises(ChipError, match=r'^ERROR "fly 1": no such command$'):
        chip.tell("fly 1")


def test_that_a_machine_without_the_tools_names_the_packages(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setenv("PATH", str(tmp_path))
    monkeypatch.setattr(chip_module.sys, "platform", "linux")
    reason = skip_reason()
    assert reason is not None
    assert {"gcc-avr", "binutils-avr", "build-essential", "pkg-config", "libsimavr-dev"} <= set(reason.split())


def test_that_every_line_in_the_wire_format_notes_is_right() -> None:
    lines = re.findall(rb"^\$.*\*[0-9A-F]{4}$", NOTES.read_bytes(), flags=re.MULTILINE)
    assert len(lines) >= 5
    assert None not in [checked(line) for line in lines]
