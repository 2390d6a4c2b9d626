"""A coat that is on already: when the brush went down, by one press or by the clock."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from studiowatch.speech.words import mark, say
from studiowatch.ui.models.times import MINUTE_MS
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.text import button, label
from studiowatch.ui.widgets.time_field import TimeField

AGO = ((mark("10 min ago"), 10), (mark("30 min ago"), 30), (mark("1 h ago"), 60))
LATER_WORDS = mark("The amount may stay empty: it can be put right later.")


class WhenFields(QWidget):
    """Three times to press, and a picker."""

    def __init__(self, form: FormDialog, now_ms: Callable[[], int]) -> None:
        super().__init__()
        self.setObjectName("inside")
        self.setAccessibleName(say("When it went on"))
        self._now_ms = now_ms
        self.picker = TimeField(now_ms())
        self.picker.setMinimumWidth(form.dress.px(210))
        self.ago = {}
        row = QHBoxLayout()
        row.setSpacing(form.dress.px(10))
        for words, minutes in AGO:
            made = button(say(words), "answer")
            made.clicked.connect(lambda _on=False, minutes=minutes: self.set_ago(minutes))
            row.addWidget(made)
            self.ago[minutes] = made
        row.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(form.dress.px(8))
        column.addLayout(row)
        form.field(say("When the brush went down"), self.picker, column)
        column.addWidget(label("body", Tone.MUTED, say(LATER_WORDS), wrap=True))

    def set_ago(self, minutes: int) -> None:
        """Set the picker so many minutes before now."""
        self.picker.show_time(self._now_ms() - minutes * MINUTE_MS)

    @property
    def time_ms(self) -> int:
        """The time that is picked, UTC ms."""
        return self.picker.time_ms
