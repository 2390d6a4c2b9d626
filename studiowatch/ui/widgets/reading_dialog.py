"""Type a reading: what any hygrometer says, where no board measures the room."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget

from studiowatch.service.commands import Command, TypeReading
from studiowatch.speech.units import Degrees
from studiowatch.speech.words import say
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.reading_form import (
    AIR_ANSWERS,
    HOW_TO_FEEL,
    HOW_TO_READ,
    read_reading,
    reading_doubt,
    reading_words,
)
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.drop_down import DropDown
from studiowatch.ui.widgets.form_lines import add_primary
from studiowatch.ui.widgets.text import label
from studiowatch.ui.widgets.time_field import TimeField


class ReadingDialog(FormDialog):
    """The form for a reading of now, or of earlier today."""

    def __init__(
        self, *, degrees: Degrees, now_ms: Callable[[], int], courier: Courier, style: Style, parent: QWidget
    ) -> None:
        super().__init__(say("Type a reading"), courier, style, parent)
        self._now_ms = now_ms
        self.temperature_field, self.humidity_field = QLineEdit(), QLineEdit()
        self.degrees_field, self.air_field = DropDown(), DropDown()
        self.degrees_field.addItems([unit.value for unit in Degrees])
        self.degrees_field.setCurrentText(degrees.value)
        self.air_field.addItems([say(answer) for answer in AIR_ANSWERS])
        self.time_field = TimeField(now_ms())
        self._lay_out()
        add_primary(self, say("Take the reading"))
        self.fit(600, 440)
        self.temperature_field.setFocus()

    def _lay_out(self) -> None:
        self.body.addWidget(label("body", Tone.MUTED, say(HOW_TO_READ), wrap=True))
        room = self.row()
        self.field(say("Temperature"), self.temperature_field, room, 2)
        self.field(say("Unit"), self.degrees_field, room, 1)
        self.field(say("Relative humidity, %"), self.humidity_field, room, 2)
        self.body.addWidget(label("body", Tone.MUTED, say(HOW_TO_FEEL), wrap=True))
        rest = self.row()
        self.field(say("Air at the pieces"), self.air_field, rest, 1)
        self.field(say("Read at"), self.time_field, rest, 1)
        for holder in rest.findChildren(QVBoxLayout):
            rest.setAlignment(holder, Qt.AlignmentFlag.AlignTop)  # a list is a little lower than a time
        self.body.addStretch(1)

    @property
    def degrees(self) -> Degrees:
        """Return the unit that was chosen."""
        return Degrees(self.degrees_field.currentText())

    def read(self) -> TypeReading:
        """Return the command to take the reading, or raise FormError."""
        now_ms = self._now_ms()
        return read_reading(
            temperature=self.temperature_field.text(),
            degrees=self.degrees,
            humidity=self.humidity_field.text(),
            felt=list(AIR_ANSWERS.values())[self.air_field.currentIndex()],
            time_ms=now_ms if self.time_field.is_as_given else self.time_field.time_ms,
            now_ms=now_ms,
        )

    def doubt_of(self, command: Command) -> str:
        """Ask once more about a room that no studio is like."""
        return reading_doubt(command) if isinstance(command, TypeReading) else ""

    def words_for(self, command: Command) -> str:
        """Return what was recorded."""
        return reading_words(command, self.degrees) if isinstance(command, TypeReading) else ""

    def is_filled(self) -> bool:
        """Return whether a number was typed."""
        return bool(self.temperature_field.text().strip() or self.humidity_field.text().strip())

    def field_of(self, name: str) -> QWidget | None:
        """Return the widget of the field `name`."""
        fields: dict[str, QWidget] = {
            "temperature": self.temperature_field,
            "humidity": self.humidity_field,
            "read": self.time_field,
        }
        return fields.get(name)
