"""All records of a studio, out as one `Studio` and in from one."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Callable, Hashable, Iterator, Sequence
from dataclasses import dataclass

from studiowatch.speech.words import say
from studiowatch.store.database import Database, tables_of
from studiowatch.store.piece_rows import read_pieces, save_piece
from studiowatch.store.studio_file import Studio
from studiowatch.store.studio_tables import TABLES, Row, Table
from studiowatch.studio.pieces import Piece

_AS_JSON = ("pieces", "rows", "sheets")  # columns that hold a list


class StudioConflict(Exception):  # noqa: N818 - reads as the answer it is
    """The records have something of the file in another form; nothing was taken over. One sentence a line."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TakenOver:
    """What became of a studio file: how many of its pieces and rows were new, there already, or replaced."""

    new: int
    there: int
    replaced: int


def read_all(database: Database, origin: str) -> Studio:
    """Return all that `database` holds but readings, as of one moment; one of an earlier version may lack tables."""
    with database.view() as connection:
        there = tables_of(connection)
        rows = [row for table in TABLES if table.sql_name in there for row in _rows(connection, table)]
        return Studio(origin=origin, pieces=tuple(read_pieces(connection)), rows=tuple(rows))


def take_all(database: Database, studio: Studio, utc_ms: Callable[[], int], *, replace: bool) -> TakenOver:
    """Take a studio into the records: all of it or nothing.

    Parameters
    ----------
    replace : bool
        Whether what the records have in another form is replaced; the earlier form of a piece is kept as a correction.

    Raises
    ------
    StudioConflict
        If something is there in another form and is not to be replaced, or belongs to what is not there.
    """
    with database.transaction() as connection:
        there = read_pieces(connection)
        conflicts = [*_moved(there, studio), *_namesakes(there, studio), *(() if replace else _changed(there, studio))]
        counts = [0, 0, 0]
        if not conflicts:
            known = {piece.key: piece for piece in there}
            for piece in studio.pieces:
                counts[_place(known.get(piece.key), piece)] += 1
                save_piece(connection, piece, utc_ms)
            conflicts = list(_take_rows(connection, studio, counts, replace=replace))
        if conflicts:
            raise StudioConflict("\n".join(f"{studio.origin}: {conflict}" for conflict in conflicts))
    return TakenOver(new=counts[0], there=counts[1], replaced=counts[2])


def _place(before: object, now: object) -> int:
    """Return where to count a thing: new, there already, replaced."""
    return 0 if before is None else 1 if before == now else 2


def _changed(there: Sequence[Piece], studio: Studio) -> Iterator[str]:
    known = {piece.key: piece for piece in there}
    for piece in studio.pieces:
        if known.get(piece.key, piece) != piece:
            yield say(
                'the records have piece "{title}" in another form; --replace takes this one and keeps that.',
                title=piece.title,
            )


def _moved(there: Sequence[Piece], studio: Studio) -> Iterator[str]:
    """Yield a sentence for each coat or look whose key another piece or coat of the records has."""
    owner_of_coat = {coat.key: piece.key for piece in there for coat in piece.coats}
    owner_of_look = {look.key: coat.key for piece in there for coat in piece.coats for look in coat.looks}
    for piece in studio.pieces:
        for number, coat in enumerate(piece.coats, start=1):
            if owner_of_coat.get(coat.key, piece.key) != piece.key:
                yield say(
                    '"{title}", coat {number}: the records have its key at another piece; give it a new key.',
                    title=piece.title,
                    number=number,
                )
            if any(owner_of_look.get(look.key, coat.key) != coat.key for look in coat.looks):
                yield say(
                    '"{title}", coat {number}: the records have a key of its looks at another coat.',
                    title=piece.title,
                    number=number,
                )


def _namesakes(there: Sequence[Piece], studio: Studio) -> Iterator[str]:
    """Yield a sentence for each piece that would come to stand on the rack beside another one of its title."""
    on_rack = {piece.key: piece.title for piece in there if not piece.archived}
    of_file = {piece.key for piece in studio.pieces}
    after = {key: title for key, title in on_rack.items() if key not in of_file}
    after |= {piece.key: piece.title for piece in studio.pieces if not piece.archived}
    for piece in studio.pieces:
        is_new = not piece.archived and on_rack.get(piece.key) != piece.title
        if is_new and any(title == piece.title and key != piece.key for key, title in after.items()):
            yield say(
                'there would be two pieces called "{title}" on the rack; give this one another title.',
                title=piece.title,
            )


def _take_rows(connection: sqlite3.Connection, studio: Studio, counts: list[int], *, replace: bool) -> Iterator[str]:
    for table in TABLES:
        rows = [row for row in studio.rows if isinstance(row, table.shape)]
        by_key = {_key(table, row): row for row in _rows(connection, table)}
        owners = _owners(connection, table)
        for row in rows:
            attribute, _, owner = table.belongs_to
            if attribute and getattr(row, attribute) not in owners:
                lost = getattr(row, attribute)
                yield say(
                    "{heading} of a {owner} that is not there, {lost}; add it, or leave this out.",
                    heading=table.heading,
                    owner=owner,
                    lost=lost,
                )
                continue
            if fault := table.fault(row):
                yield fault
                continue
            earlier = by_key.get(_key(table, row))
            place = _place(earlier, row)
            counts[place] += 1
            if place == 2 and not replace:  # noqa: PLR2004 - replaced, as `_place` counts
                key = getattr(row, table.key)
                yield say(
                    "the records have {heading} {key} in another form; --replace takes this one.",
                    heading=table.heading,
                    key=key,
                )
            elif place != 1:
                _put(connection, table, row)


def _key(table: Table, row: Row) -> Hashable:
    """Return what a row is known by: its key, or all of it where rows have none."""
    return getattr(row, table.key) if table.key else row


def _rows(connection: sqlite3.Connection, table: Table) -> Iterator[Row]:
    there = {name for _, name, *_ in connection.execute(f"PRAGMA table_info({table.sql_name})")}
    columns = [name for name in table.columns if name in there]  # an earlier version may lack some
    query = f"SELECT {', '.join(columns)} FROM {table.sql_name} ORDER BY rowid"  # noqa: S608 - own names
    for row in connection.execute(query).fetchall():
        values = dict(zip(columns, row, strict=True))
        for name in _AS_JSON:
            if name in values:
                values[name] = tuple(json.loads(values[name]))
        yield table.shape(**values)


def _put(connection: sqlite3.Connection, table: Table, row: Row) -> None:
    columns = table.columns
    values = [_plain(name, getattr(row, name)) for name in columns]
    connection.execute(
        f"INSERT INTO {table.sql_name} ({', '.join(columns)}) VALUES ({', '.join('?' * len(columns))})"  # noqa: S608 - own names
        + _on_conflict(table),
        values,
    )


def _on_conflict(table: Table) -> str:
    if not table.key:
        return ""
    rest = ", ".join(f"{name} = excluded.{name}" for name in table.columns if name != table.key)
    return f" ON CONFLICT ({table.key}) DO UPDATE SET {rest}"


def _plain(name: str, value: object) -> object:
    if name not in _AS_JSON:
        return value
    items = value if isinstance(value, tuple) else ()
    return json.dumps([dict(item) if name == "rows" else item for item in items], allow_nan=False)


def _owners(connection: sqlite3.Connection, table: Table) -> set[str]:
    _, owner, _ = table.belongs_to
    if not owner:
        return set()
    return {key for (key,) in connection.execute(f"SELECT key FROM {owner}")}  # noqa: S608 - own names
