"""Is the file whole: its pages, its tables, its sealed hours and their overview."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from sqlite3 import Connection, DatabaseError

from studiowatch.speech.words import mark, say
from studiowatch.store.chunk_check import sealed_hours
from studiowatch.store.database import Database, lacking, tables_of, tables_of_version
from studiowatch.store.header import read_header, refuse_foreign
from studiowatch.store.migrations import STEPS
from studiowatch.store.pyramid import pyramid_faults, rebuild_pyramid
from studiowatch.store.quiet import whole
from studiowatch.store.trouble import StoreRefused, in_plain_words

_LAST = "SELECT max(last) FROM (SELECT max(time_ms) AS last FROM reading UNION ALL SELECT max(last_ms) FROM chunk)"
MOST_FAULTS = 20  # of the pages, and of the hours, that are told; the rest are counted
REBUILD = mark("`studiowatch check --rebuild` makes it anew from them.")
SALVAGE = mark("Keep it as it is; `studiowatch check --salvage NEWFILE` saves what can still be read into a new file.")


@dataclass(frozen=True, slots=True, kw_only=True)
class Examination:
    """What was found: a sentence for each fault, how many sealed hours there are, and the time of the last reading."""

    faults: tuple[str, ...]
    hours: int = 0
    last_ms: int | None = None


def examine(path: Path) -> Examination:
    """Look through the whole file at `path` and leave it, and its folder, as they were.

    Raises
    ------
    StoreRefused
        If there is no file, or it is not ours.
    """
    header = read_header(path)
    if header is None:
        raise StoreRefused(say("{path} is not there or is empty; there is nothing to check.", path=path))
    refuse_foreign(path, header, len(STEPS))
    return whole(path, lambda connection: _examine(connection, path))


def rebuild(database: Database) -> None:
    """Make the overview of the sealed hours anew, from those that can be read."""
    with database.transaction() as connection:
        rebuild_pyramid(connection)


def _examine(connection: Connection, path: Path) -> Examination:
    pages = [fault for fault in _pages(connection) if fault != "ok"]
    if pages:
        faults = [say("{path} is damaged: {fault}.", path=path, fault=fault) for fault in _shortened(pages)]
        return Examination(faults=(*faults, say(SALVAGE)))
    (version,) = connection.execute("PRAGMA user_version").fetchone()
    missing = tables_of_version(version) - tables_of(connection)
    if missing:
        return Examination(faults=(lacking(path, missing),))
    hours = list(_hours(connection, path))
    faults = [fault for fault in hours if fault]
    if faults:
        return Examination(faults=(*_shortened(faults), say(SALVAGE)), hours=len(hours))
    faults = [f"{path}: {fault} {say(REBUILD)}" for fault in pyramid_faults(connection)]
    (last_ms,) = connection.execute(_LAST).fetchone()
    return Examination(faults=tuple(faults), hours=len(hours), last_ms=last_ms)


def _pages(connection: Connection) -> Iterator[str]:
    try:
        yield from (str(row[0]) for row in connection.execute("PRAGMA integrity_check"))
        yield from (
            say("a row of {table} belongs to a {parent} that is not there", table=table, parent=parent)
            for table, _, parent, _ in connection.execute("PRAGMA foreign_key_check")
        )
    except DatabaseError as error:
        yield str(error)


def _hours(connection: Connection, path: Path) -> Iterator[str]:
    """Yield for each sealed hour what is wrong with it, or ""."""
    with in_plain_words(path):
        for hour in sealed_hours(connection):
            damaged = ", ".join(hour.damaged)
            yield (
                say(
                    "{path}: the sealed readings of {span} are damaged in {damaged}.",
                    path=path,
                    span=hour.span,
                    damaged=damaged,
                )
                if damaged
                else ""
            )


def _shortened(faults: list[str]) -> list[str]:
    rest = len(faults) - MOST_FAULTS
    return faults if rest <= 0 else [*faults[:MOST_FAULTS], say("And {count} more.", count=rest)]
