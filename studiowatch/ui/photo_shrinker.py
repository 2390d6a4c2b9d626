"""A picture made small: upright, on white, as a JPEG that says nothing but what it shows."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QBuffer, QIODevice, QSize, Qt
from PySide6.QtGui import QImage, QImageReader, QPainter

from studiowatch.service.photos import NoPicture
from studiowatch.speech.words import say

LONGEST_PX = 1600  # of the longer side: sharp across half a printed page
MOST_MEGAPIXELS = 200  # of a picture that is opened at all: beyond any camera's own; assumption
_QUALITY = 88  # of 100
_KINDS = {b"jpeg", b"jpg", b"png", b"webp", b"bmp", b"gif", b"tiff", b"tif", b"heic", b"heif", b"avif"}


def shrink_photo(path: Path) -> bytes:
    """Return the picture at `path` as a JPEG of at most `LONGEST_PX`.

    Where it was taken and by what is left out.

    Raises
    ------
    NoPicture
        If it cannot be read as one, or has too many pixels.
    """
    picture = read_photo(path)
    plain = QImage(picture.size(), QImage.Format.Format_RGB32)
    plain.fill(Qt.GlobalColor.white)
    painter = QPainter(plain)
    painter.drawImage(0, 0, picture)
    painter.end()
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    if not plain.save(buffer, "JPEG", _QUALITY):  # type: ignore[call-overload]
        raise NoPicture(say("no JPEG could be made of it"))
    return bytes(buffer.data().data())


def read_photo(path: Path) -> QImage:
    """Return the photo at `path`, upright, with at most `LONGEST_PX` on a side.

    Raises
    ------
    NoPicture
        If it cannot be read as one, or has too many pixels. A drawing is none: one may draw other files in.
    """
    reader = QImageReader(str(path))
    reader.setDecideFormatFromContent(True)
    reader.setAutoTransform(True)
    size = reader.size()
    if not reader.canRead() or bytes(reader.format().data()) not in _KINDS:
        raise NoPicture(say("it is not a picture of a kind that is known here"))
    if size.isValid() and size.width() * size.height() > MOST_MEGAPIXELS * 1e6:
        raise NoPicture(
            say(
                "it has {width} × {height} pixels, more than {most} million",
                width=size.width(),
                height=size.height(),
                most=MOST_MEGAPIXELS,
            )
        )
    if size.isValid() and max(size.width(), size.height()) > LONGEST_PX:
        reader.setScaledSize(size.scaled(QSize(LONGEST_PX, LONGEST_PX), Qt.AspectRatioMode.KeepAspectRatio))
    picture = reader.read()
    if picture.isNull():
        raise NoPicture(say("it is broken ({reason})", reason=reader.errorString().rstrip(".").lower()))
    if max(picture.width(), picture.height()) > LONGEST_PX:
        picture = picture.scaled(
            LONGEST_PX,
            LONGEST_PX,
            Qt.AspectRatioMode.KeepAspectRatio,
            Qt.TransformationMode.SmoothTransformation,
        )
    return picture
