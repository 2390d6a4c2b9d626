"""Standing: the draws that a coat's range stands on, and when others have to be taken in their place.

Draws are of quantities that do not change while a coat dries. So new draws must be dried from the laying on, in the
same airs: this says which, and whoever holds the log dries them.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from studiowatch.coats.belief import PRIOR, Belief
from studiowatch.coats.evidence import Observation, observed
from studiowatch.coats.learning import (
    Particles,
    Seen,
    counted,
    effective,
    particles_of,
    prior_particles,
    refreshed,
    surprising,
    weights,
)
from studiowatch.coats.stage_table import ROW
from studiowatch.physics.ranges import Array

WIDENING = 2.0  # times the spread of every quantity after a surprise; assumption
LEAST_EFFECTIVE = 0.25  # of the draws that must still count for their range to be trusted; assumption
MOST_ROUNDS = 3  # times that draws are taken anew: one for a surprise, two to close in


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Standing:
    """What the range of one coat stands on.

    Attributes
    ----------
    belief : Belief
        What was held before the coat's own tests.
    measured : bool
        Whether the amount laid was measured.
    surprise : Seen or None
        The test that hardly any draw held; the belief was widened for it.
    rounds : int
        How often draws were taken anew.
    """

    particles: Particles
    belief: Belief
    measured: bool
    seed: int
    surprise: Seen | None = None
    rounds: int = 0

    def weights(self, table: Array, seen: Sequence[Seen] = ()) -> Array:
        """Return the weight of each draw, see `learning.weights`."""
        return weights(self.particles, self.belief, table, seen)

    def observation(self, table: Array, seen: Sequence[Seen]) -> Observation:
        """Return what the tests say, see `evidence.observed`."""
        before, after = self.weights(table), self.weights(table, seen)
        return observed(self.particles, table, counted(seen), before=before, after=after)

    def surprising(self, table: Array, seen: Sequence[Seen]) -> Seen | None:
        """Return a test that hardly any draw held beforehand, or None."""
        return surprising(seen, table, self.weights(table))

    def anew(self, table: Array, seen: Sequence[Seen]) -> Standing | None:
        """Return what the coat should stand on instead and be dried anew with, or None while the draws will do.

        Parameters
        ----------
        table : ndarray, (stages, draws)
            When each draw reaches each stage, s since laying.
        """
        if not seen or self.rounds >= MOST_ROUNDS:
            return None
        surprise = self.surprising(table, seen)
        if surprise is not None and self.surprise is None:
            return self._widened(surprise)
        is_thin = effective(self.weights(table, seen)) < LEAST_EFFECTIVE
        is_off = self.rounds == 0 and _centre_disagrees(table, seen)
        return self._closed_in(self.observation(table, seen)) if is_thin or is_off else None

    def _widened(self, surprise: Seen) -> Standing:
        belief, seed = self.belief.widened(WIDENING), self.seed + 1
        particles = particles_of(belief, len(self.particles.draws), seed, measured=self.measured)
        return replace(self, particles=particles, belief=belief, seed=seed, surprise=surprise, rounds=self.rounds + 1)

    def _closed_in(self, told: Observation) -> Standing | None:
        if not told.values.size:
            return None
        after, seed = self.belief.given(told.loadings, told.values), self.seed + 1
        particles = refreshed(self.belief, after, len(self.particles.draws), seed, measured=self.measured)
        return replace(self, particles=particles, seed=seed, rounds=self.rounds + 1)


def standing_on(belief: Belief, n: int, seed: int, *, measured: bool) -> Standing:
    """Return what a coat that was just laid stands on."""
    take = prior_particles(n, seed, measured=measured) if belief is PRIOR else None
    particles = take or particles_of(belief, n, seed, measured=measured)
    return Standing(particles=particles, belief=belief, measured=measured, seed=seed)


def _centre_disagrees(table: Array, seen: Sequence[Seen]) -> bool:
    """Return whether the nominal run, which she sees drawn, contradicts a test."""
    return any((table[ROW[test.stage], 0] <= test.after_s) != test.reached for test in counted(seen))
