"""What a damaged file still holds, saved into a new one; and what of it is lost."""

from __future__ import annotations

import heapq
import sqlite3
from collections.abc import Iterator, Sequence
from contextlib import closing
from dataclasses import dataclass, field
from pathlib import Path

from studiowatch.speech.words import mark, say
from studiowatch.store.chunk_check import moment
from studiowatch.store.database import open_database
from studiowatch.store.field_values import is_of_records
from studiowatch.store.header import read_header, refuse_foreign
from studiowatch.store.migrations import STEPS, migrate
from studiowatch.store.private import make_private
from studiowatch.store.pyramid import rebuild_pyramid
from studiowatch.store.quiet import connect_quietly
from studiowatch.store.salvage_hours import mend_hours
from studiowatch.store.trouble import StoreRefused, StoreTrouble, in_plain_words

_LAST_ROW = 2**40  # more rows than a file can have pages
_MOST_TRIES = 20_000  # ranges of one table that may fail before the rest of them is given up
_DERIVED = ("pyramid",)  # made anew, not copied
_TIMES = {"reading": "time_ms", "chunk": "start_ms", "note": "time_ms", "warning": "raised_ms"}
# what belongs to something that is lost; a piece of which only coats are left is made again for them
_ORPHANS = (
    ("chunk_column", "chunk_id", "chunk", "id"),
    ("look", "coat_key", "coat", "key"),
    ("prompt", "coat_key", "coat", "key"),
    ("prompt_telling", "key", "prompt", "key"),
    ("learnt", "coat_key", "coat", "key"),
    ("warning_state", "warning_key", "warning", "key"),
)
_LOST = {  # by whether the stretch ends, and whether it is known after and before what it lay
    (True, False, False): mark("{table}: rows {first} to {last} cannot be read."),
    (True, True, False): mark("{table}: rows {first} to {last} cannot be read after {after}."),
    (True, False, True): mark("{table}: rows {first} to {last} cannot be read before {before}."),
    (True, True, True): mark("{table}: rows {first} to {last} cannot be read after {after} before {before}."),
    (False, False, False): mark("{table}: all rows from {first} on cannot be read."),
    (False, True, False): mark("{table}: all rows from {first} on cannot be read after {after}."),
    (False, False, True): mark("{table}: all rows from {first} on cannot be read before {before}."),
    (False, True, True): mark("{table}: all rows from {first} on cannot be read after {after} before {before}."),
}
_LOST_PIECES = """
    INSERT INTO piece (key, title, width_cm, height_cm, support, orientation, place, archived)
    SELECT DISTINCT piece_key, 'Lost piece ' || piece_key, 1, 1, 'its title and size are lost', 'face-up', 0, 1
    FROM coat WHERE piece_key NOT IN (SELECT key FROM piece)
"""


@dataclass(frozen=True, slots=True, kw_only=True)
class Salvaged:
    """What was saved and what was lost, one sentence each."""

    saved: tuple[str, ...]
    lost: tuple[str, ...]


def salvage(path: Path, path_to: Path) -> Salvaged:
    """Save what the file at `path` still holds into the new file `path_to`; the damaged one is only read.

    Raises
    ------
    StoreRefused
        If there is nothing at `path` that could be read as the records, or something at `path_to` already.
    StoreTrouble
        If the new file could not be written; it is then not made.
    """
    header = read_header(path)
    if header is None:
        raise StoreRefused(say("{path} is not there or is empty; there is nothing to save.", path=path))
    refuse_foreign(path, header, len(STEPS))
    if path_to.exists():
        raise StoreRefused(say("{path} is there already; choose a new name for what is saved.", path=path_to))
    unfinished = path_to.with_name(f"{path_to.name}.unfinished")
    unfinished.unlink(missing_ok=True)
    make_private(unfinished)
    try:
        with in_plain_words(path_to), closing(sqlite3.connect(unfinished, isolation_level=None)) as new:
            migrate(new, unfinished, STEPS[: header.user_version])
            with closing(connect_quietly(path)) as old:
                _refuse_unreadable(old, path)
                told = _save(old, new)
        open_database(unfinished).close()  # brings an old version to the newest
        unfinished.replace(path_to)
    except BaseException:
        for left in path_to.parent.glob(f"{unfinished.name}*"):
            left.unlink()
        raise
    return told


def _refuse_unreadable(old: sqlite3.Connection, path: Path) -> None:
    try:
        old.execute("SELECT count(*) FROM sqlite_schema").fetchall()
    except sqlite3.DatabaseError as error:
        sentence = say(
            "{path} has lost the list of its tables ({error}); nothing in it can be found: restore a backup.",
            path=path,
            error=error,
        )
        raise StoreRefused(sentence) from error


def _save(old: sqlite3.Connection, new: sqlite3.Connection) -> Salvaged:
    old.text_factory = lambda text: text.decode("utf-8", errors="replace")
    saved: list[str] = []
    lost: list[str] = []
    new.execute("PRAGMA foreign_keys = OFF")
    new.execute("BEGIN")
    tables = [name for (name,) in new.execute("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY rootpage")]
    for table in tables:
        if table.startswith("sqlite_") or table in _DERIVED:
            continue
        copying = _Copying(old=old, new=new, table=table)
        copying.copy()
        saved.append(say("{table}: rows saved: {rows}.", table=table, rows=copying.rows))
        lost += copying.lost()
    lost += mend_hours(new)
    lost += _settle_orphans(new)
    rebuild_pyramid(new)
    new.execute("COMMIT")
    faults = [row[0] for row in new.execute("PRAGMA integrity_check")] + new.execute(
        "PRAGMA foreign_key_check"
    ).fetchall()
    if faults != ["ok"]:
        raise StoreTrouble(
            say("What was saved did not pass its check ({fault}); nothing was kept of it.", fault=faults[0])
        )
    return Salvaged(saved=tuple(saved), lost=tuple(lost))


