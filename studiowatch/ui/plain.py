"""Words of hers where Qt reads mark-up: shown as they were typed, whatever signs they have."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import Qt as TextOf
from PySide6.QtWidgets import QMessageBox, QWidget

_FOR_THE_DESKTOP = str.maketrans("<>", "\u2039\u203a")  # which of them read mark-up, and which do not, cannot be asked


def set_tip(widget: QWidget, words: str) -> None:
    """Give `widget` a tool tip that shows `words` as they are: Qt takes for HTML what looks like it."""
    widget.setToolTip(TextOf.convertFromPlainText(words) if TextOf.mightBeRichText(words) else words)


def plain_box(parent: QWidget | None, headline: str, detail: str = "") -> QMessageBox:
    """Return a box without buttons yet that shows these words as they are, and deletes itself."""
    box = QMessageBox(QMessageBox.Icon.NoIcon, "studiowatch", headline, parent=parent)
    box.setInformativeText(detail)
    box.setTextFormat(Qt.TextFormat.PlainText)  # of both, and so after both are there
    box.finished.connect(box.deleteLater)
    return box


def literal(words: str) -> str:
    """Return `words` for a button or a menu's entry, none of them taken for a key."""
    return words.replace("&", "&&")


def for_the_desktop(words: str) -> str:
    """Return `words` for a tray or a message of the desktop, some of which read mark-up: without its signs."""
    return words.translate(_FOR_THE_DESKTOP)
