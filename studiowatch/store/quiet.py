"""Opens a file that is only looked at: no log, index or lock is made beside it."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable
from contextlib import closing
from pathlib import Path
from typing import TypeVar

from studiowatch.store.database import Database
from studiowatch.store.header import read_header, refuse_foreign
from studiowatch.store.migrations import STEPS
from studiowatch.store.trouble import StoreRefused, in_plain_words

T = TypeVar("T")


def open_quietly(path: Path) -> Database:
    """Open the records at `path` for reading.

    A reader of a write-ahead file makes its log anew, and leaves it: so a file without one is opened as one that nobody
    changes. A writer that comes later writes to a log of its own, which is not seen.

    Raises
    ------
    StoreRefused
        If there is no file, or it is not ours.
    """
    header = read_header(path)
    if header is None:
        raise StoreRefused(f"{path} is not there or is empty; there is nothing to read.")
    refuse_foreign(path, header, len(STEPS))
    return Database(connect_quietly(path), path)


def connect_quietly(path: Path) -> sqlite3.Connection:
    """Return a connection as `open_quietly` makes it, whatever the file is."""
    unchanging = "" if log_of(path).exists() else "&immutable=1"
    with in_plain_words(path, opening=True):
        return sqlite3.connect(
            f"{path.resolve().as_uri()}?mode=ro{unchanging}", uri=True, isolation_level=None, check_same_thread=False
        )


def whole(path: Path, look: Callable[[sqlite3.Connection], T]) -> T:
    """Return what `look` sees of one state of the file: it looks again if a writer came meanwhile."""
    had_log = log_of(path).exists()
    with closing(connect_quietly(path)) as connection:
        seen = look(connection)
    if had_log or not log_of(path).exists():
        return seen
    with closing(connect_quietly(path)) as connection:
        return look(connection)


def log_of(path: Path) -> Path:
    """Return where the write-ahead log of the file at `path` lies while it is in use."""
    return path.with_name(f"{path.name}-wal")
