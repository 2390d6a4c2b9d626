"""The coats to come: a list that is added to, ordered and thinned out, lowest first."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from studiowatch.service.product_views import SheetChoice
from studiowatch.speech.words import mark, say
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.drop_down import drop_down_of_names
from studiowatch.ui.widgets.text import button

NAME = mark("Coats to come, lowest first")


class CoatsToCome(QWidget):
    """Chooses sheets in an order."""

    changed = Signal()

    def __init__(self, sheets: Sequence[SheetChoice], style: Style) -> None:
        super().__init__()
        self.setAccessibleName(say(NAME))
        self._titles = {sheet.name: sheet.title for sheet in sheets}
        self._sheets = tuple(sheets)
        self.sheet_field = drop_down_of_names()
        self.sheet_field.setAccessibleName(say(NAME))
        self.sheet_field.addItems([sheet.title for sheet in self._sheets])
        self.list = QListWidget()
        self.list.setAccessibleName(say(NAME))
        self.list.setMinimumHeight(style.px(84))
        self.list.setMaximumHeight(style.px(150))
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(style.px(6))
        adding, deeds = QHBoxLayout(), QHBoxLayout()
        adding.addWidget(self.sheet_field, 1)
        self.put_on, self.take_out = button(say("Add this coat")), button(say("Remove"))
        self.up, self.down = button(say("Move up")), button(say("Move down"))
        for row, made, deed in (
            (adding, self.put_on, self.add),
            (deeds, self.take_out, self.remove),
            (deeds, self.up, lambda: self.move_by(-1)),
            (deeds, self.down, lambda: self.move_by(1)),
        ):
            made.clicked.connect(deed)
            row.addWidget(made)
            row.setSpacing(style.px(10))
        rows = self.list.model()
        for told in (self.list.currentRowChanged, rows.rowsInserted, rows.rowsRemoved, rows.modelReset):
            told.connect(self._offer)
        self._offer()
        deeds.addStretch(1)
        whole.addLayout(adding)
        whole.addWidget(self.list, 1)
        whole.addLayout(deeds)

    def _offer(self) -> None:
        """Offer what can be done with the chosen coat; the keyboard goes to the list where its button goes."""
        row, last = self.list.currentRow(), self.list.count() - 1
        offers = ((self.take_out, row >= 0), (self.up, row > 0), (self.down, 0 <= row < last))
        if any(made.hasFocus() and not can for made, can in offers):
            self.list.setFocus()
        for made, can in offers:
            made.setEnabled(can)

    def add(self) -> None:
        """Add the sheet that is chosen on top."""
        index = self.sheet_field.currentIndex()
        if index >= 0:
            self._add(self._sheets[index].name)
            self.changed.emit()

    def _add(self, name: str) -> None:
        item = QListWidgetItem(self._titles.get(name, say("{sheet} (its sheet is missing)", sheet=name)))
        item.setData(Qt.ItemDataRole.UserRole, name)
        self.list.addItem(item)
        self.list.setCurrentItem(item)

    def remove(self) -> None:
        """Take the chosen coat out."""
        self.list.takeItem(self.list.currentRow())
        self.changed.emit()

    def move_by(self, step: int) -> None:
        """Move the chosen coat."""
        row = self.list.currentRow()
        if row >= 0 and 0 <= row + step < self.list.count():
            item = self.list.takeItem(row)
            self.list.insertItem(row + step, item)
            self.list.setCurrentRow(row + step)
            self.changed.emit()

    def set_sheets(self, names: Sequence[str]) -> None:
        """Show the coats `names`."""
        self.list.clear()
        for name in names:
            self._add(name)

    @property
    def sheets(self) -> tuple[str, ...]:
        """Names of the sheets, lowest first."""
        return tuple(str(self.list.item(row).data(Qt.ItemDataRole.UserRole)) for row in range(self.list.count()))
