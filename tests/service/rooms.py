"""Made-up rooms as lists of readings, second by second, for tests that need to know just what happened when."""

from __future__ import annotations

import random
from collections.abc import Callable
from datetime import UTC, datetime

from studiowatch.room.readings import Reading

START_MS = int(datetime(2026, 3, 2, 9, 0, tzinfo=UTC).timestamp() * 1000)
STILL_M_S = 0.04
FAN_M_S = 0.35


def room(
    seconds: int,
    *,
    fan: Callable[[int], bool] = lambda _: False,
    temperature_C: Callable[[int], float] = lambda _: 20.5,
    humidity_pct: Callable[[int], float] = lambda _: 50.0,
    step_s: int = 1,
    seed: int = 1,
) -> list[Reading]:
    """Return one reading per `step_s` from START_MS on, with a little sensor noise."""
    drawn = random.Random(seed)
    readings = []
    for second in range(0, seconds, step_s):
        speed_m_s = (FAN_M_S if fan(second) else STILL_M_S) + drawn.gauss(0.0, 0.006)
        readings.append(
            Reading(
                time_ms=START_MS + second * 1000,
                temperature_C=round(temperature_C(second) + drawn.gauss(0.0, 0.02), 2),
                humidity_pct=round(humidity_pct(second) + drawn.gauss(0.0, 0.06), 2),
                air_speed_m_s=round(max(speed_m_s, 0.0), 3),
            )
        )
    return readings
