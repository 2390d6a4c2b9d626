"""The row above the room history: its title, the spans one can choose, and the way back to now."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QWidget

from studiowatch.speech.words import mark, say
from studiowatch.ui.models.history_view import Span, View
from studiowatch.ui.theme import Theme
from studiowatch.ui.widgets.history_axis import scaled_font, strong_font

TITLE_SCALE = 1.25
NOW_SPACE_PX = 8
_SHOWS = {
    Span.EIGHT_HOURS: mark("Show the last 8 h"),
    Span.DAY: mark("Show the last day"),
    Span.WEEK: mark("Show the last week"),
    Span.MONTH: mark("Show the last month"),
    Span.ALL: mark("Show the whole log"),
}


class SpanChooser(QWidget):
    """Buttons for the spans; none is down once she has zoomed or dragged away from a span."""

    span_chosen = Signal(str)
    now_asked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.title = QLabel(say("Room history"))
        self.title.setProperty("role", "column")
        self.now_button = QPushButton(say("back to now"))
        self.now_button.setObjectName("now")
        self.now_button.setAccessibleDescription(say("Follow the present again (Home)"))
        self.now_button.clicked.connect(self.now_asked)
        self.buttons = {span: self._button(span) for span in Span}
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(2)
        row.addWidget(self.title)
        row.addStretch(1)
        row.addWidget(self.now_button)
        row.addSpacing(NOW_SPACE_PX)
        for button in self.buttons.values():
            row.addWidget(button)
        self._size_title()

    def show_view(self, view: View) -> None:
        """Show which span `view` is, and the way back if it does not follow now."""
        for span, button in self.buttons.items():
            button.setChecked(span is view.span)
        self.now_button.setVisible(not view.following)

    def set_theme(self, theme: Theme) -> None:
        """Take on the colours of `theme`."""
        self.ensurePolished()  # a style sheet replaced before that does not reach the children
        self.setStyleSheet(f"""
            QLabel {{ color: {theme.ink}; }}
            QPushButton {{
                color: {theme.muted}; background: transparent; border: 1px solid transparent; border-radius: 4px;
                padding: 3px 8px;
            }}
            QPushButton:hover {{ color: {theme.link}; }}
            QPushButton:checked {{ color: {theme.ink}; background: {theme.card}; border-color: {theme.edge}; }}
            QPushButton#now {{ color: {theme.link}; background: {theme.card}; border-color: {theme.link}; }}
            QPushButton#now:hover {{ background: {theme.ground}; }}
            QPushButton:focus {{ border-color: {theme.link}; }}
        """)

    def changeEvent(self, event: QEvent) -> None:
        """Keep the title a little larger than the text."""
        super().changeEvent(event)
        if event.type() is QEvent.Type.FontChange:
            self._size_title()

    def _size_title(self) -> None:
        self.title.setFont(strong_font(scaled_font(self.font(), TITLE_SCALE)))

    def _button(self, span: Span) -> QPushButton:
        button = QPushButton(say(span.value))
        button.setCheckable(True)
        button.setAccessibleName(say(_SHOWS[span]))
        button.clicked.connect(lambda: self.span_chosen.emit(span.value))
        return button
