"""The fit of an air speed calibration: law, error band and points, painted directly."""

from __future__ import annotations

from PySide6.QtCore import QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from studiowatch.physics.ranges import Array
from studiowatch.room.air_speed_calibration import AirSpeedCalibration
from studiowatch.speech.words import say
from studiowatch.ui.models.fit_plot import FitPicture, fit_picture, fit_spoken
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.history_axis import hairline, label_font

_BAND_ALPHA = 60


class FitPlot(QWidget):
    """Voltage over speed. The band holds the true speed 19 times in 20."""

    def __init__(self) -> None:
        super().__init__()
        self._style = Style()
        self._picture: FitPicture | None = None
        self._calibration: AirSpeedCalibration | None = None
        self._plot = QRectF()
        self.setAccessibleName(say("The fit"))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        self.updateGeometry()
        self.update()

    def show_fit(self, calibration: AirSpeedCalibration) -> None:
        """Show `calibration`."""
        if calibration != self._calibration:
            self._calibration, self._picture = calibration, fit_picture(calibration)
            self.setAccessibleDescription(fit_spoken(calibration))
            self.update()

    def minimumSizeHint(self) -> QSize:
        """Return the least size at which the axes can be read."""
        return QSize(self._style.px(320), self._style.px(220))

    def point_at(self, speed_m_s: float, signal_mV: float) -> QPointF:
        """Return where a point stands in the widget, px; the picture must have been painted."""
        if self._picture is None:
            raise LookupError("there is no picture yet")  # not said
        across, up = self._picture.across, self._picture.up
        return QPointF(
            self._plot.left() + self._plot.width() * (speed_m_s - across.low) / (across.high - across.low),
            self._plot.bottom() - self._plot.height() * (signal_mV - up.low) / (up.high - up.low),
        )

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the picture."""
        del event
        picture = self._picture
        if picture is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(label_font(self.font()))
        self._plot = self._plot_rect(picture, QFontMetricsF(painter.font()))
        self._draw_axes(painter, picture)
        painter.save()
        painter.setClipRect(self._plot)
        self._draw_law(painter, picture)
        painter.restore()
        self._draw_points(painter, picture)
        self._draw_key(painter)

    def _plot_rect(self, picture: FitPicture, metrics: QFontMetricsF) -> QRectF:
        widest = max(metrics.horizontalAdvance(picture.up.label(tick)) for tick in picture.up.ticks)
        line, gap = metrics.height(), self._style.px(8)
        return QRectF(self.rect()).adjusted(widest + 2 * gap, line + 2 * gap, -2 * gap, -2 * line - 2 * gap)

    def _draw_axes(self, painter: QPainter, picture: FitPicture) -> None:
        theme, plot, gap = self._style.theme, self._plot, self._style.px(8)
        line = QFontMetricsF(painter.font()).height()
        for value in picture.up.ticks:
            y = round(self.point_at(0.0, value).y()) + 0.5
            painter.setPen(hairline(theme.rule))
            painter.drawLine(QLineF(plot.left(), y, plot.right(), y))
            painter.setPen(QColor(theme.muted))
            place = QRectF(0, y - line / 2, plot.left() - gap, line)
            painter.drawText(place, int(Qt.AlignmentFlag.AlignRight), picture.up.label(value))
        for value in picture.across.ticks:
            x = round(self.point_at(value, picture.up.low).x()) + 0.5
            painter.setPen(hairline(theme.rule))
            painter.drawLine(QLineF(x, plot.top(), x, plot.bottom()))
            painter.setPen(QColor(theme.muted))
            place = QRectF(x - 50, plot.bottom() + gap / 2, 100, line)
            painter.drawText(place, int(Qt.AlignmentFlag.AlignHCenter), picture.across.label(value))
        painter.setPen(QColor(theme.ink))
        top = QRectF(0, 0, self.width(), line)
        painter.drawText(top, int(Qt.AlignmentFlag.AlignLeft), picture.up_name)
        below = QRectF(plot.left(), plot.bottom() + gap / 2 + line, plot.width(), line)
        painter.drawText(below, int(Qt.AlignmentFlag.AlignRight), picture.across_name)

    def _draw_law(self, painter: QPainter, picture: FitPicture) -> None:
        band = [*self._line(picture.slowest, picture.signals), *reversed(self._line(picture.fastest, picture.signals))]
        wash = QColor(self._style.theme.film_wet)
        wash.setAlpha(_BAND_ALPHA)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(wash)
        painter.drawPolygon(QPolygonF(band))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(QColor(self._style.theme.film_wet), self._style.px(2)))
        painter.drawPolyline(QPolygonF(self._line(picture.speeds, picture.signals)))

    def _line(self, speeds: Array, signals: Array) -> list[QPointF]:
        return [self.point_at(speed, signal) for speed, signal in zip(speeds.tolist(), signals.tolist(), strict=True)]

    def _draw_points(self, painter: QPainter, picture: FitPicture) -> None:
        radius = self._style.px(5)
        painter.setPen(QPen(QColor(self._style.theme.card), self._style.px(1.5)))
        painter.setBrush(QColor(self._style.theme.ink))
        for speed, signal in picture.points:
            painter.drawEllipse(self.point_at(speed, signal), radius, radius)

    def _draw_key(self, painter: QPainter) -> None:
        """Say at the top right what is drawn how."""
        theme, px = self._style.theme, self._style.px
        metrics = QFontMetricsF(painter.font())
        x, y = self._plot.right(), metrics.height() / 2
        wash = QColor(theme.film_wet)
        wash.setAlpha(_BAND_ALPHA)
        for words, draw in ((say("error, 19 in 20"), "band"), (say("law"), "line"), (say("measured"), "dot")):
            x -= metrics.horizontalAdvance(words)
            painter.setPen(QColor(theme.muted))
            painter.drawText(QPointF(x, y + metrics.ascent() / 2 - px(1)), words)
            x -= px(22)
            if draw == "band":
                painter.fillRect(QRectF(x, y - px(5), px(16), px(10)), wash)
            elif draw == "line":
                painter.setPen(QPen(QColor(theme.film_wet), px(2)))
                painter.drawLine(QLineF(x, y, x + px(16), y))
            else:
                painter.setPen(Qt.PenStyle.NoPen)
                painter.setBrush(QColor(theme.ink))
                painter.drawEllipse(QPointF(x + px(10), y), px(4), px(4))
            x -= px(14)
