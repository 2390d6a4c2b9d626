"""Ranges hold the share of truths that they promise, before and after learning: a small form of the calibration.

The truths are binomial: of n studios, an honest 80 % range holds n·0.8 give or take. The bounds below are those that
an honest range oversteps in fewer than one seed out of a thousand on either side. The full form, with 200 studios and
four coats each, is tests/benchmarks/learning_calibration.py.
"""

from __future__ import annotations

from math import comb

import pytest

from studiowatch.coats.data_sheet import DataSheet

from .synthetic_studios import STAGES, Plan, Scores, run_group

PROMISED = 0.8
RARE = 1e-3
MANY, FEW = 400, 40


def bounds(n: int) -> tuple[float, float]:
    """Return the shares outside of which fewer than `RARE` of all seeds fall on either side, by exact sums."""
    chance = [comb(n, k) * PROMISED**k * (1.0 - PROMISED) ** (n - k) for k in range(n + 1)]
    low = next(k for k in range(n + 1) if sum(chance[: k + 1]) >= RARE)
    high = next(k for k in range(n, -1, -1) if sum(chance[k:]) >= RARE)
    return low / n, high / n


@pytest.fixture(scope="module")
def many(gloss: DataSheet) -> Scores:
    """Return studios in which only the weights change."""
    return run_group(gloss, Plan(studios=MANY, coats=1, seed=11, dry_anew=False))


@pytest.fixture(scope="module")
def few(gloss: DataSheet) -> Scores:
    """Return studios in which draws are taken anew, and a second coat is foretold from the first."""
    return run_group(gloss, Plan(studios=FEW, coats=2, seed=12, measured=True))


@pytest.mark.parametrize("stage", STAGES)
@pytest.mark.parametrize("moment", ["coat 1, before its tests", "coat 1, after its tests"])
def test_that_the_ranges_of_a_coat_hold_four_truths_in_five(many: Scores, moment: str, stage: str) -> None:
    low, high = bounds(MANY)  # 0.735 to 0.860
    assert low <= many[moment, stage].share_held <= high


@pytest.mark.parametrize("stage", STAGES)
@pytest.mark.parametrize("moment", ["coat 1, after its tests", "coat 2, before its tests"])
def test_that_ranges_dried_anew_and_carried_to_the_next_coat_hold_four_in_five(
    few: Scores, moment: str, stage: str
) -> None:
    low, high = bounds(FEW)  # 0.6 to 0.975
    assert low <= few[moment, stage].share_held <= high


@pytest.mark.parametrize("stage", STAGES)
def test_that_tests_narrow_the_ranges_of_their_coat(many: Scores, stage: str) -> None:
    assert many["coat 1, after its tests", stage].width < many["coat 1, before its tests", stage].width


@pytest.mark.parametrize("stage", STAGES)
def test_that_what_was_learnt_narrows_the_ranges_of_the_next_coat(few: Scores, stage: str) -> None:
    assert few["coat 2, before its tests", stage].width < few["coat 2, had nothing been learnt", stage].width
