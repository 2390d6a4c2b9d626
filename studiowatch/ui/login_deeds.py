"""Whether studiowatch starts at login: what the menu's tick changes, told in words."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal

from studiowatch.service.login_entry import LoginEntry
from studiowatch.speech.words import say


class LoginDeeds(QObject):
    """Changes `entry`, or says that there is none. `done`, `refused` and `said` tell in words how it went."""

    done = Signal(str)
    refused = Signal(str)
    said = Signal(str)

    def __init__(self, entry: LoginEntry | None, parent: QObject) -> None:
        super().__init__(parent)
        self._entry = entry

    @property
    def is_on(self) -> bool:
        """Whether it starts at login."""
        return self._entry is not None and self._entry.is_on

    def set_on(self, on: bool) -> None:  # noqa: FBT001 - as the menu tells it
        """Start at login from now on, or no longer."""
        if self._entry is None:
            self.said.emit(say("A made-up studio does not start at login."))
            return
        try:
            self._entry.set_on(on=on)
        except OSError as fault:
            reason = fault.strerror or fault
            self.refused.emit(say("{path} cannot be changed: {reason}.", path=self._entry.path, reason=reason))
        else:
            self.done.emit(say("Opens at login from now on.") if on else say("No longer opens at login."))
