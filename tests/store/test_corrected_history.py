"""The room history as the calibrations have it: exact at the edges of a bucket, by its time, and raw once withdrawn."""

from __future__ import annotations

import itertools
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from studiowatch.room.air_speed_calibration import AirSpeedCalibration
from studiowatch.room.corrections import Imported, Kept, Sighting
from studiowatch.room.humidity_calibration import HumidityCalibration, SaltPoint
from studiowatch.room.king_law import KingLaw
from studiowatch.room.readings import Channel, Reading
from studiowatch.room.typed import typed_reading
from studiowatch.store.corrected_history import CorrectedHistory
from studiowatch.store.database import Database, open_database
from studiowatch.store.imported import put_imported
from studiowatch.store.readings import ReadingsStore
from studiowatch.store.records import RecordsStore

MINUTE_MS, HOUR_MS = 60_000, 3_600_000
START_MS = 1_772_442_000_000  # a whole hour
LAW = KingLaw(offset_mV2=1e6, slope=1e6, exponent=0.5, reference_C=20.0, bead_C=80.0)
# reads 2 too high at both salts: 33.07 and 75.47 %RH at 20 °C by Greenspan (1977)
HUMIDITY = Kept(
    key="h",
    sensor="CAFE0042",
    made_ms=START_MS + HOUR_MS,
    calibration=HumidityCalibration(
        magnesium=SaltPoint(raw_pct=35.07, temperature_C=20.0, time_ms=START_MS),
        sodium=SaltPoint(raw_pct=77.47, temperature_C=20.0, time_ms=START_MS),
    ),
)
AIR = replace(HUMIDITY, key="v", calibration=AirSpeedCalibration(law=LAW, points=()))


@pytest.fixture
def database(tmp_path: Path) -> Iterator[Database]:
    opened = open_database(tmp_path / "studio.sqlite3")
    yield opened
    opened.close()


@pytest.fixture
def records(database: Database) -> RecordsStore:
    store = RecordsStore(database, itertools.count(1_000).__next__)
    store.save_sighting(Sighting(time_ms=START_MS, sensor="CAFE0042"))
    return store


@pytest.fixture
def history(database: Database) -> Iterator[CorrectedHistory]:
    opened = CorrectedHistory(database.path)
    yield opened
    opened.close()


def fill(database: Database, hours: float = 3.0, *, sealed: bool = False) -> None:
    """Store one reading in 10 s: humidity 51 and 53 by turns, a bead at 1500 mV that warms from 18 to 22 °C."""
    log = ReadingsStore(database)
    count = round(hours * 360)
    log.append(
        [
            Reading(
                time_ms=START_MS + 10_000 * number,
                temperature_C=18.0 + 4.0 * number / count,
                humidity_pct=52.0 + (-1.0) ** number,
                air_signal_mV=1500.0,
            )
            for number in range(count)
        ]
    )
    if sealed:
        log.seal(START_MS + round(hours * HOUR_MS))


@pytest.mark.parametrize("sealed", [False, True])
def test_that_humidity_is_put_right_from_the_calibration_on(
    database: Database, records: RecordsStore, history: CorrectedHistory, *, sealed: bool
) -> None:
    fill(database, sealed=sealed)
    records.save_calibration(HUMIDITY)
    series = history.series(Channel.HUMIDITY, START_MS, START_MS + 3 * HOUR_MS, 18)
    before = series.time_ms < HUMIDITY.made_ms
    assert before.sum() == 6
    for column, raw in ((series.low, 51.0), (series.high, 53.0), (series.mean, 52.0)):
        assert column[before] == pytest.approx(raw)
        assert column[~before] == pytest.approx(raw - 2.0)


def test_that_one_that_is_withdrawn_leaves_what_the_sensor_said(
    database: Database, records: RecordsStore, history: CorrectedHistory
) -> None:
    fill(database)
    records.save_calibration(HUMIDITY)
    records.save_calibration(replace(HUMIDITY, withdrawn_ms=START_MS + 2 * HOUR_MS))
    series = history.series(Channel.HUMIDITY, START_MS, START_MS + 3 * HOUR_MS, 18)
    assert series.mean == pytest.approx(52.0)


@pytest.mark.parametrize("sealed", [False, True])
def test_that_a_voltage_is_a_speed_from_the_calibration_on_at_the_temperature_of_its_time(
    database: Database, records: RecordsStore, history: CorrectedHistory, *, sealed: bool
) -> None:
    fill(database, sealed=sealed)
    assert history.series(Channel.AIR_SPEED, START_MS, START_MS + 3 * HOUR_MS, 180).time_ms.size == 0
    records.save_calibration(AIR)
    series = history.series(Channel.AIR_SPEED, START_MS, START_MS + 3 * HOUR_MS, 180)
    assert series.time_ms[0] == AIR.made_ms + 30_000
    assert series.time_ms.size == 120
    # by hand, at 20 °C: (1.5² - 1)² m/s; at 22 °C V² counts 60/58 times: (2.25 * 60/58 - 1)². The bucket's temperature
    # is its mean, at its middle
    air_C = 18.0 + 4.0 * (series.time_ms - START_MS) / (3 * HOUR_MS)
    assert series.mean == pytest.approx((2.25 * 60.0 / (80.0 - air_C) - 1.0) ** 2, rel=1e-3)
    assert history.series(Channel.AIR_SIGNAL, START_MS, START_MS + 3 * HOUR_MS, 180).mean == pytest.approx(1500.0)


