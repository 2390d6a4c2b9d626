"""Register a piece: title, size, due date, support, and the coats to come."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from PySide6.QtCore import QDate, Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDateEdit,
    QHBoxLayout,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QWidget,
)

from studiowatch.coats.stages import Orientation
from studiowatch.service.commands import Command, RegisterPiece
from studiowatch.service.product_views import SheetChoice
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.piece_form import NO_COATS, SUPPORTS, in_trade_order, read_piece
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.form_lines import add_primary
from studiowatch.ui.widgets.text import button

_DAYS_AHEAD = 21
_LIES = {"Face up": Orientation.FACE_UP, "Upright": Orientation.VERTICAL}


class RegisterDialog(FormDialog):
    """The form for a new piece."""

    def __init__(
        self, *, sheets: Sequence[SheetChoice], today: date, courier: Courier, style: Style, parent: QWidget
    ) -> None:
        super().__init__("Register a piece", courier, style, parent)
        self._sheets = in_trade_order(sheets)
        self.title_field = QLineEdit()
        self.title_field.setPlaceholderText("what you call it")
        self.width_field, self.height_field = QLineEdit(), QLineEdit()
        self.support_field = QComboBox()
        self.support_field.setEditable(True)
        self.support_field.addItems(SUPPORTS)
        self.lies_field = QComboBox()
        self.lies_field.addItems(list(_LIES))
        self.due_on = QCheckBox("It is due on a day")
        self.due_on.setAccessibleName("It is due on a day")
        ahead = QDate(today.year, today.month, today.day).addDays(_DAYS_AHEAD)
        self.due_field = QDateEdit(ahead)
        self.due_field.setCalendarPopup(True)
        self.due_field.setDisplayFormat("d MMM yyyy")
        self.due_field.setAccessibleName("Due date")
        self.due_field.setEnabled(False)
        self.due_on.toggled.connect(self.due_field.setEnabled)
        self.sheet_field = QComboBox()
        self.sheet_field.addItems([sheet.title for sheet in self._sheets])
        self.coats = QListWidget()
        self._lay_out()
        add_primary(self, "Register the piece")
        self.fit(600, 600)
        self.title_field.setFocus()

    def _lay_out(self) -> None:
        px = self.dress.px
        self.field("Title", self.title_field)
        size = self._row()
        self.field("Width, cm", self.width_field, size, 3)
        self.field("Height, cm", self.height_field, size, 3)
        self.field("Painted on", self.support_field, size, 5)
        self.field("It dries lying", self.lies_field, size, 4)
        due = self._row()
        due.addWidget(self.due_on)
        due.addWidget(self.due_field, 1)
        adding = self._row()
        self.field("Coats to come, lowest first", self.sheet_field, adding, 1)
        add = button("Add this coat")
        add.clicked.connect(self.add_coat)
        adding.addWidget(add, 0, Qt.AlignmentFlag.AlignBottom)
        self.body.addWidget(self.coats, 1)
        self.coats.setAccessibleName("Coats to come, lowest first")
        self.coats.setMinimumHeight(px(84))
        buttons = self._row()
        for words, deed in (
            ("Remove", self._remove),
            ("Move up", lambda: self._move(-1)),
            ("Move down", lambda: self._move(1)),
        ):
            made = button(words)
            made.clicked.connect(deed)
            buttons.addWidget(made)
        buttons.addStretch(1)

    def _row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(self.dress.px(10))
        self.body.addLayout(row)
        return row

    def add_coat(self) -> None:
        """Add the sheet that is chosen on top of the coats to come."""
        index = self.sheet_field.currentIndex()
        if index < 0:
            return
        sheet = self._sheets[index]
        item = QListWidgetItem(sheet.title)
        item.setData(Qt.ItemDataRole.UserRole, sheet.name)
        self.coats.addItem(item)
        self.clear_fault()
        self.coats.setCurrentItem(item)

    def _remove(self) -> None:
        self.coats.takeItem(self.coats.currentRow())

    def _move(self, step: int) -> None:
        row = self.coats.currentRow()
        if row >= 0 and 0 <= row + step < self.coats.count():
            item = self.coats.takeItem(row)
            self.coats.insertItem(row + step, item)
            self.coats.setCurrentRow(row + step)

    def read(self) -> RegisterPiece:
        """Return the command to register the piece, or raise FormError."""
        due = self.due_field.date()
        return read_piece(
            title=self.title_field.text(),
            width=self.width_field.text(),
            height=self.height_field.text(),
            due=date(due.year(), due.month(), due.day()) if self.due_on.isChecked() else None,
            support=self.support_field.currentText(),
            orientation=_LIES[self.lies_field.currentText()],
            sheets=tuple(str(self.coats.item(row).data(Qt.ItemDataRole.UserRole)) for row in range(self.coats.count())),
        )

    def doubt_of(self, command: Command) -> str:
        """Ask once before a piece without any coat to come is registered."""
        return NO_COATS if isinstance(command, RegisterPiece) and not command.sheets else ""

    def words_for(self, command: Command) -> str:
        """Return which piece is on the rack."""
        title = command.title if isinstance(command, RegisterPiece) else ""
        return f"Registered: {title}"

    def is_filled(self) -> bool:
        """Return whether a title, a size or a coat was entered."""
        typed = (self.title_field.text(), self.width_field.text(), self.height_field.text())
        return any(text.strip() for text in typed) or self.coats.count() > 0

    def field_of(self, name: str) -> QWidget | None:
        """Return the widget of the field `name`."""
        fields = {"title": self.title_field, "width": self.width_field, "height": self.height_field}
        return fields.get(name)
