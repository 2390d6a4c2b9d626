"""Where she keeps what she writes."""

from __future__ import annotations

from PySide6.QtCore import QDir, QStandardPaths


def documents() -> str:
    """Return the folder that a dialog begins in: her home where there is none for documents."""
    folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
    return folder if QDir(folder).exists() else QDir.homePath()
