"""Readings come back as they were, as rows and sealed; means are checked against numpy."""

from __future__ import annotations

import random
from pathlib import Path
from tempfile import TemporaryDirectory

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from studiowatch.room.readings import Channel, ChannelFault, Reading
from studiowatch.room.typed import Felt, typed_reading
from studiowatch.store.database import Database, open_database
from studiowatch.store.readings import ReadingsStore

T0 = 1_772_442_000_000  # 2026-03-02T09:00:00Z
HOUR_MS = 3_600_000
ALL_TIME = (0, 2**60)


def _reading(at_s: int, **values: float) -> Reading:
    return Reading(time_ms=T0 + at_s * 1000, **values)


def test_that_every_field_comes_back_and_what_was_not_read_stays_none(readings_store: ReadingsStore) -> None:
    readings = [
        _reading(0, temperature_C=21.4, humidity_pct=48.0, air_signal_mV=596.9),
        Reading(
            time_ms=T0 + 1000,
            air_speed_m_s=0.07,
            surface_C=19.25,
            pressure_Pa=101325.0,
            particles_per_m3_5um=12.0,
            checked=False,
            faults=(
                ChannelFault(channel=Channel.TEMPERATURE, code="crc"),
                ChannelFault(channel=Channel.HUMIDITY, code="nak"),
            ),
        ),
        _reading(2),
    ]
    readings_store.append(readings)
    assert readings_store.between(*ALL_TIME) == readings
    assert readings_store.seal(T0 + HOUR_MS) == 3
    assert readings_store.between(*ALL_TIME) == readings


def test_that_a_clock_set_back_overwrites_nothing(database: Database, readings_store: ReadingsStore) -> None:
    before = [_reading(at, temperature_C=20.0 + at) for at in (0, 1, 2)]
    after = [_reading(at, temperature_C=30.0 + at) for at in (1, 2, 3)]
    readings_store.append(before)
    readings_store.append(after)
    expected = [before[0], before[1], after[0], before[2], after[1], after[2]]
    assert readings_store.between(*ALL_TIME) == expected
    assert database.rows("SELECT id, time_ms - ? FROM reading ORDER BY id", (T0,)) == [
        (1, 0), (2, 1000), (3, 2000), (4, 1000), (5, 2000), (6, 3000),
    ]  # fmt: skip


def test_that_an_hour_may_be_sealed_again_when_the_clock_was_set_back_into_it(readings_store: ReadingsStore) -> None:
    first = [_reading(at, temperature_C=20.0) for at in range(0, 100, 2)]
    second = [_reading(at, temperature_C=26.0) for at in range(1, 100, 2)]
    readings_store.append(first)
    assert readings_store.seal(T0 + HOUR_MS) == 50
    readings_store.append(second)
    assert readings_store.seal(T0 + HOUR_MS) == 50
    assert readings_store.between(*ALL_TIME) == sorted(first + second, key=lambda reading: reading.time_ms)
    assert [mean.temperature_C for mean in readings_store.minute_means(*ALL_TIME)] == [23.0, 23.0]


def test_that_ids_go_on_rising_after_all_rows_were_sealed(database: Database, readings_store: ReadingsStore) -> None:
    readings_store.append([_reading(0), _reading(1)])
    readings_store.seal(T0 + HOUR_MS)
    readings_store.append([_reading(0, temperature_C=5.0)])
    assert database.rows("SELECT id FROM reading") == [(3,)]


def test_that_only_hours_that_are_over_are_sealed(database: Database, readings_store: ReadingsStore) -> None:
    readings_store.append([_reading(at) for at in (0, 3599, 3600, 7199, 7200)])
    assert readings_store.seal(T0 + 2 * HOUR_MS - 1) == 2
    assert database.rows("SELECT count(*) FROM reading") == [(3,)]


def test_that_the_range_holds_its_start_and_not_its_end(readings_store: ReadingsStore) -> None:
    readings_store.append([_reading(at, temperature_C=float(at)) for at in range(10)])
    for _ in range(2):
        found = readings_store.between(T0 + 3000, T0 + 6000)
        assert [reading.temperature_C for reading in found] == [3.0, 4.0, 5.0]
        assert readings_store.between(T0 + 10_000, T0 + 20_000) == []
        readings_store.seal(T0 + HOUR_MS)


@pytest.mark.parametrize("bad", [float("nan"), float("inf"), -float("inf")])
def test_that_a_number_that_is_none_is_refused_and_nothing_of_the_batch_is_written(
    readings_store: ReadingsStore,
    bad: float,
) -> None:
    with pytest.raises(ValueError, match="humidity_pct is"):
        readings_store.append([_reading(0, humidity_pct=50.0), _reading(1, humidity_pct=bad)])
    assert readings_store.between(*ALL_TIME) == []


def test_that_a_minute_without_a_value_is_none_and_an_unchecked_line_marks_its_minute(
    readings_store: ReadingsStore,
) -> None:
    readings_store.append(
        [
            _reading(0, temperature_C=20.0),
            _reading(1),
            Reading(time_ms=T0 + 60_000, humidity_pct=40.0, checked=False),
            Reading(time_ms=T0 + 61_000, humidity_pct=50.0),
            _reading(180),
        ],
    )
    expected = [
        Reading(time_ms=T0 + 30_000, temperature_C=20.0),
        Reading(time_ms=T0 + 90_000, humidity_pct=45.0, checked=False),
        Reading(time_ms=T0 + 210_000),
    ]
    assert readings_store.minute_means(*ALL_TIME) == expected
    readings_store.seal(T0 + HOUR_MS)
    assert readings_store.minute_means(*ALL_TIME) == expected


