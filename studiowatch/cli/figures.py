"""Figures that a call gave or the records hold, as she reads them: as they were typed in metric, rounded otherwise."""

from __future__ import annotations

from dataclasses import replace

from studiowatch.speech.units import METRIC, US, Degrees, Length, Speed, Thickness, Units, Volume, chosen

SYSTEMS = {"us": US, "metric": METRIC}
"""The units that a call may ask for as a whole."""


def in_system(name: str) -> Units:
    """Return the units of a system; the decimal sign stays the one that she chose."""
    return replace(SYSTEMS[name], numbers=chosen().numbers)


def temperature(temperature_C: float) -> str:
    """Return a temperature, "20.55 °C", "69 °F"."""
    units = chosen()
    return f"{units.plain(temperature_C)} °C" if units.degrees is Degrees.CELSIUS else units.limit(temperature_C)


def air_speed(speed_m_s: float) -> str:
    """Return a speed of the air, "0.05 m/s", "10 ft/min"."""
    units = chosen()
    is_metric = units.speed is Speed.METRES_PER_SECOND
    return f"{units.plain(speed_m_s)} m/s" if is_metric else units.air_speed_limit(speed_m_s)


def film(thickness_um: float) -> str:
    """Return the thickness of a film, "90.5 µm", "3.6 mil"."""
    units = chosen()
    is_metric = units.thickness is Thickness.MICROMETRES
    return f"{units.plain(thickness_um)} µm" if is_metric else units.film(thickness_um)


def volume(volume_mL: float) -> str:
    """Return a volume, "12.5 mL", "0.42 fl oz"."""
    units = chosen()
    return f"{units.plain(volume_mL)} mL" if units.volume is Volume.MILLILITRES else units.poured(volume_mL)


def square(side_m: float) -> str:
    """Return the sides of a square, "0.3 × 0.3 m", "11.8 × 11.8 in"."""
    units = chosen()
    if units.length is Length.CENTIMETRES:
        return f"{units.plain(side_m)} × {units.plain(side_m)} m"
    return units.size(100.0 * side_m, 100.0 * side_m)
