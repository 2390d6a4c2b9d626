"""One figure of the room that may be held: a slider, and whether it holds at all."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QSlider, QVBoxLayout, QWidget

from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.text import label, put

_PAGE_STEPS = 4


class HeldSlider(QWidget):
    """Holds a figure within `reach`, its least, its greatest and its step; moving it holds it.

    `moved` tells of any change; `words` says a figure in her units.
    """

    moved = Signal()

    def __init__(
        self, name: str, reach: tuple[float, float, float], *, words: Callable[[float], str], hint: str
    ) -> None:
        super().__init__()
        self.setObjectName("inside")
        self._low, high, self._step = reach
        self._words = words
        self.holds = QCheckBox(name)
        self.holds.setAccessibleName(name)
        self.slider = QSlider(Qt.Orientation.Horizontal)
        self.slider.setAccessibleName(name)
        self.slider.setAccessibleDescription(hint)
        self.slider.setRange(0, round((high - self._low) / self._step))
        self.slider.setPageStep(_PAGE_STEPS)
        self._figure = label("strong", Tone.MUTED)
        top = QHBoxLayout()
        top.addWidget(self.holds, 1)
        top.addWidget(self._figure)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.addLayout(top)
        self._column.addWidget(self.slider)
        self.slider.valueChanged.connect(self._slid)
        self.holds.toggled.connect(self._held)
        self._show()

    @property
    def value(self) -> float | None:
        """What it is held at, or None."""
        return self._at if self.holds.isChecked() else None

    @property
    def _at(self) -> float:
        return self._low + self._step * self.slider.value()

    def rest_at(self, value: float) -> None:
        """Stand at `value` while nothing is held: where the room is."""
        if not self.holds.isChecked() and not self.slider.isSliderDown():
            with QSignalBlocker(self.slider):
                self.slider.setValue(round((value - self._low) / self._step))
            self._show()

    def let_go(self) -> None:
        """Hold nothing."""
        self.holds.setChecked(False)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._column.setSpacing(style.px(2))

    def speak(self) -> None:
        """Say the figure in the units that hold now."""
        self._show()

    def _slid(self) -> None:
        with QSignalBlocker(self.holds):
            self.holds.setChecked(True)
        self._held()

    def _held(self) -> None:
        self._show()
        self.moved.emit()

    def _show(self) -> None:
        words = self._words(self._at)
        put(self._figure, words, Tone.INK if self.holds.isChecked() else Tone.MUTED)
        self.slider.setToolTip(words)
