"""The reference sketch's machine code when something is wrong with its sensor, its bus, its supply or itself."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
import serial

from .chip import Chip, ChipError
from .host import READ_WITHIN_S, Host, Line, checked

SENSORS = ["sht4x", "sht3x", "aht20"]
pytestmark = pytest.mark.machine_code


def temperatures(lines: list[Line]) -> list[str]:
    """Return what the data lines say for the temperature."""
    return [line["t"] for line in lines if line.kind == "D"]


def errors(lines: list[Line]) -> list[tuple[str, str]]:
    """Return what the error lines concern, and what happened."""
    return [(line["c"], line["m"]) for line in lines if line.kind == "E"]


@pytest.mark.parametrize("sensor", SENSORS)
def test_that_a_lost_sensor_is_a_code_and_never_an_old_number(connect: Callable[..., Host], sensor: str) -> None:
    host = connect(sensor=sensor)
    assert temperatures(host.hear(0.8)) == ["21.40"]
    host.chip.tell("sensor none")
    lines = host.hear(3)
    data = [(line["t"], line["h"]) for line in lines if line.kind == "D"]
    assert data == [("!nak", "!nak"), ("!none", "!none"), ("!none", "!none")]
    assert [line["th"] for line in lines if line.kind == "H"] == ["none"]


def test_that_another_sensor_is_found_and_introduced(connect: Callable[..., Host]) -> None:
    host = connect(sensor="none")
    assert temperatures(host.hear(0.8)) == ["!none"]
    host.chip.tell("sensor sht3x")
    lines = host.hear(3)
    assert [line["sn"] for line in lines if line.kind == "H"] == ["BEEF0031"]
    assert lines[-1]["t"] == "21.40"


@pytest.mark.parametrize("sensor", SENSORS)
def test_that_a_bad_checksum_on_the_bus_costs_one_reading(connect: Callable[..., Host], sensor: str) -> None:
    host = connect(sensor=sensor)
    host.chip.tell("crcbad 1")
    assert temperatures(host.hear(1.8)) == ["!crc", "21.40"]


@pytest.mark.parametrize("sensor", SENSORS)
def test_that_checksums_that_stay_bad_never_give_a_number(connect: Callable[..., Host], sensor: str) -> None:
    host = connect(sensor=sensor)
    host.hear(0.8)
    host.chip.tell("crcbad 1000")
    assert set(temperatures(host.hear(5))) == {"!crc"}
    host.chip.tell("crcbad 0")
    assert temperatures(host.hear(2))[-1] == "21.40"


# An SHT3x or SHT4x does not acknowledge before it is ready; an AHT20 answers with its busy bit (their data sheets).
@pytest.mark.parametrize(("sensor", "code"), [("sht4x", "!nak"), ("sht3x", "!nak"), ("aht20", "!busy")])
def test_that_a_sensor_that_is_late_is_a_code_until_it_is_in_time(
    connect: Callable[..., Host], sensor: str, code: str
) -> None:
    host = connect(sensor=sensor)
    host.hear(0.8)
    host.chip.tell("late 50")
    assert set(temperatures(host.hear(3))) == {code}
    host.chip.tell("late 0")
    assert temperatures(host.hear(2))[-1] == "21.40"


def test_that_a_clock_line_held_low_is_reported_once_and_survived(connect: Callable[..., Host]) -> None:
    host = connect()
    host.hear(0.5)
    host.chip.tell("stuck 1")
    lines = host.hear(3)
    assert temperatures(lines) == ["!bus"] * 3
    assert errors(lines) == [("bus", "scl_low")]
    assert [int(line["n"]) for line in lines] == [1, 2, 3, 4]
    host.chip.tell("stuck 0")
    assert temperatures(host.hear(2))[-1] == "21.40"


@pytest.mark.parametrize("sensor", SENSORS)
def test_that_a_sensor_cut_off_in_the_middle_of_a_byte_is_clocked_free(
    connect: Callable[..., Host], sensor: str
) -> None:
    host = connect(sensor=sensor)
    host.hear(0.5)
    # nine pulses free any chip on the bus: I2C-bus specification UM10204, section 3.1.16
    host.chip.tell("latch 9")
    lines = host.hear(2)
    assert errors(lines) == [("bus", "sda_low")]
    assert temperatures(lines) == ["!bus", "21.40"]


@pytest.mark.parametrize("sensor", SENSORS)
def test_that_a_board_reset_in_the_middle_of_a_transfer_finds_its_sensor_at_once(
    connect: Callable[..., Host], sensor: str
) -> None:
    host = connect(sensor=sensor)
    host.hear(0.5)
    host.chip.tell("latch 9")
    host.chip.tell("reset")
    lines = host.hear(0.9)
    assert [line["th"] for line in lines if line.kind == "H"] == [sensor]
    assert temperatures(lines) == ["21.40"]


def test_that_a_bus_that_nothing_frees_leaves_the_rest_of_the_line_good(connect: Callable[..., Host]) -> None:
    host = connect()
    host.chip.tell("latch 1000000")
    lines = host.hear(5)
    assert set(temperatures(lines)) == {"!bus"}
    assert errors(lines) == [("bus", "sda_low")]
    assert all(float(line["a"]) > 500 for line in lines if line.kind == "D")
    assert not [line for line in lines[1:] if line.kind == "H"]  # the watchdog did not bite


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
    assert second_hello["r"] == "x"
    assert first_line["n"] == "0"


def test_that_a_supply_that_dipped_is_named_as_the_cause(connect: Callable[..., Host]) -> None:
    host = connect()
    host.hear(0.5)
    host.chip.tell("dip")
    assert [line["r"] for line in host.hear(0.8) if line.kind == "H"] == ["b"]


def test_that_the_watchdog_restarts_a_sketch_that_hangs(connect: Callable[..., Host]) -> None:
    host = connect()
    host.hear(2)
    host.chip.tell("hang")
    lines = host.hear(3)
    assert [line["r"] for line in lines if line.kind == "H"] == ["w"]
    assert lines[-1]["n"] == "0"


def test_that_a_board_pulled_out_and_put_back_counts_a_start_and_stays_itself(
    start_chip: Callable[..., Chip], tmp_path: Path
) -> None:
    chip = start_chip(speed=None, link=tmp_path / "board")
    with serial.Serial(chip.pty, timeout=READ_WITHIN_S) as port:
        before = Host(chip, port).hear(0.8)[0]
        chip.tell("unplug")
        with pytest.raises(serial.SerialException):
            port.read(1)
    with pytest.raises(ChipError, match=r"^ERROR run: the board is unplugged$"):
        chip.tell("run 1")
    chip.tell("plug")
    with serial.Serial(chip.pty, timeout=READ_WITHIN_S) as port:
        chip.tell("run 0.8")
        after = checked(port.read_until(b"\r\n") and port.read_until(b"\r\n"))
    assert after is not None
    assert (after["id"], after["r"], int(after["b"])) == (before["id"], "p", int(before["b"]) + 1)


def test_that_the_chip_refuses_a_command_in_one_sentence(connect: Callable[..., Host]) -> None:
    chip = connect().chip
    with pytest.raises(ChipError, match=r'^ERROR t: got "400", allowed is a number from -40 to 85$'):
        chip.tell("t 400")
    with pytest.raises(ChipError, match=r'^ERROR sensor: got "dht", allowed is sht4x, sht3x, aht20 or none$'):
        chip.tell("sensor dht")
    with pytest.raises(ChipError, match=r'^ERROR "fly 1": no such command$'):
        chip.tell("fly 1")
    with pytest.raises(ChipError, match=r"^ERROR plug: the board is plugged in$"):
        chip.tell("plug")
