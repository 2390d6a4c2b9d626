"""At the rack: what to do when, ticked off by a target that a wet hand hits."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QAbstractButton, QHBoxLayout, QVBoxLayout, QWidget

from studiowatch.studio.words import Level
from studiowatch.ui.models.notices import PromptRow
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.marks import LevelMark
from studiowatch.ui.widgets.text import label, say

TARGET_PX = 42


class TickTarget(QAbstractButton):
    """A large round target; hovering, focus and the press show what it will do."""

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
        self._tone = tone
        self.update()

    def sizeHint(self) -> QSize:
        """Return the size of the target."""
        side = self._style.px(TARGET_PX)
        return QSize(side, side)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw a ring, with a tick in it once it is pressed or about to be."""
        del event
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        theme = self._style.theme
        ring = QColor(theme.caution if self._tone is Tone.CAUTION else theme.link)
        middle, radius = QRectF(self.rect()).center(), self.width() * 0.27
        if self.hasFocus():
            painter.setPen(QPen(QColor(theme.link), 2))
            painter.drawEllipse(middle, radius * 1.6, radius * 1.6)
        painter.setPen(QPen(ring, self._style.px(2)))
        done = self.isDown() or not self.isEnabled()
        painter.setBrush(ring if done else Qt.BrushStyle.NoBrush)
        painter.drawEllipse(middle, radius, radius)
        if done or self.underMouse():
            painter.setPen(QPen(QColor(theme.card) if done else ring, self._style.px(2.4)))
            x, y, r = middle.x(), middle.y(), radius
            painter.drawPolyline(
                [QPointF(x - 0.45 * r, y), QPointF(x - 0.1 * r, y + 0.36 * r), QPointF(x + 0.5 * r, y - 0.36 * r)]
            )


class PromptRowView(QWidget):
    """One prompt."""

    ticked = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.key = ""
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
        words.addWidget(self._when)
        words.addWidget(self._care)
        words.addStretch(1)
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.addWidget(self.target, 0, Qt.AlignmentFlag.AlignTop)
        self._row.addLayout(words, 1)
        self.target.clicked.connect(self._tick)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self.target.set_style(style)
        self._care_mark.set_style(style)
        self._row.setSpacing(style.px(2))

    def set_row(self, row: PromptRow) -> None:
        """Show `row`; another prompt than before may be ticked again."""
        if row.key != self.key:
            self.target.setEnabled(True)
        self.key = row.key
        self.target.set_tone(row.tone)
        say(self._text, row.text)
        say(self._when, row.when, row.tone)
        say(self._caution, row.caution)
        self._care.setVisible(bool(row.caution))
        self._care.setAccessibleName(row.caution)
        self.target.setAccessibleName(f"Done: {row.spoken}")
        self.setAccessibleName(row.spoken)

    def _tick(self) -> None:
        self.target.setEnabled(False)
        self.ticked.emit(self.key)