@dataclass(slots=True, kw_only=True)
class _Copying:
    """One table on its way: ranges of rows are halved until what is damaged stands alone."""

    old: sqlite3.Connection
    new: sqlite3.Connection
    table: str
    rows: int = 0
    _refused: int = 0
    _unread: list[tuple[int, int]] = field(default_factory=list)

    def copy(self) -> None:
        columns = [row[1] for row in self.new.execute(f"PRAGMA table_info({self.table})")]
        columns = ["rowid", *(name for name in columns if name != "id")]
        put = f"INSERT INTO {self.table} ({', '.join(columns)}) VALUES ({', '.join('?' * len(columns))})"  # noqa: S608 - own names
        time_at = columns.index("time_ms") if self.table == "reading" else None
        for row in self._read(columns):
            if time_at is not None and not _has_been(row[time_at]):
                self._refused += 1
                continue
            try:
                self.new.execute(put, row)
            except sqlite3.IntegrityError:
                self._refused += 1
            else:
                self.rows += 1

    def lost(self) -> Iterator[str]:
        """Yield a sentence for each stretch of rows that is lost."""
        if self._refused:
            yield say(
                "{table}: rows that are damaged and were left out: {refused}.", table=self.table, refused=self._refused
            )
        for first, last in _joined(self._unread):
            lost = {"table": self.table, "first": str(first), "last": str(last), **self._when(first, last)}
            yield say(_LOST[last < _LAST_ROW, "after" in lost, "before" in lost], **lost)

    def _read(self, columns: Sequence[str]) -> Iterator[tuple[object, ...]]:
        query = f"SELECT {', '.join(columns)} FROM {self.table} WHERE rowid BETWEEN ? AND ? ORDER BY rowid"  # noqa: S608 - own names
        ranges = [(-_LAST_ROW, 1, _LAST_ROW)]  # widest first, so that no damage uses up the tries of what is whole
        tries = _MOST_TRIES
        while ranges:
            _, first, last = heapq.heappop(ranges)
            reached = first - 1
            try:
                for row in self.old.execute(query, (first, last)):
                    yield row
                    reached = int(row[0])
            except sqlite3.DatabaseError:
                tries -= 1
                for part in _rest(first, reached, last) if tries > 0 else ():
                    heapq.heappush(ranges, (part[0] - part[1], *part))
                if tries <= 0 or (first == last and reached < first):
                    self._unread.append((reached + 1, last))

    def _when(self, first: int, last: int) -> dict[str, str]:
        """Return between which times, after and before, the lost rows lay, if rows tell it by their order."""
        column = _TIMES.get(self.table)
        if column is None:
            return {}
        sides = (("< ? ORDER BY rowid DESC", first), ("> ? ORDER BY rowid", last))
        before, after = (
            self.new.execute(
                f"SELECT max({column}) FROM (SELECT {column} FROM {self.table} WHERE rowid {side} LIMIT 1)",  # noqa: S608
                (row,),
            ).fetchone()[0]
            for side, row in sides
        )
        between = {"after": before, "before": after}
        return {side: moment(time_ms) for side, time_ms in between.items() if time_ms is not None}


def _has_been(time_ms: object) -> bool:
    """Return whether a clock can have shown this time; a reading beyond all calendars spoils every view of the log."""
    return isinstance(time_ms, int) and is_of_records(time_ms)


def _rest(first: int, reached: int, last: int) -> list[tuple[int, int]]:
    """Return what to try next of a range that failed behind `reached`: what is behind it, or both halves."""
    if reached >= first:
        return [(reached + 1, last)] if reached < last else []
    if first == last:
        return []
    middle = (first + last) // 2
    return [(first, middle), (middle + 1, last)]


def _joined(ranges: Sequence[tuple[int, int]]) -> list[tuple[int, int]]:
    """Return ranges that touch each other as one."""
    joined: list[tuple[int, int]] = []
    for first, last in sorted(ranges):
        if joined and first <= joined[-1][1] + 1:
            joined[-1] = (joined[-1][0], max(last, joined[-1][1]))
        else:
            joined.append((first, last))
    return joined


def _settle_orphans(new: sqlite3.Connection) -> Iterator[str]:
    """Make a piece again for coats that lost theirs; leave out what else lost what it belongs to."""
    tables = {name for (name,) in new.execute("SELECT name FROM sqlite_schema WHERE type = 'table'")}
    made = new.execute(_LOST_PIECES).rowcount
    if made:
        yield say("piece: pieces that lost title and size, archived so that their coats are kept: {made}.", made=made)
    for table, column, owner, key in _ORPHANS:
        if table in tables:
            delete = f"DELETE FROM {table} WHERE {column} NOT IN (SELECT {key} FROM {owner})"  # noqa: S608 - own names
            gone = new.execute(delete).rowcount
            if gone:
                yield say(
                    "{table}: rows left out, since the {owner} that they belong to is lost: {gone}.",
                    table=table,
                    owner=owner,
                    gone=gone,
                )
