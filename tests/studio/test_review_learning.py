"""What outcomes teach: calibrated on made-up coats whose true curves are drawn from the prior itself."""

from __future__ import annotations

from math import sqrt

import numpy as np
import pytest

from studiowatch.studio.pieces import Outcome
from studiowatch.studio.review_causes import MEASURED, Cause, fit
from studiowatch.studio.review_curves import CURVES, LEAK, LEARNING, PRIOR, Curves, chance
from studiowatch.studio.review_learning import Told, binned, interval, learn, reliability

COATS = 300
CLOUDY = [outcome for outcome in Outcome if outcome is not Outcome.CLEAR]
DAMP = MEASURED.index(Cause.DAMP_AIR)


def made_up(seed: int, coats: int = COATS) -> tuple[Curves, list[Told]]:
    """Return true curves and coats that clouded by them: most in good order, a few causes now and then."""
    rng = np.random.default_rng(seed)
    true = Curves(
        shifts=rng.normal(0.0, [CURVES[cause].spread for cause in LEARNING]),
        leak=float(rng.beta(10.0 * LEAK, 10.0 * (1.0 - LEAK))),
    )
    even = np.array([CURVES[cause].even for cause in MEASURED])
    told = []
    for _ in range(coats):
        severe = rng.random(even.size) < 0.15
        severities = even * np.where(severe, rng.lognormal(-0.3, 0.5, even.size), 0.2 * rng.random(even.size))
        severities[MEASURED.index(Cause.STILL_CLEARING)] = 0.0
        told.append(Told(outcome=outcome(true, severities, rng), severities=severities[np.newaxis, :]))
    return true, told


def outcome(true: Curves, severities: np.ndarray, rng: np.random.Generator) -> Outcome:
    pushes = true.pushes(severities)
    if rng.random() > 1.0 - np.exp(-pushes.sum()):
        return Outcome.CLEAR
    cause = (*MEASURED, Cause.UNKNOWN)[rng.choice(pushes.size, p=pushes / pushes.sum())]
    return CLOUDY[rng.choice(len(CLOUDY), p=[fit(cause, look) for look in CLOUDY])]


@pytest.mark.parametrize("seed", [1, 2, 3])
def test_that_chances_come_true_within_sampling_error_on_300_coats(seed: int) -> None:
    """As many cloud as were told, overall and bin by bin, within three s.d. of a sum of such coin tosses."""
    _, told = made_up(seed)
    found = reliability(told)
    assert found.coats >= 280
    assert sum(one.coats for one in found.bins) == found.coats
    for one in found.bins:
        assert abs(one.came_true - one.told) <= 3.0 * sqrt(one.told * (1.0 - one.told) / one.coats) + 1e-9
    expected = sum(one.told * one.coats for one in found.bins)
    spread = sqrt(sum(one.coats * one.told * (1.0 - one.told) for one in found.bins))
    assert abs(found.clouded - expected) <= 3.0 * spread


def test_that_learning_brings_the_chances_nearer_to_the_true_ones() -> None:
    nearer = 0
    for seed in range(10, 18):
        true, told = made_up(seed)
        learnt = learn(told[:200])
        errors = [
            np.mean([abs(chance(curves, one.severities) - chance(true, one.severities)) for one in told[200:]])
            for curves in (PRIOR, learnt)
        ]
        nearer += errors[1] < errors[0]
    assert nearer >= 6  # of 8; by chance alone that would be one time in seven


def test_that_no_coat_leaves_the_judgement_and_ten_move_it_about_halfway() -> None:
    """The prior is worth ten coats: after ten at its even severity that all stayed clear, neither side has won."""
    assert learn([]) is PRIOR
    row = np.zeros((1, len(MEASURED)))
    row[0, DAMP] = CURVES[Cause.DAMP_AIR].even
    before = chance(PRIOR, row)
    after = chance(learn([Told(outcome=Outcome.CLEAR, severities=row)] * 10), row)
    assert 0.1 < after < 0.8 * before
    many = chance(learn([Told(outcome=Outcome.CLEAR, severities=row)] * 100), row)
    assert many < after / 2.0


def test_that_clouded_coats_with_its_look_make_a_cause_worse_and_leave_others_as_they_are() -> None:
    row = np.zeros((1, len(MEASURED)))
    row[0, DAMP] = CURVES[Cause.DAMP_AIR].even / 2.0
    learnt = learn([Told(outcome=Outcome.MILKY_ALL_OVER, severities=row)] * 10)
    assert learnt.shifts[LEARNING.index(Cause.DAMP_AIR)] < -0.1
    others = [shift for cause, shift in zip(LEARNING, learnt.shifts, strict=True) if cause is not Cause.DAMP_AIR]
    assert np.abs(others).max() < 1e-6
    assert learnt.learnt_from == 10


def test_that_specks_teach_nothing_of_clouding() -> None:
    row = np.zeros((1, len(MEASURED)))
    assert learn([Told(outcome=Outcome.SPECKS, severities=row)] * 20) is PRIOR


def test_that_the_interval_of_a_share_is_wilsons() -> None:
    """Against the form that solves (p − x)² = z² p(1 − p)/n: both ends satisfy it."""
    low, high = interval(0.3, 40)
    for end in (low, high):
        assert (0.3 - end) ** 2 == pytest.approx(1.645**2 * end * (1.0 - end) / 40)
    assert interval(0.0, 5)[0] == 0.0


def test_that_bins_hold_every_chance_and_empty_ones_are_left_out() -> None:
    found = binned(np.array([0.0, 0.05, 0.95, 1.0]), np.array([False, False, True, True]))
    assert [(one.low, one.coats, one.came_true) for one in found.bins] == [(0.0, 2, 0.0), (0.7, 2, 1.0)]
    assert (found.coats, found.clouded) == (4, 2)
