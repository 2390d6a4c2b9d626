"""Opens the one file that holds readings and records, or refuses it in one sentence and leaves it alone."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator, Sequence
from contextlib import closing, contextmanager
from pathlib import Path
from typing import Any

from studiowatch.physics.air import carried
from studiowatch.speech.words import say
from studiowatch.store.header import read_header, refuse_foreign, refuse_unwritable
from studiowatch.store.held_files import FileKey, hold, let_go, which_file
from studiowatch.store.migrations import STEPS, Step, migrate
from studiowatch.store.private import make_private
from studiowatch.store.quiet import as_seen, connect_quietly, has_changed
from studiowatch.store.trouble import StoreRefused, StoreTrouble, in_plain_words

BUSY_TIMEOUT_MS = 5_000  # ms, assumption: longer than any transaction of ours, shorter than her patience
_CACHE_KIB = 512  # of pages that a connection keeps: the system caches the file anyway
_LOG_LIMIT_BYTES = 16 * 2**20  # bytes, assumption: what a long read let the log grow by is given back above this


def _carried(speed_m_s: float | None) -> float | None:
    return None if speed_m_s is None else carried(speed_m_s)


class Database:
    """One connection to the file, for one thread at a time.

    Every fault of the file leaves as `StoreTrouble`, with the open transaction undone.

    `held` is what `hold` gave for it, to be let go of when it is closed.
    """

    def __init__(self, connection: sqlite3.Connection, path: Path, held: FileKey | None = None) -> None:
        self._connection = connection
        self.path = path
        self._file = which_file(path)
        self._held = held
        connection.create_function("carried", 1, _carried, deterministic=True)

    @contextmanager
    def transaction(self) -> Iterator[sqlite3.Connection]:
        """Commit what is done inside as one; on any exception nothing of it was done.

        Raises
        ------
        StoreTrouble
            If the file was deleted, moved away or replaced: what is written to it then would be lost with it.
        """
        there = which_file(self.path)
        if there is None:
            raise StoreTrouble(
                say("{path} is gone: its folder was removed or moved. Put it back, then start again.", path=self.path)
            )
        if there != self._file:
            raise StoreTrouble(
                say("{path} is another file than before: it was replaced meanwhile. Start again.", path=self.path)
            )
        with self._bracket("BEGIN IMMEDIATE") as connection:
            yield connection

    @contextmanager
    def view(self) -> Iterator[sqlite3.Connection]:
        """Give several reads the same view of the file. Keep it short: the log grows while it lasts."""
        with self._bracket("BEGIN DEFERRED") as connection:
            yield connection

    def rows(self, sql: str, parameters: Sequence[Any] = ()) -> list[tuple[Any, ...]]:
        """Return all rows of one query; no cursor is left open."""
        with in_plain_words(self.path):
            return self._connection.execute(sql, parameters).fetchall()

    def close(self) -> None:
        """Let go of the file; the last one to do so folds the log into it."""
        with in_plain_words(self.path):
            self._connection.close()
        held, self._held = self._held, None
        let_go(held)

    @contextmanager
    def _bracket(self, begin: str) -> Iterator[sqlite3.Connection]:
        with in_plain_words(self.path):
            self._connection.execute(begin)
            try:
                yield self._connection
                self._connection.execute("COMMIT")
            finally:
                # a full disk has undone the transaction already, and undoing it twice is an error
                if self._connection.in_transaction:
                    self._connection.execute("ROLLBACK")


def open_database(
    path: Path,
    *,
    read_only: bool = False,
    busy_timeout_ms: int = BUSY_TIMEOUT_MS,
    steps: Sequence[Step] = STEPS,
) -> Database:
    """Open the records at `path`; make them if there is no file and `read_only` is False.

    Every commit is on disk when it returns (write-ahead log, synchronous FULL).

    Parameters
    ----------
    busy_timeout_ms : int
        How long to wait for another program's lock, ms.
    steps : sequence of Step
        The migrations; given only by tests of them.

    Raises
    ------
    StoreRefused
        If the file is newer, locked, read-only, another program's, or not a database. It was not touched.
    StoreTrouble
        If a migration failed; the file is as it was.
    """
    header = read_header(path)
    if header is not None:
        refuse_foreign(path, header, len(steps))
    elif read_only:
        raise StoreRefused(say("{path} is not there or is empty; there are no readings to show yet.", path=path))
    if not read_only:
        refuse_unwritable(path)
    if header is None:
        make_private(path)
    held = hold(path)
    try:
        connection = _connected(path, steps, read_only=read_only, busy_timeout_ms=busy_timeout_ms)
    except BaseException:
        let_go(held)
        raise
    return Database(connection, path, held)


def _connected(path: Path, steps: Sequence[Step], *, read_only: bool, busy_timeout_ms: int) -> sqlite3.Connection:
    mode = "ro" if read_only else "rwc"
    with in_plain_words(path, opening=True):
        connection = sqlite3.connect(
            f"{path.resolve().as_uri()}?mode={mode}",
            uri=True,
            timeout=busy_timeout_ms / 1000,
            isolation_level=None,
            check_same_thread=False,
        )
        try:
            connection.execute(f"PRAGMA cache_size = {-_CACHE_KIB}")
            if not read_only:
                _prepare(connection, path, steps)
        except BaseException:
            connection.close()
            raise
    return connection


@contextmanager
def looking(path: Path) -> Iterator[Database]:
    """Give the records at `path` for reading, and leave nothing beside them; see `connect_quietly`.

    Raises
    ------
    StoreRefused
        If there is no file, or it is not ours.
    StoreTrouble
        At the end, if a watch began meanwhile: what was read may be of two states of the file.
    """
    header = read_header(path)
    if header is None:
        raise StoreRefused(say("{path} is not there or is empty; there is nothing to read.", path=path))
    refuse_foreign(path, header, len(STEPS))
    before = as_seen(path)
    with closing(connect_quietly(path)) as connection:
        yield Database(connection, path)
    if has_changed(path, before):
        raise StoreTrouble(
            say("A watch began to write to {path} meanwhile; do it once more, that works beside a watch.", path=path)
        )


def _prepare(connection: sqlite3.Connection, path: Path, steps: Sequence[Step]) -> None:
    connection.execute("PRAGMA synchronous = FULL")
    connection.execute("PRAGMA foreign_keys = ON")
    connection.execute(f"PRAGMA journal_size_limit = {_LOG_LIMIT_BYTES}")
    migrated = migrate(connection, path, steps)
    missing = _tables(steps) - tables_of(connection)
    if missing:
        raise StoreRefused(lacking(path, missing))
    (journal,) = connection.execute("PRAGMA journal_mode = WAL").fetchone()
    if journal != "wal":
        raise StoreRefused(
            say("{path} lies on a disk that cannot keep a write-ahead log; choose a folder on a local disk.", path=path)
        )
    if migrated:
        # so that the file alone, without its log, has the tables and says its version
        connection.execute("PRAGMA wal_checkpoint(TRUNCATE)")


def lacking(path: Path, missing: set[str]) -> str:
    """Return what to say of a file without tables that it must have."""
    return say(
        "{path} lacks {tables}: if it is a copy, its log {name}-wal was left behind, so copy both, "
        "or take a backup with `studiowatch backup`; otherwise it is damaged: keep it, and restore a "
        "backup beside it.",
        path=path,
        tables=", ".join(sorted(missing)),
        name=path.name,
    )


def tables_of_version(version: int) -> set[str]:
    """Return the tables that a file of this version has."""
    return _tables(STEPS[:version])


def _tables(steps: Sequence[Step]) -> set[str]:
    with closing(sqlite3.connect(":memory:", isolation_level=None)) as empty:
        migrate(empty, Path(":memory:"), steps)
        return tables_of(empty)


def tables_of(connection: sqlite3.Connection) -> set[str]:
    """Return the tables that are there."""
    return {name for (name,) in connection.execute("SELECT name FROM sqlite_master WHERE type = 'table'")}
