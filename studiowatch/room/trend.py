"""Where a figure of the room is heading: a robust slope over the last hour, and when it would pass a limit.

A straight line knows nothing of the night or of a heater that will be put on, so it is trusted for an hour, upheld for
two at most, and only where both halves of the hour and its last twenty minutes go the same way.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import inf, sqrt

import numpy as np

from studiowatch.physics.ranges import Array

WINDOW_MS = 3_600_000  # ms looked back on
RECENT_MS = 1_200_000  # ms at the end, which must go the same way
LEAST_MS = 1_800_000  # ms that must be there; assumption
HORIZON_MS = WINDOW_MS  # ms ahead, no farther than was looked back: at twice that nine of ten made-up rooms turned
SLOWEST_MS = 7_200_000  # ms within which it must be passed at the slowest slope that is likely; assumption
KEPT_MS = 7_200_000  # ms ahead up to which what was said is upheld; assumption
SLACKENING = 0.5  # share of the hour's slope that the last minutes must still have; assumption
UPHELD = 0.25  # the same, once it was said; assumption
LEAST_MOVE = 4.0  # times its own scatter that a figure must have moved in the window; assumption
_Z90 = 1.2816  # standard deviations from the middle to p90 of a normal distribution
_STICKING = 16.0  # times as wide as for minutes that know nothing of each other: a room's do; assumption


@dataclass(frozen=True, slots=True, kw_only=True)
class Crossing:
    """In how long a limit is passed, ms from now: the middle, and the range within which it is likely.

    `by_days` says that it is known from the room's days, not from its last hour.
    """

    low_ms: int
    middle_ms: int
    high_ms: int
    by_days: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Trend:
    """The slope of a figure, in its unit per ms.

    Attributes
    ----------
    slope, early, recent : float
        Over the window, over its first half and over its last minutes.
    spread : float
        How far the slope may be off at p10 and p90.
    moved : float
        How far the figure has moved in the window, in times its scatter around the line.
    """

    slope: float
    early: float
    recent: float
    spread: float
    moved: float

    def until(self, distance: float, *, said_before: bool = False) -> Crossing | None:
        """Return when a limit is passed that lies `distance` ahead, in the figure's unit, up if positive, down if not.

        None if it is not within the horizon, or nothing honest can be said. What was said before is upheld longer.
        """
        if distance == 0.0:
            return None
        way = 1.0 if distance > 0.0 else -1.0
        slope, recent = way * self.slope, way * self.recent
        slackening = UPHELD if said_before else SLACKENING
        if slope <= 0.0 or recent < slackening * slope or (self.moved < LEAST_MOVE and not said_before):
            return None
        if not said_before and way * self.early < slackening * slope:
            return None
        pace = min(slope, recent)
        middle_ms = abs(distance) / pace
        slowest = pace - self.spread
        if middle_ms > (KEPT_MS if said_before else HORIZON_MS):
            return None
        if not said_before and slowest * SLOWEST_MS < abs(distance):
            return None
        fastest = max(slope, recent) + self.spread
        high_ms = abs(distance) / slowest if slowest > 0.0 else inf
        return Crossing(
            low_ms=round(abs(distance) / fastest),
            middle_ms=round(middle_ms),
            high_ms=round(min(high_ms, 2.0 * KEPT_MS)),
        )


def trend_of(times_ms: Array, values: Array) -> Trend | None:
    """Return the trend of the last hour, or None if there is too little to go by.

    The slope is the median of those of all pairs (P. K. Sen (1968), J. Am. Stat. Assoc. 63, 1379), which a door that
    opens once does not turn; its spread is that of a line through as many points, widened because minutes follow on
    each other.

    Parameters
    ----------
    times_ms, values : (n,) float64
        Rising in time; the last is now.
    """
    if times_ms.size < 3 or times_ms[-1] - times_ms[0] < LEAST_MS:  # noqa: PLR2004 - a line and something to be off it
        return None
    inside = times_ms >= times_ms[-1] - WINDOW_MS
    times, seen = times_ms[inside], values[inside]
    lately = times >= times[-1] - RECENT_MS
    if lately.sum() < 3:  # noqa: PLR2004 - as above
        return None
    slope = _median_slope(times, seen)
    off = seen - slope * times
    scatter = 1.4826 * float(np.median(np.abs(off - np.median(off))))  # as a standard deviation, if it is normal
    half = times.size // 2
    early, recent = _median_slope(times[:half], seen[:half]), _median_slope(times[lately], seen[lately])
    spread = _Z90 * sqrt(_STICKING) * scatter / float(np.std(times)) / sqrt(times.size)
    moved = abs(slope) * float(times[-1] - times[0]) / max(scatter, 1e-9)
    spread = max(spread, 0.5 * abs(recent - early))  # a bent line is known no better than by its bend
    return Trend(slope=slope, early=early, recent=recent, spread=spread, moved=moved)


def _median_slope(times: Array, values: Array) -> float:
    first, second = np.triu_indices(times.size, k=1)
    return float(np.median((values[second] - values[first]) / (times[second] - times[first])))
