"""The records as a review reads them: from any thread of its own, beside the writer."""

from __future__ import annotations

from collections.abc import Sequence

from studiowatch.room.corrections import Corrections, corrections
from studiowatch.room.readings import Reading
from studiowatch.store.calibrations import all_calibrations, all_sightings
from studiowatch.store.database import Database, tables_of
from studiowatch.store.imported import all_imported
from studiowatch.store.minutes import minute_means
from studiowatch.store.piece_rows import read_pieces
from studiowatch.studio.pieces import Piece


class ReviewRecords:
    """Reads pieces, readings and calibrations; one of an earlier version may lack tables.

    Parameters
    ----------
    database : Database
        Open for reading; it is the caller's to close.
    """

    def __init__(self, database: Database) -> None:
        self._database = database
        with database.view() as connection:
            self._tables = frozenset(tables_of(connection))

    def pieces(self) -> Sequence[Piece]:
        """Return all pieces, those that left the rack too, by place."""
        with self._database.view() as connection:
            return read_pieces(connection)

    def minute_means(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        """Return one reading per minute that has any with start <= time < end."""
        with self._database.view() as connection:
            return minute_means(connection, start_ms, end_ms)

    def corrections(self) -> Corrections:
        """Return which calibration holds when."""
        if not {"calibration", "sensor_sighting"} <= self._tables:
            return Corrections()
        imported = all_imported(self._database) if "imported" in self._tables else ()
        return corrections(all_calibrations(self._database), all_sightings(self._database), imported)

    def close(self) -> None:
        """Let go of the file."""
        self._database.close()
