"""A field that offers a list to choose from."""

from __future__ import annotations

from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QComboBox

_LEAST_LETTERS = 12  # of a list, so that a long name widens no form


class DropDown(QComboBox):
    """A list that the wheel goes past, to the page that is scrolled, and whose rows drop down whole."""

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Leave the wheel to what lies around: nothing is chosen by a hand that scrolls past."""
        event.ignore()

    def showPopup(self) -> None:
        """Drop the list down as wide as its longest row, but no wider than the window: names differ at their ends."""
        rows = self.view()
        rows.setMinimumWidth(min(rows.sizeHintForColumn(0) + 2 * rows.frameWidth(), self.window().width()))
        super().showPopup()


def drop_down_of_names() -> DropDown:
    """Return a list of titles or sheets, which may be long: the field takes the room it is given."""
    made = DropDown()
    made.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
    made.setMinimumContentsLength(_LEAST_LETTERS)
    return made
