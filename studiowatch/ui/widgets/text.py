"""Labels by the part they play; a label is repolished only when its part changes."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QFrame, QLabel, QPushButton, QWidget

from studiowatch.ui.models.tones import Tone
from studiowatch.ui.plain import set_tip


def set_property(widget: QWidget, name: str, value: str) -> None:
    """Set a style property and restyle `widget`, if the value is a new one."""
    if widget.property(name) != value:
        widget.setProperty(name, value)
        restyle(widget)


def restyle(widget: QWidget) -> None:
    """Let `widget` look as the style sheet has it now: a property that its rules go by has changed."""
    widget.style().unpolish(widget)
    widget.style().polish(widget)


def label(role: str, tone: Tone = Tone.INK, text: str = "", *, wrap: bool = False) -> QLabel:
    """Return a label that plays `role`."""
    made = QLabel(text)
    made.setTextFormat(Qt.TextFormat.PlainText)
    made.setWordWrap(wrap)
    made.setProperty("role", role)
    made.setProperty("tone", str(tone))
    return made


def put(shown: QLabel, text: str, tone: Tone | None = None, *, hide_empty: bool = False) -> None:
    """Show `text` in `tone`, touching the label only where something changed."""
    if shown.text() != text:
        shown.setText(text)
    if tone is not None:
        set_property(shown, "tone", str(tone))
    if hide_empty:
        shown.setVisible(bool(text))


def button(text: str, kind: str = "plain", hint: str = "") -> QPushButton:
    """Return a push button of a kind that the style sheet knows."""
    made = QPushButton(text)
    made.setProperty("kind", kind)
    made.setAccessibleName(text)
    made.setAutoDefault(False)
    made.setCursor(Qt.CursorShape.PointingHandCursor)
    if hint:
        set_tip(made, hint)
    return made


def rule() -> QFrame:
    """Return a thin line between rows."""
    line = QFrame()
    line.setProperty("rule", "true")
    line.setFixedHeight(1)
    return line


class ElidedLabel(QLabel):
    """Lines that end in "…" where the room ends, unless they wrap; the tool tip has the whole of them."""

    def __init__(self, role: str, tone: Tone = Tone.INK) -> None:
        super().__init__()
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setProperty("role", role)
        self.setProperty("tone", str(tone))

    def setText(self, text: str) -> None:
        """Show `text`."""
        super().setText(text)
        set_tip(self, text)

    def minimumSizeHint(self) -> QSize:
        """Return a width of a few letters: the rest may go."""
        return QSize(self.fontMetrics().averageCharWidth() * 6, super().minimumSizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the text, cut to the width where it does not wrap."""
        if self.wordWrap():
            super().paintEvent(event)
            return
        painter = QPainter(self)
        painter.setPen(self.palette().color(self.foregroundRole()))
        lines = self.text().split("\n")
        cut = [self.fontMetrics().elidedText(line, Qt.TextElideMode.ElideRight, self.width()) for line in lines]
        painter.drawText(self.rect(), int(self.alignment()), "\n".join(cut))
