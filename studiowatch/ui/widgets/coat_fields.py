"""The first step of laying a coat: which piece, which product, how much, and what may be laid along with it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from studiowatch.service.piece_view import PieceView
from studiowatch.service.product_views import SheetChoice
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio.preparation import CoatToLay
from studiowatch.ui.models.amounts import Unit, amount_words, offered_units, turn_text, volume_unit
from studiowatch.ui.models.coat_form import (
    SheetOption,
    Thickness,
    read_allowance,
    short_title,
    suggested_amount,
    suggestion_words,
    thickness_of,
    thinning_of,
    weighing_words,
)
from studiowatch.ui.models.forms import FormError
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.plain import literal, set_tip
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.drop_down import DropDown, drop_down_of_names
from studiowatch.ui.widgets.text import button, label, put

TORCH_WORDS = mark("I break bubbles with a torch")
_CHIPS_BESIDE = 3


class CoatFields(QWidget):
    """The fields; `along_changed` tells that other pieces are to be laid too, or not."""

    along_changed = Signal()

    def __init__(self, form: FormDialog, pieces: Sequence[PieceView]) -> None:
        super().__init__()
        self.setObjectName("inside")
        self.setAccessibleName(say("What goes on, and how much"))
        self._style: Style = form.dress
        self._pieces = tuple(pieces)
        self._late = False
        self.piece, self.sheet, self.unit = drop_down_of_names(), drop_down_of_names(), DropDown()
        self.piece.addItems([piece.title for piece in pieces])
        self.unit.addItems([unit.value for unit in offered_units()])
        self.amount, self.thinned, self.allowance = QLineEdit(), QLineEdit(), QLineEdit()
        for field in (self.thinned, self.allowance):
            field.setPlaceholderText("0")
        self.torch = QCheckBox(say(TORCH_WORDS))
        self.torch.setAccessibleName(say(TORCH_WORDS))
        self._suggestion = label("strong", wrap=True)
        self._thickness = label("strong", wrap=True)
        self._thinning = label("strong", wrap=True)
        self._weighing = label("small", Tone.MUTED, wrap=True)
        self._along_name = label("small", Tone.MUTED, say("The same coat on these too, one after the other"))
        self._along = QGridLayout()
        self._along.setSpacing(form.dress.px(8))
        self._chips: dict[str, QPushButton] = {}
        self._lay_out(form)

    def _lay_out(self, form: FormDialog) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(self._style.px(8))
        which, amount = QHBoxLayout(), QHBoxLayout()
        for row in (which, amount):
            row.setSpacing(self._style.px(10))
        form.field(say("Piece"), self.piece, which, 4)
        form.field(say("Coat, by its data sheet"), self.sheet, which, 7)
        form.field(say("How much"), self.amount, amount, 2)
        form.field(say("Measured in"), self.unit, amount, 1)
        self.thinned_name = form.field(say("Water added, %"), self.thinned, amount, 2)
        form.field(say("For brush and cup, %"), self.allowance, amount, 2)
        column.addLayout(which)
        column.addLayout(amount)
        for words in (self._suggestion, self._thickness, self._thinning, self._weighing):
            column.addWidget(words)
        column.addWidget(self._along_name)
        column.addLayout(self._along)
        column.addWidget(self.torch)

    @property
    def chosen(self) -> PieceView:
        """The piece that is chosen."""
        return self._pieces[self.piece.currentIndex()]

    @property
    def measure(self) -> Unit:
        """What the amount is measured in."""
        return Unit(self.unit.currentText())

    @property
    def allowance_pct(self) -> float:
        """What is poured on top for brush and cup, %; what cannot be read yet counts as none."""
        try:
            return read_allowance(self.allowance.text())
        except FormError:
            return 0.0

    @property
    def along_keys(self) -> tuple[str, ...]:
        """The keys of the other pieces that are to be laid too."""
        return tuple(key for key, chip in self._chips.items() if chip.isChecked())

    def fill(self, coat: CoatToLay) -> None:
        """Fill in how much of `coat` lies on the piece, as it was typed."""
        unit = volume_unit() if coat.grams is None else Unit.GRAMS
        self.unit.setCurrentText(unit)
        amount = coat.volume_mL if coat.grams is None else coat.grams
        self.allowance.clear()  # what is kept is what lies on the piece
        self.amount.setText("" if amount is None else turn_text(amount, unit))
        self.thinned.setText(chosen().plain(coat.thinned_pct) if coat.thinned_pct else "")

    def offer_along(self, others: Sequence[tuple[PieceView, SheetOption]]) -> None:
        """Offer other pieces; those that were chosen stay so."""
        keys = [piece.key for piece, _ in others]
        if keys == list(self._chips):
            return
        taken = set(self.along_keys)
        for chip in self._chips.values():
            self._along.removeWidget(chip)
            chip.hide()
            chip.deleteLater()
        self._chips = {piece.key: self._chip(piece, checked=piece.key in taken) for piece, _ in others}
        for at, chip in enumerate(self._chips.values()):
            self._along.addWidget(chip, at // _CHIPS_BESIDE, at % _CHIPS_BESIDE)
        for column in range(_CHIPS_BESIDE):
            self._along.setColumnStretch(column, 1)
        self._show_along()

    def set_late(self, *, late: bool, sheet: SheetChoice) -> None:
        """Ask only for what matters of a coat that is on already."""
        self._late = late
        self.torch.setVisible(not late and not sheet.solvent)
        self._show_along()

    def _show_along(self) -> None:
        self._along_name.setVisible(bool(self._chips) and not self._late)
        for chip in self._chips.values():
            chip.setVisible(not self._late)

    def _chip(self, piece: PieceView, *, checked: bool) -> QPushButton:
        made = button(literal(short_title(piece.title)), "chip")
        made.setCheckable(True)
        made.setChecked(checked)
        made.setAccessibleName(say("Lay it on {title} too", title=piece.title))
        set_tip(made, piece.title)
        made.toggled.connect(lambda _on: self.along_changed.emit())
        return made

    def show_sheet(self, sheet: SheetChoice) -> None:
        """Name the thinner of `sheet`."""
        name = say("Thinner added, %") if sheet.solvent else say("Water added, %")
        self.thinned_name.setText(name)
        self.thinned.setAccessibleName(name)
        self.torch.setVisible(not sheet.solvent and not self._late)

    def show_amount(self, sheet: SheetChoice, on_rack: Sequence[PieceView]) -> None:
        """Say what to pour, what the amount makes, and what weighing would narrow."""
        piece, share = self.chosen, self.allowance_pct
        usual = suggested_amount(piece, sheet, self.measure) * (1.0 + share / 100.0)
        self.amount.setPlaceholderText(amount_words(usual, self.measure))
        put(self._suggestion, suggestion_words(piece, sheet, share))
        self._say(self._thickness, thickness_of(piece, sheet, self.measure, self.amount.text(), share))
        self._say(self._thinning, thinning_of(sheet, self.thinned.text()))
        is_measured = bool(self.amount.text().strip())
        put(self._weighing, "" if is_measured else weighing_words(sheet, on_rack), hide_empty=True)

    @staticmethod
    def _say(shown: QLabel, made: Thickness) -> None:
        put(shown, made.words, made.tone, hide_empty=True)
