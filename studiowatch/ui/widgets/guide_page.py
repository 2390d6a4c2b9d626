"""A guide in steps: the list of steps, the step itself with its cautions, and the way onward and back."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from studiowatch.speech.words import say
from studiowatch.studio.words import Level
from studiowatch.ui.models.guide import GuideStep
from studiowatch.ui.models.tones import LEVEL_TONES, Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.form_lines import CautionList
from studiowatch.ui.widgets.marks import LevelMark
from studiowatch.ui.widgets.text import button, label, put, set_property

_LIST_UNITS = 720  # narrower than this, only the step's number is shown


class GuidePage(QWidget):
    """The frame of a guide; its owner fills `content` and says how a step stands.

    `onward_asked`, `back_asked` and `anew_asked` tell what she pressed.
    """

    onward_asked = Signal()
    back_asked = Signal()
    anew_asked = Signal()

    def __init__(self, title: str, steps: Sequence[GuideStep]) -> None:
        super().__init__()
        self.setAccessibleName(title)
        self.setObjectName("inside")
        self._steps = tuple(steps)
        self._style = Style()
        self._shown = -1
        self._names = [label("body", Tone.MUTED, wrap=True) for _ in steps]
        self._number = label("small", Tone.MUTED)
        self.heading = label("dialog", wrap=True)
        self._words = label("body", wrap=True)
        self._cautions = CautionList(self._style)
        self._mark, self._state = LevelMark(18), label("strong", wrap=True)
        self._back, self._anew = button(say("Back")), button(say("Begin anew"), "link")
        self.onward = button(say("Next"), "primary")
        self.onward.setDefault(True)
        self._back.clicked.connect(self.back_asked)
        self._anew.clicked.connect(self.anew_asked)
        self.onward.clicked.connect(self.onward_asked)
        self.content = QVBoxLayout()
        self._compose(title)
        self.say_state("", Level.CALM)

    def _compose(self, title: str) -> None:
        self._list = QFrame()
        self._list.setAccessibleName(say("Steps"))
        self._steps_below = QVBoxLayout(self._list)
        self._steps_below.setContentsMargins(0, 0, 0, 0)
        self._steps_below.addWidget(label("title", text=title, wrap=True))
        for name in self._names:
            self._steps_below.addWidget(name)
        self._steps_below.addStretch(1)
        self._whole = QHBoxLayout(self)
        self._whole.setContentsMargins(0, 0, 0, 0)
        self._whole.addWidget(self._list, 1)
        self._whole.addWidget(self._step_card(), 4)

    def _step_card(self) -> QFrame:
        card = QFrame()
        card.setProperty("card", "plain")
        card.setAccessibleName(say("This step"))
        state = QHBoxLayout()
        state.addWidget(self._mark, 0, Qt.AlignmentFlag.AlignTop)
        state.addWidget(self._state, 1)
        foot = QHBoxLayout()
        foot.addWidget(self._back)
        foot.addWidget(self._anew)
        foot.addStretch(1)
        foot.addWidget(self.onward)
        self._card = QVBoxLayout(card)
        self._card.addWidget(self._step_inside(), 1)
        self._card.addLayout(state)
        self._card.addLayout(foot)
        return card

    def _step_inside(self) -> QScrollArea:
        self._caution_place = QVBoxLayout()
        self._caution_place.addWidget(self._cautions)
        inside = QWidget()
        inside.setObjectName("inside")
        self._inside = QVBoxLayout(inside)
        self._inside.addWidget(self._number)
        self._inside.addWidget(self.heading)
        self._inside.addWidget(self._words)
        self._inside.addLayout(self._caution_place)
        self._inside.addLayout(self.content, 1)
        self._scroll = QScrollArea()
        self._scroll.setWidgetResizable(True)
        self._scroll.setFrameShape(QFrame.Shape.NoFrame)
        self._scroll.setFocusPolicy(Qt.FocusPolicy.TabFocus)  # so that the arrow keys scroll it
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroll.setWidget(inside)
        return self._scroll

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        px = style.px
        self._mark.set_style(style)
        self._whole.setSpacing(px(18))
        self._card.setContentsMargins(px(20), px(16), px(20), px(16))
        self._card.setSpacing(px(12))
        self._inside.setContentsMargins(0, 0, px(10), 0)
        self._inside.setSpacing(px(10))
        self._list.setMinimumWidth(px(170))
        self._steps_below.setSpacing(px(9))
        old, self._cautions = self._cautions, CautionList(style)
        self._caution_place.replaceWidget(old, self._cautions)
        self._cautions.set_cautions(old.cautions)
        old.deleteLater()
        self._place_list()

    def show_step(self, index: int) -> None:
        """Show step `index`; a new one begins at its top, with the keyboard on the way onward."""
        step = self._steps[index]
        is_new, self._shown = index != self._shown, index
        for number, (name, one) in enumerate(zip(self._names, self._steps, strict=True)):
            mark = "✓" if number < index else f"{number + 1}."
            put(
                name,
                f"{mark}  {one.name}",
                Tone.GOOD if number < index else Tone.INK if number == index else Tone.MUTED,
            )
            set_property(name, "role", "strong" if number == index else "body")
        put(self._number, say("Step {number} of {count}", number=index + 1, count=len(self._steps)))
        put(self.heading, step.title)
        self.say_words("\n\n".join(step.words))
        self._scroll.setAccessibleName(step.title)
        self._cautions.set_cautions(step.cautions)
        self.onward.setText(step.onward)
        self.onward.setAccessibleName(step.onward)
        self._back.setEnabled(index > 0)
        if is_new:
            self._scroll.verticalScrollBar().setValue(0)

    def say_words(self, words: str) -> None:
        """Show `words` below the heading instead of the step's own."""
        put(self._words, words)

    def say_state(self, words: str, level: Level = Level.CALM, *, good: bool = False) -> None:
        """Show above the buttons how the step stands, or nothing."""
        self._mark.setVisible(bool(words))
        self._mark.set_level(level, good=good)
        put(self._state, words, Tone.GOOD if good else LEVEL_TONES[level], hide_empty=True)
        self._state.setAccessibleName(words)

    def allow(self, *, onward: bool, anew: bool) -> None:
        """Allow to go onward, and to begin anew."""
        if not onward and self.onward.hasFocus():
            self._scroll.setFocus()  # else the keyboard would leave the guide
        self.onward.setEnabled(onward)
        self._anew.setVisible(anew)

    @property
    def state_words(self) -> str:
        """Return how the step is said to stand."""
        return self._state.text()

    @property
    def cautions(self) -> tuple[str, ...]:
        """Return the cautions that are shown."""
        return self._cautions.cautions

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Show the list of steps only where there is room for it."""
        super().resizeEvent(event)
        self._place_list()

    def _place_list(self) -> None:
        self._list.setVisible(self.width() >= self._style.px(_LIST_UNITS))
