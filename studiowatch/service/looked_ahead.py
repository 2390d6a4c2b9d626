"""What a look ahead at a coat went by, and when it is to be looked ahead again."""

from __future__ import annotations

from dataclasses import dataclass, replace

from studiowatch.physics.air import Air
from studiowatch.service.air_ahead import alike

AHEAD_EVERY_MS = 60_000  # ms of board time between two looks ahead
ANEW_EVERY_MS = 300_000  # ms where the room was foretold anew since
STEADY_EVERY_MS = 600_000  # ms while the air stays as it is, or as it was foretold: they would say the same
RESTING_EVERY_MS = 1_800_000  # ms for a coat that is dry to recoat and only cures, or that nobody looks at
IDLE_EVERY_MS = 7_200_000  # ms where it is both


@dataclass(frozen=True, slots=True, kw_only=True)
class LookedAhead:
    """When it was looked ahead and what was gone by then.

    Attributes
    ----------
    at_ms : int
        UTC ms of the film.
    air : Air
        The air it dried in, without what moved it.
    is_covered : bool
        Whether a mesh cover stood over it.
    foretold_ms : int or None
        UTC ms at which the room to come was foretold; None where it was held to stay as it is.
    """

    at_ms: int
    air: Air
    is_covered: bool
    foretold_ms: int | None

    def is_stale(self, now: LookedAhead, *, is_wet: bool, rests_ms: int | None = None) -> bool:
        """Return whether it is to be looked ahead again, by what would be gone by `now`.

        That is after a minute, after ten in steady air, and at once when the room is foretold at last. Where it is
        foretold, a room that wanders as it was said to moves no time: a coat waits until it is foretold anew, and once
        it is dry longer. One of which nobody waits for a time then `rests_ms`.
        """
        if now.foretold_ms is not None and self.foretold_ms is None:
            return True
        return now.at_ms - self.at_ms >= self._every_ms(now, is_wet=is_wet, rests_ms=rests_ms)

    def _every_ms(self, now: LookedAhead, *, is_wet: bool, rests_ms: int | None) -> int:
        is_same_cover = now.is_covered is self.is_covered
        is_steady = is_same_cover and alike(self.air, now.air)
        if now.foretold_ms is None:
            return STEADY_EVERY_MS if is_steady else AHEAD_EVERY_MS
        if rests_ms is not None or not is_wet:
            return rests_ms or STEADY_EVERY_MS
        is_as_foretold = is_same_cover and now.air.age_s is None and now.foretold_ms == self.foretold_ms
        return STEADY_EVERY_MS if is_steady or is_as_foretold else ANEW_EVERY_MS

    def shifted(self, step_ms: int) -> LookedAhead:
        """Return the same after a wall clock was set `step_ms` on."""
        return replace(self, at_ms=self.at_ms + step_ms)
