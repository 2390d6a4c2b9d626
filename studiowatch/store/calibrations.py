"""Calibrations as rows: what was measured, from which the rest follows, and which sensor was on when."""

from __future__ import annotations

import json
from collections.abc import Iterator, Sequence
from dataclasses import asdict
from math import isfinite
from typing import Any

from studiowatch.room.air_points import AirPoint
from studiowatch.room.air_speed_calibration import AirSpeedCalibration
from studiowatch.room.corrections import Kept, Sighting
from studiowatch.room.humidity_calibration import HumidityCalibration, SaltPoint, calibrate_humidity
from studiowatch.room.king_law import KingLaw
from studiowatch.speech.words import say
from studiowatch.store.database import Database
from studiowatch.store.shapes import CalibrationRecord

_KINDS = {"humidity": HumidityCalibration, "air-speed": AirSpeedCalibration}
_PUT = (
    "INSERT INTO calibration (key, sensor, made_ms, withdrawn_ms, kind, measured) VALUES (?, ?, ?, ?, ?, ?) "
    "ON CONFLICT (key) DO UPDATE SET withdrawn_ms = excluded.withdrawn_ms"
)


def put_calibration(database: Database, kept: Kept) -> None:
    """Insert a calibration, or the time at which one was withdrawn; what was measured never changes."""
    kind = next(name for name, form in _KINDS.items() if isinstance(kept.calibration, form))
    measured = json.dumps(asdict(kept.calibration), allow_nan=False)
    with database.transaction() as connection:
        connection.execute(_PUT, (kept.key, kept.sensor, kept.made_ms, kept.withdrawn_ms, kind, measured))


def all_calibrations(database: Database) -> list[Kept]:
    """Return all calibrations, withdrawn ones too, in the order in which they were made."""
    rows = database.rows(
        "SELECT key, sensor, made_ms, withdrawn_ms, kind, measured FROM calibration ORDER BY made_ms, rowid"
    )
    return [
        Kept(
            key=key,
            sensor=sensor,
            made_ms=made_ms,
            withdrawn_ms=withdrawn_ms,
            calibration=_calibration(kind, json.loads(measured)),
        )
        for key, sensor, made_ms, withdrawn_ms, kind, measured in rows
    ]


def put_sighting(database: Database, sighting: Sighting) -> None:
    """Add a sighting of a sensor."""
    _put(database, "INSERT INTO sensor_sighting (time_ms, sensor) VALUES (?, ?)", sighting)


def all_sightings(database: Database) -> list[Sighting]:
    """Return all sightings, in the order of arrival."""
    return _sightings(database.rows("SELECT time_ms, sensor FROM sensor_sighting ORDER BY id"))


def put_check(database: Database, check: Sighting) -> None:
    """Add a check of a sensor."""
    _put(database, "INSERT INTO sensor_check (time_ms, sensor) VALUES (?, ?)", check)


def all_checks(database: Database) -> list[Sighting]:
    """Return all checks, in the order of arrival."""
    return _sightings(database.rows("SELECT time_ms, sensor FROM sensor_check ORDER BY id"))


def _put(database: Database, sql: str, sighting: Sighting) -> None:
    with database.transaction() as connection:
        connection.execute(sql, (sighting.time_ms, sighting.sensor))


def _sightings(rows: Sequence[tuple[Any, ...]]) -> list[Sighting]:
    return [Sighting(time_ms=time_ms, sensor=sensor) for time_ms, sensor in rows]


def calibration_fault(record: CalibrationRecord) -> str:
    """Return what is wrong with a calibration that comes from a file, or "" for one that could have been made here."""
    try:
        measured = json.loads(record.measured)
        calibration = _calibration(record.kind, measured)
        if not all(isinstance(number, int | float) and isfinite(number) for number in _leaves(measured)):
            raise ValueError(say("not all of it is a number"))  # noqa: TRY301 - one sentence for all that may be wrong
        if isinstance(calibration, HumidityCalibration):
            calibrate_humidity(calibration.magnesium, calibration.sodium, now_ms=record.made_ms)
    except (KeyError, TypeError, ValueError, ArithmeticError) as fault:
        return say(
            "calibration {key} of {sensor} cannot be one ({fault}); export it again, or leave it out.",
            key=record.key,
            sensor=record.sensor,
            fault=fault,
        )
    return ""


def _leaves(measured: Any) -> Iterator[Any]:  # noqa: ANN401 - whatever the file holds
    if isinstance(measured, dict | list):
        for each in measured.values() if isinstance(measured, dict) else measured:
            yield from _leaves(each)
    else:
        yield measured


def _calibration(kind: str, measured: dict[str, Any]) -> HumidityCalibration | AirSpeedCalibration:
    if _KINDS[kind] is HumidityCalibration:
        return HumidityCalibration(magnesium=SaltPoint(**measured["magnesium"]), sodium=SaltPoint(**measured["sodium"]))
    return AirSpeedCalibration(
        law=KingLaw(**measured["law"]), points=tuple(AirPoint(**point) for point in measured["points"])
    )


def kept_calibrations(database: Database) -> tuple[list[Kept], list[Sighting]]:
    """Return all calibrations and sightings; nothing of a file of a version that had none."""
    tables = {name for (name,) in database.rows("SELECT name FROM sqlite_master WHERE type = 'table'")}
    if not {"calibration", "sensor_sighting"} <= tables:
        return [], []
    return all_calibrations(database), all_sightings(database)
