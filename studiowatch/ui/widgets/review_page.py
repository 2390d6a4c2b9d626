"""The review of one coat: likely causes, what the room did, what would have changed it, what to do now."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import (
    QBoxLayout,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from studiowatch.speech.words import mark, say
from studiowatch.studio.review_views import OtherCoat, Reliability, Review
from studiowatch.ui.models.review import review_words
from studiowatch.ui.models.review_plot import Picture, beside_of, picture_of
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.cause_list import CauseList
from studiowatch.ui.widgets.reliability_plot import ReliabilityPlot
from studiowatch.ui.widgets.review_cards import ChangeTable, StepList
from studiowatch.ui.widgets.review_plot import ReviewPlot
from studiowatch.ui.widgets.text import button, label, put

WORKING = mark("Working it out…")
TO_RACK, TO_OWN = mark("← Back to the rack"), mark("← Back to my coat")
EXAMPLE_WORDS = mark("This coat and its room are made up, to show what this cause looks like.")
OFTEN = mark("How often was it right?")
BESIDE, ALONE = mark("Beside my other coats"), mark("This coat alone")
NO_OTHERS = mark("No other coat of this kind has a recorded outcome yet: record how coats came out, clear ones too.")
_SIDE_BY_SIDE_UNITS = 900  # narrower than this, the causes stand above the plot


class ReviewPage(QWidget):
    """Shows one review. `left` asks for the rack, `pdf_asked` and `csv_asked` for it on paper and as figures.

    `others_asked` asks for her other coats, shown on the same axes in place of what the room did; `example_asked` for
    the made-up coat of a cause, shown in place of hers until she goes back; `reliability_asked` for how often each
    chance came true.
    """

    left = Signal()
    pdf_asked = Signal()
    csv_asked = Signal()
    others_asked = Signal()
    example_asked = Signal(object)
    reliability_asked = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("page")
        self.setAccessibleName(say("Why did it cloud?"))
        self.review: Review | None = None
        self._now_ms = 0
        self._style = Style()
        self.back = button(say(TO_RACK), "link")  # first, as the keyboard reaches it
        self._title = label("headline")
        self._subtitle = label("body", Tone.MUTED, wrap=True)
        self._headline = label("title", wrap=True)
        self._pdf, self._csv = button(say("Save as PDF…"), "link"), button(say("Save as CSV…"), "link")
        self._causes, self._plot = CauseList(), ReviewPlot()
        self._changes, self._steps = ChangeTable(), StepList()
        self._learnt = label("small", Tone.MUTED, wrap=True)
        self._blind = label("body", Tone.CAUTION, wrap=True)
        self._beside, self._often = button(say(BESIDE), "link"), button(say(OFTEN), "link")
        self._reliability = ReliabilityPlot()
        self._own: tuple[Review, int] | None = None
        self._compose()
        self._beside.clicked.connect(self._turn)
        self.back.clicked.connect(self.go_back)
        QShortcut(QKeySequence("Escape"), self, self.go_back)
        self._causes.atlas_asked.connect(self.example_asked)
        self._often.clicked.connect(self.reliability_asked)
        self._pdf.clicked.connect(self.pdf_asked)
        self._csv.clicked.connect(self.csv_asked)
        self.wait()

    def _compose(self) -> None:
        self._compose_head()
        self._body = QWidget()
        self._body.setObjectName("inside")
        self._grid = QGridLayout(self._body)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._causes_head = label("column", text=say("Likely causes, strongest first"))
        self._causes_part = self._part(self._causes_head, self._causes_card())
        self._plot_part = self._part(
            label("column", text=say("What the room did under this coat")), self._plot_card(), self._beside
        )
        self._changes_part = self._part(label("column", text=say("What would have changed it")), self._changes)
        self._steps_part = self._part(label("column", text=say("What to do now")), self._steps)
        self._scroll = QScrollArea()
        self._scroll.setWidgetResizable(True)
        self._scroll.setFrameShape(QFrame.Shape.NoFrame)
        self._scroll.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self._scroll.setAccessibleName(say("The review"))
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroll.setWidget(self._body)
        self._whole = QVBoxLayout(self)
        self._whole.addLayout(self._head)
        self._whole.addWidget(self._subtitle)
        self._whole.addWidget(self._headline)
        self._whole.addWidget(self._scroll, 1)
        self._arrange()

    def _compose_head(self) -> None:
        self._top = QHBoxLayout()
        for part in (self.back, self._title):
            self._top.addWidget(part)
        self._top.addStretch(1)
        saving = QHBoxLayout()
        saving.addStretch(1)
        for part in (self._pdf, self._csv):
            saving.addWidget(part)
        self._head = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._head.addLayout(self._top)
        self._head.addLayout(saving, 1)

    @staticmethod
    def _part(title: QLabel, card: QWidget, action: QWidget | None = None) -> QWidget:
        made = QWidget()
        made.setObjectName("inside")
        column = QVBoxLayout(made)
        column.setContentsMargins(0, 0, 0, 0)
        head = QHBoxLayout()
        head.addWidget(title)
        head.addStretch(1)
        if action is not None:
            head.addWidget(action)
        column.addLayout(head)
        column.addWidget(card, 1)
        return made

    def _causes_card(self) -> QFrame:
        card = QFrame()
        card.setProperty("card", "plain")
        self._causes_column = QVBoxLayout(card)
        for part in (self._causes, self._blind, self._learnt):
            self._causes_column.addWidget(part)
        self._causes_column.addWidget(self._often, 0, Qt.AlignmentFlag.AlignLeft)
        self._causes_column.addWidget(self._reliability)
        self._causes_column.setStretch(0, 1)
        return card

    def _plot_card(self) -> QFrame:
        card = QFrame()
        card.setProperty("card", "plain")
        self._plot_column = QVBoxLayout(card)
        self._plot_column.addWidget(self._plot)
        return card

    def _arrange(self) -> None:
        """Put the parts side by side, or above each other where the window is narrow for its text."""
        wide = self.width() >= self._style.px(_SIDE_BY_SIDE_UNITS)
        self._head.setDirection(QBoxLayout.Direction.LeftToRight if wide else QBoxLayout.Direction.TopToBottom)
        if wide:
            places = ((0, 0, 2, 1), (0, 1, 1, 1), (1, 1, 1, 1), (2, 0, 1, 2))
        else:
            places = ((0, 0, 1, 2), (1, 0, 1, 2), (2, 0, 1, 2), (3, 0, 1, 2))
        parts = (self._causes_part, self._plot_part, self._changes_part, self._steps_part)
        for part, (row, column, rows, columns) in zip(parts, places, strict=True):
            self._grid.removeWidget(part)
            self._grid.addWidget(part, row, column, rows, columns)
        self._grid.setColumnStretch(0, 4 if wide else 1)
        self._grid.setColumnStretch(1, 9 if wide else 0)
        for row in range(4):
            self._grid.setRowStretch(row, 1 if row == (0 if wide else 1) else 0)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        px = style.px
        self._whole.setContentsMargins(px(14), px(8), px(14), px(6))
        self._whole.setSpacing(px(4))
        self._top.setSpacing(px(10))
        self._head.setSpacing(px(4))
        self._grid.setSpacing(px(14))
        self._causes_column.setContentsMargins(px(16), px(14), px(16), px(12))
        self._causes_column.setSpacing(px(10))
        self._plot_column.setContentsMargins(px(12), px(8), px(12), px(8))
        for part in (self._causes, self._plot, self._changes, self._steps, self._reliability):
            part.set_style(style)
        self._causes_head.setMinimumHeight(self._beside.sizeHint().height())  # level with the head beside it
        self._arrange()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Put the parts where there is room for them."""
        super().resizeEvent(event)
        self._arrange()

    def wait(self) -> None:
        """Show that a review is worked out."""
        self.review = self._own = None
        self.back.setText(say(TO_RACK))
        self._say(say("Why did it cloud?"), "", say(WORKING), Tone.MUTED)

    def show_progress(self, share: float) -> None:
        """Show how much of the work is done, 0-1, while nothing else is shown."""
        if self.review is None:
            put(self._headline, f"{say(WORKING)} {100.0 * share:.0f} %" if share < 1.0 else say(WORKING))

    def refuse(self, sentence: str) -> None:
        """Show why there is no review."""
        self.review = None
        self._say(say("Why did it cloud?"), "", sentence, Tone.ACT)

    def _say(self, title: str, subtitle: str, headline: str, tone: Tone) -> None:
        has_review = self.review is not None
        self._body.setVisible(has_review)
        for action in (self._pdf, self._csv):
            action.setVisible(has_review)
        put(self._title, title)
        put(self._subtitle, subtitle, hide_empty=True)
        put(self._headline, headline, tone)

    def go_back(self) -> None:
        """Go from a made-up coat to hers, and from there to the rack."""
        if self._own is None:
            self.left.emit()
        else:
            review, now_ms = self._own
            self.show_review(review, now_ms)

    def show_example(self, review: Review) -> None:
        """Show the review of a made-up coat in place of hers."""
        own = self._own
        if own is None and self.review is not None:
            own = self.review, self._now_ms
        self.show_review(review, review.seen_ms or review.laid_ms)
        self._own = own
        if own is not None:
            self.back.setText(say(TO_OWN))
            self.back.setAccessibleName(say(TO_OWN))
        put(self._title, say("Made up: {title}", title=self._title.text()))
        put(self._learnt, say(EXAMPLE_WORDS))
        for part in (self._beside, self._often, self._pdf, self._csv):
            part.hide()

    def show_reliability(self, reliability: Reliability) -> None:
        """Show how often each chance came true."""
        put(self._learnt, reliability.sentence)
        self._reliability.show_reliability(reliability)
        self._reliability.setVisible(bool(reliability.bins))

    def _turn(self) -> None:
        """Show her other coats beside this one, or this one alone again."""
        if self._beside.text() == say(BESIDE):
            self._beside.setEnabled(False)
            self.others_asked.emit()
        elif self.review is not None:
            self._show_plot(picture_of(self.review), say(BESIDE))

    def show_others(self, coats: tuple[OtherCoat, ...]) -> None:
        """Show a coat, the first, beside her others."""
        if len(coats) > 1:
            self._show_plot(beside_of(coats), say(ALONE))
        else:
            put(self._learnt, say(NO_OTHERS))
            self._beside.setEnabled(True)

    def _show_plot(self, picture: Picture, turn: str) -> None:
        self._plot.show_picture(picture)
        self._beside.setText(turn)
        self._beside.setAccessibleName(turn)
        self._beside.setEnabled(True)

    def show_review(self, review: Review, now_ms: int) -> None:
        """Show `review`, its times seen from `now_ms`, UTC ms."""
        self.review, self._now_ms, self._own = review, now_ms, None
        self.back.setText(say(TO_RACK))
        self.back.setAccessibleName(say(TO_RACK))
        self._reliability.hide()
        for part in (self._beside, self._often):
            part.show()
        words = review_words(review, now_ms)
        self.setAccessibleName(words.title)
        self._say(words.title, words.subtitle, words.headline, Tone.INK)
        self._causes.show_causes(words.causes)
        self._show_plot(picture_of(review), say(BESIDE))
        self._changes.show_changes(words.changes)
        self._steps.show_steps(words.steps, words.cautions)
        put(self._blind, "\n".join(words.blind), hide_empty=True)
        put(self._learnt, words.learnt)
        self._scroll.verticalScrollBar().setValue(0)
