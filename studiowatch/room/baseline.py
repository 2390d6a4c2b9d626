"""What a signal is when nothing happens: a median and a robust spread over a bounded memory."""

from __future__ import annotations

from dataclasses import dataclass, replace
from statistics import median

FIRST_SAMPLES = 10  # readings before the baseline may be used; assumption: 10 s at one a second
MEMORY_SAMPLES = 60  # kept; at one in 10 s the last 10 minutes; assumption
SPACING_MS = 10_000  # ms between samples once the first are in: no gust fills the memory; assumption
FIRST_WIDENING = 2.0  # times the spread of the first samples, which lie too close together to show it all; assumption
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
    earlier_spread : float
        Spread of the baseline before this one, which stands in while the memory is short, in the signal's unit.
    """

    samples: tuple[float, ...] = ()
    centre: float = 0.0
    spread: float = 0.0
    sampled_ms: int = 0
    earlier_spread: float = 0.0

    @property
    def learnt(self) -> bool:
        """Whether enough has been seen to judge by."""
        return len(self.samples) >= FIRST_SAMPLES

    def deviation(self, value: float, floor: float) -> float:
        """Return how many spreads `value` lies above the centre.

        The spread is never taken under `floor`, and wider while the memory is short.
        """
        missing = self._missing
        widened = self.spread * (1.0 + (FIRST_WIDENING - 1.0) * missing)
        return (value - self.centre) / max(widened, floor, missing * self.earlier_spread)

    @property
    def _missing(self) -> float:
        """Share of the memory still to be filled: 1 when just learnt, 0 when full."""
        return min(1.0, (MEMORY_SAMPLES - len(self.samples)) / (MEMORY_SAMPLES - FIRST_SAMPLES))


def learn(baseline: Baseline, time_ms: int, value: float) -> Baseline:
    """Return the baseline after a quiet `value`; once learnt, it takes one in `SPACING_MS` and lets the oldest go."""
    if baseline.learnt and time_ms - baseline.sampled_ms < SPACING_MS:
        return baseline
    samples = (*baseline.samples, value)[-MEMORY_SAMPLES:]
    centre = median(samples)
    spread = SIGMA_PER_MAD * median(abs(sample - centre) for sample in samples)
    return replace(baseline, samples=samples, centre=centre, spread=spread, sampled_ms=time_ms)


def begun_anew(baseline: Baseline) -> Baseline:
    """Return a baseline that has all to learn but the order of the spread."""
    return Baseline(earlier_spread=baseline.spread)
