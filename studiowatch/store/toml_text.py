"""Values as TOML reads them."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date, datetime
from typing import Any


def as_toml(value: Any) -> str:  # noqa: ANN401
    """Return a value of the file as TOML reads it."""
    readers: Mapping[type, Callable[[Any], str]] = {
        bool: lambda flag: "true" if flag else "false",
        float: lambda number: str(int(number)) if number.is_integer() else repr(number),
        int: str,
        date: date.isoformat,
        datetime: lambda moment: moment.isoformat(timespec="auto").replace("+00:00", "Z"),
        tuple: lambda each: "[" + ", ".join(map(as_toml, each)) + "]",
        dict: lambda table: "{" + ", ".join(f"{_quoted(key)} = {as_toml(each)}" for key, each in table.items()) + "}",
    }
    writer = readers.get(type(value))
    return writer(value) if writer else _quoted(str(value))


_ESCAPES = {
    '"': '\\"',
    "\\": "\\\\",
    "\b": "\\b",
    "\t": "\\t",
    "\n": "\\n",
    "\f": "\\f",
    "\r": "\\r",
}  # TOML 1.0, "String"


def _quoted(text: str) -> str:
    return '"' + "".join(_ESCAPES.get(character) or _plain(character) for character in text) + '"'


def _plain(character: str) -> str:
    """Escape what TOML 1.0 does not allow as it is: the control characters, delete among them."""
    return f"\\u{ord(character):04x}" if character < " " or character == "\x7f" else character
