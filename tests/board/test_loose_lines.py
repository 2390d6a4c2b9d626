import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from studiowatch.board.loose_lines import Row, Style, Unreadable, Words, printable_share, read_loose_line
from studiowatch.board.loose_numbers import Number, read_number
from studiowatch.board.loose_units import UNITS, read_unit
from studiowatch.board.loose_words import Quantity, read_label


@pytest.mark.parametrize(
    ("text", "number"),
    [
        ("21.4", Number(21.4, 1)),
        ("21,4", Number(21.4, 1)),
        ("-0.5", Number(-0.5, 1)),
        ("−0,5", Number(-0.5, 1)),
        ("+7", Number(7.0, 0)),
        (".5", Number(0.5, 1)),
        ("2.14e1", Number(21.4, 2)),
        ("1,013.25", Number(1013.25, 2)),
        ("1.013,25", Number(1013.25, 2)),
        ("1,013", Number(1.013, 3, doubtful_comma=True)),
        ("0,125", Number(0.125, 3)),
        ("nan", Number(None)),
        ("NAN", Number(None)),
        ("-inf", Number(None)),
        ("ovf", Number(None)),
        ("null", Number(None)),
        ("--", Number(None)),
        ("1e999", Number(None)),
        ("9" * 400, Number(None)),
        ("0x1F", None),
        ("21.4.1", None),
        ("T", None),
    ],
)
def test_that_numbers_are_read_as_people_write_them(text: str, number: Number | None) -> None:
    assert read_number(text) == number


@settings(deadline=None)
@given(st.floats(-1e6, 1e6), st.integers(0, 4), st.sampled_from(".,"))
def test_that_a_number_is_read_back(value: float, decimals: int, point: str) -> None:
    text = f"{value:.{decimals}f}"
    number = read_number(text.replace(".", point))
    assert number is not None
    assert number.value == float(text)
    assert number.decimals == decimals


@pytest.mark.parametrize(
    ("text", "unit"),
    [
        *[
            (text, "°C")
            for text in ("C", "c", "°C", "º C", "*C", "degC", "deg C", "degrees C", "Celsius", "℃", "\ufffdC")
        ],
        *[(text, "°F") for text in ("F", "°F", "deg. F", "fahrenheit", "℉")],
        *[("K", "K"), ("%", "%"), ("percent", "%"), ("%RH", "%RH"), ("% rH", "%RH"), ("m/s", "m/s"), ("km/h", "km/h")],
        *[("mbar", "hPa"), ("hPa", "hPa"), ("Pa", "Pa"), ("mV", "mV"), ("V", "V"), ("inHg", "inHg"), ("fpm", "ft/min")],
        *[("ppm", "other"), ("ms", "other"), ("m", "other"), ("x", ""), ("", ""), ("Pal", "")],
    ],
)
def test_that_units_are_read_in_their_spellings(text: str, unit: str) -> None:
    assert read_unit(text) == unit
    assert unit in {*UNITS, "%RH", "other", ""}


@pytest.mark.parametrize(
    ("label", "quantity", "unit"),
    [
        ("Temperature", Quantity.TEMPERATURE, ""),
        ("tempC", Quantity.TEMPERATURE, "°C"),
        ("temp_f", Quantity.TEMPERATURE, "°F"),
        ("Temperatur in °C", Quantity.TEMPERATURE, "°C"),
        ("Température", Quantity.TEMPERATURE, ""),
        ("Lämpötila", Quantity.TEMPERATURE, ""),
        ("rel. Feuchte", Quantity.HUMIDITY, ""),
        ("HUMIDITY (%)", Quantity.HUMIDITY, "%"),
        ("Humidité", Quantity.HUMIDITY, ""),
        ("Pressure (hPa)", Quantity.PRESSURE, "hPa"),
        ("windSpeed", Quantity.AIR, ""),
        ("surface temp", Quantity.SURFACE, ""),
        ("dew point temperature", Quantity.OTHER, ""),
        ("Heat index", Quantity.OTHER, ""),
        ("PM2.5", Quantity.OTHER, ""),
        ("relative pressure", Quantity.OTHER, ""),
        ("absolute humidity", Quantity.OTHER, ""),
    ],
)
def test_that_labels_are_understood(label: str, quantity: Quantity, unit: str) -> None:
    name = read_label(label)
    assert name.quantities == {quantity}
    assert name.unit == unit


