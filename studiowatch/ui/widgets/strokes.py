"""Many lines or boxes at once, straight from an array: making an object for each takes four times as long as drawing.

The toolkit's own array overloads take a pointer and a count. Rows of four float64 lie in memory as the toolkit's lines
and boxes do, and the array lives for as long as the call.
"""

from __future__ import annotations

import numpy as np
import shiboken6
from numpy.typing import NDArray
from PySide6.QtCore import QLineF, QRectF
from PySide6.QtGui import QPainter, QPixmap

Rows = NDArray[np.float64]


def draw_lines(painter: QPainter, rows: Rows) -> None:
    """Draw a line for each row (x1, y1, x2, y2) of the (n, 4) `rows`."""
    _draw(painter.drawLines, QLineF, rows)


def draw_boxes(painter: QPainter, rows: Rows) -> None:
    """Draw a box for each row (left, top, width, height) of the (n, 4) `rows`."""
    _draw(painter.drawRects, QRectF, rows)


def draw_stamps(painter: QPainter, rows: Rows, sheet: QPixmap) -> None:
    """Set down a part of `sheet` for each row of the (n, 10) `rows`.

    A row is x and y of the middle, left, top, width and height of the part, scale along x and y, rotation, opacity.
    """
    held = np.ascontiguousarray(rows, dtype=np.float64).reshape(-1, 10)
    if len(held):
        first = shiboken6.Shiboken.wrapInstance(held.ctypes.data, QPainter.PixmapFragment)
        painter.drawPixmapFragments(first, len(held), sheet)  # type: ignore[arg-type]


def _draw(draw: object, shape: type[QLineF | QRectF], rows: Rows) -> None:
    if not len(rows):
        return
    held = np.ascontiguousarray(rows, dtype=np.float64).reshape(-1, 4)
    draw(shiboken6.Shiboken.wrapInstance(held.ctypes.data, shape), len(held))  # type: ignore[operator]
