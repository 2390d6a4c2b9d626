"""Counts what a widget is asked to do."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject
from PySide6.QtWidgets import QWidget


class EventCount(QObject):
    """Counts the events of one kind that `watched` gets."""

    def __init__(self, watched: QWidget, kind: QEvent.Type) -> None:
        super().__init__(watched)
        self.count = 0
        self._kind = kind
        watched.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        self.count += event.type() is self._kind
        return super().eventFilter(watched, event)


def paints(painted: QWidget) -> EventCount:
    """Count how often `painted` is painted."""
    return EventCount(painted, QEvent.Type.Paint)


def layouts(laid_out: QWidget) -> EventCount:
    """Count how often `laid_out` is asked to be laid out anew."""
    return EventCount(laid_out, QEvent.Type.LayoutRequest)
