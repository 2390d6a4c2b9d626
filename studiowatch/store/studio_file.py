"""The studio file: all pieces with their coats and looks as TOML that she can read and write by hand."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from itertools import pairwise
from typing import Any
from uuid import NAMESPACE_URL, uuid5

from studiowatch.speech.words import say
from studiowatch.store.field_values import Wrong, moment_of
from studiowatch.store.studio_faults import Lines, Place, StudioFault, StudioFileError
from studiowatch.store.studio_fields import (
    COAT_FIELDS,
    LOOK_FIELDS,
    PIECE_FIELDS,
    Field,
)
from studiowatch.store.studio_tables import TABLES, Row, Table
from studiowatch.store.toml_text import as_toml
from studiowatch.studio.pieces import Coat, Look, Piece, can_be_shown

_KEY_SPACE = uuid5(NAMESPACE_URL, "studiowatch:studio-file")  # so that a file read twice makes the same keys
_AMOUNTS = ("volume_mL", "grams", "wet_um")
_CHILD = ("piece", "coat", "look")  # by depth: what the file holds, what a piece holds, what a coat holds


@dataclass(frozen=True, slots=True, kw_only=True)
class Studio:
    """What a studio file holds, in the file's order."""

    origin: str
    pieces: tuple[Piece, ...]
    rows: tuple[Row, ...] = ()


def read_studio(text: str, origin: str) -> Studio:
    """Read a studio file.

    Parameters
    ----------
    text : str
        What the file holds.
    origin : str
        The file's name, for the sentences.

    Raises
    ------
    StudioFileError
        With all faults at once, in the file's order.
    """
    text = text.removeprefix("\ufeff")
    try:
        document = tomllib.loads(text)
    except (ValueError, RecursionError) as error:  # ValueError: also a number of thousands of digits
        fault = StudioFault(
            origin=origin,
            line=None,
            where="",
            field=say("the file"),
            value=say("not TOML ({error})", error=error),
            allowed=say("[[piece]] and [[piece.coat]] tables of name = value"),
        )
        raise StudioFileError([fault]) from error
    reading = _Reading(text, origin)
    pieces = reading.studio(document)
    rows = reading.rows(document)
    if reading.faults:
        raise StudioFileError(sorted(reading.faults, key=lambda fault: fault.line or 0))
    return Studio(origin=origin, pieces=pieces, rows=rows)


def write_studio(pieces: Sequence[Piece], rows: Sequence[Row] = ()) -> str:
    """Return `pieces`, and `rows` of `TABLES`, as a studio file that `read_studio` turns into the same."""
    blocks = []
    for piece in pieces:
        blocks.append(_block("piece", piece, PIECE_FIELDS))
        for coat in piece.coats:
            blocks.append(_block("piece.coat", coat, COAT_FIELDS))
            blocks += [_block("piece.coat.look", look, LOOK_FIELDS) for look in coat.looks]
    for table in TABLES:
        blocks += [_block(table.heading, row, table.fields) for row in rows if isinstance(row, table.shape)]
    return "\n".join(blocks)


def _block(heading: str, thing: Piece | Coat | Look | Row, fields: Sequence[Field]) -> str:
    lines = [f"[[{heading}]]"]
    for field in fields:
        value = getattr(thing, field.attribute)
        if value is not None:
            moment = moment_of(value) if field.attribute.endswith("_ms") else value
            lines.append(f"{field.name} = {as_toml(moment)}")
    return "\n".join(lines) + "\n"


