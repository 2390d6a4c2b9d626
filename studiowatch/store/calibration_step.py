"""The step of the migrations that brings calibrations, with the sensors that they belong to."""

from __future__ import annotations

CALIBRATION_STEP = (
    # one line each for good: a calibration that was withdrawn stays, with the time of that
    """CREATE TABLE calibration (
        key TEXT PRIMARY KEY NOT NULL,
        sensor TEXT NOT NULL,
        made_ms INTEGER NOT NULL,
        withdrawn_ms INTEGER,
        kind TEXT NOT NULL,
        measured TEXT NOT NULL
    ) STRICT""",
    # from this time on, this sensor was the one on the board
    """CREATE TABLE sensor_sighting (
        id INTEGER PRIMARY KEY,
        time_ms INTEGER NOT NULL,
        sensor TEXT NOT NULL
    ) STRICT""",
    # she checked it and found it right
    """CREATE TABLE sensor_check (
        id INTEGER PRIMARY KEY,
        time_ms INTEGER NOT NULL,
        sensor TEXT NOT NULL
    ) STRICT""",
)
