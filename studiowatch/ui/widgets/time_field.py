"""A field for a time: in her zone, on the clock that she chose."""

from __future__ import annotations

from PySide6.QtCore import QDateTime
from PySide6.QtWidgets import QDateTimeEdit

from studiowatch.speech.units import Hours, chosen

_FORMATS = {Hours.TWENTY_FOUR: "d MMM yyyy  HH:mm", Hours.TWELVE: "d MMM yyyy  h:mm ap"}  # not said


def time_field(time_ms: int) -> QDateTimeEdit:
    """Return a field for a time, UTC ms, in her own zone."""
    field = QDateTimeEdit(QDateTime.fromMSecsSinceEpoch(time_ms))
    field.setCalendarPopup(True)
    field.setDisplayFormat(_FORMATS[chosen().hours])
    return field
