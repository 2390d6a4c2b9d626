"""How often a room is said to be heading for a limit that it then does not pass.

``python tests/benchmarks/heading_false_alarms.py [ROOMS] [DAYS] [FIRST]``

Made-up rooms, minute by minute: a mean, a daily swing, slow weather, noise that lasts for tens of minutes, doors, and
now and then a kettle or a shower; and the same with damp nights, of which a room's own days can tell. The line through
the last hour is counted beside the draws of the room's outlook. A coat is taken to be open to harm at all times, which
is far more than in life. A forecast is right if the limit is passed within half an hour after the end of its range,
false if not; what was not foretold though it came slowly enough is counted too.

The shares from which a warning is said were chosen on the eight rooms from the first, 0; rooms from another FIRST on,
as 100, were never looked at for that.
"""

from __future__ import annotations

import sys
from dataclasses import dataclass, field
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).parents[2]))

from studiowatch.room.trend import Crossing, trend_of
from studiowatch.service.replaying import NoLog
from studiowatch.service.room_ahead import RoomAhead
from studiowatch.service.room_foretold import RoomForetold
from studiowatch.studio.concern import AirNow
from studiowatch.studio.heading import Figure

MINUTE_MS = 60_000.0
DAY_MIN = 1440
LIMIT_PCT = 85.0
HELD_MIN = 10  # min that a forecast is gone before another counts as a new one
GRACE_MIN = 30


@dataclass
class Score:
    """What came of the forecasts."""

    days: float = 0.0
    right: int = 0
    false: int = 0
    inside: int = 0
    passed: int = 0
    foretold: int = 0
    lead_min: list[float] = field(default_factory=list)


def made_up_room(days: int, drawn: np.random.Generator) -> np.ndarray:
    """Return humidity, %RH, one value a minute."""
    minutes = np.arange(days * DAY_MIN)
    humidity = drawn.uniform(55.0, 78.0) + drawn.uniform(1.0, 7.0) * np.sin(
        2 * np.pi * minutes / DAY_MIN + drawn.uniform(0, 6)
    )
    for period_h in (19.0, 31.0, 67.0):
        humidity += drawn.uniform(0.5, 4.0) * np.sin(2 * np.pi * minutes / 60 / period_h + drawn.uniform(0, 6))
    lasting = np.zeros(minutes.size)
    shocks = drawn.normal(0.0, 0.12, minutes.size)
    for at in range(1, minutes.size):
        lasting[at] = 0.97 * lasting[at - 1] + shocks[at]
    humidity += lasting + drawn.normal(0.0, 0.05, minutes.size)
    for many, rise, fades_min in ((6, 1.5, 25.0), (0.5, 14.0, 40.0)):  # doors; a shower or a kettle
        for start in drawn.integers(0, minutes.size, round(many * days)):
            since = minutes[start:] - start
            reached = 1 - np.exp(-np.minimum(since, 15) / 6.0)
            humidity[start:] += rise * drawn.normal() * reached * np.exp(-np.maximum(since - 15, 0) / fades_min)
    return np.clip(humidity, 5.0, 99.0)


def damp_nights(days: int, drawn: np.random.Generator) -> np.ndarray:
    """Return the humidity of such a room, %RH, that comes near the limit by night."""
    humidity = made_up_room(days, drawn)
    phase = 2 * np.pi * np.arange(humidity.size) / DAY_MIN + drawn.uniform(0, 6)
    return np.clip(
        humidity - humidity.mean() + drawn.uniform(72.0, 80.0) + drawn.uniform(3.0, 8.0) * np.sin(phase), 5, 99
    )


class Line:
    """The line through the last hour."""

    def __init__(self, humidity: np.ndarray) -> None:
        self._humidity = humidity
        self._times_ms = np.arange(60) * MINUTE_MS

    def until(self, now: int, *, said_before: bool) -> Crossing | None:
        """Return when the limit is passed from the minute `now` on."""
        trend = trend_of(self._times_ms, self._humidity[now - 60 : now])
        return None if trend is None else trend.until(LIMIT_PCT - self._humidity[now], said_before=said_before)


class Draws:
    """The draws of the outlook, made anew every ten minutes, as the watch asks them."""

    def __init__(self, humidity: np.ndarray) -> None:
        self._humidity = humidity
        self._room = RoomAhead(log=NoLog())
        self._foretold = RoomForetold(room=self._room)

    def until(self, now: int, *, said_before: bool) -> Crossing | None:
        """Return when the limit is passed from the minute `now` on."""
        value = float(self._humidity[now])
        air = AirNow(temperature_C=20.0, humidity_pct=value)
        self._room.look(air, now * round(MINUTE_MS))
        self._foretold.take(air, now * round(MINUTE_MS))
        return self._foretold.until(Figure.HUMIDITY, LIMIT_PCT - value, said_before=said_before)


def judge(humidity: np.ndarray, heading: Line | Draws, score: Score) -> None:
    """Add what the forecasts over one room came to."""
    said_until, said_since, range_end = -HELD_MIN, 0, 0
    standing: tuple[float, float] | None = None
    score.days += humidity.size / DAY_MIN
    for now in range(60, humidity.size):
        crossing = heading.until(now, said_before=standing is not None)
        if humidity[now] > LIMIT_PCT:
            if humidity[now - 1] <= LIMIT_PCT and humidity[max(0, now - 60) : now].max() <= LIMIT_PCT:
                score.passed += 1
                score.foretold += standing is not None
            if standing is not None:
                score.right += 1
                score.inside += standing[0] <= now <= standing[1]
                score.lead_min.append(now - said_since)
                standing = None
            said_until = now
            continue
        if crossing is not None:
            if standing is None and now - said_until >= HELD_MIN:
                said_since, range_end = now, now + round(crossing.high_ms / MINUTE_MS)
                standing = (now + crossing.low_ms / MINUTE_MS, float(range_end))
            said_until = now
        elif standing is not None and now > range_end + GRACE_MIN:
            score.false += 1
            standing = None


def main(rooms: int, days: int, first: int) -> None:
    """Print the scores."""
    for title, made in (("as they come", made_up_room), ("damp nights", damp_nights)):
        for way in (Line, Draws):
            score = Score()
            for seed in range(first, first + rooms):
                humidity = made(days, np.random.default_rng(seed))
                judge(humidity, way(humidity), score)
            print(f"{rooms} rooms from {first} on, {title}; foretold by the {way.__name__.lower()}")
            tell(score)


def tell(score: Score) -> None:
    """Print a score."""
    said = score.right + score.false
    print(f"  {score.days:.0f} days; the limit of {LIMIT_PCT:g} % was passed {score.passed} times")
    print(f"  forecasts: {said}, {said / score.days:.2f} a day", end="; ")
    print(f"false: {score.false}, {score.false / score.days:.3f} a day")
    print(f"  right within half an hour of the range: {score.right / max(said, 1):.0%}")
    print(f"  inside the range first told: {score.inside / max(score.right, 1):.0%} of those that came true")
    print(f"  foretold: {score.foretold / max(score.passed, 1):.0%} of all passings, median lead", end=" ")
    print(f"{np.median(score.lead_min) if score.lead_min else 0:.0f} min")


if __name__ == "__main__":
    main(*(int(word) for word in (*sys.argv[1:], *("8", "14", "0")[len(sys.argv) - 1 :])))
