"""A room log as what a board would have told: the same events as live, with the log's own times."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from studiowatch.board.events import LineCounts, ReadingArrived
from studiowatch.room.readings import Reading


def replayed(readings: Iterable[Reading]) -> Iterator[ReadingArrived]:
    """Yield the event of each reading, every line of the log counted as a good one."""
    for count, reading in enumerate(readings, start=1):
        yield ReadingArrived(reading=reading, counts=LineCounts(good=count))
