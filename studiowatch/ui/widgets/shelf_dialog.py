"""The data sheets: built-in ones and hers, looked at, copied, edited, deleted."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Signal, SignalInstance
from PySide6.QtWidgets import QDialog, QHBoxLayout, QListWidget, QVBoxLayout, QWidget

from studiowatch.service.product_views import SheetEntry
from studiowatch.speech.words import mark, say
from studiowatch.ui.models.sheet_form import summary_lines
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.text import button, label, put

TITLE = mark("Data sheets")
_BUILT_IN = mark(
    "Built in, generic: it describes no product. Make one of your own from it and type your bottle's figures."
)
_OWN = mark("Yours, from the folder of sheets beside the records.")


class ShelfDialog(QDialog):
    """Lists the shelf; `edited` carries the entry that is to be edited or copied, `dropped` the one to be deleted."""

    edited = Signal(object)
    dropped = Signal(object)

    def __init__(self, entries: Callable[[], Sequence[SheetEntry]], style: Style, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(say(TITLE))
        self.setAccessibleName(say(TITLE))
        self._entries_now, self._style = entries, style
        self._entries: tuple[SheetEntry, ...] = ()
        self.list = QListWidget()
        self.list.setAccessibleName(say(TITLE))
        self._name, self._whose = label("title", wrap=True), label("small", Tone.MUTED, wrap=True)
        self._words = label("body", wrap=True)
        self.edit, self.drop = button("", "primary"), button(say("Delete…"))
        self._lay_out()
        self.list.currentRowChanged.connect(self._show_one)
        self.list.itemActivated.connect(lambda _item: self._tell(self.edited))
        self.edit.clicked.connect(lambda: self._tell(self.edited))
        self.drop.clicked.connect(lambda: self._tell(self.dropped))
        self.show_shelf()
        room = self.screen().availableSize()
        self.resize(min(style.px(820), room.width() - 40), min(style.px(560), room.height() - 60))

    def _lay_out(self) -> None:
        px = self._style.px
        close = button(say("Close"))
        close.clicked.connect(self.accept)
        told = QVBoxLayout()
        told.setSpacing(px(8))
        for part in (self._name, self._whose, self._words):
            told.addWidget(part)
        told.addStretch(1)
        both = QHBoxLayout()
        both.setSpacing(px(16))
        both.addWidget(self.list, 1)
        both.addLayout(told, 1)
        foot = QHBoxLayout()
        foot.setSpacing(px(10))
        foot.addWidget(close)
        foot.addStretch(1)
        foot.addWidget(self.drop)
        foot.addWidget(self.edit)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(px(20), px(14), px(20), px(14))
        whole.setSpacing(px(10))
        whole.addWidget(label("headline", text=say(TITLE)))
        whole.addLayout(both, 1)
        whole.addLayout(foot)

    def show_shelf(self, name: str = "") -> None:
        """Show the shelf as it is now, with the sheet `name` chosen, else the one that was."""
        wanted = name or (self.chosen.sheet.name if self.chosen is not None else "")
        self._entries = tuple(self._entries_now())
        self.list.blockSignals(True)  # noqa: FBT003 - Qt's own
        self.list.clear()
        self.list.addItems(
            [f"{one.sheet.title} · {say('yours')}" if one.is_own else one.sheet.title for one in self._entries]
        )
        self.list.blockSignals(False)  # noqa: FBT003 - Qt's own
        names = [one.sheet.name for one in self._entries]
        self.list.setCurrentRow(names.index(wanted) if wanted in names else 0)
        self._show_one()

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

    def _tell(self, signal: SignalInstance) -> None:
        if self.chosen is not None:
            signal.emit(self.chosen)
