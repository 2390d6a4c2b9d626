"""The view from across the room: the sentence, the next prompt and the figures, as large as the window allows."""

from __future__ import annotations

from PySide6.QtCore import QRect, Qt, Signal
from PySide6.QtGui import QFont, QFontMetrics, QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QSizePolicy, QVBoxLayout, QWidget

from studiowatch.speech.words import say
from studiowatch.studio.words import Level
from studiowatch.ui.models.figures import Figure
from studiowatch.ui.models.notices import SentenceCard
from studiowatch.ui.models.tones import LEVEL_TONES, Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.marks import LevelMark
from studiowatch.ui.widgets.room_band import FigureView
from studiowatch.ui.widgets.sentence import CARD_KINDS, HEARD_WORDS, REMIND_WORDS, flash_card, starting
from studiowatch.ui.widgets.text import button, label, put, set_property

_SHOWN_FIGURES = 3
_SIZES = (6.0, 5.2, 4.4, 3.6, 3.0)  # of the headline, in hundredths of the window: the largest that stays whole
_ADVICE_SIZES = (3.2, 2.7, 2.3, 2.0)  # the same of the advice, which must never lose its end
_SENTENCE_SHARE = 0.45  # of the window's height, for the card
_EDGE, _AROUND = 28, 80  # pixels of the page beside its parts, and between and around them
_BESIDE, _INSIDE, _BETWEEN = (
    198,
    24,
    16,
)  # pixels of the card that are neither words, mark nor answers: margins and spacing


