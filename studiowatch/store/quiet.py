"""Opens a file that is only looked at: no log, index or lock is made beside it."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable
from contextlib import closing
from pathlib import Path
from typing import TypeVar

from studiowatch.store.trouble import in_plain_words

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
