"""What is held of a room and its products: against the rules for normal distributions, worked out by hand."""

from __future__ import annotations

import math

import numpy as np
import pytest

from studiowatch.coats.belief import COAT, FARTHEST, HALVED_AFTER_COATS, PRIOR, SHARED, Evidence, belief_of
from studiowatch.coats.draws import FIELDS, SHEET_TIME_SPREAD

SLOW = FIELDS.index("sheet_time_factor")
DAMP = FIELDS.index("humidity_offset_pct")


def told(value: float, *, product: str = "gloss", laid_ms: int = 1, **loadings: float) -> Evidence:
    row = np.array([[loadings.get(field, 0.0) for field in SHARED]])
    return Evidence(product=product, laid_ms=laid_ms, loadings=row, values=np.array([value]))


def test_that_nothing_told_is_the_prior_itself() -> None:
    assert belief_of("gloss", []) is PRIOR


def test_that_one_observation_with_the_noise_of_the_prior_halves_the_variance() -> None:
    # textbook: N(0, 1) seen as 2 with variance 1 is N(1, 1/2)
    belief = belief_of("gloss", [told(2.0, sheet_time_factor=1.0)])
    assert belief.mean[SLOW] == pytest.approx(1.0)
    assert belief.covariance[SLOW, SLOW] == pytest.approx(0.5)


def test_that_nothing_is_claimed_of_a_coat_not_yet_laid() -> None:
    belief = belief_of("gloss", [told(2.0, sheet_time_factor=1.0, humidity_offset_pct=1.0)])
    for field in COAT:
        at = FIELDS.index(field)
        assert belief.mean[at] == 0.0
        np.testing.assert_array_equal(belief.covariance[at], np.eye(len(FIELDS))[at])


def test_that_many_coats_in_one_room_never_tell_a_product_apart_from_the_room() -> None:
    # each test sees product + room; however many there are, var(product | product + room known) = 1/2
    many = [told(2.0, laid_ms=at, sheet_time_factor=30.0, humidity_offset_pct=30.0) for at in range(200)]
    belief = belief_of("gloss", many)
    assert belief.covariance[SLOW, SLOW] == pytest.approx(0.5, abs=0.01)
    both = belief.covariance[np.ix_([SLOW, DAMP], [SLOW, DAMP])].sum()
    assert both < 0.01


def test_that_another_product_tells_of_the_room_and_not_of_this_product() -> None:
    other = [told(2.0, product="satin", humidity_offset_pct=1.0), told(9.0, product="satin", sheet_time_factor=5.0)]
    belief = belief_of("gloss", other)
    assert belief.mean[DAMP] == pytest.approx(1.0)
    assert belief.mean[SLOW] == pytest.approx(0.0)
    assert belief.covariance[SLOW, SLOW] == pytest.approx(1.0)


def test_that_older_coats_fade_so_that_a_product_stays_open_to_change() -> None:
    # shares 1, 2^-1/10, … add up to 1/(1 - 2^-1/10) = 14.9 at most: the variance never falls below 1/(1 + 14.9)
    steady = [told(1.0, laid_ms=at, sheet_time_factor=1.0) for at in range(500)]
    most = 1.0 / (1.0 - 0.5 ** (1.0 / HALVED_AFTER_COATS))
    assert belief_of("gloss", steady).covariance[SLOW, SLOW] == pytest.approx(1.0 / (1.0 + most))
    changed = [*steady, *(told(-1.0, laid_ms=500 + at, sheet_time_factor=1.0) for at in range(30))]
    assert belief_of("gloss", changed).mean[SLOW] < -0.5


def test_that_the_order_in_which_evidence_is_given_does_not_matter() -> None:
    some = [told(float(at), laid_ms=at, sheet_time_factor=1.0) for at in range(5)]
    np.testing.assert_allclose(belief_of("gloss", some).mean, belief_of("gloss", some[::-1]).mean)


def test_that_the_density_is_that_of_a_normal_distribution() -> None:
    # ln N(0; 0, 1) = -ln(2 pi)/2 per coordinate; one standard deviation away it is 1/2 less
    origin, away = np.zeros((1, len(FIELDS))), np.eye(len(FIELDS))[:1]
    assert PRIOR.log_density(origin)[0] == pytest.approx(-0.5 * len(FIELDS) * math.log(2.0 * math.pi))
    assert PRIOR.log_density(origin)[0] - PRIOR.log_density(away)[0] == pytest.approx(0.5)
    assert PRIOR.widened(2.0).log_density(origin)[0] - PRIOR.log_density(origin)[0] == pytest.approx(
        -len(FIELDS) * math.log(2.0)
    )


def test_that_draws_of_a_belief_have_its_moments() -> None:
    belief = belief_of("gloss", [told(2.0, sheet_time_factor=1.0, humidity_offset_pct=1.0)])
    drawn = belief.at(np.random.default_rng(1).standard_normal((20_000, len(FIELDS))))
    np.testing.assert_allclose(drawn.mean(axis=0), belief.mean, atol=4.0 / math.sqrt(20_000))
    np.testing.assert_allclose(np.cov(drawn.T), belief.covariance, atol=6.0 * math.sqrt(2.0 / 20_000))


def test_that_no_draw_lies_farther_out_than_drying_could_make() -> None:
    drawn = PRIOR.widened(4.0).at(np.random.default_rng(1).standard_normal((2000, len(FIELDS))))
    assert np.abs(drawn).max() == FARTHEST


def test_that_times_as_long_is_one_before_anything_was_seen_and_spreads_as_stated() -> None:
    low, middle, high = PRIOR.times_as_long()
    assert middle == 1.0
    # p90 of a normal distribution lies 1.2816 standard deviations up (any table)
    assert math.log(high) == pytest.approx(1.2816 * SHEET_TIME_SPREAD, rel=1e-4)
    assert low == pytest.approx(1.0 / high)
