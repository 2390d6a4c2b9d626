"""The air at one moment, as every model here takes it."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Air:
    """State of the air at a wet film.

    Attributes
    ----------
    temperature_C : float
        Dry-bulb temperature, °C.
    humidity_pct : float
        Relative humidity over water, %.
    air_speed_m_s : float
        Mean speed past the film, m/s. Still air is the sensor's floor, not zero.
    pressure_Pa : float
        Barometric pressure, Pa.
    """

    temperature_C: float
    humidity_pct: float
    air_speed_m_s: float = 0.05
    pressure_Pa: float = 101325.0
