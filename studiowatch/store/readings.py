"""The readings as the keeper writes and re-reads them: recent ones as rows, sealed hours as packed columns."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import islice

from studiowatch.room.log_columns import LogColumns
from studiowatch.room.readings import Reading
from studiowatch.store.database import Database
from studiowatch.store.minutes import minute_means
from studiowatch.store.rows import INSERT_READING, READINGS_BETWEEN, reading_of, row_of
from studiowatch.store.sealing import HOUR_MS, seal_hour, sealed_rows
from studiowatch.store.taking_in import Verdicts, take_in


class ReadingsStore:
    """Writes readings, and reads them back. What is stored is what the board sent; corrections are applied on reading.

    Parameters
    ----------
    database : Database
        Open for writing; every call comes from the one thread that owns it.
    """

    def __init__(self, database: Database) -> None:
        self._database = database

    def append(self, readings: Sequence[Reading]) -> None:
        """Commit `readings` in one transaction; on return they are on disk.

        Raises
        ------
        ValueError
            If a channel holds NaN or an infinity. Nothing was written.
        StoreFull, StoreTrouble
            If nothing was written; the same readings may be given again.
        """
        rows = [row_of(reading) for reading in readings]
        with self._database.transaction() as connection:
            connection.executemany(INSERT_READING, rows)

    def take_in(self, readings: LogColumns, *, seal_before_ms: int) -> Verdicts:
        """Commit `readings` from outside, of one hour and rising in time; return what became of each.

        None replaces one that is there. An hour that ended by `seal_before_ms` is packed at once.

        Raises
        ------
        StoreFull, StoreTrouble
            If nothing was written; the same readings may be given again.
        """
        hour_ms = int(readings.time_ms[0]) // HOUR_MS * HOUR_MS
        with self._database.transaction() as connection:
            return take_in(connection, hour_ms, readings, seal=hour_ms + HOUR_MS <= seal_before_ms)

    def between(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        """Return the readings with start <= time < end, in the order of time, then of arrival."""
        with self._database.view() as connection:
            rows = list(sealed_rows(connection, start_ms, end_ms))
            rows += connection.execute(READINGS_BETWEEN, (start_ms, end_ms)).fetchall()
        rows.sort(key=lambda row: (row[1], row[0]))
        return [reading_of(row) for row in rows]

    def minute_means(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        """Return one reading per minute that has any with start <= time < end, at the minute's middle.

        Each channel is the mean of what was read of it in that minute, or None; of air speed it is the steady one that
        carries off as much, see `physics.air.steady_speed`. `checked` is True if every line was.
        """
        with self._database.view() as connection:
            return minute_means(connection, start_ms, end_ms)

    def seal(self, before_ms: int, most_hours: int | None = None) -> int:
        """Pack every hour that ended by `before_ms`, each in one transaction; return how many readings were moved.

        With `most_hours` no more of them than that, the oldest first: whoever has something else to do asks again.

        Reading back gives the same before, between and after. An hour may be sealed again if readings reach it later.

        Raises
        ------
        StoreFull, StoreTrouble
            If an hour could not be sealed; it is still there as rows, and the hours before it are sealed.
        """
        moved = 0
        for hour_ms in islice(self._open_hours(before_ms // HOUR_MS * HOUR_MS), most_hours):
            with self._database.transaction() as connection:
                moved += seal_hour(connection, hour_ms)
        return moved

    def _open_hours(self, limit_ms: int) -> Iterator[int]:
        """Yield the hours before `limit_ms` that hold rows, each once it is asked for."""
        oldest = "SELECT min(time_ms) FROM reading WHERE time_ms < ?"
        while (time_ms := self._database.rows(oldest, (limit_ms,))[0][0]) is not None:
            yield time_ms // HOUR_MS * HOUR_MS
