"""The ports on the board page: one row each, with what would mend it and the way to read it instead."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from studiowatch.speech.words import say
from studiowatch.ui.models.board_ports import PortRow
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.text import button, label, put


class PortRowView(QWidget):
    """One port; `chosen` carries its name."""

    chosen = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self._port = ""
        self._name = label("title")
        self._detail = label("small", Tone.MUTED, wrap=True)
        self._state = label("body", wrap=True)
        self.choose = button(say("Read this one"), "link")
        self.choose.clicked.connect(lambda: self.chosen.emit(self._port))
        self.command = QLineEdit()
        self.command.setReadOnly(True)
        self.command.setAccessibleName(say("The command that mends it"))
        self.copy = button(say("Copy"), "link", say("Copy the command"))
        self.copy.setAccessibleName(say("Copy the command that mends it"))
        self.copy.clicked.connect(lambda: QGuiApplication.clipboard().setText(self.command.text()))
        head = QHBoxLayout()
        head.addWidget(self._name)
        head.addStretch(1)
        head.addWidget(self.choose)
        self._mend = QWidget()
        self._mend.setObjectName("inside")
        mend = QHBoxLayout(self._mend)
        mend.setContentsMargins(0, 0, 0, 0)
        mend.addWidget(self.command, 1)
        mend.addWidget(self.copy)
        self._lines = QVBoxLayout(self)
        self._lines.setContentsMargins(0, 0, 0, 0)
        self._lines.addLayout(head)
        for part in (self._detail, self._state, self._mend):
            self._lines.addWidget(part)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._lines.setSpacing(style.px(2))

    def set_row(self, row: PortRow) -> None:
        """Show `row`."""
        self._port = row.port
        put(self._name, row.name)
        put(self._detail, row.detail, hide_empty=True)
        put(self._state, row.state, row.tone)
        self.choose.setVisible(row.can_choose)
        self.choose.setAccessibleName(say("Read {port} instead", port=row.name))
        if self.command.text() != row.command:
            self.command.setText(row.command)
            self.command.setCursorPosition(0)
        self._mend.setVisible(bool(row.command))
        self.setAccessibleName(f"{row.name}. {row.state}")
