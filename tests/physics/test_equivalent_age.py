from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.physics.equivalent_age import Relaxation, rate
from studiowatch.physics.ranges import Array

TAU_S = 300.0


def drifting_K(dt_s: Array | float, start_K: Array, end_K: Array) -> Array:
    """Return the temperature of a drift that is exponential in 1/T."""
    return 1.0 / (1.0 / end_K + (1.0 / start_K - 1.0 / end_K) * np.exp(-np.asarray(dt_s) / TAU_S))


def between(start_K: Array, end_K: Array, energy_J_mol: Array) -> Relaxation:
    return Relaxation.across(1.0 / end_K - 1.0 / start_K, 1.0 / end_K, TAU_S, energy_J_mol)


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
    rates = rate(drifting_K(instants, start, end), energy)
    weights = np.ones(6001)
    weights[1:-1:2], weights[2:-1:2] = 4.0, 2.0
    exact = drift_s / 18_000.0 * float(weights @ rates) + (dt_s - drift_s) * float(rate(end, energy)[0])
    closed = between(start, end, energy).age(dt_s)[0]
    assert closed == pytest.approx(exact, rel=1e-6)


@given(start_C=st.floats(0.0, 35.0), end_C=st.floats(5.0, 35.0), age_s=st.floats(0.0, 1e6))
def test_that_time_is_the_inverse_of_age(start_C: float, end_C: float, age_s: float) -> None:
    start, end, energy = np.array([start_C + 273.15]), np.array([end_C + 273.15]), np.array([40e3])
    relaxation = between(start, end, energy)
    time_s = relaxation.time(np.array([age_s]))
    assert relaxation.age(time_s)[0] == pytest.approx(age_s, abs=0.01, rel=1e-7)


@pytest.mark.parametrize(("start_C", "end_C"), [(50.0, -20.0), (-20.0, 50.0), (30.0, 5.0)])
@pytest.mark.parametrize("energy_kJ_mol", [38.0, 60.0, 105.0])
@pytest.mark.parametrize("time_s", [10.0, 200.0, 3000.0])
def test_that_time_is_the_inverse_of_age_from_one_end_of_the_air_to_the_other(
    start_C: float, end_C: float, energy_kJ_mol: float, time_s: float
) -> None:
    # 105 kJ/mol is three s.d. over the centre of the cure; a hundredth of a second is what no stage needs
    start, end, energy = np.array([start_C + 273.15]), np.array([end_C + 273.15]), np.array([energy_kJ_mol * 1e3])
    drift = between(start, end, energy)
    assert drift.time(drift.age(np.array([time_s])))[0] == pytest.approx(time_s, abs=0.01)


def test_that_steps_add_up() -> None:
    start, end, energy = np.array([285.0]), np.array([296.0]), np.array([50e3])
    middle = drifting_K(200.0, start, end)
    whole, rest = (between(begun, end, energy) for begun in (start, middle))
    assert (whole.age(200.0) + rest.age(900.0))[0] == pytest.approx(whole.age(1100.0)[0], rel=1e-9)
