"""The two-sided cumulative sum: small lasting shifts add up, passing noise does not."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Cusum:
    """Sums of what a standardised signal had above and below its centre, each never under 0.

    Attributes
    ----------
    high, low : float
        Upper and lower sum, in standard deviations.
    """

    high: float = 0.0
    low: float = 0.0


def accumulate(cusum: Cusum, z: float, *, slack: float, weight: float = 1.0) -> Cusum:
    """Return the sums after one more value.

    Parameters
    ----------
    cusum : Cusum
        The sums so far.
    z : float
        Standardised value, 1.
    slack : float
        Allowance k, in standard deviations: half the shift that should be noticed soonest.
    weight : float
        How many values this one stands for, ≥ 0.

    Notes
    -----
    E. S. Page, "Continuous inspection schemes", Biometrika 41 (1954) 100, in the tabular form.
    """
    return Cusum(
        high=max(0.0, cusum.high + weight * (z - slack)),
        low=max(0.0, cusum.low - weight * (z + slack)),
    )
