"""Where she keeps what she writes."""

from __future__ import annotations

from PySide6.QtCore import QStandardPaths


def documents() -> str:
    """Return the folder that a dialog begins in."""
    return QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
