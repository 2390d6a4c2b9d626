"""Lengths, films and volumes as she types them: in the unit that she chose, or in one that she writes behind it."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass

from studiowatch.speech.units import FLUID_OUNCE_ML, INCH_CM, MIL_UM, chosen
from studiowatch.ui.models.forms import number

_WRITTEN = re.compile(r"(?P<number>.*?\d[.,]?)\s*(?P<unit>[^\d\s.,][^\d]*)")
_INCHES = ("in", "inch", "inches", "zoll", '"', "″")
LENGTHS_CM: Mapping[str, float] = {"mm": 0.1, "cm": 1.0, "m": 100.0, **dict.fromkeys(_INCHES, INCH_CM)}
FILMS_UM: Mapping[str, float] = {
    **dict.fromkeys(("µm", "μm", "um"), 1.0),  # the micro sign, the Greek letter, and what a keyboard has
    "mm": 1000.0,
    **dict.fromkeys(("mil", "mils"), MIL_UM),
}
VOLUMES_ML: Mapping[str, float] = {
    "ml": 1.0,
    "cl": 10.0,
    "l": 1000.0,
    **dict.fromkeys(("floz", "fl oz"), FLUID_OUNCE_ML),  # not said
}
GRAMS: Mapping[str, float] = {"g": 1.0, "kg": 1000.0}
_LIMIT_DIGITS = 4  # of a limit that was converted, as it is told
_EXAMPLE_DIGITS = 2


@dataclass(frozen=True, slots=True, kw_only=True)
class Unit:
    """A unit as she reads it, and how many of ours it is."""

    sign: str
    size: float


def length_unit() -> Unit:
    """Return the unit of a side, by centimetres."""
    return Unit(sign=chosen().length.value, size=chosen().length.cm)


def film_unit() -> Unit:
    """Return the unit of a film, by micrometres."""
    return Unit(sign=chosen().thickness.value, size=chosen().thickness.um)


def written_unit(text: str, known: Mapping[str, float], ours: Unit) -> tuple[str, Unit]:
    """Return what was typed without its unit, and that unit; without one of `known` it is `ours`."""
    found = _WRITTEN.fullmatch(text.strip())
    unit = "" if found is None else " ".join(found["unit"].split())
    if found is None or unit.casefold() not in known:
        return text, ours
    return found["number"], Unit(sign=unit, size=known[unit.casefold()])


def measured(
    text: str,
    *,
    field: str,
    name: str,
    known: Mapping[str, float],
    ours: Unit,
    low: float,
    high: float,
    example: float,
) -> float:
    """Return what was typed, in the unit that `known` goes by, as are `low`, `high` and `example`.

    Parameters
    ----------
    text : str
        A number, with a point or a comma; a unit of `known` may stand behind it, else it is in `ours`.
    known : mapping
        Sizes of the units that may be written, by their names in small letters.

    Raises
    ------
    FormError
        If it is no number, or outside `low` to `high`; it names the limits in the unit of what was typed.
    """
    bare, unit = written_unit(text, known, ours)
    value = number(
        bare,
        field=field,
        name=name,
        unit=unit.sign,
        low=_rounded(low / unit.size, _LIMIT_DIGITS),
        high=_rounded(high / unit.size, _LIMIT_DIGITS),
        example=f"{_rounded(example / unit.size, _EXAMPLE_DIGITS):g}",
    )
    return min(max(value * unit.size, low), high)  # the limits were rounded to be told


def _rounded(value: float, digits: int) -> float:
    return float(f"{value:.{digits}g}")


def shown_in(value: float, unit: Unit, digits: int = 6) -> str:
    """Return a stored figure as a form shows it: without needless places, to so many digits where it is converted."""
    return chosen().plain(value if unit.size == 1.0 else _rounded(value / unit.size, digits))
