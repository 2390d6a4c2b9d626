"""A place for words that change with each reading, in which the page is not laid out anew with each of them."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize
from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import QLabel, QWidget


class Steady(QWidget):
    """Holds a label whose surroundings give it its place, and asks for another only if the label needs another height.

    A label that stands in a layout has the whole window laid out with each text, however alike to the one before.
    A layout keeps the heights that it once asked for, at other widths too: those of words that came since then are
    told when the place gets another width, or comes back in sight.
    """

    def __init__(self, shown: QLabel) -> None:
        super().__init__()
        self.setObjectName("inside")
        self.setSizePolicy(shown.sizePolicy())
        self._shown = shown
        self._tall_px = 0
        self._told = self._words()
        shown.setParent(self)

    def event(self, event: QEvent) -> bool:
        """Pass on that the label changed, if it needs another height now."""
        if event.type() is QEvent.Type.LayoutRequest and self._needed_px() != self._tall_px:
            self._tell()
        return super().event(event)

    def _words(self) -> tuple[str, str]:
        """Return what the heights go by: the text and its font."""
        return self._shown.text(), self._shown.font().key()

    def _tell(self) -> None:
        self._told = self._words()
        self.updateGeometry()

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
        if event.size().width() != event.oldSize().width() and self._told != self._words():
            self._tell()

    def showEvent(self, event: QShowEvent) -> None:
        """Ask for the height of words that came out of sight, where nobody asked for it."""
        super().showEvent(event)
        if self._told != self._words():
            self._tell()
