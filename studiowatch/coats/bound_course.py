"""How the bound water of a film runs over one step in one air, fed from the films below or not, in closed form."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from studiowatch.coats.seal import Seep
from studiowatch.coats.step_paths import following
from studiowatch.physics.ranges import Array

_TINY = 1e-12  # keeps a gap that is 0 in a damp room from dividing
_HALVINGS = 50  # of a step: to a part in 1e15


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class BoundCourse:
    """Bound water as a function of the age gathered in the step, s at 23 °C.

    The film loses its excess e at the rate λ and gains what the films below lose at the rate μ < λ, so that
    e = e₀ exp(-λt) + f [exp(-μt) - exp(-λt)] with f = e_below μ/(λ - μ): two stores in a row, H. Bateman (1910).

    Attributes
    ----------
    kept, excess : ndarray
        Bound water that the film keeps in this air, and what it holds beyond that as the step begins, kg/kg.
    rate_per_s : ndarray
        λ, 1/s.
    fed : ndarray or None
        f, kg/kg; None where nothing is sealed in below.
    seeping_per_s : ndarray or None
        μ, 1/s.
    """

    kept: Array
    excess: Array
    rate_per_s: Array
    fed: Array | None = None
    seeping_per_s: Array | None = None

    @classmethod
    def over(
        cls, *, kept: Array, bound: Array, rate_per_s: Array, polymer_kg_m2: Array, seep: Seep | None
    ) -> BoundCourse:
        """Return the course of a film of `polymer_kg_m2` that begins at `bound`, kg/kg."""
        if seep is None:
            return cls(kept=kept, excess=bound - kept, rate_per_s=rate_per_s)
        return cls(
            kept=kept,
            excess=bound - kept,
            rate_per_s=rate_per_s,
            fed=_fed(kept, rate_per_s, polymer_kg_m2, seep),
            seeping_per_s=seep.rate_per_s,
        )

    def at(self, age_s: Array) -> Array:
        """Return the bound water at `age_s`, kg/kg."""
        own: Array = np.exp(-self.rate_per_s * age_s)
        if self.fed is None or self.seeping_per_s is None:
            return self.kept + self.excess * own
        return self.kept + self.excess * own + self.fed * (np.exp(-self.seeping_per_s * age_s) - own)

    def age_below(self, level: Array | float, end_s: Array) -> Array:
        """Return the age from which the water stays under `level`, right where it is under it at the age `end_s`."""
        gap = np.maximum(level - self.kept, _TINY)
        alone: Array = np.log(np.maximum(self.excess / gap, 1.0)) / self.rate_per_s
        if self.fed is None or self.seeping_per_s is None or not self.fed.any():
            return alone
        low = np.minimum(self._peak_s(self.fed, self.seeping_per_s), end_s)
        never_above = self.at(low) <= level
        high = end_s
        for _ in range(_HALVINGS):
            middle = (low + high) / 2.0
            above = self.at(middle) > level
            low, high = np.where(above, middle, low), np.where(above, high, middle)
        return np.where(self.fed == 0.0, alone, np.where(never_above, 0.0, high))

    def _peak_s(self, fed: Array, seeping_per_s: Array) -> Array:
        """Return the age at which the water is highest: 0 where it only falls."""
        rises = (fed > 0.0) & (fed > self.excess)
        ratio = self.rate_per_s * (fed - self.excess) / np.where(rises, seeping_per_s * fed, 1.0)
        slack = np.where(rises, self.rate_per_s - seeping_per_s, 1.0)
        return np.where(rises, np.log(np.where(rises, np.maximum(ratio, 1.0), 1.0)) / slack, 0.0)


def bound_through(
    *, kept: Array, bound: Array, rate_per_s: Array, polymer_kg_m2: Array, seep: Seep | None, age_s: Array
) -> Array:
    """Return the bound water before each of the steps that gather `age_s`, and after the last, kg/kg.

    `kept`, `age_s` and the water of `seep` are (steps, draws); `bound` is that before the first.
    """
    own = np.exp(-rate_per_s * age_s)
    gained = kept * (1.0 - own)
    if seep is not None:
        gained += _fed(kept, rate_per_s, polymer_kg_m2, seep) * (np.exp(-seep.rate_per_s * age_s) - own)
    return following(bound, own, gained)


def _fed(kept: Array, rate_per_s: Array, polymer_kg_m2: Array, seep: Seep) -> Array:
    """Return f of a film over what is sealed in, kg/kg."""
    below = (seep.water_kg_m2 - kept * seep.polymer_kg_m2) / polymer_kg_m2
    feeds = seep.water_kg_m2 > 0.0
    slack = np.where(feeds, rate_per_s - seep.rate_per_s, 1.0)
    return np.where(feeds, below * seep.rate_per_s / slack, 0.0)
