"""Steps from an empty file to the newest form. Steps are only ever appended, never edited."""

from __future__ import annotations

import sqlite3
from collections.abc import Sequence
from contextlib import closing
from pathlib import Path

from studiowatch.speech.words import say
from studiowatch.store.backup import write_copy
from studiowatch.store.calibration_step import CALIBRATION_STEP
from studiowatch.store.header import APPLICATION_ID, Header, refuse_foreign
from studiowatch.store.import_step import IMPORT_STEP
from studiowatch.store.intention_step import INTENTION_STEP
from studiowatch.store.piece_step import PIECE_STEP
from studiowatch.store.plan_step import PLAN_STEP
from studiowatch.store.preparation_step import PREPARATION_STEP
from studiowatch.store.trouble import StoreTrouble
from studiowatch.store.warning_step import WARNING_STEP

Step = tuple[str, ...]

_STEP_1: Step = (
    # id is the order of arrival: a clock that is set back repeats times, never ids
    """CREATE TABLE reading (
        id INTEGER PRIMARY KEY AUTOINCREMENT,
        time_ms INTEGER NOT NULL,
        temperature_C REAL,
        humidity_pct REAL,
        air_speed_m_s REAL,
        air_signal_mV REAL,
        surface_C REAL,
        pressure_Pa REAL,
        particles_per_m3_5um REAL,
        checked INTEGER NOT NULL,
        faults TEXT
    ) STRICT""",
    "CREATE INDEX reading_by_time ON reading (time_ms)",
    # readings of one hour by their times; a clock set back may give an hour several chunks
    """CREATE TABLE chunk (
        id INTEGER PRIMARY KEY,
        start_ms INTEGER NOT NULL,
        last_ms INTEGER NOT NULL,
        count INTEGER NOT NULL
    ) STRICT""",
    "CREATE INDEX chunk_by_time ON chunk (start_ms)",
    """CREATE TABLE chunk_column (
        chunk_id INTEGER NOT NULL REFERENCES chunk (id) ON DELETE CASCADE,
        name TEXT NOT NULL,
        data BLOB NOT NULL,
        UNIQUE (chunk_id, name)
    ) STRICT""",
    """CREATE TABLE pyramid (
        channel TEXT NOT NULL,
        width_ms INTEGER NOT NULL,
        block INTEGER NOT NULL,
        data BLOB NOT NULL,
        UNIQUE (channel, width_ms, block)
    ) STRICT""",
    """CREATE TABLE piece (
        key TEXT PRIMARY KEY NOT NULL,
        title TEXT NOT NULL,
        width_cm REAL NOT NULL,
        height_cm REAL NOT NULL,
        due TEXT,
        support TEXT NOT NULL,
        orientation TEXT NOT NULL,
        place INTEGER NOT NULL,
        archived INTEGER NOT NULL
    ) STRICT""",
    """CREATE TABLE coat (
        key TEXT PRIMARY KEY NOT NULL,
        piece_key TEXT NOT NULL REFERENCES piece (key) ON DELETE CASCADE,
        layer INTEGER NOT NULL,
        sheet TEXT NOT NULL,
        laid_ms INTEGER,
        volume_mL REAL,
        grams REAL,
        wet_um REAL,
        thinned_pct REAL NOT NULL,
        covered_from_ms INTEGER,
        outcome TEXT,
        seen_ms INTEGER
    ) STRICT""",
    "CREATE INDEX coat_by_piece ON coat (piece_key, layer)",
    """CREATE TABLE look (
        key TEXT PRIMARY KEY NOT NULL,
        coat_key TEXT NOT NULL REFERENCES coat (key) ON DELETE CASCADE,
        position INTEGER NOT NULL,
        time_ms INTEGER NOT NULL,
        finding TEXT NOT NULL
    ) STRICT""",
    "CREATE INDEX look_by_coat ON look (coat_key, position)",
    # no reference to the piece: what was corrected outlives it
    """CREATE TABLE correction (
        id INTEGER PRIMARY KEY,
        time_ms INTEGER NOT NULL,
        piece_key TEXT NOT NULL,
        earlier TEXT NOT NULL
    ) STRICT""",
    """CREATE TABLE warning (
        key TEXT PRIMARY KEY NOT NULL,
        kind TEXT NOT NULL,
        level INTEGER NOT NULL,
        state TEXT NOT NULL,
        headline TEXT NOT NULL,
        detail TEXT NOT NULL,
        advice TEXT NOT NULL,
        began_ms INTEGER NOT NULL,
        raised_ms INTEGER NOT NULL,
        cleared_ms INTEGER,
        pieces TEXT NOT NULL,
        remind_ms INTEGER
    ) STRICT""",
    "CREATE INDEX warning_by_time ON warning (raised_ms)",
    "CREATE INDEX warning_open ON warning (raised_ms) WHERE state <> 'cleared'",
    """CREATE TABLE warning_state (
        id INTEGER PRIMARY KEY,
        warning_key TEXT NOT NULL REFERENCES warning (key),
        time_ms INTEGER NOT NULL,
        state TEXT NOT NULL
    ) STRICT""",
    "CREATE INDEX warning_state_by_warning ON warning_state (warning_key)",
    """CREATE TABLE prompt (
        key TEXT PRIMARY KEY NOT NULL,
        coat_key TEXT NOT NULL REFERENCES coat (key) ON DELETE CASCADE,
        due_ms INTEGER NOT NULL,
        text TEXT NOT NULL,
        done_ms INTEGER
    ) STRICT""",
    "CREATE INDEX prompt_open ON prompt (due_ms) WHERE done_ms IS NULL",
    "CREATE INDEX prompt_by_coat ON prompt (coat_key)",
    """CREATE TABLE note (
        id INTEGER PRIMARY KEY,
        time_ms INTEGER NOT NULL,
        kind TEXT NOT NULL,
        text TEXT NOT NULL
    ) STRICT""",
)

