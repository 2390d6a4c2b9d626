"""What her own coats teach the curves: where each cause is even, and how often nothing recorded explains a cloud.

A Bayesian update by its most likely curves: ln of each even severity is normal about the judgement, the leak is a beta
distribution, both worth about ten coats. Each coat that came out clear tells that all its causes together did not act;
each that clouded tells that one did, and its look tells which. Damped Newton steps find the mode.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import sqrt

import numpy as np

from studiowatch.physics.ranges import Array
from studiowatch.speech.words import say, say_counted
from studiowatch.studio.pieces import Outcome
from studiowatch.studio.review_causes import MEASURED
from studiowatch.studio.review_curves import COATS, CURVES, LEAK, LEARNING, PRIOR, Curves, fits, parts
from studiowatch.studio.review_views import Reliability, ReliabilityBin

NEWEST = 500  # coats that are learnt from: older ones were laid in another studio, as it were; assumption
FOLDS = 10  # parts that the coats are split into, each told by curves that have not seen it
BINS = (0.0, 0.1, 0.3, 0.5, 0.7, 1.0)  # chances that are told apart in a plot
_STEPS = 25  # of Newton at most
_LONGEST = 1.0  # of a step, so that no leak is tried that is 0 or 1
_SMALL = 1e-4  # of a step that is the last
_NUDGE = 1e-4  # of a parameter, for the slope
_LEAST = 1e-9  # of a chance, so that its logarithm is finite
_Z90 = 1.645  # half width of a 90 % interval in s.d., normal


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Told:
    """One coat with its outcome.

    Attributes
    ----------
    severities : (draws, measured causes) ndarray
        As the curves take them.
    """

    outcome: Outcome
    severities: Array

    @property
    def clouded(self) -> bool:
        """Whether it came out cloudy; specks are dust, and tell nothing of clouding."""
        return self.outcome not in (Outcome.CLEAR, Outcome.SPECKS)


def learn(told: Sequence[Told]) -> Curves:
    """Return the curves as the coats have moved them; those with specks are left out.

    Parameters
    ----------
    told : sequence of Told
        In the order in which they were laid; all with as many draws.
    """
    used = [one for one in told if one.outcome is not Outcome.SPECKS][-NEWEST:]
    if not used:
        return PRIOR
    evidence = _Evidence.of(used)
    at = np.append(np.zeros(len(LEARNING)), _logit(LEAK))
    value = evidence.log_posterior(at)
    damping = 1.0
    for _ in range(_STEPS):
        slopes = evidence.slopes(at)
        push, curvature = (
            slopes.sum(axis=0) + evidence.prior_slope(at),
            slopes.T @ slopes + evidence.prior_curvature(at),
        )
        step = np.linalg.solve(curvature + 0.1 * damping * np.diag(np.diag(curvature)), push)
        step = np.clip(step, -_LONGEST, _LONGEST)
        tried = evidence.log_posterior(at + step)
        if tried < value:
            damping *= 8.0
            if damping > 1e6:  # noqa: PLR2004 - no step is small enough: this is the mode
                break
            continue
        at, value, damping = at + step, tried, damping / 4.0
        if np.abs(step).max() < _SMALL:
            break
    return Curves(shifts=at[:-1], leak=_share(at[-1]), learnt_from=len(used))


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class _Evidence:
    """All coats together: severities (coats, draws, causes), whether each clouded, and how well each look fits."""

    severities: Array
    clouded: Array
    looks: Array

    @classmethod
    def of(cls, told: Sequence[Told]) -> _Evidence:
        return cls(
            severities=np.stack([one.severities for one in told]),
            clouded=np.array([one.clouded for one in told]),
            looks=np.stack([fits(one.outcome) for one in told]),
        )

    def log_likelihoods(self, at: Array) -> Array:
        """Return ln of how likely each coat is, with the curves at these parameters."""
        curves = Curves(shifts=at[:-1], leak=_share(at[-1]))
        pushes = curves.pushes(self.severities)
        stays_clear = np.exp(-pushes.sum(axis=-1))
        shares = pushes / pushes.sum(axis=-1, keepdims=True)
        looks = (shares * self.looks[:, np.newaxis, :]).sum(axis=-1)
        likely = np.where(self.clouded[:, np.newaxis], (1.0 - stays_clear) * looks, stays_clear)
        logs: Array = np.log(np.maximum(likely.mean(axis=-1), _LEAST))
        return logs

    def slopes(self, at: Array) -> Array:
        """Return how each coat's ln likelihood rises with each parameter, (coats, parameters)."""
        base = self.log_likelihoods(at)
        nudges = _NUDGE * np.eye(at.size)
        return np.column_stack([(self.log_likelihoods(at + nudge) - base) / _NUDGE for nudge in nudges])

    def log_posterior(self, at: Array) -> float:
        """Return ln of how likely these parameters are, but for a constant."""
        leak = _share(at[-1])
        prior = -0.5 * float(np.sum((at[:-1] / _SPREADS) ** 2))
        prior += COATS * (LEAK * np.log(leak) + (1.0 - LEAK) * np.log1p(-leak))
        return float(self.log_likelihoods(at).sum() + prior)

    def prior_slope(self, at: Array) -> Array:
        """Return how the prior rises with each parameter."""
        return np.append(-at[:-1] / _SPREADS**2, COATS * (LEAK - _share(at[-1])))

    def prior_curvature(self, at: Array) -> Array:
        """Return how the prior bends."""
        leak = _share(at[-1])
        return np.diag(np.append(_SPREADS**-2, COATS * leak * (1.0 - leak)))