class _Reading:
    """One reading of one file: collects every fault instead of stopping at the first."""

    def __init__(self, text: str, origin: str) -> None:
        self.faults: list[StudioFault] = []
        self._origin = origin
        self._lines = Lines(text)
        self._keys: set[tuple[str, str]] = set()
        self._titles: list[str] = []

    def studio(self, document: Mapping[str, Any]) -> tuple[Piece, ...]:
        self._refuse_unknown(document, (), "", ["piece", *(table.heading for table in TABLES)])
        tables = self._tables(document, (), "")
        pieces = [self._piece(table, (at,)) for at, table in enumerate(tables)]
        return tuple(piece for piece in pieces if piece)

    def rows(self, document: Mapping[str, Any]) -> tuple[Row, ...]:
        rows = []
        for table in TABLES:
            given = document.get(table.heading, [])
            if not (isinstance(given, list) and all(isinstance(each, dict) for each in given)):
                self._add_flat(
                    table,
                    0,
                    table.heading,
                    _shown(given),
                    say("tables under [[{heading}]] headings", heading=table.heading),
                )
                continue
            keys: set[str] = set()
            rows += [row for at, each in enumerate(given) if (row := self._row(table, at, each, keys)) is not None]
        return tuple(rows)

    def _row(self, table: Table, at: int, given: Mapping[str, Any], keys: set[str]) -> Row | None:
        values: dict[str, Any] = {}
        known = {field.name: field for field in table.fields}
        for name in given.keys() - known.keys():
            self._add_flat(table, at, name, say("not a field here"), ", ".join(known))
        for name, field in known.items():
            if name in given:
                try:
                    values[field.attribute] = field.read(given[name])
                except Wrong:
                    self._add_flat(table, at, name, _shown(given[name]), field.allowed_words())
            elif field.required or field.attribute == table.key:
                self._add_flat(table, at, name, say("missing"), field.allowed_words())
            else:
                values[field.attribute] = None
        key = values.get(table.key)
        if key is not None and key in keys:
            self._add_flat(
                table,
                at,
                "key",
                _shown(key),
                say("a key that no other {heading} in the file has", heading=table.heading),
            )
        keys.add(str(key))
        needed = [field for field in table.fields if field.required or field.attribute == table.key]
        return table.shape(**values) if all(field.attribute in values for field in needed) else None

    def _add_flat(self, table: Table, at: int, field: str, value: str, allowed: str) -> None:
        line = self._lines.find_flat(table.heading, at, field)
        where = f"{table.heading} {at + 1}"
        self.faults.append(
            StudioFault(origin=self._origin, line=line, where=where, field=field, value=value, allowed=allowed),
        )

    def _piece(self, table: Mapping[str, Any], place: Place) -> Piece | None:
        title = table.get("title")
        title = title if isinstance(title, str) and can_be_shown(title) else ""
        where = say("piece {number}", number=place[0] + 1) + (f' "{title}"' if title else "")
        values = self._values(table, place, where, PIECE_FIELDS)
        values.setdefault("place", place[0])
        self._titles.append(title)
        self._settle_key(values, place, where, f"{title}/{self._titles.count(title)}")
        tables = self._tables(table, place, where)
        coats = [self._coat(each, (*place, at), where, values["key"]) for at, each in enumerate(tables)]
        self._check_order(coats, place, where)
        return Piece(**values, coats=tuple(coat for coat in coats if coat)) if _has_all(values, PIECE_FIELDS) else None

    def _coat(self, table: Mapping[str, Any], place: Place, where: str, piece_key: str) -> Coat | None:
        where = say("{where}, coat {number}", where=where, number=place[1] + 1)
        values = self._values(table, place, where, COAT_FIELDS)
        self._settle_key(values, place, where, f"{piece_key}/coat {place[1] + 1}")
        given = [name for name in _AMOUNTS if name in table]
        if len(given) > 1:
            self._add(
                place,
                where,
                given[1],
                say("given beside {other}", other=given[0]),
                say("only one of {fields}", fields=", ".join(_AMOUNTS)),
            )
        for name in ("covered_from", "seen"):
            after, laid = values.get(f"{name}_ms"), values.get("laid_ms")
            if after is not None and laid is not None and after < laid:
                self._add(
                    place,
                    where,
                    name,
                    _shown(table[name]),
                    say("not before it was laid, {laid}", laid=_shown(table["laid"])),
                )
        looks = [
            self._look(each, (*place, at), say("{where}, look {number}", where=where, number=at + 1), values["key"])
            for at, each in enumerate(self._tables(table, place, where))
        ]
        kept = tuple(look for look in looks if look)
        return Coat(**values, looks=kept) if _has_all(values, COAT_FIELDS) else None

    def _look(self, table: Mapping[str, Any], place: Place, where: str, coat_key: str) -> Look | None:
        values = self._values(table, place, where, LOOK_FIELDS)
        self._settle_key(values, place, where, f"{coat_key}/look {place[2] + 1}")
        return Look(**values) if _has_all(values, LOOK_FIELDS) else None

    def _values(self, table: Mapping[str, Any], place: Place, where: str, fields: Sequence[Field]) -> dict[str, Any]:
        children = _CHILD[len(place) : len(place) + 1]
        self._refuse_unknown(table, place, where, [*(field.name for field in fields), *children])
        values = {}
        for field in fields:
            if field.name in table:
                try:
                    values[field.attribute] = field.read(table[field.name])
                except Wrong:
                    self._add(place, where, field.name, _shown(table[field.name]), field.allowed_words())
            elif field.required:
                self._add(place, where, field.name, say("missing"), field.allowed_words())
        return values

    def _tables(self, table: Mapping[str, Any], place: Place, where: str) -> list[Mapping[str, Any]]:
        name = _CHILD[len(place)]
        tables = table.get(name, [])
        if isinstance(tables, list) and all(isinstance(each, dict) for each in tables):
            return tables
        heading = ".".join(_CHILD[: len(place) + 1])
        self._add(place, where, name, _shown(tables), say("tables under [[{heading}]] headings", heading=heading))
        return []

    def _settle_key(self, values: dict[str, Any], place: Place, where: str, made_from: str) -> None:
        key = values.setdefault("key", uuid5(_KEY_SPACE, made_from).hex)
        kind = _CHILD[len(place) - 1]
        if (kind, key) in self._keys:
            self._add(place, where, "key", _shown(key), say("a key that no other {kind} in the file has", kind=kind))
        self._keys.add((kind, key))

    def _check_order(self, coats: Sequence[Coat | None], place: Place, where: str) -> None:
        for at, (lower, upper) in enumerate(pairwise(coats), start=1):
            if lower is None or upper is None or upper.laid_ms is None:
                continue
            if lower.laid_ms is None or lower.laid_ms > upper.laid_ms:
                self._add(
                    (*place, at),
                    say("{where}, coat {number}", where=where, number=at + 1),
                    "laid",
                    _shown(moment_of(upper.laid_ms)),
                    _in_order(at, lower.laid_ms),
                )

    def _refuse_unknown(self, table: Mapping[str, Any], place: Place, where: str, allowed: Sequence[str]) -> None:
        for name in table:
            if name not in allowed:
                self._add(place, where, name, say("not a field here"), ", ".join(allowed))

    def _add(self, place: Place, where: str, field: str, value: str, allowed: str) -> None:
        line = self._lines.find(place, field)
        self.faults.append(
            StudioFault(origin=self._origin, line=line, where=where, field=field, value=value, allowed=allowed),
        )


def _has_all(values: Mapping[str, Any], fields: Sequence[Field]) -> bool:
    return all(field.attribute in values for field in fields if field.required)


def _shown(value: Any) -> str:  # noqa: ANN401 - whatever the file holds
    """Return a value of the file as it may have been written there, cut if long."""
    longest = 60
    try:
        shown = as_toml(value) if isinstance(value, str | bool | int | float | datetime) else str(value)
    except ValueError:
        return say("a number too long to show")
    return shown if len(shown) <= longest else shown[: longest - 1] + "…"


def _in_order(number: int, laid_ms: int | None) -> str:
    """Return the order that coats have to stand in, and when the coat `number` below was laid, which breaks it."""
    if laid_ms is None:
        return say(
            "coats from the lowest to the topmost, planned ones last; coat {number}, below it, is only planned",
            number=number,
        )
    return say(
        "coats from the lowest to the topmost, planned ones last; coat {number}, below it, is laid {laid}",
        number=number,
        laid=_shown(moment_of(laid_ms)),
    )
