"""The reference sketch's machine code when all is well, line by line, over the serial port of the simulated board."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

import pytest

from .chip import time_of
from .host import Host, checked

pytestmark = pytest.mark.machine_code


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
    assert hello["r"] == "p"
    assert (hello["th"], hello["sn"]) == (sensor, serial_number)
    assert hello["per"] == "1000"
    assert hello["ch"] == "t:Cel,h:%RH,a:mV,s:mV"


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


def test_that_a_question_mark_is_answered_with_a_hello(connect: Callable[..., Host]) -> None:
    host = connect()
    host.hear(2)
    host.port.write(b"x?")
    assert [line.kind for line in host.hear(0.2)] == ["H"]


def test_that_a_hello_comes_after_every_sixty_lines(connect: Callable[..., Host]) -> None:
    kinds = "".join(line.kind for line in connect().hear(62))
    assert kinds.startswith("H" + "D" * 60 + "HD")


def test_that_lines_are_numbered_and_a_second_apart(connect: Callable[..., Host]) -> None:
    data = connect().hear_data(5)
    assert [int(line["n"]) for line in data] == [0, 1, 2, 3, 4]
    uptimes_ms = [int(line["u"]) for line in data]
    # the clock that counts the milliseconds ticks every 1.024 ms
    assert [later - earlier for earlier, later in pairwise(uptimes_ms)] == pytest.approx([1000] * 4, abs=3)


def test_that_the_same_seed_repeats_a_run_and_another_makes_another_board(connect: Callable[..., Host]) -> None:
    first, again, other = (connect(seed=seed).raw_lines(2) for seed in (1, 1, 2))
    assert first == again
    hello, other_hello = (next(filter(None, map(checked, lines))) for lines in (first, other))
    assert hello["id"] != other_hello["id"]
