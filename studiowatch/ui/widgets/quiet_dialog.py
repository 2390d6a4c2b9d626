"""Quiet hours: the rule in words, from when to when, and what may wake her."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QComboBox, QDialog, QHBoxLayout, QVBoxLayout, QWidget

from studiowatch.speech.words import mark, say
from studiowatch.ui.models.quiet_hours import DAY_MIN, QuietHours, clock
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.drop_down import DropDown
from studiowatch.ui.widgets.take_or_cancel import take_or_cancel
from studiowatch.ui.widgets.text import label

TITLE = mark("Quiet hours")
RULE = mark(
    "In quiet hours a caution makes no sound. What must be acted on sounds once, softly, and then only shows. "
    "Everything is shown and kept as by day."
)
_HALF_HOUR_MIN = 30
WAKE_ME = mark("Also wake me for a wet coat in moving air")


class QuietDialog(QDialog):
    """The form; `chosen` tells that she took what it says."""

    chosen = Signal()

    def __init__(self, quiet: QuietHours, style: Style, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(say(TITLE))
        self.setAccessibleName(say(TITLE))
        self.finished.connect(self.deleteLater)
        self.on_field, self.wakes_field = QCheckBox(say("Keep quiet hours")), QCheckBox(say(WAKE_ME))
        self.from_field, self.to_field = _time(quiet.from_min), _time(quiet.to_min)
        self.on_field.setChecked(quiet.on)
        self.wakes_field.setChecked(quiet.wakes)
        for box in (self.on_field, self.wakes_field):
            box.setAccessibleName(box.text())
        self._lay_out(style)
        self.on_field.toggled.connect(self._enable)
        self._enable(on=quiet.on)
        self.resize(min(style.px(470), self.screen().availableSize().width() - 40), self.sizeHint().height())

    def _lay_out(self, style: Style) -> None:
        px = style.px
        whole = QVBoxLayout(self)
        whole.setContentsMargins(px(20), px(14), px(20), px(14))
        whole.setSpacing(px(10))
        whole.addWidget(label("headline", text=say(TITLE)))
        whole.addWidget(label("body", Tone.MUTED, say(RULE), wrap=True))
        whole.addWidget(self.on_field)
        times = QHBoxLayout()
        times.setSpacing(px(10))
        for name, spoken, field in (
            (say("From"), say("Quiet from"), self.from_field),
            (say("To"), say("Quiet to"), self.to_field),
        ):
            caption = label("small", Tone.MUTED, name)
            caption.setBuddy(field)
            field.setAccessibleName(spoken)
            times.addWidget(caption)
            times.addWidget(field)
        times.addStretch(1)
        whole.addLayout(times)
        whole.addWidget(self.wakes_field)
        whole.addStretch(1)
        whole.addLayout(take_or_cancel(self, self._take, px(8)))

    @property
    def quiet_hours(self) -> QuietHours:
        """Return what the form says."""
        return QuietHours(
            on=self.on_field.isChecked(),
            from_min=_minute(self.from_field),
            to_min=_minute(self.to_field),
            wakes=self.wakes_field.isChecked(),
        )

    def _take(self) -> None:
        self.chosen.emit()
        self.accept()

    def _enable(self, on: bool) -> None:  # noqa: FBT001 - as the box tells it
        for field in (self.from_field, self.to_field, self.wakes_field):
            field.setEnabled(on)


def _time(minute: int) -> QComboBox:
    """Return a list of the half hours, and of `minute` if it is none."""
    made = DropDown()
    for choice in sorted({*range(0, DAY_MIN, _HALF_HOUR_MIN), minute}):
        made.addItem(clock(choice), choice)
    made.setCurrentText(clock(minute))
    return made


def _minute(field: QComboBox) -> int:
    return int(field.currentData())
