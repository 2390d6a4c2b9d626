"""Lay a coat in two steps: what goes on and whether room and piece are ready, then what is prepared, and one button."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QWidget

from studiowatch.service.commands import Command, LayCoat
from studiowatch.service.piece_view import PieceView
from studiowatch.service.preparation_commands import StartPreparation
from studiowatch.service.product_views import SheetChoice
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import say
from studiowatch.studio.preparation import CoatToLay
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.amounts import Unit
from studiowatch.ui.models.coat_form import (
    SheetOption,
    amount_doubt,
    amounts_of,
    read_coat,
    sheet_options,
)
from studiowatch.ui.models.laying import (
    LayingStep,
    check_of,
    coat_to_lay,
    hazards_for,
    laid_along,
    next_hours,
    open_for,
    option_for,
    pour_words,
    waiting_words,
)
from studiowatch.ui.models.notices import SentenceCard
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.chore_list import ChoreList
from studiowatch.ui.widgets.coat_buttons import CoatButtons
from studiowatch.ui.widgets.coat_fields import CoatFields
from studiowatch.ui.widgets.coat_preparing import Preparing
from studiowatch.ui.widgets.coat_when import WhenFields
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.form_lines import CautionList
from studiowatch.ui.widgets.sentence import SentenceView
from studiowatch.ui.widgets.text import label, put

_LARGE_PX, _LARGEST_SCALE = 26, 1.5  # of the verdict at 100 %; a scale beyond which it grows no more
_TWO_COLUMNS_UNITS = 640  # wide enough for two columns of chores
_SHORT_UNITS = 480  # so low that only the first caution stands, and the others are scrolled to
_SECOND_MS = 1000


class CoatDialog(FormDialog):
    """The form for a coat that goes down now, or went down earlier; Enter leads through it."""

    def __init__(
        self,
        *,
        snapshot: Snapshot,
        piece_key: str,
        sheets: Sequence[SheetChoice],
        now_ms: Callable[[], int],
        courier: Courier,
        style: Style,
        parent: QWidget,
    ) -> None:
        super().__init__(say("Lay a coat"), courier, style, parent)
        self._sheets = tuple(sheets)
        self._now_ms = now_ms
        self._snapshot = snapshot
        self._options: tuple[SheetOption, ...] = ()
        self._step = LayingStep.WHAT
        self.preparing = Preparing(courier, now_ms, self)
        self.fit(860, 760)  # first: which cautions stand goes by the height
        self._make_parts()
        self._connect()
        keys = [piece.key for piece in snapshot.pieces]
        self.piece_field.setCurrentIndex(keys.index(piece_key) if piece_key in keys else 0)
        self._show_piece()
        self._take_up()
        self._second = QTimer(self)
        self._second.timeout.connect(self._show_chores)
        self._second.start(_SECOND_MS)

    def _make_parts(self) -> None:
        self.what, self.when = CoatFields(self, self._snapshot.pieces), WhenFields(self, self._now_ms)
        self.piece_field, self.sheet_field = self.what.piece, self.what.sheet
        self.amount_field, self.thinned_field, self.unit_field = self.what.amount, self.what.thinned, self.what.unit
        self.time_field = self.when.picker
        self._room = SentenceView()
        self._room.set_style(self.dress)
        large_px = round(_LARGE_PX * min(self.dress.scale, _LARGEST_SCALE))
        self._room.setStyleSheet(f'QLabel[role="headline"] {{ font-size: {large_px}px; }}')
        self._best, self._pour = label("body", wrap=True), label("dialog", wrap=True)
        self.chores = ChoreList(self.dress)
        self._cautions, self._own_cautions = CautionList(self.dress), CautionList(self.dress)
        self._waiting = label("strong", Tone.LINK, wrap=True)
        for part in (self._room, self._best, self.when, self.what, self._pour, self.chores, self._own_cautions):
            self.body.addWidget(part)
        self.body.addStretch(1)
        self.standing.addWidget(self._cautions)
        self.standing.addWidget(self._waiting)
        self.buttons = CoatButtons(self)

    def _connect(self) -> None:
        buttons = self.buttons
        self.piece_field.currentIndexChanged.connect(self._show_piece)
        self.sheet_field.currentIndexChanged.connect(self._show_sheet)
        self.unit_field.currentIndexChanged.connect(self._show_amount)
        for field in (self.amount_field, self.thinned_field, self.what.allowance):
            field.textChanged.connect(self._show_amount)
        self.what.torch.toggled.connect(self._show_cautions)
        self.what.along_changed.connect(self._show_cautions)
        buttons.earlier.toggled.connect(lambda late: self._go(LayingStep.LATE if late else LayingStep.WHAT))
        buttons.back.clicked.connect(lambda: self._go(LayingStep.WHAT))
        buttons.keep.clicked.connect(self.drop)
        buttons.leave.clicked.connect(self.preparing.end)
        buttons.begin.clicked.connect(self.prepare)
        self.chores.pressed.connect(self.preparing.press)
        self.preparing.changed.connect(self._show_chores)
        self.preparing.begun.connect(lambda: self._go(LayingStep.READY))
        self.preparing.ended.connect(self.drop)
        self.preparing.refused.connect(self.say_fault)

    @property
    def _piece(self) -> PieceView:
        return self.what.chosen

    @property
    def _option(self) -> SheetOption:
        return self._options[self.sheet_field.currentIndex()]

    @property
    def _unit(self) -> Unit:
        return self.what.measure

    @property
    def step(self) -> LayingStep:
        """Where the form is."""
        return self._step

    def _take_up(self) -> None:
        """Go on with a preparation that is open for this piece, else begin with what goes on."""
        view = open_for(self._snapshot, self._piece.key)
        if view is None:
            self._go(LayingStep.WHAT)
            return
        self.preparing.now = view.preparation
        self._show_turn(next(coat for coat in view.preparation.coats if coat.piece_key == self._piece.key))
        self._go(LayingStep.READY)

    def _show_turn(self, coat: CoatToLay) -> None:
        """Fill the fields in as they were for the coat whose turn it is."""
        keys = [piece.key for piece in self._snapshot.pieces]
        if coat.piece_key in keys:
            self.piece_field.setCurrentIndex(keys.index(coat.piece_key))
        self.sheet_field.setCurrentIndex(option_for(coat, self._options))
        self.what.fill(coat)
        if self.preparing.now is not None:
            self.what.torch.setChecked(self.preparing.now.torch)

    def _go(self, step: LayingStep) -> None:
        """Show one step, with its own button for Enter."""
        self._step = step
        is_ready, is_late = step is LayingStep.READY, step is LayingStep.LATE
        shown = {
            self.what: not is_ready,
            self.when: is_late,
            self._room: not is_late,
            self._cancel: not is_ready,
            self._pour: is_ready,
            self.chores: is_ready,
            **self.buttons.shown_at(step),
        }
        for part, is_shown in sorted(shown.items(), key=lambda pair: pair[1]):
            part.setVisible(is_shown)  # what goes first, so that the form is never as wide as all of it
        self.what.set_late(late=is_late, sheet=self._option.sheet)
        self.buttons.go(step)
        self.buttons.name_by(self._piece.title, step)
        self._show_room()
        self._show_cautions()
        self._show_chores()
        (self if is_ready else self.amount_field).setFocus()
        self.to_top()

    def _px(self, units: int) -> int:
        return self.dress.px(units)

    def _show_piece(self) -> None:
        put(self.heading, say("Lay a coat: {title}", title=self._piece.title))
        self.buttons.name_by(self._piece.title, self._step)
        self._options = sheet_options(self._piece, self._sheets)
        self.sheet_field.blockSignals(True)  # noqa: FBT003 - Qt's own
        self.sheet_field.clear()
        self.sheet_field.addItems([option.words for option in self._options])
        self.sheet_field.blockSignals(False)  # noqa: FBT003 - Qt's own
        self._show_sheet()

    def _show_sheet(self) -> None:
        self.what.show_sheet(self._option.sheet)
        self.what.offer_along(laid_along(self._snapshot, self._piece, self._option, self._sheets))
        self._show_amount()
        self._show_room()

    def _show_amount(self) -> None:
        self.what.show_amount(self._option.sheet, self._snapshot.pieces)
        put(self._pour, pour_words(self._piece, self._option.sheet, self._unit, self.amount_field.text()))
        self._show_cautions()

    def _show_cautions(self) -> None:
        piece, sheet = self._piece, self._option.sheet
        typed = amounts_of(piece, sheet, self._unit, self.amount_field.text(), self.thinned_field.text())
        torch = self.what.torch.isChecked() and not sheet.solvent
        standing, others = hazards_for(piece, sheet, typed, snapshot=self._snapshot, torch=torch)
        if self.height() < self._px(_SHORT_UNITS):
            standing, others = standing[:1], (*standing[1:], *others)
        self._cautions.set_cautions(standing)
        self._own_cautions.set_cautions(others)

    def _show_room(self) -> None:
        check = check_of(self._snapshot, self._piece, self._option.sheet)
        self._room.setVisible(check is not None and self._step is not LayingStep.LATE)
        if check is not None:
            self._room.set_card(SentenceCard(sentence=check))
        is_late = self._step is LayingStep.LATE
        put(self._best, "" if is_late else next_hours(self._snapshot, self._option.sheet), hide_empty=True)

    def _show_chores(self) -> None:
        rows = self.preparing.rows
        is_ready = self._step is LayingStep.READY
        self.chores.set_rows(rows, 2 if self.width() >= self._px(_TWO_COLUMNS_UNITS) else 1)
        put(self._waiting, waiting_words(rows) if is_ready else "", hide_empty=True)

    def set_snapshot(self, snapshot: Snapshot) -> None:
        """Look at room and chores again; the pieces stay as they were when the form was opened."""
        self._snapshot = snapshot
        self.preparing.take(snapshot)
        self._show_room()
        self._show_cautions()
        self._show_chores()

    def prepare(self) -> None:
        """Begin to prepare, once what is typed can be taken."""
        command = self.checked()
        if not isinstance(command, LayCoat):
            return
        first = coat_to_lay(
            self._piece,
            self._option,
            volume_mL=command.volume_mL,
            grams=command.grams,
            thinned_pct=command.thinned_pct,
        )
        others = laid_along(self._snapshot, self._piece, self._option, self._sheets)
        along = tuple(coat_to_lay(piece, option) for piece, option in others if piece.key in self.what.along_keys)
        torch = self.what.torch.isChecked() and not self._option.sheet.solvent
        self.clear_fault()
        self.preparing.begin(
            StartPreparation(coats=(first, *along), torch=torch),
            solvent=self._option.sheet.solvent,
            vapour_in_room=bool(self._snapshot.vapour_near),
        )

    def carry_on(self) -> None:
        """Go on to the next piece of the preparation; close once the last brush is down."""
        turn = self.preparing.laid(self._piece.key)
        if turn is None:
            self.accept()
            return
        self.wake()
        self._show_turn(turn)
        self._go(LayingStep.READY)

    def read(self) -> LayCoat:
        """Return the command to lay the coat, or raise FormError."""
        now_ms = self._now_ms()
        return read_coat(
            piece=self._piece,
            option=self._option,
            unit=self._unit,
            amount=self.amount_field.text(),
            thinned=self.thinned_field.text(),
            allowance=self.what.allowance.text(),
            laid_ms=self.when.time_ms if self._step is LayingStep.LATE else now_ms,
            now_ms=now_ms,
        )

    def doubt_of(self, command: Command) -> str:
        """Ask once more before an amount that is far too thick is recorded."""
        return amount_doubt(self._piece, self._option.sheet, command) if isinstance(command, LayCoat) else ""

    def words_for(self, command: Command) -> str:
        """Return which coat went on which piece."""
        del command
        return say("Recorded: {coat} laid on {title}", coat=self._option.name, title=self._piece.title)

    def is_filled(self) -> bool:
        """Return whether an amount or a share of water was typed that no preparation keeps."""
        is_typed = bool(self.amount_field.text().strip() or self.thinned_field.text().strip())
        return is_typed and self._step is not LayingStep.READY

    def field_of(self, name: str) -> QWidget | None:
        """Return the widget of the field `name`."""
        fields: dict[str, QWidget] = {
            "amount": self.amount_field,
            "thinned": self.thinned_field,
            "allowance": self.what.allowance,
            "laid": self.time_field,
        }
        return fields.get(name)
