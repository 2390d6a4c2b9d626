"""What is said of faults of ours on the keeper's thread: as long as one comes again, and for an hour after it."""

from __future__ import annotations

import sys
import traceback

from studiowatch.service.fault_words import fault_words
from studiowatch.service.ports import Clock

STANDS_S = 3600.0  # s, for which a fault is said after it was met last: who looks in seldom is to see it; assumption
MOST = 20  # faults that are known apart; of more the oldest is forgotten


class OwnFault:
    """Knows the faults that stand; the one that was first to come is said until it is gone."""

    def __init__(self, clock: Clock) -> None:
        self._clock = clock
        self._met_s: dict[str, float] = {}

    @property
    def sentence(self) -> str:
        """Return what is to be said, or ""."""
        return next(iter(self._met_s), "")

    def meet(self, fault: Exception) -> None:
        """Take note of a fault; one that does not stand yet goes to the terminal with its trace."""
        sentence = fault_words(fault)
        if sentence not in self._met_s:
            traceback.print_exception(fault, file=sys.stderr)
            if len(self._met_s) >= MOST:
                del self._met_s[self.sentence]
        self._met_s[sentence] = self._clock.monotonic_s()

    def look(self) -> None:
        """Let go of what was not met for long."""
        now_s = self._clock.monotonic_s()
        self._met_s = {sentence: met_s for sentence, met_s in self._met_s.items() if now_s - met_s < STANDS_S}
