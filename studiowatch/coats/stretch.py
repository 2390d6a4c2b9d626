"""A stretch of steps one after another, each in one air, in which nothing is free in a coat or in those below it.

All that happens in such a step has a closed form, so a whole log of them is taken at once, as arrays of (steps, draws);
a single step is a stretch of one. The films of a stack share a stretch, for they have one temperature.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from studiowatch.coats.bound_water import Drift
from studiowatch.coats.draws import Draws
from studiowatch.coats.exposure import Airs
from studiowatch.coats.seal import Hold
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.coats.step_paths import Steps
from studiowatch.physics.ranges import Array, Mask

_ROUNDING_S = 1e-6  # s, more than the rounding of an age, less than anything that matters


@dataclass(frozen=True, kw_only=True, eq=False)
class Stretch:
    """The airs of a stretch and what does not depend on the coat: temperature and ages.

    Attributes
    ----------
    drift : Drift
        Of the film's temperature in each step.
    film_K : ndarray, (draws,)
        Temperature at the end of the last step, K.
    dry_s : ndarray, (steps, 1) or (steps, draws)
        For how long at the end of each step nothing is free, s: all of it once the last has left.
    to_end_s : ndarray, (steps, 1)
        From the end of each step to that of the last, s.
    """

    airs: Airs
    drift: Drift
    film_K: Array
    dry_s: Array
    to_end_s: Array

    @classmethod
    def of(cls, airs: Airs, *, film_K: Array, steps_s: Array, dry_s: Array, draws: Draws) -> Stretch:
        """Return the stretch of a film that begins at `film_K`, whose ages run with the energies of `draws`.

        Each step is `steps_s` long, (steps, 1), of which the last `dry_s` count.
        """
        drift, inverse_end = Drift.through(1.0 / film_K, airs.inverse_K, dry_s, draws)
        passed_s = steps_s.cumsum(axis=0)
        return cls(airs=airs, drift=drift, film_K=1.0 / inverse_end, dry_s=dry_s, to_end_s=passed_s[-1] - passed_s)

    @cached_property
    def age_s(self) -> Array:
        """Time at 23 °C in which as much bound water would leave as in each step, s."""
        return self.drift.diffusion_age(self._length_s)

    @cached_property
    def cure_age_s(self) -> Array:
        """Time at 23 °C in which the film would cure as much as in each step, s."""
        return self.drift.cure_age(self._length_s)

    @cached_property
    def _length_s(self) -> Array | float:
        """`dry_s`, as one number where it is the same everywhere: the ages then take less arithmetic."""
        first_s = float(self.dry_s[0, 0])
        return first_s if (self.dry_s == first_s).all() else self.dry_s

    def starts_s(self, ended_s: float) -> Array:
        """Return the age at which each step begins of a coat that is `ended_s` old at the end, s."""
        return ended_s - self.to_end_s - self.dry_s

    def enter(
        self,
        table: Array,
        stage: Stage,
        now: Mask,
        when: Callable[[Steps], Array],
        *,
        ended_s: float,
        hold: Hold | None = None,
    ) -> Array:
        """Return the table with `stage` entered in the first step where `now` is true, if it was not reached before.

        Parameters
        ----------
        now : ndarray of bool, (steps, draws)
            Whether the coat has come that far by the end of each step; a step counts only where nothing is free.
        when : callable
            Gives the age at which it did within those steps, s; asked only if there is something to enter.
        ended_s : float
            Age of the coat at the end of the stretch, s.
        hold : Hold or None
            What the films below keep the coat from until then.
        """
        row = ROW[stage]
        now = now & (self.dry_s > 0.0)
        if hold is not None:
            now &= self.by_then(hold[stage], ended_s)
        new = now.any(axis=0) & np.isinf(table[row])
        if not new.any():
            return table
        when_s = when(now.argmax(axis=0))
        table = table.copy()
        table[row] = np.where(new, when_s if hold is None else np.maximum(when_s, hold[stage]), table[row])
        return table

    def by_then(self, when_s: Array, ended_s: float) -> Mask:
        """Return whether the age `when_s` has come by the end of each step, (steps, draws)."""
        by_then: Mask = when_s <= ended_s - self.to_end_s + _ROUNDING_S
        return by_then
