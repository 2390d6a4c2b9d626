"""What she and the bell do with warnings: hear, put off, try the sound, choose quiet hours, and be called."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QCursor
from PySide6.QtWidgets import QApplication, QMenu, QWidget

from studiowatch.service.commands import Command, HearWarning, RemindLater
from studiowatch.service.snapshot import Snapshot, WarningView
from studiowatch.speech.words import mark, say
from studiowatch.studio.warnings import WarningState
from studiowatch.ui.bell import Bell
from studiowatch.ui.bridge import Courier
from studiowatch.ui.deeds import Deeds
from studiowatch.ui.models.reminders import Reminder, reminders
from studiowatch.ui.models.times import REMIND_AFTER_MS, clock_words
from studiowatch.ui.parts import Parts
from studiowatch.ui.widgets.across import AcrossView
from studiowatch.ui.widgets.page import Page
from studiowatch.ui.widgets.quiet_dialog import QuietDialog

HEARABLE = (WarningState.RAISED, WarningState.REMIND)
NOTHING_WAITS = mark("No warning waits for an answer.")
NOTHING_HEARD = mark("Nothing can be heard on this machine: the window flashes instead.")
SOUNDED = mark("That is the sound of a warning, as loud as it gets.")


class WarningDeeds(QObject):
    """Acts on the warnings of the latest snapshot over `window`.

    She answers them on `page` and on `across`. `done`, `refused` and `said` tell in words, `flashed` that what is shown
    flashes, `fronted` asks for the window.
    """

    done = Signal(str)
    refused = Signal(str)
    said = Signal(str)
    flashed = Signal()
    fronted = Signal()

    def __init__(self, parts: Parts, deeds: Deeds, page: Page, across: AcrossView, window: QWidget) -> None:
        super().__init__(window)
        self._parts, self._deeds, self._window = parts, deeds, window
        self._courier = Courier(parts.desk, self)
        page.later.connect(self.ask_when)
        for shown in (page, across):
            shown.heard.connect(self.hear)
            shown.remind.connect(self.remind)
        self.flashed.connect(page.sentence.flash)
        self.flashed.connect(across.flash)
        self.bell = Bell(parts.speaker, parts.clock, self)
        self.bell.quiet = parts.settings.quiet_hours
        self.bell.unseen.connect(self._flash)
        self.bell.called.connect(self._call)
        self.bell.to_front.connect(self.fronted)

    def close(self) -> None:
        """Bring no more answers: the window is going."""
        self._courier.close()

    def listen(self, snapshot: Snapshot | None) -> None:
        """Ring if something is due."""
        self.bell.listen(snapshot)

    def hear(self, warning_key: str) -> None:
        """Say that a warning was heard."""
        self._send(HearWarning(warning_key=warning_key), say("Heard: no more sound for this warning."))

    def remind(self, warning_key: str, until_ms: int | None = None) -> None:
        """Put a warning off until `until_ms`, UTC ms, or for ten minutes."""
        now_ms = self._parts.clock.utc_ms()
        until_ms = now_ms + REMIND_AFTER_MS if until_ms is None else until_ms
        words = say("Put off until {time}.", time=clock_words(until_ms, now_ms))
        self._send(RemindLater(warning_key=warning_key, until_ms=until_ms), words)

    def _send(self, command: Command, words: str) -> None:
        self._courier.send(command, owner=self, done=lambda _key: self.done.emit(words), refused=self.refused.emit)

    def hear_first(self) -> None:
        """Answer the first warning that may be heard."""
        warning = self._first(HEARABLE)
        if warning is not None:
            self.hear(warning.key)

    def put_off_first(self, choice: int) -> None:
        """Put off the first raised warning by the reminder of number `choice`, or the last one there is."""
        warning = self._first((WarningState.RAISED,))
        if warning is not None:
            choices = self._choices(warning)
            self.remind(warning.key, choices[min(choice, len(choices) - 1)].until_ms)

    def ask_when(self, warning_key: str) -> None:
        """Let her choose when the warning comes again."""
        self.menu_for(warning_key).popup(QCursor.pos())

    def menu_for(self, warning_key: str) -> QMenu:
        """Return the choices of when to be reminded; the menu deletes itself."""
        menu = QMenu(self._window)
        menu.setAccessibleName(say("When to be reminded"))
        menu.aboutToHide.connect(menu.deleteLater)
        warning = next((one for one in self._warnings if one.key == warning_key), None)
        for reminder in () if warning is None else self._choices(warning):
            menu.addAction(reminder.words, partial(self.remind, warning_key, reminder.until_ms))
        return menu

    def try_sound(self) -> None:
        """Sound as a warning that nobody has heard."""
        self.bell.try_out()
        self.said.emit(say(NOTHING_HEARD if self._parts.speaker.trouble else SOUNDED))

    def choose_quiet_hours(self) -> QuietDialog:
        """Open the form for the quiet hours."""
        form = QuietDialog(self._parts.settings.quiet_hours, self._deeds.style, self._window)
        form.chosen.connect(lambda: self._keep(form))
        form.open()
        return form

    def _keep(self, form: QuietDialog) -> None:
        self._parts.settings.quiet_hours = self.bell.quiet = form.quiet_hours
        self.said.emit(f"{form.quiet_hours.words()}.")

    @property
    def _warnings(self) -> tuple[WarningView, ...]:
        snapshot = self._deeds.snapshot
        return () if snapshot is None else snapshot.warnings

    def _first(self, states: tuple[WarningState, ...]) -> WarningView | None:
        found = next((one for one in self._warnings if one.state in states), None)
        if found is None:
            self.said.emit(say(NOTHING_WAITS))
        return found

    def _choices(self, warning: WarningView) -> tuple[Reminder, ...]:
        snapshot = self._deeds.snapshot
        return () if snapshot is None else reminders(snapshot, warning, self._parts.clock.utc_ms())

    def _flash(self) -> None:
        QApplication.alert(self._window)
        self.flashed.emit()

    def _call(self) -> None:
        """Say again what nobody has heard: beside the clock, and in the list of windows."""
        QApplication.alert(self._window)
        for warning in self._warnings:
            if warning.sound and warning.state is WarningState.RAISED:
                self._parts.tray.say(warning.sentence)
