"""Equivalent age: time counted faster where it is warm, in the Arrhenius form of ASTM C1074.

A film that has lost its water drifts to the room's temperature. The drift is taken as exponential in 1/T, within
0.1 K of one in T over 10 K: then the age has a closed form, and a step may be a second or a month long.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from studiowatch.physics.constants import GAS_CONSTANT, REFERENCE_TEMPERATURE_K
from studiowatch.physics.ranges import Array

_NEGLIGIBLE = 1e-7  # the series stops when a term is less than this part of the relaxation time
_MOST_TERMS = 40  # far more than any drift inside the ranges needs
_CLOSE_S = 1e-3  # s, a miss after which the step just taken is right to 1e-8 s
_NEWTON_STEPS = 20  # at most: over 10 K the age is nearly linear in time, and three reach 1e-9; over 70 K it takes 13


def rate(
    temperature_K: Array | float, energy_J_mol: Array | float, reference_K: float = REFERENCE_TEMPERATURE_K
) -> Array:
    """Return how many times faster than at `reference_K` time counts: 1 at the reference.

    Source: ASTM C1074, equivalent age with Q = E/R.
    """
    exponent = (1.0 / reference_K - 1.0 / np.asarray(temperature_K)) * (np.asarray(energy_J_mol) / GAS_CONSTANT)
    return np.exp(exponent)


@dataclass(frozen=True, kw_only=True, eq=False)
class Relaxation:
    """How time counts while the temperature drifts from one to another.

    Attributes
    ----------
    offset : ndarray
        E/R (1/end - 1/start).
    end_rate : ndarray
        The rate far ahead.
    relaxation_s : float
        τ of the drift, s.
    factors : sequence of float
        τ/(k k!) for those terms of the series that count, s.
    """

    offset: Array
    end_rate: Array
    relaxation_s: float
    factors: Sequence[float]

    @classmethod
    def across(cls, gap: Array, inverse_end: Array, relaxation_s: float, energy_J_mol: Array) -> Relaxation:
        """Return the relaxation over a `gap` of inverse temperatures to `inverse_end`, 1/K, at an activation energy."""
        slope_K = energy_J_mol / GAS_CONSTANT
        end_rate = 1.0 / REFERENCE_TEMPERATURE_K - inverse_end
        end_rate *= slope_K
        np.exp(end_rate, out=end_rate)
        offset = gap * slope_K
        factors = _factors(max(float(offset.max()), -float(offset.min())), relaxation_s)
        return cls(offset=offset, end_rate=end_rate, relaxation_s=relaxation_s, factors=factors)

    def age(self, dt_s: Array | float) -> Array:
        """Return the age gathered in `dt_s`, s.

        The integral is rate(end) [t + τ Σ xᵏ/(k k!) (1 - exp(-k t/τ))], where x is the offset.
        """
        return self._age(dt_s, np.exp(-dt_s / self.relaxation_s))

    def time(self, age_s: Array) -> Array:
        """Return the time in which `age` gathers `age_s`, s: its inverse, by Newton's rule."""
        time_s = age_s / self.end_rate
        for _ in range(_NEWTON_STEPS):
            decay = np.exp(-time_s / self.relaxation_s)
            miss_s = self._age(time_s, decay) - age_s
            time_s = np.maximum(time_s - miss_s / (self.end_rate * np.exp(self.offset * decay)), 0.0)
            if np.abs(miss_s).max() < _CLOSE_S:
                break
        return time_s

    def _age(self, dt_s: Array | float, decay: Array | float) -> Array:
        if np.shape(decay) == self.offset.shape:
            series = self._whole - _polynomial(self.factors, self.offset * decay)
        else:  # a time that all draws share is worked into the factors
            series = _polynomial([factor * (1.0 - decay**k) for k, factor in enumerate(self.factors, 1)], self.offset)
        series += dt_s
        series *= self.end_rate
        return series

    @cached_property
    def _whole(self) -> Array:
        """The series after a time without end, s."""
        return _polynomial(self.factors, self.offset)


def _factors(size: float, relaxation_s: float) -> Sequence[float]:
    """Return τ/(k k!) for the terms that count where no offset is larger than `size`, s."""
    factors, factorial, largest = [relaxation_s], 1.0, size
    for k in range(2, _MOST_TERMS):
        if largest < _NEGLIGIBLE:
            break
        factorial, largest = factorial * k, largest * size / k
        factors.append(relaxation_s / (k * factorial))
    return factors


def _polynomial(factors: Sequence[Array | float], x: Array) -> Array:
    """Return Σ factorₖ xᵏ, k from 1 on."""
    total = x * factors[-1]
    for factor in reversed(factors[:-1]):
        total += factor
        total *= x
    return total
