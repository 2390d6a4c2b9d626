"""What she types, checked: one sentence for what cannot be taken, naming the field."""

from __future__ import annotations

from math import isfinite

from studiowatch.speech.units import chosen
from studiowatch.speech.words import say


class FormError(ValueError):
    """One field cannot be taken; the message is one sentence for her."""

    def __init__(self, field: str, sentence: str) -> None:
        super().__init__(sentence)
        self.field = field


def number(text: str, *, field: str, name: str, unit: str, low: float, high: float, example: str) -> float:
    """Return the number in `text`, with a point or a comma; `low`, `high` and `example` are in `unit` as it is typed.

    Raises
    ------
    FormError
        If it is no number, or outside `low` to `high`.
    """
    units = chosen()
    said = {
        "name": name,
        "typed": text.strip(),
        "low": units.plain(low),
        "high": units.plain(high),
        "example": example.replace(".", units.numbers.value),
        "unit": unit,
    }
    try:
        value = float(text.strip().removesuffix(unit).replace(",", "."))
    except ValueError:
        raise FormError(field, _no_number(said)) from None
    if not isfinite(value) or not low <= value <= high:
        sentence = say("{name} is {typed} {unit}: type a number from {low} to {high}, such as {example}.", **said)
        raise FormError(field, sentence)
    return value


def _no_number(said: dict[str, str]) -> str:
    if not said["typed"]:
        return say("{name} is empty: type a number from {low} to {high}, such as {example} {unit}.", **said)
    return say("{name} is “{typed}”: type a number from {low} to {high}, such as {example} {unit}.", **said)
