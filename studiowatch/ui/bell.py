"""Rings while a warning is unheard: through the speaker, and through the desktop's beep where there is none."""

from __future__ import annotations

from PySide6.QtWidgets import QApplication

from studiowatch.service.ports import Clock
from studiowatch.service.snapshot import Snapshot
from studiowatch.ui.models.alarm import Alarm
from studiowatch.ui.sound import Speaker


class Bell:
    """Holds what was sounded for, and when last."""

    def __init__(self, speaker: Speaker, clock: Clock) -> None:
        self._speaker, self._clock = speaker, clock
        self._alarm = Alarm()

    def listen(self, snapshot: Snapshot | None) -> None:
        """Ring if something in `snapshot` is due to be heard."""
        if snapshot is None:
            return
        self._alarm, sound = self._alarm.step(snapshot, self._clock.monotonic_s())
        if sound is None:
            return
        self._speaker.play(sound)
        if self._speaker.trouble:
            QApplication.beep()
