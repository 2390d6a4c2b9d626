"""The data sheets: built-in ones and hers, looked at, copied, edited, deleted."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial

from PySide6.QtCore import QTimer, Signal, SignalInstance
from PySide6.QtWidgets import QWidget

from studiowatch.service.product_views import SheetEntry
from studiowatch.speech.words import mark, say
from studiowatch.ui.models.sheet_summary import summary_lines
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.list_dialog import ListDialog
from studiowatch.ui.widgets.text import button, label, put

_SIZE = (820, 560)  # units
_BUILT_IN = mark(
    "Built in, generic: it describes no product. Make one of your own from it and type your bottle's figures."
)
_OWN = mark("Yours, from the folder of sheets beside the records.")


class ShelfDialog(ListDialog):
    """Lists the shelf; `edited` carries the entry that is to be edited or copied, `dropped` the one to be deleted."""

    edited = Signal(object)
    dropped = Signal(object)

    def __init__(self, entries: Callable[[], Sequence[SheetEntry]], style: Style, parent: QWidget) -> None:
        super().__init__(say("Data sheets"), _SIZE, style, parent)
        self._entries_now = entries
        self._entries: tuple[SheetEntry, ...] = ()
        self._whose = label("small", Tone.MUTED, wrap=True)
        self.between.addWidget(self._whose)
        self.drop = self.add_deed(button(say("Delete…")))
        self.edit = self.add_deed(button("", "primary"))
        self.list.itemActivated.connect(lambda _item: self._edit_soon())
        self.edit.clicked.connect(lambda: self._tell(self.edited))
        self.drop.clicked.connect(lambda: self._tell(self.dropped))
        self.show_shelf()

    def show_shelf(self, name: str = "") -> None:
        """Show the shelf as it is now, with the sheet `name` chosen, else the one that was."""
        wanted = name or (self.chosen.sheet.name if self.chosen is not None else "")
        self._entries = tuple(self._entries_now())
        names = [one.sheet.name for one in self._entries]
        lines = [f"{one.sheet.title} · {say('yours')}" if one.is_own else one.sheet.title for one in self._entries]
        self.show_lines(lines, names.index(wanted) if wanted in names else 0)

    @property
    def chosen(self) -> SheetEntry | None:
        """The entry that is chosen."""
        row = self.list.currentRow()
        return self._entries[row] if 0 <= row < len(self._entries) else None

    def _show_one(self) -> None:
        entry = self.chosen
        if entry is None:
            return
        put(self._name, entry.sheet.title)
        put(self._whose, say(_OWN if entry.is_own else _BUILT_IN))
        put(self._words, "\n".join(summary_lines(entry.sheet)))
        words = say("Edit…") if entry.is_own else say("Make one of my own from it…")
        self.edit.setText(words)
        self.edit.setAccessibleName(words)
        self.drop.setVisible(entry.is_own)

    def _edit_soon(self) -> None:
        """Ask for the form once the key is through, which would press the button of a form that opens meanwhile."""
        QTimer.singleShot(0, self, partial(self._tell, self.edited))

    def _tell(self, signal: SignalInstance) -> None:
        if self.chosen is not None:
            signal.emit(self.chosen)
