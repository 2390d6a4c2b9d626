"""The forms that are open over a window."""

from __future__ import annotations

from typing import TypeVar

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QDialog, QWidget

FormT = TypeVar("FormT", bound=QDialog)


def open_forms(window: QWidget, kind: type[FormT]) -> list[FormT]:
    """Return the forms of `kind` over `window`.

    Each is modal: while none is open none is sought. It is the window's own child; a thousand others lie below.
    """
    if QApplication.activeModalWidget() is None:
        return []
    return window.findChildren(kind, options=Qt.FindChildOption.FindDirectChildrenOnly)
