"""The shade over a chosen stretch of time."""

from __future__ import annotations

from PySide6.QtCore import QLineF, QRectF
from PySide6.QtGui import QColor

from studiowatch.ui.models.history_range import TimeRange
from studiowatch.ui.widgets.history_axis import Paper, hairline

SHADE_STRENGTH = 0.16


def draw_shade(paper: Paper, chosen: TimeRange) -> None:
    """Shade `chosen` over panels and lanes, with a line at either end."""
    time, painter = paper.time, paper.painter
    left_px, right_px = max(time.x(chosen.first_ms), time.left_px), min(time.x(chosen.last_ms), time.right_px)
    if left_px > right_px:
        return
    top_px, bottom_px = paper.layout.head.bottom_px, paper.layout.foot.top_px
    color = QColor(paper.theme.link)
    color.setAlphaF(SHADE_STRENGTH)
    painter.fillRect(QRectF(left_px, top_px, max(right_px - left_px, 1.0), bottom_px - top_px), color)
    painter.setPen(hairline(paper.theme.link))
    for at_ms in (chosen.first_ms, chosen.last_ms):
        if time.start_ms <= at_ms <= time.end_ms:
            x = round(time.x(at_ms)) + 0.5
            painter.drawLine(QLineF(x, top_px, x, bottom_px))
