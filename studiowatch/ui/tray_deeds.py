"""What the tray is told while the window may be away: how things stand, what is raised, and that the watch goes on."""

from __future__ import annotations

from studiowatch.service.snapshot import Snapshot
from studiowatch.ui.models.alarm import newly_raised
from studiowatch.ui.models.prompts import next_prompt_words
from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.tray import Tray, tray_words

_EVERY_MS = 10_000  # ms between two looks at how far the next prompt is: nobody reads the tray to the second


class TrayDeeds:
    """Tells `tray` what each snapshot brings."""

    def __init__(self, tray: Tray, settings: ViewSettings) -> None:
        self._tray, self._settings = tray, settings
        self._told: tuple[object, ...] | None = None
        self._prompt = ""

    def take(self, before: Snapshot | None, snapshot: Snapshot) -> None:
        """Show how things stand, the next prompt to some seconds, and say each warning that was not raised `before`."""
        prompts = (snapshot.prompts, snapshot.preparations, snapshot.time_ms // _EVERY_MS)
        if prompts != self._told:
            self._told, self._prompt = prompts, next_prompt_words(snapshot)
        self._tray.show(snapshot.sentence, self._prompt)
        for warning in newly_raised(before, snapshot):
            self._tray.say(warning.sentence)

    def count_down(self, snapshot: Snapshot) -> None:
        """Show the next prompt as it reads by now, between two snapshots."""
        self._prompt = next_prompt_words(snapshot)
        self._tray.show(snapshot.sentence, self._prompt)

    def say_stopped(self, snapshot: Snapshot) -> None:
        """Show and say that the watch has stopped: nobody sees it in a window that is away."""
        self._tray.show(snapshot.sentence, self._prompt)
        self._tray.say(snapshot.sentence)

    def say_going_on(self) -> None:
        """Say once and for all that the watch goes on without the window."""
        if not self._settings.told_of_tray:
            self._settings.told_of_tray = True
            self._tray.say(tray_words())
