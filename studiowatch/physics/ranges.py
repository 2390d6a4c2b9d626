"""Numbers that come from outside are checked here once: finite, and inside the range that a formula is good for."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from studiowatch.speech.units import chosen
from studiowatch.speech.words import say

Array = NDArray[np.float64]
Mask = NDArray[np.bool_]


class OutOfRange(ValueError):  # noqa: N818 - a plain word for a plain fault
    """A value lies outside what the formulas allow, or is not a number. The message is one sentence for the user."""


def within(name: str, value: ArrayLike, low: float, high: float, unit: str) -> Array:
    """Return `value` as an array of floats, having made sure that all of it lies in [`low`, `high`].

    `name` and `unit` are in English, marked for the translators where they have words.

    Raises
    ------
    OutOfRange
        Names the first offending value, the unit and the allowed range. NaN is refused.
    """
    values = np.asarray(value, dtype=np.float64)
    inside = (values >= low) & (values <= high)
    if not inside.all():
        raise _out_of_range(name, float(values[~inside].flat[0]), low, high, unit)
    return values


def check(name: str, value: float, low: float, high: float, unit: str) -> None:
    """Make sure that one number lies in [`low`, `high`]: `within` for a single value, and quick.

    Raises
    ------
    OutOfRange
        As `within`.
    """
    if not low <= value <= high:
        raise _out_of_range(name, value, low, high, unit)


def _out_of_range(name: str, value: float, low: float, high: float, unit: str) -> OutOfRange:
    figures = {"value": chosen().plain(value), "low": chosen().plain(low), "high": chosen().plain(high)}
    return OutOfRange(
        say(
            "{name} is {value} {unit}; it must be a number from {low} to {high} {unit}",
            name=say(name),
            unit=say(unit),
            **figures,
        )
    )
