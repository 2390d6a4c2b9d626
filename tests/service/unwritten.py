"""A log that is only read."""

from __future__ import annotations

from collections.abc import Sequence

from studiowatch.room.readings import Reading


class UnwrittenLog:
    """The writing side of a log to which nothing is written."""

    def append(self, readings: Sequence[Reading]) -> None:
        raise AssertionError(f"nothing is appended here, not {len(readings)} readings")

    def seal(self, before_ms: int, most_hours: int | None = None) -> int:
        del most_hours
        raise AssertionError(f"nothing is sealed here, not up to {before_ms}")
