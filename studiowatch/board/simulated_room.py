"""A made-up room that behaves like one: what its air is at any moment of any day, from a seed alone.

The air's water is what is kept: the room's vapour pressure follows the weather outdoors through a slow air exchange
and mixes with the landing's when the door opens, so that relative humidity falls when the room is heated. Every
figure here is invented for the demonstration; none is a claim about a real room.
"""

from __future__ import annotations

import math
import random
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from studiowatch.physics.moist_air import saturation_pressure

HOUR_S = 3600.0
DAY_S = 24 * HOUR_S

MEAN_C = 20.3  # of the room
DAY_SWING_K = 1.3  # warmest in the afternoon
WARMEST_H = 16.0
WEATHER_SWING_K = 0.5
MEAN_VAPOUR_PA = 1130.0  # about 47 %RH at MEAN_C
AIR_EXCHANGE_S = 2.5 * HOUR_S  # time constant of the closed room: 0.4 air changes an hour
WEATHER_VAPOUR = ((19.0, 45.0), (31.0, 110.0), (67.0, 150.0), (131.0, 130.0))  # period h, amplitude Pa, outdoors

DOORS_A_DAY = 7.0
DOOR_COOLS_K = 0.9
DOOR_MIXES_S = 90.0
LANDING_VAPOUR_PA = 90.0  # the landing is damper or drier than the room by up to about this
WARM_AGAIN_S = 0.4 * HOUR_S

STILL_M_S = 0.045
PASSERS_AN_HOUR = 3.0
FAN_SPELLS_A_DAY = 1.3
FAN_RAMP_S = 1.5
WAKING_H = (7.5, 22.5)

PRESSURE_PA = 101_100.0
PARTICLES_PER_M3 = 45_000.0


@dataclass(frozen=True, slots=True, kw_only=True)
class RoomMoment:
    """The room's air at one moment: °C, %RH, m/s, Pa, and particles over 5 µm per m³."""

    temperature_C: float
    humidity_pct: float
    air_speed_m_s: float
    pressure_Pa: float
    particles_per_m3_5um: float


@dataclass(frozen=True, slots=True)
class _Spell:
    """Something that happens for a while: its begin and length, s, and its strength, 0 to 1."""

    begin_s: float
    length_s: float
    strength: float


