"""The air at the film, per draw: what the board says, with what it cannot know about the film's own place."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property, lru_cache

import numpy as np

from studiowatch.coats.bound_water import water_content
from studiowatch.coats.draws import Draws
from studiowatch.physics.air import Air
from studiowatch.physics.constants import ZERO_CELSIUS_K
from studiowatch.physics.moist_air import HUMIDITY_PCT, PRESSURE_PA
from studiowatch.physics.plate_transfer import Face, PlateAir, plate_air
from studiowatch.physics.ranges import Array, check

COVER_SPEED_FACTOR = 0.5  # air speed under a mesh cover over that beside it; assumption
TEMPERATURE_C = (-20.0, 50.0)  # °C, air in which a coat can be followed
SPEED_M_S = (0.0, 20.0)  # m/s


def check_air(air: Air) -> None:
    """Make sure that a coat can be followed in this air.

    Raises
    ------
    OutOfRange
        Names the quantity, its value, the unit and the allowed range; NaN is refused.
    """
    check("air temperature", air.temperature_C, *TEMPERATURE_C, "°C")
    check("humidity", air.humidity_pct, *HUMIDITY_PCT, "%")
    check("air speed", air.air_speed_m_s, *SPEED_M_S, "m/s")
    check("pressure", air.pressure_Pa, *PRESSURE_PA, "Pa")


@dataclass(frozen=True, kw_only=True, eq=False)
class Airs:
    """The airs of steps one after another at a film that has nothing free, for which no flow matters.

    Attributes
    ----------
    air_K, humidity : ndarray, (steps, draws)
        Temperature, K, and share of saturation, 0-1.
    """

    air_K: Array
    humidity: Array

    @cached_property
    def inverse_K(self) -> Array:
        """Inverse temperature, 1/K."""
        return 1.0 / self.air_K

    @cached_property
    def kept(self) -> Array:
        """Bound water that dry polymer keeps in each air, kg/kg."""
        return water_content(self.humidity)


@lru_cache(maxsize=16)
def airs_at_film(airs: tuple[Air, ...], draws: Draws) -> Airs:
    """Return these airs, unchecked, one after another; the same question gives the same object."""
    air_C, humidity = np.array([(air.temperature_C, air.humidity_pct / 100.0) for air in airs]).T[:, :, np.newaxis]
    at_film = humidity + draws.humidity_offset_pct / 100.0
    return Airs(
        air_K=(air_C + ZERO_CELSIUS_K) + draws.temperature_offset_K, humidity=np.clip(at_film, 0.0, 1.0, out=at_film)
    )


@lru_cache(maxsize=256)
def air_at_film(air: Air, draws: Draws, *, covered: bool, side_m: float, face: Face) -> PlateAir:
    """Return the transfer at a piece in this air, one value per draw; the same question gives the same object.

    Air slower than the sensor can tell is taken as its floor, which itself differs from draw to draw.

    Raises
    ------
    OutOfRange
        As `check_air`.
    """
    check_air(air)
    driest_pct, dampest_pct = HUMIDITY_PCT
    speed = np.maximum(air.air_speed_m_s * draws.air_speed_factor, draws.air_speed_floor_m_s)
    return plate_air(
        temperature_C=air.temperature_C + draws.temperature_offset_K,
        humidity_pct=np.minimum(np.maximum(air.humidity_pct + draws.humidity_offset_pct, driest_pct), dampest_pct),
        air_speed_m_s=speed * COVER_SPEED_FACTOR if covered else speed,
        pressure_Pa=np.full(len(draws), air.pressure_Pa),
        side_m=side_m,
        face=face,
    )