class AcrossView(QWidget):
    """Nothing but what one walks up to the rack for."""

    left = Signal()
    heard = Signal(str)
    remind = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("across")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setAccessibleName(say("From across the room"))
        self._card = SentenceCard(sentence=starting())
        self._style = Style()
        self._mark = LevelMark(120)
        self._headline = label("across", wrap=True)
        self._where = label("across", Tone.MUTED, wrap=True)
        self._advice = label("across", wrap=True)
        self._prompt = label("across", wrap=True)
        self._figures = [FigureView() for _ in range(_SHOWN_FIGURES)]
        self._heard = button(say(HEARD_WORDS), "big")
        self._remind = button(say(REMIND_WORDS))
        self._note = label("across", wrap=True)
        self._trouble = label("across", Tone.ACT, wrap=True)
        self._back = button(say("Back to the whole window"), "link", say("Also with F11 or Escape"))
        self._heard.clicked.connect(lambda: self.heard.emit(self._card.warning_key))
        self._remind.clicked.connect(lambda: self.remind.emit(self._card.warning_key))
        self._back.clicked.connect(self.left)
        self._sentence = QFrame()
        self._compose()

    def _compose(self) -> None:
        words = QVBoxLayout()
        words.setSpacing(_BETWEEN)
        words.addStretch(1)
        for part in (self._headline, self._where, self._advice):
            words.addWidget(part)
        words.addStretch(1)
        row = QHBoxLayout(self._sentence)
        row.setContentsMargins(36, _INSIDE, 36, _INSIDE)
        row.setSpacing(32)
        row.addWidget(self._mark)
        row.addLayout(words, 1)
        answers = QVBoxLayout()
        answers.addStretch(1)
        answers.addWidget(self._heard)
        answers.addWidget(self._remind)
        answers.addStretch(1)
        row.addLayout(answers)
        figures = QHBoxLayout()
        for view in self._figures:
            view.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
            figures.addWidget(view, 1, Qt.AlignmentFlag.AlignVCenter)
        page = QVBoxLayout(self)
        page.setContentsMargins(_EDGE, 28, _EDGE, 16)
        page.addWidget(self._sentence, 6)
        page.addWidget(self._prompt, 2)
        page.addLayout(figures, 3)
        page.addWidget(self._trouble)
        below = QHBoxLayout()
        below.addWidget(self._note, 1)
        below.addWidget(self._back)
        page.addLayout(below)
        self._prompt.setAlignment(Qt.AlignmentFlag.AlignCenter)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        self._fit()

    def show_all(self, card: SentenceCard, figures: tuple[Figure, ...], prompt: str, trouble: str) -> None:
        """Show the sentence, the first three figures, the next prompt, and what is wrong with the program, if it is."""
        self._card = card
        one = card.sentence
        set_property(self._sentence, "card", CARD_KINDS[one.level])
        self._sentence.setAccessibleName(card.spoken)
        self._mark.set_level(one.level, good=one.level is Level.CALM)
        put(self._headline, one.headline, Tone.GOOD if one.level is Level.CALM else LEVEL_TONES[one.level])
        where = " · ".join(part for part in (card.where, card.note) if part)
        put(self._where, where or one.detail, hide_empty=True)
        put(self._advice, one.advice, hide_empty=True)
        put(self._prompt, prompt)
        put(self._trouble, trouble, hide_empty=True)
        self._heard.setVisible(card.can_hear)
        self._remind.setVisible(card.can_remind)
        for view, figure in zip(self._figures, figures, strict=False):
            view.set_figure(figure)
        self._fit()

    def say_next(self, prompt: str) -> None:
        """Show the next prompt as it reads by now."""
        put(self._prompt, prompt)

    def flash(self) -> None:
        """Show the sentence in full colour for a moment, where nothing can be heard."""
        flash_card(self._sentence)

    def note(self, words: str, tone: Tone) -> None:
        """Show how what she did went, until the next thing does."""
        put(self._note, words, tone)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Let the letters grow with the window."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        unit = max(6.0, min(self.width() / 100, self.height() / 62))
        self._mark.set_style(Style(theme=self._style.theme, scale=max(0.5, unit / 10)))
        for shown, size, weight in (
            (self._where, 2.4, 400),
            (self._note, 2.0, 600),
            (self._trouble, 2.0, 600),
            (self._prompt, 3.2, 600),
        ):
            shown.setStyleSheet(f"font-size: {round(size * unit)}px; font-weight: {weight};")  # not said
        for answer, size in ((self._heard, 2.6), (self._remind, 1.9)):
            answer.setStyleSheet(f"font-size: {round(size * unit)}px; padding: {round(1.4 * unit)}px;")  # not said
        self._back.setStyleSheet(f"font-size: {round(1.8 * unit)}px;")
        for view in self._figures:
            view.setStyleSheet(f"QLabel {{ font-size: {round(2 * unit)}px; }}")
            view.set_style(Style(theme=self._style.theme, scale=unit / 6))
        for size in _ADVICE_SIZES:
            self._advice.setStyleSheet(f"font-size: {round(size * unit)}px; font-weight: 700;")  # not said
            headline_px, fits = self._headline_px(unit)
            if fits:
                break
        self._headline.setStyleSheet(f"font-size: {headline_px}px; font-weight: 700;")  # not said

    def _card_px(self) -> float:
        """Return how tall the card may be: its share, or what the rest of the page leaves of it."""
        self._back.ensurePolished()
        wide = self.width() - 2 * _EDGE
        lines = [_height(one, wide) for one in (self._prompt, self._trouble) if not one.isHidden()]
        figures = max(view.minimumSizeHint().height() for view in self._figures)
        rest = sum(lines) + figures + self._back.sizeHint().height() + _AROUND
        return min(self.height() * _SENTENCE_SHARE, self.height() - rest)

    def _headline_px(self, unit: float) -> tuple[int, bool]:
        """Return the largest size that leaves the sentence whole above its advice, and whether even that does."""
        for one in (self._heard, self._remind):
            one.ensurePolished()
        answers = [one.sizeHint().width() for one in (self._heard, self._remind) if not one.isHidden()]
        width = self.width() - self._mark.sizeHint().width() - max(answers, default=0) - _BESIDE
        below = sum(_height(one, width) for one in (self._where, self._advice) if not one.isHidden())
        room = self._card_px() - below - 2 * (_INSIDE + _BETWEEN)
        font = QFont(self.font())
        font.setWeight(QFont.Weight.Bold)
        for size in _SIZES:
            font.setPixelSize(round(size * unit))
            if _text_height(font, self._headline.text(), width) <= room:
                return font.pixelSize(), True
        return font.pixelSize(), False


def _height(shown: QLabel, width: int) -> int:
    shown.ensurePolished()
    return _text_height(shown.font(), shown.text(), width)


def _text_height(font: QFont, text: str, width: int) -> int:
    return QFontMetrics(font).boundingRect(QRect(0, 0, width, 9999), Qt.TextFlag.TextWordWrap, text).height()
