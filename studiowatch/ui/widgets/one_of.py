"""A row of buttons of which one is on."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Generic, TypeVar

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QButtonGroup, QGridLayout, QWidget

from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.text import button, label

Value = TypeVar("Value")
_PER_ROW = 5


class OneOf(QWidget, Generic[Value]):
    """Offers values by their words, under a name; `changed` tells that another is on."""

    changed = Signal()

    def __init__(self, name: str, words: Mapping[Value, str], first: Value) -> None:
        super().__init__()
        self.setObjectName("inside")
        self.setAccessibleName(name)
        self._values = list(words)
        self.group = QButtonGroup(self)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.addWidget(label("body", Tone.MUTED, name), 0, 0, 1, _PER_ROW)
        for number, (value, text) in enumerate(words.items()):
            one = button(text, "span")
            one.setAccessibleName(f"{name}: {text}")
            one.setCheckable(True)
            one.setChecked(value == first)
            self.group.addButton(one, number)
            self._grid.addWidget(one, 1, number)
        self._grid.setColumnStretch(_PER_ROW, 1)
        self.group.idToggled.connect(lambda _number, on: self.changed.emit() if on else None)

    @property
    def value(self) -> Value:
        """The one that is on."""
        return self._values[self.group.checkedId()]

    def choose(self, value: Value) -> None:
        """Have `value` on."""
        self.group.button(self._values.index(value)).setChecked(True)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._grid.setSpacing(style.px(2))
