from collections.abc import Sequence

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from studiowatch.board.guess import guess
from studiowatch.board.loose_lines import Row, read_loose_line
from studiowatch.board.mapping import Choice, Column, ColumnMapping, Outcome, Sureness
from studiowatch.room.readings import Channel

T, H = Channel.TEMPERATURE, Channel.HUMIDITY


def rows(lines: Sequence[str], header: Sequence[str] = ()) -> list[Row]:
    read = [read_loose_line(line.encode(), tuple(header)) for line in lines]
    return [line for line in read if isinstance(line, Row)]


def guessed(*lines: str) -> ColumnMapping:
    mapping = guess(rows(lines * 6))
    assert mapping is not None
    return mapping


def only(*lines: str) -> Column:
    (column,) = guessed(*lines).columns
    return column


# rooms in which people work, and colder and hotter ones than any coat should see
ROOMS = st.floats(-10.0, 45.0)
humidity = st.floats(0.0, 100.0)
NAMES = (
    "temp: {t}, hum: {h}",
    "T={t} H={h}",
    '{{"temperature": {t}, "humidity": {h}}}',
    "{t},{h}",
    "{h};{t}",
    "{t} {h}",
)


@settings(deadline=None)
@given(
    t_C=ROOMS,
    h_pct=humidity,
    is_fahrenheit=st.booleans(),
    digits=st.integers(0, 2),
    form=st.sampled_from(NAMES),
)
def test_that_a_temperature_without_a_unit_is_never_taken_in_the_wrong_one(
    *, t_C: float, h_pct: float, is_fahrenheit: bool, digits: int, form: str
) -> None:
    shown = t_C * 1.8 + 32 if is_fahrenheit else t_C
    mapping = guess(rows([form.format(t=f"{shown:.{digits}f}", h=f"{h_pct:.{digits}f}")] * 8))
    assert mapping is not None
    temperatures = [column for column in mapping.columns if column.choice and column.choice.channel is T]
    assert all(column.choice == Choice(T, "°F") and is_fahrenheit for column in temperatures)
    assert all(column.choice.channel in (T, H) for column in mapping.columns if column.choice)
    assert "hum" in form or not mapping.chosen


@settings(deadline=None)
@given(ROOMS, humidity, st.sampled_from(["C", "°C", "F", "°F", "K"]))
def test_that_a_stated_unit_is_taken_at_its_word_or_asked(t_C: float, h_pct: float, unit: str) -> None:
    shown = {"C": t_C, "F": t_C * 1.8 + 32, "K": t_C + 273.15}[unit[-1]]
    column = guessed(f"Temperature: {shown:.1f} {unit}  Humidity: {h_pct:.1f} %").columns[0]
    if column.choice:
        assert column.choice == Choice(T, unit if unit == "K" else f"°{unit[-1]}")
        assert t_C + 0.1 >= 0.0
        assert t_C - 0.1 <= 40.0
    else:
        assert column.outcome is Outcome.ASKED


@settings(deadline=None)
@given(st.floats(50.0, 104.0).filter(lambda t_F: f"{t_F:.1f}" != "85.0"), st.floats(20.0, 80.0))
def test_that_fahrenheit_printed_as_celsius_is_asked(t_F: float, h_pct: float) -> None:
    column = guessed(f"Temperature: {t_F:.1f} C  Humidity: {h_pct:.1f} %").columns[0]
    assert column.outcome is Outcome.ASKED
    assert Choice(T, "°F") in column.candidates


def test_that_a_bare_68_and_45_may_be_either_way_round_and_are_asked() -> None:
    one, other = guessed("68.0,45.0", "68.2,45.3").columns
    for column in (one, other):
        assert column.outcome is Outcome.ASKED
        assert {Choice(T, "°C"), Choice(T, "°F"), Choice(H, "%")} <= set(column.candidates)
    assert "fan" in one.why


@pytest.mark.parametrize(
    ("line", "choice"),
    [
        # standard atmosphere, 101 325 Pa, in the units of NIST SP 811
        ("Pressure: 1013.25", Choice(Channel.PRESSURE, "hPa")),
        ("Pressure: 101325", Choice(Channel.PRESSURE, "Pa")),
        ("Pressure: 101.325", Choice(Channel.PRESSURE, "kPa")),
        (
            "Pressure: 101,325",
            Choice(Channel.PRESSURE, "kPa"),
        ),  # the same, whether the comma parts kPa or thousands of Pa
        ("Pressure: 101.3", Choice(Channel.PRESSURE, "kPa")),
        ("Pressure: 29.92", Choice(Channel.PRESSURE, "inHg")),
        ("Pressure: 760.0", None),  # mmHg at the sea, or hPa in mountains of 2400 m
    ],
)
def test_that_a_pressure_without_unit_is_taken_only_in_the_one_possible_unit(line: str, choice: Choice | None) -> None:
    column = only(line)
    assert column.choice == choice
    assert column.outcome is (Outcome.MAPPED if choice else Outcome.ASKED)


