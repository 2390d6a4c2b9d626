"""The preparation that a form shows: what she did at once, and what the newest snapshot says as soon as it says it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal

from studiowatch.service.preparation_commands import EndPreparation, StartPreparation, TickChore
from studiowatch.service.snapshot import Snapshot
from studiowatch.studio.chores import Task
from studiowatch.studio.preparation import (
    ChoreState,
    CoatLaid,
    CoatToLay,
    Preparation,
    Ticked,
    Unticked,
    advance,
)
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.laying import ChoreRow, chore_rows


class Preparing(QObject):
    """Holds a preparation on the window's side of the desk.

    `changed` tells that it is another now, `begun` that it was begun or begun anew, `ended` that she left it, and
    `refused` says in one sentence what could not be done.
    """

    changed = Signal()
    begun = Signal()
    ended = Signal()
    refused = Signal(str)

    def __init__(self, courier: Courier, now_ms: Callable[[], int], parent: QObject) -> None:
        super().__init__(parent)
        self._courier, self._now_ms = courier, now_ms
        self.now: Preparation | None = None

    @property
    def rows(self) -> tuple[ChoreRow, ...]:
        """The chores as rows; none where nothing is prepared."""
        return () if self.now is None else chore_rows(self.now, self._now_ms())

    def take(self, snapshot: Snapshot) -> None:
        """Take how it stands from the newest snapshot."""
        if self.now is not None:
            key = self.now.key
            newest = (one.preparation for one in snapshot.preparations if one.preparation.key == key)
            self.now = next(newest, self.now)

    def begin(self, wanted: StartPreparation, *, solvent: bool, vapour_in_room: bool) -> None:
        """Begin, or begin anew for other coats: what was ticked of the same ones still holds."""

        def done(key: str) -> None:
            begun = Preparation(
                key=key,
                began_ms=self._now_ms(),
                coats=wanted.coats,
                solvent=solvent,
                torch=wanted.torch,
                vapour_in_room=vapour_in_room,
            )
            is_same = self.now is not None and (self.now.key, self.now.coats) == (key, wanted.coats)
            self.now = self.now if is_same and self.now and self.now.torch == wanted.torch else begun
            self.begun.emit()

        self._courier.send(wanted, owner=self, done=done, refused=self.refused.emit)

    def press(self, task: Task) -> None:
        """Tick a chore, or take a tick back; it is shown at once and put right by the next snapshot."""
        before = self.now
        row = next((row for row in self.rows if row.task is task), None)
        if before is None or row is None:
            return
        is_done = row.state in (ChoreState.TO_DO, ChoreState.STALE)
        event = Ticked(task=task, time_ms=self._now_ms()) if is_done else Unticked(task=task)
        self.now = advance(before, event)
        self.changed.emit()
        self._courier.send(
            TickChore(preparation_key=before.key, task=task, is_done=is_done),
            owner=self,
            done=lambda _key: None,
            refused=lambda sentence: self._take_back(before, sentence),
        )

    def _take_back(self, before: Preparation, sentence: str) -> None:
        self.now = before
        self.changed.emit()
        self.refused.emit(sentence)

    def laid(self, piece_key: str) -> CoatToLay | None:
        """Take it that the brush went down on a piece; return the coat whose turn it is then, or None."""
        if self.now is None:
            return None
        self.now = advance(self.now, CoatLaid(piece_key=piece_key, time_ms=self._now_ms()))
        return self.now.turn

    def end(self) -> None:
        """Leave it: nothing more is laid from this preparation."""
        if self.now is None:
            self.ended.emit()
            return
        command = EndPreparation(preparation_key=self.now.key)
        self._courier.send(command, owner=self, done=lambda _key: self.ended.emit(), refused=self.refused.emit)
