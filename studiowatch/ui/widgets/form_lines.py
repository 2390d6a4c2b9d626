"""Lines that forms share: cautions, and the button that sends the form."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout

from studiowatch.speech.words import say
from studiowatch.studio.words import Level
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.marks import LevelMark
from studiowatch.ui.widgets.text import button, label


class CautionList(QFrame):
    """Cautions, each with a diamond before it."""

    def __init__(self, style: Style) -> None:
        super().__init__()
        self.setAccessibleName(say("Cautions"))
        self._style = style
        self._rows: list[QFrame] = []
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(style.px(5))
        self.cautions: tuple[str, ...] = ()

    def set_cautions(self, cautions: tuple[str, ...]) -> None:
        """Show `cautions`, and nothing at all where there is none."""
        self.setVisible(bool(cautions))
        if cautions == self.cautions:
            return
        self.cautions = cautions
        for row in self._rows:
            self._column.removeWidget(row)
            row.hide()
            row.deleteLater()
        self._rows = [self._row(caution) for caution in cautions]
        for row in self._rows:
            self._column.addWidget(row)

    def _row(self, caution: str) -> QFrame:
        made = QFrame()
        made.setAccessibleName(caution)
        mark = LevelMark(16)
        mark.set_style(self._style)
        mark.set_level(Level.CAUTION)
        row = QHBoxLayout(made)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(self._style.px(9))
        row.addWidget(mark, 0, Qt.AlignmentFlag.AlignTop)
        row.addWidget(label("body", text=caution, wrap=True), 1)
        return made


def add_primary(form: FormDialog, text: str, kind: str = "primary") -> QPushButton:
    """Add the button that sends the form; Enter presses it."""
    made = button(text, kind)
    made.setDefault(True)
    made.clicked.connect(form.command_or_fault)
    form.foot.addWidget(made)
    return made
