"""Figures of the room beyond those that have a form of their own, as she reads them."""

from __future__ import annotations

from studiowatch.speech.units import Degrees, chosen


def degrees(temperature_C: float) -> str:
    """Return a temperature without its sign, for one end of a range: "18", "64.4"."""
    units = chosen()
    return units.plain(round(units.degrees.from_celsius(temperature_C), 1))


def pace(speed_m_s: float) -> str:
    """Return a speed of the air without its unit, for one end of a range: "0.15", "30"."""
    units = chosen()
    return units.plain(round(units.speed.from_si(speed_m_s), units.speed.places))


def span(difference_K: float, places: int | None = None) -> str:
    """Return how far two temperatures lie apart, in K for who reads °C: "3 K", "5.4 °F"; or with so many places."""
    units = chosen()
    value = difference_K * units.degrees.per_K
    sign = "K" if units.degrees is Degrees.CELSIUS else units.degrees.value
    return f"{units.plain(round(value, 1)) if places is None else units.number(value, places)} {sign}"
