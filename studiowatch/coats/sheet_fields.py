"""Typed fields out of parsed TOML: whatever is wrong is written down as one sentence and reading goes on."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from enum import StrEnum
from math import isfinite
from typing import TypeVar

from studiowatch.coats.sheet_units import hint, in_ours, meant_field
from studiowatch.speech.words import mark, say

Choice = TypeVar("Choice", bound=StrEnum)
_NO_FIELD = mark("{field} is not a field of a data sheet; {mend}")
_MISSING = mark("{field} is missing; {needed}")
_NO_TEXT = mark("{field} is {value}; it must be text in quotes")
_NO_NUMBER = mark("{field} is {value}; {allowed}")


@dataclass(frozen=True, slots=True)
class Range:
    """What a numeric field may hold."""

    low: float
    high: float
    unit: str
    required: bool = False
    whole: bool = False

    def __str__(self) -> str:
        figures = {"low": f"{self.low:g}", "high": f"{self.high:g}", "unit": say(self.unit)}
        if self.whole:
            return say("it must be a whole number from {low} to {high} {unit}", **figures)
        return say("it must be a number from {low} to {high} {unit}", **figures)


class Fields:
    """Takes the fields out of one parsed sheet and gathers what is wrong with them in `faults`."""

    def __init__(self, raw: Mapping[str, object], origin: str) -> None:
        self._raw = raw
        self._origin = origin
        self._meant: set[str] = set()
        self.faults: list[str] = []

    def fault(self, template: str, field: str, **values: object) -> None:
        """Write down one fault: a marked sentence about "{field}"."""
        sentence = say(template, about="", field=field, **values)
        self.faults.append(f"{self._origin}: {sentence}")

    def refuse_others_than(self, known: Collection[str]) -> None:
        """Write down a fault for every field that is not known, with the one that was meant: most are misspelt.

        A field that was meant by another name is not called missing later on.
        """
        for key, value in self._raw.items():
            if key not in known:
                self.fault(_NO_FIELD, key, mend=self._mended(key, value, known))

    def _mended(self, key: str, value: object, known: Collection[str]) -> str:
        """Return what to write instead of a field that is not known."""
        meant = meant_field(key)
        field = meant[0] if meant else nearest(key, known)
        if field is None:
            return say("the fields are {fields}", fields=", ".join(sorted(known)))
        if field in self._raw:
            return say("{field} is, and is there already: take this line out", field=field)
        self._meant.add(field)
        numbers = numbers_in(value)
        if meant and numbers:
            return say("write {field} = {value}", field=field, value=in_ours(meant[1], *numbers))
        return say("the nearest is {field}", field=field)

    def missing(self, field: str, needed: str) -> None:
        """Write down that a field is missing, unless it is there under a name that was refused."""
        if field not in self._meant:
            self.fault(_MISSING, field, needed=needed)

    def text(self, field: str, *, required: bool = False) -> str:
        """Return a text, "" if there is none."""
        value = self._raw.get(field, "")
        if not isinstance(value, str):
            self.fault(_NO_TEXT, field, value=repr(value))
            return ""
        if required and not value.strip():
            self.missing(field, say("it must be text in quotes"))
        return value.strip()

    def choice(self, field: str, choices: type[Choice]) -> Choice | None:
        """Return one of `choices`, or None if the field is absent or wrong."""
        value = self._raw.get(field)
        if value is None:
            return None
        if isinstance(value, str) and value in list(choices):
            return choices(value)
        self.fault(
            mark("{field} is {value}; it must be one of {choices}"),
            field,
            value=repr(value),
            choices=", ".join(choices),
        )
        return None

    def number(self, field: str, allowed: Range) -> float | None:
        """Return a number inside `allowed`, or None if the field is absent or wrong."""
        value = self._raw.get(field)
        if value is None:
            if allowed.required:
                self.missing(field, str(allowed))
            return None
        number = _number(value)
        if number is None or (allowed.whole and number != int(number)):
            self.fault(_NO_NUMBER, field, value=repr(value), allowed=str(allowed))
            return None
        if not allowed.low <= number <= allowed.high:
            told = f"{number:g} {say(allowed.unit)}"
            self.fault(_NO_NUMBER, field, value=told, allowed=f"{allowed}{hint(field, number)}")
            return None
        return number

    def interval(self, field: str, allowed: Range) -> tuple[float, float] | None:
        """Return [least, greatest], or None if the field is absent or wrong."""
        value = self._raw.get(field)
        if value is None:
            return None
        ends = numbers_in(value)
        match ends:
            case (low, high) if allowed.low <= low < high <= allowed.high:
                return low, high
        self.fault(
            mark("{field} is {value}; it must be [least, greatest], both from {low} to {high} {unit}{hint}"),
            field,
            value=repr(value),
            low=f"{allowed.low:g}",
            high=f"{allowed.high:g}",
            unit=say(allowed.unit),
            hint=hint(field, *ends),
        )
        return None

    def flag(self, field: str) -> bool:
        """Return true or false, false if the field is absent."""
        value = self._raw.get(field, False)
        if isinstance(value, bool):
            return value
        self.fault(mark("{field} is {value}; it must be true or false"), field, value=repr(value))
        return False

    def sentences(self, field: str) -> tuple[str, ...]:
        """Return a list of sentences, empty if the field is absent."""
        value = self._raw.get(field, [])
        if isinstance(value, list) and all(isinstance(line, str) for line in value):
            return tuple(value)
        self.fault(mark("{field} is {value}; it must be a list of sentences in quotes"), field, value=repr(value))
        return ()

    def notes(self, field: str, known: Collection[str]) -> None:
        """Make sure that a table of notes on fields, if there is one, holds text on fields that are `known`."""
        value = self._raw.get(field, {})
        if not isinstance(value, Mapping):
            self.fault(
                mark('{field} is {value}; it must be a table [{field}] of field = "where the number comes from"'),
                field,
                value=repr(value),
            )
            return
        for key, note in value.items():
            if not isinstance(note, str):
                self.fault(_NO_TEXT, f"{field}.{key}", value=repr(note))
            elif key not in known:
                close = nearest(key, known)
                mend = say("name a field of the sheet") if close is None else say("the nearest is {field}", field=close)
                self.fault(mark("{field} is about no field of a data sheet; {mend}"), f"{field}.{key}", mend=mend)


def nearest(key: str, known: Collection[str]) -> str | None:
    """Return the name in `known` that `key` is most likely meant for, or None if none is near."""
    by_lower = {name.lower(): name for name in known}
    close = get_close_matches(key.lower().replace("-", "_"), by_lower, n=1)
    return by_lower[close[0]] if close else None


def numbers_in(value: object) -> tuple[float, ...]:
    """Return a number, or a list of numbers, as a tuple; empty if there is anything else in it."""
    numbers = [_number(one) for one in (value if isinstance(value, list) else [value])]
    return tuple(number for number in numbers if number is not None) if None not in numbers else ()


def _number(value: object) -> float | None:
    """Return a finite number, or None for anything else; true and false are no numbers here."""
    if not isinstance(value, int | float) or isinstance(value, bool):
        return None
    try:
        number = float(value)
    except OverflowError:  # a whole number of more than 308 digits
        return None
    return number if isfinite(number) else None
