"""When to lay the coats that come next, on the plan's page."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QLabel, QVBoxLayout

from studiowatch.speech.words import say
from studiowatch.ui.models.best_hours import BestLine
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.rows import fill_views
from studiowatch.ui.widgets.text import button, label, put, set_property


class BestHoursCard(QFrame):
    """Shows the lines; away while there are none."""

    def __init__(self) -> None:
        super().__init__()
        self.setProperty("card", "plain")
        self.setAccessibleName(say("Best hours to lay the next coats"))
        self.lines: list[QLabel] = []
        self.intend = button(
            say("What you mean to do with the room…"),
            "link",
            say("A heater, a dehumidifier, a fan: these hours then count on it"),
        )
        self._column = QVBoxLayout(self)
        self._column.addWidget(self.intend, 0, Qt.AlignmentFlag.AlignRight)
        self.hide()

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._column.setContentsMargins(style.px(16), style.px(8), style.px(16), style.px(8))
        self._column.setSpacing(style.px(2))

    def show_lines(self, lines: Sequence[BestLine]) -> None:
        """Show `lines`."""
        fill_views(self.lines, lines, self._make_line, _fill)
        self.setVisible(bool(lines))

    def _make_line(self, at: int) -> QLabel:
        made = label("body", wrap=True)
        self._column.insertWidget(at, made)
        return made


def _fill(shown: QLabel, line: BestLine) -> None:
    put(shown, line.text, line.tone)
    set_property(shown, "role", "strong" if line.strong else "body")
