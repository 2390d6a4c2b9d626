"""When other draws are taken, and that they are dried to ranges that hold what she saw."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace

import numpy as np
import pytest

from studiowatch.coats.belief import PRIOR
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.learning import Seen, effective
from studiowatch.coats.readiness import ready_at
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.coats.standing import LEAST_EFFECTIVE, MOST_ROUNDS, WIDENING, Standing, standing_on
from studiowatch.physics.ranges import Array
from studiowatch.service.sheet_shelf import built_in_sheets

from .dried_films import looked_ahead

FRESH = standing_on(PRIOR, 256, 5, measured=False)


def settled(sheet: DataSheet, seen: Sequence[Seen]) -> tuple[Standing, Array]:
    standing, table = FRESH, looked_ahead(sheet, FRESH)
    while (other := standing.anew(table, seen)) is not None:
        standing, table = other, looked_ahead(sheet, other)
    return standing, table


def tack(share_of_nominal: float, nominal_s: float, *, reached: bool) -> Seen:
    return Seen(after_s=share_of_nominal * nominal_s, stage=Stage.TACK_FREE, reached=reached)


@pytest.fixture(scope="module")
def nominal_s(gloss: DataSheet) -> float:
    return float(looked_ahead(gloss, FRESH)[ROW[Stage.TACK_FREE], 0])


def test_that_draws_stay_without_tests(gloss: DataSheet) -> None:
    assert FRESH.anew(looked_ahead(gloss, FRESH), ()) is None


def test_that_a_test_that_fits_needs_no_other_draws(gloss: DataSheet, nominal_s: float) -> None:
    assert FRESH.anew(looked_ahead(gloss, FRESH), [tack(0.9, nominal_s, reached=False)]) is None


def test_that_a_narrow_bracket_out_in_the_tail_is_filled_with_draws(gloss: DataSheet, nominal_s: float) -> None:
    seen = [tack(share, nominal_s, reached=share > 1.45) for share in (1.3, 1.4, 1.5, 1.6)]
    first = looked_ahead(gloss, FRESH)
    standing, table = settled(gloss, seen)
    assert effective(FRESH.weights(first, seen)) < LEAST_EFFECTIVE
    assert effective(standing.weights(table, seen)) > 1.5 * effective(FRESH.weights(first, seen))
    assert 1 <= standing.rounds <= MOST_ROUNDS
    ready = ready_at(table[ROW[Stage.TACK_FREE]], standing.weights(table, seen))
    assert ready.p50_s is not None
    assert ready.p50_s == pytest.approx(1.45 * nominal_s, rel=0.05)  # the edge of an answer is blurred by 5 %


def test_that_the_nominal_run_comes_to_agree_with_what_she_saw(gloss: DataSheet, nominal_s: float) -> None:
    standing, table = settled(gloss, [tack(share, nominal_s, reached=False) for share in (1.1, 1.2, 1.3)])
    assert standing.rounds >= 1
    assert table[ROW[Stage.TACK_FREE], 0] > 1.3 * nominal_s


def test_that_other_draws_say_the_same_as_the_first_ones_where_those_are_many(
    gloss: DataSheet, nominal_s: float
) -> None:
    # importance sampling: the same posterior from whatever draws; 4000 draws of the prior are the reference
    seen = [tack(1.15, nominal_s, reached=False), tack(1.45, nominal_s, reached=True)]
    many = standing_on(PRIOR, 4000, 9, measured=False)
    table = looked_ahead(gloss, many)
    reference = ready_at(table[ROW[Stage.DRY_TO_RECOAT]], many.weights(table, seen))
    standing, other_table = settled(gloss, seen)
    assert standing.rounds >= 1
    found = ready_at(other_table[ROW[Stage.DRY_TO_RECOAT]], standing.weights(other_table, seen))
    for quantile in ("p10_s", "p50_s", "p90_s"):
        # a quantile of about 80 draws that count, ln spread 0.2: four standard errors are 4 x 1.7 x 0.2 / √80 = 0.15
        assert getattr(found, quantile) == pytest.approx(getattr(reference, quantile), rel=0.15)


def test_that_an_answer_against_all_draws_widens_them_and_is_named(gloss: DataSheet, nominal_s: float) -> None:
    against = tack(4.0, nominal_s, reached=False)
    other = FRESH.anew(looked_ahead(gloss, FRESH), [against])
    assert other is not None
    assert other.surprise == against
    np.testing.assert_allclose(other.belief.covariance, WIDENING**2 * PRIOR.covariance)
    standing, table = settled(gloss, [against])
    first = ready_at(looked_ahead(gloss, FRESH)[ROW[Stage.TACK_FREE]])
    wide = ready_at(table[ROW[Stage.TACK_FREE]], standing.weights(table, [against]))
    assert first.p10_s is not None
    assert first.p90_s is not None
    assert wide.p10_s is not None
    assert wide.p90_s is not None
    assert math.log(wide.p90_s / wide.p10_s) > math.log(first.p90_s / first.p10_s)


def test_that_a_repeated_answer_against_the_sheet_is_believed_in_the_end(gloss: DataSheet, nominal_s: float) -> None:
    slow = [tack(share, nominal_s, reached=False) for share in (1.6, 2.0, 2.4, 2.8)]
    standing, table = settled(gloss, slow)
    ready = ready_at(table[ROW[Stage.TACK_FREE]], standing.weights(table, slow))
    assert ready.p50_s is not None
    assert ready.p50_s > 2.4 * nominal_s


def test_that_every_sheet_that_ships_can_be_tied_to_widened_draws() -> None:
    for sheet in built_in_sheets().values():
        widened = standing_on(PRIOR.widened(WIDENING), 256, 3, measured=False)
        assert np.isfinite(looked_ahead(sheet, widened)[ROW[Stage.CURED]]).all()


def test_that_draws_are_taken_anew_a_few_times_at_most(gloss: DataSheet, nominal_s: float) -> None:
    tired = replace(FRESH, rounds=MOST_ROUNDS)
    assert tired.anew(looked_ahead(gloss, FRESH), [tack(9.0, nominal_s, reached=False)]) is None
