"""A place for words that change with each reading, in which the page is not laid out anew with each of them."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QLabel, QWidget


class Steady(QWidget):
    """Holds a label whose surroundings give it its place, and asks for another only if the label needs another height.

    A label that stands in a layout has the whole window laid out with each text, however alike to the one before.
    """

    def __init__(self, shown: QLabel) -> None:
        super().__init__()
        self.setObjectName("inside")
        self.setSizePolicy(shown.sizePolicy())
        self._shown = shown
        self._tall_px = 0
        shown.setParent(self)

    def event(self, event: QEvent) -> bool:
        """Pass on that the label changed, if it needs another height now."""
        if event.type() is QEvent.Type.LayoutRequest and self._needed_px() != self._tall_px:
            self.updateGeometry()
        return super().event(event)

    def _needed_px(self) -> int:
        if self._shown.hasHeightForWidth():
            return self._shown.heightForWidth(self.width())
        return self._shown.sizeHint().height()

    def sizeHint(self) -> QSize:
        """Return the size of what is shown."""
        return self._shown.sizeHint()

    def minimumSizeHint(self) -> QSize:
        """Return the size of what is shown."""
        return self._shown.minimumSizeHint()

    def hasHeightForWidth(self) -> bool:
        """Return whether the label wraps."""
        return self._shown.hasHeightForWidth()

    def heightForWidth(self, width: int) -> int:
        """Return how tall the label is at `width`."""
        return self._shown.heightForWidth(width)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Give the label all of the place."""
        super().resizeEvent(event)
        self._shown.setGeometry(self.rect())
        self._tall_px = self._needed_px()
