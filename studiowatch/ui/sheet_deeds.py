"""What she can do with data sheets: look at them, make her own, edit and delete those."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QMessageBox, QWidget

from studiowatch.service.ports import Desk
from studiowatch.service.product_views import SheetEntry
from studiowatch.service.sheet_commands import DropSheet
from studiowatch.speech.words import say
from studiowatch.ui.bridge import Courier
from studiowatch.ui.plain import plain_box
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.question import question
from studiowatch.ui.widgets.sheet_dialog import SheetDialog
from studiowatch.ui.widgets.shelf_dialog import ShelfDialog


class SheetDeeds(QObject):
    """Opens the shelf over `window`; `done` and `refused` tell in words how something went."""

    done = Signal(str)
    refused = Signal(str)

    def __init__(self, desk: Desk, courier: Courier, window: QWidget) -> None:
        super().__init__(window)
        self._desk, self._courier, self._window = desk, courier, window
        self.style = Style()

    def show_shelf(self) -> ShelfDialog:
        """Open the data sheets."""
        shelf = ShelfDialog(self._desk.shelf, self.style, self._window)
        shelf.finished.connect(shelf.deleteLater)
        shelf.edited.connect(partial(self.edit, shelf))
        shelf.dropped.connect(partial(self.drop, shelf))
        shelf.open()
        return shelf

    def edit(self, shelf: ShelfDialog, entry: SheetEntry) -> SheetDialog:
        """Open the form of a sheet of hers, or of a new one made from a built-in one."""
        form = SheetDialog(
            sheet=entry.sheet,
            is_own=entry.is_own,
            taken=[one.sheet.name for one in self._desk.shelf()],
            courier=self._courier,
            style=self.style,
            parent=shelf,
        )
        form.recorded.connect(shelf.show_shelf)
        form.told.connect(self.done)
        form.open()
        return form

    def drop(self, shelf: ShelfDialog, entry: SheetEntry) -> QMessageBox:
        """Ask, then delete a sheet of hers."""
        detail = say("Undo brings it back. Archived pieces keep its name, and what was recorded of their coats.")
        box = question(
            shelf, say("Delete the sheet {title}?", title=entry.sheet.title), detail, say("Delete it"), say("Keep it")
        )
        box.accepted.connect(partial(self._drop, shelf, entry))
        box.open()
        return box

    def _drop(self, shelf: ShelfDialog, entry: SheetEntry) -> None:
        def done(_name: str) -> None:
            shelf.show_shelf()
            self.done.emit(say("Deleted: the sheet {title}. Undo brings it back.", title=entry.sheet.title))

        def refused(sentence: str) -> None:
            plain_box(shelf, sentence).open()
            self.refused.emit(sentence)

        self._courier.send(DropSheet(name=entry.sheet.name), owner=shelf, done=done, refused=refused)
