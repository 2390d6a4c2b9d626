"""The room otherwise: what of the air at the films is held from one time to another, and the air that comes of it.

`why` asks it of a log that lies behind, what-if of the room to come. Vapour stays when air is warmed or cooled and its
humidity is not held: the humidity then follows from the saturation pressure alone, and what is over 100 % condenses.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from math import inf
from typing import overload

import numpy as np

from studiowatch.physics.air import Air, AirDraws, AnyAir
from studiowatch.physics.moist_air import humidity_with, vapour_pressure
from studiowatch.physics.ranges import Array, OutOfRange, check
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say

STILL_M_S = 0.05  # m/s, air in a room with nothing on, where no calibrated sensor says more; assumption
TEMPERATURE_C = (5.0, 40.0)  # °C, at which a room may be held
HUMIDITY_PCT = (10.0, 95.0)  # %RH
AIR_SPEED_M_S = (0.0, 3.0)  # m/s


@dataclass(frozen=True, slots=True, kw_only=True)
class Otherwise:
    """What is held; None is as it comes.

    Attributes
    ----------
    temperature_C, humidity_pct, air_speed_m_s : float or None
        Held at that, °C, %RH, m/s.
    most_humidity_pct, most_air_speed_m_s : float or None
        Let come up to that, no higher: a dehumidifier, a fan that is off.
    from_ms, until_ms : int or None
        UTC ms between which it is held; None is from ever, and for good.

    Raises
    ------
    OutOfRange
        If no room can be held so: the quantity, its value, its unit and what is allowed.
    """

    temperature_C: float | None = None
    humidity_pct: float | None = None
    air_speed_m_s: float | None = None
    most_humidity_pct: float | None = None
    most_air_speed_m_s: float | None = None
    from_ms: int | None = None
    until_ms: int | None = None

    def __post_init__(self) -> None:
        for name, value, allowed, unit in (
            (mark("temperature of the room"), self.temperature_C, TEMPERATURE_C, "°C"),
            (mark("humidity of the room"), self.humidity_pct, HUMIDITY_PCT, "%"),
            (mark("speed of the air"), self.air_speed_m_s, AIR_SPEED_M_S, "m/s"),
            (mark("humidity of the room"), self.most_humidity_pct, HUMIDITY_PCT, "%"),
            (mark("speed of the air"), self.most_air_speed_m_s, AIR_SPEED_M_S, "m/s"),
        ):
            if value is not None:
                check(name, value, *allowed, unit)
        if self.until_ms is not None and self.until_ms <= (-inf if self.from_ms is None else self.from_ms):
            raise OutOfRange(say("The room cannot be held until a time that comes before it begins; give a later one."))

    @property
    def is_as_it_comes(self) -> bool:
        """Whether nothing is held."""
        return self == Otherwise(from_ms=self.from_ms, until_ms=self.until_ms)

    def holds_at(self, time_ms: float) -> bool:
        """Return whether the air of a UTC ms is held."""
        begins_ms = -inf if self.from_ms is None else self.from_ms
        return begins_ms <= time_ms < (inf if self.until_ms is None else self.until_ms)

    @overload
    def of(self, air: Air) -> Air: ...
    @overload
    def of(self, air: AirDraws) -> AirDraws: ...

    def of(self, air: AnyAir) -> AnyAir:
        """Return `air` with what is held, whatever the time.

        An air that nobody measures stays as uncertain as it is until both its temperature and its humidity are held.
        """
        temperature_C = _held(air.temperature_C, self.temperature_C)
        humidity_pct = _held(self._humidity_at(air, temperature_C), self.humidity_pct, self.most_humidity_pct)
        speed_m_s = _held(air.air_speed_m_s, self.air_speed_m_s, self.most_air_speed_m_s)
        if isinstance(air, AirDraws):
            return replace(air, temperature_C=temperature_C, humidity_pct=humidity_pct, air_speed_m_s=speed_m_s)
        is_known = self.temperature_C is not None and self.humidity_pct is not None
        return replace(
            air,
            temperature_C=float(temperature_C),
            humidity_pct=float(humidity_pct),
            air_speed_m_s=float(speed_m_s),
            age_s=None if is_known else air.age_s,
        )

    def _humidity_at(self, air: AnyAir, temperature_C: Array) -> float | Array:
        """Return the humidity of the same vapour at another temperature, %."""
        if self.temperature_C is None or self.humidity_pct is not None:
            return air.humidity_pct
        return humidity_with(temperature_C, vapour_pressure(air.temperature_C, air.humidity_pct))

    @property
    def words(self) -> str:
        """What is held, in words that begin a line; "" if nothing is."""
        told = [self._room_words(), self._air_words()]
        return " · ".join(one for one in told if one)

    def _room_words(self) -> str:
        temperature = "" if self.temperature_C is None else chosen().limit(self.temperature_C)
        humidity = self.most_humidity_pct if self.humidity_pct is None else self.humidity_pct
        if humidity is None:
            return say("Room kept at {temperature}", temperature=temperature) if temperature else ""
        pct = chosen().plain(humidity)
        if self.humidity_pct is None:
            return (
                say("Room kept at {temperature}, at most {humidity} %", temperature=temperature, humidity=pct)
                if temperature
                else say("Humidity kept at {humidity} % at most", humidity=pct)
            )
        if temperature:
            return say("Room kept at {temperature}, {humidity} %", temperature=temperature, humidity=pct)
        return say("Humidity kept at {humidity} %", humidity=pct)

    def _air_words(self) -> str:
        if self.air_speed_m_s is not None:
            return say("Air moving at {speed}", speed=chosen().air_speed_limit(self.air_speed_m_s))
        return "" if self.most_air_speed_m_s is None else say("Fan off, still air")


def _held(value: float | Array, at: float | None, most: float | None = None) -> Array:
    """Return `value`, or as many values that are `at`, none of them over `most`."""
    held = np.asarray(value, dtype=np.float64) if at is None else np.full(np.shape(value), at)
    return held if most is None else np.minimum(held, most)
