"""Calibrations come back exactly, are never changed but for being withdrawn, and come to earlier files as none."""

from __future__ import annotations

import itertools
from dataclasses import replace
from pathlib import Path

import pytest

from studiowatch.room.air_points import AirPoint
from studiowatch.room.air_speed_calibration import AirSpeedCalibration
from studiowatch.room.corrections import Kept, Sighting
from studiowatch.room.humidity_calibration import HumidityCalibration, SaltPoint
from studiowatch.room.king_law import KingLaw
from studiowatch.store.database import Database, open_database
from studiowatch.store.migrations import STEPS
from studiowatch.store.records import RecordsStore

HUMIDITY = Kept(
    key="h",
    sensor="CAFE0042",
    made_ms=2_000,
    calibration=HumidityCalibration(
        magnesium=SaltPoint(raw_pct=1 / 3 + 35, temperature_C=20.1, time_ms=1_000),
        sodium=SaltPoint(raw_pct=77.1, temperature_C=21.7, time_ms=1_900),
    ),
)
AIR = Kept(
    key="v",
    sensor="CAFE0042",
    made_ms=1_000,
    calibration=AirSpeedCalibration(
        law=KingLaw(offset_mV2=1e6 / 7, slope=0.8e6, exponent=0.47, reference_C=21.3, bead_C=75.0),
        points=(
            AirPoint(speed_m_s=0.0, signal_mV=1000.1, temperature_C=21.0),
            AirPoint(speed_m_s=0.3, signal_mV=1200.7, temperature_C=21.6),
        ),
    ),
)


@pytest.fixture
def records(database: Database) -> RecordsStore:
    return RecordsStore(database, itertools.count(1_000).__next__)


def test_that_calibrations_come_back_exactly_in_the_order_in_which_they_were_made(records: RecordsStore) -> None:
    records.save_calibration(HUMIDITY)
    records.save_calibration(AIR)
    assert records.calibrations() == [AIR, HUMIDITY]


def test_that_one_that_is_withdrawn_stays_with_the_time_of_that(records: RecordsStore) -> None:
    records.save_calibration(HUMIDITY)
    withdrawn = replace(HUMIDITY, withdrawn_ms=9_000)
    records.save_calibration(withdrawn)
    assert records.calibrations() == [withdrawn]


def test_that_what_was_measured_cannot_be_written_over(records: RecordsStore) -> None:
    records.save_calibration(HUMIDITY)
    records.save_calibration(replace(AIR, key="h"))
    assert records.calibrations() == [HUMIDITY]


def test_that_sightings_and_checks_come_back_in_the_order_of_arrival(records: RecordsStore) -> None:
    sightings = [Sighting(time_ms=5, sensor="A"), Sighting(time_ms=3, sensor="B"), Sighting(time_ms=9, sensor="A")]
    for sighting in sightings:
        records.save_sighting(sighting)
    records.save_check(sightings[1])
    assert records.sightings() == sightings
    assert records.checks() == [sightings[1]]


def test_that_what_is_no_number_is_refused(records: RecordsStore) -> None:
    spoilt = replace(AIR.calibration, points=(AirPoint(speed_m_s=0.0, signal_mV=float("nan"), temperature_C=20.0),))
    with pytest.raises(ValueError, match="not JSON compliant"):
        records.save_calibration(replace(AIR, calibration=spoilt))
    assert records.calibrations() == []


def test_that_a_file_of_an_earlier_version_gains_the_tables(tmp_path: Path) -> None:
    file = tmp_path / "studio.sqlite3"
    before = next(at for at, step in enumerate(STEPS) if any("calibration" in statement for statement in step))
    open_database(file, steps=STEPS[:before]).close()
    database = open_database(file)
    store = RecordsStore(database, lambda: 2)
    assert (store.calibrations(), store.sightings(), store.checks()) == ([], [], [])
    store.save_calibration(HUMIDITY)
    assert store.calibrations() == [HUMIDITY]
    database.close()
