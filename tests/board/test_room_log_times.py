"""Times of a log in every form, and the two nights a year on which a local clock lies.

The nights are those of the EU, Directive 2000/84/EC, articles 2 and 3: forward at 01:00 UTC on the last Sunday of
March, back at 01:00 UTC on the last Sunday of October: in Berlin from 02:00 to 03:00, and from 03:00 to 02:00.
"""

from __future__ import annotations

import io
from datetime import UTC, datetime
from zoneinfo import ZoneInfo

import pytest

from studiowatch.board.room_log_cells import CellFault, FaultKind
from studiowatch.board.room_log_header import LogForm
from studiowatch.board.room_log_rows import HeaderRefused, LogEvent, Remark, RowRefused, RowTaken, log_events
from studiowatch.board.room_log_times import time_reader

BERLIN = ZoneInfo("Europe/Berlin")


def utc(*moment: int) -> int:
    return round(datetime(*moment, tzinfo=UTC).timestamp() * 1000)


def events(*times: str, zone: ZoneInfo | None = BERLIN, form: str | None = None) -> list[LogEvent]:
    text = "\n".join(["time,temperature_C,humidity_pct,air_speed_m_s", *(f"{time},20,50,0" for time in times)])
    return list(log_events(io.StringIO(text, newline=""), LogForm(zone=zone, time_form=form)))


def taken(told: list[LogEvent]) -> list[int]:
    return [event.row.reading.time_ms for event in told if isinstance(event, RowTaken)]


@pytest.mark.parametrize(
    ("column", "text", "time_ms"),
    [
        ("time", "2026-03-02T10:00:00+01:00", utc(2026, 3, 2, 9)),
        ("time", "2026-07-02T11:00:00", utc(2026, 7, 2, 9)),  # summer: two hours ahead
        ("time", "2026-03-02 10:00", utc(2026, 3, 2, 9)),  # winter: one hour ahead
        ("time_unix", "1772442000.25", utc(2026, 3, 2, 9) + 250),
        ("time_unix_ms", "1772442000250", utc(2026, 3, 2, 9) + 250),
    ],
)
def test_that_each_form_of_time_is_read(column: str, text: str, time_ms: int) -> None:
    assert time_reader(column, BERLIN, None)(text, None) == (time_ms, "")


def test_that_a_form_of_its_own_is_read_or_told() -> None:
    read = time_reader("time", BERLIN, "%d.%m.%Y %H:%M:%S")
    assert read("02.03.2026 10:00:00", None)[0] == utc(2026, 3, 2, 9)
    with pytest.raises(CellFault, match="is not written as"):
        read("2026-03-02 10:00:00", None)
    with pytest.raises(CellFault, match="is not written as %z%z"):
        time_reader("time", BERLIN, "%z%z")("+0100+0100", None)


def test_that_seconds_in_the_column_of_milliseconds_are_told() -> None:
    with pytest.raises(CellFault, match="outside 2000"):
        time_reader("time_unix_ms", None, None)("1772442000", None)


def test_that_local_times_that_are_not_there_are_told_by_line() -> None:
    told = events("2026-03-29T01:59:00", "2026-03-29T02:00:00", "2026-03-29T02:59:00", "2026-03-29T03:00:00")
    refused = [event for event in told if isinstance(event, RowRefused)]
    assert [(event.line, event.kind) for event in refused] == [(3, FaultKind.NIGHT), (4, FaultKind.NIGHT)]
    assert "is not there in Europe/Berlin" in refused[0].clause
    assert taken(told) == [utc(2026, 3, 29, 0, 59), utc(2026, 3, 29, 1, 0)]


def test_that_an_hour_that_comes_twice_is_told_apart_by_the_order_of_its_rows() -> None:
    local = ["01:40", "02:00", "02:20", "02:40", "02:00", "02:20", "02:40", "03:00"]
    told = events(*[f"2026-10-25T{time}:00" for time in local])
    # 23:40 UTC on, every 20 minutes: by the directive 02:00 CEST is 00:00 UTC and 02:00 CET is 01:00 UTC
    assert taken(told) == [utc(2026, 10, 24, 23, 40) + 1_200_000 * at for at in range(8)]
    remarks = [event.sentence for event in told if isinstance(event, Remark)]
    assert [remark.split(":")[0] for remark in remarks] == ["line 3", "line 6"]
    assert "the first, +02:00" in remarks[0]
    assert "the second, +01:00" in remarks[1]


def test_that_an_hour_that_comes_twice_is_a_fault_where_nothing_tells_which() -> None:
    for times in (["2026-10-25T02:30:00"], ["2026-10-25T00:10:00", "2026-10-25T02:30:00"]):
        refused = [event for event in events(*times) if isinstance(event, RowRefused)]
        assert [event.kind for event in refused] == [FaultKind.NIGHT]
        assert "write the offset, +02:00 or +01:00" in refused[0].clause


def test_that_a_time_without_a_zone_needs_one() -> None:
    (refused,) = [event for event in events("2026-03-02T10:00:00", zone=None) if isinstance(event, RowRefused)]
    assert "give the log's zone" in refused.clause


def test_that_a_log_without_values_names_the_columns_there_may_be() -> None:
    told = list(log_events(io.StringIO("time,battery\n", newline=""), LogForm(needed=())))
    assert [type(event) for event in told] == [HeaderRefused]
    assert isinstance(told[0], HeaderRefused)
    assert "temperature_F" in told[0].clause


@pytest.mark.parametrize(
    ("column", "text", "value"),
    [
        # NIST SP 811 (2008), B.8: t/°C = (t/°F − 32)/1.8, T/K = t/°C + 273.15, 1 ft/min = 5.08E-03 m/s
        ("temperature_F", "68", 20.0),
        ("temperature_F", "-40", -40.0),
        ("temperature_K", "293.15", 20.0),
        ("surface_F", "50", 10.0),
        ("humidity_fraction", "0.48", 48.0),
        ("pressure_hPa", "1013.25", 101_325.0),
        ("pressure_kPa", "101.325", 101_325.0),
        ("air_speed_ft_min", "100", 0.508),
        ("air_speed_cm_s", "25", 0.25),
    ],
)
def test_that_other_units_are_converted(column: str, text: str, value: float) -> None:
    written = io.StringIO(f"time_unix;{column}\n1772442000;{text.replace('.', ',')}\n", newline="")
    told = list(log_events(written, LogForm(needed=())))
    (row,) = [event.row for event in told if isinstance(event, RowTaken)]
    values = [row.reading.temperature_C, row.reading.humidity_pct, row.reading.air_speed_m_s]
    values += [row.reading.surface_C, row.reading.pressure_Pa]
    assert [one for one in values if one is not None] == [value]


def test_that_seconds_may_have_a_decimal_comma_where_semicolons_part_the_cells() -> None:
    written = io.StringIO("time_unix;temperature_C\n1772442000,25;20,5\n", newline="")
    told = list(log_events(written, LogForm(needed=())))
    (row,) = [event.row for event in told if isinstance(event, RowTaken)]
    assert (row.reading.time_ms, row.reading.temperature_C) == (utc(2026, 3, 2, 9) + 250, 20.5)
