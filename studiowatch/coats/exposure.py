"""The air at the film, per draw: what the board says, with what it cannot know about the film's own place."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property, lru_cache
from math import exp, hypot, sqrt

import numpy as np

from studiowatch.coats.bound_water import water_content
from studiowatch.coats.draws import AIR_SPEED_SPREAD, HUMIDITY_SPREAD_PCT, TEMPERATURE_SPREAD_K, Draws
from studiowatch.physics.air import Air, AirDraws, AnyAir
from studiowatch.physics.constants import ZERO_CELSIUS_K
from studiowatch.physics.moist_air import HUMIDITY_PCT, PRESSURE_PA
from studiowatch.physics.plate_transfer import Face, PlateAir, plate_air
from studiowatch.physics.ranges import Array, check, within
from studiowatch.speech.words import mark

COVER_SPEED_FACTOR = 0.5  # air speed under a mesh cover over that beside it; assumption
TEMPERATURE_C = (-20.0, 50.0)  # °C, air in which a coat can be followed
SPEED_M_S = (0.0, 20.0)  # m/s
AGE_S = (0.0, 1.0e10)  # s, of a reading
# How far a room strays from a reading that nothing followed: s.d. D √(1 - exp(-age / τ)), the exponential variogram of
# a room that wanders about a mean of its own. D is √2 times the s.d. of the room through days, and the first hour adds
# about 1 K and 4 %RH. To be fitted to rooms that a board has logged.
STRAY_K = 2.5  # K, D of the temperature; assumption
STRAY_PCT = 10.0  # %RH, D of the humidity; assumption
STRAY_S = 6.0 * 3600.0  # s, τ; assumption
UNMEASURED_SPEED_SPREAD = 0.7  # s.d. of ln air speed where nobody measures it: twice a sensor's; assumption
FIRST_AHEAD_S = 1800.0  # s, in which the air ahead of a film ages first; each span after it is as long as all before


def check_air(air: AnyAir) -> None:
    """Make sure that a coat can be followed in this air.

    Raises
    ------
    OutOfRange
        Names the quantity, its value, the unit and the allowed range; NaN is refused.
    """
    if isinstance(air, AirDraws):
        within(mark("air temperature"), air.temperature_C, *TEMPERATURE_C, "°C")
        within(mark("humidity"), air.humidity_pct, *HUMIDITY_PCT, "%")
        within(mark("air speed"), air.air_speed_m_s, *SPEED_M_S, "m/s")
        check(mark("pressure"), air.pressure_Pa, *PRESSURE_PA, "Pa")
        return
    check(mark("air temperature"), air.temperature_C, *TEMPERATURE_C, "°C")
    check(mark("humidity"), air.humidity_pct, *HUMIDITY_PCT, "%")
    check(mark("air speed"), air.air_speed_m_s, *SPEED_M_S, "m/s")
    check(mark("pressure"), air.pressure_Pa, *PRESSURE_PA, "Pa")
    if air.age_s is not None:
        check(mark("age of the reading"), air.age_s, *AGE_S, "s")


def stray(age_s: float, furthest: float) -> float:
    """Return how far a room has strayed from a reading of this age, one s.d.

    Parameters
    ----------
    furthest : float
        The s.d. that it levels off at: `STRAY_K` or `STRAY_PCT`.
    """
    return furthest * sqrt(1.0 - exp(-age_s / STRAY_S))


def ahead(air: Air, horizon_s: float) -> Iterator[tuple[Air, float]]:
    """Yield the air that a film is in up to `horizon_s` from now, and how long, s: it stays, but a reading ages."""
    if air.age_s is None:
        yield air, horizon_s
        return
    at_s = 0.0
    while at_s < horizon_s:
        span_s = min(max(at_s, FIRST_AHEAD_S), horizon_s - at_s)
        yield air.aged(at_s + span_s), span_s
        at_s += span_s


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


@lru_cache(maxsize=4)  # up to a megabyte each; 16 found no more
def airs_at_film(airs: tuple[AnyAir, ...], draws: Draws) -> Airs:
    """Return these airs, unchecked, one after another; the same question gives the same object."""
    air_C, humidity = _stacked(airs, len(draws))
    reach, reach_of_humidity = np.array([_reaches(air) for air in airs]).T[:, :, np.newaxis]
    at_film = humidity + reach_of_humidity * (draws.humidity_offset_pct / 100.0)
    return Airs(
        air_K=(air_C + ZERO_CELSIUS_K) + reach * draws.temperature_offset_K,
        humidity=np.clip(at_film, 0.0, 1.0, out=at_film),
    )


def _stacked(airs: tuple[AnyAir, ...], count: int) -> Array:
    """Return temperature, °C, and humidity, 0-1, of each air: (2, airs, draws), or 1 draw where none is drawn."""
    if not any(isinstance(air, AirDraws) for air in airs):
        return np.array([(air.temperature_C, air.humidity_pct / 100.0) for air in airs]).T[:, :, np.newaxis]
    stacked = np.empty((2, len(airs), count))
    for row, air in enumerate(airs):
        stacked[0, row], stacked[1, row] = air.temperature_C, air.humidity_pct
    stacked[1] /= 100.0
    return stacked


def _reaches(air: AnyAir) -> tuple[float, float]:
    """Return how many times as far as in measured air the draws' offsets of temperature and humidity reach."""
    if isinstance(air, AirDraws) or air.age_s is None:
        return 1.0, 1.0
    stray_K, stray_pct = stray(air.age_s, STRAY_K), stray(air.age_s, STRAY_PCT)
    return hypot(1.0, stray_K / TEMPERATURE_SPREAD_K), hypot(1.0, stray_pct / HUMIDITY_SPREAD_PCT)


@lru_cache(maxsize=32)
def air_at_film(air: AnyAir, draws: Draws, *, covered: bool, side_m: float, face: Face) -> PlateAir:
    """Return the transfer at a piece in this air, one value per draw; the same question gives the same object.

    Air slower than the sensor can tell is taken as its floor, which itself differs from draw to draw. The older the
    reading, the further each draw's own offset reaches; air speed that is not measured is spread wider.

    Raises
    ------
    OutOfRange
        As `check_air`.
    """
    check_air(air)
    driest_pct, dampest_pct = HUMIDITY_PCT
    speed_factor = draws.air_speed_factor
    if isinstance(air, Air) and not air.speed_is_measured:
        speed_factor = speed_factor ** (UNMEASURED_SPEED_SPREAD / AIR_SPEED_SPREAD)
    reach, reach_of_humidity = _reaches(air)
    humidity_pct = air.humidity_pct + reach_of_humidity * draws.humidity_offset_pct
    speed = np.maximum(air.air_speed_m_s * speed_factor, draws.air_speed_floor_m_s)
    return plate_air(
        temperature_C=air.temperature_C + reach * draws.temperature_offset_K,
        humidity_pct=np.minimum(np.maximum(humidity_pct, driest_pct), dampest_pct),
        air_speed_m_s=speed * COVER_SPEED_FACTOR if covered else speed,
        pressure_Pa=np.full(len(draws), air.pressure_Pa),
        side_m=side_m,
        face=face,
    )
