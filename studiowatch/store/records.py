"""Her records: pieces with their coats and looks, warnings, prompts, and facts about the log."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Sequence
from dataclasses import astuple, fields
from typing import Any

from studiowatch.room.corrections import Imported, Kept, Sighting
from studiowatch.store.calibrations import (
    all_calibrations,
    all_checks,
    all_sightings,
    put_calibration,
    put_check,
    put_sighting,
)
from studiowatch.store.database import Database
from studiowatch.store.imported import all_imported
from studiowatch.store.intentions import all_intentions, drop_intention, put_intention
from studiowatch.store.piece_rows import piece_of, read_pieces, save_piece
from studiowatch.store.plan_records import all_recipes, kept_hours, put_hours, put_recipe
from studiowatch.store.preparations import all_tellings, open_preparations, put_preparation, put_telling
from studiowatch.store.shapes import LearntRecord, PromptRecord, TellingRecord, WarningRecord
from studiowatch.store.upserting import upsert
from studiowatch.studio.meant import Meant
from studiowatch.studio.pieces import Piece
from studiowatch.studio.preparation import Preparation
from studiowatch.studio.recipes import Recipe
from studiowatch.studio.working_hours import WorkingHours

_WARNING_COLUMNS = tuple(field.name for field in fields(WarningRecord))
_PROMPT_COLUMNS = tuple(field.name for field in fields(PromptRecord))
_LEARNT_COLUMNS = tuple(field.name for field in fields(LearntRecord))
_PUT_WARNING = upsert("warning", _WARNING_COLUMNS)
_PUT_PROMPT = upsert("prompt", _PROMPT_COLUMNS)
_PUT_LEARNT = upsert("learnt", _LEARNT_COLUMNS)

# S608: every name in these comes from our own dataclasses
_WARNINGS = (
    f"SELECT {', '.join(_WARNING_COLUMNS)} FROM warning WHERE state <> 'cleared' "  # noqa: S608
    "OR rowid IN (SELECT rowid FROM warning ORDER BY raised_ms DESC, rowid DESC LIMIT ?) "
    "ORDER BY raised_ms DESC, rowid DESC"
)
_OPEN_PROMPTS = f"SELECT {', '.join(_PROMPT_COLUMNS)} FROM prompt WHERE done_ms IS NULL ORDER BY due_ms, rowid"  # noqa: S608
_LEARNT = f"SELECT {', '.join(_LEARNT_COLUMNS)} FROM learnt ORDER BY laid_ms, rowid"  # noqa: S608

_EARLIER = "SELECT time_ms, earlier FROM correction WHERE piece_key = ? ORDER BY id"


class RecordsStore:
    """Writes and reads her records. Every write is one transaction and is on disk on return.

    Parameters
    ----------
    database : Database
        Open for writing; every call comes from the one thread that owns it.
    utc_ms : callable
        The clock: stamps corrections and changes of state, UTC ms.
    """

    def __init__(self, database: Database, utc_ms: Callable[[], int]) -> None:
        self._database = database
        self._utc_ms = utc_ms

    def pieces(self) -> Sequence[Piece]:
        """Return all pieces with their coats and looks, archived ones too, by place."""
        with self._database.view() as connection:
            return read_pieces(connection)

    def save_piece(self, piece: Piece) -> None:
        """Insert or replace one piece with all its coats and looks; the earlier form is kept as a correction."""
        self.save_pieces((piece,))

    def save_pieces(self, pieces: Iterable[Piece]) -> None:
        """Insert or replace pieces that change together, as `save_piece` does: all of them or none."""
        with self._database.transaction() as connection:
            for piece in pieces:
                save_piece(connection, piece, self._utc_ms)

    def corrections(self, piece_key: str) -> Sequence[tuple[int, Piece]]:
        """Return the earlier forms of a piece, each with the UTC ms at which it was changed, oldest first."""
        return [
            (time_ms, piece_of(json.loads(earlier))) for time_ms, earlier in self._database.rows(_EARLIER, (piece_key,))
        ]

    def warnings(self, limit: int) -> Sequence[WarningRecord]:
        """Return the latest warnings, newest first; open ones are always among them."""
        return [_warning(row) for row in self._database.rows(_WARNINGS, (limit,))]

    def save_warning(self, warning: WarningRecord) -> None:
        """Insert or replace one warning and log its change of state."""
        values = [*astuple(warning)]
        values[_WARNING_COLUMNS.index("pieces")] = json.dumps(warning.pieces)
        with self._database.transaction() as connection:
            before = connection.execute("SELECT state FROM warning WHERE key = ?", (warning.key,)).fetchone()
            connection.execute(_PUT_WARNING, values)
            if before != (warning.state,):
                connection.execute(
                    "INSERT INTO warning_state (warning_key, time_ms, state) VALUES (?, ?, ?)",
                    (warning.key, self._utc_ms(), warning.state),
                )

    def prompts(self) -> Sequence[PromptRecord]:
        """Return the prompts that are not done, soonest first."""
        rows = self._database.rows(_OPEN_PROMPTS)
        return [PromptRecord(**dict(zip(_PROMPT_COLUMNS, row, strict=True))) for row in rows]

    def done_prompts(self) -> frozenset[str]:
        """Return the keys of the prompts that were ticked."""
        return frozenset(key for (key,) in self._database.rows("SELECT key FROM prompt WHERE done_ms IS NOT NULL"))

    def save_prompt(self, prompt: PromptRecord) -> None:
        """Insert or replace one prompt of a coat that was saved before."""
        with self._database.transaction() as connection:
            connection.execute(_PUT_PROMPT, astuple(prompt))

    def drop_prompt(self, key: str) -> None:
        """Forget a prompt that applies no longer; one that was ticked stays."""
        with self._database.transaction() as connection:
            connection.execute("DELETE FROM prompt WHERE key = ? AND done_ms IS NULL", (key,))

    def tellings(self) -> Sequence[TellingRecord]:
        """Return what was done with the prompts that are not ticked."""
        return all_tellings(self._database)

    def save_telling(self, telling: TellingRecord) -> None:
        """Insert or replace what was done with one prompt; nothing is kept of a prompt that is gone."""
        put_telling(self._database, telling)

    def preparations(self) -> Sequence[Preparation]:
        """Return the preparations that nobody ended, in the order in which they were begun."""
        return open_preparations(self._database)

    def save_preparation(self, preparation: Preparation) -> None:
        """Insert or replace one preparation."""
        put_preparation(self._database, preparation)

    def learnt(self) -> Sequence[LearntRecord]:
        """Return what the tests on each coat taught, in the order in which the coats were laid."""
        return [_learnt(row) for row in self._database.rows(_LEARNT)]

    def save_learnt(self, learnt: LearntRecord) -> None:
        """Insert or replace what the tests on one coat taught; the coat was saved before."""
        values = [getattr(learnt, name) for name in _LEARNT_COLUMNS]
        values[_LEARNT_COLUMNS.index("rows")] = json.dumps([dict(row) for row in learnt.rows], allow_nan=False)
        with self._database.transaction() as connection:
            connection.execute(_PUT_LEARNT, values)

    def calibrations(self) -> Sequence[Kept]:
        """Return all calibrations, withdrawn ones too, in the order in which they were made."""
        return all_calibrations(self._database)

    def save_calibration(self, kept: Kept) -> None:
        """Insert a calibration, or the time at which one was withdrawn; what was measured never changes."""
        put_calibration(self._database, kept)

    def sightings(self) -> Sequence[Sighting]:
        """Return which sensor was on from when."""
        return all_sightings(self._database)

    def imported(self) -> Sequence[Imported]:
        """Return which stretches of the log came from outside."""
        return all_imported(self._database)

    def save_sighting(self, sighting: Sighting) -> None:
        """Add a sighting of a sensor."""
        put_sighting(self._database, sighting)

    def checks(self) -> Sequence[Sighting]:
        """Return when which sensor was checked and found right."""
        return all_checks(self._database)

    def save_check(self, check: Sighting) -> None:
        """Add a check of a sensor."""
        put_check(self._database, check)

    def recipes(self) -> Sequence[Recipe]:
        """Return the recipes that she saved."""
        return all_recipes(self._database)

    def save_recipe(self, name: str, sheets: Sequence[str]) -> None:
        """Insert or replace a recipe of hers; no sheets drop it."""
        put_recipe(self._database, name, sheets)

    def working_hours(self) -> WorkingHours:
        """Return her working hours."""
        return kept_hours(self._database)

    def save_working_hours(self, hours: WorkingHours) -> None:
        """Keep her working hours."""
        put_hours(self._database, hours)

    def intentions(self) -> Sequence[Meant]:
        """Return what she means to do with the room, over or not, in the order in which it was meant."""
        return all_intentions(self._database)

    def save_intention(self, meant: Meant) -> None:
        """Insert or replace something that she means to do with the room."""
        put_intention(self._database, meant)

    def drop_intention(self, key: str) -> None:
        """Forget something that she meant to do with the room."""
        drop_intention(self._database, key)

    def note(self, time_ms: int, kind: str, text: str) -> None:
        """Keep a fact about the log itself: a clock step, a resume, a reset, an overflow."""
        with self._database.transaction() as connection:
            connection.execute("INSERT INTO note (time_ms, kind, text) VALUES (?, ?, ?)", (time_ms, kind, text))

    def noted(self, kind: str) -> Sequence[tuple[int, str]]:
        """Return the facts of one kind, UTC ms and text, in the order in which they were kept."""
        with self._database.view() as connection:
            return connection.execute("SELECT time_ms, text FROM note WHERE kind = ? ORDER BY id", (kind,)).fetchall()


def _warning(row: tuple[Any, ...]) -> WarningRecord:
    values = dict(zip(_WARNING_COLUMNS, row, strict=True))
    values["pieces"] = tuple(json.loads(values["pieces"]))
    return WarningRecord(**values)


def _learnt(row: tuple[Any, ...]) -> LearntRecord:
    values = dict(zip(_LEARNT_COLUMNS, row, strict=True))
    values["rows"] = tuple(json.loads(values["rows"]))
    return LearntRecord(**values)
