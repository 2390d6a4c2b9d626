import json
import tomllib

import pytest

from studiowatch.board.loose_lines import Row, Style
from studiowatch.board.loose_numbers import MISSING, Field, Number
from studiowatch.board.loose_units import UNITS
from studiowatch.board.mapping import Choice, Column, ColumnMapping, Outcome, Sureness, read_row
from studiowatch.room.readings import Channel, ChannelFault, Reading


def column(key: str, choice: Choice | None = None, *candidates: Choice) -> Column:
    return Column(
        key=key,
        outcome=Outcome.MAPPED if choice else Outcome.ASKED,
        sureness=Sureness.STATED if choice else Sureness.OPEN,
        why="Because.",
        choice=choice,
        candidates=candidates,
    )


MAPPING = ColumnMapping(
    style=Style.TABLE,
    columns=(
        column("temp", Choice(Channel.TEMPERATURE, "°F")),
        column("air", None, Choice(Channel.AIR_SPEED, "m/s"), Choice(Channel.AIR_SIGNAL, "mV")),
    ),
)


def row(**numbers: float | None) -> Row:
    fields = [Field(key=key, number=MISSING if value is None else Number(value)) for key, value in numbers.items()]
    return Row(style=Style.TABLE, fields=tuple(fields))


def test_that_a_mapping_survives_json_and_toml() -> None:
    plain = MAPPING.to_plain()
    assert ColumnMapping.from_plain(json.loads(json.dumps(plain))) == MAPPING
    as_toml = 'style = "table"\n' + "".join(
        "[[columns]]\n" + "".join(f"{key} = {json.dumps(value, ensure_ascii=False)}\n" for key, value in one.items())
        for one in plain["columns"]
    )
    assert ColumnMapping.from_plain(tomllib.loads(as_toml)) == MAPPING


@pytest.mark.parametrize(
    "plain",
    [
        {},
        {"style": "table"},
        {"style": "xml", "columns": []},
        {"style": ["table"], "columns": []},
        {"style": "table", "columns": "none"},
        {"style": "table", "columns": [3]},
        {"style": "table", "columns": [{"key": "a"}]},
        {"style": "table", "columns": [MAPPING.to_plain()["columns"][0] | {"choice": ["temperature_C", "mV"]}]},
        {"style": "table", "columns": [MAPPING.to_plain()["columns"][0] | {"choice": ["temperature_C"]}]},
        {"style": "table", "columns": [MAPPING.to_plain()["columns"][0] | {"outcome": "asked"}]},
        {"style": "table", "columns": MAPPING.to_plain()["columns"] * 2},
    ],
)
def test_that_a_damaged_kept_mapping_is_refused_in_a_sentence(plain: dict[str, object]) -> None:
    with pytest.raises(ValueError, match=r"map the board anew\.$"):
        ColumnMapping.from_plain(plain)


def test_that_she_may_set_a_column_and_unset_it() -> None:
    by_hand = MAPPING.set_by_hand("air", Choice(Channel.AIR_SIGNAL, "V"))
    assert by_hand.chosen["air"] == Choice(Channel.AIR_SIGNAL, "V")
    assert by_hand.column("air").sureness is Sureness.BY_HAND
    assert "air" not in by_hand.set_by_hand("air", None).chosen


def test_that_a_channel_cannot_be_given_twice() -> None:
    with pytest.raises(ValueError, match="'temp' already is temperature_C"):
        MAPPING.set_by_hand("air", Choice(Channel.TEMPERATURE, "°C"))
    with pytest.raises(ValueError, match="There is no column 'hum'; there are: temp, air"):
        MAPPING.set_by_hand("hum", None)


def test_that_a_unit_must_measure_the_channel() -> None:
    with pytest.raises(ValueError, match=r"'mV' cannot be of humidity_pct; allowed: %, 0.1 %"):
        Choice(Channel.HUMIDITY, "mV")
    with pytest.raises(ValueError, match="'furlong' cannot be of air_speed_m_s; allowed: m/s, km/h"):
        Choice(Channel.AIR_SPEED, "furlong")


@pytest.mark.parametrize(
    ("unit", "value", "converted"),
    [
        ("°F", 212.0, 100.0),  # boiling and freezing water, by the scale's definition
        ("°F", 32.0, 0.0),
        ("°F", -40.0, -40.0),  # where the scales meet
        ("K", 273.15, 0.0),  # by definition
        ("mph", 1.0, 0.44704),  # NIST SP 811
        ("ft/min", 1.0, 0.00508),  # NIST SP 811
        ("kn", 1.0, 0.5144444),  # NIST SP 811
        ("km/h", 1.0, 0.2777778),  # NIST SP 811
        ("mmHg", 760.0, 101_325.0),  # standard atmosphere
        ("inHg", 29.9213, 101_325.0),  # standard atmosphere, NIST SP 811
        ("hPa", 1013.25, 101_325.0),
        ("10-bit count at 5 V", 1024.0, 5000.0),  # full scale
        ("12-bit count at 3.3 V", 4096.0, 3300.0),
        ("fraction", 0.5, 50.0),
    ],
)
def test_that_units_convert_as_published(unit: str, value: float, converted: float) -> None:
    assert UNITS[unit].convert(value) == pytest.approx(converted, rel=2e-6, abs=1e-9)


def test_that_a_row_becomes_an_unchecked_reading() -> None:
    assert read_row(row(temp=68.0, air=0.1, more=1.0), MAPPING, 5) == Reading(
        time_ms=5, temperature_C=pytest.approx(20.0), checked=False
    )


@pytest.mark.parametrize(
    ("value", "code"),
    [
        (None, "missing"),
        (-127.0, "missing"),
        (185.0, "missing"),  # 85 °C, the power-on value, in °F
        (999.0, "missing"),
        (400.0, "range"),
    ],
)
def test_that_no_value_is_a_fault(value: float | None, code: str) -> None:
    reading = read_row(row(temp=value), MAPPING, 5)
    assert reading.temperature_C is None
    assert reading.faults == (ChannelFault(channel=Channel.TEMPERATURE, code=code),)


def test_that_999_is_a_value_where_it_can_be_one() -> None:
    by_hand = MAPPING.set_by_hand("air", Choice(Channel.AIR_SIGNAL, "mV"))
    assert read_row(row(air=999.0), by_hand, 5).air_signal_mV == 999.0


def test_that_a_value_in_another_unit_is_kept_as_finely_as_a_sensor_reads() -> None:
    # (68.4 - 32) / 1.8 is 20.2222…: NIST SP 811
    assert Choice(Channel.TEMPERATURE, "°F").read(Number(68.4, 1)) == (20.2222, "")
    assert Choice(Channel.TEMPERATURE, "°C").read(Number(20.222222, 6)) == (20.222222, "")
