"""Rings while a warning is unheard, louder the longer, and calls for more than a sound when nobody reacts."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QApplication

from studiowatch.service.ports import Clock
from studiowatch.service.snapshot import Snapshot
from studiowatch.ui.models.alarm import LOUDNESS, Alarm, Ring, Sound, Step
from studiowatch.ui.models.quiet_hours import QuietHours
from studiowatch.ui.models.times import local
from studiowatch.ui.sound import Speaker


class Bell(QObject):
    """Holds what was sounded for.

    `unseen` asks for a flash of the window where nothing can be heard; `called` says again what nobody has heard, and
    `to_front` asks for the window.
    """

    unseen = Signal()
    called = Signal()
    to_front = Signal()

    def __init__(self, speaker: Speaker, clock: Clock, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._speaker, self._clock = speaker, clock
        self._alarm = Alarm()
        self.quiet = QuietHours()

    def listen(self, snapshot: Snapshot | None) -> None:
        """Ring if something in `snapshot` is due to be heard."""
        if snapshot is None:
            return
        minute = self._minute_of_day() if self.quiet.on else 0  # what is never quiet asks for no time of day
        self._alarm, ring = self._alarm.step(snapshot, self._clock.monotonic_s(), minute=minute, quiet=self.quiet)
        if ring is not None:
            self._ring(ring)

    def _minute_of_day(self) -> int:
        now = local(self._clock.utc_ms())
        return now.hour * 60 + now.minute

    def try_out(self) -> None:
        """Sound as loud as it can be."""
        self._ring(Ring(sound=Sound.INSISTENT, loudness=LOUDNESS[Step.FRONT]))

    def _ring(self, ring: Ring) -> None:
        self._speaker.play(ring.sound, ring.loudness)
        if self._speaker.trouble:
            QApplication.beep()
            self.unseen.emit()
        if ring.reached is Step.CALL:
            self.called.emit()
        elif ring.reached is Step.FRONT:
            self.to_front.emit()
