from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.coats.bound_water import (
    BOUND_AS_LAID,
    CLEAR_BELOW,
    Drift,
    humidity_rate,
    water_content,
)
from studiowatch.coats.draws import NOMINAL


def test_that_bound_water_follows_its_stated_points() -> None:
    # stated in the model: 1.2 % at 50 % RH and 3.8 % at 85 %, half the last digit; five times the first as laid
    assert water_content(0.5) == pytest.approx(0.012, abs=5e-4)
    assert pytest.approx(0.038, abs=5e-4) == CLEAR_BELOW
    assert BOUND_AS_LAID / float(water_content(0.5)) == pytest.approx(5.0)
    assert water_content(0.0) == 0.0


def test_that_the_recoat_age_runs_at_one_at_the_reference_and_stops_in_saturated_air() -> None:
    assert humidity_rate(np.array([0.5]), np.ones(1))[0] == pytest.approx(1.0)
    assert humidity_rate(np.array([1.0]), np.ones(1))[0] == 0.0
    rates = humidity_rate(np.linspace(0.0, 1.0, 50), np.ones(50))
    assert (np.diff(rates) <= 0.0).all()


@given(start_C=st.floats(5.0, 30.0), change_K=st.floats(-10.0, 10.0), dt_s=st.floats(0.0, 3000.0))
def test_that_the_drift_is_all_but_exponential(start_C: float, change_K: float, dt_s: float) -> None:
    # Newton's law of cooling with τ = 300 s, within the 0.1 K that `equivalent_age` states for 10 K
    start_K = start_C + 273.15
    end_K = start_K + change_K
    newton_K = end_K - change_K * np.exp(-dt_s / 300.0)
    drift = Drift.between(np.array([start_K]), np.array([end_K]), NOMINAL)
    assert drift.temperature(dt_s)[0] == pytest.approx(newton_K, abs=0.1)


@pytest.mark.parametrize(
    ("film_C", "air_C", "limit_C"), [(8.0, 14.0, 10.0), (14.0, 8.0, 10.0), (8.0, 9.0, 10.0), (12.0, 14.0, 10.0)]
)
@pytest.mark.parametrize("span_s", [50.0, 400.0, 5000.0])
def test_that_the_time_below_a_limit_is_what_small_steps_count(
    film_C: float, air_C: float, limit_C: float, span_s: float
) -> None:
    drift = Drift.between(np.array([film_C + 273.15]), np.array([air_C + 273.15]), NOMINAL)
    instants = np.linspace(0.0, span_s, 200_001)
    counted_s = float((drift.temperature(instants) < limit_C + 273.15).mean()) * span_s
    told_s = drift.time_below(np.array([limit_C + 273.15]), np.array([span_s]))[0]
    assert told_s == pytest.approx(counted_s, abs=span_s / 1e5)
