"""Draws the panels of a review, on the screen and on paper alike."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

import numpy as np
from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPainterPath, QPen, QPolygonF

from studiowatch.speech.dates import day_of_week
from studiowatch.speech.words import mark, say
from studiowatch.studio.review_views import Phase
from studiowatch.ui.models.history_axis import Tick, TimeScale, time_ticks
from studiowatch.ui.models.review_plot import Line, Panel, Picture
from studiowatch.ui.models.times import HOUR_MS
from studiowatch.ui.theme import Theme
from studiowatch.ui.widgets.history_axis import hairline, label_font, strong_font

_WASH = {Phase.WET: ("film_wet", 36), Phase.CLOSING: ("good", 26)}  # colour and opacity of 255
_PHASES = {Phase.WET: mark("wet"), Phase.CLOSING: mark("closing and hardening")}
_A_DAY = date(2026, 11, 25)  # of a name that is wide, which the ticks leave room for
BESIDE_NAMES = [(mark("this coat"), "film_wet"), (mark("came out clear"), "good"), (mark("clouded (dashed)"), "act")]
_TITLE_LINES = 1.5  # lines of text above each panel


@dataclass(frozen=True, slots=True, kw_only=True)
class ReviewPicture:
    """The picture in a rectangle.

    Attributes
    ----------
    unit_px : float
        Pixels of one unit at 100 %: lines and gaps scale by it.
    """

    picture: Picture
    painter: QPainter
    place: QRectF
    theme: Theme
    font: QFont
    unit_px: float = 1.0

    @property
    def _line_px(self) -> float:
        return QFontMetricsF(label_font(self.font)).height()

    @property
    def plot(self) -> QRectF:
        """Where the lines lie, right of the value labels."""
        metrics = QFontMetricsF(label_font(self.font))
        labels = [panel.scale.label(tick) for panel in self.picture.panels for tick in panel.scale.ticks]
        wide = max((metrics.horizontalAdvance(words) for words in labels), default=0.0) + 10.0 * self.unit_px
        top, foot = 1.4 * self._line_px, 1.8 * self._line_px
        return self.place.adjusted(wide, top, -8.0 * self.unit_px, -foot)

    @property
    def time(self) -> TimeScale:
        """The map between time and pixels."""
        plot = self.plot
        return TimeScale(
            start_ms=self.picture.start_ms, end_ms=self.picture.end_ms, left_px=plot.left(), width_px=plot.width()
        )

    def draw(self) -> None:
        """Draw all of it."""
        self.painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._draw_spans()
        plot, panels = self.plot, self.picture.panels
        title = _TITLE_LINES * self._line_px
        high = (plot.height() - title * len(panels)) / max(len(panels), 1)
        for row, panel in enumerate(panels):
            top = plot.top() + row * (high + title)
            self._draw_panel(panel, QRectF(plot.left(), top + title, plot.width(), high))
        self._draw_time()

    def _draw_spans(self) -> None:
        plot, time = self.plot, self.time
        self.painter.setFont(strong_font(label_font(self.font)))
        for span in self.picture.spans:
            left, right = (min(max(time.x(at), plot.left()), plot.right()) for at in (span.start_ms, span.end_ms))
            ink, opacity = _WASH[span.phase]
            wash = QColor(getattr(self.theme, ink))
            wash.setAlpha(opacity)
            self.painter.fillRect(QRectF(left, self.place.top(), right - left, plot.bottom() - self.place.top()), wash)
            self.painter.setPen(QColor(getattr(self.theme, ink)))
            words = QRectF(left + 5.0 * self.unit_px, self.place.top(), right - left, 1.4 * self._line_px)
            phase = say(_PHASES[span.phase])
            metrics = QFontMetricsF(self.painter.font())
            if metrics.horizontalAdvance(phase) < words.width() - 5.0 * self.unit_px:
                self.painter.drawText(words, _flags(Qt.AlignmentFlag.AlignLeft), phase)

    def _draw_panel(self, panel: Panel, area: QRectF) -> None:
        self.painter.setFont(label_font(self.font))
        for tick in panel.scale.ticks:
            y = self._y(panel, area, tick)
            self.painter.setPen(hairline(self.theme.edge))
            self.painter.drawLine(QLineF(area.left(), y, area.right(), y))
            self.painter.setPen(QColor(self.theme.muted))
            words = QRectF(self.place.left(), y - self._line_px / 2, area.left() - self.place.left(), self._line_px)
            words.setRight(area.left() - 6.0 * self.unit_px)
            self.painter.drawText(words, _flags(Qt.AlignmentFlag.AlignRight), panel.scale.label(tick))
        self._draw_limit(panel, area)
        self.painter.save()
        self.painter.setClipRect(area.adjusted(0, -2, 0, 2))
        for line in panel.lines:
            self._draw_line(panel, line, area)
        self.painter.restore()
        self._draw_limit_words(panel, area)
        self._draw_title(panel, area)
        if panel.unit == "g/m²" and self.picture.sealed_words:
            self._draw_sealed(area)

    def _draw_title(self, panel: Panel, area: QRectF) -> None:
        """Write what the panel shows, each line's name in the line's colour."""
        metrics = QFontMetricsF(self.painter.font())
        names = [(line.words, line.ink) for line in panel.lines] if len(panel.lines) > 1 else []
        if self.picture.since_laid:
            names = [(say(words), ink) for words, ink in BESIDE_NAMES]
        if panel.unit == "g/m²" and panel.lines:
            names = [(line.words, line.ink) for line in panel.lines]
        x = area.left() + 5.0 * self.unit_px
        for words, ink in [(f"{panel.title}, {panel.unit}", "muted"), *names]:
            self.painter.setPen(QColor(getattr(self.theme, ink if ink != "film_dry_mark" else "muted")))
            place = QRectF(x, area.top() - 1.3 * self._line_px, area.right() - x, self._line_px)
            self.painter.drawText(place, _flags(Qt.AlignmentFlag.AlignLeft), words)
            x += metrics.horizontalAdvance(words) + 12.0 * self.unit_px

    def _draw_limit(self, panel: Panel, area: QRectF) -> None:
        if panel.limit is None:
            return
        y = self._y(panel, area, panel.limit)
        self.painter.setPen(QPen(QColor(self.theme.caution), self.unit_px, Qt.PenStyle.DashLine))
        self.painter.drawLine(QLineF(area.left(), y, area.right(), y))

    def _draw_limit_words(self, panel: Panel, area: QRectF) -> None:
        """Write what the limit is, with an edge around the letters, so that a line behind them leaves them readable."""
        if panel.limit is None:
            return
        y = self._y(panel, area, panel.limit)
        fits_below = y + self._line_px < area.bottom() + 0.4 * self._line_px
        top = y + 1.0 if fits_below else y - self._line_px - 1.0
        font = self.painter.font()
        metrics = QFontMetricsF(font)
        left = area.right() - 4.0 * self.unit_px - metrics.horizontalAdvance(panel.limit_words)
        letters = QPainterPath()
        letters.addText(left, top + (self._line_px + metrics.ascent() - metrics.descent()) / 2, font, panel.limit_words)
        edge = QPen(QColor(self.theme.card), 3.0 * self.unit_px)
        edge.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        self.painter.strokePath(letters, edge)
        self.painter.fillPath(letters, QColor(self.theme.caution))

    def _draw_line(self, panel: Panel, line: Line, area: QRectF) -> None:
        pen = QPen(QColor(getattr(self.theme, line.ink)), (2.4 if line.wide else 1.3) * self.unit_px)
        if line.dashed:
            pen.setStyle(Qt.PenStyle.DashLine)
        self.painter.setPen(pen)
        x = [self.time.x(float(at)) for at in line.time_ms]
        y = area.bottom() - area.height() * (line.values - panel.scale.low) / (panel.scale.high - panel.scale.low)
        broken = np.flatnonzero(~np.isfinite(line.values))
        for first, last in zip([0, *(broken + 1)], [*broken, len(x)], strict=True):
            if last - first > 1:
                points = QPolygonF([QPointF(x[at], float(y[at])) for at in range(first, last)])
                self.painter.drawPolyline(points)

    def _draw_sealed(self, area: QRectF) -> None:
        x, y = self.time.x(self.picture.laid_ms), area.top() + 0.5 * area.height()
        radius = 4.5 * self.unit_px
        self.painter.setPen(Qt.PenStyle.NoPen)
        self.painter.setBrush(QColor(self.theme.act))
        self.painter.drawEllipse(QPointF(x, y), radius, radius)
        self.painter.setPen(QColor(self.theme.act))
        self.painter.setFont(strong_font(label_font(self.font)))
        wide = QFontMetricsF(self.painter.font()).horizontalAdvance(self.picture.sealed_words)
        left = x - wide - 2 * radius if x - wide - 2 * radius > area.left() else x + 2 * radius
        place = QRectF(left, y - self._line_px / 2, wide + 1, self._line_px)
        self.painter.drawText(place, _flags(Qt.AlignmentFlag.AlignLeft), self.picture.sealed_words)

    def _draw_time(self) -> None:
        plot, time = self.plot, self.time
        metrics = QFontMetricsF(strong_font(label_font(self.font)))
        most = max(int(plot.width() / (metrics.horizontalAdvance(day_of_week(_A_DAY)) + 16.0 * self.unit_px)), 1)
        free_from = plot.left() - 20.0
        for tick in self._ticks(most):
            x = time.x(tick.time_ms)
            self.painter.setPen(hairline(self.theme.muted))
            self.painter.drawLine(QLineF(x, plot.bottom(), x, plot.bottom() + 4.0 * self.unit_px))
            self.painter.setFont(strong_font(label_font(self.font)) if tick.strong else label_font(self.font))
            half = QFontMetricsF(self.painter.font()).horizontalAdvance(tick.label) / 2
            left = min(x - half, self.place.right() - 2 * half)
            if left < free_from:
                continue
            free_from = left + 2 * half + 8.0 * self.unit_px
            self.painter.setPen(QColor(self.theme.ink if tick.strong else self.theme.muted))
            place = QRectF(left, plot.bottom() + 4.0 * self.unit_px, 2 * half + 1, 1.3 * self._line_px)
            self.painter.drawText(place, _flags(Qt.AlignmentFlag.AlignLeft), tick.label)

    def _ticks(self, most: int) -> Sequence[Tick]:
        if not self.picture.since_laid:
            return time_ticks(self.picture.start_ms, self.picture.end_ms, most)
        hours = range(0, self.picture.end_ms // HOUR_MS + 1, 2)
        return [
            Tick(time_ms=hour * HOUR_MS, label=f"{hour} h" if hour else say("laid"), strong=not hour) for hour in hours
        ]

    @staticmethod
    def _y(panel: Panel, area: QRectF, value: float) -> float:
        share = (value - panel.scale.low) / (panel.scale.high - panel.scale.low)
        return round(area.bottom() - area.height() * share) + 0.5


def _flags(side: Qt.AlignmentFlag) -> int:
    return int(side | Qt.AlignmentFlag.AlignVCenter)
