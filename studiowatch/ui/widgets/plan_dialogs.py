"""Two small forms of the finishing plan: her working hours, and the name of a recipe."""

from __future__ import annotations

from PySide6.QtWidgets import QLineEdit, QWidget

from studiowatch.service.commands import Command
from studiowatch.service.plan_commands import SaveRecipe, SetWorkingHours
from studiowatch.speech.dates import day_names
from studiowatch.speech.words import mark, say, say_counted
from studiowatch.studio.recipes import NAME_MOST
from studiowatch.studio.working_hours import DAYS, OFF, WorkingHours, hours_text, off_word
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.forms import FormError
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.form_lines import add_primary
from studiowatch.ui.widgets.text import label

HOW_TO = mark(
    "From and until, as 09:00-18:00, or “{off}”. Coats are planned only where they fit in, with their preparation."
)


class HoursDialog(FormDialog):
    """The hours of each day of the week."""

    def __init__(self, hours: WorkingHours, courier: Courier, style: Style, parent: QWidget) -> None:
        super().__init__(say("Working hours"), courier, style, parent)
        self._before = hours
        self.days = {day: QLineEdit(_shown(of_day)) for day, of_day in zip(DAYS, hours.days, strict=True)}
        self.body.addWidget(label("body", Tone.MUTED, say(HOW_TO, off=off_word()), wrap=True))
        for name, line in zip(day_names(), self.days.values(), strict=True):
            self.field(name, line)
        self.body.addStretch(1)
        add_primary(self, say("Set the hours"))
        self.fit(420, 640)
        self.days[DAYS[0]].setFocus()

    def read(self) -> SetWorkingHours:
        """Return the command to set the hours, or raise FormError."""
        hours = WorkingHours()
        for name, (day, line) in zip(day_names(), self.days.items(), strict=True):
            try:
                hours = hours.with_day(day, line.text())
            except ValueError as fault:
                raise FormError(day, f"{name}: {fault}") from fault
        return SetWorkingHours(hours=hours)

    def words_for(self, command: Command) -> str:
        """Return what was recorded."""
        del command
        return say("Your working hours are set; the plan is made anew.")

    def field_of(self, name: str) -> QWidget | None:
        """Return the line of a day."""
        return self.days.get(name)

    def is_filled(self) -> bool:
        """Return whether a day was changed."""
        told = [line.text() for line in self.days.values()]
        return told != [_shown(of_day) for of_day in self._before.days]


def _shown(of_day: tuple[int, int] | None) -> str:
    written = hours_text(of_day)
    return off_word() if written == OFF else written


class RecipeDialog(FormDialog):
    """The name under which coats to come are kept."""

    def __init__(self, sheets: tuple[str, ...], courier: Courier, style: Style, parent: QWidget) -> None:
        super().__init__(say("Keep as a recipe"), courier, style, parent)
        self._sheets = sheets
        self.name_field = QLineEdit()
        self.name_field.setMaxLength(NAME_MOST)
        words = say_counted(
            len(sheets),
            "{n} coats to come, lowest first. A name that is there already gets these coats instead.",
            "{n} coats to come, lowest first. A name that is there already gets these coats instead.",
        )
        self.body.addWidget(label("body", Tone.MUTED, words, wrap=True))
        self.field(say("Name"), self.name_field)
        self.body.addStretch(1)
        add_primary(self, say("Keep the recipe"))
        self.fit(440, 260)
        self.name_field.setFocus()

    def read(self) -> SaveRecipe:
        """Return the command to keep the recipe, or raise FormError."""
        name = " ".join(self.name_field.text().split())
        if not name:
            raise FormError("name", say("The recipe has no name; type one, such as Panels, satin."))
        return SaveRecipe(name=name, sheets=self._sheets)

    def words_for(self, command: Command) -> str:
        """Return what was recorded."""
        return say("Kept as the recipe {name}.", name=command.name) if isinstance(command, SaveRecipe) else ""

    def field_of(self, name: str) -> QWidget | None:
        """Return the line of the name."""
        return self.name_field if name == "name" else None

    def is_filled(self) -> bool:
        """Return whether a name was typed."""
        return bool(self.name_field.text().strip())
