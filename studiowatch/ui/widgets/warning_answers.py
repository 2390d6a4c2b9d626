"""The answers to an open warning."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QVBoxLayout, QWidget

from studiowatch.speech.words import mark, say
from studiowatch.ui.models.notices import WarningRow
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.sentence import HEARD_WORDS, REMIND_WORDS
from studiowatch.ui.widgets.text import button, label, put

WHY = mark("Why this limit?")
LATER_WORDS = mark("Choose when to be reminded")


class OpenAnswers(QWidget):
    """What can be answered to an open warning, and where its limit comes from; side by side where they fit."""

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
        beside = QBoxLayout.Direction.LeftToRight
        self._first, self._second = QBoxLayout(beside), QBoxLayout(beside)
        self._pairs = ((self._first, (self._heard, self._remind)), (self._second, (self._later, self._why)))
        for line, widgets in self._pairs:
            for widget in widgets:
                line.addWidget(widget, 0, Qt.AlignmentFlag.AlignLeft)
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
        self._arrange()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Put the answers where there is room for them."""
        super().resizeEvent(event)
        self._arrange()

    def minimumSizeHint(self) -> QSize:
        """Return the width of the widest answer: what does not fit beside it goes below it."""
        wide = max((one.sizeHint().width() for _, pair in self._pairs for one in _offered(pair)), default=0)
        return QSize(wide, self.heightForWidth(self.width()))

    def hasHeightForWidth(self) -> bool:
        """Return that its height goes with its width."""
        return True

    def heightForWidth(self, width: int) -> int:
        """Return how tall it is at a width in pixels."""
        parts = [
            _pair_tall(line, pair, stacked=not _fits(line, pair, width)) for line, pair in self._pairs if _offered(pair)
        ]
        if not self._basis.isHidden():
            parts.append(self._basis.heightForWidth(width))
        return sum(parts) + max(len(parts) - 1, 0) * self._lines.spacing()

    def _arrange(self) -> None:
        for line, pair in self._pairs:
            fits = _fits(line, pair, self.width())
            line.setDirection(QBoxLayout.Direction.LeftToRight if fits else QBoxLayout.Direction.TopToBottom)

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
        self._arrange()


def _offered(pair: tuple[QWidget, ...]) -> list[QWidget]:
    return [one for one in pair if not one.isHidden()]


def _fits(line: QBoxLayout, pair: tuple[QWidget, ...], width: int) -> bool:
    wide = [one.sizeHint().width() for one in _offered(pair)]
    return sum(wide) + max(len(wide) - 1, 0) * line.spacing() <= width


def _pair_tall(line: QBoxLayout, pair: tuple[QWidget, ...], *, stacked: bool) -> int:
    tall = [one.sizeHint().height() for one in _offered(pair)]
    return sum(tall) + (len(tall) - 1) * line.spacing() if stacked else max(tall)
