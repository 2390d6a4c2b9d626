"""The most urgent warning in one line, so that it stays in sight on a page of its own."""

from __future__ import annotations

from PySide6.QtWidgets import QHBoxLayout, QWidget

from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.models.tones import LEVEL_TONES
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.marks import LevelMark
from studiowatch.ui.widgets.text import ElidedLabel, put

_MARK = 18  # units


class WarningLine(QWidget):
    """Shows a mark and the headline; nothing while all is calm."""

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("inside")
        self._mark, self.headline = LevelMark(_MARK), ElidedLabel("strong")
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.addWidget(self._mark)
        self._row.addWidget(self.headline)

    def show_sentence(self, sentence: Sentence) -> None:
        """Show what `sentence` warns of."""
        is_calm = sentence.level is Level.CALM
        self._mark.setVisible(not is_calm)
        self._mark.set_level(sentence.level)
        put(self.headline, "" if is_calm else sentence.headline, LEVEL_TONES[sentence.level])
        self.headline.setAccessibleName(self.headline.text())

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._row.setSpacing(style.px(8))
        self._mark.set_style(style)
