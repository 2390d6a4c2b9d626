"""What she can do from the window: open a form, or send a command straight away."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeVar

from PySide6.QtCore import QObject, QPoint, Signal
from PySide6.QtWidgets import QMenu, QMessageBox, QWidget

from studiowatch.service.commands import (
    ArchivePiece,
    Command,
    CoverCoat,
    HearWarning,
    MovePiece,
    RemindLater,
    TickPrompt,
)
from studiowatch.service.ports import Clock, Desk
from studiowatch.service.snapshot import PieceView, Snapshot
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.times import REMIND_AFTER_MS, local
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.coat_dialog import CoatDialog
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.look_dialog import LookDialog, pieces_with_coats
from studiowatch.ui.widgets.register_dialog import RegisterDialog

FormT = TypeVar("FormT", bound=FormDialog)


class Deeds(QObject):
    """Opens the forms over `window` and carries the small commands; `done` and `refused` tell how one went."""

    done = Signal(str)
    refused = Signal(str)
    tick_refused = Signal(str)
    made = Signal(str)

    def __init__(self, desk: Desk, clock: Clock, window: QWidget) -> None:
        super().__init__(window)
        self._desk, self._clock, self._window = desk, clock, window
        self._courier = Courier(desk, self)
        self.snapshot: Snapshot | None = None
        self.style = Style()

    def close(self) -> None:
        """Bring no more answers: the window is going."""
        self._courier.close()

    def piece(self, key: str) -> PieceView | None:
        """Return the piece of `key`, or None."""
        pieces = self.snapshot.pieces if self.snapshot else ()
        return next((piece for piece in pieces if piece.key == key), None)

    def set_snapshot(self, snapshot: Snapshot) -> None:
        """Take the newest snapshot, and let an open form look at the room again."""
        self.snapshot = snapshot
        for form in self._window.findChildren(CoatDialog):
            form.set_snapshot(snapshot)

    def register_piece(self) -> RegisterDialog:
        """Open the form for a new piece."""
        form = RegisterDialog(
            sheets=self._desk.sheets(),
            today=local(self._clock.utc_ms()).date(),
            courier=self._courier,
            style=self.style,
            parent=self._window,
        )
        form.recorded.connect(self.made)
        return self._open(form)

    def lay_coat(self, piece_key: str) -> CoatDialog | None:
        """Open the form for a coat, if there is a piece."""
        sheets = self._desk.sheets()
        if self.snapshot is None or not self.snapshot.pieces or not sheets:
            self.refused.emit("Register a piece first: a coat is laid on a piece.")
            return None
        form = CoatDialog(
            snapshot=self.snapshot,
            piece_key=piece_key,
            sheets=sheets,
            now_ms=self._clock.utc_ms,
            courier=self._courier,
            style=self.style,
            parent=self._window,
        )
        return self._open(form)

    def touch_test(self, piece_key: str) -> LookDialog | None:
        """Open the touch test, if a coat was laid."""
        if self.snapshot is None or not pieces_with_coats(self.snapshot):
            self.refused.emit("No coat was laid yet: there is nothing to touch.")
            return None
        form = LookDialog(
            snapshot=self.snapshot,
            piece_key=piece_key,
            now_ms=self._clock.utc_ms,
            courier=self._courier,
            style=self.style,
            parent=self._window,
        )
        return self._open(form)

    def hear(self, warning_key: str) -> None:
        """Say that the warning was heard."""
        self._send(HearWarning(warning_key=warning_key), "Heard: no more sound for this warning.")

    def remind(self, warning_key: str) -> None:
        """Put the warning off for ten minutes."""
        until_ms = self._clock.utc_ms() + REMIND_AFTER_MS
        self._send(RemindLater(warning_key=warning_key, until_ms=until_ms), "Quiet for ten minutes.")

    def tick(self, prompt_key: str) -> None:
        """Say that a prompt was done."""
        self._send(TickPrompt(prompt_key=prompt_key), "Ticked off.", refused=lambda: self.tick_refused.emit(prompt_key))

    def move(self, piece_key: str, place: int) -> None:
        """Put a piece at another place in the rack."""
        self._send(MovePiece(piece_key=piece_key, place=place))

    def cover(self, piece_key: str) -> None:
        """Say that the mesh cover is set over the top coat."""
        piece = self.piece(piece_key)
        if piece is None or piece.top is None:
            return
        command = CoverCoat(coat_key=piece.top.key, covered_ms=self._clock.utc_ms())
        self._send(command, f"Cover set over {piece.title}.")

    def take_off(self, piece_key: str) -> None:
        """Ask, then take a piece off the rack."""
        piece = self.piece(piece_key)
        if piece is None:
            return
        box = question(
            self._window,
            f"Take {piece.title} off the rack?",
            "Its coats are no longer watched. Its records stay.",
            "Take it off",
        )
        done = f"{piece.title} was taken off the rack."
        box.accepted.connect(lambda: self._send(ArchivePiece(piece_key=piece_key), done))
        box.open()

    def menu_for(self, piece_key: str) -> QMenu:
        """Return the few things one does with a piece; the menu deletes itself."""
        piece = self.piece(piece_key)
        laid = piece is not None and piece.top is not None
        menu = QMenu(self._window)
        menu.setAccessibleName("What to do with this piece")
        menu.aboutToHide.connect(menu.deleteLater)
        menu.addAction("Lay a coat…", lambda: self.lay_coat(piece_key))
        menu.addAction("Touch test or look…", lambda: self.touch_test(piece_key)).setEnabled(laid)
        uncovered = laid and piece is not None and piece.top is not None and not piece.top.covered
        menu.addAction("The mesh cover is set", lambda: self.cover(piece_key)).setEnabled(uncovered)
        menu.addSeparator()
        menu.addAction("Take off the rack…", lambda: self.take_off(piece_key))
        return menu

    def show_menu(self, piece_key: str, at: QPoint) -> None:
        """Show the menu of a piece."""
        self.menu_for(piece_key).popup(at)

    def _open(self, form: FormT) -> FormT:
        form.open()
        return form

    def _send(self, command: Command, words: str = "", refused: Callable[[], None] | None = None) -> None:
        def answered(_key: str) -> None:
            if words:
                self.done.emit(words)

        def declined(sentence: str) -> None:
            self.refused.emit(sentence)
            if refused is not None:
                refused()

        self._courier.send(command, owner=self, done=answered, refused=declined)


def question(parent: QWidget, headline: str, detail: str, yes: str) -> QMessageBox:
    """Return a question with the answers `yes` and "Cancel"; it deletes itself when closed."""
    box = QMessageBox(QMessageBox.Icon.NoIcon, "studiowatch", headline, parent=parent)
    box.setInformativeText(detail)
    box.addButton(yes, QMessageBox.ButtonRole.AcceptRole)
    box.addButton("Cancel", QMessageBox.ButtonRole.RejectRole)
    box.finished.connect(box.deleteLater)
    return box
