"""Lay a coat: a look at the room, how much to pour, what to see to, and one button when the brush is down."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QDateTime
from PySide6.QtWidgets import (
    QComboBox,
    QDateTimeEdit,
    QHBoxLayout,
    QLineEdit,
    QRadioButton,
    QWidget,
)

from studiowatch.service.commands import Command, LayCoat
from studiowatch.service.product_views import SheetChoice
from studiowatch.service.snapshot import PieceView, Snapshot
from studiowatch.studio.words import Sentence
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.coat_form import (
    SheetOption,
    Unit,
    amount_doubt,
    amount_words,
    amounts_of,
    cautions_of,
    preparation,
    read_coat,
    sheet_options,
    short_title,
    suggested_amount,
    suggestion_words,
    thickness_of,
    thinner_words,
    weighing_words,
)
from studiowatch.ui.models.notices import SentenceCard
from studiowatch.ui.models.sealing import verdict_on
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.models.vapour_caution import vapour_cautions
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.form_lines import CautionList, TickList, add_primary
from studiowatch.ui.widgets.sentence import SentenceView
from studiowatch.ui.widgets.text import label, say

BRUSH_DOWN_WORDS = "The brush is down"


class CoatDialog(FormDialog):
    """The form for a coat that goes down now, or went down earlier."""

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
        super().__init__("Lay a coat", courier, style, parent)
        self._pieces = snapshot.pieces
        self._sheets = tuple(sheets)
        self._now_ms = now_ms
        self._snapshot = snapshot
        self._options: tuple[SheetOption, ...] = ()
        self._make_fields()
        self._lay_out()
        self.brush_down = add_primary(self, BRUSH_DOWN_WORDS, "big")
        keys = [piece.key for piece in self._pieces]
        self.piece_field.setCurrentIndex(keys.index(piece_key) if piece_key in keys else 0)
        self._show_piece()
        self._connect()
        self.fit(720, 770)
        self.amount_field.setFocus()

    def _make_fields(self) -> None:
        self.piece_field = QComboBox()
        self.piece_field.addItems([piece.title for piece in self._pieces])
        self.sheet_field = QComboBox()
        self.amount_field, self.thinned_field = QLineEdit(), QLineEdit()
        self.thinned_field.setPlaceholderText("0")
        self.unit_field = QComboBox()
        self.unit_field.addItems([unit.value for unit in Unit])
        self._suggestion = label("small", Tone.MUTED, wrap=True)
        self._thickness = label("strong", wrap=True)
        self._weighing = label("small", Tone.MUTED, wrap=True)
        self.now_field, self.earlier_field = QRadioButton("now"), QRadioButton("earlier, at")
        self.now_field.setAccessibleName("The brush goes down now")
        self.earlier_field.setAccessibleName("The brush went down earlier")
        self.now_field.setChecked(True)
        self.time_field = QDateTimeEdit(QDateTime.fromMSecsSinceEpoch(self._now_ms()))
        self.time_field.setCalendarPopup(True)
        self.time_field.setDisplayFormat("d MMM yyyy  HH:mm")
        self.time_field.setAccessibleName("When the brush went down")
        self.time_field.setMinimumWidth(self.dress.px(190))
        self.time_field.setEnabled(False)
        self._room = SentenceView()
        self._room.set_style(self.dress)
        self._cautions, self._own_cautions = CautionList(self.dress), CautionList(self.dress)
        self._steps = TickList(preparation(self._sheets[0]), self.dress)

    def _lay_out(self) -> None:
        which = self._row()
        self.field("Piece", self.piece_field, which, 4)
        self.field("Coat, by its data sheet", self.sheet_field, which, 7)
        self.body.addWidget(self._room)
        amount = self._row()
        self.field("How much", self.amount_field, amount, 1)
        self.field("Measured in", self.unit_field, amount)
        self._thinned_name = self.field("Water added, %", self.thinned_field, amount, 1)
        self.body.addWidget(self._suggestion)
        self.body.addWidget(self._thickness)
        self.body.addWidget(self._weighing)
        when = self._row()
        when.addWidget(label("small", Tone.MUTED, "The brush goes down"))
        for part in (self.now_field, self.earlier_field, self.time_field):
            when.addWidget(part)
        when.addStretch(1)
        self.follow(self.time_field)
        self.standing.addWidget(self._cautions)
        self.body.addWidget(self._own_cautions)
        self.body.addWidget(label("strong", text="See to it first"))
        self.body.addWidget(self._steps)
        self.body.addStretch(1)

    def _row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(self.dress.px(10))
        self.body.addLayout(row)
        return row

    def _connect(self) -> None:
        self.piece_field.currentIndexChanged.connect(self._show_piece)
        self.sheet_field.currentIndexChanged.connect(self._show_sheet)
        self.unit_field.currentIndexChanged.connect(self._show_amount)
        self.amount_field.textChanged.connect(self._show_amount)
        self.thinned_field.textChanged.connect(self._show_cautions)
        self.earlier_field.toggled.connect(self.time_field.setEnabled)

    @property
    def _piece(self) -> PieceView:
        return self._pieces[self.piece_field.currentIndex()]

    @property
    def _option(self) -> SheetOption:
        return self._options[self.sheet_field.currentIndex()]

    @property
    def _unit(self) -> Unit:
        return Unit(self.unit_field.currentText())

    def _show_piece(self) -> None:
        title = self._piece.title
        say(self.heading, f"Lay a coat: {title}")
        words = f"{BRUSH_DOWN_WORDS} on {short_title(title)}"
        self.brush_down.setText(words)
        self.brush_down.setAccessibleName(f"{BRUSH_DOWN_WORDS} on {title}")
        self._offer_sheets()

    def _offer_sheets(self) -> None:
        self._options = sheet_options(self._piece, self._sheets)
        self.sheet_field.blockSignals(True)  # noqa: FBT003 - Qt's own
        self.sheet_field.clear()
        self.sheet_field.addItems([option.words for option in self._options])
        self.sheet_field.blockSignals(False)  # noqa: FBT003 - Qt's own
        self._show_sheet()

    def _show_sheet(self) -> None:
        sheet = self._option.sheet
        name = f"{thinner_words(sheet).capitalize()} added, %"
        self._thinned_name.setText(name)
        self.thinned_field.setAccessibleName(name)
        self._steps.set_steps(preparation(sheet))
        self._show_amount()
        self._show_room()

    def _show_cautions(self) -> None:
        piece, sheet = self._piece, self._option.sheet
        typed = amounts_of(piece, sheet, self._unit, self.amount_field.text(), self.thinned_field.text())
        vapour = vapour_cautions(piece, sheet, typed, self._snapshot.room.temperature_C)
        self._cautions.set_cautions(vapour or cautions_of(sheet))
        self._own_cautions.set_cautions(cautions_of(sheet) if vapour else ())

    def _show_amount(self) -> None:
        piece, sheet, unit = self._piece, self._option.sheet, self._unit
        self.amount_field.setPlaceholderText(amount_words(suggested_amount(piece, sheet, unit)))
        say(self._suggestion, suggestion_words(piece, sheet, unit))
        made = thickness_of(piece, sheet, unit, self.amount_field.text())
        say(self._thickness, made.words, made.tone)
        is_measured = bool(self.amount_field.text().strip())
        weighing = "" if is_measured else weighing_words(sheet, self._snapshot.pieces)
        say(self._weighing, weighing, hide_empty=True)
        self._show_cautions()

    def _show_room(self) -> None:
        check = self._verdict()
        self._room.setVisible(check is not None)
        if check is not None:
            self._room.set_card(SentenceCard(sentence=check))

    def _verdict(self) -> Sentence | None:
        """Return whether, or why no, coat should go on this piece now, from the newest snapshot."""
        pieces = {piece.key: piece for piece in self._snapshot.pieces}
        sheet = self._option.sheet.name
        return verdict_on(pieces.get(self._piece.key, self._piece), self._snapshot.room_check(sheet), sheet)

    def set_snapshot(self, snapshot: Snapshot) -> None:
        """Look at the room again; the pieces stay as they were when the form was opened."""
        self._snapshot = snapshot
        self._show_room()

    def read(self) -> LayCoat:
        """Return the command to lay the coat, or raise FormError."""
        now_ms = self._now_ms()
        earlier = self.earlier_field.isChecked()
        return read_coat(
            piece=self._piece,
            option=self._option,
            unit=self._unit,
            amount=self.amount_field.text(),
            thinned=self.thinned_field.text(),
            laid_ms=self.time_field.dateTime().toMSecsSinceEpoch() if earlier else now_ms,
            now_ms=now_ms,
        )

    def doubt_of(self, command: Command) -> str:
        """Ask once more before an amount that is far too thick is recorded."""
        return amount_doubt(self._piece, self._option.sheet, command) if isinstance(command, LayCoat) else ""

    def words_for(self, command: Command) -> str:
        """Return which coat went on which piece."""
        del command
        return f"Recorded: {self._option.name} laid on {self._piece.title}"

    def is_filled(self) -> bool:
        """Return whether an amount or a share of water was typed."""
        return bool(self.amount_field.text().strip() or self.thinned_field.text().strip())

    def field_of(self, name: str) -> QWidget | None:
        """Return the widget of the field `name`."""
        fields: dict[str, QWidget] = {
            "amount": self.amount_field,
            "thinned": self.thinned_field,
            "laid": self.time_field,
        }
        return fields.get(name)
