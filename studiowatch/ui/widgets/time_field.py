"""A field for a time: in her zone, on the clock that she chose."""

from __future__ import annotations

from PySide6.QtCore import QDateTime
from PySide6.QtWidgets import QDateTimeEdit

from studiowatch.ui.widgets.date_formats import moment_format


class TimeField(QDateTimeEdit):
    """Shows a time and keeps that very one until another is typed.

    Qt's field holds what a wall clock shows: of the hour that comes twice when clocks are set back it reads the first.
    """

    def __init__(self, time_ms: int) -> None:
        super().__init__()
        self.setCalendarPopup(True)
        self.setDisplayFormat(moment_format())
        self.show_time(time_ms)

    def show_time(self, time_ms: int) -> None:
        """Show a time, UTC ms."""
        self.setDateTime(QDateTime.fromMSecsSinceEpoch(time_ms))
        self._given_ms, self._given = time_ms, self.dateTime()

    @property
    def is_as_given(self) -> bool:
        """Whether what stands in it is the time that it was given."""
        return self.dateTime() == self._given

    @property
    def time_ms(self) -> int:
        """The time that stands in it, UTC ms."""
        return self._given_ms if self.is_as_given else self.dateTime().toMSecsSinceEpoch()
