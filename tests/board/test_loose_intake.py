import re
from collections.abc import Mapping
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from studiowatch.board.events import (
    BoardEvent,
    BoardNamed,
    BoardTrouble,
    LineCounts,
    LineRefused,
    MappingAsked,
    MappingHolds,
    NumbersSeen,
    ReadingArrived,
)
from studiowatch.board.intake import SETTLE_MS
from studiowatch.board.loose_intake import LooseIntake
from studiowatch.board.mapping import Choice, Outcome
from studiowatch.room.readings import Channel, ChannelFault, Reading

NOW_MS = 1_772_442_000_000
LINE = b"Temp: %.1f C, Humidity: %.1f %%\r\n"


def lines(count: int, template: bytes = LINE) -> bytes:
    return b"".join(template % (21.0 + at % 3 / 10, 47.0 + at % 5 / 10) for at in range(count))


def told(events: list[BoardEvent]) -> list[Reading]:
    return [event.reading for event in events if isinstance(event, ReadingArrived)]


def asked(events: list[BoardEvent]) -> list[MappingAsked]:
    return [event for event in events if isinstance(event, MappingAsked)]


def started(data: bytes, intake: LooseIntake | None = None) -> tuple[LooseIntake, list[BoardEvent]]:
    intake = intake or LooseIntake()
    return intake, intake.feed(b"\n" + data, NOW_MS)


def accepted(data: bytes) -> tuple[LooseIntake, list[BoardEvent]]:
    """Have the mapping guessed from `data`, accept it, and read `data` by it."""
    return started(data, LooseIntake(started(data)[0].mapping))


def test_that_plain_lines_are_shown_and_become_unchecked_readings_once_she_accepts() -> None:
    intake, events = started(lines(8))
    (shown,) = asked(events)
    assert shown.samples[-1] == "Temp: 21.1 C, Humidity: 47.4 %"
    assert shown.mapping == intake.mapping
    assert all(column.outcome is not Outcome.ASKED for column in shown.mapping.columns)
    assert told(events) == []
    intake.set_mapping(shown.mapping)
    events = intake.feed(lines(2), NOW_MS)
    assert events[0] == MappingHolds(time_ms=NOW_MS, mapping=shown.mapping)
    assert told(events)[0] == Reading(time_ms=NOW_MS, temperature_C=21.0, humidity_pct=47.0, checked=False)
    assert len(told(events)) == 2
    assert intake.counts == LineCounts(good=10)


def test_that_the_portions_do_not_matter() -> None:
    data = b"\n" + lines(12)
    whole, piecewise = LooseIntake(), LooseIntake()
    at_once = whole.feed(data, NOW_MS)
    by_the_byte = [event for at in range(len(data)) for event in piecewise.feed(data[at : at + 1], NOW_MS)]
    assert by_the_byte == at_once


def test_that_a_checked_line_switches_to_checked_lines_only(vectors: Mapping) -> None:
    checked = [vector["line"].encode() for vector in vectors["accepted"]]
    intake, before = started(lines(6))
    intake.set_mapping(intake.mapping)
    events = intake.feed(lines(1) + b"".join(checked) + lines(1), NOW_MS)
    assert intake.is_checked
    assert [event.reading.checked for event in events if isinstance(event, ReadingArrived)] == [False, *[True] * 3]
    assert sum(isinstance(event, BoardNamed) for event in events) == 1
    assert intake.counts == LineCounts(good=7 + 5, faulty=1, lost=39, troubles=1)
    assert isinstance(events[-1], LineRefused)
    assert events[-1].counts == intake.counts
    assert asked(before)


def test_that_a_checked_line_in_portions_switches_too(vectors: Mapping) -> None:
    checked = b"".join(vector["line"].encode() for vector in vectors["accepted"])
    intake = LooseIntake()
    events = [event for byte in b"\n" + checked for event in intake.feed(bytes([byte]), NOW_MS)]
    assert [type(event) for event in events] == [BoardNamed, *[ReadingArrived] * 3, BoardTrouble]


def test_that_a_damaged_checked_line_does_not_switch(vectors: Mapping) -> None:
    damaged = vectors["accepted"][1]["line"].encode().replace(b"21.40", b"99.99")
    intake, events = started(damaged * 8)
    assert not intake.is_checked
    assert told(events) == []


def test_that_a_reading_spread_over_lines_is_put_together() -> None:
    _, events = accepted(lines(9, b"Temperature = %.1f *C\r\nHumidity = %.1f %%\r\n\r\n"))
    assert {(reading.temperature_C is None, reading.humidity_pct is None) for reading in told(events)} == {
        (False, False)
    }


def test_that_a_part_that_stops_coming_does_not_hold_the_rest_back() -> None:
    intake, _ = accepted(lines(9, b"Temperature = %.1f *C\r\nHumidity = %.1f %%\r\n"))
    events = intake.feed(b"Temperature = 22.5 *C\r\n" * 3, NOW_MS + 1)
    assert [(reading.temperature_C, reading.humidity_pct) for reading in told(events)] == [(22.5, None)] * 2


