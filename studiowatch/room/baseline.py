"""What a signal is when nothing happens: a median and a robust spread over a bounded memory."""

from __future__ import annotations

from dataclasses import dataclass
from statistics import median

FIRST_SAMPLES = 10  # readings before the baseline may be used; assumption: 10 s at one a second
MEMORY_SAMPLES = 60  # kept; at one in 10 s the last 10 minutes; assumption
SPACING_MS = 10_000  # ms between samples once the first are in, so that a minute's gusts do not fill the memory; assumption
SIGMA_PER_MAD = 1.4826  # standard deviations per median absolute deviation, normal distribution


@dataclass(frozen=True, slots=True, kw_only=True)
class Baseline:
    """Robust centre and spread of the quiet signal.

    Attributes
    ----------
    samples : tuple of float
        The newest last, at most `MEMORY_SAMPLES`, in the signal's unit.
    centre, spread : float
        Median, and median absolute deviation as a standard deviation, in the signal's unit.
    sampled_ms : int
        UTC ms of the newest sample.
    """

    samples: tuple[float, ...] = ()
    centre: float = 0.0
    spread: float = 0.0
    sampled_ms: int = 0

    @property
    def learnt(self) -> bool:
        """Whether enough has been seen to judge by."""
        return len(self.samples) >= FIRST_SAMPLES

    def deviation(self, value: float, floor: float) -> float:
        """Return how many spreads `value` lies above the centre; the spread is never taken under `floor`."""
        return (value - self.centre) / max(self.spread, floor)


def learn(baseline: Baseline, time_ms: int, value: float) -> Baseline:
    """Return the baseline after a quiet `value`; once learnt, it takes one in `SPACING_MS` and lets the oldest go."""
    if baseline.learnt and time_ms - baseline.sampled_ms < SPACING_MS:
        return baseline
    samples = (*baseline.samples, value)[-MEMORY_SAMPLES:]
    centre = median(samples)
    spread = SIGMA_PER_MAD * median(abs(sample - centre) for sample in samples)
    return Baseline(samples=samples, centre=centre, spread=spread, sampled_ms=time_ms)