def test_that_speeds_that_a_board_sent_itself_stay_and_stand_beside_those_worked_out(
    database: Database, records: RecordsStore, history: CorrectedHistory
) -> None:
    fill(database, 2.0)
    records.save_calibration(AIR)
    later_ms = START_MS + 2 * HOUR_MS
    ReadingsStore(database).append(
        [Reading(time_ms=later_ms + 10_000 * number, air_speed_m_s=0.25) for number in range(360)]
    )
    series = history.series(Channel.AIR_SPEED, START_MS, START_MS + 3 * HOUR_MS, 180)
    assert (np.diff(series.time_ms) == 60_000).all()
    assert series.mean[series.time_ms >= later_ms] == pytest.approx(0.25)
    assert (series.mean[series.time_ms < later_ms] > 1.0).all()


def test_that_the_mean_of_a_gusty_bucket_is_a_few_percent_low_and_no_more(
    database: Database, records: RecordsStore, history: CorrectedHistory
) -> None:
    records.save_calibration(replace(AIR, made_ms=START_MS))
    rng = np.random.default_rng(5)
    speeds = np.maximum(rng.normal(0.5, 0.2, 3600), 0.03)  # gusts of 40 % of the mean
    ReadingsStore(database).append(
        [
            Reading(time_ms=START_MS + 1000 * number, temperature_C=20.0, air_signal_mV=float(signal))
            for number, signal in enumerate(LAW.signals(speeds))
        ]
    )
    series = history.series(Channel.AIR_SPEED, START_MS, START_MS + HOUR_MS, 1)
    # the voltage rises less and less with the speed, so that its mean is that of less than the mean speed
    assert 0.94 * speeds.mean() < series.mean[0] < speeds.mean()
    assert series.high[0] == pytest.approx(speeds.max())
    assert series.low[0] == pytest.approx(speeds.min())


@pytest.mark.parametrize("buckets", [1, 2, 3 * 360])
@pytest.mark.parametrize("sealed", [False, True])
def test_that_a_typed_reading_stays_what_it_is_beside_those_of_a_board(
    database: Database, records: RecordsStore, history: CorrectedHistory, *, sealed: bool, buckets: int
) -> None:
    fill(database)
    records.save_calibration(replace(HUMIDITY, made_ms=START_MS))
    log = ReadingsStore(database)
    # one below all that the board says, while it reads, and one above, after its last
    typed = {START_MS + HOUR_MS + 5_000: 30.0, START_MS + 3 * HOUR_MS + 5_000: 80.0}
    log.append(
        [
            typed_reading(time_ms=at_ms, temperature_C=20.0, humidity_pct=value, felt=None)
            for at_ms, value in typed.items()
        ]
    )
    if sealed:
        log.seal(START_MS + 4 * HOUR_MS)
    series = history.series(Channel.HUMIDITY, START_MS, START_MS + 3 * HOUR_MS + 10_000, buckets)
    assert (series.low.min(), series.high.max()) == pytest.approx((30.0, 80.0))
    assert series.mean[-1] == pytest.approx(80.0)
    if buckets == 1:  # by hand: from 8 to 12 o'clock 1080 readings of 52 on the mean, each 2 too high, and the low one
        assert series.mean[0] == pytest.approx((1080 * 50.0 + 30.0) / 1081)


@pytest.mark.parametrize("sealed", [False, True])
def test_that_a_bucket_holds_what_came_from_outside_as_it_is_and_the_boards_put_right(
    database: Database, records: RecordsStore, history: CorrectedHistory, *, sealed: bool
) -> None:
    fill(database, sealed=sealed)
    records.save_calibration(replace(HUMIDITY, made_ms=START_MS))
    with database.transaction() as connection:  # the last quarter of an hour
        put_imported(connection, Imported(start_ms=START_MS + 45 * MINUTE_MS, end_ms=START_MS + HOUR_MS))
    series = history.series(Channel.HUMIDITY, START_MS, START_MS + HOUR_MS, 1)
    assert series.low == pytest.approx(51.0 - 2.0)
    assert series.high == pytest.approx(53.0)
    assert series.mean == pytest.approx(0.75 * 50.0 + 0.25 * 52.0)


@pytest.mark.parametrize("sealed", [False, True])
def test_that_no_voltage_from_outside_becomes_a_speed_by_her_bead(
    database: Database, records: RecordsStore, history: CorrectedHistory, *, sealed: bool
) -> None:
    log = ReadingsStore(database)
    log.append(
        [
            Reading(
                time_ms=START_MS + MINUTE_MS * minute,
                temperature_C=20.0,
                air_signal_mV=1500.0 if minute < 45 else 3000.0,
            )
            for minute in range(60)
        ]
    )
    if sealed:
        log.seal(START_MS + HOUR_MS)
    records.save_calibration(replace(AIR, made_ms=START_MS))
    with database.transaction() as connection:
        put_imported(connection, Imported(start_ms=START_MS + 45 * MINUTE_MS, end_ms=START_MS + HOUR_MS))
    series = history.series(Channel.AIR_SPEED, START_MS, START_MS + HOUR_MS, 1)
    assert series.high == pytest.approx((1.5**2 - 1.0) ** 2)  # by hand, at 20 °C: (V² - 1)² m/s


def test_that_an_empty_log_has_an_empty_history(history: CorrectedHistory) -> None:
    assert history.span_ms() is None
    for channel in Channel:
        assert history.series(channel, START_MS, START_MS + HOUR_MS, 60).time_ms.size == 0
