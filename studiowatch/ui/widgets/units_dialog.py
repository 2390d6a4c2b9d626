"""Units and language: what figures are shown and said in, each by itself or all at once, and in which words."""

from __future__ import annotations

from datetime import datetime
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from studiowatch.speech.units import METRIC, US, Degrees, Hours, Length, Numbers, Speed, Thickness, Units, Volume
from studiowatch.speech.words import mark, say
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.drop_down import DropDown
from studiowatch.ui.widgets.take_or_cancel import take_or_cancel
from studiowatch.ui.widgets.text import button, label

TITLE = mark("Units and language")
RULE = mark(
    "For all that is shown, said and printed. Files and what is kept of the room stay metric, with a point. "
    "A reading may be typed in either unit, as “70 F” or “21,5 C”."
)
LATER = mark("Another language is spoken from the next start on.")
AFTERNOON = datetime(2025, 12, 13, 14, 7)  # noqa: DTZ001 - a wall clock, to show how it is written
TONGUES = {"en": "English", "de": "Deutsch"}  # each named in itself


class UnitsDialog(QDialog):
    """The form; `chosen` tells that she took what it says."""

    chosen = Signal()

    def __init__(self, units: Units, language: str, style: Style, parent: QWidget) -> None:
        super().__init__(parent)
        self._spoken = language
        self.setWindowTitle(say(TITLE))
        self.setAccessibleName(say(TITLE))
        self.finished.connect(self.deleteLater)
        self.degrees_field, self.speed_field, self.numbers_field = DropDown(), DropDown(), DropDown()
        self.length_field, self.film_field, self.volume_field = DropDown(), DropDown(), DropDown()
        self.hours_field, self.language_field = DropDown(), DropDown()
        units_of: dict[QComboBox, type[Degrees | Speed | Length | Thickness | Volume]] = {
            self.degrees_field: Degrees,
            self.speed_field: Speed,
            self.length_field: Length,
            self.film_field: Thickness,
            self.volume_field: Volume,
        }
        for field, kind in units_of.items():
            for unit in kind:
                field.addItem(unit.value, unit.value)
        for numbers in Numbers:
            self.numbers_field.addItem(Units(numbers=numbers).number(20.5, 1), numbers.value)
        for hours in Hours:
            self.hours_field.addItem(Units(hours=hours).clock(AFTERNOON), hours.value)
        self.language_field.addItem(say("As the computer"), "")
        for tongue, name in TONGUES.items():
            self.language_field.addItem(name, tongue)
        self._lay_out(style)
        _choose(self.numbers_field, units.numbers.value)
        _choose(self.language_field, language)
        self.show_units(units)
        self._fit(style)

    def _lay_out(self, style: Style) -> None:
        px = style.px
        self._inside = QWidget()
        self._inside.setObjectName("inside")
        body = QVBoxLayout(self._inside)
        body.setContentsMargins(0, 0, 0, 0)
        body.setSpacing(px(10))
        body.addWidget(label("body", Tone.MUTED, say(RULE), wrap=True))
        body.addLayout(self._all_at_once(px(8)))
        body.addLayout(self._each(style))
        body.addWidget(label("body", Tone.MUTED, say(LATER), wrap=True))
        body.addStretch(1)
        self._scroll = QScrollArea()
        self._scroll.setAccessibleName(say(TITLE))
        self._scroll.setWidgetResizable(True)
        self._scroll.setFrameShape(QFrame.Shape.NoFrame)
        self._scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroll.setWidget(self._inside)
        self._whole = QVBoxLayout(self)
        self._whole.setContentsMargins(px(20), px(14), px(20), px(14))
        self._whole.setSpacing(px(10))
        self._whole.addWidget(label("headline", text=say(TITLE)))
        self._whole.addWidget(self._scroll, 1)
        self._whole.addLayout(take_or_cancel(self, self._take, px(8)))

    def _fit(self, style: Style) -> None:
        """Take as much as the form needs, but never more than the screen has: what is left over scrolls."""
        room = self.screen().availableSize()
        width_px = min(style.px(470), room.width() - 40)
        margins = self._whole.contentsMargins()
        inside_px = self._inside.heightForWidth(width_px - margins.left() - margins.right())
        around_px = self._whole.sizeHint().height() - self._scroll.sizeHint().height()
        self.resize(width_px, min(around_px + inside_px, room.height() - 60))

    def _all_at_once(self, spacing: int) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(spacing)
        for words, units in ((say("All &metric"), METRIC), (say("All &US"), US)):
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
        named = {
            say("&Temperature"): self.degrees_field,
            say("&Air speed"): self.speed_field,
            say("&Sizes"): self.length_field,
            say("&Film"): self.film_field,
            say("&Volumes"): self.volume_field,
            say("&Clock"): self.hours_field,
            say("&Numbers"): self.numbers_field,
            say("&Language"): self.language_field,
        }
        for row, (name, field) in enumerate(named.items()):
            caption = label("body", Tone.INK, name)
            caption.setBuddy(field)
            field.setAccessibleName(name.replace("&", ""))
            grid.addWidget(caption, row, 0)
            grid.addWidget(field, row, 1)
        return grid

    def show_units(self, units: Units, *_: bool) -> None:
        """Set every unit and the clock; how numbers are written is another matter."""
        _choose(self.degrees_field, units.degrees.value)
        _choose(self.speed_field, units.speed.value)
        _choose(self.length_field, units.length.value)
        _choose(self.film_field, units.thickness.value)
        _choose(self.volume_field, units.volume.value)
        _choose(self.hours_field, units.hours.value)

    @property
    def units(self) -> Units:
        """Return what the form says."""
        return Units(
            numbers=Numbers(self.numbers_field.currentData()),
            degrees=Degrees(self.degrees_field.currentData()),
            speed=Speed(self.speed_field.currentData()),
            length=Length(self.length_field.currentData()),
            thickness=Thickness(self.film_field.currentData()),
            volume=Volume(self.volume_field.currentData()),
            hours=Hours(self.hours_field.currentData()),
        )

    @property
    def language(self) -> str:
        """Return the language that the form says, "" for the computer's."""
        return str(self.language_field.currentData())

    @property
    def words(self) -> str:
        """Return what was chosen, in words."""
        if self.language != self._spoken:
            return say("Taken. Another language is spoken when studiowatch starts again.")
        return say(
            "Shown in {degrees} and {speed} from now on.",
            degrees=self.units.degrees.value,
            speed=self.units.speed.value,
        )

    def _take(self) -> None:
        self.chosen.emit()
        self.accept()


def _choose(field: QComboBox, value: object) -> None:
    """Show the entry of a field that stands for `value`, or its first."""
    field.setCurrentIndex(max(field.findData(value), 0))
