"""The view from across the room: the sentence, the next prompt and the figures, as large as the window allows."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from studiowatch.studio.words import Level
from studiowatch.ui.models.figures import Figure
from studiowatch.ui.models.notices import SentenceCard
from studiowatch.ui.models.tones import LEVEL_TONES, Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.marks import LevelMark
from studiowatch.ui.widgets.room_band import FigureView
from studiowatch.ui.widgets.sentence import CARD_KINDS, STARTING
from studiowatch.ui.widgets.text import button, label, say, set_property

_SHOWN_FIGURES = 3
_LETTERS_IN_LARGE = 34  # that fit two large lines


class AcrossView(QWidget):
    """Nothing but what one walks up to the rack for."""

    left = Signal()
    heard = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("across")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setAccessibleName("From across the room")
        self._card = SentenceCard(sentence=STARTING)
        self._style = Style()
        self._mark = LevelMark(120)
        self._headline = label("across", wrap=True)
        self._advice = label("across", wrap=True)
        self._prompt = label("across", wrap=True)
        self._figures = [FigureView() for _ in range(_SHOWN_FIGURES)]
        self._heard = button("Heard", "big")
        self._back = button("Back to the whole window", "link", "Also with F11 or Escape")
        self._heard.clicked.connect(lambda: self.heard.emit(self._card.warning_key))
        self._back.clicked.connect(self.left)
        self._sentence = QFrame()
        self._compose()

    def _compose(self) -> None:
        words = QVBoxLayout()
        words.addStretch(1)
        words.addWidget(self._headline)
        words.addWidget(self._advice)
        words.addStretch(1)
        row = QHBoxLayout(self._sentence)
        row.setContentsMargins(36, 24, 36, 24)
        row.setSpacing(32)
        row.addWidget(self._mark)
        row.addLayout(words, 1)
        row.addWidget(self._heard)
        figures = QHBoxLayout()
        for view in self._figures:
            view.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
            figures.addWidget(view, 1, Qt.AlignmentFlag.AlignVCenter)
        page = QVBoxLayout(self)
        page.setContentsMargins(28, 28, 28, 16)
        page.addWidget(self._sentence, 4)
        page.addWidget(self._prompt, 2)
        page.addLayout(figures, 3)
        page.addWidget(self._back, 0, Qt.AlignmentFlag.AlignRight)
        self._prompt.setAlignment(Qt.AlignmentFlag.AlignCenter)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        self._fit()

    def show_all(self, card: SentenceCard, figures: tuple[Figure, ...], prompt: str) -> None:
        """Show the sentence, the first three figures and the next prompt."""
        self._card = card
        one = card.sentence
        set_property(self._sentence, "card", CARD_KINDS[one.level])
        self._sentence.setAccessibleName(card.spoken)
        self._mark.set_level(one.level, good=one.level is Level.CALM)
        say(self._headline, one.headline, Tone.GOOD if one.level is Level.CALM else LEVEL_TONES[one.level])
        say(self._advice, one.advice or one.detail, hide_empty=True)
        say(self._prompt, prompt)
        self._heard.setVisible(card.can_hear)
        for view, figure in zip(self._figures, figures, strict=False):
            view.set_figure(figure)
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Let the letters grow with the window."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        unit = max(6.0, min(self.width() / 100, self.height() / 62))
        # A long sentence is set smaller, so that it stays whole.
        headline = 6.0 if len(self._headline.text()) <= _LETTERS_IN_LARGE else 4.4
        for shown, size, weight in (
            (self._headline, headline, 700),
            (self._advice, 2.8, 400),
            (self._prompt, 3.2, 600),
        ):
            shown.setStyleSheet(f"font-size: {round(size * unit)}px; font-weight: {weight};")
        self._heard.setStyleSheet(f"font-size: {round(2.6 * unit)}px; padding: {round(1.6 * unit)}px;")
        self._mark.set_style(Style(theme=self._style.theme, scale=max(0.5, unit / 10)))
        for view in self._figures:
            view.setStyleSheet(f"QLabel {{ font-size: {round(2 * unit)}px; }}")
            view.set_style(Style(theme=self._style.theme, scale=unit / 6))
