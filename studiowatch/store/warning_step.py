"""The step of the migrations that keeps of a warning whether it was only ahead."""

from __future__ import annotations

WARNING_STEP = (
    # when it is expected; NULL where it was there, as in every warning of before
    "ALTER TABLE warning ADD COLUMN ahead_ms INTEGER",
)
