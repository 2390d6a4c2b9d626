"""The step of the migrations that brings the stretches of the log that no board of hers sent."""

from __future__ import annotations

IMPORT_STEP = (
    # readings with start <= time < end came from outside: no calibration of hers is theirs
    """CREATE TABLE imported (
        id INTEGER PRIMARY KEY,
        start_ms INTEGER NOT NULL,
        end_ms INTEGER NOT NULL
    ) STRICT""",
    "CREATE INDEX imported_by_end ON imported (end_ms)",
)
