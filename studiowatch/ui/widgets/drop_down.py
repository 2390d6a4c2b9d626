"""A field that offers a list to choose from."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QPaintEvent, QWheelEvent
from PySide6.QtWidgets import QComboBox, QStyle, QStyleOptionComboBox, QStylePainter

_LEAST_LETTERS = 12  # of a list, so that a long name widens no form


class DropDown(QComboBox):
    """A list that the wheel goes past, to the page that is scrolled, and whose rows drop down whole."""

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Leave the wheel to what lies around: nothing is chosen by a hand that scrolls past."""
        event.ignore()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the field, with the sign of what is left out where its words are cut."""
        if self.isEditable():
            super().paintEvent(event)
            return
        option, painter = QStyleOptionComboBox(), QStylePainter(self)
        self.initStyleOption(option)
        part = QStyle.SubControl.SC_ComboBoxEditField
        room = self.style().subControlRect(QStyle.ComplexControl.CC_ComboBox, option, part, self)
        option.currentText = self.fitting(room.width())
        painter.drawComplexControl(QStyle.ComplexControl.CC_ComboBox, option)
        painter.drawControl(QStyle.ControlElement.CE_ComboBoxLabel, option)

    def fitting(self, width_px: int) -> str:
        """Return the words that are chosen as they fit into a width, px."""
        return self.fontMetrics().elidedText(self.currentText(), Qt.TextElideMode.ElideRight, width_px)

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