_STEP_2: Step = (
    # what the touch tests and looks on one coat say of its room and its product
    """CREATE TABLE learnt (
        coat_key TEXT PRIMARY KEY NOT NULL REFERENCES coat (key) ON DELETE CASCADE,
        sheet TEXT NOT NULL,
        sheet_hash TEXT NOT NULL,
        laid_ms INTEGER NOT NULL,
        tests INTEGER NOT NULL,
        rows TEXT NOT NULL
    ) STRICT""",
)

STEPS: tuple[Step, ...] = (
    _STEP_1,
    _STEP_2,
    CALIBRATION_STEP,
    PIECE_STEP,
    PREPARATION_STEP,
    PLAN_STEP,
    IMPORT_STEP,
    INTENTION_STEP,
    WARNING_STEP,
)


def migrate(connection: sqlite3.Connection, path: Path, steps: Sequence[Step] = STEPS) -> bool:
    """Bring the file at `path` to version ``len(steps)`` in one transaction; return whether anything was done.

    A file that is not new is first copied beside itself, as ``name.before-version-N``.

    Raises
    ------
    StoreRefused
        If the file is another program's or newer.
    StoreTrouble
        If a step failed; the file is then as it was.
    """
    connection.execute("BEGIN IMMEDIATE")
    try:
        version = _version(connection, path, len(steps))
        if version < len(steps):
            if version > 0:
                _copy_first(path, len(steps))
            _take(connection, path, steps, version)
            connection.execute("COMMIT")
    finally:
        if connection.in_transaction:
            connection.execute("ROLLBACK")
    return version < len(steps)


def _version(connection: sqlite3.Connection, path: Path, newest: int) -> int:
    """Return the version as the log beside the file has it, which may be later than the file's own header."""
    if not connection.execute("SELECT count(*) FROM sqlite_schema").fetchone()[0]:
        return 0
    (version,) = connection.execute("PRAGMA user_version").fetchone()
    (application_id,) = connection.execute("PRAGMA application_id").fetchone()
    refuse_foreign(path, Header(user_version=version, application_id=application_id), newest)
    return int(version)


def _copy_first(path: Path, newest: int) -> None:
    """Copy through a connection of its own: readers see the last commit while the write lock is held."""
    with closing(sqlite3.connect(f"{path.resolve().as_uri()}?mode=ro", uri=True)) as reader:
        write_copy(reader, path.with_name(f"{path.name}.before-version-{newest}"))


def _take(connection: sqlite3.Connection, path: Path, steps: Sequence[Step], version: int) -> None:
    for number, step in enumerate(steps[version:], start=version + 1):
        for statement in step:
            try:
                connection.execute(statement)
            except (sqlite3.IntegrityError, sqlite3.OperationalError) as error:
                if getattr(error, "sqlite_errorcode", None) == sqlite3.SQLITE_FULL:
                    raise
                raise StoreTrouble(
                    say(
                        "{path} could not be brought to version {number} ({fault}); it was left as it was, at "
                        "version {version}: go on with the earlier studiowatch and report this.",
                        path=path,
                        number=number,
                        fault=error,
                        version=version,
                    ),
                ) from error
    connection.execute(f"PRAGMA application_id = {APPLICATION_ID}")
    connection.execute(f"PRAGMA user_version = {len(steps)}")
