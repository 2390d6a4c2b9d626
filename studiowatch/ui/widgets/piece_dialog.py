"""The form of a piece: registered with it, and edited with it later."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import date
from pathlib import Path

from PySide6.QtCore import QDate
from PySide6.QtWidgets import (
    QCheckBox,
    QDateEdit,
    QLineEdit,
    QPlainTextEdit,
    QSpinBox,
    QWidget,
)

from studiowatch.coats.stages import Orientation
from studiowatch.service.commands import AmendPiece, Command, RegisterPiece
from studiowatch.service.piece_view import PieceView
from studiowatch.service.product_views import SheetChoice
from studiowatch.speech.words import mark, say
from studiowatch.studio.pieces import PANELS_MOST, Shape
from studiowatch.studio.supports import support_words
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.piece_form import (
    NO_COATS,
    NO_PAINT,
    SHAPES,
    SUPPORTS,
    PieceTyped,
    area_words,
    is_changed,
    paint_name,
    read_amendment,
    read_registration,
    shown_of,
    size_names,
)
from studiowatch.ui.models.times import DAY_MS, local
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.models.trade_order import clear_coats, paints
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.coats_to_come import NAME as COATS_NAME
from studiowatch.ui.widgets.coats_to_come import CoatsToCome
from studiowatch.ui.widgets.date_formats import day_format
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.drop_down import DropDown, drop_down_of_names
from studiowatch.ui.widgets.form_lines import add_primary
from studiowatch.ui.widgets.photo_field import PhotoField
from studiowatch.ui.widgets.text import label, put
from studiowatch.ui.widgets.time_field import TimeField

_DAYS_AHEAD = 21
_LIES = {mark("Face up"): Orientation.FACE_UP, mark("Upright"): Orientation.VERTICAL}


class PieceDialog(FormDialog):
    """Registers a new piece, or, given one, edits that."""

    def __init__(
        self,
        *,
        sheets: Sequence[SheetChoice],
        now_ms: Callable[[], int],
        photo_folder: Path | None,
        courier: Courier,
        style: Style,
        parent: QWidget,
        piece: PieceView | None = None,
    ) -> None:
        super().__init__(
            say("Register a piece") if piece is None else say("Edit the piece: {title}", title=piece.title),
            courier,
            style,
            parent,
        )
        self._now_ms = now_ms
        self._piece = piece
        self._paints = paints(sheets)
        self._make_fields(sheets, photo_folder, courier)
        self._lay_out()
        began_ms = now_ms() // 60_000 * 60_000
        self.show_typed(
            PieceTyped(painted_ms=began_ms - DAY_MS, support=support_words(SUPPORTS[0]))
            if piece is None
            else shown_of(piece, began_ms)
        )
        self._connect()
        self._show_shape()
        self._show_paint()
        self._shown = (
            self.typed() if piece is None else replace(self.typed(), kept_cm=shown_of(piece, now_ms()).kept_cm)
        )
        add_primary(self, say("Register the piece") if piece is None else say("Keep the changes"))
        self.fit(700, 800)
        self.title_field.setFocus()

    def _make_fields(self, sheets: Sequence[SheetChoice], photo_folder: Path | None, courier: Courier) -> None:
        self.title_field = QLineEdit()
        self.title_field.setPlaceholderText(say("what you call it"))
        self.shape_field = DropDown()
        self.shape_field.addItems([say(shape) for shape in SHAPES])
        self.width_field, self.height_field = QLineEdit(), QLineEdit()
        self.panels_field = QSpinBox()
        self.panels_field.setRange(1, PANELS_MOST)
        self.panels_field.lineEdit().setTextMargins(self.dress.px(7), 0, 0, 0)  # the field's own edge goes unheeded
        self._area = label("small", Tone.MUTED)
        self.support_field = DropDown()
        self.support_field.setEditable(True)
        self.support_field.addItems([support_words(support) for support in SUPPORTS])
        self.lies_field = DropDown()
        self.lies_field.addItems([say(lies) for lies in _LIES])
        self.paint_field = drop_down_of_names()
        self.paint_field.addItems([say(NO_PAINT), *(sheet.title for sheet in self._paints)])
        self.paint_um_field = QLineEdit()
        self.paint_um_field.setPlaceholderText(say("not known"))
        self.painted_field = TimeField(self._now_ms())
        self._make_due()
        self.photo_field = PhotoField(courier, photo_folder, self.dress)
        self.notes_field = QPlainTextEdit()
        self.notes_field.setProperty("role", "notes")
        self.notes_field.setTabChangesFocus(True)
        self.notes_field.setFixedHeight(self.dress.px(62))
        self.coats_field = CoatsToCome(clear_coats(sheets), self.dress)

    def _make_due(self) -> None:
        self.due_on = QCheckBox(say("It is due on a day"))
        self.due_on.setAccessibleName(say("It is due on a day"))
        self.due_field = QDateEdit()
        self.due_field.setCalendarPopup(True)
        self.due_field.setDisplayFormat(day_format())
        self.due_field.setAccessibleName(say("Due date"))

    def _lay_out(self) -> None:
        self.field(say("Title"), self.title_field)
        size = self.row()
        self.field(say("Shape"), self.shape_field, size, 4)
        width, height = size_names(next(iter(SHAPES.values())))
        self._width_name = self.field(width, self.width_field, size, 3)
        self._height_name = self.field(height, self.height_field, size, 3)
        self._panels_name = self.field(say("Panels"), self.panels_field, size, 2)
        self.body.addWidget(self._area)
        lies = self.row()
        self.field(say("Painted on"), self.support_field, lies, 1)
        self.field(say("It dries lying"), self.lies_field, lies, 1)
        paint = self.row()
        self.field(say("Paint layer"), self.paint_field, paint, 1)
        self._paint_um_name = self.field(paint_name(), self.paint_um_field, paint)
        self._painted_name = self.field(say("Last of it laid"), self.painted_field, paint)
        due = self.row()
        due.addWidget(self.due_on)
        due.addWidget(self.due_field, 1)
        self.follow(self.due_field)
        self.field(say(COATS_NAME), self.coats_field)
        self.field(say("Photo"), self.photo_field)
        self.field(say("Notes"), self.notes_field)
        self.body.addStretch(1)

    def _connect(self) -> None:
        self.shape_field.currentIndexChanged.connect(self._show_shape)
        for field in (self.width_field, self.height_field):
            field.textChanged.connect(self._show_area)
        self.panels_field.valueChanged.connect(self._show_area)
        self.paint_field.currentIndexChanged.connect(self._show_paint)
        self.due_on.toggled.connect(self.due_field.setEnabled)
        self.coats_field.changed.connect(self.clear_fault)
        self.photo_field.changed.connect(self.clear_fault)
        self.photo_field.refused.connect(self._refuse_photo)

    def _refuse_photo(self, sentence: str) -> None:
        self.clear_fault()
        self.say_fault(sentence)

    def _show_shape(self) -> None:
        shape = list(SHAPES.values())[self.shape_field.currentIndex()]
        names = zip((self._width_name, self._height_name), size_names(shape), strict=True)
        for (caption, name), field in zip(names, (self.width_field, self.height_field), strict=True):
            put(caption, name)
            field.setAccessibleName(name)
        for part in (self._panels_name, self.panels_field):
            part.setVisible(shape is Shape.PANELS)
        self._show_area()

    def _show_area(self) -> None:
        put(self._area, area_words(self.typed()))  # its line stands from the first: no field slips away

    def _show_paint(self) -> None:
        has_paint = self.paint_field.currentIndex() > 0
        for part in (self._paint_um_name, self.paint_um_field, self._painted_name, self.painted_field):
            part.setVisible(has_paint)

    def show_typed(self, typed: PieceTyped) -> None:
        """Show `typed` in the fields."""
        self.title_field.setText(typed.title)
        self.shape_field.setCurrentIndex(list(SHAPES.values()).index(typed.shape))
        self.width_field.setText(typed.width)
        self.height_field.setText(typed.height)
        self.panels_field.setValue(typed.panels)
        self.support_field.setCurrentText(typed.support)
        self.lies_field.setCurrentIndex(list(_LIES.values()).index(typed.orientation))
        names = [sheet.name for sheet in self._paints]
        self.paint_field.setCurrentIndex(names.index(typed.paint) + 1 if typed.paint in names else 0)
        self.paint_um_field.setText(typed.paint_um)
        self.painted_field.show_time(typed.painted_ms)
        today = local(self._now_ms()).date()
        ahead = QDate(today.year, today.month, today.day).addDays(_DAYS_AHEAD)
        self.due_on.setChecked(typed.due is not None)
        self.due_field.setEnabled(typed.due is not None)
        self.due_field.setDate(ahead if typed.due is None else QDate(typed.due.year, typed.due.month, typed.due.day))
        self.photo_field.show_name(typed.photo)
        self.notes_field.setPlainText(typed.notes)
        self.coats_field.set_sheets(typed.sheets)

    def typed(self) -> PieceTyped:
        """Return what stands in the fields."""
        due, paint = self.due_field.date(), self.paint_field.currentIndex()
        return PieceTyped(
            title=self.title_field.text(),
            shape=list(SHAPES.values())[self.shape_field.currentIndex()],
            width=self.width_field.text(),
            height=self.height_field.text(),
            panels=self.panels_field.value(),
            support=self.support_field.currentText(),
            orientation=list(_LIES.values())[self.lies_field.currentIndex()],
            paint=self._paints[paint - 1].name if paint > 0 else None,
            paint_um=self.paint_um_field.text(),
            painted_ms=self.painted_field.time_ms,
            due=date(due.year(), due.month(), due.day()) if self.due_on.isChecked() else None,
            photo=self.photo_field.name,
            notes=self.notes_field.toPlainText(),
            sheets=self.coats_field.sheets,
        )

    def read(self) -> RegisterPiece | AmendPiece:
        """Return the command to register or to amend the piece, or raise FormError."""
        if self._piece is None:
            return read_registration(self.typed(), self._now_ms())
        return read_amendment(self.typed(), self._shown, self._piece.key, self._now_ms())

    def doubt_of(self, command: Command) -> str:
        """Ask once before a piece without any coat to come is registered."""
        return say(NO_COATS) if isinstance(command, RegisterPiece) and not command.sheets else ""

    def words_for(self, command: Command) -> str:
        """Return which piece is on the rack, or was changed."""
        if isinstance(command, RegisterPiece):
            return say("Registered: {title}", title=command.title)
        return say("Changed: {title}", title=command.title) if isinstance(command, AmendPiece) else ""

    def is_filled(self) -> bool:
        """Return whether something was entered or changed."""
        return is_changed(self.typed(), self._shown)

    def field_of(self, name: str) -> QWidget | None:
        """Return the widget of the field `name`."""
        fields: dict[str, QWidget] = {
            "title": self.title_field,
            "width": self.width_field,
            "height": self.height_field,
            "panels": self.panels_field,
            "paint": self.paint_field,
            "paint_um": self.paint_um_field,
            "painted": self.painted_field,
            "notes": self.notes_field,
        }
        return fields.get(name)
