"""How readings from outside are put on disk: the store's side, as whoever imports sees it."""

from __future__ import annotations

from typing import Protocol

from studiowatch.room.log_columns import LogColumns
from studiowatch.store.taking_in import Verdicts


class TakeReadings(Protocol):
    """Takes readings from outside into the log."""

    def __call__(self, readings: LogColumns, *, seal_before_ms: int) -> Verdicts:
        """Commit readings of one hour, rising in time; none replaces one that is there. Returns a verdict for each."""
        ...
