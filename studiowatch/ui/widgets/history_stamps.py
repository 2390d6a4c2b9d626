"""Stamps for warnings and prompts along the time axis: drawn once, set down by the hundred in one call."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPixmap, QPolygonF

from studiowatch.studio.words import Level
from studiowatch.ui.models.history_axis import TimeScale
from studiowatch.ui.models.history_marks import DONE, NOT_DONE, RANKS, MarkTable
from studiowatch.ui.models.history_table import Floats
from studiowatch.ui.theme import Theme
from studiowatch.ui.widgets.strokes import draw_stamps

MARK_SHARE = 0.32  # half the width of a warning's mark, of a line of text
DISC_SHARE = 0.62  # of that, the radius of a prompt's
EDGE_PX = 1.4
SPACE_PX = 2.0  # around the shape, for its smooth edge
MANY_GAP_PX = 2.0  # between a mark and the bar over it


class Stamps:
    """The stamps of one theme, text size and pixel ratio; made once, used until one of these changes.

    A warning is a triangle that points down, filled to act on and hollow for caution; a bar over it says that it
    stands for several. A prompt is a small disc, filled once it was done.
    """

    def __init__(self, theme: Theme, line_px: float, ratio: float) -> None:
        self.of = (theme, line_px, ratio)
        self.theme = theme
        self.half_px = line_px * MARK_SHARE
        self._ratio = ratio
        self._width = round((2 * self.half_px + 2 * SPACE_PX) * ratio)  # of one stamp, in the screen's own pixels
        self._height = round((1.6 * self.half_px + MANY_GAP_PX + 2 * EDGE_PX + 2 * SPACE_PX) * ratio)
        self._sheet = self._drawn()

    def draw(self, painter: QPainter, marks: MarkTable, time: TimeScale, tips_px: Floats) -> None:
        """Set down marks with their tips at the height of their row; a row whose height is NaN is not drawn."""
        shown = marks.clusters(time, 2 * self.half_px)
        if not shown.row.size:
            return
        tip_px = tips_px[shown.row]
        there = ~np.isnan(tip_px)
        x = time.left_px + (shown.time_ms[there] - time.start_ms) / time.ms_per_px
        number = 2 * shown.rank[there] + (shown.count[there] > 1)
        middle_px = tip_px[there] + SPACE_PX - self._height / 2 / self._ratio
        rows = np.zeros((x.size, 10))
        rows[:, 0], rows[:, 1] = self._on_pixels(x, self._width), self._on_pixels(middle_px, self._height)
        rows[:, 2], rows[:, 4], rows[:, 5] = number * self._width, self._width, self._height
        rows[:, 6:8], rows[:, 9] = 1 / self._ratio, 1.0
        draw_stamps(painter, rows, self._sheet)

    def _on_pixels(self, middle: Floats, size: int) -> Floats:
        """Return middles, px, so that edges fall on the screen's own pixels and stay sharp."""
        return (np.rint(middle * self._ratio - size / 2) + size / 2) / self._ratio

    def _drawn(self) -> QPixmap:
        """Return all stamps beside each other: for each rank the one alone, then the one that stands for several."""
        sheet = QPixmap(2 * len(RANKS) * self._width, self._height)
        sheet.fill(Qt.GlobalColor.transparent)
        painter = QPainter(sheet)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for number, rank in enumerate(np.repeat(np.arange(len(RANKS)), 2).tolist()):
            painter.resetTransform()
            painter.translate(number * self._width, 0)
            painter.scale(self._ratio, self._ratio)
            self._draw_one(painter, RANKS[rank], many=number % 2 == 1)
        painter.end()
        return sheet

    def _draw_one(self, painter: QPainter, what: Level | str, *, many: bool) -> None:
        x, tip_px = self._width / 2 / self._ratio, self._height / self._ratio - SPACE_PX
        half_px = self.half_px
        if what in {DONE, NOT_DONE}:
            top_px = self._draw_prompt(painter, x, tip_px, done=what == DONE)
            half_px *= DISC_SHARE
        else:
            top_px = self._draw_warning(painter, x, tip_px, urgent=what is Level.ACT)
        if many:
            y = top_px - MANY_GAP_PX - EDGE_PX / 2
            painter.drawLine(QLineF(x - half_px, y, x + half_px, y))

    def _draw_warning(self, painter: QPainter, x: float, tip_px: float, *, urgent: bool) -> float:
        """Draw a triangle; return where its top is."""
        color, top_px = QColor(self.theme.act if urgent else self.theme.caution), tip_px - 1.6 * self.half_px
        painter.setPen(QPen(color, EDGE_PX))
        painter.setBrush(color if urgent else QColor(self.theme.card))
        corners = (QPointF(x - self.half_px, top_px), QPointF(x + self.half_px, top_px), QPointF(x, tip_px))
        painter.drawPolygon(QPolygonF(corners))
        return top_px

    def _draw_prompt(self, painter: QPainter, x: float, tip_px: float, *, done: bool) -> float:
        """Draw a disc; return where its top is."""
        color, card, radius_px = QColor(self.theme.good), QColor(self.theme.card), DISC_SHARE * self.half_px
        painter.setPen(QPen(card if done else color, EDGE_PX))
        painter.setBrush(color if done else card)
        painter.drawEllipse(QRectF(x - radius_px, tip_px - 2 * radius_px, 2 * radius_px, 2 * radius_px))
        painter.setPen(QPen(color, EDGE_PX))
        return tip_px - 2 * radius_px