@pytest.mark.parametrize("label", ["", "x", "sensor 2", "template", "tempo", "human", "happy", "prepress"])
def test_that_other_words_mean_nothing(label: str) -> None:
    assert read_label(label).quantities == frozenset()


def fields(line: str, header: tuple[str, ...] = ()) -> dict[str, float | None]:
    row = read_loose_line(line.encode(), header)
    assert isinstance(row, Row)
    return {field.key: field.number.value for field in row.fields}


@pytest.mark.parametrize(
    ("line", "found"),
    [
        ("T: 21,4 H: 47", {"T": 21.4, "H": 47.0}),
        ("51 humidity 23.4 temperature", {"humidity": 51.0, "temperature": 23.4}),
        ("Sensor 1: 21.4 C", {"Sensor 1 °C": 21.4}),
        ("12:30:45 temp 21.4", {"temp": 21.4}),
        ("DATA:21.4,47.0", {"1": 21.4, "2": 47.0}),
        ("21,47", {"1": 21.0, "2": 47.0}),
        ("21,4;47,1", {"1": 21.4, "2": 47.1}),
        ("OK,21.4,47.0,off", {"1": None, "2": 21.4, "3": 47.0, "4": None}),
        ('{"a":{"t":21.4},"h":nan}', {"a.t": 21.4, "h": None}),
        ('{"t":"21.4 C"}', {"t": 21.4}),
        ("[21.4, 47]", {"1": 21.4, "2": 47.0}),
        ("192.168.1.4 T=21.4", {"T": 21.4}),
        ("Temp: 21.4 Temp: 22.0", {"Temp": 21.4, "Temp (2)": 22.0}),
    ],
)
def test_that_a_line_is_taken_apart(line: str, found: dict[str, float | None]) -> None:
    assert fields(line) == found


@pytest.mark.parametrize("line", ["Temp C-3.6", "T-3.6"])
def test_that_a_dash_that_may_be_a_minus_is_not_passed_over(line: str) -> None:
    """Dropping it would read 3.6 for -3.6."""
    found = read_loose_line(line.encode())
    assert isinstance(found, Words) or all(field.number.value != 3.6 for field in found.fields)


def test_that_a_header_names_the_cells() -> None:
    header = read_loose_line(b"ms;Temp;Hum")
    assert header == Words(text="ms;Temp;Hum", header=("ms", "Temp", "Hum"))
    assert fields("5;21,4;47", header.header) == {"ms": 5.0, "Temp": 21.4, "Hum": 47.0}
    assert fields("5;21,4", header.header) == {"1": 5.0, "2": 21.4}


@pytest.mark.parametrize(
    "text", ["DHTxx test!", "-----", "Hello, world", "Starting the temperature logger", "WiFi, failed"]
)
def test_that_chatter_is_no_header(text: str) -> None:
    assert read_loose_line(text.encode()) == Words(text=text)


def test_that_noise_is_unreadable() -> None:
    assert isinstance(read_loose_line(b"\x80\x91T=2\x02\x9d\xff"), Unreadable)
    assert printable_share("") == 1.0


@settings(deadline=None)
@given(st.binary(max_size=300), st.lists(st.text(max_size=8), max_size=4))
def test_that_any_line_is_judged_and_its_numbers_are_finite(raw: bytes, header: list[str]) -> None:
    found = read_loose_line(raw, tuple(dict.fromkeys(header)))
    if isinstance(found, Row):
        assert found.style in Style
        assert len({field.key for field in found.fields}) == len(found.fields) <= 64
        assert all(field.number.value is None or math.isfinite(field.number.value) for field in found.fields)
        assert all(field.unit in {*UNITS, "%RH", "other", ""} for field in found.fields)
