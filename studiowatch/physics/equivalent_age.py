"""Equivalent age: time counted faster where it is warm, in the Arrhenius form of ASTM C1074.

A film that has lost its water drifts to the room's temperature. The drift is taken as exponential in 1/T, within
0.1 K of one in T over 10 K: then the age has a closed form, and a step may be a second or a month long.
"""

from __future__ import annotations

import numpy as np

from studiowatch.physics.constants import GAS_CONSTANT, REFERENCE_TEMPERATURE_K
from studiowatch.physics.ranges import Array

_NEGLIGIBLE = 1e-7  # the series stops when a term is less than this part of the relaxation time
_MOST_TERMS = 40  # far more than any drift inside the ranges needs
_NEWTON_STEPS = 4  # the age is nearly linear in time: three reach 1e-9


def rate(
    temperature_K: Array | float, energy_J_mol: Array | float, reference_K: float = REFERENCE_TEMPERATURE_K
) -> Array:
    """Return how many times faster than at `reference_K` time counts: 1 at the reference.

    Source: ASTM C1074, equivalent age with Q = E/R.
    """
    exponent = (1.0 / reference_K - 1.0 / np.asarray(temperature_K)) * (np.asarray(energy_J_mol) / GAS_CONSTANT)
    return np.exp(exponent)


def relaxing_temperature(dt_s: Array | float, start_K: Array, end_K: Array, relaxation_s: float) -> Array:
    """Return the temperature after `dt_s` of drifting from `start_K` to `end_K`, K."""
    return 1.0 / (1.0 / end_K + (1.0 / start_K - 1.0 / end_K) * np.exp(-np.asarray(dt_s) / relaxation_s))


def relaxing_age(dt_s: Array | float, start_K: Array, end_K: Array, relaxation_s: float, energy_J_mol: Array) -> Array:
    """Return the age gathered in `dt_s`, s, while the temperature drifts from `start_K` to `end_K`.

    The integral is rate(end) [t + τ Σ xᵏ/(k k!) (1 - exp(-k t/τ))], where x = E/R (1/end - 1/start).

    Parameters
    ----------
    dt_s : array_like
        Length of the step, s.
    start_K, end_K : ndarray
        Temperature now and far ahead, K.
    relaxation_s : float
        τ of the drift, s.
    energy_J_mol : ndarray
        Activation energy, J/mol.
    """
    offset = (1.0 / end_K - 1.0 / start_K) * (energy_J_mol / GAS_CONSTANT)
    decay = np.exp(-np.asarray(dt_s) / relaxation_s)
    term, left, total = offset, decay, offset * (1.0 - decay)
    for k in range(2, _MOST_TERMS):
        if np.abs(term).max() < _NEGLIGIBLE:
            break
        term = term * offset / k
        left = left * decay
        total = total + term / k * (1.0 - left)
    return rate(end_K, energy_J_mol) * (dt_s + relaxation_s * total)


def relaxing_time(age_s: Array, start_K: Array, end_K: Array, relaxation_s: float, energy_J_mol: Array) -> Array:
    """Return the time in which `relaxing_age` gathers `age_s`, s: its inverse, by Newton's rule."""
    offset = (1.0 / end_K - 1.0 / start_K) * (energy_J_mol / GAS_CONSTANT)
    end_rate = rate(end_K, energy_J_mol)
    time_s = age_s / end_rate
    for _ in range(_NEWTON_STEPS):
        miss = relaxing_age(time_s, start_K, end_K, relaxation_s, energy_J_mol) - age_s
        now = end_rate * np.exp(offset * np.exp(-time_s / relaxation_s))
        time_s = np.maximum(time_s - miss / now, 0.0)
    return time_s