@pytest.mark.parametrize("sealed_hours", [0, 1, 2, 5])
def test_that_minute_means_are_numpys_means_and_of_air_speed_the_mean_root_squared(
    readings_store: ReadingsStore, sealed_hours: int
) -> None:
    dice = random.Random(20260302)
    at_s = sorted(dice.sample(range(3 * 3600), 7_000))
    temperature = [round(dice.gauss(20, 2), 2) for _ in at_s]
    humidity = [round(dice.gauss(50, 5), 1) if dice.random() < 0.9 else None for _ in at_s]
    speed = [round(dice.expovariate(10.0), 3) if dice.random() < 0.9 else None for _ in at_s]
    readings_store.append(
        [
            Reading(time_ms=T0 + at * 1000, temperature_C=warmth, humidity_pct=damp, air_speed_m_s=blows)
            for at, warmth, damp, blows in zip(at_s, temperature, humidity, speed, strict=True)
        ],
    )
    readings_store.seal(T0 + sealed_hours * HOUR_MS)
    start_s, end_s = 130, 9_950  # neither is a whole minute
    means = readings_store.minute_means(T0 + start_s * 1000, T0 + end_s * 1000)
    seconds = np.array(at_s)
    inside = (seconds >= start_s) & (seconds < end_s)
    minutes = np.unique(seconds[inside] // 60)
    assert [mean.time_ms for mean in means] == (T0 + minutes * 60_000 + 30_000).tolist()
    for column, name in ((temperature, "temperature_C"), (humidity, "humidity_pct")):
        values = np.array(column, dtype=float)
        expected = [np.nanmean(values[inside & (seconds // 60 == minute)]) for minute in minutes]
        assert [getattr(mean, name) for mean in means] == pytest.approx(expected, rel=1e-12)
    roots = np.sqrt(np.array(speed, dtype=float))
    expected = [np.nanmean(roots[inside & (seconds // 60 == minute)]) ** 2 for minute in minutes]
    assert [mean.air_speed_m_s for mean in means] == pytest.approx(expected, rel=1e-12)


_READINGS = st.lists(
    st.builds(
        _reading,
        st.integers(min_value=0, max_value=4 * 3600),
        temperature_C=st.floats(min_value=-40, max_value=80),
        air_speed_m_s=st.one_of(st.none(), st.floats(min_value=0, max_value=10)),
    ),
    max_size=12,
)


@settings(max_examples=30)
@given(
    batches=st.lists(st.tuples(_READINGS, st.integers(min_value=0, max_value=6)), max_size=4),
    start_s=st.integers(min_value=0, max_value=4 * 3600),
    length_s=st.integers(min_value=0, max_value=4 * 3600),
)
def test_that_reading_back_is_a_stable_sort_by_time_whatever_was_sealed_when(
    batches: list[tuple[list[Reading], int]],
    start_s: int,
    length_s: int,
) -> None:
    start_ms = T0 + start_s * 1000
    end_ms = start_ms + length_s * 1000
    with TemporaryDirectory() as folder:
        database = open_database(Path(folder) / "studio.sqlite3")
        store = ReadingsStore(database)
        for readings, hours in batches:
            store.append(readings)
            store.seal(T0 + hours * HOUR_MS)
        found = store.between(start_ms, end_ms)
        database.close()
    arrived = [reading for readings, _ in batches for reading in readings]
    inside = [reading for reading in arrived if start_ms <= reading.time_ms < end_ms]
    assert found == sorted(inside, key=lambda reading: reading.time_ms)


@pytest.mark.parametrize("is_sealed", [False, True])
def test_that_a_typed_reading_comes_back_as_such_and_is_part_of_no_mean(
    readings_store: ReadingsStore, *, is_sealed: bool
) -> None:
    typed = [
        typed_reading(time_ms=T0 + at_s * 1000, temperature_C=20.0 + at_s, humidity_pct=48.0, felt=felt)
        for at_s, felt in ((50, None), (200, Felt.STILL), (230, Felt.MOVING))
    ]
    board = [_reading(at_s, temperature_C=18.0, air_speed_m_s=0.04) for at_s in range(40)]
    fault = Reading(time_ms=T0 + 40_000, faults=(ChannelFault(channel=Channel.TEMPERATURE, code="crc"),))
    readings_store.append([*board, fault, typed[0]])
    readings_store.append(typed[1:])
    if is_sealed:
        assert readings_store.seal(T0 + HOUR_MS) == 44
    assert [one for one in readings_store.between(*ALL_TIME) if not one.checked] == typed
    mean, *rest = readings_store.minute_means(*ALL_TIME)
    assert rest == typed
    assert mean.temperature_C == pytest.approx(18.0)
    assert (mean.time_ms, mean.humidity_pct, mean.checked, mean.faults) == (T0 + 30_000, None, True, ())
