"""Readings from outside: beside what is there, hour by hour, as columns."""

from __future__ import annotations

from dataclasses import replace
from itertools import chain

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.room.log_columns import LogColumns, columns_of, joined
from studiowatch.room.readings import Channel, Reading
from studiowatch.store.database import Database
from studiowatch.store.examine import examine
from studiowatch.store.imported import all_imported
from studiowatch.store.readings import ReadingsStore
from studiowatch.store.taking_in import Verdict

HOUR_MS = 3_600_000
START_MS = 1_772_442_000_000
LATER_MS = START_MS + 100 * HOUR_MS


def readings(count: int, first: int = 0) -> list[Reading]:
    return [
        Reading(
            time_ms=START_MS + 1000 * at,
            temperature_C=20.0 + at % 7,
            humidity_pct=None if at % 5 == 0 else 50.0,
            checked=False,
        )
        for at in range(first, first + count)
    ]


def test_that_what_comes_back_is_what_was_given(database: Database) -> None:
    log = ReadingsStore(database)
    verdicts = log.take_in(columns_of(readings(600)), seal_before_ms=LATER_MS)
    assert set(verdicts.tolist()) == {Verdict.TAKEN}
    assert log.between(0, 2**60) == readings(600)
    assert database.rows("SELECT count(*) FROM reading") == [(0,)]
    assert examine(database.path).faults == ()


def test_that_the_same_again_is_there_and_another_value_is_not_taken(database: Database) -> None:
    log = ReadingsStore(database)
    log.take_in(columns_of(readings(100)), seal_before_ms=LATER_MS)
    changed = readings(150)
    changed[7] = replace(changed[7], temperature_C=1.0)
    verdicts = log.take_in(columns_of(changed), seal_before_ms=LATER_MS).tolist()
    assert verdicts == [Verdict.DIFFERENT if at == 7 else Verdict.THERE for at in range(100)] + [Verdict.TAKEN] * 50
    assert log.between(0, 2**60) == readings(150)
    assert examine(database.path).faults == ()


@pytest.mark.parametrize("sealed", [False, True])
def test_that_it_goes_beside_what_the_board_sent(database: Database, *, sealed: bool) -> None:
    log = ReadingsStore(database)
    mine = [replace(one, checked=True) for one in readings(50, first=20)]
    log.append(mine)
    if sealed:
        log.seal(LATER_MS)
    log.take_in(columns_of(readings(100)), seal_before_ms=LATER_MS)
    there = {one.time_ms: one for one in chain(readings(100), mine)}
    assert log.between(0, 2**60) == [there[time_ms] for time_ms in sorted(there)]


def test_that_a_time_that_is_there_twice_is_known_by_either_value(database: Database) -> None:
    log = ReadingsStore(database)
    one = readings(1)[0]
    log.append([one, replace(one, temperature_C=30.0)])
    for temperature_C, verdict in ((20.0, Verdict.THERE), (30.0, Verdict.THERE), (25.0, Verdict.DIFFERENT)):
        given_one = columns_of([replace(one, temperature_C=temperature_C)])
        assert log.take_in(given_one, seal_before_ms=LATER_MS).tolist() == [verdict]


def test_that_numbers_of_arrival_never_come_twice(database: Database) -> None:
    log = ReadingsStore(database)
    log.take_in(columns_of(readings(10)), seal_before_ms=LATER_MS)
    log.append(readings(5, first=10))
    log.take_in(columns_of(readings(10, first=3600)), seal_before_ms=LATER_MS)
    log.append(readings(5, first=8000))
    assert database.rows("SELECT id FROM reading ORDER BY id") == [(at,) for at in (*range(11, 16), *range(26, 31))]


def test_that_an_hour_that_is_on_stays_as_rows(database: Database) -> None:
    ReadingsStore(database).take_in(columns_of(readings(10)), seal_before_ms=START_MS)
    assert database.rows("SELECT count(*) FROM reading") == [(10,)]
    assert ReadingsStore(database).between(0, 2**60) == readings(10)


def test_that_an_infinity_is_refused_and_nothing_written(database: Database) -> None:
    columns = LogColumns(time_ms=np.array([START_MS]), values={Channel.TEMPERATURE: np.array([np.inf])})
    with pytest.raises(ValueError, match="infinite"):
        ReadingsStore(database).take_in(columns, seal_before_ms=LATER_MS)
    assert ReadingsStore(database).between(0, 2**60) == []


@given(cut=st.integers(1, 39))
def test_that_parts_joined_are_the_whole(cut: int) -> None:
    whole = columns_of(readings(40))
    again = joined([whole.part(0, cut), whole.part(cut, 40)])
    assert again.time_ms.tolist() == whole.time_ms.tolist()
    for channel in Channel:
        assert np.array_equal(again.column(channel), whole.column(channel), equal_nan=True)


def imported(database: Database) -> list[tuple[int, int]]:
    return [(one.start_ms - START_MS, one.end_ms - START_MS) for one in all_imported(database)]


def test_that_hours_from_outside_are_one_stretch(database: Database) -> None:
    log = ReadingsStore(database)
    for hour in range(4):
        log.take_in(columns_of(readings(600, first=3600 * hour + 60)), seal_before_ms=LATER_MS)
    assert imported(database) == [(0, 4 * HOUR_MS)]


def test_that_a_stretch_ends_where_the_board_was_on(database: Database) -> None:
    log = ReadingsStore(database)
    log.append([replace(one, checked=True) for one in readings(100, first=1000)])
    log.take_in(columns_of(readings(3600)), seal_before_ms=LATER_MS)
    assert imported(database) == [(0, 999_001), (1_100_000, HOUR_MS)]


def test_that_the_hour_that_is_on_is_marked_no_further_than_what_was_taken(database: Database) -> None:
    ReadingsStore(database).take_in(columns_of(readings(10)), seal_before_ms=START_MS)
    assert imported(database) == [(0, 9001)]


def test_that_what_was_there_already_marks_nothing(database: Database) -> None:
    log = ReadingsStore(database)
    log.append([replace(one, checked=True) for one in readings(100)])
    log.take_in(columns_of(readings(100)), seal_before_ms=LATER_MS)
    assert imported(database) == []


def test_that_two_logs_woven_into_each_other_count_as_the_boards(database: Database) -> None:
    log = ReadingsStore(database)
    log.append(readings(400)[::2])
    log.take_in(columns_of(readings(400)), seal_before_ms=LATER_MS)
    assert imported(database) == []
