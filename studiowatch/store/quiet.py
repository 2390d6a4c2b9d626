"""Opens a file that is only looked at: no log, index or lock is made beside it."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable
from contextlib import closing
from pathlib import Path
from typing import TypeVar

from studiowatch.store.trouble import StoreTrouble, in_plain_words

T = TypeVar("T")


def connect_quietly(path: Path) -> sqlite3.Connection:
    """Return a connection that can only read, and makes nothing beside the file.

    A reader of a write-ahead file makes its log anew, and leaves it: so a file without one is opened as one that nobody
    changes. A writer that comes later writes to a log of its own, which is not seen.
    """
    unchanging = "" if log_of(path).exists() else "&immutable=1"
    with in_plain_words(path, opening=True):
        return sqlite3.connect(
            f"{path.resolve().as_uri()}?mode=ro{unchanging}", uri=True, isolation_level=None, check_same_thread=False
        )


def whole(path: Path, look: Callable[[sqlite3.Connection], T]) -> T:
    """Return what `look` sees of one state of the file: it looks again as often as a writer came meanwhile."""
    while True:
        before = as_seen(path)
        try:
            with closing(connect_quietly(path)) as connection:
                seen = look(connection)
        except (StoreTrouble, sqlite3.DatabaseError):
            if not has_changed(path, before):
                raise
        else:
            if not has_changed(path, before):
                return seen


def as_seen(path: Path) -> tuple[int, int, int] | None:
    """Return what tells this state of a file that nobody has open from any other.

    None if somebody has it open, or if there is none: what is read beside a writer is of one state anyway.
    """
    if log_of(path).exists():
        return None
    try:
        found = path.stat()
    except OSError:
        return None
    return found.st_ino, found.st_size, found.st_mtime_ns


def has_changed(path: Path, before: tuple[int, int, int] | None) -> bool:
    """Return whether a writer came since `as_seen` gave `before`, also one that is gone again by now."""
    return before is not None and as_seen(path) != before


def log_of(path: Path) -> Path:
    """Return where the write-ahead log of the file at `path` lies while it is in use."""
    return path.with_name(f"{path.name}-wal")
