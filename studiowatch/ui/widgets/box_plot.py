"""The last minutes in the box over a salt: a small curve that she sees become flat."""

from __future__ import annotations

from PySide6.QtCore import QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from studiowatch.room.plateau import FLAT_MINUTES
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.ui.models.history_axis import ValueScale, value_scale
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.history_axis import hairline, label_font

_LEAST_SPAN_PCT = 2.0  # %RH from bottom to top at least: else a flat stretch would look rough
_TICKS = 4


class BoxPlot(QWidget):
    """Humidity as the sensor itself reads it, minute by minute, the newest at the right."""

    def __init__(self) -> None:
        super().__init__()
        self._style = Style()
        self._values: tuple[float, ...] = ()
        self.setAccessibleName(say("Humidity over the last minutes"))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        self.updateGeometry()
        self.update()

    def show_minutes(self, values_pct: tuple[float, ...]) -> None:
        """Show the mean of each minute, %RH, the oldest first."""
        if values_pct != self._values:
            self._values = values_pct
            self.setAccessibleDescription(_spoken(values_pct))
            self.update()

    def minimumSizeHint(self) -> QSize:
        """Return the least size at which the curve says something."""
        return QSize(self._style.px(280), self._style.px(120))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the curve."""
        del event
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(label_font(self.font()))
        metrics = QFontMetricsF(painter.font())
        painter.setPen(QColor(self._style.theme.ink))
        painter.drawText(QPointF(0, metrics.ascent()), say("%RH, as the sensor reads it"))
        if not self._values:
            painter.setPen(QColor(self._style.theme.muted))
            still = say("The first whole minute is still to come.")
            painter.drawText(self.rect(), int(Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap), still)
            return
        middle = (min(self._values) + max(self._values)) / 2
        half = max(_LEAST_SPAN_PCT, max(self._values) - min(self._values)) / 2
        scale = value_scale(middle - half, middle + half, _TICKS)
        wide = max(metrics.horizontalAdvance(scale.label(tick)) for tick in scale.ticks) + self._style.px(10)
        line = metrics.height()
        plot = QRectF(wide, 1.6 * line, self.width() - wide - self._style.px(8), self.height() - 2.9 * line)
        self._draw_axes(painter, plot, scale)
        self._draw_curve(painter, plot, scale)

    def _draw_axes(self, painter: QPainter, plot: QRectF, scale: ValueScale) -> None:
        theme, px = self._style.theme, self._style.px
        line = QFontMetricsF(painter.font()).height()
        for tick in scale.ticks:
            y = round(_at(plot, scale, 0, tick).y()) + 0.5
            painter.setPen(hairline(theme.rule))
            painter.drawLine(QLineF(plot.left(), y, plot.right(), y))
            painter.setPen(QColor(theme.muted))
            place = QRectF(0, y - line / 2, plot.left() - px(6), line)
            painter.drawText(place, int(Qt.AlignmentFlag.AlignRight), scale.label(tick))
        below = QRectF(plot.left(), plot.bottom() + px(3), plot.width(), line)
        painter.drawText(below, int(Qt.AlignmentFlag.AlignLeft), say("{minutes} min ago", minutes=FLAT_MINUTES))
        painter.drawText(below, int(Qt.AlignmentFlag.AlignRight), say("now"))

    def _draw_curve(self, painter: QPainter, plot: QRectF, scale: ValueScale) -> None:
        theme, px = self._style.theme, self._style.px
        first = FLAT_MINUTES - len(self._values)
        points = [_at(plot, scale, first + index, value) for index, value in enumerate(self._values)]
        painter.setPen(QPen(QColor(theme.film_wet), px(2)))
        painter.drawPolyline(QPolygonF(points))
        painter.setBrush(QColor(theme.film_wet))
        painter.drawEllipse(points[-1], px(3), px(3))


def _spoken(values_pct: tuple[float, ...]) -> str:
    """Return the curve in words."""
    if not values_pct:
        return say("0 minutes, none yet")
    first, last = (chosen().number(value, 1) for value in (values_pct[0], values_pct[-1]))
    return say("{minutes} minutes, from {first} to {last} %", minutes=len(values_pct), first=first, last=last)


def _at(plot: QRectF, scale: ValueScale, minute: int, value: float) -> QPointF:
    """Return where a value of the box stands, minute 0 at the left."""
    x = plot.left() + plot.width() * minute / (FLAT_MINUTES - 1)
    return QPointF(x, plot.bottom() - plot.height() * (value - scale.low) / (scale.high - scale.low))
