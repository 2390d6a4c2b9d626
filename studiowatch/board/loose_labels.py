"""Labelled numbers in a line of text: ``T=21.4 H=48``, ``Humidity: 48 %  Temperature: 21,4 °C``, ``21.4 C inside``."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import zip_longest

from studiowatch.board.loose_numbers import NO_VALUE, NOT_A_NUMBER, NUMBER, Field, Number, read_number
from studiowatch.board.loose_units import UNIT, UNITS, read_unit
from studiowatch.board.loose_words import read_label

_ITEM = re.compile(
    rf"(?<![\w.])(?<![0-9],)(?<!\w[-+−])(?P<number>{NUMBER}|{NOT_A_NUMBER}|(?:(?<=[:=])|(?<=[:=]\s))(?:{NO_VALUE}))"
    rf"(?:\s*(?P<unit>{UNIT})(?!\w)(?!/[A-Za-z])(?!(?<=\s\w)\s*[:=])|(?![\w]|[.,][0-9]))"
)
_TAGS = re.compile(r"\{[^{}]*=\s*\"[^{}]*\"\s*\}")  # room_temperature{sensor="a"} 21.4
# a number that could not be read is no part of a label
_UNREAD = re.compile(r"^[-+]?[0-9]+(?:[.,][0-9][\w.,%°]*|[A-Za-z%°]+)\s*")
_GLUED = re.compile(r"(?:[A-Za-z]+[-+]?[0-9]+(?:[.,][0-9]+)?[;, ]?){2,}")  # T21.4H48
_GLUE = re.compile(r"(?<=[A-Za-z])(?=[-+]?[0-9])|(?<=[0-9])(?=[A-Za-z])")
_ORDINAL = re.compile(r"\s*[:=)\]#]")  # a whole number before these is part of the label: "Sensor 1: 21.4"
_CONNECTED = re.compile(r"[:=]\s*[\"']?\s*$|>\s*$")
_BREAKS = re.compile(r"[,;|&{}<>\"'\t]+|\s-+\s|\s/\s|[:=](?=.)")
_EDGES = " \t.,;:=|/\\-+<>#*~!?\"'&_"


@dataclass(frozen=True, slots=True)
class _Item:
    number: Number
    unit: str
    before: str
    is_letter: bool


def labelled_fields(text: str) -> list[Field]:
    """Return the numbers in `text` with their labels and units, or nothing.

    A number whose label cannot be told for sure (a line that names some of its numbers before and some behind) has an
    empty label, and its place in the line as its key.
    """
    text = _TAGS.sub(" ", text)
    items, tail = _items(_GLUE.sub(" ", text) if _GLUED.fullmatch(text) else text)
    if not items or (len(items) == 1 and not items[0].unit and not _label(items[0].before)):
        return []
    labels = _labels(items, tail)
    fields = []
    for at, (item, label) in enumerate(zip(items, labels, strict=True), 1):
        key = f"{label or f'number {at}'} {item.unit}".strip()
        fields.append(Field(key=key, label=label, unit=item.unit, number=item.number))
    return fields


def _items(text: str) -> tuple[list[_Item], str]:
    """Return the numbers, each with the text before it, and the text behind the last."""
    items: list[_Item] = []
    begin = 0
    for found in _ITEM.finditer(text):
        number = read_number(found["number"])
        is_ordinal = found["number"].isdecimal() and not found["unit"] and _ORDINAL.match(text, found.end())
        if number is not None and not is_ordinal:
            is_letter = found["unit"] is not None and len(found["unit"]) == 1 and text[found.start("unit") - 1] == " "
            items.append(_Item(number, read_unit(found["unit"] or ""), text[begin : found.start()], is_letter))
            begin = found.end()
    return [_without_label(item, after) for item, after in zip_longest(items, items[1:])], text[begin:]


def _without_label(item: _Item, after: _Item | None) -> _Item:
    """Return the item without a unit that may as well be the name of the next number: "C 35 F 95"."""
    is_name = item.is_letter and item.unit != "%" and after and not after.unit and not after.before.strip()
    return replace(item, unit="") if is_name else item


def _labels(items: Sequence[_Item], tail: str) -> list[str]:
    before = [_label(item.before) for item in items]
    behind = [*before[1:], _label(tail)]
    is_connected = [bool(_CONNECTED.search(item.before)) for item in items]
    if not before[0] and all(behind) and not any(is_connected):
        return behind
    is_doubtful = not before[0] or bool(read_label(behind[-1]).quantities)
    labels = [
        label if connected or not is_doubtful else "" for label, connected in zip(before, is_connected, strict=True)
    ]
    return [_inherited(items, labels, at) for at in range(len(items))]


def _inherited(items: Sequence[_Item], labels: Sequence[str], at: int) -> str:
    """Return the label of an item, or that of the item before if this is the same in another unit: "21 °C / 70 °F"."""
    if labels[at] or at == 0 or _label(items[at].before):
        return labels[at]
    here, there = UNITS.get(items[at].unit), UNITS.get(items[at - 1].unit)
    is_same = here and there and here.dimension == there.dimension and here != there
    return labels[at - 1] if is_same else ""


def _label(text: str) -> str:
    """Return the last piece of `text` that has a letter or a unit sign in it."""
    pieces = [_UNREAD.sub("", piece.strip(_EDGES)) for piece in _BREAKS.split(text.rstrip(_EDGES))]
    named = [piece for piece in pieces if any(c.isalpha() or c == "%" for c in piece)]
    return " ".join(named[-1].split()) if named else ""
