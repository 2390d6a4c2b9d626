"""One thing that she means to do with the room: what, to what it is set, in which hours and on which days."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PySide6.QtCore import QDateTime
from PySide6.QtWidgets import QComboBox, QDateEdit, QHBoxLayout, QLineEdit, QWidget

from studiowatch.service.commands import Command
from studiowatch.service.intention_commands import AddIntention
from studiowatch.speech.words import say
from studiowatch.studio.meant_words import clock_text
from studiowatch.studio.working_hours import DAY_MIN
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.intention_form import (
    ADD_TITLE,
    CHOICES,
    HOW_OFTEN,
    OVERNIGHT,
    Choice,
    asked_for,
    first_target,
    meant_by,
    read_intention,
)
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.date_formats import day_format
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.drop_down import DropDown
from studiowatch.ui.widgets.form_lines import CautionList, add_primary
from studiowatch.ui.widgets.text import label

_HALF_HOUR_MIN = 30


class IntentionForm(FormDialog):
    """The form; its cautions stand right above the button."""

    def __init__(self, *, now_ms: Callable[[], int], courier: Courier, style: Style, parent: QWidget) -> None:
        super().__init__(say(ADD_TITLE), courier, style, parent)
        self.what_field, self.often_field = DropDown(), DropDown()
        self.what_field.addItems([say(choice.words) for choice in CHOICES])
        self.often_field.addItems([say(often) for often in HOW_OFTEN])
        self.target_field = QLineEdit()
        self.from_field, self.until_field = _half_hours(0), _half_hours(_HALF_HOUR_MIN)
        self.day_field = QDateEdit(QDateTime.fromMSecsSinceEpoch(now_ms()).date())
        self.day_field.setCalendarPopup(True)
        self.day_field.setDisplayFormat(day_format())
        self.cautions = CautionList(style)
        self._lay_out()
        self.what_field.currentIndexChanged.connect(self._begin)
        self._begin()
        add_primary(self, say("Count on it"))
        self.fit(560, 520)
        self.what_field.setFocus()

    def _lay_out(self) -> None:
        what = self._row()
        self.field(say("What"), self.what_field, what, 1)
        self._target_name = self.field(asked_for(CHOICES[0]), self.target_field, what, 1)
        hours = self._row()
        self.field(say("From"), self.from_field, hours, 1)
        self.field(say("Until"), self.until_field, hours, 1)
        self.body.addWidget(label("small", Tone.MUTED, say(OVERNIGHT), wrap=True))
        days = self._row()
        self.field(say("First on"), self.day_field, days, 1)
        self.field(say("How often"), self.often_field, days, 1)
        self.body.addStretch(1)
        self.standing.addWidget(self.cautions)

    def _row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(self.dress.px(10))
        self.body.addLayout(row)
        return row

    @property
    def choice(self) -> Choice:
        """Return what was chosen."""
        return CHOICES[self.what_field.currentIndex()]

    def _begin(self) -> None:
        """Show what such a thing begins with, and what bites."""
        choice = self.choice
        name = asked_for(choice)
        self._target_name.setText(name)
        for part in (self._target_name, self.target_field):
            part.setVisible(bool(name))
        self.target_field.setAccessibleName(name)
        self.target_field.setText(first_target(choice))
        for field, minutes in ((self.from_field, choice.from_min), (self.until_field, choice.to_min)):
            field.setCurrentIndex(field.findData(minutes))
        self.often_field.setCurrentIndex(list(HOW_OFTEN.values()).index(choice.days))
        self.cautions.set_cautions(choice.cautions)
        self._untouched = self._state()

    def _state(self) -> tuple[object, ...]:
        lists = (self.from_field, self.until_field, self.often_field)
        return (self.target_field.text(), self.day_field.date(), *(field.currentIndex() for field in lists))

    def read(self) -> AddIntention:
        """Return the command to mean it, or raise FormError."""
        return read_intention(
            self.choice,
            target=self.target_field.text(),
            from_min=_minutes(self.from_field),
            to_min=_minutes(self.until_field),
            first_day=_day(self.day_field),
            days=list(HOW_OFTEN.values())[self.often_field.currentIndex()],
        )

    def words_for(self, command: Command) -> str:
        """Return what is counted in."""
        return (
            say("Counted in: {intentions}", intentions=meant_by(command)) if isinstance(command, AddIntention) else ""
        )

    def is_filled(self) -> bool:
        """Return whether something was changed."""
        return self._state() != self._untouched

    def field_of(self, name: str) -> QWidget | None:
        """Return the widget of the field `name`."""
        return {"target": self.target_field, "until": self.until_field}.get(name)


def _half_hours(first: int) -> QComboBox:
    """Return a list of the half hours of a day from `first`, minutes into it, on; the day's end is midnight."""
    made = DropDown()
    for minutes in range(first, first + DAY_MIN, _HALF_HOUR_MIN):
        made.addItem(say("midnight") if minutes == DAY_MIN else clock_text(minutes), minutes)
    return made


def _day(field: QDateEdit) -> date:
    shown = field.date()
    return date(shown.year(), shown.month(), shown.day())


def _minutes(field: QComboBox) -> int:
    return int(field.currentData())
