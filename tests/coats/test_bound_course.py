from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.coats.bound_course import BoundCourse
from studiowatch.coats.seal import Seep
from studiowatch.physics.ranges import Array

KEPT = 0.012
POLYMER_KG_M2 = 0.035


def one(value: float) -> Array:
    return np.array([value])


def fed(*, bound: float, below: float, rate_per_s: float, seeping_per_s: float) -> BoundCourse:
    return BoundCourse.over(
        kept=one(KEPT),
        bound=one(bound),
        rate_per_s=one(rate_per_s),
        polymer_kg_m2=one(POLYMER_KG_M2),
        seep=Seep(
            water_kg_m2=one(POLYMER_KG_M2 * below), polymer_kg_m2=one(POLYMER_KG_M2), rate_per_s=one(seeping_per_s)
        ),
    )


@given(
    bound=st.floats(0.0, 0.2),
    below=st.floats(1e-3, 1.5),
    rate_per_s=st.floats(1e-6, 1e-3),
    share=st.floats(0.05, 0.95),
    spans=st.floats(0.01, 20.0),
)
def test_that_no_water_is_lost_or_made_between_two_films(
    bound: float, below: float, rate_per_s: float, share: float, spans: float
) -> None:
    # what left the lower film must be in the upper one or have left it: the upper loses at the rate λ times its excess,
    # whose integral is written down here from the differential equations, not from the course
    slow_per_s, span_s = share * rate_per_s, spans / rate_per_s
    course = fed(bound=bound, below=below, rate_per_s=rate_per_s, seeping_per_s=slow_per_s)
    excess, excess_below = bound - KEPT, below - KEPT
    gone, gone_below = -np.expm1(-rate_per_s * span_s), -np.expm1(-slow_per_s * span_s)
    gain = excess_below * slow_per_s / (rate_per_s - slow_per_s)
    evaporated = rate_per_s * (excess * gone / rate_per_s + gain * (gone_below / slow_per_s - gone / rate_per_s))
    left_below = excess_below * gone_below
    now = float(course.at(one(span_s))[0])
    assert bound + left_below - evaporated == pytest.approx(now, rel=1e-9, abs=1e-12)


@pytest.mark.parametrize("below", [0.03, 0.06, 0.5])
def test_that_the_course_is_what_small_steps_give(below: float) -> None:
    # two stores in a row, stepped by the midpoint rule with 20 000 steps: right to 1e-6 of the water
    rate_per_s, slow_per_s, span_s = 1.3e-4, 4e-5, 40_000.0
    course = fed(bound=0.06, below=below, rate_per_s=rate_per_s, seeping_per_s=slow_per_s)
    upper, lower, dt_s = 0.06, below, span_s / 20_000
    for _ in range(20_000):
        middle_lower = lower - 0.5 * dt_s * slow_per_s * (lower - KEPT)
        middle_upper = upper + 0.5 * dt_s * (slow_per_s * (lower - KEPT) - rate_per_s * (upper - KEPT))
        upper += dt_s * (slow_per_s * (middle_lower - KEPT) - rate_per_s * (middle_upper - KEPT))
        lower -= dt_s * slow_per_s * (middle_lower - KEPT)
    assert course.at(one(span_s))[0] == pytest.approx(upper, rel=1e-6)


@given(bound=st.floats(0.02, 0.2), below=st.floats(0.0, 1.5), level=st.floats(0.015, 0.1))
def test_that_the_age_below_a_level_is_where_the_course_last_crosses_it(
    bound: float, below: float, level: float
) -> None:
    course, end = fed(bound=bound, below=below, rate_per_s=1.3e-4, seeping_per_s=4e-5), one(1e6)
    age_s = float(course.age_below(level, end)[0])
    after = [float(course.at(one(age_s + later_s))[0]) for later_s in (1.0, 100.0, 10_000.0)]
    assert max(after) <= level + 1e-9
    if age_s > 0.0:
        assert course.at(one(age_s))[0] == pytest.approx(level, rel=1e-6)


def test_that_a_film_over_nothing_runs_as_one_exponential() -> None:
    course = BoundCourse.over(
        kept=one(KEPT), bound=one(0.06), rate_per_s=one(1e-4), polymer_kg_m2=one(POLYMER_KG_M2), seep=None
    )
    assert course.at(one(1e4))[0] == pytest.approx(KEPT + 0.048 / np.e)
    assert course.age_below(KEPT + 0.048 / np.e, one(1e6))[0] == pytest.approx(1e4)
