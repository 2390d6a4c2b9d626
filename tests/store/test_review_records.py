"""The records as a review reads them: what her sensor said is put right, what came from outside is left as it is."""

from __future__ import annotations

from pathlib import Path

import pytest

from studiowatch.room.corrections import Imported, Kept, Sighting
from studiowatch.room.humidity_calibration import HumidityCalibration, SaltPoint
from studiowatch.room.readings import Reading
from studiowatch.store.calibrations import put_calibration, put_sighting
from studiowatch.store.database import Database, looking, open_database
from studiowatch.store.imported import put_imported
from studiowatch.store.migrations import STEPS
from studiowatch.store.review_records import ReviewRecords

START_MS = 1_772_442_000_000
HOUR_MS = 3_600_000
OUTSIDE = Imported(start_ms=START_MS + HOUR_MS, end_ms=START_MS + 2 * HOUR_MS)


def calibrate(database: Database) -> None:
    """Keep a sensor that reads 2 too high at both salts: 33.07 and 75.47 %RH at 20 °C by Greenspan (1977)."""
    put_sighting(database, Sighting(time_ms=START_MS, sensor="CAFE0042"))
    measured = HumidityCalibration(
        magnesium=SaltPoint(raw_pct=35.07, temperature_C=20.0, time_ms=START_MS),
        sodium=SaltPoint(raw_pct=77.47, temperature_C=20.0, time_ms=START_MS),
    )
    put_calibration(database, Kept(key="h", sensor="CAFE0042", made_ms=START_MS, calibration=measured))


def corrected_pct(database: Database, time_ms: int) -> float | None:
    reading = Reading(time_ms=time_ms, temperature_C=20.0, humidity_pct=60.0)
    return ReviewRecords(database).corrections().corrected(reading).humidity_pct


def test_that_no_calibration_of_hers_is_applied_to_what_came_from_outside(database: Database) -> None:
    calibrate(database)
    with database.transaction() as connection:
        put_imported(connection, OUTSIDE)
    assert corrected_pct(database, OUTSIDE.start_ms) == 60.0
    assert corrected_pct(database, OUTSIDE.end_ms - 1) == 60.0
    for outside_of_it_ms in (OUTSIDE.start_ms - 1, OUTSIDE.end_ms):
        assert corrected_pct(database, outside_of_it_ms) == pytest.approx(58.0)  # 60 - 2


def test_that_a_file_of_a_version_without_imports_is_put_right_throughout(tmp_path: Path) -> None:
    file = tmp_path / "studio.sqlite3"
    before = next(at for at, step in enumerate(STEPS) if any("TABLE imported" in statement for statement in step))
    database = open_database(file, steps=STEPS[:before])
    calibrate(database)
    database.close()
    with looking(file) as earlier:
        assert corrected_pct(earlier, OUTSIDE.start_ms) == pytest.approx(58.0)  # 60 - 2
