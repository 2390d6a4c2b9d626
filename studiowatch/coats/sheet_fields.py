"""Typed fields out of parsed TOML: whatever is wrong is written down as one sentence and reading goes on."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from math import isfinite
from typing import TypeVar

Choice = TypeVar("Choice", bound=StrEnum)


@dataclass(frozen=True, slots=True)
class Range:
    """What a numeric field may hold."""

    low: float
    high: float
    unit: str
    required: bool = False
    whole: bool = False

    def __str__(self) -> str:
        noun = "a whole number" if self.whole else "a number"
        return f"it must be {noun} from {self.low:g} to {self.high:g} {self.unit}"


class Fields:
    """Takes the fields out of one parsed sheet and gathers what is wrong with them in `faults`."""

    def __init__(self, raw: Mapping[str, object], origin: str) -> None:
        self._raw = raw
        self._origin = origin
        self.faults: list[str] = []

    def fault(self, field: str, trouble: str) -> None:
        """Write down one fault."""
        self.faults.append(f"{self._origin}: {field} {trouble}")

    def refuse_others_than(self, known: tuple[str, ...]) -> None:
        """Write down a fault for every field that is not known: most are misspelt."""
        for field in self._raw:
            if field not in known:
                self.fault(field, f"is not a field of a data sheet; the fields are {', '.join(sorted(known))}")

    def text(self, field: str, *, required: bool = False) -> str:
        """Return a text, "" if there is none."""
        value = self._raw.get(field, "")
        if not isinstance(value, str):
            self.fault(field, f"is {value!r}; it must be text in quotes")
            return ""
        if required and not value.strip():
            self.fault(field, "is missing; it must be text in quotes")
        return value.strip()

    def choice(self, field: str, choices: type[Choice]) -> Choice | None:
        """Return one of `choices`, or None if the field is absent or wrong."""
        value = self._raw.get(field)
        if value is None:
            return None
        if isinstance(value, str) and value in list(choices):
            return choices(value)
        self.fault(field, f"is {value!r}; it must be one of {', '.join(choices)}")
        return None

    def number(self, field: str, allowed: Range) -> float | None:
        """Return a number inside `allowed`, or None if the field is absent or wrong."""
        value = self._raw.get(field)
        if value is None:
            if allowed.required:
                self.fault(field, f"is missing; {allowed}")
            return None
        number = _number(value)
        if number is None or (allowed.whole and number != int(number)):
            self.fault(field, f"is {value!r}; {allowed}")
            return None
        if not allowed.low <= number <= allowed.high:
            self.fault(field, f"is {number:g} {allowed.unit}; {allowed}")
            return None
        return number

    def interval(self, field: str, allowed: Range) -> tuple[float, float] | None:
        """Return [least, greatest], or None if the field is absent or wrong."""
        value = self._raw.get(field)
        if value is None:
            return None
        ends = [_number(end) for end in value] if isinstance(value, list) else []
        match ends:
            case [float(low), float(high)] if allowed.low <= low < high <= allowed.high:
                return low, high
        self.fault(
            field,
            f"is {value!r}; it must be [least, greatest], both from {allowed.low:g} to {allowed.high:g} {allowed.unit}",
        )
        return None

    def flag(self, field: str) -> bool:
        """Return true or false, false if the field is absent."""
        value = self._raw.get(field, False)
        if isinstance(value, bool):
            return value
        self.fault(field, f"is {value!r}; it must be true or false")
        return False

    def sentences(self, field: str) -> tuple[str, ...]:
        """Return a list of sentences, empty if the field is absent."""
        value = self._raw.get(field, [])
        if isinstance(value, list) and all(isinstance(line, str) for line in value):
            return tuple(value)
        self.fault(field, f"is {value!r}; it must be a list of sentences in quotes")
        return ()


def _number(value: object) -> float | None:
    """Return a finite number, or None for anything else; true and false are no numbers here."""
    if isinstance(value, int | float) and not isinstance(value, bool) and isfinite(value):
        return float(value)
    return None
