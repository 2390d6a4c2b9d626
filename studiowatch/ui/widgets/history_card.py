"""The card that the room history is painted on."""

from __future__ import annotations

from PySide6.QtCore import QRect, QRectF
from PySide6.QtGui import QColor, QPainter

from studiowatch.ui.theme import Theme
from studiowatch.ui.widgets.history_axis import hairline

CORNER_PX = 6.0


def draw_card(painter: QPainter, place: QRect, theme: Theme, *, focused: bool) -> None:
    """Draw the ground, its inner part without the costly smooth edges."""
    ground = QRectF(place).adjusted(0.5, 0.5, -0.5, -0.5)
    color, edge = QColor(theme.card), hairline(theme.link if focused else theme.edge)
    painter.save()
    painter.setPen(edge)
    for top_px in (ground.top(), ground.bottom() - 2 * CORNER_PX):
        painter.setClipRect(QRectF(0, top_px - 1, place.width(), 2 * CORNER_PX + 2))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setBrush(color)
        painter.drawRoundedRect(ground, CORNER_PX, CORNER_PX)
    painter.restore()
    inner = ground.adjusted(0, 2 * CORNER_PX, 0, -2 * CORNER_PX)
    painter.fillRect(inner, color)
    painter.setPen(edge)
    painter.drawLine(inner.topLeft(), inner.bottomLeft())
    painter.drawLine(inner.topRight(), inner.bottomRight())
