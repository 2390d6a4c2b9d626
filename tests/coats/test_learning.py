"""Tests and looks weigh the draws: by Bayes' rule on the stated chances, worked out beside each check."""

from __future__ import annotations

import math

import numpy as np
import pytest

from studiowatch.coats.belief import PRIOR, Belief
from studiowatch.coats.draws import FIELDS, sample
from studiowatch.coats.learning import (
    MISTAKEN,
    Seen,
    chance,
    counted,
    effective,
    particles_of,
    prior_particles,
    refreshed,
    surprising,
    weights,
)
from studiowatch.coats.stage_table import ROW, nothing_reached
from studiowatch.coats.stages import Stage
from studiowatch.physics.ranges import Array

HOUR_S = 3600.0


def reached(times_h: list[float]) -> Array:
    """Return a table in which the draws are tack-free at these ages; draw 0 is the nominal one."""
    table = nothing_reached(len(times_h))
    table[ROW[Stage.TACK_FREE]] = HOUR_S * np.array(times_h)
    return table


def tacky(after_h: float) -> Seen:
    return Seen(after_s=after_h * HOUR_S, stage=Stage.TACK_FREE, reached=False)


def dry(after_h: float) -> Seen:
    return Seen(after_s=after_h * HOUR_S, stage=Stage.TACK_FREE, reached=True)


def test_that_an_answer_far_from_the_edge_is_right_but_for_the_stated_mistakes() -> None:
    far = reached([1.0, 0.2, 5.0, math.inf])
    np.testing.assert_allclose(chance(tacky(1.0), far)[1:], [MISTAKEN, 1.0 - MISTAKEN, 1.0 - MISTAKEN])
    np.testing.assert_allclose(chance(dry(1.0), far)[1:], [1.0 - MISTAKEN, MISTAKEN, MISTAKEN])


def test_that_at_the_edge_either_answer_is_as_likely() -> None:
    at_the_edge = reached([1.0, 1.0])
    np.testing.assert_allclose(chance(tacky(1.0), at_the_edge), 0.5)
    np.testing.assert_allclose(chance(dry(1.0), at_the_edge), 0.5)


def test_that_weights_follow_bayes_rule() -> None:
    # three draws alike before; tacky at 1 h and dry at 3 h. Draw 1 (0.2 h) is against the first answer, draw 3 (9 h)
    # against the second: odds 0.05 x 0.95 : 0.95 x 0.95 : 0.95 x 0.05 = 1 : 19 : 1
    share = weights(prior_particles(4, 1, measured=False), PRIOR, reached([2.0, 0.2, 2.0, 9.0]), [tacky(1.0), dry(3.0)])
    np.testing.assert_allclose(share, [0.0, 1 / 21, 19 / 21, 1 / 21], rtol=1e-9)


def test_that_the_order_in_which_tests_are_recorded_does_not_matter() -> None:
    held, table = prior_particles(4, 1, measured=False), reached([2.0, 0.9, 2.0, 3.1])
    late = weights(held, PRIOR, table, [dry(3.0), tacky(1.0)])
    np.testing.assert_allclose(late, weights(held, PRIOR, table, [tacky(1.0), dry(3.0)]))


def test_that_an_answer_soon_corrected_is_gone() -> None:
    assert counted([dry(1.0), tacky(1.05), dry(3.0)]) == (tacky(1.05), dry(3.0))
    clear = Seen(after_s=HOUR_S + 60.0, stage=Stage.CLEAR, reached=False)
    assert counted([dry(1.0), clear]) == (dry(1.0), clear)


def test_that_no_answer_puts_any_draw_out_and_all_of_them_against_it_change_nothing() -> None:
    held, table = prior_particles(5, 1, measured=False), reached([2.0, 1.0, 2.0, 3.0, 2.5])
    share = weights(held, PRIOR, table, [tacky(30.0)])
    np.testing.assert_allclose(share[1:], 0.25)
    assert surprising([tacky(30.0)], table, weights(held, PRIOR, table, ())) == tacky(30.0)


def test_that_an_answer_that_some_draws_hold_is_no_surprise() -> None:
    held, table = prior_particles(5, 1, measured=False), reached([2.0, 1.0, 2.0, 3.0, 2.5])
    assert surprising([tacky(2.8)], table, weights(held, PRIOR, table, ())) is None


def test_that_contradicting_answers_leave_finite_weights() -> None:
    held = prior_particles(64, 1, measured=False)
    table = reached(np.linspace(1.0, 4.0, 64).tolist())
    share = weights(held, PRIOR, table, [dry(0.5), tacky(6.0), dry(0.7), tacky(8.0)] * 5)
    assert np.isfinite(share).all()
    assert share.sum() == pytest.approx(1.0)


def test_that_draws_of_a_product_nothing_is_known_of_are_the_sample_itself() -> None:
    assert prior_particles(32, 5, measured=True).draws is sample(32, 5, measured=True)


def test_that_weights_turn_draws_of_one_belief_into_draws_of_another() -> None:
    # importance sampling: the weighted mean is the mean of the other belief, within four standard errors of the
    # effective number of draws
    at = FIELDS.index("sheet_time_factor")
    moved = Belief(mean=np.where(np.arange(len(FIELDS)) == at, 0.8, 0.0), covariance=PRIOR.covariance)
    held = prior_particles(4001, 3, measured=False)
    share = weights(held, moved, nothing_reached(4001), ())
    allowed = 4.0 / math.sqrt(effective(share) * 4000)
    assert share @ held.coordinates[:, at] == pytest.approx(0.8, abs=allowed)


def test_that_refreshed_draws_have_the_weight_of_the_belief_they_stand_for() -> None:
    # half of them lie elsewhere, yet weighed they still say what was held before: no answer is counted twice
    before = PRIOR
    after = PRIOR.given(np.eye(len(FIELDS))[:1] * 3.0, np.array([4.0]))
    held = refreshed(before, after, 4001, 3, measured=False)
    share = weights(held, before, nothing_reached(4001), ())
    allowed = 4.0 / math.sqrt(effective(share) * 4000)
    assert held.coordinates[1:, 0].mean() > 0.4
    np.testing.assert_allclose(share @ held.coordinates, 0.0, atol=allowed)


def test_that_draw_0_of_a_belief_is_its_centre() -> None:
    belief = PRIOR.given(np.eye(len(FIELDS))[:1], np.array([1.0]))
    np.testing.assert_allclose(particles_of(belief, 16, 1, measured=False).coordinates[0], belief.mean)


def test_that_the_effective_number_is_all_for_equal_weights_and_one_for_a_single_one() -> None:
    assert effective(np.array([0.0, 0.25, 0.25, 0.25, 0.25])) == pytest.approx(1.0)
    assert effective(np.array([0.0, 1.0, 0.0, 0.0, 0.0])) == pytest.approx(0.25)
