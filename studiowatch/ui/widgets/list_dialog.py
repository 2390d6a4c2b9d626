"""A list, beside it what there is to say of the line that is chosen, and below it what can be done with that."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QHBoxLayout, QListWidget, QPushButton, QVBoxLayout, QWidget

from studiowatch.speech.words import say
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.text import button, label


class ListDialog(QDialog):
    """Lays out what such dialogs share; their own parts go `above` the list, `between` name and words, and the `foot`.

    Parameters
    ----------
    size : tuple of int
        Width and height in units; never more than the screen has.
    """

    def __init__(self, title: str, size: tuple[int, int], style: Style, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(title)
        self.setAccessibleName(title)
        self.dress = style
        self.list = QListWidget()
        self.list.setAccessibleName(title)
        self.list.setWordWrap(True)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._name, self._words = label("title", wrap=True), label("body", wrap=True)
        self.above, self.between, self.foot = QVBoxLayout(), QVBoxLayout(), QHBoxLayout()
        self._compose(title)
        self.list.currentRowChanged.connect(self._show_one)
        room = self.screen().availableSize()
        self.resize(min(style.px(size[0]), room.width() - 40), min(style.px(size[1]), room.height() - 60))

    def _compose(self, title: str) -> None:
        px = self.dress.px
        told = QVBoxLayout()
        told.addWidget(self._name)
        told.addLayout(self.between)
        told.addWidget(self._words)
        told.addStretch(1)
        both = QHBoxLayout()
        both.setSpacing(px(16))
        both.addWidget(self.list, 1)
        both.addLayout(told, 1)
        close = button(say("Close"))
        close.clicked.connect(self.accept)
        self.foot.setSpacing(px(10))
        self.foot.addWidget(close)
        self.foot.addStretch(1)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(px(20), px(14), px(20), px(14))
        for column, space in ((told, 8), (self.between, 8), (self.above, 10), (whole, 10)):
            column.setSpacing(px(space))
        whole.addWidget(label("headline", text=title, wrap=True))
        whole.addLayout(self.above)
        whole.addLayout(both, 1)
        whole.addLayout(self.foot)

    def add_deed(self, made: QPushButton) -> QPushButton:
        """Add a button at the right of the foot."""
        self.foot.addWidget(made)
        return made

    def show_lines(self, lines: Sequence[str], chosen: int) -> None:
        """Show `lines` with one of them chosen, or with -1 none."""
        self.list.blockSignals(True)  # noqa: FBT003 - Qt's own
        self.list.clear()
        self.list.addItems(list(lines))
        self.list.blockSignals(False)  # noqa: FBT003 - Qt's own
        self.list.setCurrentRow(chosen)
        self._show_one()

    def _show_one(self) -> None:
        """Show what there is to say of the line that is chosen."""
        raise NotImplementedError
