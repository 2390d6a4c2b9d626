"""Least, greatest, sum and count per stretch of time, and how such stretches are put together."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from studiowatch.store.packing import (
    Integers,
    Numbers,
    join_parts,
    pack_integers,
    pack_numbers,
    split_parts,
    unpack_integers,
    unpack_numbers,
)

_DECIMALS = 6  # no sensor prints more
_ROUNDING = 1e-13  # of what was summed: adding up to some hundred at a time errs by less; 1 ulp is 2e-16, IEEE 754


@dataclass(frozen=True, slots=True, kw_only=True)
class Buckets:
    """Stretches of equal width that hold at least one value each.

    Attributes
    ----------
    index : (n,) int64
        UTC ms of the stretch's beginning, divided by the width; rising.
    low, high, total : (n,) float64
        Least and greatest value, and the sum.
    count : (n,) int64
        How many values.
    """

    index: Integers
    low: Numbers
    high: Numbers
    total: Numbers
    count: Integers

    @property
    def mean(self) -> Numbers:
        """The mean of each, (n,) float64."""
        return self.total / self.count

    def between(self, start: int, end: int) -> Buckets:
        """Return those with start <= index < end."""
        return self.part(slice(*np.searchsorted(self.index, [start, end])))

    def part(self, part: slice | NDArray[np.bool_]) -> Buckets:
        """Return those of a range of places, or where (n,) bool is True."""
        return Buckets(
            index=self.index[part],
            low=self.low[part],
            high=self.high[part],
            total=self.total[part],
            count=self.count[part],
        )


def bucket_values(time_ms: Integers, values: Numbers, width_ms: int) -> Buckets:
    """Return `values` (n,) at `time_ms` (n,) in buckets of `width_ms`; NaN is not a value."""
    there = ~np.isnan(values)
    kept = values[there]
    ones = np.ones(kept.size, dtype=np.int64)
    return _gather(time_ms[there] // width_ms, kept, kept, kept, ones)


def coarsen(buckets: Buckets, factor: int) -> Buckets:
    """Return buckets `factor` times as wide."""
    return _gather(buckets.index // factor, buckets.low, buckets.high, buckets.total, buckets.count)


def merge(parts: Sequence[Buckets]) -> Buckets:
    """Return all `parts`, of one width, as one; buckets of the same stretch become one bucket."""
    return _gather(
        np.concatenate([np.empty(0, dtype=np.int64), *(part.index for part in parts)]),
        np.concatenate([np.empty(0), *(part.low for part in parts)]),
        np.concatenate([np.empty(0), *(part.high for part in parts)]),
        np.concatenate([np.empty(0), *(part.total for part in parts)]),
        np.concatenate([np.empty(0, dtype=np.int64), *(part.count for part in parts)]),
    )


def pack_buckets(buckets: Buckets) -> bytes:
    """Return `buckets` as bytes."""
    return join_parts(
        [
            pack_integers(buckets.index),
            pack_integers(buckets.count),
            pack_numbers(buckets.low),
            pack_numbers(buckets.high),
            pack_numbers(_printed_sums(buckets)),
        ],
    )


def unpack_buckets(data: bytes) -> Buckets:
    """Return what `pack_buckets` was given."""
    index, count, low, high, total = split_parts(data)
    return Buckets(
        index=unpack_integers(index),
        low=unpack_numbers(low),
        high=unpack_numbers(high),
        total=unpack_numbers(total),
        count=unpack_integers(count),
    )


def _printed_sums(buckets: Buckets) -> Numbers:
    """Return the sums without the noise of adding: printed numbers have few decimals, and so have their sums.

    With the noise they pack to three quarters of the pyramid. A sum of numbers that are not printed stays as it is.
    """
    with np.errstate(over="ignore", invalid="ignore"):
        printed = np.round(buckets.total, _DECIMALS)
        noise = np.abs(printed - buckets.total)
        largest = buckets.count * np.maximum(np.abs(buckets.low), np.abs(buckets.high))
        return np.where(noise <= _ROUNDING * largest, printed, buckets.total)


def _gather(index: Integers, low: Numbers, high: Numbers, total: Numbers, count: Integers) -> Buckets:
    order = np.argsort(index, kind="stable")
    distinct, first = np.unique(index[order], return_index=True)
    if not distinct.size:
        return Buckets(index=index, low=low, high=high, total=total, count=count)
    return Buckets(
        index=distinct,
        low=np.minimum.reduceat(low[order], first),
        high=np.maximum.reduceat(high[order], first),
        total=np.add.reduceat(total[order], first),
        count=np.add.reduceat(count[order], first),
    )
