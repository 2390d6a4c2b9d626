"""The calibrations that hold: one row each, with the way to withdraw it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from studiowatch.speech.words import say
from studiowatch.ui.models.holding import HoldingRow
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.text import button, label, put


class HoldingRowView(QWidget):
    """One calibration; `withdraw_asked` carries its row."""

    withdraw_asked = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self._shown: HoldingRow | None = None
        self._title = label("strong", wrap=True)
        self._made = label("small", Tone.MUTED, wrap=True)
        self._effect = label("body", wrap=True)
        self._recheck = label("small", Tone.MUTED, wrap=True)
        self.withdraw = button(say("Withdraw…"), "link")
        self.withdraw.clicked.connect(lambda: self.withdraw_asked.emit(self._shown))
        words = QVBoxLayout()
        words.setSpacing(1)
        for part in (self._title, self._made, self._effect, self._recheck):
            words.addWidget(part)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addLayout(words, 1)
        row.addWidget(self.withdraw, 0, Qt.AlignmentFlag.AlignTop)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on: nothing here has a size of its own."""

    def set_row(self, row: HoldingRow) -> None:
        """Show `row`."""
        self._shown = row
        put(self._title, row.title)
        put(self._made, row.made)
        put(self._effect, row.effect)
        put(self._recheck, row.recheck, row.recheck_tone)
        self.withdraw.setAccessibleName(say("Withdraw: {title}", title=row.title))
        self.setAccessibleName(row.spoken)
