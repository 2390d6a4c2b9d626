"""Learning: touch tests and looks weigh the draws of a coat, and new draws are taken where the weight has gone.

A test at one moment is interval-censored: it says on which side of that moment a stage was reached, and it may be
mistaken. The draws are an importance sample, so weights are exact whatever the draws were taken from: O. Cappé,
A. Guillin, J.-M. Marin, C. P. Robert (2004), J. Comput. Graph. Stat. 13, 907, population Monte Carlo.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from statistics import NormalDist

import numpy as np

from studiowatch.coats.belief import PRIOR, Belief
from studiowatch.coats.draws import Draws, draws_of, latin_hypercube, sample
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.physics.ranges import Array

MISTAKEN = 0.05  # chance that an answer is wrong, whatever the film is like; assumption
EDGE = 0.05  # s.d. of ln time: how far her "dry" may lie from the model's; assumption
SAME_TEST_S = 300.0  # s within which a later answer on the same stage takes the place of the earlier; assumption
SURPRISE = 0.02  # chance of an answer below which the draws do not hold it: the belief is then widened; assumption
_LEAST_S = 1.0  # s, so that the logarithm of a time is a number
_NORMAL = NormalDist()


@dataclass(frozen=True, slots=True, kw_only=True)
class Seen:
    """A test when the coat was `after_s` old: whether it had then reached `stage`."""

    after_s: float
    stage: Stage
    reached: bool


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Particles:
    """Draws with what is needed to weigh them.

    Attributes
    ----------
    coordinates : ndarray, (draws, fields)
        Where each draw lies; draw 0 is the centre.
    log_proposal : ndarray, (draws,)
        ln of the density that the draws were taken from.
    """

    coordinates: Array
    log_proposal: Array
    draws: Draws


def prior_particles(n: int, seed: int, *, measured: bool) -> Particles:
    """Return the draws of a product that nothing was learnt of: the very object that `sample` returns."""
    coordinates = latin_hypercube(n, seed)
    return Particles(
        coordinates=coordinates,
        log_proposal=PRIOR.log_density(coordinates),
        draws=sample(n, seed, measured=measured),
    )


def particles_of(belief: Belief, n: int, seed: int, *, measured: bool) -> Particles:
    """Return draws taken from `belief`, all alike likely."""
    coordinates = belief.at(latin_hypercube(n, seed))
    return Particles(
        coordinates=coordinates,
        log_proposal=belief.log_density(coordinates),
        draws=draws_of(coordinates, measured=measured),
    )


def refreshed(before: Belief, after: Belief, n: int, seed: int, *, measured: bool) -> Particles:
    """Return draws of which every other one is taken where the answers point, `after`, and the rest from `before`.

    The rest are kept so that a mistaken answer can still be taken back. Draw 0 is the centre of `after`.
    """
    standard = latin_hypercube(n, seed)
    coordinates = before.at(standard)
    coordinates[::2] = after.at(standard[::2])
    return Particles(
        coordinates=coordinates,
        log_proposal=np.logaddexp(before.log_density(coordinates), after.log_density(coordinates)) - np.log(2.0),
        draws=draws_of(coordinates, measured=measured),
    )


def counted(seen: Sequence[Seen]) -> tuple[Seen, ...]:
    """Return the tests that count, in order of time: an answer soon corrected is gone."""
    ordered = sorted(seen, key=lambda test: test.after_s)
    return tuple(
        test
        for at, test in enumerate(ordered)
        if not any(
            later.stage is test.stage and later.after_s - test.after_s < SAME_TEST_S for later in ordered[at + 1 :]
        )
    )


def chance(test: Seen, table: Array) -> Array:
    """Return for each draw how likely this answer is, `MISTAKEN` to 1 - `MISTAKEN`.

    Parameters
    ----------
    table : ndarray, (stages, draws)
        When each draw reaches each stage, s since laying: `readiness.outlook`.
    """
    return MISTAKEN + (1.0 - 2.0 * MISTAKEN) * _right(test, table)


def _right(test: Seen, table: Array) -> Array:
    """Return for each draw the chance that an answer without a mistake is this one."""
    reached_s = np.maximum(table[ROW[test.stage]], _LEAST_S)
    late = (np.log(max(test.after_s, _LEAST_S)) - np.log(reached_s)) / EDGE
    return np.array([_NORMAL.cdf(z if test.reached else -z) for z in late])


def weights(particles: Particles, belief: Belief, table: Array, seen: Sequence[Seen]) -> Array:
    """Return how likely each draw is, given what was held before, `belief`, and the tests since.

    Returns
    -------
    ndarray, (draws,)
        They add up to 1 over the draws of the range. Draw 0, the centre, has 0 unless it is alone; no other is ever
        quite out.
    """
    log_weight = belief.log_density(particles.coordinates) - particles.log_proposal
    for test in counted(seen):
        log_weight = log_weight + np.log(chance(test, table))
    if log_weight.size > 1:
        log_weight[0] = -np.inf
    share = np.exp(log_weight - log_weight.max())
    normalised: Array = share / share.sum()
    return normalised


def effective(share: Array) -> float:
    """Return how many of the draws count, as a share of them: 1 where all weigh the same (Kish's rule)."""
    return float(1.0 / (share**2).sum() / max(share.size - 1, 1))


def surprising(seen: Sequence[Seen], table: Array, before: Array) -> Seen | None:
    """Return the last test whose answer hardly any draw holds, given the weights `before` the tests, or None."""
    odd = [test for test in counted(seen) if float(before @ _right(test, table)) < SURPRISE]
    return odd[-1] if odd else None
