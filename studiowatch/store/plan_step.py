"""The step of the migrations that brings recipes of her own and her working hours."""

from __future__ import annotations

PLAN_STEP = (
    # sheets: the names of the data sheets, lowest first, as JSON
    """CREATE TABLE recipe (
        name TEXT PRIMARY KEY NOT NULL,
        sheets TEXT NOT NULL
    ) STRICT""",
    # a day without a row has the hours that are usual
    """CREATE TABLE working_day (
        day TEXT PRIMARY KEY NOT NULL,
        hours TEXT NOT NULL
    ) STRICT""",
)
