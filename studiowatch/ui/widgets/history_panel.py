"""One panel of the room history: few grid lines, curves, the limits with their words."""

from __future__ import annotations

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPen

from studiowatch.ui.models.history_layout import PanelBand
from studiowatch.ui.models.history_panels import Panel
from studiowatch.ui.models.history_strokes import place_words, strokes
from studiowatch.ui.widgets.history_ahead import draw_ahead
from studiowatch.ui.widgets.history_axis import LABEL_GAP_PX, Paper, hairline
from studiowatch.ui.widgets.history_trace import curve_color, draw_curve

DASHES = [5.0, 4.0]
LIVE_PX = 3.8


class PanelPainter:
    """Draws one panel on the paper."""

    def __init__(self, paper: Paper, panel: Panel, band: PanelBand) -> None:
        self.paper = paper
        self.painter = paper.painter
        self.theme = paper.theme
        self.panel = panel
        self.band = band
        self.scale = panel.scale(paper.time.start_ms, paper.time.end_ms, band.most_ticks)
        self.drawn = [
            strokes(curve.series, paper.time, self.scale, band.plot.top_px, band.plot.height_px)
            for curve in panel.curves
        ]

    @property
    def has_scale(self) -> bool:
        """Whether anything gives the value axis a meaning: a reading in view, or a limit."""
        return bool(self.panel.limits) or self.panel.logged(self.paper.time.start_ms, self.paper.time.end_ms)

    def draw_curves(self) -> None:
        """Draw grid, curves and limits: all that lies below the line of now."""
        if self.has_scale:
            self._draw_grid()
        plot = self.paper.plot_rect(self.band.plot)
        plot.setRight(min(plot.right(), self.paper.time.x(self.paper.now_ms)))  # half a bucket may reach beyond now
        for curve, drawn in reversed([*zip(self.panel.curves, self.drawn, strict=True)]):
            draw_curve(self.painter, curve.quantity, drawn, plot, self.theme)
        if self.panel.ahead is not None:
            draw_ahead(self.paper, self.panel.ahead, self.scale, self.band.plot)
        self._draw_limits()

    def _draw_grid(self) -> None:
        """Draw a panel's few horizontal lines and their labels."""
        left_px, right_px = self.paper.layout.left_px, self.paper.time.right_px
        self.painter.setFont(self.paper.label_font)
        height_px = QFontMetricsF(self.paper.label_font).height()
        for value in self.scale.ticks:
            y = round(self._y(value)) + 0.5
            self.painter.setPen(hairline(self.theme.rule))
            self.painter.drawLine(QLineF(left_px, y, right_px, y))
            self.painter.setPen(QColor(self.theme.muted))
            place = QRectF(0, y - height_px / 2, left_px - LABEL_GAP_PX, height_px)
            self.painter.drawText(
                place, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, self.scale.label(value)
            )

    def _draw_limits(self) -> None:
        """Draw the limits of the coats that are wet now, dashed."""
        pen = QPen(QColor(self.theme.caution), 1.0, Qt.PenStyle.CustomDashLine, Qt.PenCapStyle.FlatCap)
        pen.setDashPattern(DASHES)
        self.painter.setPen(pen)
        for limit in self.panel.limits:
            y = round(self._y(limit.value)) + 0.5
            self.painter.drawLine(QLineF(self.paper.layout.left_px, y, self.paper.time.right_px, y))

    def draw_live(self) -> None:
        """Draw the newest live values as dots on the line of now, which hides the curves' last pixels."""
        now_ms, time = self.paper.now_ms, self.paper.time
        if not time.start_ms <= now_ms <= time.end_ms:
            return
        self.painter.save()
        self.painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self.painter.setPen(QPen(QColor(self.theme.card), 1.0))
        for curve in self.panel.curves:
            series = curve.series
            if len(series.time_ms) and now_ms <= series.time_ms[-1] <= now_ms + series.bucket_ms:
                self.painter.setBrush(QColor(curve_color(curve.quantity, self.theme)))
                self.painter.drawEllipse(QPointF(time.x(now_ms), self._y(float(series.mean[-1]))), LIVE_PX, LIVE_PX)
        self.painter.restore()

    def draw_limit_words(self) -> list[QRectF]:
        """Write each limit's words at its line where they cover least of the curves; return the ground of each."""
        font = self.paper.label_font
        metrics = QFontMetricsF(font)
        self.painter.setFont(font)
        grounds = []
        for limit in self.panel.limits:
            size_px = metrics.horizontalAdvance(limit.words), metrics.height()
            now_px = self.paper.time.x(self.paper.now_ms)
            left_px, top_px = place_words(self._y(limit.value), size_px, self.paper.time, self.drawn, now_px)
            grounds.append(QRectF(left_px, top_px, *size_px))
            self.painter.fillRect(grounds[-1], QColor(self.paper.ground(left_px)))
            self.painter.setPen(QColor(self.theme.caution))
            self.painter.drawText(QPointF(left_px, top_px + metrics.ascent()), limit.words)
        return grounds

    def _y(self, value: float) -> float:
        plot = self.band.plot
        return plot.top_px + plot.height_px * (self.scale.high - value) / (self.scale.high - self.scale.low)