_SPREADS = np.array([CURVES[cause].spread for cause in LEARNING])


def _logit(share: float) -> float:
    return float(np.log(share / (1.0 - share)))


def _share(logit: float) -> float:
    return float(1.0 / (1.0 + np.exp(-logit)))


def likeliest(curves: Curves, told: Told) -> int:
    """Return which cause comes first for a coat, as a place in `MEASURED`, or their number for "unknown"."""
    pushes = curves.pushes(told.severities)
    clouded = -np.expm1(-pushes.sum(axis=-1))
    mean = (parts(curves, told.severities, fits(told.outcome)) * clouded[:, np.newaxis]).sum(axis=0)
    return int(np.argmax(mean)) if clouded.sum() > 0.0 else len(MEASURED)


def reliability(told: Sequence[Told]) -> Reliability:
    """Return how often each chance came true: every coat is told by curves that learnt from other coats only."""
    used = [one for one in told if one.outcome is not Outcome.SPECKS][-NEWEST:]
    chances = np.zeros(len(used))
    for fold in range(min(FOLDS, len(used))):
        curves = learn([one for place, one in enumerate(used) if place % FOLDS != fold])
        for place in range(fold, len(used), FOLDS):
            pushes = curves.pushes(used[place].severities)
            chances[place] = float(np.mean(-np.expm1(-pushes.sum(axis=-1))))
    return binned(chances, np.array([one.clouded for one in used], dtype=bool))


def binned(chances: Array, clouded: Array) -> Reliability:
    """Return chances told, 0-1, against what came true, in bins."""
    bins = []
    for low, high in pairwise(BINS):
        inside = (chances >= low) & ((chances < high) | (high == BINS[-1]))
        many = int(inside.sum())
        if many:
            share = float(clouded[inside].mean())
            least, most = interval(share, many)
            told = float(chances[inside].mean())
            bins.append(
                ReliabilityBin(low=low, high=high, told=told, came_true=share, least=least, most=most, coats=many)
            )
    coats, many_clouded = len(chances), int(clouded.sum())
    return Reliability(bins=tuple(bins), coats=coats, clouded=many_clouded, sentence=_sentence(chances, many_clouded))


def interval(share: float, many: int) -> tuple[float, float]:
    """Return the 90 % interval of a share seen in `many` coats: E. B. Wilson (1927), J. Am. Stat. Assoc. 22, 209."""
    z = _Z90
    middle = (share + z * z / (2 * many)) / (1.0 + z * z / many)
    half = z * sqrt(share * (1.0 - share) / many + z * z / (4.0 * many * many)) / (1.0 + z * z / many)
    return max(middle - half, 0.0), min(middle + half, 1.0)


def _sentence(chances: Array, clouded: int) -> str:
    if not len(chances):
        return say("No coat with a recorded outcome yet: the chances are our judgement.")
    return say_counted(
        len(chances),
        "Of {n} coat with a recorded outcome {clouded} clouded, where about {expected} were expected.",
        "Of {n} coats with a recorded outcome {clouded} clouded, where about {expected} were expected.",
        clouded=clouded,
        expected=round(float(np.sum(chances))),
    )


def rounded(severities: Array) -> Array:
    """Return severities with four digits, as they are kept."""
    return np.array([[float(f"{value:.4g}") for value in row] for row in severities])
