"""The first run: three calm steps, each with its keys, each of which may be left out."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import say
from studiowatch.ui.models.first_steps import DONE, STEPS, state_words
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.text import button, label, put

WIDE_UNITS = 640


class FirstStepsPage(QScrollArea):
    """Shows one step. `asked` carries the deed that she chose, `stepped` the step that is next.

    `stepped` with `DONE` says that the steps are over, finished or skipped. `left` asks for the rack.
    """

    asked = Signal(str)
    stepped = Signal(int)
    left = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(say("First steps"))
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.step = 0
        self._style = Style()
        self._snapshot: Snapshot | None = None
        self._count = label("body", Tone.MUTED)
        self.heading = label("headline", wrap=True)
        self._words: QLabel = label("lead", wrap=True)
        self._state = label("body", Tone.LINK, wrap=True)
        self.offers: list[QPushButton] = []
        self._offers = QVBoxLayout()
        self.back, self.next = button(say("&Back")), button("", "big")
        self.skip = button(say("&Skip all of it"), "link", say("They are kept in the View menu"))
        self._compose()
        self.back.clicked.connect(lambda: self._go(self.step - 1))
        self.next.clicked.connect(lambda: self._go(self.step + 1))
        self.skip.clicked.connect(lambda: self._go(DONE))
        QShortcut(QKeySequence("Escape"), self, self.left.emit, context=Qt.ShortcutContext.WidgetWithChildrenShortcut)
        self.show_step(0)

    def _compose(self) -> None:
        inside = QWidget()
        inside.setObjectName("page")
        inside.setAccessibleName(say("First steps"))
        self._sheet = QWidget()
        self._sheet.setObjectName("inside")
        self._sheet.setAccessibleName(say("This step"))
        whole = QHBoxLayout(inside)
        whole.addStretch(1)
        whole.addWidget(self._sheet, 8)
        whole.addStretch(1)
        self._column = QVBoxLayout(self._sheet)
        self._column.addStretch(1)
        for part in (self._count, self.heading, self._words, self._state):
            self._column.addWidget(part)
        self._column.addLayout(self._offers)
        foot = QHBoxLayout()
        foot.addWidget(self.back)
        foot.addStretch(1)
        foot.addWidget(self.skip)
        foot.addWidget(self.next)
        self._column.addLayout(foot)
        self._column.addStretch(2)
        self.setWidget(inside)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        self._sheet.setMaximumWidth(style.px(WIDE_UNITS))
        self._column.setSpacing(style.px(14))
        self._offers.setSpacing(style.px(10))

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show how the board does."""
        self._snapshot = snapshot
        put(self._state, state_words(self.step, snapshot), hide_empty=True)

    def show_step(self, step: int) -> None:
        """Show step `step`, 0 to 2."""
        self.step = step
        shown = STEPS[step]
        put(self._count, say("Step {number} of {count}", number=step + 1, count=len(STEPS)))
        put(self.heading, shown.heading)
        put(self._words, shown.words)
        for old in self.offers:
            self._offers.removeWidget(old)
            old.hide()
            old.deleteLater()
        self.offers = [button(offer.words, "answer") for offer in shown.offers]
        for made, offer in zip(self.offers, shown.offers, strict=True):
            made.setAccessibleName(offer.words.replace("&", ""))
            made.clicked.connect(partial(self._ask, offer.deed))
            self._offers.addWidget(made)
        self.setTabOrder(self.offers[-1], self.back)
        for earlier, later in zip(self.offers, self.offers[1:], strict=False):
            self.setTabOrder(earlier, later)
        self.back.setVisible(step > 0)
        is_last = step == len(STEPS) - 1
        self.next.setText(say("&Finish") if is_last else say("Ne&xt"))
        for made in (self.next, self.skip, self.back):
            made.setAccessibleName(made.text().replace("&", ""))
        put(self._state, "" if self._snapshot is None else state_words(step, self._snapshot), hide_empty=True)

    def begin(self, step: int) -> None:
        """Show step `step` with the keyboard on its way on."""
        self.show_step(step)
        self.next.setFocus()

    def _ask(self, deed: str, *_clicked: object) -> None:
        self.asked.emit(deed)

    def _go(self, step: int) -> None:
        if step < DONE:
            self.begin(step)
        self.stepped.emit(step)
