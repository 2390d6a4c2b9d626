"""How often a sensor that is well is called ill, and how soon one that is ill is.

Run with ``python tests/benchmarks/sensor_health_trial.py [days]``; a day takes about 10 s. The room is the simulated
one, whose doors and heating are made up. The figures that a sensor is held to: outside -10 to 50 °C or 0 to 100 %RH,
faster than 1 K/s or 10 %RH/s, identical for more than 120 s at a resolution of 0.01, or 6 h at 0.1.
"""

from __future__ import annotations

import sys
from collections.abc import Iterable, Iterator
from dataclasses import replace

from studiowatch.board.simulated import past_readings
from studiowatch.board.simulated_room import SimulatedRoom
from studiowatch.room.readings import Reading
from studiowatch.room.sensor_health import SensorHealth, check

DAY_MS = 86_400_000
START_MS = 1_772_442_000_000


def rounded(readings: Iterable[Reading], decimals: int) -> Iterator[Reading]:
    """Yield `readings` as a sensor of that resolution gives them."""
    for reading in readings:
        assert reading.temperature_C is not None
        assert reading.humidity_pct is not None
        yield replace(
            reading,
            temperature_C=round(reading.temperature_C, decimals),
            humidity_pct=round(reading.humidity_pct, decimals),
        )


def flags(readings: Iterable[Reading]) -> int:
    """Return how often a channel became suspect."""
    health, count = SensorHealth(), 0
    for reading in readings:
        before, health = len(health.suspect), check(health, reading)
        count += max(len(health.suspect) - before, 0)
    return count


def seconds_until_flagged(readings: Iterable[Reading], ill_from_ms: int) -> float:
    """Return how long after `ill_from_ms` a channel becomes suspect, s."""
    health = SensorHealth()
    for reading in readings:
        health = check(health, reading)
        if reading.time_ms >= ill_from_ms and health.suspect:
            return (reading.time_ms - ill_from_ms) / 1000
    return float("inf")


def ill(readings: Iterable[Reading], ill_from_ms: int, **changes: float) -> Iterator[Reading]:
    """Yield `readings` with the given channels at these values from then on."""
    for reading in readings:
        yield reading if reading.time_ms < ill_from_ms else replace(reading, **changes)


def main(days: int = 7) -> None:
    """Print all figures."""
    room = SimulatedRoom(seed=7)
    for decimals in (2, 1):
        well = past_readings(room, START_MS, START_MS + days * DAY_MS, 1.0)
        print(f"well, {days} days at {10**-decimals:g}: {flags(rounded(well, decimals)) / days:.3f} flags a day")
    ill_ms = START_MS + 600_000
    for name, decimals, span_ms, changes in (
        ("stands still", 2, 1_200_000, {"temperature_C": 20.33}),
        ("stands still", 1, 8 * 3_600_000, {"humidity_pct": 47.5}),
        ("out of range", 2, 1_200_000, {"temperature_C": -10.01}),
        ("leaps to 23 °C", 2, 1_200_000, {"temperature_C": 23.0}),
        ("leaps to 62 %RH", 2, 1_200_000, {"humidity_pct": 62.0}),
    ):
        readings = rounded(past_readings(room, START_MS, START_MS + span_ms, 1.0), decimals)
        until_s = seconds_until_flagged(ill(readings, ill_ms, **changes), ill_ms)
        print(f"{name}, at {10**-decimals:g}: flagged after {until_s:g} s")


if __name__ == "__main__":
    main(*(int(text) for text in sys.argv[1:]))
