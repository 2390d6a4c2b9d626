"""What she can do with what was recorded: look at it, correct it, take it back, say how a coat came out, undo."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TypeVar

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QDialog, QMessageBox, QWidget

from studiowatch.service.commands import Command
from studiowatch.service.correction_commands import Redo, RestorePiece, TakeBackCoat, Undo
from studiowatch.service.piece_view import CoatView, PieceView
from studiowatch.service.ports import Clock, Desk
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import say
from studiowatch.studio.pieces import Coat
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.recorded import LineKind, RecordedLine
from studiowatch.ui.open_forms import open_forms
from studiowatch.ui.plain import plain_box
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.archive_dialog import ArchiveDialog
from studiowatch.ui.widgets.correction_dialogs import CoatCorrectionDialog, ForgottenCoatDialog, LookCorrectionDialog
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.outcome_dialog import OutcomeDialog
from studiowatch.ui.widgets.question import question
from studiowatch.ui.widgets.recorded_dialog import RecordedDialog

FormT = TypeVar("FormT", bound=FormDialog)


class RecordDeeds(QObject):
    """Opens the forms of corrections over `window`; `done` and `refused` tell in words how one went.

    `review_asked` carries the key of a coat that came out badly, and that she wants to know the reason of.
    """

    done = Signal(str)
    refused = Signal(str)
    review_asked = Signal(str)

    def __init__(self, desk: Desk, clock: Clock, courier: Courier, window: QWidget) -> None:
        super().__init__(window)
        self._desk, self._clock, self._courier, self._window = desk, clock, courier, window
        self.snapshot: Snapshot | None = None
        self.style = Style()

    def set_snapshot(self, snapshot: Snapshot) -> None:
        """Take the newest snapshot."""
        self.snapshot = snapshot
        for recorded in open_forms(self._window, RecordedDialog):
            recorded.set_snapshot(snapshot)
        for archive in open_forms(self._window, ArchiveDialog):
            archive.set_snapshot(snapshot)

    def piece(self, key: str) -> PieceView | None:
        """Return the piece of `key`, or None."""
        pieces = self.snapshot.pieces if self.snapshot else ()
        return next((piece for piece in pieces if piece.key == key), None)

    def show_recorded(self, piece_key: str) -> RecordedDialog | None:
        """Open what was recorded of a piece."""
        piece = self.piece(piece_key)
        if piece is None:
            self.refused.emit(say("Choose a piece on the rack first."))
            return None
        shown = RecordedDialog(piece, self._clock.utc_ms, self.style, self._window)
        shown.correct.connect(partial(self.correct, piece_key, over=shown))
        shown.take_back.connect(partial(self.take_back, piece_key, over=shown))
        shown.forgotten.connect(partial(self.add_forgotten, piece_key, over=shown))
        shown.open()
        return shown

    def add_forgotten(self, piece_key: str, over: QDialog | None = None) -> ForgottenCoatDialog | None:
        """Open the form of a coat that was laid and forgotten."""
        piece = self.piece(piece_key)
        if piece is None or not self._desk.sheets():
            return None
        form = ForgottenCoatDialog(
            piece=piece,
            sheets=self._desk.sheets(),
            now_ms=self._clock.utc_ms,
            courier=self._courier,
            style=self.style,
            parent=over or self._window,
        )
        return self._open(form)

    def show_archive(self) -> ArchiveDialog | None:
        """Open the archived pieces."""
        if self.snapshot is None:
            return None
        shown = ArchiveDialog(self.snapshot, self._desk.photo_folder, self.style, self._window)
        shown.restored.connect(self.restore)
        shown.open()
        return shown

    def restore(self, piece_key: str) -> None:
        """Put an archived piece back on the rack."""
        archived = self.snapshot.archived if self.snapshot else ()
        title = next((piece.title for piece in archived if piece.key == piece_key), say("The piece"))
        self._send(RestorePiece(piece_key=piece_key), say("{title} is back on the rack.", title=title))

    def correct(self, piece_key: str, line: RecordedLine, over: QDialog | None = None) -> FormDialog | None:
        """Open the form that corrects a line of what was recorded."""
        found = self._coat(piece_key, line.coat_key)
        if found is None:
            return None
        piece, coat, kept = found
        if line.kind is LineKind.OUTCOME:
            return self.ask_outcome(piece_key, coat.key, over)
        form: FormDialog
        if line.kind is LineKind.COAT:
            form = CoatCorrectionDialog(
                title=piece.title,
                coat=coat,
                kept=kept,
                sheets=self._desk.sheets(),
                now_ms=self._clock.utc_ms,
                courier=self._courier,
                style=self.style,
                parent=over or self._window,
            )
        else:
            form = LookCorrectionDialog(
                title=piece.title,
                coat=coat,
                look=next(look for look in kept.looks if look.key == line.key),
                now_ms=self._clock.utc_ms,
                courier=self._courier,
                style=self.style,
                parent=over or self._window,
            )
        return self._open(form)

    def ask_outcome(self, piece_key: str, coat_key: str = "", over: QDialog | None = None) -> OutcomeDialog | None:
        """Ask how a coat came out, the topmost one if none is named."""
        piece = self.piece(piece_key)
        if piece is None or piece.top is None:
            self.refused.emit(say("No coat was laid on that piece yet: nothing came out."))
            return None
        form = OutcomeDialog(
            piece=piece,
            coat_key=coat_key or piece.top.key,
            now_ms=self._clock.utc_ms,
            courier=self._courier,
            style=self.style,
            parent=over or self._window,
        )
        form.recorded.connect(lambda _key: self._offer_review(form.clouded_key))
        return self._open(form)

    def _offer_review(self, coat_key: str) -> None:
        if not coat_key:
            return
        detail = say("The review weighs what the room did under it, and says what to do now.")
        box = question(
            self._window, say("Look at why it may have clouded?"), detail, say("Look at why"), say("Not now")
        )
        box.accepted.connect(partial(self.review_asked.emit, coat_key))
        box.open()

    def take_back(self, piece_key: str, line: RecordedLine, over: QDialog | None = None) -> QMessageBox | None:
        """Take a line back; of a coat it is asked first whether it is still to come."""
        found = self._coat(piece_key, line.coat_key)
        if found is None:
            return None
        piece, coat, _ = found
        if line.take_back is not None:
            self._send(
                line.take_back,
                say("Taken back: {what} ({coat} on {title}).", what=line.words, coat=coat.label, title=piece.title),
            )
            return None
        asked = say("Was {coat} not laid on {title}?", coat=coat.label, title=piece.title)
        kept = say("Its looks go with it. The history of corrections keeps what stood here.")
        box = plain_box(over or self._window, asked, kept)
        for words, again in ((say("Not laid, still to come"), True), (say("Not laid, not to come"), False)):
            made = box.addButton(words, QMessageBox.ButtonRole.ActionRole)
            made.setAutoDefault(False)
            command = TakeBackCoat(coat_key=coat.key, plan_again=again)
            taken = say("Taken back: {coat} on {title}.", coat=coat.label, title=piece.title)
            made.clicked.connect(partial(self._send, command, taken))
        keep = box.addButton(say("Keep it"), QMessageBox.ButtonRole.RejectRole)
        box.setDefaultButton(keep)
        box.setEscapeButton(keep)
        box.open()
        return box

    def undo(self) -> None:
        """Undo what was done last."""
        self._send_back(Undo(), lambda what: say("Undone: {what}.", what=what))

    def redo(self) -> None:
        """Do again what was undone last."""
        self._send_back(Redo(), lambda what: say("Done again: {what}.", what=what))

    def _coat(self, piece_key: str, coat_key: str) -> tuple[PieceView, CoatView, Coat] | None:
        piece = self.piece(piece_key)
        for coat in () if piece is None else piece.coats:
            if piece is not None and coat.key == coat_key and coat.recorded is not None:
                return piece, coat, coat.recorded
        self.refused.emit(say("That is not in the records any more."))
        return None

    def _send(self, command: Command, words: str, *_clicked: object) -> None:
        self._send_back(command, lambda _answer: words)

    def _send_back(self, command: Command, words_for: Callable[[str], str]) -> None:
        def done(answer: str) -> None:
            self.done.emit(words_for(answer))

        self._courier.send(command, owner=self, done=done, refused=self.refused.emit)

    def _open(self, form: FormT) -> FormT:
        form.told.connect(self.done)
        form.open()
        return form
