"""What to read from the log for a view, and the film's temperature as gathered while the window runs."""

from __future__ import annotations

from array import array
from bisect import bisect_left
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from studiowatch.service.ports import Series
from studiowatch.ui.models.history_panels import EMPTY
from studiowatch.ui.models.history_view import View

MARGIN_SHARE = 0.25  # of the view's width read on either side, so that a drag does not uncover blank paper
FINEST_BUCKET_MS = 1000  # a board sends about one reading a second


@dataclass(frozen=True, slots=True, kw_only=True)
class Request:
    """A stretch of the log to read, UTC ms, in about `buckets` buckets."""

    start_ms: int
    end_ms: int
    buckets: int


def plan(view: View, width_px: int, now_ms: int) -> Request | None:
    """Return what to read for `view` on `width_px` pixels, or None if all of it lies ahead.

    The edges lie on whole buckets, so a view that follows now asks again only once a pixel's worth of time has passed.
    """
    bucket_ms = max(-(-view.width_ms // max(width_px, 1)), FINEST_BUCKET_MS)
    margin_ms = round(view.width_ms * MARGIN_SHARE)
    start_ms = (view.start_ms - margin_ms) // bucket_ms * bucket_ms
    end_ms = -(-min(view.end_ms + margin_ms, now_ms) // bucket_ms) * bucket_ms
    if end_ms <= start_ms:
        return None
    return Request(start_ms=start_ms, end_ms=end_ms, buckets=(end_ms - start_ms) // bucket_ms)


class FilmLog:
    """Temperature of the coldest wet film, gathered from live snapshots: the log itself holds only the room.

    One row for each `BUCKET_MS`, the oldest half forgotten when `MOST_ROWS` are full.
    """

    BUCKET_MS = 10_000
    MOST_ROWS = 100_000

    def __init__(self) -> None:
        self._time_ms = array("q")
        self._low, self._high, self._mean = array("d"), array("d"), array("d")
        self._count = 0

    def add(self, time_ms: int, film_C: float) -> None:
        """Take in one value, °C; a time before the last bucket is left out, since the clock was set back."""
        middle_ms = time_ms // self.BUCKET_MS * self.BUCKET_MS + self.BUCKET_MS // 2
        if self._time_ms and middle_ms == self._time_ms[-1]:
            self._count += 1
            self._low[-1] = min(self._low[-1], film_C)
            self._high[-1] = max(self._high[-1], film_C)
            self._mean[-1] += (film_C - self._mean[-1]) / self._count
        elif not self._time_ms or middle_ms > self._time_ms[-1]:
            self._begin(middle_ms, film_C)

    def series(self, start_ms: int, end_ms: int, bucket_ms: int) -> Series:
        """Return what was gathered between two times, in buckets of at least `bucket_ms`."""
        seen = slice(bisect_left(self._time_ms, start_ms), bisect_left(self._time_ms, end_ms))
        time_ms = np.array(self._time_ms[seen])
        if not len(time_ms):
            return EMPTY
        low, high, mean = (np.array(column[seen]) for column in (self._low, self._high, self._mean))
        if bucket_ms <= self.BUCKET_MS:
            return Series(time_ms=time_ms, low=low, high=high, mean=mean, bucket_ms=self.BUCKET_MS)
        number, first, count = np.unique(time_ms // bucket_ms, return_index=True, return_counts=True)
        return Series(
            time_ms=number * bucket_ms + bucket_ms // 2,
            low=np.minimum.reduceat(low, first),
            high=np.maximum.reduceat(high, first),
            mean=np.add.reduceat(mean, first) / count,
            bucket_ms=bucket_ms,
        )

    def _begin(self, middle_ms: int, film_C: float) -> None:
        if len(self._time_ms) == self.MOST_ROWS:
            for column in (self._time_ms, self._low, self._high, self._mean):
                del column[: self.MOST_ROWS // 2]
        self._time_ms.append(middle_ms)
        self._low.append(film_C)
        self._high.append(film_C)
        self._mean.append(film_C)
        self._count = 1


def shared(one: Series, other: Series) -> tuple[NDArray[np.intp], NDArray[np.intp]]:
    """Return the indices, in each of two series, of the buckets that both of them have."""
    _, left, right = np.intersect1d(one.time_ms, other.time_ms, assume_unique=True, return_indices=True)
    return left, right
