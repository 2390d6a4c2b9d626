"""Printing for calls from a terminal: Qt without a screen."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtGui import QGuiApplication

from studiowatch.studio.finishing_record import FinishingRecord
from studiowatch.ui.print.photo import PhotoRefused, photo_jpeg
from studiowatch.ui.print.record_pdf import write_pdf


def print_record(record: FinishingRecord, path: Path, photo: bytes, paper: str) -> None:
    """Write the record as PDF. Raises OSError."""
    running = QGuiApplication.instance() or QGuiApplication(["studiowatch", "-platform", "offscreen"])
    write_pdf(record, path, photo, paper)
    del running


def photo_or_why(path: Path) -> tuple[bytes, str]:
    """Return the photo as a JPEG, or none and one sentence that says why."""
    try:
        return photo_jpeg(path), ""
    except PhotoRefused as fault:
        return b"", str(fault)
