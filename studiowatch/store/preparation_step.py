"""The step of the migrations that brings preparations, and what was done with prompts short of ticking them."""

from __future__ import annotations

PREPARATION_STEP = (
    # what was ticked, and which coats it is for, is one JSON text: it is read and written as a whole
    """CREATE TABLE preparation (
        key TEXT PRIMARY KEY NOT NULL,
        began_ms INTEGER NOT NULL,
        ended_ms INTEGER,
        state TEXT NOT NULL
    ) STRICT""",
    "CREATE INDEX preparation_open ON preparation (began_ms) WHERE ended_ms IS NULL",
    # beside the prompt, so that one which is told or put off stays as it was
    """CREATE TABLE prompt_telling (
        key TEXT PRIMARY KEY NOT NULL REFERENCES prompt (key) ON DELETE CASCADE,
        told_ms INTEGER,
        snoozed_ms INTEGER
    ) STRICT""",
)
