"""The answers to an open warning."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from studiowatch.speech.words import mark, say
from studiowatch.ui.models.notices import WarningRow
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.sentence import HEARD_WORDS, REMIND_WORDS
from studiowatch.ui.widgets.text import button, label, put

WHY = mark("Why this limit?")
LATER_WORDS = mark("Choose when to be reminded")


class OpenAnswers(QWidget):
    """What can be answered to an open warning, and where its limit comes from."""

    heard = Signal(str)
    remind = Signal(str)
    later = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("inside")
        self._key = ""
        self._heard = button(say(HEARD_WORDS))
        self._remind = button(say("In 10 min"), hint=say("Remind me in ten minutes if it still stands"))
        self._later = button(say("Later…"), "link", say(LATER_WORDS))
        self._why = button(say(WHY), "link", say("Where the limit of this warning comes from"))
        self._basis = label("small", Tone.MUTED, wrap=True)
        self._basis.hide()
        self._later.clicked.connect(lambda: self.later.emit(self._key))
        self._why.clicked.connect(lambda: self._basis.setVisible(self._basis.isHidden()))
        self._heard.clicked.connect(lambda: self.heard.emit(self._key))
        self._remind.clicked.connect(lambda: self.remind.emit(self._key))
        self._compose()

    def _compose(self) -> None:
        self._first, self._second = QHBoxLayout(), QHBoxLayout()
        for line, widgets in ((self._first, (self._heard, self._remind)), (self._second, (self._later, self._why))):
            for widget in widgets:
                line.addWidget(widget)
            line.addStretch(1)
        self._lines = QVBoxLayout(self)
        self._lines.setContentsMargins(0, 0, 0, 0)
        self._lines.addLayout(self._first)
        self._lines.addLayout(self._second)
        self._lines.addWidget(self._basis)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._lines.setSpacing(style.px(2))
        self._first.setSpacing(style.px(6))

    def set_row(self, row: WarningRow) -> None:
        """Offer what is left to answer to `row`."""
        if row.key != self._key:
            self._basis.hide()
        self._key = row.key
        self._heard.setVisible(row.can_hear)
        self._remind.setVisible(row.can_remind)
        self._later.setVisible(row.can_remind)
        self._why.setVisible(bool(row.basis))
        put(self._basis, row.basis)
        self.setAccessibleName(row.headline)
        named = {self._heard: HEARD_WORDS, self._remind: REMIND_WORDS, self._later: LATER_WORDS, self._why: WHY}
        for answer, words in named.items():
            answer.setAccessibleName(f"{say(words)}: {row.headline}")
