"""The noisy-OR of the review: its arithmetic, its table of looks, and what it says of one cause."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest

from studiowatch.studio.pieces import Outcome
from studiowatch.studio.review_causes import MEASURED, TITLES, UNITS, Cause, fit
from studiowatch.studio.review_curves import CURVES, LEAK, PRIOR, Curves, chance, shares

CLOUDY = [outcome for outcome in Outcome if outcome is not Outcome.CLEAR]


def severities(**given: float) -> np.ndarray:
    row = np.zeros(len(MEASURED))
    for name, value in given.items():
        row[MEASURED.index(Cause[name.upper()])] = value
    return row[np.newaxis, :]


def test_that_the_names_are_those_that_other_programs_read() -> None:
    assert [cause.value for cause in Cause] == [
        "sealed-in-water",
        "damp-air",
        "below-mfft",
        "condensation",
        "skinned",
        "too-thick",
        "thinned",
        "matting-build-up",
        "touched",
        "still-clearing",
        "unknown",
    ]
    assert set(TITLES) == set(UNITS) == set(Cause)
    assert set(CURVES) == set(MEASURED) == set(Cause) - {Cause.UNKNOWN}


@pytest.mark.parametrize("cause", Cause)
def test_that_the_looks_of_a_cause_are_all_there_can_be(cause: Cause) -> None:
    assert sum(fit(cause, outcome) for outcome in CLOUDY) == pytest.approx(1.0)
    assert fit(cause, None) == 1.0


@pytest.mark.parametrize("cause", MEASURED)
def test_that_half_of_the_coats_cloud_at_the_even_severity_and_more_beyond(cause: Cause) -> None:
    no_leak = Curves(leak=0.0)
    even = severities(**{cause.name.lower(): CURVES[cause].even})
    assert chance(no_leak, even) == pytest.approx(0.5)
    chances = [chance(no_leak, even * factor) for factor in (0.0, 0.3, 0.7, 1.0, 1.5, 3.0, 100.0)]
    assert all(milder < worse for milder, worse in pairwise(chances))
    assert chances[0] == 0.0
    assert chances[-1] < 1.0


def test_that_causes_join_as_a_noisy_or_with_a_leak() -> None:
    """J. Pearl (1988), section 4.3: 1 − (1 − λ0) Π(1 − p_i)."""
    damp, thick = severities(damp_air=1.0), severities(too_thick=1.9)
    no_leak = Curves(leak=0.0)
    apart = [chance(no_leak, one) for one in (damp, thick)]
    joined = 1.0 - (1.0 - LEAK) * (1.0 - apart[0]) * (1.0 - apart[1])
    assert chance(PRIOR, damp + thick) == pytest.approx(joined)
    assert chance(PRIOR, severities()) == pytest.approx(LEAK)


def test_that_a_chance_over_draws_is_their_mean() -> None:
    one, other = severities(damp_air=0.2), severities(damp_air=4.0)
    both = np.vstack([one, other])
    assert chance(PRIOR, both) == pytest.approx((chance(PRIOR, one) + chance(PRIOR, other)) / 2.0)


def test_that_shares_sum_to_one_and_the_look_decides_between_causes_of_like_push() -> None:
    both = severities(below_mfft=CURVES[Cause.BELOW_MFFT].even, touched=CURVES[Cause.TOUCHED].even)
    for outcome in (*CLOUDY, Outcome.CLEAR, None):
        assert sum(shares(PRIOR, both, outcome).values()) == pytest.approx(1.0)
    powdery, specks = shares(PRIOR, both, Outcome.POWDERY), shares(PRIOR, both, Outcome.SPECKS)
    assert max(powdery, key=lambda cause: powdery[cause]) is Cause.BELOW_MFFT
    assert max(specks, key=lambda cause: specks[cause]) is Cause.TOUCHED


def test_that_nothing_recorded_leaves_the_unknown_alone() -> None:
    assert shares(PRIOR, severities(), Outcome.MILKY_ALL_OVER)[Cause.UNKNOWN] == pytest.approx(1.0)


def test_that_a_coat_in_its_normal_milky_time_is_not_blamed_on_what_may_cloud_it_later() -> None:
    fresh = severities(still_clearing=2.2, damp_air=CURVES[Cause.DAMP_AIR].even)
    later = severities(still_clearing=0.2, damp_air=CURVES[Cause.DAMP_AIR].even)
    assert shares(PRIOR, fresh, Outcome.MILKY_ALL_OVER)[Cause.STILL_CLEARING] > 0.9
    assert shares(PRIOR, later, Outcome.MILKY_ALL_OVER)[Cause.DAMP_AIR] > 0.9


def test_that_every_curve_says_what_it_stands_on() -> None:
    for curve in CURVES.values():
        assert "judgement" in curve.basis or "common practice" in curve.basis
