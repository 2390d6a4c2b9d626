"""What she means to do with the room, from the window: looked at, added and taken away."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from studiowatch.service.intention_commands import DropIntention
from studiowatch.service.intention_view import IntentionView
from studiowatch.service.ports import Clock
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import say
from studiowatch.ui.bridge import Courier
from studiowatch.ui.open_forms import open_forms
from studiowatch.ui.plain import plain_box
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.intention_form import IntentionForm
from studiowatch.ui.widgets.intentions_dialog import IntentionsDialog


class IntentionDeeds(QObject):
    """Opens list and form over `window`; `done` and `refused` tell in words how something went."""

    done = Signal(str)
    refused = Signal(str)

    def __init__(self, clock: Clock, courier: Courier, window: QWidget) -> None:
        super().__init__(window)
        self._clock, self._courier, self._window = clock, courier, window
        self.snapshot: Snapshot | None = None
        self.style = Style()

    def set_snapshot(self, snapshot: Snapshot) -> None:
        """Take the newest snapshot, and let an open list show it."""
        self.snapshot = snapshot
        for shown in open_forms(self._window, IntentionsDialog):
            shown.set_snapshot(snapshot)

    def show(self) -> IntentionsDialog | None:
        """Open the list; before the first snapshot there is none."""
        if self.snapshot is None:
            return None
        shown = IntentionsDialog(self.snapshot, self.style, self._window)
        shown.more.connect(partial(self.add, shown))
        shown.dropped.connect(partial(self.drop, shown))
        shown.open()
        return shown

    def add(self, over: QWidget | None = None) -> IntentionForm:
        """Open the form for another."""
        form = IntentionForm(
            now_ms=self._clock.utc_ms, courier=self._courier, style=self.style, parent=over or self._window
        )
        form.told.connect(self.done)
        form.open()
        return form

    def drop(self, over: QWidget, one: IntentionView) -> None:
        """Take one away; Undo brings it back."""

        def done(_key: str) -> None:
            self.done.emit(say("Not meant any more: {intention}", intention=one.words))

        def refused(sentence: str) -> None:
            plain_box(over, sentence).open()
            self.refused.emit(sentence)

        self._courier.send(DropIntention(intention_key=one.meant.key), owner=over, done=done, refused=refused)
