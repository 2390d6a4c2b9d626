"""What can go wrong with the file, in one sentence each.

Exceptions
----------
StoreTrouble
    The file could not be read or written just now; nothing was half done, and it may be tried again.
StoreFull(StoreTrouble)
    The disk is full.
StoreRefused(StoreTrouble)
    The file is not ours to open; it was not touched.

A mistake in our own SQL is none of these: it stays a `sqlite3.Error` and is loud.
"""

from __future__ import annotations

import sqlite3
import zlib
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from studiowatch.speech.words import mark, say


class StoreTrouble(Exception):  # noqa: N818 - the base of three, named for the reader
    """The file could not be read or written; the message is one sentence for her."""


class StoreFull(StoreTrouble):
    """The disk is full: what was being written is not on it."""


class StoreRefused(StoreTrouble):
    """The file cannot be opened as the records; it was left as it was."""


_WORDS = {
    sqlite3.SQLITE_BUSY: mark("{path} is in use by another program; close that program and try again."),
    sqlite3.SQLITE_LOCKED: mark("{path} is in use by another program; close that program and try again."),
    sqlite3.SQLITE_READONLY: mark("{path} may only be read, not written; allow writing to it and to its folder."),
    sqlite3.SQLITE_PERM: mark("{path} may not be opened; allow reading and writing to it and to its folder."),
    sqlite3.SQLITE_CANTOPEN: mark("{path} cannot be opened; check that its folder is there and may be written to."),
    sqlite3.SQLITE_NOTADB: mark("{path} is not a database; choose another file, or restore a backup of this one."),
    sqlite3.SQLITE_CORRUPT: mark("{path} is damaged ({reason}); keep it as it is and restore a backup beside it."),
    sqlite3.SQLITE_IOERR: mark(
        "{path} could not be read or written ({reason}); check the disk, nothing was half written."
    ),
    sqlite3.SQLITE_FULL: mark("The disk of {path} is full; make room on it, nothing was half written."),
}


@contextmanager
def in_plain_words(path: Path, *, opening: bool = False) -> Iterator[None]:
    """Turn faults of the file at `path` into `StoreTrouble`, or into `StoreRefused` while it is being opened.

    Raises
    ------
    StoreFull, StoreTrouble, StoreRefused
        With one sentence; the cause is the original error.
    """
    try:
        yield
    except zlib.error as error:
        sentence = say(
            "{path} is damaged in its sealed readings ({fault}); `studiowatch check` tells which hours.",
            path=path,
            fault=error,
        )
        raise StoreTrouble(sentence) from error
    except sqlite3.DatabaseError as error:
        code = getattr(error, "sqlite_errorcode", sqlite3.SQLITE_ERROR) & 0xFF  # the low byte is the primary code
        if code not in _WORDS:
            raise
        sentence = say(_WORDS[code], path=path, reason=error)
        if code == sqlite3.SQLITE_FULL:
            raise StoreFull(sentence) from error
        raise (StoreRefused if opening else StoreTrouble)(sentence) from error
