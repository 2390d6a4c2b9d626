from __future__ import annotations

import numpy as np
import pytest

from studiowatch.room.baseline import FIRST_SAMPLES, MEMORY_SAMPLES, SPACING_MS, Baseline, begun_anew, learn


def taught(values: list[float], step_ms: int = SPACING_MS) -> Baseline:
    baseline = Baseline()
    for index, value in enumerate(values):
        baseline = learn(baseline, index * step_ms, value)
    return baseline


def test_that_ten_readings_are_enough_at_any_cadence() -> None:
    assert not taught([0.05] * (FIRST_SAMPLES - 1), step_ms=1000).learnt
    assert taught([0.05] * FIRST_SAMPLES, step_ms=1000).learnt
    assert taught([0.05] * FIRST_SAMPLES, step_ms=60_000).learnt


def test_that_once_learnt_one_reading_in_ten_seconds_is_taken() -> None:
    baseline = taught([0.05] * 20, step_ms=1000)
    assert len(baseline.samples) == FIRST_SAMPLES + 1


def test_that_the_memory_is_bounded_and_forgets_the_oldest() -> None:
    baseline = taught([9.0] * 100 + [1.0] * MEMORY_SAMPLES)
    assert len(baseline.samples) == MEMORY_SAMPLES
    assert baseline.centre == 1.0


def test_that_a_full_memory_estimates_the_spread_of_normal_noise() -> None:
    # sigma is 1 by construction; the median absolute deviation of 60 values errs by about 15 % (one in a thousand 50 %)
    rng = np.random.default_rng(4)
    assert taught(list(rng.normal(10.0, 1.0, MEMORY_SAMPLES))).spread == pytest.approx(1.0, rel=0.5)


def test_that_a_third_of_wild_values_hardly_moves_the_baseline() -> None:
    rng = np.random.default_rng(5)
    values = list(rng.normal(0.05, 0.01, 40)) + [0.6] * 20
    baseline = taught(values)
    assert baseline.centre == pytest.approx(0.05, abs=0.02)
    assert baseline.spread < 0.05


def test_that_deviation_never_takes_the_spread_under_the_floor() -> None:
    baseline = taught([0.05] * MEMORY_SAMPLES)
    assert baseline.spread == 0.0
    assert baseline.deviation(0.09, floor=0.02) == pytest.approx(2.0)


def test_that_the_first_samples_are_taken_as_showing_only_half_of_the_spread() -> None:
    few, many = taught([0.04, 0.06] * 5), taught([0.04, 0.06] * 30)
    assert few.spread == many.spread
    assert few.deviation(0.1, floor=0.001) == pytest.approx(many.deviation(0.1, floor=0.001) / 2)


def test_that_a_baseline_begun_anew_keeps_the_order_of_the_spread_until_its_memory_is_full() -> None:
    baseline = begun_anew(taught([0.0, 1.0] * 30))
    assert not baseline.learnt
    deviations = []
    for index in range(MEMORY_SAMPLES):
        baseline = learn(baseline, index * SPACING_MS, 5.0)
        deviations.append(baseline.deviation(6.0, floor=0.01))
    assert deviations[FIRST_SAMPLES - 1] == pytest.approx(1.0 / (1.4826 * 0.5))
    assert deviations == sorted(deviations)
    assert deviations[-1] == pytest.approx(100.0)
