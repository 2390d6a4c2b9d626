"""The step of the migrations that brings what she means to do with the room."""

from __future__ import annotations

INTENTION_STEP = (
    # hours: "18:00-23:00", into the next day where the end is not later; target: °C or %
    """CREATE TABLE intention (
        key TEXT PRIMARY KEY NOT NULL,
        doing TEXT NOT NULL,
        hours TEXT NOT NULL,
        target REAL NOT NULL,
        first_day TEXT NOT NULL,
        days INTEGER NOT NULL
    ) STRICT""",
)
