"""One stage in both rooms on one line of time: as it comes above, otherwise below."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from studiowatch.ui.models.what_if import Bar, StageLine
from studiowatch.ui.style import Style

_HEIGHT, _BAR, _MARK, _WIDE = 30, 7, 5, 200  # units


class WhatIfStrip(QWidget):
    """Paints the two likely ranges, each with a diamond at the time that is told; a dashed end is beyond the line."""

    def __init__(self) -> None:
        super().__init__()
        self._style = Style()
        self._line: StageLine | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        self.updateGeometry()
        self.update()

    def show_line(self, line: StageLine) -> None:
        """Show `line`."""
        if line != self._line:
            self._line = line
            self.update()

    def sizeHint(self) -> QSize:
        """Return the strip's height at the present scale."""
        return QSize(self._style.px(_WIDE), self._style.px(_HEIGHT))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the strip."""
        del event
        if self._line is None:
            return
        theme, px = self._style.theme, self._style.px
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(theme.rule), 1.0))
        middle = self.height() / 2.0
        painter.drawLine(QPointF(0.0, middle), QPointF(self.width(), middle))
        painter.setPen(QPen(QColor(theme.ink), max(1.0, px(1.5))))
        painter.drawLine(QPointF(px(1), 0.0), QPointF(px(1), float(self.height())))
        quarter = self.height() / 4.0
        self._bar(painter, self._line.as_it_comes, middle - quarter, QColor(theme.film_dry_mark), filled=False)
        self._bar(painter, self._line.otherwise, middle + quarter, QColor(theme.film_wet), filled=True)

    def _bar(self, painter: QPainter, bar: Bar, at: float, colour: QColor, *, filled: bool) -> None:
        px = self._style.px
        left, wide = float(px(_MARK)), float(self.width() - 2 * px(_MARK))
        low = left + wide * (1.0 if bar.low is None else bar.low)
        high = left + wide * (1.0 if bar.high is None else bar.high)
        pen = QPen(colour, max(1.0, px(1.4)))
        if bar.high is None:
            pen.setStyle(Qt.PenStyle.DashLine)
        painter.setPen(pen)
        painter.setBrush(colour if filled and bar.high is not None else Qt.BrushStyle.NoBrush)
        half = px(_BAR) / 2.0
        painter.drawRoundedRect(QRectF(low, at - half, max(high - low, 1.0), 2.0 * half), 2.0, 2.0)
        if bar.by is not None:
            x, size = left + wide * bar.by, float(px(_MARK))
            painter.setPen(QPen(QColor(self._style.theme.card), 1.0))
            painter.setBrush(QColor(self._style.theme.ink) if filled else colour)
            painter.drawPolygon(
                QPolygonF([QPointF(x, at - size), QPointF(x + size, at), QPointF(x, at + size), QPointF(x - size, at)])
            )
