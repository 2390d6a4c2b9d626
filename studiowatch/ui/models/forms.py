"""What she types, checked: one sentence for what cannot be taken, naming the field."""

from __future__ import annotations

from math import isfinite


class FormError(ValueError):
    """One field cannot be taken; the message is one sentence for her."""

    def __init__(self, field: str, sentence: str) -> None:
        super().__init__(sentence)
        self.field = field


def number(text: str, *, field: str, name: str, unit: str, low: float, high: float, example: str) -> float:
    """Return the number in `text`, with a point or a comma.

    Raises
    ------
    FormError
        If it is no number, or outside `low` to `high`.
    """
    allowed = f"type a number from {low:g} to {high:g}, such as {example}"
    try:
        value = float(text.strip().replace(",", "."))
    except ValueError:
        said = f"is “{text.strip()}”" if text.strip() else "is empty"
        raise FormError(field, f"{name} {said}: {allowed} {unit}.") from None
    if not isfinite(value) or not low <= value <= high:
        raise FormError(field, f"{name} is {text.strip()} {unit}: {allowed}.")
    return value


def optional_number(
    text: str, *, field: str, name: str, unit: str, low: float, high: float, example: str
) -> float | None:
    """Return the number in `text`, or None if it is empty."""
    if not text.strip():
        return None
    return number(text, field=field, name=name, unit=unit, low=low, high=high, example=example)
