"""The room from now on, under her hand."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QCheckBox, QFrame, QVBoxLayout

from studiowatch.service.snapshot import RoomView
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.ui.models.what_if import AIR_WORDS, HOURS, AirWish, Wish
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.held_slider import HeldSlider
from studiowatch.ui.widgets.one_of import OneOf
from studiowatch.ui.widgets.text import button, label

TEMPERATURES_C, HUMIDITIES_PCT = (10.0, 30.0, 0.5), (30.0, 90.0, 1.0)  # from, to, step


class WhatIfHand(QFrame):
    """Holds what she would do; `moved` tells of any change."""

    moved = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setProperty("card", "plain")
        self.setAccessibleName(say("The room from now on"))
        self.temperature = HeldSlider(
            say("Temperature kept at"),
            TEMPERATURES_C,
            words=lambda value: chosen().temperature(value),
            hint=say("Vapour stays: warmer air is drier air, unless its humidity is kept too"),
        )
        self.humidity = HeldSlider(
            say("Humidity kept at"),
            HUMIDITIES_PCT,
            words=lambda value: f"{chosen().number(value)} %",
            hint=say("As a dehumidifier or a humidifier would"),
        )
        self.air = OneOf(say("Air"), {wish: say(words) for wish, words in AIR_WORDS.items()}, AirWish.AS_IT_COMES)
        self.hours = OneOf(say("For how long"), {hours: say(words) for hours, words in HOURS.items()}, None)
        self.cover = QCheckBox(say("A mesh cover over every coat"))
        self.cover.setAccessibleName(self.cover.text())
        self.reset = button(say("The room as it comes"), "link", say("Hold nothing any more"))
        self._column = QVBoxLayout(self)
        self._column.addWidget(label("column", text=say("The room from now on")))
        for part in (self.temperature, self.humidity, self.air, self.cover, self.hours):
            self._column.addWidget(part)
        self._column.addWidget(self.reset, 0, Qt.AlignmentFlag.AlignLeft)
        for changed in (self.temperature.moved, self.humidity.moved, self.air.changed, self.hours.changed):
            changed.connect(self.moved)
        self.cover.toggled.connect(self.moved)
        self.reset.clicked.connect(self.let_go)

    @property
    def wish(self) -> Wish:
        """What she would do."""
        return Wish(
            temperature_C=self.temperature.value,
            humidity_pct=self.humidity.value,
            air=self.air.value,
            cover=self.cover.isChecked(),
            hours=self.hours.value,
        )

    def let_go(self) -> None:
        """Hold nothing any more."""
        self.temperature.let_go()
        self.humidity.let_go()
        self.cover.setChecked(False)
        self.air.choose(AirWish.AS_IT_COMES)
        self.hours.choose(None)

    def rest_at(self, room: RoomView) -> None:
        """Have what is not held stand where the room is."""
        for slider, value in ((self.temperature, room.temperature_C), (self.humidity, room.humidity_pct)):
            if value is not None:
                slider.rest_at(value)

    def speak(self) -> None:
        """Say the figures in the units that hold now."""
        self.temperature.speak()
        self.humidity.speak()

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        px = style.px
        self._column.setContentsMargins(px(16), px(10), px(16), px(10))
        self._column.setSpacing(px(10))
        for part in (self.temperature, self.humidity, self.air, self.hours):
            part.set_style(style)
