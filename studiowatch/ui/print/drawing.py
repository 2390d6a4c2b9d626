"""Drawings (SVG) as sharp pictures for a printed text."""

from __future__ import annotations

from PySide6.QtCore import QByteArray, QRectF, Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtSvg import QSvgRenderer

SHARPNESS = 5  # pixels a point: 360 dpi


def picture_of(svg: str) -> QImage:
    """Return an SVG drawing whose lengths are points as a picture for print."""
    renderer = QSvgRenderer(QByteArray(svg.encode()))
    picture = QImage(renderer.defaultSize() * SHARPNESS, QImage.Format.Format_RGB32)
    picture.fill(Qt.GlobalColor.white)
    painter = QPainter(picture)
    renderer.render(painter, QRectF(picture.rect()))
    painter.end()
    return picture
