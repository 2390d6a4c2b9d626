"""Two small forms of the finishing plan: her working hours, and the name of a recipe."""

from __future__ import annotations

from PySide6.QtWidgets import QLineEdit, QWidget

from studiowatch.service.commands import Command, SaveRecipe, SetWorkingHours
from studiowatch.studio.recipes import NAME_MOST
from studiowatch.studio.working_hours import DAYS, WorkingHours, hours_text
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.forms import FormError
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.form_lines import add_primary
from studiowatch.ui.widgets.text import label

HOW_TO = 'From and until, as 09:00-18:00, or "off". Coats are planned only where they fit in, with their preparation.'


class HoursDialog(FormDialog):
    """The hours of each day of the week."""

    def __init__(self, hours: WorkingHours, courier: Courier, style: Style, parent: QWidget) -> None:
        super().__init__("Working hours", courier, style, parent)
        self._before = hours
        self.days = {day: QLineEdit(hours_text(of_day)) for day, of_day in zip(DAYS, hours.days, strict=True)}
        self.body.addWidget(label("body", Tone.MUTED, HOW_TO, wrap=True))
        for day, line in self.days.items():
            self.field(day.capitalize(), line)
        self.body.addStretch(1)
        add_primary(self, "Set the hours")
        self.fit(420, 640)

    def read(self) -> SetWorkingHours:
        """Return the command to set the hours, or raise FormError."""
        hours = WorkingHours()
        for day, line in self.days.items():
            try:
                hours = hours.with_day(day, line.text())
            except ValueError as fault:
                raise FormError(day, f"{day.capitalize()}: {fault}") from fault
        return SetWorkingHours(hours=hours)

    def words_for(self, command: Command) -> str:
        """Return what was recorded."""
        del command
        return "Your working hours are set; the plan is made anew."

    def field_of(self, name: str) -> QWidget | None:
        """Return the line of a day."""
        return self.days.get(name)

    def is_filled(self) -> bool:
        """Return whether a day was changed."""
        told = [line.text() for line in self.days.values()]
        return told != [hours_text(of_day) for of_day in self._before.days]


class RecipeDialog(FormDialog):
    """The name under which coats to come are kept."""

    def __init__(self, sheets: tuple[str, ...], courier: Courier, style: Style, parent: QWidget) -> None:
        super().__init__("Keep as a recipe", courier, style, parent)
        self._sheets = sheets
        self.name_field = QLineEdit()
        self.name_field.setMaxLength(NAME_MOST)
        words = f"{len(sheets)} coats to come, lowest first. A name that is there already gets these coats instead."
        self.body.addWidget(label("body", Tone.MUTED, words, wrap=True))
        self.field("Name", self.name_field)
        self.body.addStretch(1)
        add_primary(self, "Keep the recipe")
        self.fit(440, 260)
        self.name_field.setFocus()

    def read(self) -> SaveRecipe:
        """Return the command to keep the recipe, or raise FormError."""
        name = " ".join(self.name_field.text().split())
        if not name:
            raise FormError("name", "The recipe has no name; type one, such as Panels, satin.")
        return SaveRecipe(name=name, sheets=self._sheets)

    def words_for(self, command: Command) -> str:
        """Return what was recorded."""
        return f"Kept as the recipe {command.name}." if isinstance(command, SaveRecipe) else ""

    def field_of(self, name: str) -> QWidget | None:
        """Return the line of the name."""
        return self.name_field if name == "name" else None

    def is_filled(self) -> bool:
        """Return whether a name was typed."""
        return bool(self.name_field.text().strip())
