"""What lies behind: pieces that left the rack, all warnings, all prompts; read again only if it changed."""

from __future__ import annotations

import json
import sqlite3
from dataclasses import dataclass, field
from functools import cache

from studiowatch.store.database import Database

# what changes when her records do: every change of a warning, of a piece that was there and of the log leaves a row
_STAMP = (
    "SELECT (SELECT max(id) FROM warning_state), (SELECT max(id) FROM correction), (SELECT max(id) FROM note), "
    "(SELECT count(*) FROM coat), (SELECT max(rowid) FROM coat), (SELECT count(*) FROM prompt), "
    "(SELECT count(*) FROM prompt WHERE done_ms IS NULL), (SELECT max(rowid) FROM warning)"
)
# a piece is corrected once more when it is archived, and not after that
_LEFT = (
    "SELECT piece.key, title, (SELECT max(time_ms) FROM correction WHERE piece_key = piece.key) "
    "FROM piece WHERE archived ORDER BY place, piece.rowid"
)
_COATS = (
    "SELECT piece_key, coat.key, sheet, laid_ms, outcome FROM coat JOIN piece ON piece_key = piece.key "
    "WHERE archived ORDER BY piece_key, layer"
)
_WARNINGS = "SELECT key, kind, level, began_ms, headline, pieces FROM warning ORDER BY began_ms, rowid"
_PROMPTS = (
    "SELECT piece_key, due_ms, done_ms, text FROM prompt JOIN coat ON coat_key = coat.key "
    "ORDER BY coalesce(done_ms, due_ms), prompt.rowid"
)


@dataclass(frozen=True, slots=True, kw_only=True)
class PastCoat:
    """A coat of a piece that left the rack; `laid_ms` is None if it was planned and never laid."""

    key: str
    sheet: str
    laid_ms: int | None
    outcome: str | None


@dataclass(frozen=True, slots=True, kw_only=True)
class PastPiece:
    """A piece that left the rack, its coats from the lowest up; `left_ms` is None where it was never told when."""

    key: str
    title: str
    left_ms: int | None
    coats: tuple[PastCoat, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class PastWarning:
    """A warning, open or cleared, with the titles of the pieces that it named."""

    key: str
    kind: str
    level: int
    began_ms: int
    headline: str
    pieces: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class PastPrompt:
    """A prompt of any piece; `done_ms` is None if it was not ticked."""

    piece_key: str
    due_ms: int
    done_ms: int | None
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Past:
    """All of it, warnings by when they began and prompts by when they were done, or due."""

    pieces: tuple[PastPiece, ...] = ()
    warnings: tuple[PastWarning, ...] = ()
    prompts: tuple[PastPrompt, ...] = ()


@dataclass(slots=True)
class PastReader:
    """Reads the past through a connection of its reader's; for one thread at a time.

    Between two calls without a change of the records it returns the very same `Past`, at the cost of one small query.
    """

    database: Database
    _stamp: tuple[object, ...] | None = None
    _past: Past = field(default_factory=Past)

    def read(self) -> Past:
        """Return the past as of now."""
        with self.database.view() as connection:
            stamp = connection.execute(_STAMP).fetchone()
            if stamp != self._stamp:
                self._past = read_past(connection)
                self._stamp = stamp
        return self._past


def read_past(connection: sqlite3.Connection) -> Past:
    """Return the whole past."""
    coats: dict[str, list[PastCoat]] = {}
    for piece_key, key, sheet, laid_ms, outcome in connection.execute(_COATS).fetchall():
        coats.setdefault(piece_key, []).append(PastCoat(key=key, sheet=sheet, laid_ms=laid_ms, outcome=outcome))
    pieces = [
        PastPiece(key=key, title=title, left_ms=left_ms, coats=tuple(coats.get(key, ())))
        for key, title, left_ms in connection.execute(_LEFT).fetchall()
    ]
    titles = cache(_titles)  # a room's warning names the same pieces again and again
    warnings = [
        PastWarning(key=key, kind=kind, level=level, began_ms=began_ms, headline=headline, pieces=titles(named))
        for key, kind, level, began_ms, headline, named in connection.execute(_WARNINGS).fetchall()
    ]
    prompts = [
        PastPrompt(piece_key=piece_key, due_ms=due_ms, done_ms=done_ms, text=text)
        for piece_key, due_ms, done_ms, text in connection.execute(_PROMPTS).fetchall()
    ]
    return Past(pieces=tuple(pieces), warnings=tuple(warnings), prompts=tuple(prompts))


def _titles(text: str) -> tuple[str, ...]:
    return tuple(json.loads(text))