@pytest.mark.parametrize(
    ("line", "code"),
    [
        (b"Temp: nan C, Humidity: 47.0 %", "missing"),
        (b"Temp: -127.00 C, Humidity: 47.0 %", "missing"),  # one-wire libraries' word for "no sensor": from memory
        (b"Temp: 85.00 C, Humidity: 47.0 %", "missing"),  # power-on value of a one-wire thermometer: its data sheet
        (b"Temp: 999 C, Humidity: 47.0 %", "missing"),
        (b"Temp: 310.5 C, Humidity: 47.0 %", "range"),
    ],
)
def test_that_a_missing_sensor_is_a_fault_and_never_a_value(line: bytes, code: str) -> None:
    intake, _ = accepted(lines(8))
    (reading,) = told(intake.feed(line + b"\r\n", NOW_MS))
    assert reading.temperature_C is None
    assert reading.humidity_pct == 47.0
    assert reading.faults == (ChannelFault(channel=Channel.TEMPERATURE, code=code),)


def test_that_a_complaint_about_the_sensor_is_told_as_the_boards_trouble() -> None:
    intake, _ = started(lines(8))
    (trouble,) = intake.feed(b"Failed to read from DHT sensor!\r\n", NOW_MS)
    assert trouble == BoardTrouble(
        time_ms=NOW_MS,
        code="",
        message="Failed to read from DHT sensor!",
        counts=LineCounts(good=9, troubles=1),
    )
    assert intake.feed(b"WiFi failed, trying again\r\n", NOW_MS) == []


def test_that_boot_noise_is_no_fault_and_later_noise_is() -> None:
    intake, _ = started(b"\x81\x92\xff\x00\n" + lines(2))
    assert intake.counts == LineCounts(good=2)
    intake.feed(b"\x81\x92\xff\x00\n", NOW_MS)
    assert intake.counts == LineCounts(good=2, faulty=1)


def test_that_noise_is_counted_when_the_board_has_had_its_time_to_start() -> None:
    intake, _ = started(b"\x81\x92\xff\x00\n")
    intake.feed(b"\x81\x92\xff\x00\n", NOW_MS + SETTLE_MS)
    assert intake.counts == LineCounts(faulty=1)


def test_that_a_row_with_a_column_too_few_is_refused() -> None:
    mapping = started(b"temp (C),hum (%)\r\n" + lines(6, b"%.1f,%.1f\r\n"))[0].mapping
    intake, events = started(b"21.0\r\n21.0,47.0\r\n", LooseIntake(mapping))
    assert [type(event) for event in events] == [MappingHolds, LineRefused, ReadingArrived]
    assert "1 columns; this board sends 2" in events[1].reason
    assert intake.counts == LineCounts(good=1, faulty=1)


def test_that_a_kept_mapping_is_used_from_the_first_line_and_nothing_is_asked() -> None:
    kept = started(b"temp (C),hum (%)\r\n" + lines(6, b"%.1f,%.1f\r\n"))[0].mapping
    _, events = started(lines(2, b"%.1f,%.1f\r\n"), LooseIntake(kept))
    assert [reading.humidity_pct for reading in told(events)] == [47.0, 47.1]
    assert not asked(events)


def test_that_a_kept_mapping_of_another_sketch_is_given_up() -> None:
    kept = started(lines(8))[0].mapping
    _, events = started(lines(40, b'{"temp_c": %.1f, "hum": %.1f}\n'), LooseIntake(kept))
    (shown,) = asked(events)
    assert "temp_c" in shown.mapping.keys
    assert told(events) == []  # she has not accepted that one


def test_that_a_board_with_other_columns_than_kept_is_never_read_by_them() -> None:
    kept = started(lines(8, b"%.1f,%.1f\r\n"))[0].mapping.set_by_hand("2", Choice(Channel.HUMIDITY, "%"))
    intake, events = started(lines(60, b"1,%.1f,%.1f\r\n"), LooseIntake(kept))
    assert told(events) == []
    assert intake.counts == LineCounts(good=50, faulty=10)
    assert [len(event.mapping.columns) for event in asked(events)] == [3]


def test_that_what_she_sets_is_read_at_once_and_not_guessed_over() -> None:
    intake, events = started(lines(8, b"%.1f,%.1f\r\n"))
    assert told(events) == []
    assert {column.outcome for column in asked(events)[0].mapping.columns} == {Outcome.ASKED}
    mapping = intake.mapping.set_by_hand("2", Choice(Channel.TEMPERATURE, "°F")).set_by_hand("1", None)
    intake.set_mapping(mapping)
    events = intake.feed(lines(30, b"%.1f,%.1f\r\n"), NOW_MS)
    assert intake.mapping == mapping
    assert not asked(events)
    assert told(events)[0].temperature_C == pytest.approx(8.3333, abs=1e-4)  # 47 °F: NIST SP 811


