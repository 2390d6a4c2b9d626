"""Packing gives every bit back: checked by comparing bits with what was packed."""

from __future__ import annotations

import zlib

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.store.packing import (
    join_parts,
    pack_integers,
    pack_numbers,
    split_parts,
    unpack_integers,
    unpack_numbers,
)

_INT64 = st.integers(min_value=-(2**63), max_value=2**63 - 1)
_PRINTED = st.integers(min_value=-(10**7), max_value=10**7).map(lambda hundredths: hundredths / 100)
_ANY_NUMBER = st.floats(allow_nan=False, allow_infinity=False)


@given(st.lists(_INT64))
def test_that_whole_numbers_come_back(values: list[int]) -> None:
    assert unpack_integers(pack_integers(np.array(values, dtype=np.int64))).tolist() == values


@given(st.lists(_INT64))
def test_that_blobs_of_both_earlier_forms_are_still_read(values: list[int]) -> None:
    column = np.array(values, dtype=np.int64)
    differences = np.diff(column, prepend=np.int64(0))
    folded = (differences << 1) ^ (differences >> 63)
    for mark, kept in ((b"", differences), (b"\x01", folded)):
        shuffled = kept.astype("<i8").view(np.uint8).reshape(-1, 8).T
        assert unpack_integers(mark + zlib.compress(shuffled.tobytes(), 1)).tolist() == values


@given(st.binary(min_size=1), st.integers(min_value=0, max_value=16))
def test_that_a_count_of_bytes_that_cannot_be_is_refused(body: bytes, kept: int) -> None:
    blob = b"\x02" + bytes([kept]) + zlib.compress(body)
    if 1 <= kept <= 8 and len(body) % kept == 0:
        assert unpack_integers(blob).size == len(body) // kept
    else:
        with pytest.raises(ValueError, match=r"reshape|has 1 to 8"):
            unpack_integers(blob)


@given(st.lists(st.one_of(st.none(), _PRINTED)) | st.lists(st.one_of(st.none(), _ANY_NUMBER)))
def test_that_every_bit_of_a_number_and_every_gap_comes_back(values: list[float | None]) -> None:
    column = np.array(values, dtype=np.float64)
    back = unpack_numbers(pack_numbers(column))
    assert np.array_equal(np.isnan(back), np.isnan(column))
    there = ~np.isnan(column)
    assert back[there].tobytes() == column[there].tobytes()


@pytest.mark.parametrize("odd", [-0.0, 5e-324, 1.7976931348623157e308, 0.1 + 0.2, 2.0**53 + 2])
def test_that_numbers_no_decimal_print_reaches_come_back(odd: float) -> None:
    column = np.array([20.5, odd, 20.75])
    assert unpack_numbers(pack_numbers(column)).tobytes() == column.tobytes()


def test_that_an_hour_of_printed_temperatures_packs_near_what_its_noise_needs() -> None:
    random = np.random.default_rng(11)
    column = np.round(20 + np.cumsum(random.normal(0, 0.002, 3600)) + random.normal(0, 0.02, 3600), 2)
    steps = np.rint(100 * np.diff(column)).astype(int)
    share = np.unique_counts(steps).counts / steps.size
    least_bytes = -(share * np.log2(share)).sum() * steps.size / 8  # Shannon 1948: entropy of independent differences
    assert len(pack_numbers(column)) < 1.3 * least_bytes


@given(st.lists(st.binary()))
def test_that_parts_come_back_whole(parts: list[bytes]) -> None:
    assert split_parts(join_parts(parts)) == parts