@pytest.mark.parametrize(
    "line",
    [
        "Temp: 21.4, 70.5",
        "Garage temperature: 21.4 C",
        "Fridge 4.0 C, Goal: 22.0 C",
        "T1: 21.4 C T2: 22.0 C",
        "Temp/Hum: 21.4 C",
        "a=1 b=2 c=21.4 d=47",
        "Soil: 47 %",
        "Battery: 87 %  Moisture: 47 %",
        "humidity: 9.8 temperature: 21.4",
        "v: 3.3 V",
        "time: 12 h: 13 m: 14",
        "Temperature: 21.4 %",
        "Humidity: 47.0 C",
        "-5.2,-5.3,1013",
        "CPU: 47.3 C",
        "min temp 18.0 C, max temp 24.0 C",
        "Wet bulb: 15.2 C",
        "Water temp: 15.2 C",
    ],
)
def test_that_what_is_not_plain_is_not_mapped(line: str) -> None:
    assert guessed(line).chosen == {}


def test_that_one_temperature_in_two_units_is_used_once() -> None:
    celsius, fahrenheit = guessed("t: 21.4 f: 70.5", "t: 21.5 f: 70.7").columns
    assert celsius.choice == Choice(T, "°C")
    assert celsius.sureness is Sureness.INFERRED
    assert fahrenheit.outcome is Outcome.UNKNOWN


def test_that_a_comma_that_may_part_thousands_is_asked_where_both_are_possible() -> None:
    assert only("Wind sensor: 1,013 mV").outcome is Outcome.ASKED
    assert only("Wind sensor: 1,01 mV").outcome is Outcome.MAPPED
    assert only("Temperature: 21,437 °C").choice == Choice(T, "°C")  # 21 437 °C is none


def test_that_a_letter_between_two_numbers_is_not_taken_for_a_unit() -> None:
    assert guessed("c 35.2 f 95.4", "c 35.3 f 95.5").chosen == {}
    assert guessed("21.4 C 47 %RH").chosen == {"number 1 °C": Choice(T, "°C"), "number 2 %RH": Choice(H, "%")}


def test_that_20_and_68_standing_still_are_not_taken_for_one_temperature() -> None:
    assert guessed("temp: 20 temp2: 68").chosen == {}


def test_that_a_relative_humidity_needs_no_unit_and_a_humidity_does_where_vapour_could_be_as_dense() -> None:
    assert only("RH: 12.0").choice == Choice(H, "%")
    # saturated air holds 17.3 g/m³ at 20 °C: handbook table, from memory
    assert guessed("Temp: 20.0 C Humidity: 16.9").columns[1].outcome is Outcome.ASKED
    assert guessed("Temp: 20.0 C Humidity: 17.9").columns[1].choice == Choice(H, "%")


@pytest.mark.parametrize(
    "lines",
    [
        ("0x44: T=21.4C RH=47.0%", "0x45: T=19.2C"),
        ('{"id":1,"temp_c":21.4}', '{"id":2,"temp_c":19.2}'),
        ('{"id":"a","temp_c":21.4}', '{"id":"b","temp_c":19.2}'),
        ("node: 1 temp: 21.4 C", "node: 2 temp: 19.2 C"),
    ],
)
def test_that_sensors_that_speak_in_turn_are_not_taken_for_one(lines: Sequence[str]) -> None:
    assert all(choice.channel is not T for choice in guessed(*lines).chosen.values())


@pytest.mark.parametrize(
    "line", ["21,4 °C", "21,4 °C, 47,1 %RH", "21,4°C;47,1%RH", "21,4°C,47,1%RH", "21,4 °C 47,1 %RH"]
)
def test_that_a_decimal_comma_is_not_taken_for_a_separator(line: str) -> None:
    mapping = guess(rows([line] * 6))
    assert mapping is not None
    (field, *_) = rows([line])[0].fields
    assert field.number.value == 21.4
    assert mapping.column(field.key).choice == Choice(T, "°C")


def test_that_too_few_lines_say_nothing() -> None:
    assert guess([]) is None
    assert guess(rows(["T=21.4 H=48"] * 2)) is None


def test_that_every_column_has_a_sentence() -> None:
    mapping = guessed("n: 4 temp: 21.4 hum: 47 % bat: 3.9 V x: 5 wind: 0.1 m/s")
    assert len(mapping.columns) == 6
    assert all(column.why.endswith(".") for column in mapping.columns)
