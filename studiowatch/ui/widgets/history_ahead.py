"""What the room may do, right of now: a hatched band that four in five ways stay in, and its middle dashed."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPen, QPolygonF

from studiowatch.ui.models.history_axis import ValueScale
from studiowatch.ui.models.history_layout import Band
from studiowatch.ui.models.history_panels import Ahead
from studiowatch.ui.widgets.history_axis import Paper

DASHES = [2.0, 3.0]
MIDDLE_PX, EDGE_PX = 1.6, 1.0


def draw_ahead(paper: Paper, ahead: Ahead, scale: ValueScale, plot: Band) -> None:
    """Draw the part of `ahead` that is seen, from now on."""
    time, painter = paper.time, paper.painter
    start_ms, end_ms = max(float(paper.now_ms), float(time.start_ms)), float(time.end_ms)
    inner = ahead.time_ms[(ahead.time_ms > start_ms) & (ahead.time_ms < end_ms)]
    last_ms = min(end_ms, float(ahead.time_ms[-1]))
    if last_ms <= start_ms:
        return
    times_ms = np.concatenate(([start_ms], inner[inner < last_ms], [last_ms]))
    x = [time.x(one) for one in times_ms.tolist()]

    def line(values: np.ndarray) -> list[QPointF]:
        seen = np.interp(times_ms, ahead.time_ms, values)
        y = plot.top_px + plot.height_px * (scale.high - seen) / (scale.high - scale.low)
        return [QPointF(across, down) for across, down in zip(x, y.tolist(), strict=True)]

    low, middle, high = line(ahead.low), line(ahead.middle), line(ahead.high)
    painter.save()
    painter.setClipRect(paper.plot_rect(plot))
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    muted = QColor(paper.theme.muted)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QBrush(muted, Qt.BrushStyle.BDiagPattern))
    painter.drawPolygon(QPolygonF([*high, *reversed(low)]))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(muted, EDGE_PX))
    painter.drawPolyline(QPolygonF(low))
    painter.drawPolyline(QPolygonF(high))
    pen = QPen(QColor(paper.theme.ink), MIDDLE_PX, Qt.PenStyle.CustomDashLine)
    pen.setDashPattern(DASHES)
    painter.setPen(pen)
    painter.drawPolyline(QPolygonF(middle))
    painter.restore()
