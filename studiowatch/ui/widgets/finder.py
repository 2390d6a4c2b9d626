"""The field that finds pieces on the rack; it is there only while something is looked for."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLineEdit

from studiowatch.speech.words import say
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.text import button, label, put


class Finder(QFrame):
    """Asks for words; `changed` tells that others are asked for."""

    changed = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("inside")
        self.setAccessibleName(say("Find on the rack"))
        self.field = QLineEdit()
        self.field.setAccessibleName(say("Find on the rack"))
        self.field.setPlaceholderText(say("title, support, notes, coat"))
        self.field.textChanged.connect(self.changed)
        self._told = label("small", Tone.MUTED)
        self.end = button(say("Show all"), "link")
        self.end.clicked.connect(self.leave)
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.addWidget(self.field, 1)
        self._row.addWidget(self._told)
        self._row.addWidget(self.end)
        self.hide()

    @property
    def asked(self) -> str:
        """What is looked for, or ""."""
        return self.field.text().strip()

    @property
    def told(self) -> str:
        """How many were found, in words."""
        return self._told.text()

    def begin(self) -> None:
        """Show the field and go to it."""
        self.show()
        self.field.setFocus()
        self.field.selectAll()

    def leave(self) -> None:
        """Look for nothing any more."""
        self.field.clear()
        self.hide()

    def say_found(self, found: int, of: int) -> None:
        """Say how many of how many pieces were found."""
        put(self._told, say("{found} of {all}", found=found, all=of) if self.asked else "")

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._row.setSpacing(style.px(8))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Let Escape end the search."""
        if event.key() == Qt.Key.Key_Escape:
            self.leave()
        else:
            super().keyPressEvent(event)
