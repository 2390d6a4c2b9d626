"""What she can do from the window: open a form, or send a command straight away."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TypeVar

from PySide6.QtCore import QObject, QPoint, Signal
from PySide6.QtWidgets import QMenu, QWidget

from studiowatch.service.commands import (
    ArchivePiece,
    Command,
    CoverCoat,
    MovePiece,
    SpeakIn,
)
from studiowatch.service.piece_view import PieceView
from studiowatch.service.ports import Clock, Desk
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.units import METRIC, Units, choose
from studiowatch.speech.words import say
from studiowatch.studio.pieces import Finding
from studiowatch.ui.bridge import Courier
from studiowatch.ui.intention_deeds import IntentionDeeds
from studiowatch.ui.models.learning import AnsweredTest
from studiowatch.ui.models.look_form import ANSWERS
from studiowatch.ui.open_forms import open_forms
from studiowatch.ui.record_deeds import RecordDeeds
from studiowatch.ui.sheet_deeds import SheetDeeds
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.coat_dialog import CoatDialog
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.look_dialog import LOOK_TITLE, LookDialog, pieces_with_coats
from studiowatch.ui.widgets.piece_dialog import PieceDialog
from studiowatch.ui.widgets.question import question
from studiowatch.ui.widgets.reading_dialog import ReadingDialog

FormT = TypeVar("FormT", bound=FormDialog)


class Deeds(QObject):
    """Opens the forms over `window` and carries the small commands.

    `done` and `refused` tell in words how one went, `made` carries the key of a new piece.
    """

    done = Signal(str)
    refused = Signal(str)
    made = Signal(str)
    review_asked = Signal(str)
    sheet_asked = Signal(str)

    def __init__(self, desk: Desk, clock: Clock, window: QWidget) -> None:
        super().__init__(window)
        self._desk, self._clock, self._window = desk, clock, window
        self._courier = Courier(desk, self)
        self.snapshot: Snapshot | None = None
        self._asked: AnsweredTest | None = None
        self._tested: AnsweredTest | None = None
        self._units, self._degrees = METRIC, METRIC.degrees
        self._style = Style()
        self.records = RecordDeeds(desk, clock, self._courier, window)
        self.records.done.connect(self.done)
        self.records.refused.connect(self.refused)
        self.sheets = SheetDeeds(desk, self._courier, window)
        self.sheets.done.connect(self.done)
        self.sheets.refused.connect(self.refused)
        self.intentions = IntentionDeeds(clock, self._courier, window)
        self.intentions.done.connect(self.done)
        self.intentions.refused.connect(self.refused)

    @property
    def style(self) -> Style:
        """The style of the forms that are opened."""
        return self._style

    @style.setter
    def style(self, style: Style) -> None:
        self._style = self.records.style = self.sheets.style = self.intentions.style = style

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
        self.records.set_snapshot(snapshot)
        self.intentions.set_snapshot(snapshot)
        for form in open_forms(self._window, CoatDialog):
            form.set_snapshot(snapshot)
        self._tell_moved()

    def register_piece(self) -> PieceDialog:
        """Open the form for a new piece."""
        form = self._piece_form(None)
        form.recorded.connect(self.made)
        return self._open(form)

    def edit_piece(self, piece_key: str) -> PieceDialog | None:
        """Open the form of a piece, filled in."""
        piece = self.piece(piece_key)
        if piece is None:
            self.refused.emit(say("Choose a piece on the rack first."))
            return None
        return self._open(self._piece_form(piece))

    def _piece_form(self, piece: PieceView | None) -> PieceDialog:
        return PieceDialog(
            sheets=self._desk.sheets(),
            now_ms=self._clock.utc_ms,
            photo_folder=self._desk.photo_folder,
            courier=self._courier,
            style=self.style,
            parent=self._window,
            piece=piece,
        )

    def lay_coat(self, piece_key: str) -> CoatDialog | None:
        """Open the form for a coat, if there is a piece."""
        sheets = self._desk.sheets()
        if self.snapshot is None or not self.snapshot.pieces or not sheets:
            self.refused.emit(say("Register a piece first: a coat is laid on a piece."))
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

    def type_reading(self) -> ReadingDialog:
        """Open the form for a reading from any hygrometer, in the unit that was chosen last."""
        form = ReadingDialog(
            degrees=self._degrees,
            now_ms=self._clock.utc_ms,
            courier=self._courier,
            style=self.style,
            parent=self._window,
        )
        form.recorded.connect(lambda _key: self._keep_degrees(form))
        return self._open(form)

    def speak_in(self, units: Units) -> None:
        """Have everything said and shown in `units`; a reading is typed in them at first."""
        choose(units)
        if units != self._units:
            self._units, self._degrees = units, units.degrees
            self._send(SpeakIn(units=units))

    def _keep_degrees(self, form: ReadingDialog) -> None:
        self._degrees = form.degrees

    def touch_test(
        self, piece_key: str, title: str = "", findings: Sequence[Finding] = tuple(ANSWERS)
    ) -> LookDialog | None:
        """Open the touch test with the answers `findings`, if a coat was laid."""
        if self.snapshot is None or not pieces_with_coats(self.snapshot):
            self.refused.emit(say("No coat was laid yet: there is nothing to touch."))
            return None
        form = LookDialog(
            snapshot=self.snapshot,
            piece_key=piece_key,
            now_ms=self._clock.utc_ms,
            courier=self._courier,
            style=self.style,
            parent=self._window,
            title=title or say(LOOK_TITLE),
            findings=findings,
        )
        form.answering.connect(self._remember)
        self._open(form)
        form.told.connect(self._await_move)  # after `done`, whose words it replaces
        form.recorded.connect(lambda _key: self._ask_outcome(form))
        return form

    def _remember(self, piece_key: str) -> None:
        if self.snapshot is not None:
            self._asked = AnsweredTest(piece_key=piece_key, before=self.snapshot)

    def _await_move(self) -> None:
        self._tested = self._asked
        self._tell_moved()

    def _ask_outcome(self, form: LookDialog) -> None:
        """Ask how the coat came out, once a look has told that it is clear, or milky when it should not be."""
        if form.is_over:
            self.records.ask_outcome(form.piece_key)

    def _tell_moved(self) -> None:
        """Tell once how a touch test moved the ready time of its piece."""
        if self._tested is None or self.snapshot is None:
            return
        words = self._tested.moved_words(self.snapshot)
        if words or self._tested.is_over(self.snapshot):
            self._tested = None
        if words:
            self.done.emit(words)

    def move(self, piece_key: str, place: int) -> None:
        """Put a piece at another place in the rack."""
        self._send(MovePiece(piece_key=piece_key, place=place))

    def cover(self, piece_key: str) -> None:
        """Say that the mesh cover is set over the top coat."""
        piece = self.piece(piece_key)
        if piece is None or piece.top is None:
            self.refused.emit(say("Choose a piece with a coat on it first."))
            return
        if piece.top.covered:
            self.refused.emit(say("The cover stands over {title} already.", title=piece.title))
            return
        command = CoverCoat(coat_key=piece.top.key, covered_ms=self._clock.utc_ms())
        self._send(command, say("Cover set over {title}.", title=piece.title))

    def take_off(self, piece_key: str) -> None:
        """Ask, then take a piece off the rack."""
        piece = self.piece(piece_key)
        if piece is None:
            self.refused.emit(say("Choose a piece on the rack first."))
            return
        box = question(
            self._window,
            say("Take {title} off the rack?", title=piece.title),
            say("Its coats are no longer watched. Its records stay."),
            say("Take it off"),
        )
        done = say("{title} was taken off the rack.", title=piece.title)
        box.accepted.connect(lambda: self._send(ArchivePiece(piece_key=piece_key), done))
        box.open()

    def menu_for(self, piece_key: str) -> QMenu:
        """Return the few things one does with a piece; the menu deletes itself."""
        piece = self.piece(piece_key)
        laid = piece is not None and piece.top is not None
        menu = QMenu(self._window)
        menu.setAccessibleName(say("What to do with this piece"))
        menu.aboutToHide.connect(menu.deleteLater)
        menu.addAction(say("&Lay a coat…"), lambda: self.lay_coat(piece_key))
        menu.addAction(say("&Touch test or look…"), lambda: self.touch_test(piece_key)).setEnabled(laid)
        uncovered = laid and piece is not None and piece.top is not None and not piece.top.covered
        menu.addAction(say("The &mesh cover is set"), lambda: self.cover(piece_key)).setEnabled(uncovered)
        menu.addAction(say("How did it come &out…"), lambda: self.records.ask_outcome(piece_key)).setEnabled(laid)
        menu.addAction(say("&Why did it cloud?"), lambda: self.review_asked.emit(piece_key)).setEnabled(laid)
        menu.addSeparator()
        menu.addAction(say("&Edit the piece…"), lambda: self.edit_piece(piece_key))
        menu.addAction(say("&Corrections…"), lambda: self.records.show_recorded(piece_key))
        menu.addAction(say("Finis&hing record…"), lambda: self.sheet_asked.emit(piece_key))
        menu.addSeparator()
        menu.addAction(say("Take off the &rack…"), lambda: self.take_off(piece_key))
        return menu

    def show_menu(self, piece_key: str, at: QPoint) -> None:
        """Show the menu of a piece."""
        self.menu_for(piece_key).popup(at)

    def _open(self, form: FormT) -> FormT:
        form.told.connect(self.done)
        form.open()
        return form

    def _send(self, command: Command, words: str = "") -> None:
        def answered(_key: str) -> None:
            if words:
                self.done.emit(words)

        self._courier.send(command, owner=self, done=answered, refused=self.refused.emit)
