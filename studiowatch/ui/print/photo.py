"""The photo of a piece, upright and small enough to print."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QSize, Qt
from PySide6.QtGui import QImageReader, QImageWriter

from studiowatch.speech.words import mark, say

MOST_MB = 256  # MB that decoding one photo may take
LONGEST_PX = 1400  # px, the longer side as printed
QUALITY = 88  # of the JPEG, 0-100
REFUSED = mark("The photo {path} cannot be used ({reason}); the record is made without it.")


class PhotoRefused(Exception):  # noqa: N818 - reads as the answer it is
    """A photo that cannot be used: one sentence."""


def photo_jpeg(path: Path) -> bytes:
    """Return the photo as a JPEG, turned as its camera says.

    Raises
    ------
    PhotoRefused
        If it is missing, broken, or too large.
    """
    QImageReader.setAllocationLimit(MOST_MB)
    reader = QImageReader(str(path))
    reader.setDecideFormatFromContent(True)
    reader.setAutoTransform(True)
    size = reader.size()
    if size.isValid() and max(size.width(), size.height()) > LONGEST_PX:
        reader.setScaledSize(size.scaled(QSize(LONGEST_PX, LONGEST_PX), Qt.AspectRatioMode.KeepAspectRatio))
    image = reader.read()
    if image.isNull():
        raise PhotoRefused(say(REFUSED, path=path, reason=reader.errorString()))
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QImageWriter(buffer, QByteArray(b"jpeg"))
    writer.setQuality(QUALITY)
    if not writer.write(image):
        raise PhotoRefused(say(REFUSED, path=path, reason=writer.errorString()))
    return bytes(buffer.data().data())
