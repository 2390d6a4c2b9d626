"""The sentence: the most urgent thing, in a shape, a colour and words, with its two answers."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QFrame, QHBoxLayout, QLabel, QSizePolicy, QVBoxLayout

from studiowatch.speech.words import mark, say
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.models.notices import SentenceCard
from studiowatch.ui.models.tones import LEVEL_TONES, Tone
from studiowatch.ui.plain import set_tip
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.marks import LevelMark
from studiowatch.ui.widgets.steady import Steady
from studiowatch.ui.widgets.text import button, label, put, restyle, set_property

HEARD_WORDS = mark("Heard")
REMIND_WORDS = mark("Remind me in 10 min")
CARD_KINDS = {Level.ACT: "act", Level.CAUTION: "caution", Level.CALM: "calm"}

_FLASH_MS = 700


def starting() -> Sentence:
    """Return what is said before the watch has spoken."""
    return Sentence(level=Level.CAUTION, headline=say("Starting"), detail=say("The watch has not spoken yet."))


def flash_card(card: QFrame) -> None:
    """Show a card in full colour for a moment."""
    _set_flash(card, "true")
    QTimer.singleShot(_FLASH_MS, card, lambda: _set_flash(card, "false"))


def _set_flash(card: QFrame, value: str) -> None:
    """Restyle a card and the words on it, whose colour goes by it."""
    set_property(card, "flash", value)
    for words in card.findChildren(QLabel):
        restyle(words)


class SentenceView(QFrame):
    """The card beside the figures."""

    heard = Signal(str)
    remind = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self._card = SentenceCard(sentence=starting())
        self._mark = LevelMark(54)
        self._headline = label("headline", wrap=True)
        self._detail = label("body", wrap=True)
        self._detailed = Steady(self._detail)
        self._advice = label("strong", wrap=True)
        self._note = label("strong", Tone.MUTED)
        self._heard = button(say(HEARD_WORDS), "primary", say("No more sound for this warning"))
        self._remind = button(say(REMIND_WORDS), hint=say("Quiet for ten minutes, then again if it still stands"))
        self._heard.clicked.connect(lambda: self.heard.emit(self._card.warning_key))
        self._remind.clicked.connect(lambda: self.remind.emit(self._card.warning_key))
        self._compose()
        self.set_card(self._card)

    def _compose(self) -> None:
        self._answers = QHBoxLayout()
        self._answers.addStretch(1)
        for widget in (self._note, self._heard, self._remind):
            self._answers.addWidget(widget, 0, Qt.AlignmentFlag.AlignBottom)
        self._foot = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._foot.addWidget(self._advice, 1)
        self._foot.addLayout(self._answers)
        wide = self._headline.sizePolicy()
        wide.setHorizontalPolicy(QSizePolicy.Policy.Expanding)
        self._headline.setSizePolicy(wide)
        self._words = QVBoxLayout()
        self._words.addStretch(1)
        self._words.addWidget(self._headline)
        self._words.addWidget(self._detailed)
        self._words.addLayout(self._foot)
        self._words.addStretch(1)
        self._row = QHBoxLayout(self)
        self._row.addWidget(self._mark, 0, Qt.AlignmentFlag.AlignVCenter)
        self._row.addLayout(self._words, 1)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        px = style.px
        self._mark.set_style(style)
        self._row.setContentsMargins(px(18), px(9), px(14), px(9))
        self._row.setSpacing(px(16))
        self._words.setSpacing(px(3))
        self._foot.setSpacing(px(8))
        self._answers.setSpacing(px(8))
        self._arrange()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Put the answers where they leave the card lower."""
        super().resizeEvent(event)
        self._arrange()

    def _arrange(self) -> None:
        """Put the answers beside the advice, or below it where that makes it less tall: a narrow card squeezes it."""
        margins = self._row.contentsMargins()
        around_px = margins.left() + self._mark.sizeHint().width() + self._row.spacing() + margins.right()
        wide_px, answers, apart_px = self.width() - around_px, self._answers.sizeHint(), self._foot.spacing()
        beside = max(self._advice.heightForWidth(wide_px - answers.width() - apart_px), answers.height())
        below = self._advice.heightForWidth(wide_px) + apart_px + answers.height()
        is_below = answers.height() > 0 and not self._advice.isHidden() and below < beside
        direction = QBoxLayout.Direction.TopToBottom if is_below else QBoxLayout.Direction.LeftToRight
        self._foot.setDirection(direction)

    def set_card(self, card: SentenceCard) -> None:
        """Show `card`."""
        self._card = card
        one = card.sentence
        set_property(self, "card", CARD_KINDS[one.level])
        self._mark.set_level(one.level, good=one.level is Level.CALM)
        put(self._headline, one.headline, Tone.GOOD if one.level is Level.CALM else LEVEL_TONES[one.level])
        put(self._detail, one.detail)
        self._detailed.setVisible(bool(one.detail))
        put(self._advice, one.advice, hide_empty=True)
        put(self._note, card.note, hide_empty=True)
        self._offer(can_hear=card.can_hear, can_remind=card.can_remind)
        self._arrange()
        self.setAccessibleName(card.spoken)
        set_tip(self, say("Why this limit? {basis}", basis=card.basis) if card.basis else "")

    def _offer(self, *, can_hear: bool, can_remind: bool) -> None:
        """Offer what can be answered; the keyboard stays here when its answer goes, and lands on no other action."""
        goes = (self._heard.hasFocus() and not can_hear) or (self._remind.hasFocus() and not can_remind)
        if goes:
            self.setFocus()
        self._heard.setVisible(can_hear)
        self._remind.setVisible(can_remind)

    def flash(self) -> None:
        """Show it in full colour for a moment, where nothing can be heard."""
        flash_card(self)

    @property
    def headline(self) -> str:
        """Return the headline that is shown."""
        return self._headline.text()
