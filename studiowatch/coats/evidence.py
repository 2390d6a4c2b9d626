"""Evidence: what the weights of a coat's draws say of the quantities behind them.

ln of the time to a stage is all but linear in the coordinates of the draws. So the tests are turned into a normal
observation of that time, and the time into one of the coordinates. Along every other direction nothing is claimed,
however few the draws.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from studiowatch.coats.belief import COAT, shared_places
from studiowatch.coats.draws import FIELDS
from studiowatch.coats.learning import Particles, Seen
from studiowatch.coats.stage_table import ROW
from studiowatch.physics.ranges import Array

_LEAST_GAIN = 0.02  # of precision, below which a test has said nothing; assumption
_FARTHEST = 4.0  # s.d. of what was held: no test moves an observation farther than this; assumption
_LEAST_LEFT = 0.01  # of the variance of a time: less, the few draws that then count cannot tell; assumption
_LEAST_SPREAD = 1e-4  # of ln time: two stages at one and the same time are told apart by nothing; assumption
_LEAST_ARRIVING = 0.9  # of the draws that must reach a stage for its time to be learnt from; assumption


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Observation:
    """`loadings @ coordinates` is `values`, each give or take 1.

    Attributes
    ----------
    loadings : ndarray, (k, fields)
        k is 0 to 2.
    values : ndarray, (k,)
    """

    loadings: Array
    values: Array

    def shared(self) -> Observation:
        """Return the same without what belongs to this coat alone: its thickness and back add to the noise.

        The loadings are then in the order of `belief.SHARED`.
        """
        own = self.loadings[:, [FIELDS.index(field) for field in COAT]]
        root = np.linalg.cholesky(np.eye(self.values.size) + own @ own.T)
        return Observation(
            loadings=np.linalg.solve(root, self.loadings[:, shared_places()]),
            values=np.linalg.solve(root, self.values),
        )


NOTHING = Observation(loadings=np.zeros((0, len(FIELDS))), values=np.zeros(0))


def observed(particles: Particles, table: Array, seen: Sequence[Seen], *, before: Array, after: Array) -> Observation:
    """Return what the tests say of the coordinates.

    Parameters
    ----------
    table : ndarray, (stages, draws)
        When each draw reaches each stage, s since laying.
    before, after : ndarray, (draws,)
        Weights without and with the tests.
    """
    asked = sorted({ROW[test.stage] for test in seen})
    rows = [row for row in asked if _share_arriving(table[row], before) >= _LEAST_ARRIVING]
    if not rows:
        return NOTHING
    arriving = np.flatnonzero(np.isfinite(table[rows]).all(axis=0) & (before > 0.0))
    log_times = np.log(table[rows][:, arriving]).T
    before, after = before[arriving], after[arriving]
    return _of_times(particles.coordinates[arriving], log_times, before / before.sum(), after / after.sum())


def _share_arriving(reached_s: Array, weights: Array) -> float:
    return float(weights[np.isfinite(reached_s)].sum())


def _of_times(coordinates: Array, log_times: Array, before: Array, after: Array) -> Observation:
    """Return the observation from the moments of `log_times`, shape (draws, stages), before and after the tests."""
    middle, spread = _moments(log_times, before)
    root = np.linalg.cholesky(spread + _LEAST_SPREAD**2 * np.eye(len(spread)))
    whitened = np.linalg.solve(root, (log_times - middle).T).T
    moved, left = _moments(whitened, after)
    variance, directions = np.linalg.eigh(left)
    gain = 1.0 / np.maximum(variance, _LEAST_LEFT) - 1.0
    told = gain > _LEAST_GAIN
    if not told.any():
        return NOTHING
    gain, directions = gain[told], directions[:, told]
    value = np.clip((moved @ directions) * (1.0 + gain) / gain, -_FARTHEST, _FARTHEST)
    design = np.column_stack([np.ones(len(coordinates)), coordinates])
    along = whitened @ directions
    fitted, *_ = np.linalg.lstsq(design, along, rcond=None)
    noise = np.sqrt(1.0 / gain + (along - design @ fitted).var(axis=0))
    return Observation(loadings=(fitted[1:] / noise).T, values=(value - fitted[0]) / noise)


def _moments(values: Array, weights: Array) -> tuple[Array, Array]:
    """Return the weighted mean, (k,), and covariance, (k, k), of `values`, (draws, k)."""
    mean = weights @ values
    apart = values - mean
    return mean, (weights * apart.T) @ apart
