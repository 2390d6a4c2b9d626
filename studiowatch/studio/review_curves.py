"""From how severe each cause was to the chance that the coat clouds: a noisy-OR with a leak.

J. Pearl, Probabilistic Reasoning in Intelligent Systems (1988), section 4.3: each cause alone is enough, each may fail
to act, and something that nobody knows may act too. Chance = 1 − (1 − λ0) Π(1 − p_i). With −ln(1 − p) called the push
of a cause, pushes add up, and a cause's part in what happened goes with its push.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

import numpy as np

from studiowatch.physics.ranges import Array
from studiowatch.speech.words import mark
from studiowatch.studio.pieces import Outcome
from studiowatch.studio.review_causes import MEASURED, Cause, fit

STRONGEST = 4.0  # push of the most severe cause: 98 % of such coats cloud; judgement
_EVEN = float(np.log(2.0))  # push at which half of the coats cloud
_AT_EVEN = _EVEN * STRONGEST / (STRONGEST - _EVEN)
LEAK = 0.03  # of coats cloud for no reason that is recorded; judgement, learnt from her own
COATS = 10.0  # her own coats that a prior is worth; judgement
# ln of a severity that is even: one coat there tells 0.33 k² of it by Fisher's information of the curve below
_TOLD_BY_A_COAT = 0.33


@dataclass(frozen=True, slots=True, kw_only=True)
class Curve:
    """How a cause's severity s pushes: STRONGEST x / (STRONGEST + x), x growing with (s / even)^steep.

    Attributes
    ----------
    even : float
        The severity at which half of the coats cloud, in the unit of the cause.
    steep : float
        How steep: 2 goes from one in six to five in six over a factor of about 4, 6 over one of about 1.6.
    learns : bool
        Whether her outcomes may move `even`.
    """

    even: float
    steep: float
    basis: str
    learns: bool = True

    @property
    def spread(self) -> float:
        """S.d. of ln even before anything was learnt: the prior is worth `COATS` coats at even chance."""
        return float((COATS * _TOLD_BY_A_COAT * self.steep**2) ** -0.5)


CURVES: Mapping[Cause, Curve] = MappingProxyType(
    {
        Cause.SEALED_IN_WATER: Curve(
            even=0.45,  # g/m² over what stays in an ordinary room
            steep=1.8,
            basis=mark(
                "Even at 0.45 g/m² that had still to leave, as over a coat at half of its recoat time: judgement."
            ),
        ),
        Cause.DAMP_AIR: Curve(
            even=1.5,  # h
            steep=2.5,
            basis=mark(
                "Even at 1.5 hours at 85 %, or 8 % over the sheet's limit: practice of ISO 8502-4; hours: judgement."
            ),
        ),
        Cause.BELOW_MFFT: Curve(
            even=30.0,  # min
            steep=1.5,
            basis=mark(
                "Even at 30 minutes under the minimum film-forming temperature (ISO 2115, ASTM D2354): judgement."
            ),
        ),
        Cause.CONDENSATION: Curve(
            even=6.0,  # min
            steep=1.5,
            basis=mark(
                "Even at 6 minutes at the dew point; a solvent-borne coat within 3 K of it (ISO 8502-4): judgement."
            ),
        ),
        Cause.SKINNED: Curve(
            even=2.3,
            steep=6.0,
            basis=mark(
                "Péclet number of Routh and Russel (1998) over the sheet's own run; even at 2.3 times: judgement."
            ),
        ),
        Cause.TOO_THICK: Curve(
            even=2.2, steep=7.0, basis=mark("Even at 2.2 times the sheet's film; care from 1.5, act from 2: judgement.")
        ),
        Cause.THINNED: Curve(even=25.0, steep=5.0, basis=mark("Even where it was thinned by 25 %: judgement.")),
        Cause.MATTING_BUILD_UP: Curve(
            even=1.8,
            steep=8.0,
            basis=mark("More than one or two coats with matting agent dull the darks: common practice, no source."),
        ),
        Cause.TOUCHED: Curve(
            even=0.6, steep=4.0, basis=mark("Cover after 20 minutes: common practice, no source; the rest: judgement.")
        ),
        Cause.STILL_CLEARING: Curve(
            even=1.05,
            steep=10.0,
            basis=mark("Its sheet's clearing time in its own thickness and warmth; about two hours: common practice."),
            learns=False,
        ),
    }
)
LEAK_BASIS = mark("3 in 100 coats cloud without a recorded reason: judgement, learnt from her own coats.")
LEARNING = tuple(cause for cause in MEASURED if CURVES[cause].learns)
"""The causes whose curve learns, in the order of `Belief.shifts`."""

_STEEP = np.array([CURVES[cause].steep for cause in MEASURED])
_STILL = MEASURED.index(Cause.STILL_CLEARING)
_LEARNS = np.array([CURVES[cause].learns for cause in MEASURED])


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Curves:
    """The curves as they are held now.

    Attributes
    ----------
    shifts : (learning causes,) ndarray
        By how much ln even differs from the judgement.
    leak : float
        Chance of clouding with nothing recorded, 0-1.
    learnt_from : int
        How many coats they have learnt from.
    """

    shifts: Array = field(default_factory=lambda: np.zeros(len(LEARNING)))
    leak: float = LEAK
    learnt_from: int = 0

    @property
    def even(self) -> Array:
        """The severity of each measured cause at which half of the coats cloud."""
        shifts = np.zeros(len(MEASURED))
        shifts[_LEARNS] = self.shifts
        return np.array([CURVES[cause].even for cause in MEASURED]) * np.exp(shifts)

    def pushes(self, severities: Array) -> Array:
        """Return the push of each cause and, last, of what nobody knows: (…, causes + 1) for severities (…, causes)."""
        x = _AT_EVEN * (np.maximum(severities, 0.0) / self.even) ** _STEEP
        measured = STRONGEST * x / (STRONGEST + x)
        unknown = np.full((*severities.shape[:-1], 1), -np.log1p(-self.leak))
        return np.concatenate([measured, unknown], axis=-1)


PRIOR = Curves()


def chance(curves: Curves, severities: Array) -> float:
    """Return the chance of clouding, 0-1, over draws: `severities` is (draws, measured causes)."""
    return float(np.mean(-np.expm1(-curves.pushes(severities).sum(axis=-1))))


def fits(outcome: Outcome | None) -> Array:
    """Return how well each cause, "unknown" last, fits a look, 0-1."""
    return np.array([fit(cause, outcome) for cause in (*MEASURED, Cause.UNKNOWN)])


def parts(curves: Curves, severities: Array, looks: Array) -> Array:
    """Return each cause's part in a coat that clouded, per draw, (…, causes + 1); they sum to 1.

    While a coat is in its normal milky time, that is all there is to explain: what else may cloud it does not show yet.
    """
    pushes = curves.pushes(severities)
    unexplained = np.exp(-pushes[..., _STILL : _STILL + 1] * min(1.0, 2.0 * looks[_STILL]))
    weights = pushes * looks
    weights = np.where(np.arange(weights.shape[-1]) == _STILL, weights, weights * unexplained)
    found: Array = weights / weights.sum(axis=-1, keepdims=True)
    return found


def shares(curves: Curves, severities: Array, outcome: Outcome | None) -> Mapping[Cause, float]:
    """Return each cause's share of the explanation, 0-1: over the draws, each as likely as it makes a cloudy coat."""
    clouded = -np.expm1(-curves.pushes(severities).sum(axis=-1))
    looks = np.ones(len(MEASURED) + 1) if outcome is Outcome.CLEAR else fits(outcome)
    mean = (parts(curves, severities, looks) * clouded[:, np.newaxis]).sum(axis=0) / clouded.sum()
    return {cause: float(share) for cause, share in zip((*MEASURED, Cause.UNKNOWN), mean, strict=True)}