def test_that_numbers_are_shown_until_she_accepts() -> None:
    intake, events = started(lines(6, b"%.1f,%.1f\r\n"))
    seen = [event for event in events if isinstance(event, NumbersSeen)]
    assert len(seen) == 6
    assert seen[0].numbers == (("1", 21.0), ("2", 47.0))
    intake.set_mapping(intake.mapping.set_by_hand("1", None).set_by_hand("2", Choice(Channel.HUMIDITY, "%")))
    assert not [e for e in intake.feed(lines(2, b"%.1f,%.1f\r\n"), NOW_MS) if isinstance(e, NumbersSeen)]


def test_that_noise_now_and_then_for_hours_does_not_hide_the_numbers() -> None:
    intake, _ = started(lines(8, b"%.1f,%.1f\r\n"))
    for _ in range(200):  # one line in ten is noise
        intake.feed(b"\x81\x92\xff\x00\n" + lines(9, b"%.1f,%.1f\r\n"), NOW_MS)
    events = intake.feed(lines(3, b"%.1f,%.1f\r\n"), NOW_MS)
    assert [type(event) for event in events] == [NumbersSeen] * 3


def test_that_numbers_after_a_long_noise_are_understood_once_they_outweigh_it() -> None:
    intake, _ = started(b"")
    intake.feed(b"\x81\x92\xff\x00\n" * 2000, NOW_MS)
    assert not asked(intake.feed(lines(100), NOW_MS))
    assert asked(intake.feed(lines(200), NOW_MS))


def test_that_a_sensor_that_wakes_up_late_is_mapped_then() -> None:
    intake, _ = started(b"Temp: nan C, Humidity: 47.0 %\r\n" * 30)
    assert {choice.channel for choice in intake.mapping.chosen.values()} == {Channel.HUMIDITY}
    intake.feed(lines(60), NOW_MS)
    assert {choice.channel for choice in intake.mapping.chosen.values()} == {Channel.TEMPERATURE, Channel.HUMIDITY}


def test_that_a_half_line_after_reopening_is_passed_over() -> None:
    intake, _ = accepted(lines(8) + b"Temp: 2")
    intake.reopened()
    events = intake.feed(b"9.9 C, Humidity: 99.9 %\r\n" + lines(1), NOW_MS)
    assert [reading.humidity_pct for reading in told(events)] == [47.0]


def test_that_an_endless_line_is_counted_once_and_passed_over() -> None:
    intake, events = started(b"x" * 5000 + b"\n" + lines(6))
    assert intake.counts == LineCounts(good=6, faulty=1)
    assert "1024" in events[0].reason


def test_that_carriage_returns_alone_end_lines() -> None:
    assert told(accepted(lines(8).replace(b"\r\n", b"\r"))[1])


pieces = st.sampled_from(
    [
        *(
            b"\n",
            b"\r\n",
            b"$",
            b"{",
            b"}",
            b"[",
            b'"temp":',
            b'"h":',
            b",",
            b";",
            b"\t",
            b":",
            b"=",
            b" ",
            b"%",
            b"\xb0C",
        ),
        *(b"Temp", b"hum", b"F", b"21.5", b"21,5", b"-127", b"1e999", b"nan", b"ovf", b"1,013.25", b"--", b"12:30:45"),
        *(b"9" * 400, b"temp,hum\n", b"21.5,47\n", b"Temp: 21.5 C Hum: 47 %\n", b'{"t":21.5,"h":{"v":47,"u":"%"}}\n'),
        *(b"$D n=0 u=194 t=21.40 h=48.00 a=596.9 s=5001*5962\r\n", b"[" * 990, b"Failed to read sensor\n"),
    ]
)
noise = st.lists(st.one_of(st.binary(max_size=8), pieces), max_size=60).map(b"".join)


@settings(max_examples=300, deadline=None)
@given(noise, st.integers(1, 40))
def test_that_any_bytes_give_values_inside_limits_or_counted_faults(data: bytes, repeated: int) -> None:
    intake = LooseIntake()
    intake.feed(b"\n", NOW_MS - SETTLE_MS)
    events = intake.feed((data + b"\n") * repeated, NOW_MS)
    refused = sum(isinstance(event, LineRefused) for event in events)
    assert intake.counts.faulty == refused
    for reading in told(events):
        for channel in Channel:
            value = reading.value(channel)
            assert value is None or -40.0 <= value <= 1e10  # no channel's limits are wider; NaN fails
    if not intake.is_checked:
        ended = re.split(rb"[\r\n]+", (data + b"\n") * repeated)
        assert intake.counts.good + intake.counts.faulty == sum(bool(line) for line in ended)


@settings(deadline=None)
@given(noise, st.lists(st.integers(0, 3000), max_size=6))
def test_that_portions_never_change_what_is_read(data: bytes, cuts: list[int]) -> None:
    data = b"\n" + data * 8 + b"\n"
    whole, piecewise = LooseIntake(), LooseIntake()
    ends = sorted({min(cut, len(data)) for cut in cuts} | {0, len(data)})
    events = [e for a, b in pairwise(ends) for e in piecewise.feed(data[a:b], NOW_MS)]
    assert events == whole.feed(data, NOW_MS)
