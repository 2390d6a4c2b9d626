"""The step of the migrations that brings the shape of a piece, its photo and her notes on it."""

from __future__ import annotations

PIECE_STEP = (
    "ALTER TABLE piece ADD COLUMN shape TEXT NOT NULL DEFAULT 'rectangle'",
    "ALTER TABLE piece ADD COLUMN panels INTEGER NOT NULL DEFAULT 1",
    "ALTER TABLE piece ADD COLUMN photo TEXT NOT NULL DEFAULT ''",
    "ALTER TABLE piece ADD COLUMN notes TEXT NOT NULL DEFAULT ''",
)
