"""Pieces with their coats and looks as rows, and as the corrections that keep their earlier forms."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Callable, Iterable
from dataclasses import asdict, astuple, fields
from datetime import date
from typing import Any

from studiowatch.coats.stages import Orientation
from studiowatch.store.upserting import upsert
from studiowatch.studio.pieces import Coat, Finding, Look, Outcome, Piece, Shape

_PIECE_COLUMNS = tuple(field.name for field in fields(Piece) if field.name != "coats")
_COAT_COLUMNS = tuple(field.name for field in fields(Coat) if field.name != "looks")
_LOOK_COLUMNS = tuple(field.name for field in fields(Look))
_PUT_PIECE = upsert("piece", _PIECE_COLUMNS)
_PUT_COAT = upsert("coat", (*_COAT_COLUMNS, "piece_key", "layer"))
_PUT_LOOK = upsert("look", (*_LOOK_COLUMNS, "coat_key", "position"))

# S608: every name in these comes from our own dataclasses
_ONE_PIECE = f"SELECT {', '.join(_PIECE_COLUMNS)} FROM piece WHERE key = ?"  # noqa: S608
_COATS = f"SELECT {', '.join(_COAT_COLUMNS)} FROM coat WHERE piece_key = ? ORDER BY layer"  # noqa: S608
_LOOKS = f"SELECT {', '.join(_LOOK_COLUMNS)} FROM look WHERE coat_key = ? ORDER BY position"  # noqa: S608


def read_pieces(connection: sqlite3.Connection) -> list[Piece]:
    """Return all pieces with their coats and looks, by place; a file of an earlier version may lack columns."""
    there = {name for _, name, *_ in connection.execute("PRAGMA table_info(piece)")}
    columns = tuple(name for name in _PIECE_COLUMNS if name in there)
    rows = connection.execute(f"SELECT {', '.join(columns)} FROM piece ORDER BY place, rowid")  # noqa: S608 - own names
    return [_piece(connection, dict(zip(columns, row, strict=True))) for row in rows.fetchall()]


def save_piece(connection: sqlite3.Connection, piece: Piece, utc_ms: Callable[[], int]) -> None:
    """Insert or replace a piece, inside a transaction; an earlier form is kept as a correction."""
    row = connection.execute(_ONE_PIECE, (piece.key,)).fetchone()
    earlier = None if row is None else _piece(connection, dict(zip(_PIECE_COLUMNS, row, strict=True)))
    if earlier == piece:
        return
    if earlier is not None:
        connection.execute(
            "INSERT INTO correction (time_ms, piece_key, earlier) VALUES (?, ?, ?)",
            (utc_ms(), piece.key, json.dumps(asdict(earlier), default=date.isoformat)),
        )
    _put_piece(connection, piece)


def _put_piece(connection: sqlite3.Connection, piece: Piece) -> None:
    values = [getattr(piece, name) for name in _PIECE_COLUMNS]
    values[_PIECE_COLUMNS.index("due")] = piece.due.isoformat() if piece.due else None
    connection.execute(_PUT_PIECE, values)
    looks = [(look, coat.key, position) for coat in piece.coats for position, look in enumerate(coat.looks)]
    coat_keys = json.dumps([coat.key for coat in piece.coats])
    look_keys = json.dumps([look.key for look, _, _ in looks])
    connection.execute(
        "DELETE FROM coat WHERE piece_key = ? AND key NOT IN (SELECT value FROM json_each(?))",
        (piece.key, coat_keys),
    )
    connection.execute(
        "DELETE FROM look WHERE coat_key IN (SELECT key FROM coat WHERE piece_key = ?) "
        "AND key NOT IN (SELECT value FROM json_each(?))",
        (piece.key, look_keys),
    )
    connection.executemany(
        _PUT_COAT,
        [
            (*(getattr(coat, name) for name in _COAT_COLUMNS), piece.key, layer)
            for layer, coat in enumerate(piece.coats)
        ],
    )
    connection.executemany(_PUT_LOOK, [(*astuple(look), coat_key, position) for look, coat_key, position in looks])


def piece_of(values: dict[str, Any]) -> Piece:
    """Return an earlier form of a piece as a correction keeps it; of an earlier version it may lack fields."""
    coats = [
        Coat(**{**coat, "outcome": coat["outcome"] and Outcome(coat["outcome"]), "looks": _looks_of(coat["looks"])})
        for coat in values["coats"]
    ]
    return Piece(**_typed({name: value for name, value in values.items() if name != "coats"}), coats=tuple(coats))


def _looks_of(looks: Iterable[dict[str, Any]]) -> tuple[Look, ...]:
    return tuple(Look(**{**look, "finding": Finding(look["finding"])}) for look in looks)


def _typed(values: dict[str, Any]) -> dict[str, Any]:
    """Return the values of a piece as they are stored in the types that a piece has."""
    values["due"] = date.fromisoformat(values["due"]) if values["due"] else None
    values["orientation"] = Orientation(values["orientation"])
    values["archived"] = bool(values["archived"])
    if "shape" in values:
        values["shape"] = Shape(values["shape"])
    return values


def _piece(connection: sqlite3.Connection, values: dict[str, Any]) -> Piece:
    values = _typed(values)
    coats = connection.execute(_COATS, (values["key"],)).fetchall()
    return Piece(**values, coats=tuple(_coat(connection, coat) for coat in coats))


def _coat(connection: sqlite3.Connection, row: tuple[Any, ...]) -> Coat:
    values = dict(zip(_COAT_COLUMNS, row, strict=True))
    values["outcome"] = Outcome(values["outcome"]) if values["outcome"] else None
    looks = connection.execute(_LOOKS, (values["key"],)).fetchall()
    return Coat(**values, looks=tuple(_looks(looks)))


def _looks(rows: Iterable[tuple[Any, ...]]) -> Iterable[Look]:
    return (Look(key=key, time_ms=time_ms, finding=Finding(finding)) for key, time_ms, finding in rows)
