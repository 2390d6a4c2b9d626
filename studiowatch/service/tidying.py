"""What is done now and then so that a program that runs for months holds no more than it needs."""

from __future__ import annotations

import gc

from studiowatch.service.heap import give_back
from studiowatch.service.ports import Clock

GIVE_BACK_S = 120.0  # s between two returns of what the C library holds of freed memory
COLLECT_S = 3600.0  # s between two full collections: they let go of the tuples, too, that Python keeps for the next


class Tidying:
    """Tidies up by the clock; a collection takes about 0.1 s."""

    def __init__(self, clock: Clock) -> None:
        self._clock = clock
        self._collected_s = self._gave_back_s = clock.monotonic_s()

    def look(self) -> None:
        """Do what is due."""
        now_s = self._clock.monotonic_s()
        if now_s - self._collected_s >= COLLECT_S:
            self._collected_s = now_s
            gc.collect()
        if now_s - self._gave_back_s >= GIVE_BACK_S:
            self._gave_back_s = now_s
            give_back()
