"""What of a series is seen, and where its readings lie too far apart to be joined."""

from __future__ import annotations

import numpy as np

from studiowatch.service.ports import Series

GAP_BUCKETS = 3  # neighbours further apart than this are a gap: "a few" buckets
SLOWEST_MS = 600_000  # of a log: readings that are usually further apart were typed, and no line joins them; assumption
SHORTEST_GAP_MS = 10_000  # a reading or two that never came is no gap in the room


def gap_ms(series: Series) -> float:
    """Return the distance beyond which two neighbours of `series` have a gap between them, ms.

    A log kept once a minute is no row of gaps, so the usual distance of its readings counts too.
    """
    usual_ms = float(np.median(np.diff(series.time_ms))) if len(series.time_ms) > 2 else 0.0  # noqa: PLR2004
    return max(GAP_BUCKETS * series.bucket_ms, GAP_BUCKETS * min(usual_ms, SLOWEST_MS), SHORTEST_GAP_MS)


def seen_between(series: Series, start_ms: float, end_ms: float) -> slice:
    """Return the part of `series` that lies between two times."""
    first, last = np.searchsorted(series.time_ms, (start_ms, end_ms))
    return slice(int(first), int(last))


def nearest_to(series: Series, time_ms: float) -> int | None:
    """Return the index of the reading nearest to a time, or None where the time lies in a gap."""
    if not len(series.time_ms):
        return None
    right = int(np.searchsorted(series.time_ms, time_ms))
    near = [index for index in (right - 1, right) if 0 <= index < len(series.time_ms)]
    best = min(near, key=lambda index: abs(series.time_ms[index] - time_ms))
    return best if abs(series.time_ms[best] - time_ms) <= gap_ms(series) / 2 else None
