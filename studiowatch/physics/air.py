"""The air at one moment, as every model here takes it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from statistics import fmean
from typing import TypeVar

from studiowatch.physics.ranges import Array


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
    age_s : float or None
        How long ago temperature and humidity were read where nothing has measured them since, s; None where they are
        measured as they go. The air may have strayed from them, the further the older they are.
    speed_is_measured : bool
        Whether `air_speed_m_s` was measured; else it is what a room with nothing on is taken to have.
    """

    temperature_C: float
    humidity_pct: float
    air_speed_m_s: float = 0.05
    pressure_Pa: float = 101325.0
    age_s: float | None = None
    speed_is_measured: bool = True

    def aged(self, by_s: float) -> Air:
        """Return the same air read `by_s` longer ago, where nothing measures it as it goes."""
        return self if self.age_s is None else replace(self, age_s=self.age_s + by_s)


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class AirDraws:
    """An air that is not known but drawn: one value for each draw of a film. Two are the same only if they are one.

    Attributes
    ----------
    temperature_C, humidity_pct, air_speed_m_s : ndarray, (draws,)
        °C, %, m/s.
    pressure_Pa : float
        Pa.
    """

    temperature_C: Array
    humidity_pct: Array
    air_speed_m_s: Array
    pressure_Pa: float = 101325.0


AnyAir = Air | AirDraws
Speed = TypeVar("Speed", float, Array)


def carried(speed_m_s: Speed) -> Speed:
    """Return what air of a speed carries off a film, in a measure of its own; the speed must not be negative.

    Laminar flow along a plate carries with the root of its speed, see `plate_transfer.forced_nusselt`.
    """
    root: Speed = speed_m_s**0.5
    return root


def speed_that_carries(share: float) -> float:
    """Return the speed, m/s, of which `carried` is `share`."""
    return share**2


def steady_speed(speeds_m_s: Sequence[float]) -> float:
    """Return the steady speed, m/s, that carries off as much as these in turn, each for as long.

    A film in gusts dries slower than in their mean.
    """
    steady_m_s = speed_that_carries(fmean(map(carried, speeds_m_s)))
    return min(max(steady_m_s, min(speeds_m_s)), max(speeds_m_s))  # a speed that stays is that speed, free of rounding
