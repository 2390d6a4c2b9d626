"""The second part of drying: bound water leaves, the film warms to the room, and the ages run.

Everything is in closed form over a step in one air, so a step may be a second or a month long. All arrays hold one
value per draw.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np

from studiowatch.coats.draws import Draws
from studiowatch.coats.step_paths import Steps, following, picked
from studiowatch.physics.equivalent_age import Relaxation
from studiowatch.physics.ranges import Array

RELAXATION_S = 300.0  # s in which the film without free water drifts to the room's temperature; assumption
CLEARING_HUMIDITY = 0.85  # a film clears when it holds less water than it would keep at this humidity; assumption
THROUGH_SHARE = 0.05  # of the excess bound water still there when dry through: t95, as for paint; assumption
HARD_SHARE = 0.10  # of the excess bound water still there when dry hard: t90; assumption


def water_content(humidity: Array | float) -> Array:
    """Return the bound water that the dry polymer keeps at this humidity (0-1), kg/kg: 1.2 % at 50 % RH; assumption."""
    activity = np.asarray(humidity)
    return (0.012 / (0.5 / 0.6)) * activity / (1.0 - 0.8 * activity)


_KEPT_AT_REFERENCE = float(water_content(0.5))  # kg/kg
# kg/kg; 66 of the 351 kg/m³ of water that packed polymer holds, well under the four fifths that it may be
BOUND_AS_LAID = 5.0 * _KEPT_AT_REFERENCE
CLEAR_BELOW = float(water_content(CLEARING_HUMIDITY))  # kg/kg
EXCESS_AT_REFERENCE = BOUND_AS_LAID - _KEPT_AT_REFERENCE  # kg/kg


@dataclass(frozen=True, kw_only=True, eq=False)
class Drift:
    """A film without free water in one air: its temperature and its ages, in closed form of the time since it began.

    The drift is exponential in the inverse temperature. Arrays are (draws,), or (steps, draws) of steps one after
    another.

    Attributes
    ----------
    inverse_film, inverse_air : ndarray
        Inverse of the film's temperature at the start, and of that which it drifts to, 1/K.
    """

    inverse_film: Array
    inverse_air: Array
    draws: Draws

    @classmethod
    def between(cls, film_K: Array, air_K: Array, draws: Draws) -> Drift:
        """Return the drift from `film_K` to `air_K`."""
        return cls(inverse_film=1.0 / film_K, inverse_air=1.0 / air_K, draws=draws)

    @classmethod
    def through(cls, inverse_film: Array, inverse_airs: Array, dt_s: Array, draws: Draws) -> tuple[Drift, Array]:
        """Return the drifts of steps of `dt_s` one after another, and the inverse temperature after the last, 1/K."""
        exponent = -dt_s / RELAXATION_S
        path = following(inverse_film, np.exp(exponent), inverse_airs * -np.expm1(exponent))
        return cls(inverse_film=path[:-1], inverse_air=inverse_airs, draws=draws), path[-1]

    def at(self, steps: Steps) -> Drift:
        """Return of each draw the drift in its own step."""
        return self._only if len(self.inverse_film) == 1 else self._picked(steps)

    @cached_property
    def _only(self) -> Drift:
        return self._picked(np.zeros(len(self.draws), dtype=np.intp))

    def _picked(self, steps: Steps) -> Drift:
        return Drift(
            inverse_film=picked(self.inverse_film, steps),
            inverse_air=picked(self.inverse_air, steps),
            draws=self.draws,
        )

    @cached_property
    def _gap(self) -> Array:
        return self.inverse_air - self.inverse_film

    @cached_property
    def _diffusion(self) -> Relaxation:
        return self._relaxation(self.draws.recoat_energy_J_mol)

    @cached_property
    def _cure(self) -> Relaxation:
        return self._relaxation(self.draws.cure_energy_J_mol)

    def _relaxation(self, energy_J_mol: Array) -> Relaxation:
        return Relaxation.across(self._gap, self.inverse_air, RELAXATION_S, energy_J_mol)

    def temperature(self, dt_s: Array | float) -> Array:
        """Return the film's temperature after `dt_s`, K."""
        return 1.0 / (self.inverse_air - self._gap * np.exp(-dt_s / RELAXATION_S))

    def diffusion_age(self, dt_s: Array | float) -> Array:
        """Return the time at 23 °C in which as much bound water would leave, s."""
        return self._diffusion.age(dt_s)

    def diffusion_time(self, age_s: Array) -> Array:
        """Return the time in which `diffusion_age` reaches `age_s`, s."""
        return self._diffusion.time(age_s)

    def cure_age(self, dt_s: Array | float) -> Array:
        """Return the time at 23 °C in which the film would cure as much, s."""
        return self._cure.age(dt_s)

    def cure_time(self, age_s: Array) -> Array:
        """Return the time in which `cure_age` reaches `age_s`, s."""
        return self._cure.time(age_s)

    def time_below(self, limit_K: Array, dt_s: Array | float) -> Array:
        """Return how long in `dt_s` the film is colder than `limit_K`, s."""
        start, end = 1.0 / limit_K - self.inverse_film, 1.0 / limit_K - self.inverse_air
        crosses = start * end < 0.0
        ratio = np.where(crosses, start / np.where(crosses, -end, 1.0), 0.0)
        crossing = np.minimum(RELAXATION_S * np.log1p(ratio), dt_s)
        cold_first = np.where(crosses, crossing, dt_s)
        return np.where(start < 0.0, cold_first, np.where(crosses, dt_s - crossing, 0.0))


def humidity_rate(humidity: Array, strength: Array) -> Array:
    """Return how fast the recoat age runs at this humidity (0-1): 1 at 50 % RH, 0 where no bound water can leave."""
    return recoat_pace(water_content(humidity), strength)


def recoat_pace(kept: Array, strength: Array) -> Array:
    """Return `humidity_rate` of the air in which the polymer keeps the bound water `kept`, kg/kg."""
    pace = _KEPT_AT_REFERENCE - kept
    pace *= strength / EXCESS_AT_REFERENCE
    pace += 1.0
    return np.maximum(pace, 0.0, out=pace)
