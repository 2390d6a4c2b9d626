from collections.abc import Mapping

import pytest

from studiowatch.board.translate import LIMITS, read_data, read_hello
from studiowatch.board.wire import Kind, WireLine
from studiowatch.room.readings import Channel, ChannelFault, Reading

NOW_MS = 1_772_442_000_000


def data(**fields: str) -> WireLine:
    return WireLine.of(Kind.DATA, fields)


def test_that_the_vectors_become_readings(vectors: Mapping) -> None:
    readings = [
        read_data(WireLine.of(Kind.DATA, vector["fields"]), NOW_MS)
        for vector in vectors["accepted"]
        if vector["kind"] == "D"
    ]
    crc = tuple(ChannelFault(channel=channel, code="crc") for channel in (Channel.TEMPERATURE, Channel.HUMIDITY))
    assert readings == [
        Reading(time_ms=NOW_MS, temperature_C=21.40, humidity_pct=48.00, air_signal_mV=596.9),
        Reading(time_ms=NOW_MS, air_signal_mV=896.8, faults=crc),
        Reading(
            time_ms=NOW_MS,
            temperature_C=-2.25,
            humidity_pct=61.30,
            air_speed_m_s=0.07,
            pressure_Pa=101325,
            particles_per_m3_5um=12,
        ),
    ]


def test_that_the_hello_names_the_board_and_its_units(vectors: Mapping) -> None:
    hello = read_hello(WireLine.of(Kind.HELLO, vectors["accepted"][0]["fields"]))
    assert (hello.board_id, hello.sensor, hello.sensor_serial, hello.firmware, hello.boots) == (
        "8DF9E785",
        "sht4x",
        "CAFE0042",
        "rack-ref/0.1",
        1,
    )
    assert hello.units == {"t": "Cel", "h": "%RH", "a": "mV", "s": "mV"}


@pytest.mark.parametrize("fields", [{"v": "1"}, {"b": "many", "ch": "t,h:,:,::"}])
def test_that_a_sparse_or_odd_hello_is_survived(fields: dict[str, str]) -> None:
    hello = read_hello(WireLine.of(Kind.HELLO, fields))
    assert hello.boots is None
    assert read_data(data(t="21.4"), NOW_MS, hello.units).temperature_C == 21.4


@pytest.mark.parametrize(
    ("key", "unit", "text", "channel", "value"),
    [
        ("a", "m/s", "0.35", Channel.AIR_SPEED, 0.35),
        ("a", "mV", "596.9", Channel.AIR_SIGNAL, 596.9),
        ("a", "V", "0.5969", Channel.AIR_SIGNAL, 596.9),
        ("v", "m/s", "0.35", Channel.AIR_SPEED, 0.35),
        ("t", "Cel", "20", Channel.TEMPERATURE, 20.0),
        ("t", "K", "293.15", Channel.TEMPERATURE, 20.0),  # 0 °C is 273.15 K, exact by definition
        ("st", "K", "273.15", Channel.SURFACE, 0.0),
        ("p", "hPa", "1013.25", Channel.PRESSURE, 101_325.0),  # standard atmosphere, exact by definition
    ],
)
def test_that_the_unit_of_the_hello_is_used(key: str, unit: str, text: str, channel: Channel, value: float) -> None:
    assert read_data(data(**{key: text}), NOW_MS, {key: unit}).value(channel) == pytest.approx(value, abs=1e-9)


def test_that_a_key_that_the_hello_leaves_out_has_its_usual_unit() -> None:
    assert read_data(data(v="0.2"), NOW_MS, {"t": "Cel"}).air_speed_m_s == 0.2


def test_that_an_unknown_unit_is_a_fault_not_a_guess() -> None:
    reading = read_data(data(t="70.5"), NOW_MS, {"t": "degF"})
    assert reading.temperature_C is None
    assert reading.faults == (ChannelFault(channel=Channel.TEMPERATURE, code="unit"),)


@pytest.mark.parametrize(
    ("key", "text", "channel"),
    [
        ("t", "-40.1", Channel.TEMPERATURE),
        ("t", "85.1", Channel.TEMPERATURE),
        ("h", "-0.6", Channel.HUMIDITY),
        ("h", "100.6", Channel.HUMIDITY),
        ("v", "-0.01", Channel.AIR_SPEED),
        ("v", "60.1", Channel.AIR_SPEED),
        ("p", "1013", Channel.PRESSURE),
        ("t", "9" * 150, Channel.TEMPERATURE),
    ],
)
def test_that_a_value_that_the_sensor_cannot_mean_is_a_fault(key: str, text: str, channel: Channel) -> None:
    reading = read_data(data(**{key: text}), NOW_MS)
    assert reading.value(channel) is None
    assert reading.faults == (ChannelFault(channel=channel, code="range"),)


@pytest.mark.parametrize(("text", "value"), [("-0.5", 0.0), ("100.5", 100.0), ("0", 0.0), ("100", 100.0)])
def test_that_rounding_at_the_ends_of_humidity_is_brought_back(text: str, value: float) -> None:
    assert read_data(data(h=text), NOW_MS).humidity_pct == value


def test_that_each_channel_has_limits() -> None:
    assert set(LIMITS) == set(Channel)


def test_that_a_second_value_for_a_channel_is_a_fault() -> None:
    reading = read_data(data(v="0.2", a="0.3"), NOW_MS, {"a": "m/s"})
    assert reading.air_speed_m_s == 0.2
    assert reading.faults == (ChannelFault(channel=Channel.AIR_SPEED, code="twice"),)


def test_that_unknown_keys_do_not_hinder() -> None:
    assert read_data(data(co2="612", t="21.4", zz="!odd"), NOW_MS) == Reading(time_ms=NOW_MS, temperature_C=21.4)


@pytest.mark.parametrize(
    ("unit", "text", "value"),
    [
        ("K", "294.37", 21.22),  # 294.37 - 273.15 (NIST SP 811), which floats make 21.220000000000027
        ("K", "293.15", 20.0),
        ("Cel", "21.123456", 21.123456),
    ],
)
def test_that_a_conversion_adds_no_digits_and_what_needs_none_stays_as_sent(unit: str, text: str, value: float) -> None:
    assert read_data(data(t=text), NOW_MS, {"t": unit}).temperature_C == value
