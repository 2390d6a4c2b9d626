"""Which sound is due: once for each new warning, again and again while one that cannot wait is unheard."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from studiowatch.service.snapshot import Snapshot, WarningView
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.words import Level

REPEAT_S = 8.0  # between two sounds for the same unheard warning: assumption, long enough to walk over


class Sound(StrEnum):
    """The two sounds, by the name of their file."""

    ATTENTION = "attention"
    INSISTENT = "insistent"


@dataclass(frozen=True, slots=True, kw_only=True)
class Alarm:
    """What was sounded for, and when last (monotonic seconds)."""

    sounded: frozenset[str] = frozenset()
    last_s: float = float("-inf")

    def step(self, snapshot: Snapshot, now_s: float) -> tuple[Alarm, Sound | None]:
        """Return the alarm after this moment, and the sound to play now, if any."""
        audible = [one for one in snapshot.warnings if one.sound and one.state is WarningState.RAISED]
        keys = frozenset(one.key for one in audible)
        fresh = bool(keys - self.sounded)
        urgent = any(one.level is Level.ACT for one in audible)
        if fresh or (urgent and now_s - self.last_s >= REPEAT_S):
            sound = Sound.INSISTENT if urgent else Sound.ATTENTION
            return Alarm(sounded=keys, last_s=now_s), sound
        return Alarm(sounded=keys, last_s=self.last_s), None


def newly_raised(before: Snapshot | None, now: Snapshot) -> tuple[WarningView, ...]:
    """Return the warnings that were raised since `before`, for a message outside the window."""
    known = frozenset(_raised(before)) if before else frozenset()
    return tuple(one for key, one in _raised(now).items() if key not in known)


def _raised(snapshot: Snapshot) -> dict[str, WarningView]:
    return {one.key: one for one in snapshot.warnings if one.state is WarningState.RAISED and one.level > Level.CALM}
