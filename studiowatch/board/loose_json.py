"""Numbers in a line of JSON, flat or nested, also where a sketch wrote what JSON does not allow."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Mapping

from studiowatch.board.loose_numbers import MISSING, Field, Number, from_float, read_number
from studiowatch.board.loose_units import UNIT, read_unit
from studiowatch.board.loose_words import read_label

_BARE_NAN = re.compile(r"(?<=[:,\[])\s*[-+]?(?i:nan|inf(?:inity)?|ovf)\s*(?=[,}\]])")
# words may stand before an object, not before a list, which may be a counter in brackets
_JSON = re.compile(r"(?:[^{\[]*(?=\{))?([{\[].*[}\]])[^0-9]*", re.DOTALL)
_VALUE_AND_UNIT = re.compile(rf"(.*?)\s*({UNIT})")
_NAME_KEYS = ("n", "name", "sensor", "type", "label", "quantity", "measurement")
_OWNER_KEYS = ("id", "node", "device", "board", *_NAME_KEYS)
_VALUE_KEYS = ("v", "value", "val", "reading")
_UNIT_KEYS = ("u", "unit", "units", "uom")


def json_fields(text: str) -> list[Field]:
    """Return the numbers in the JSON object or array that `text` holds, or nothing. Words around it are passed over."""
    body = _JSON.fullmatch(text)
    if not body:
        return []
    try:
        tree = json.loads(_BARE_NAN.sub("null", body[1]), parse_int=float, parse_constant=lambda _: None)
    except (ValueError, RecursionError):
        return []
    return list(_walk(tree, ()))


def _walk(tree: object, path: tuple[str, ...], owner: str = "") -> Iterator[Field]:
    """Yield the numbers under `tree`. `owner` tells ``{"id": "a", "t": 21}`` from ``{"id": "b", "t": 19}``."""
    if isinstance(tree, Mapping):
        named = _named_value(tree, path)
        if named:
            yield named
            return
        owner = " ".join(part for part in (owner, _text(tree, _OWNER_KEYS)) if part)
        for key, branch in tree.items():
            yield from _walk(branch, (*path, str(key)), owner)
    elif isinstance(tree, list):
        for at, branch in enumerate(tree, 1):
            yield from _walk(branch, (*path, str(at)), owner)
    else:
        yield from _leaf(tree, path, owner)


def _named_value(tree: Mapping[str, object], path: tuple[str, ...]) -> Field | None:
    """Return the field of an object such as ``{"n": "temp", "u": "Cel", "v": 21.4}``, or None if it is another one."""
    value_key = next((key for key in _VALUE_KEYS if key in tree), None)
    name = _text(tree, _NAME_KEYS)
    stated = read_unit(_text(tree, _UNIT_KEYS))
    number, after = _read_value(tree[value_key]) if value_key else (None, "")
    if number is None or not (stated or read_label(name).quantities):
        return None
    words = [*(part for part in path if not part.isdecimal()), *([name] if name else [])]
    unit = after or stated
    return Field(key=" ".join([*words, unit]).strip() or "1", label=" ".join(words), unit=unit, number=number)


def _text(tree: Mapping[str, object], keys: tuple[str, ...]) -> str:
    return next((value for key in keys if isinstance(value := tree.get(key), str)), "")


def _leaf(value: object, path: tuple[str, ...], owner: str) -> Iterator[Field]:
    number, unit = _read_value(value)
    if number is not None:
        is_list = all(part.isdecimal() for part in path)
        key = ".".join(path) or "1"
        yield Field(
            key=f"{owner}: {key}" if owner else key, label="" if is_list else " ".join(path), unit=unit, number=number
        )


def _read_value(value: object) -> tuple[Number | None, str]:
    """Return the number that a JSON value is, also inside a string and with a unit; (None, "") if it is none."""
    if value is None:
        return MISSING, ""
    if isinstance(value, float):
        return from_float(value), ""
    if not isinstance(value, str) or not value:
        return None, ""
    number = read_number(value)
    found = _VALUE_AND_UNIT.fullmatch(value) if number is None else None
    if found and found[1]:
        return read_number(found[1]), read_unit(found[2])
    return number, ""
