"""Lines that forms share: cautions, boxes to tick, and the button that sends the form."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QCheckBox, QFrame, QHBoxLayout, QPushButton, QVBoxLayout

from studiowatch.studio.words import Level
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.marks import LevelMark
from studiowatch.ui.widgets.text import button, label


def caution_list(cautions: Sequence[str], style: Style) -> QFrame:
    """Return the cautions, each with a diamond before it."""
    made = QFrame()
    made.setAccessibleName("Cautions")
    column = QVBoxLayout(made)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(style.px(5))
    for caution in cautions:
        mark = LevelMark(16)
        mark.set_style(style)
        mark.set_level(Level.CAUTION)
        row = QHBoxLayout()
        row.setSpacing(style.px(9))
        row.addWidget(mark, 0, Qt.AlignmentFlag.AlignTop)
        row.addWidget(label("body", text=caution, wrap=True), 1)
        column.addLayout(row)
    return made


def tick_line(text: str, style: Style) -> QHBoxLayout:
    """Return a box to tick, with words that wrap beside it."""
    box = QCheckBox()
    box.setAccessibleName(text)
    words = label("body", text=text, wrap=True)
    words.setBuddy(box)
    row = QHBoxLayout()
    row.setSpacing(style.px(4))
    row.addWidget(box, 0, Qt.AlignmentFlag.AlignTop)
    row.addWidget(words, 1)
    return row


def add_primary(form: FormDialog, text: str, kind: str = "primary") -> QPushButton:
    """Add the button that sends the form; Enter presses it."""
    made = button(text, kind)
    made.setDefault(True)
    made.clicked.connect(form.command_or_fault)
    form.foot.addWidget(made)
    return made
