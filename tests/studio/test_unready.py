"""A test that found a coat not dry: what of the model stands beside it, and when to test again."""

from __future__ import annotations

import pytest

from studiowatch.studio.pieces import Finding
from studiowatch.studio.unready import Unready

HOUR_MS = 3_600_000
TACKY = Unready.of(Finding.TACKY, 20 * HOUR_MS, laid_ms=0)


@pytest.mark.parametrize(("age_h", "wait_min"), [(0.5, 3), (20, 120), (9 * 24, 1296)])
def test_that_the_next_test_is_due_a_tenth_of_the_age_later(age_h: float, wait_min: int) -> None:
    laid_ms = 1_800_000_000_000
    found_ms = laid_ms + round(age_h * HOUR_MS)
    unready = Unready.of(Finding.TACKY, found_ms, laid_ms=laid_ms)
    assert unready.again_ms - found_ms == wait_min * 60_000


def test_that_only_a_time_well_after_the_test_stands_beside_it() -> None:
    assert TACKY.told_ms(None) is None
    assert TACKY.told_ms(3 * HOUR_MS) is None
    assert TACKY.told_ms(21 * HOUR_MS) is None  # within the blur of the very answer that speaks against it
    assert TACKY.told_ms(22 * HOUR_MS) is None
    assert TACKY.told_ms(23 * HOUR_MS) == 23 * HOUR_MS


def test_that_an_early_end_of_a_range_waits_for_the_new_test() -> None:
    assert TACKY.likely_ms(None) is None
    assert TACKY.likely_ms(3 * HOUR_MS) == 22 * HOUR_MS
    assert TACKY.likely_ms(25 * HOUR_MS) == 25 * HOUR_MS
