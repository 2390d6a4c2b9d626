"""Strokes of the room's curves: plain bars from least to greatest, the mean as short smooth segments over them."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from studiowatch.ui.models.history_panels import Quantity
from studiowatch.ui.models.history_strokes import Strokes
from studiowatch.ui.theme import Theme
from studiowatch.ui.widgets.strokes import draw_boxes, draw_lines

BAR_STRENGTH = 0.5  # of the curve's colour in the bar behind the mean
MEAN_PX = 2.0
DEW_PX = 1.6
DOT_PX = 2.6  # seen from two metres: typed readings are nothing but dots
WIDEST_LINE_PX = 1.5  # of the screen's own pixels


def blended(over: str, under: str, share: float) -> QColor:
    """Return `share` of one colour laid over another, both ``#rrggbb``."""
    top, ground = QColor(over), QColor(under)
    return QColor.fromRgbF(
        ground.redF() + (top.redF() - ground.redF()) * share,
        ground.greenF() + (top.greenF() - ground.greenF()) * share,
        ground.blueF() + (top.blueF() - ground.blueF()) * share,
    )


def curve_color(quantity: Quantity, theme: Theme) -> str:
    """Return the colour of a curve."""
    return {Quantity.FILM: theme.paint, Quantity.DEW: theme.dew}.get(quantity, theme.ink)


def mean_pen(quantity: Quantity, theme: Theme) -> QPen:
    """Return the pen of a curve's mean; the dew point is thinner, so that hue does not stand alone."""
    width_px = DEW_PX if quantity is Quantity.DEW else MEAN_PX
    return QPen(QColor(curve_color(quantity, theme)), width_px, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap)


def draw_curve(painter: QPainter, quantity: Quantity, drawn: Strokes, plot: QRectF, theme: Theme) -> None:
    """Draw one curve's strokes within `plot`."""
    painter.save()
    painter.setClipRect(plot.adjusted(0, -MEAN_PX, 0, MEAN_PX))
    _draw_bars(painter, drawn, blended(curve_color(quantity, theme), theme.card, BAR_STRENGTH))
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(mean_pen(quantity, theme))
    draw_lines(painter, drawn.segments)
    painter.setBrush(painter.pen().color())
    painter.setPen(Qt.PenStyle.NoPen)
    for x, y in drawn.dots.tolist():
        painter.drawEllipse(QPointF(x, y), DOT_PX, DOT_PX)
    painter.restore()


def _draw_bars(painter: QPainter, drawn: Strokes, color: QColor) -> None:
    """Draw a line for each bucket, or boxes that join to a band where buckets are wider than a pixel."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=False)
    ratio = painter.device().devicePixelRatioF()
    x, high, low = drawn.bars.T
    if drawn.bar_px * ratio <= WIDEST_LINE_PX:
        painter.setPen(QPen(color, 0))
        draw_lines(painter, np.column_stack([x, high, x, low]))
        return
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(color)
    width = np.full(len(x), drawn.bar_px)
    draw_boxes(painter, np.column_stack([x - drawn.bar_px / 2, high, width, np.maximum(low - high, 1.0)]))
