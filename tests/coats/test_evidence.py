"""What tests say of the quantities behind the times: against the exact answer where there is one, by quadrature."""

from __future__ import annotations

import math
from statistics import NormalDist

import numpy as np
import pytest

from studiowatch.coats.belief import PRIOR, SHARED, Evidence, belief_of
from studiowatch.coats.draws import FIELDS, GUESSED_SPREAD, SHEET_TIME_SPREAD
from studiowatch.coats.evidence import observed
from studiowatch.coats.learning import EDGE, MISTAKEN, Seen, prior_particles, weights
from studiowatch.coats.stage_table import ROW, nothing_reached
from studiowatch.coats.stages import Stage
from studiowatch.physics.ranges import Array

DRAWS = 2001
SLOW, THICK = FIELDS.index("sheet_time_factor"), FIELDS.index("thickness_factor")
HELD = prior_particles(DRAWS, 4, measured=False)
SPREAD = math.hypot(SHEET_TIME_SPREAD, GUESSED_SPREAD)  # of ln time in the made-up product below
TACKY = Seen(after_s=3600.0, stage=Stage.TACK_FREE, reached=False)
DRY = Seen(after_s=4700.0, stage=Stage.TACK_FREE, reached=True)


def table() -> Array:
    """Return a product whose ln time is exactly a sum: an hour times the sheet's factor times the thickness."""
    times = nothing_reached(DRAWS)
    z = HELD.coordinates
    times[ROW[Stage.TACK_FREE]] = 3600.0 * np.exp(SHEET_TIME_SPREAD * z[:, SLOW] + GUESSED_SPREAD * z[:, THICK])
    return times


def taught(*seen: Seen, of: Array | None = None) -> Evidence:
    times = table() if of is None else of
    before, after = weights(HELD, PRIOR, times, ()), weights(HELD, PRIOR, times, seen)
    told = observed(HELD, times, seen, before=before, after=after).shared()
    return Evidence(product="gloss", laid_ms=1, loadings=told.loadings, values=told.values)


def exact(*seen: Seen) -> tuple[float, float]:
    """Return mean and variance of ln(time over an hour) after the tests, by quadrature of Bayes' rule."""
    x = np.linspace(-6.0 * SPREAD, 6.0 * SPREAD, 20_001)
    density = np.exp(-0.5 * (x / SPREAD) ** 2)
    for test in seen:
        late = (math.log(test.after_s / 3600.0) - x) / EDGE
        reached = np.array([NormalDist().cdf(z) for z in late])
        density *= MISTAKEN + (1.0 - 2.0 * MISTAKEN) * (reached if test.reached else 1.0 - reached)
    density /= density.sum()
    mean = float(density @ x)
    return mean, float(density @ (x - mean) ** 2)


@pytest.mark.parametrize("seen", [(TACKY,), (DRY,), (TACKY, DRY)], ids=["tacky", "dry", "both"])
def test_that_a_product_is_moved_and_narrowed_as_bayes_rule_has_it(seen: tuple[Seen, ...]) -> None:
    belief = belief_of("gloss", [taught(*seen)])
    mean, variance = exact(*seen)
    # z | ln time is normal: E z = (s / S²) E x, var z = 1 - (s²/S²)(1 - var x / S²), with s of the sheet, S of both
    lever = SHEET_TIME_SPREAD / SPREAD**2
    error = 4.0 / math.sqrt(DRAWS)  # four standard errors of a mean of that many draws, in units of the prior's spread
    assert belief.mean[SLOW] == pytest.approx(lever * mean, abs=error)
    kept = 1.0 - lever * SHEET_TIME_SPREAD * (1.0 - variance / SPREAD**2)
    assert belief.covariance[SLOW, SLOW] == pytest.approx(kept, abs=error)


def test_that_nothing_is_claimed_of_what_does_not_move_the_time() -> None:
    belief = belief_of("gloss", [taught(TACKY, DRY)])
    others = [FIELDS.index(field) for field in SHARED if field != "sheet_time_factor"]
    # the fit of ln time is exact here, so what is left is rounding
    np.testing.assert_allclose(belief.mean[others], 0.0, atol=1e-6)
    np.testing.assert_allclose(np.diag(belief.covariance)[others], 1.0, atol=1e-6)


def test_that_a_test_that_says_nothing_teaches_nothing() -> None:
    dry_next_day = Seen(after_s=86_400.0, stage=Stage.TACK_FREE, reached=True)
    assert taught(dry_next_day).values.size == 0


def test_that_a_stage_that_draws_never_reach_teaches_nothing() -> None:
    damp = table()
    damp[ROW[Stage.TACK_FREE], ::5] = math.inf
    assert taught(TACKY, of=damp).values.size == 0


def test_that_two_stages_at_the_same_time_are_learnt_from_as_one() -> None:
    both = table()
    both[ROW[Stage.CLEAR]] = both[ROW[Stage.TACK_FREE]]
    clear = Seen(after_s=DRY.after_s, stage=Stage.CLEAR, reached=True)
    one, two = belief_of("gloss", [taught(TACKY, DRY)]), belief_of("gloss", [taught(TACKY, clear, of=both)])
    # a look at the other stage at the same moment is one and the same test of the time
    assert two.mean[SLOW] == pytest.approx(one.mean[SLOW], abs=0.01)


def test_that_no_tests_teach_nothing() -> None:
    assert taught().values.size == 0


def test_that_answers_against_every_draw_teach_nothing_and_do_not_fail() -> None:
    against = (
        Seen(after_s=40_000.0, stage=Stage.TACK_FREE, reached=False),
        Seen(after_s=100.0, stage=Stage.TACK_FREE, reached=True),
    )
    assert taught(*against).values.size == 0
