"""Which sound is due, how loud, and what else is done while nobody reacts.

A new warning sounds once, one that came in quiet hours once they are over. One that cannot wait sounds again and again
until it is heard, each time after a while louder: then the tray says it again and the window asks for attention, and at
last the window comes to the front.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum, StrEnum

from studiowatch.service.snapshot import Snapshot, WarningView
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.words import Level
from studiowatch.ui.models.quiet_hours import QuietHours, Voice

REPEAT_S = 8.0  # between two sounds for the same unheard warning: assumption, long enough to walk over
RINGS_A_STEP = 3  # rings before the next step: assumption
SOFTLY = 0.2  # of the full loudness, in quiet hours: assumption
NO_QUIET = QuietHours()


class Sound(StrEnum):
    """The two sounds, by the name of their file."""

    ATTENTION = "attention"
    INSISTENT = "insistent"


class Step(IntEnum):
    """How far it has come without anybody reacting."""

    SOUND = 0
    CALL = 1
    FRONT = 2


LOUDNESS = {Step.SOUND: 0.4, Step.CALL: 0.7, Step.FRONT: 1.0}  # of the full loudness: assumption


@dataclass(frozen=True, slots=True, kw_only=True)
class Ring:
    """A sound to play now, 0 to 1 loud; `reached` is the step that is new with it, if one is."""

    sound: Sound
    loudness: float
    reached: Step | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Alarm:
    """What was sounded for, when last (monotonic seconds), and how often in vain."""

    sounded: frozenset[str] = frozenset()
    last_s: float = float("-inf")
    rings: int = 0

    def step(
        self, snapshot: Snapshot, now_s: float, *, minute: int = 0, quiet: QuietHours = NO_QUIET
    ) -> tuple[Alarm, Ring | None]:
        """Return the alarm after this moment, and what to do now, if anything; `minute` is that of her day."""
        audible = [one for one in snapshot.warnings if one.sound and one.state is WarningState.RAISED]
        voices = {one.key: quiet.voice(one, minute) for one in audible}
        sounded = frozenset(key for key, voice in voices.items() if voice is not Voice.SILENT or key in self.sounded)
        fresh = [one for one in audible if one.key not in self.sounded and voices[one.key] is not Voice.SILENT]
        urgent = [one for one in audible if one.level is Level.ACT and voices[one.key] is Voice.FULL]
        rings = self.rings if urgent else 0
        if urgent and (fresh or now_s - self.last_s >= REPEAT_S):
            return Alarm(sounded=sounded, last_s=now_s, rings=rings + 1), _again(rings)
        if not fresh:
            return Alarm(sounded=sounded, last_s=self.last_s, rings=rings), None
        softly = all(voices[one.key] is Voice.ONCE_SOFTLY for one in fresh)
        sound = Sound.INSISTENT if any(one.level is Level.ACT for one in fresh) else Sound.ATTENTION
        ring = Ring(sound=sound, loudness=SOFTLY if softly else LOUDNESS[Step.SOUND])
        return Alarm(sounded=sounded, last_s=now_s, rings=rings), ring


def _again(rings: int) -> Ring:
    """Return the ring after so many in vain."""
    step = Step(min(rings // RINGS_A_STEP, max(Step)))
    is_new = rings == step * RINGS_A_STEP
    return Ring(sound=Sound.INSISTENT, loudness=LOUDNESS[step], reached=step if is_new else None)


def newly_raised(before: Snapshot | None, now: Snapshot) -> tuple[WarningView, ...]:
    """Return the warnings that were raised since `before`, for a message outside the window."""
    known = frozenset(_raised(before)) if before else frozenset()
    return tuple(one for key, one in _raised(now).items() if key not in known)


def _raised(snapshot: Snapshot) -> dict[str, WarningView]:
    return {one.key: one for one in snapshot.warnings if one.state is WarningState.RAISED and one.level > Level.CALM}
