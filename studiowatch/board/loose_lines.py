"""One line of any sketch to named numbers: JSON, labelled numbers, a table with a header, or bare columns."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import StrEnum

from studiowatch.board.loose_json import json_fields
from studiowatch.board.loose_labels import labelled_fields
from studiowatch.board.loose_numbers import MISSING, NOT_A_NUMBER, Field, Number, read_number
from studiowatch.board.loose_units import UNIT, read_unit
from studiowatch.board.loose_words import read_label
from studiowatch.speech.words import mark, say

MOST_FIELDS = 64  # of one line; more is no sensor board: assumption
LONGEST_NAME = 40  # characters of a column's name in a header: assumption
PRINTABLE_SHARE = 0.9  # fewer printable characters than this are a wrong baud rate: the board's specification

_SEPARATORS = (";", "\t", "|", ",", None)  # None: any white space
_CLOCK = re.compile(
    r"[0-9]{4}-[0-9]{2}-[0-9]{2}(?:[T ][0-9:.]{4,}(?:Z|[+-][0-9:]{4,5})?)?"
    r"|(?<![\w.:])[0-9]{1,2}:[0-9]{2}:[0-9]{2}(?:[.,][0-9]+)?(?![\w:])"
    r"|(?<![\w.:])[0-2][0-9]:[0-5][0-9](?![\w:.])"
    r"|(?<![\w./])[0-9]{1,2}[./-][0-9]{1,2}[./-][0-9]{4}(?![\w./])"
)
_TAG = re.compile(r"[^0-9+\-.]*[A-Za-z][^0-9+\-.]*?[:=,>\s]\s*(?=[-+.0-9])")
_UNIT_AFTER = re.compile(rf"\s*({UNIT})$")
_NAN = re.compile(NOT_A_NUMBER)
_SPACED_COMMA = re.compile(r",\s")
_TIGHT_COMMA = re.compile(r"[0-9],[0-9]")
_BEGINS_NUMBER = frozenset("+-−.,0123456789nNiIo")
_PRINTABLE = frozenset("\t\r\n°º²³µ℃℉−·äöüÄÖÜßéèêàçåæøñíóúá")


class Style(StrEnum):
    """How a sketch writes its numbers; the value is said to her by `say`."""

    JSON = "JSON"
    TABLE = mark("a table with a header")
    LABELLED = mark("labelled numbers")
    COLUMNS = mark("bare columns")


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """A line that holds numbers. The keys of its fields are unique."""

    style: Style
    fields: tuple[Field, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Words:
    """A line of text without numbers: greetings, rulers, complaints.

    Attributes
    ----------
    header : tuple of str
        The names of columns that it would give as a header; empty if it cannot be one.
    """

    text: str
    header: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Unreadable:
    """A line that is no text; `reason` is one sentence."""

    reason: str


def read_loose_line(raw: bytes, header: tuple[str, ...] = ()) -> Row | Words | Unreadable:
    """Judge one line, without its end, whatever its bytes. `header` names the columns of a row of as many cells."""
    text = decoded(raw).strip("\x00\r\n\t ")
    if printable_share(text) < PRINTABLE_SHARE:
        return Unreadable(reason=say("Most bytes are no text: the baud rate is wrong, or the line was damaged."))
    if fields := json_fields(text):
        return _row(Style.JSON, fields)
    plain = _CLOCK.sub(" ", text)
    if header and (cells := _cells(plain, header)):
        return _row(
            Style.TABLE, [replace(cell, key=name, label=name) for name, cell in zip(header, cells, strict=True)]
        )
    return _row_of_text(plain) or Words(text=text, header=_header(text))


def _row_of_text(text: str) -> Row | None:
    """Return the row that a line without JSON and without a header makes, the plainest style first."""
    if fields := _columns(text):
        return _row(Style.COLUMNS, fields)
    if fields := labelled_fields(text):
        return _row(Style.LABELLED, fields)
    fields = _mixed(text)
    return _row(Style.COLUMNS, fields) if fields else None


def decoded(raw: bytes) -> str:
    """Return the text of `raw`: UTF-8, or Latin-1 where it is not."""
    try:
        return raw.decode("utf-8")
    except UnicodeDecodeError:
        return raw.decode("latin-1")


def printable_share(text: str) -> float:
    """Return the share of printable characters, 0 to 1 (1 of an empty text).

    Of Latin-1 only the letters and signs that labels need are counted: noise falls there.
    """
    printable = sum(" " <= c < "\x7f" or c in _PRINTABLE or (c > "\xff" and c.isalpha()) for c in text)
    return printable / len(text) if text else 1.0


def _row(style: Style, fields: Sequence[Field]) -> Row:
    unique: dict[str, Field] = {}
    for field in fields[:MOST_FIELDS]:
        key, again = field.key, 2
        while key in unique:
            key, again = f"{field.key} ({again})", again + 1
        unique[key] = replace(field, key=key)
    return Row(style=style, fields=tuple(unique.values()))


def _split(text: str, separator: str | None) -> list[str]:
    """Return the cells of `text`. Where commas with and without a space behind them stand, the latter are decimal."""
    if separator == "," and _SPACED_COMMA.search(text) and _TIGHT_COMMA.search(text):
        separator = ", "
    cells = [cell.strip().strip("\"'") for cell in text.split(separator)]
    return cells[:-1] if len(cells) > 1 and not cells[-1] else cells


def _read_cell(cell: str) -> tuple[Number, str] | None:
    """Return the number in `cell` and the unit after it, or None if there is something else in it."""
    number = read_number(cell)
    if number is not None:
        return number, ""
    found = _UNIT_AFTER.search(cell) if cell[0] in _BEGINS_NUMBER else None
    number = read_number(cell[: found.start()]) if found and found.start() else None
    return (number, read_unit(found[1])) if found and number else None


def _fields(cells: Sequence[str]) -> list[Field] | None:
    """Return the bare numbers in `cells`, or None if any is something else or none has a value."""
    read = [_read_cell(cell) for cell in cells]
    fields = [Field(key=str(at), number=pair[0], unit=pair[1]) for at, pair in enumerate(read, 1) if pair]
    return fields if len(fields) == len(cells) and (_has_value(fields) or _NAN.search(" ".join(cells))) else None


def _has_value(fields: Sequence[Field]) -> bool:
    return any(field.number.value is not None for field in fields)


def _columns(text: str) -> list[Field]:
    """Return the cells of a line of bare numbers, or nothing. A word in front of a list is passed over.

    "21,47" is two columns: a sketch that prints one bare number with a decimal comma is rarer.
    """
    for separator in _SEPARATORS:
        cells = _split(text, separator)
        if len(cells) > 1 and (fields := _fields(cells)) and not (separator == "," and _is_torn(text, fields)):
            return fields
    tag = _TAG.match(text)
    for separator in _SEPARATORS if tag else ():
        cells = _split(text[tag.end() :], separator) if tag else []
        # "T: 23,4" is one number, "DATA: 23.4,51.2" is two
        if (len(cells) > 2 or (len(cells) == 2 and "." in cells[0])) and (fields := _fields(cells)):  # noqa: PLR2004
            return fields
    return _fields([text.strip()]) or []


def _is_torn(text: str, fields: Sequence[Field]) -> bool:
    """Tell whether commas may have torn numbers: "21,4 °C,47,1 %" has units behind some of its cells only."""
    with_unit = sum(bool(field.unit) for field in fields)
    return 0 < with_unit < len(fields) and "." not in text


def _mixed(text: str) -> list[Field]:
    """Return the cells of a line of which some are words, such as "OK,21.4,47", or nothing. A word is no value."""
    for separator in _SEPARATORS[:-1]:
        cells = _split(text, separator)
        read = [_read_cell(cell) or (None if any(map(str.isdigit, cell)) else (MISSING, "")) for cell in cells]
        fields = [Field(key=str(at), number=pair[0], unit=pair[1]) for at, pair in enumerate(read, 1) if pair]
        if len(fields) == len(cells) and sum(field.number.value is not None for field in fields) > 1:
            return fields
    return []


def _cells(text: str, header: Sequence[str]) -> list[Field]:
    """Return one field for each name of `header`, or nothing if the line does not fit. Text is no value."""
    for separator in _SEPARATORS:
        cells = _split(text, separator)
        if separator == "," and len(cells) == 2 * len(header) and all(cell.lstrip("+-").isdecimal() for cell in cells):
            cells = [",".join(pair) for pair in zip(cells[::2], cells[1::2], strict=True)]  # 23,4,51,2
        if len(cells) == len(header):
            read = [_read_cell(cell) or (MISSING, "") for cell in cells]
            fields = [Field(key=str(at), number=number, unit=unit) for at, (number, unit) in enumerate(read, 1)]
            if _has_value(fields) or _NAN.search(text):
                return fields
    return []


def _header(text: str) -> tuple[str, ...]:
    """Return the names that `text` gives to columns: enough of them understood, or it is only a sentence."""
    for separator in _SEPARATORS:
        names = _split(text.lstrip("#%/ "), separator)
        if len(names) < 2 or not all(len(name) <= LONGEST_NAME and any(map(str.isalpha, name)) for name in names):  # noqa: PLR2004
            continue
        read = [read_label(name) for name in names]
        told = sum(bool(name.quantities) for name in read)
        if len(set(names)) == len(names) and (told == len(names) or (separator and told and not _is_prose(names))):
            return tuple(names)
    return ()


def _is_prose(names: Sequence[str]) -> bool:
    return any(len(name.split()) > 3 for name in names)  # noqa: PLR2004 - "relative humidity %" is a name
