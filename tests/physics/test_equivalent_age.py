from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.physics.equivalent_age import rate, relaxing_age, relaxing_temperature, relaxing_time

TAU_S = 300.0


@given(
    start_C=st.floats(0.0, 35.0),
    end_C=st.floats(0.0, 35.0),
    dt_s=st.floats(1.0, 1e6),
    energy_kJ_mol=st.floats(5.0, 90.0),
)
def test_that_the_closed_age_is_the_integral(start_C: float, end_C: float, dt_s: float, energy_kJ_mol: float) -> None:
    start, end, energy = np.array([start_C + 273.15]), np.array([end_C + 273.15]), np.array([energy_kJ_mol * 1e3])
    # Simpson's rule over the drift, finer where it is quick; beyond 30 τ the film has the room's temperature
    drift_s = min(dt_s, 30.0 * TAU_S)
    instants = np.linspace(0.0, drift_s, 6001)
    rates = rate(relaxing_temperature(instants, start, end, TAU_S), energy)
    weights = np.ones(6001)
    weights[1:-1:2], weights[2:-1:2] = 4.0, 2.0
    exact = drift_s / 18_000.0 * float(weights @ rates) + (dt_s - drift_s) * float(rate(end, energy)[0])
    closed = relaxing_age(dt_s, start, end, TAU_S, energy)[0]
    assert closed == pytest.approx(exact, rel=1e-6)


@given(start_C=st.floats(0.0, 35.0), end_C=st.floats(5.0, 35.0), age_s=st.floats(0.0, 1e6))
def test_that_time_is_the_inverse_of_age(start_C: float, end_C: float, age_s: float) -> None:
    start, end, energy = np.array([start_C + 273.15]), np.array([end_C + 273.15]), np.array([40e3])
    time_s = relaxing_time(np.array([age_s]), start, end, TAU_S, energy)
    assert relaxing_age(time_s, start, end, TAU_S, energy)[0] == pytest.approx(age_s, abs=0.01, rel=1e-7)


def test_that_steps_add_up() -> None:
    start, end, energy = np.array([285.0]), np.array([296.0]), np.array([50e3])
    middle = relaxing_temperature(200.0, start, end, TAU_S)
    parts = relaxing_age(200.0, start, end, TAU_S, energy) + relaxing_age(900.0, middle, end, TAU_S, energy)
    assert parts[0] == pytest.approx(relaxing_age(1100.0, start, end, TAU_S, energy)[0], rel=1e-9)


@given(start_C=st.floats(5.0, 30.0), change_K=st.floats(-10.0, 10.0), dt_s=st.floats(0.0, 3000.0))
def test_that_the_drift_is_all_but_exponential(start_C: float, change_K: float, dt_s: float) -> None:
    # Newton's law of cooling, within the 0.1 K that the module states for 10 K
    start_K = start_C + 273.15
    end_K = start_K + change_K
    newton_K = end_K - change_K * np.exp(-dt_s / TAU_S)
    drift_K = relaxing_temperature(dt_s, np.array([start_K]), np.array([end_K]), TAU_S)[0]
    assert drift_K == pytest.approx(newton_K, abs=0.1)
