"""Sums of printed numbers are those of decimal arithmetic; all else comes back from packing bit by bit."""

from __future__ import annotations

from decimal import Decimal
from math import fsum

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.store.buckets import bucket_values, coarsen, pack_buckets, unpack_buckets

_PRINTED = st.decimals(min_value=-200_000, max_value=200_000, places=3)
_ANY_NUMBER = st.floats(min_value=-1e300, max_value=1e300)


@given(st.lists(_PRINTED, min_size=1, max_size=200))
def test_that_a_sum_of_printed_numbers_is_kept_as_decimal_arithmetic_has_it(values: list[Decimal]) -> None:
    times = np.arange(len(values), dtype=np.int64)
    fine = bucket_values(times, np.array([float(value) for value in values]), 10)
    for width, buckets in ((10, fine), (60, coarsen(fine, 6))):
        kept = unpack_buckets(pack_buckets(buckets))
        parts = [values[at : at + width] for at in range(0, len(values), width)]
        assert kept.low.tolist() == [float(min(part)) for part in parts]
        assert kept.high.tolist() == [float(max(part)) for part in parts]
        assert kept.count.tolist() == [len(part) for part in parts]
        assert kept.total.tolist() == [float(sum(part)) for part in parts]


@given(st.lists(_ANY_NUMBER, min_size=1, max_size=30))
def test_that_sums_of_any_numbers_are_kept_as_near_as_adding_comes(values: list[float]) -> None:
    buckets = bucket_values(np.arange(len(values), dtype=np.int64), np.array(values), 10)
    kept = unpack_buckets(pack_buckets(buckets))
    for name in ("index", "low", "high", "count"):
        assert getattr(kept, name).tobytes() == getattr(buckets, name).tobytes()
    for number, total in enumerate(kept.total.tolist()):
        part = values[10 * number : 10 * number + 10]
        assert total == pytest.approx(fsum(part), rel=0, abs=1e-12 * max(map(abs, part)) * len(part))


def test_that_a_single_number_with_more_decimals_than_a_sensor_prints_is_not_shortened() -> None:
    buckets = bucket_values(np.array([5]), np.array([20.123456789]), 10)
    assert unpack_buckets(pack_buckets(buckets)).total.tolist() == [20.123456789]
