"""At the rack: what to do when, ticked off by a target that a wet hand hits."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QAbstractButton, QHBoxLayout, QVBoxLayout, QWidget

from studiowatch.speech.words import mark, say
from studiowatch.studio.words import Level
from studiowatch.ui.models.empty import NO_PROMPT
from studiowatch.ui.models.prompts import Deed, PromptRow, with_ticked
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.marks import LevelMark
from studiowatch.ui.widgets.rows import RowList
from studiowatch.ui.widgets.steady import Steady
from studiowatch.ui.widgets.text import button, label, put, set_property

TARGET_PX = 42
SNOOZE_WORDS = mark("In 5 min")
HELD_MS = 3000  # a ticked row stays in its place this long, so that no other comes under the pointer: assumption
_HOVER_ALPHA = 45


class TickTarget(QAbstractButton):
    """A large round target; the check mark comes with the press, never before."""

    def __init__(self) -> None:
        super().__init__()
        self._style = Style()
        self._tone = Tone.MUTED
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        side = style.px(TARGET_PX)
        self.setFixedSize(side, side)

    def set_tone(self, tone: Tone) -> None:
        """Draw the ring in `tone`."""
        if tone is not self._tone:
            self._tone = tone
            self.update()

    def sizeHint(self) -> QSize:
        """Return the size of the target."""
        side = self._style.px(TARGET_PX)
        return QSize(side, side)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw a ring, lit under the pointer, with a check mark in it once it is pressed."""
        del event
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        theme = self._style.theme
        ring = QColor(theme.caution if self._tone is Tone.CAUTION else theme.link)
        if not self.isEnabled():
            ring = QColor(theme.muted)
        middle, radius = QRectF(self.rect()).center(), self.width() * 0.27
        if self.hasFocus():
            painter.setPen(QPen(QColor(theme.link), 2))
            painter.drawEllipse(middle, radius * 1.6, radius * 1.6)
        painter.setPen(QPen(ring, self._style.px(2)))
        done = self.isDown() or not self.isEnabled()
        lit = QColor(ring)
        lit.setAlpha(_HOVER_ALPHA if self.underMouse() else 0)
        painter.setBrush(ring if done else lit)
        painter.drawEllipse(middle, radius, radius)
        if done:
            painter.setPen(QPen(QColor(theme.card), self._style.px(2.4)))
            x, y, r = middle.x(), middle.y(), radius
            painter.drawPolyline(
                [QPointF(x - 0.45 * r, y), QPointF(x - 0.1 * r, y + 0.36 * r), QPointF(x + 0.5 * r, y - 0.36 * r)]
            )


class PromptRowView(QWidget):
    """One prompt."""

    pressed = Signal(object)
    snoozed = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self._shown: PromptRow | None = None
        self.later = button(say(SNOOZE_WORDS), "plain", say("Said again in five minutes"))
        self.later.clicked.connect(lambda: self.snoozed.emit(self._shown))
        self.target = TickTarget()
        self._text = label("strong", wrap=True)
        self._when = label("small", Tone.MUTED, wrap=True)
        self._care_mark = LevelMark(14)
        self._care_mark.set_level(Level.CAUTION)
        self._caution = label("small", Tone.MUTED, wrap=True)
        self._care = QWidget()
        self._care.setObjectName("inside")
        care = QHBoxLayout(self._care)
        care.setContentsMargins(0, 2, 0, 0)
        care.addWidget(self._care_mark, 0, Qt.AlignmentFlag.AlignTop)
        care.addWidget(self._caution, 1)
        words = QVBoxLayout()
        words.setSpacing(1)
        words.addStretch(1)
        words.addWidget(self._text)
        words.addWidget(Steady(self._when))
        words.addWidget(self._care)
        words.addWidget(self.later, 0, Qt.AlignmentFlag.AlignLeft)
        words.addStretch(1)
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.addWidget(self.target, 0, Qt.AlignmentFlag.AlignTop)
        self._row.addLayout(words, 1)
        self.target.clicked.connect(self._press)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self.target.set_style(style)
        self._care_mark.set_style(style)
        self._row.setSpacing(style.px(2))

    def set_row(self, row: PromptRow) -> None:
        """Show `row`; one that is done stands greyed, as tall as before."""
        self._shown = row
        self.target.setEnabled(not row.done)
        self.target.set_tone(row.tone)
        put(self._text, row.text, Tone.MUTED if row.done else Tone.INK)
        put(self._when, row.when, Tone.MUTED if row.done else row.tone)
        put(self._caution, row.caution)
        self._care.setVisible(bool(row.caution))
        self._care.setAccessibleName(row.caution)
        set_property(self._text, "role", "ready" if row.is_near else "strong")
        set_property(self._when, "role", "strong" if row.is_near else "small")
        self.later.setVisible(row.can_snooze and not row.done)
        self.later.setAccessibleName(f"{say(SNOOZE_WORDS)}: {row.spoken}")
        verb = say("Go on") if row.deed is Deed.PREPARE else say("Done")
        self.target.setAccessibleName(f"{verb}: {row.spoken}")
        self.setAccessibleName(row.spoken)

    def _press(self) -> None:
        self.pressed.emit(self._shown)


class PromptList(RowList[PromptRow, PromptRowView]):
    """The prompts.

    `ticked` and `snoozed` carry the keys of what was done or put off, `asked` a row whose tick asks something first.
    """

    snoozed = Signal(object)
    ticked = Signal(object)
    asked = Signal(object)

    def __init__(self) -> None:
        super().__init__(say("At the rack"), say(NO_PROMPT), self._view, PromptRowView.set_row)
        self._latest: tuple[PromptRow, ...] = ()
        self._held: set[str] = set()

    def show_rows(self, rows: Sequence[PromptRow]) -> None:
        """Show `rows`, and those just ticked in their old places."""
        self._latest = tuple(rows)
        self.set_rows(with_ticked(self._latest, self.rows, self._held))

    def hold(self, row: PromptRow) -> None:
        """Grey `row`, and keep it in its place for a moment."""
        self._held.add(row.keys[0])
        self.show_rows(self._latest)
        waiting = QTimer(self)
        waiting.setSingleShot(True)
        waiting.timeout.connect(lambda: self.release(row.keys[0]))
        waiting.timeout.connect(waiting.deleteLater)
        waiting.start(HELD_MS)

    def release(self, key: str) -> None:
        """Hold the row of the prompt of `key` no longer."""
        self._held -= {row.keys[0] for row in self.rows if key in row.keys}
        self.show_rows(self._latest)

    def _view(self) -> PromptRowView:
        view = PromptRowView()
        view.pressed.connect(self._pressed)
        view.snoozed.connect(lambda row: self.snoozed.emit(row.keys))
        return view

    def _pressed(self, row: PromptRow) -> None:
        if row.deed is Deed.TICK:
            self.hold(row)
            self.ticked.emit(row.keys)
        else:
            self.asked.emit(row)
