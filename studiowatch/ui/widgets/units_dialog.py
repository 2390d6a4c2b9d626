"""Units: what temperatures and air speeds are shown and said in, each by itself or all at once."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QComboBox, QDialog, QGridLayout, QHBoxLayout, QVBoxLayout, QWidget

from studiowatch.studio.units import METRIC, US, Degrees, Numbers, Speed, Units
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.text import button, label

TITLE = "Units"
RULE = (
    "For the room, its history, the warnings and the room check; everything else stays in °C and m/s, with a point. "
    "A reading may be typed in either unit, as “70 F” or “21,5 C”."
)


class UnitsDialog(QDialog):
    """The form; `chosen` tells that she took what it says."""

    chosen = Signal()

    def __init__(self, units: Units, style: Style, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(TITLE)
        self.setAccessibleName(TITLE)
        self.finished.connect(self.deleteLater)
        self.degrees_field, self.speed_field, self.numbers_field = QComboBox(), QComboBox(), QComboBox()
        self.degrees_field.addItems([unit.value for unit in Degrees])
        self.speed_field.addItems([unit.value for unit in Speed])
        for numbers in Numbers:
            self.numbers_field.addItem(Units(numbers=numbers).number(20.5, 1), numbers.value)
        self._lay_out(style)
        self.numbers_field.setCurrentIndex(list(Numbers).index(units.numbers))
        self.show_units(units)
        width_px = min(style.px(470), self.screen().availableSize().width() - 40)
        self.resize(width_px, max(self.sizeHint().height(), self.heightForWidth(width_px)))

    def _lay_out(self, style: Style) -> None:
        px = style.px
        whole = QVBoxLayout(self)
        whole.setContentsMargins(px(20), px(14), px(20), px(14))
        whole.setSpacing(px(10))
        whole.addWidget(label("headline", text=TITLE))
        whole.addWidget(label("body", Tone.MUTED, RULE, wrap=True))
        whole.addLayout(self._all_at_once(px(8)))
        whole.addLayout(self._each(style))
        whole.addStretch(1)
        whole.addLayout(self._foot(px(8)))

    def _all_at_once(self, spacing: int) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(spacing)
        for words, units in (("All &metric", METRIC), ("All &US", US)):
            choice = button(words)
            choice.setAutoDefault(False)
            choice.clicked.connect(partial(self.show_units, units))
            row.addWidget(choice)
        row.addStretch(1)
        return row

    def _each(self, style: Style) -> QGridLayout:
        grid = QGridLayout()
        grid.setHorizontalSpacing(style.px(10))
        grid.setVerticalSpacing(style.px(8))
        grid.setColumnMinimumWidth(0, style.px(110))
        grid.setColumnStretch(2, 1)
        named = {"&Temperature": self.degrees_field, "&Air speed": self.speed_field, "&Numbers": self.numbers_field}
        for row, (name, field) in enumerate(named.items()):
            caption = label("body", Tone.INK, name)
            caption.setBuddy(field)
            field.setAccessibleName(name.replace("&", ""))
            grid.addWidget(caption, row, 0)
            grid.addWidget(field, row, 1)
        return grid

    def _foot(self, spacing: int) -> QHBoxLayout:
        foot = QHBoxLayout()
        foot.setSpacing(spacing)
        cancel, take = button("Cancel"), button("Take it", "primary")
        cancel.clicked.connect(self.reject)
        take.clicked.connect(self._take)
        take.setDefault(True)
        foot.addWidget(cancel)
        foot.addStretch(1)
        foot.addWidget(take)
        return foot

    def show_units(self, units: Units, *_: bool) -> None:
        """Set every unit; how numbers are written is another matter."""
        self.degrees_field.setCurrentText(units.degrees.value)
        self.speed_field.setCurrentText(units.speed.value)

    @property
    def units(self) -> Units:
        """Return what the form says."""
        return Units(
            numbers=Numbers(self.numbers_field.currentData()),
            degrees=Degrees(self.degrees_field.currentText()),
            speed=Speed(self.speed_field.currentText()),
        )

    @property
    def words(self) -> str:
        """Return what was chosen, in words."""
        return f"Shown in {self.units.degrees.value} and {self.units.speed.value} from now on."

    def _take(self) -> None:
        self.chosen.emit()
        self.accept()
