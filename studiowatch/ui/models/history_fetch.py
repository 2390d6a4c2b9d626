"""What to read from the log for a view, and the films' temperature from their traces."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from studiowatch.service.piece_view import PieceView
from studiowatch.service.ports import Series
from studiowatch.ui.models.history_live import EMPTY
from studiowatch.ui.models.history_view import View

MARGIN_SHARE = 0.25  # of the view's width read on either side, so that a drag does not uncover blank paper
TRACE_MS = 60_000  # a film's temperature comes about once a minute
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


def covers(read: Request | None, view: View, now_ms: int) -> bool:
    """Return whether all of `view` that lies behind was read, but for the pixel or two since."""
    if view.start_ms >= now_ms:
        return True
    if read is None:
        return False
    slack_ms = 4 * (read.end_ms - read.start_ms) // read.buckets
    return read.start_ms <= view.start_ms and read.end_ms + slack_ms >= min(view.end_ms, now_ms)


def film_series(pieces: Sequence[PieceView], start_ms: int, end_ms: int, bucket_ms: int) -> Series:
    """Return the temperature of the coldest wet film between two times, in buckets of `bucket_ms` or a minute."""
    traces = [coat.film_trace for piece in pieces for coat in piece.coats if coat.film_trace]
    points = [point for trace in traces if trace[-1][0] >= start_ms and trace[0][0] < end_ms for point in trace]
    if not points:
        return EMPTY
    minute, film_C = np.array([point[0] for point in points]) // TRACE_MS, np.array([point[1] for point in points])
    minute, coldest_C = _grouped(np.minimum, minute, film_C)
    width = max(-(-bucket_ms // TRACE_MS), 1)
    number = minute // width
    _, low = _grouped(np.minimum, number, coldest_C)
    _, high = _grouped(np.maximum, number, coldest_C)
    number, total = _grouped(np.add, number, coldest_C)
    count = np.unique(minute // width, return_counts=True)[1]
    width_ms = width * TRACE_MS
    return Series(time_ms=number * width_ms + width_ms // 2, low=low, high=high, mean=total / count, bucket_ms=width_ms)


def _grouped(
    gather: np.ufunc, number: NDArray[np.int64], value: NDArray[np.float64]
) -> tuple[NDArray[np.int64], NDArray[np.float64]]:
    """Return each number once, rising, and what `gather` makes of its values."""
    order = np.argsort(number, kind="stable")
    numbers, first = np.unique(number[order], return_index=True)
    return numbers, gather.reduceat(value[order], first)


def shared(one: Series, other: Series) -> tuple[NDArray[np.intp], NDArray[np.intp]]:
    """Return the indices, in each of two series, of the buckets that both of them have."""
    _, left, right = np.intersect1d(one.time_ms, other.time_ms, assume_unique=True, return_indices=True)
    return left, right