class SimulatedRoom:
    """A room whose every moment follows from `seed`; times are UTC ms, the day is shifted by `utc_offset_s`.

    No fan of its own runs in `calm_ms`, UTC ms, so that a demonstration opens in a calm room at any hour.
    """

    def __init__(self, *, seed: int, utc_offset_s: int = 0, calm_ms: tuple[int, int] | None = None) -> None:
        self._seed = seed
        self._calm_s = None if calm_ms is None else tuple(each_ms / 1000 + utc_offset_s for each_ms in calm_ms)
        self._utc_offset_s = utc_offset_s
        drawn = random.Random(seed)  # noqa: S311 - a demonstration, no secret
        self._phases = [drawn.uniform(0.0, 2 * math.pi) for _ in range(8)]
        self._spells_of_day = lru_cache(maxsize=4)(self._draw_day)

    def room_at(self, time_ms: int) -> RoomMoment:
        """Return the air at `time_ms`, without sensor noise."""
        time_s = time_ms / 1000 + self._utc_offset_s
        temperature_C, vapour_Pa = self._warmth_and_water(time_s)
        saturation_Pa = float(saturation_pressure(temperature_C))
        speed_m_s = self._speed(time_s)
        stirred = max(speed_m_s - STILL_M_S, 0.0)
        return RoomMoment(
            temperature_C=temperature_C,
            humidity_pct=min(100 * vapour_Pa / saturation_Pa, 100.0),
            air_speed_m_s=speed_m_s,
            pressure_Pa=PRESSURE_PA + 600 * self._wave(time_s, 83 * HOUR_S, 0),
            particles_per_m3_5um=PARTICLES_PER_M3 * (1 + 0.3 * self._wave(time_s, 21 * HOUR_S, 1) + 5 * stirred),
        )

    def fan_speed(self, time_ms: int, since_ms: int) -> float:
        """Return the gusty air speed, m/s, of a fan that was switched on at `since_ms`."""
        time_s = time_ms / 1000 + self._utc_offset_s
        return self._fan(time_s, _Spell(since_ms / 1000 + self._utc_offset_s, math.inf, 0.5))

    def _warmth_and_water(self, time_s: float) -> tuple[float, float]:
        temperature_C = MEAN_C + DAY_SWING_K * math.cos(2 * math.pi * (time_s - WARMEST_H * HOUR_S) / DAY_S)
        temperature_C += WEATHER_SWING_K * self._wave(time_s, 57 * HOUR_S, 2)
        vapour_Pa = MEAN_VAPOUR_PA
        for index, (period_h, outdoors_Pa) in enumerate(WEATHER_VAPOUR):
            vapour_Pa += outdoors_Pa * self._exchanged(time_s, period_h * HOUR_S, index + 3)
        for door in self._spells(time_s, "door"):
            since_s = time_s - door.begin_s
            temperature_C -= DOOR_COOLS_K * door.strength * _opened(since_s, door.length_s, WARM_AGAIN_S)
            vapour_Pa += LANDING_VAPOUR_PA * (0.6 - door.strength) * _opened(since_s, door.length_s, AIR_EXCHANGE_S)
        return temperature_C, vapour_Pa

    def _wave(self, time_s: float, period_s: float, phase: int) -> float:
        return math.sin(2 * math.pi * time_s / period_s + self._phases[phase])

    def _exchanged(self, time_s: float, period_s: float, phase: int) -> float:
        """Return a wave outdoors as it is indoors: damped and late by the air exchange (a first-order lag, exact)."""
        turn = 2 * math.pi * AIR_EXCHANGE_S / period_s
        late_s = math.atan(turn) / (2 * math.pi) * period_s
        return self._wave(time_s - late_s, period_s, phase) / math.hypot(1.0, turn)

    def _speed(self, time_s: float) -> float:
        speed = STILL_M_S + 0.008 * math.sin(time_s / 37) + 0.006 * math.sin(time_s / 11 + self._phases[7])
        for passing in self._spells(time_s, "passer"):
            along = (time_s - passing.begin_s) / passing.length_s
            if 0 < along < 1:
                speed += 0.15 * passing.strength * math.sin(math.pi * along)
        for spell in self._spells(time_s, "fan"):
            if spell.begin_s <= time_s < spell.begin_s + spell.length_s and not self._is_calm(spell):
                speed = max(speed, self._fan(time_s, spell))
        return speed

    def _is_calm(self, spell: _Spell) -> bool:
        """Return whether a spell would reach into the time in which no fan runs."""
        if self._calm_s is None:
            return False
        start_s, end_s = self._calm_s
        return spell.begin_s < end_s and spell.begin_s + spell.length_s > start_s

    def _fan(self, time_s: float, spell: _Spell) -> float:
        """0.25 to 0.45 m/s by the spell's strength, with gusts of a quarter, after a short run-up."""
        gusts = math.sin(time_s / 1.9) + math.sin(time_s / 3.7 + self._phases[0]) + math.sin(time_s / 9.1)
        steady = 0.25 + 0.20 * spell.strength
        return steady * (1 + 0.08 * gusts) * (1 - math.exp(-(time_s - spell.begin_s + 0.5) / FAN_RAMP_S))

    def _spells(self, time_s: float, kind: str) -> Iterator[_Spell]:
        """Yield the spells of this day and the one before that have begun."""
        today = math.floor(time_s / DAY_S)
        for day in (today - 1, today):
            for spell in self._spells_of_day(day)[kind]:
                if spell.begin_s <= time_s:
                    yield spell

    def _draw_day(self, day: int) -> dict[str, list[_Spell]]:
        drawn = random.Random(self._seed * 1_000_003 + day)  # noqa: S311 - a demonstration, no secret
        waking_h = WAKING_H[1] - WAKING_H[0]
        plans = {
            "door": (DOORS_A_DAY, 20.0, 240.0),
            "passer": (PASSERS_AN_HOUR * waking_h, 4.0, 12.0),
            "fan": (FAN_SPELLS_A_DAY, 8 * 60.0, 35 * 60.0),
        }
        spells: dict[str, list[_Spell]] = {}
        for kind, (times_a_day, shortest_s, longest_s) in plans.items():
            count = int(times_a_day + drawn.random())
            spells[kind] = [
                _Spell(
                    day * DAY_S + drawn.uniform(*WAKING_H) * HOUR_S,
                    drawn.uniform(shortest_s, longest_s),
                    drawn.random(),
                )
                for _ in range(count)
            ]
        return spells


def _opened(since_s: float, open_s: float, fade_s: float) -> float:
    """Return how far an open door has changed the room, 0 to 1: soon while it is open, fading once it is shut."""
    reached = 1 - math.exp(-min(since_s, open_s) / DOOR_MIXES_S)
    return reached * math.exp(-max(since_s - open_s, 0.0) / fade_s)
