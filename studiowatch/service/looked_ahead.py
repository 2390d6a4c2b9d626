"""What a look ahead at a coat went by, and when it is to be looked ahead again."""

from __future__ import annotations

from dataclasses import dataclass, replace

from studiowatch.physics.air import Air
from studiowatch.service.air_ahead import alike

AHEAD_EVERY_MS = 60_000  # ms of board time between two looks ahead
FORETOLD_EVERY_MS = 300_000  # ms where the room is foretold, which takes a wandering room into account: assumption
STEADY_EVERY_MS = 600_000  # ms between two looks ahead while the air stays as it is: they would say the same
RESTING_EVERY_MS = 1_800_000  # ms between two looks ahead for a coat that is dry to recoat and only cures


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
    is_foretold : bool
        Whether the room to come was foretold; else it was held to stay as it is.
    """

    at_ms: int
    air: Air
    is_covered: bool
    is_foretold: bool

    def is_stale(self, now: LookedAhead, *, is_wet: bool, is_resting: bool) -> bool:
        """Return whether it is to be looked ahead again, by what would be gone by `now`.

        That is after a minute, after ten in steady air, and at once when the room is foretold at last. Where it is
        foretold a minute hardly moves the times: a coat waits longer, the more so once it is dry.
        """
        if now.is_foretold and not self.is_foretold:
            return True
        is_steady = now.is_covered is self.is_covered and alike(self.air, now.air)
        every_ms = STEADY_EVERY_MS if is_steady else FORETOLD_EVERY_MS if now.is_foretold else AHEAD_EVERY_MS
        if now.is_foretold and not is_wet:
            every_ms = RESTING_EVERY_MS if is_resting else STEADY_EVERY_MS
        return now.at_ms - self.at_ms >= every_ms

    def shifted(self, step_ms: int) -> LookedAhead:
        """Return the same after a wall clock was set `step_ms` on."""
        return replace(self, at_ms=self.at_ms + step_ms)
