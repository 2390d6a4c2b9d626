"""Copies of the file, whole and checked, also while it is being written."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

from studiowatch.speech.words import say
from studiowatch.store.header import read_header
from studiowatch.store.private import make_private
from studiowatch.store.quiet import whole
from studiowatch.store.trouble import StoreRefused, StoreTrouble, in_plain_words


def backup(path_from: Path, path_to: Path) -> None:
    """Copy the database at `path_from` to the new file `path_to` and check the copy.

    The copy is one file that needs no log beside it. The writer may go on writing meanwhile.

    Raises
    ------
    StoreRefused
        If there is no database at `path_from`, or something at `path_to` already.
    StoreTrouble
        If the copy could not be written or did not pass its check; `path_to` is then not made.
    """
    if read_header(path_from) is None:
        raise StoreRefused(say("{path} is not there or is empty; there is nothing to back up.", path=path_from))
    if path_to.exists():
        raise StoreRefused(say("{path} is there already; choose a new name for the backup.", path=path_to))
    with in_plain_words(path_from):
        whole(path_from, lambda source: write_copy(source, path_to))


def write_copy(source: sqlite3.Connection, path_to: Path) -> None:
    """Write what `source` holds to `path_to` by way of a file beside it, so that no half copy bears its name."""
    unfinished = path_to.with_name(path_to.name + ".unfinished")
    unfinished.unlink(missing_ok=True)
    make_private(unfinished)
    try:
        with in_plain_words(path_to), closing(sqlite3.connect(unfinished)) as copy:
            source.backup(copy)
            copy.execute("PRAGMA journal_mode=DELETE")
            _check(copy, path_to)
        unfinished.replace(path_to)
    except BaseException:
        unfinished.unlink(missing_ok=True)
        raise


def _check(copy: sqlite3.Connection, path_to: Path) -> None:
    faults = [row[0] for row in copy.execute("PRAGMA integrity_check")]
    if faults != ["ok"]:
        raise StoreTrouble(
            say(
                "The copy {path} did not pass its check ({fault}); the records may be damaged.",
                path=path_to,
                fault=faults[0],
            )
        )
