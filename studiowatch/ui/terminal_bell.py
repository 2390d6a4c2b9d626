"""The warning's voice for a watch without a window: the same sounds at the same times, and no Qt."""

from __future__ import annotations

from studiowatch.service.ports import Clock
from studiowatch.service.snapshot import Snapshot
from studiowatch.ui.models.alarm import Alarm
from studiowatch.ui.models.quiet_hours import QuietHours
from studiowatch.ui.models.times import local
from studiowatch.ui.sound import Speaker


class TerminalBell:
    """Rings while a warning is unheard, louder the longer, and keeps the quiet hours."""

    def __init__(self, speaker: Speaker, clock: Clock, quiet: QuietHours) -> None:
        self._speaker, self._clock, self._quiet = speaker, clock, quiet
        self._alarm = Alarm()

    @property
    def trouble(self) -> str:
        """Why nothing can be heard, or ""."""
        return self._speaker.trouble

    def listen(self, snapshot: Snapshot) -> bool:
        """Ring if something in `snapshot` is due to be heard, and return whether it was."""
        now = local(self._clock.utc_ms())
        minute = now.hour * 60 + now.minute
        self._alarm, ring = self._alarm.step(snapshot, self._clock.monotonic_s(), minute=minute, quiet=self._quiet)
        if ring is not None:
            self._speaker.play(ring.sound, ring.loudness)
        return ring is not None

    def close(self) -> None:
        """Fall silent."""
        self._speaker.close()
