"""A photo of a piece as the window shows it."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtGui import QPixmap

from studiowatch.service.photos import NoPicture, photo_path
from studiowatch.ui.photo_shrinker import read_photo


def small_picture(folder: Path, name: str) -> QPixmap:
    """Return the photo `name` in `folder`; a null picture if there is none that can be shown."""
    path = photo_path(folder, name)
    if path is None:
        return QPixmap()
    try:
        return QPixmap.fromImage(read_photo(path))
    except NoPicture:
        return QPixmap()  # which whoever shows it says to be missing
