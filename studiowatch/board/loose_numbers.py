"""Numbers as sketches print them: points, commas, exponents, and the words that stand for "no value"."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass

_DIGITS = r"(?:[0-9]{1,3}(?:,[0-9]{3})+\.[0-9]+|[0-9]{1,3}(?:\.[0-9]{3})+,[0-9]+|[0-9]+(?:[.,][0-9]+)?|[.,][0-9]+)"
NUMBER = rf"[-+−]?{_DIGITS}(?:[eE][-+]?[0-9]+)?"  # a pattern for `re`, without groups
NOT_A_NUMBER = r"[-+]?(?:(?i:nan|inf(?:inity)?)|ovf)"  # what C and boards print for a float that is none
NO_VALUE = r"(?i:null|none|n/?a|error|err|fail(?:ed)?)|-{2,}|\?+|\*{2,}"  # what people let a sketch print instead

# sent in place of a value by common libraries when a sensor does not answer: from memory
SENTINELS = frozenset((-127.0, 998.0, 999.0, -999.0, 9999.0, -9999.0, -1000.0, 32767.0, 65535.0))

_NUMBER = re.compile(NUMBER)
_MISSING = re.compile(rf"{NOT_A_NUMBER}|{NO_VALUE}")
_THOUSANDS = re.compile(r"[-+−]?[1-9][0-9]{0,2}[.,][0-9]{3}")


@dataclass(frozen=True, slots=True)
class Number:
    """A number, or a word that stands where one should be.

    Attributes
    ----------
    value : float or None
        None if the text says that there is none (``nan``, ``inf``, ``null``, ``--``) or is beyond binary64.
    decimals : int
        Digits after the point or comma.
    doubtful_comma : bool
        True for ``1,013``: the comma may part thousands. `value` takes it for a decimal comma.
    """

    value: float | None
    decimals: int = 0
    doubtful_comma: bool = False


MISSING = Number(None)


@dataclass(frozen=True, slots=True, kw_only=True)
class Field:
    """A number of a line and what stands beside it.

    Attributes
    ----------
    key : str
        What it is known by from line to line: its label and unit, its path in JSON, or the number of its column.
    label : str
        The text that names it, or "".
    unit : str
        The unit behind it, as from `read_unit`, or "".
    """

    key: str
    number: Number
    label: str = ""
    unit: str = ""


def read_number(text: str) -> Number | None:
    """Return the number that `text` is, spaces around it allowed, or None if it is none."""
    text = text.strip()
    if _NUMBER.fullmatch(text):
        return _finite(text)
    return MISSING if not text or _MISSING.fullmatch(text) else None


def _finite(text: str) -> Number:
    if "," in text and "." in text:
        thousands = min(",.", key=text.index)
        text = text.replace(thousands, "")
    doubtful = "," in text and _THOUSANDS.fullmatch(text) is not None
    plain = text.replace(",", ".").replace("−", "-")
    value = float(plain)
    _, _, fraction = plain.lower().partition("e")[0].partition(".")
    return Number(value, len(fraction), doubtful) if math.isfinite(value) else MISSING


def from_float(value: float) -> Number:
    """Return the number for a `value` that a library read."""
    return _finite(repr(value)) if math.isfinite(value) else MISSING
