"""How often each told chance came true: points with their ranges against the line on which told and seen agree."""

from __future__ import annotations

from PySide6.QtCore import QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from studiowatch.speech.words import say
from studiowatch.studio.review_views import Reliability
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.history_axis import hairline, label_font

_SIDE_UNITS = 210
_TICKS = (0.0, 0.5, 1.0)


class ReliabilityPlot(QWidget):
    """Shows one `Reliability`."""

    def __init__(self) -> None:
        super().__init__()
        self._style = Style()
        self._shown: Reliability | None = None
        self.setAccessibleName(say("How often each chance came true"))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        self.updateGeometry()
        self.update()

    def show_reliability(self, reliability: Reliability) -> None:
        """Show `reliability`."""
        self._shown = reliability
        told = (
            say(
                "told {told} %, came true {came_true} % of {coats} coats",
                told=round(100.0 * one.told),
                came_true=round(100.0 * one.came_true),
                coats=one.coats,
            )
            for one in reliability.bins
        )
        self.setAccessibleDescription("; ".join(told))
        self.update()

    def sizeHint(self) -> QSize:
        """Return a square at the present scale."""
        return QSize(self._style.px(_SIDE_UNITS), self._style.px(_SIDE_UNITS))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the axes, the line of agreement, and a point with its range for each bin."""
        del event
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(label_font(self.font()))
        metrics, theme, px = QFontMetricsF(painter.font()), self._style.theme, self._style.px
        left, line = metrics.horizontalAdvance("100 %") + px(8), metrics.height()
        side = min(self.width() - left - px(10), self.height() - 2.6 * line)
        plot = QRectF(left, 0.6 * line, side, side - 0.6 * line)
        for tick in _TICKS:
            y, x = plot.bottom() - tick * plot.height(), plot.left() + tick * plot.width()
            painter.setPen(hairline(theme.edge))
            painter.drawLine(QLineF(plot.left(), y, plot.right(), y))
            painter.setPen(QColor(theme.muted))
            words = f"{100.0 * tick:.0f} %"
            right = int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            painter.drawText(QRectF(0, y - line / 2, left - px(6), line), right, words)
            wide = metrics.horizontalAdvance(words)
            painter.drawText(QPointF(min(max(x - wide / 2, left), plot.right() - wide), plot.bottom() + line), words)
        painter.drawText(QPointF(left, plot.bottom() + 2.1 * line), say("chance told, against how often it clouded"))
        painter.setPen(QPen(QColor(theme.muted), 1.0, Qt.PenStyle.DashLine))
        painter.drawLine(QLineF(plot.bottomLeft(), plot.topRight()))
        self._draw_bins(painter, plot)

    def _draw_bins(self, painter: QPainter, plot: QRectF) -> None:
        ink, px = QColor(self._style.theme.film_wet), self._style.px
        for one in self._shown.bins if self._shown else ():
            x = plot.left() + one.told * plot.width()
            y, least, most = (plot.bottom() - share * plot.height() for share in (one.came_true, one.least, one.most))
            painter.setPen(QPen(ink, px(2)))
            painter.drawLine(QLineF(x, least, x, most))
            painter.setBrush(ink)
            painter.drawEllipse(QPointF(x, y), px(4), px(4))
