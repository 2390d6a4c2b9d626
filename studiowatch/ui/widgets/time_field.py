"""A field for a time: in her zone, on the clock that she chose."""

from __future__ import annotations

from PySide6.QtCore import QDateTime
from PySide6.QtWidgets import QDateTimeEdit

from studiowatch.ui.widgets.date_formats import moment_format


def time_field(time_ms: int) -> QDateTimeEdit:
    """Return a field for a time, UTC ms, in her own zone."""
    field = QDateTimeEdit(QDateTime.fromMSecsSinceEpoch(time_ms))
    field.setCalendarPopup(True)
    field.setDisplayFormat(moment_format())
    return field
