"""Blocks of the lanes: a wide one with its pattern, the many narrow ones of a look in one stroke of the brush."""

from __future__ import annotations

from math import floor

import numpy as np
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPen

from studiowatch.ui.models.history_lanes import Block, Look
from studiowatch.ui.models.history_table import LOOKS, Floats, LaneTable
from studiowatch.ui.widgets.history_axis import Paper
from studiowatch.ui.widgets.history_patterns import TILE_PX, Patterns
from studiowatch.ui.widgets.history_trace import blended
from studiowatch.ui.widgets.strokes import draw_boxes

AHEAD_STRENGTH = 0.34
DASHES = [3.0, 3.0]
PLAIN_BELOW_PX = 6.0  # a pattern of 8 px cannot be told in less; assumption
BEHIND = (Look.GONE, Look.ONCE_WET, Look.CLOUDED)  # looks that never lie ahead: drawn together, however wide
INSET = (1.0, 1.0, -2.0, -2.0)  # px, of a box within its outline
OUTLINED = {Look.GONE, Look.CLOUDED}


class BlockPainter:
    """Draws blocks on the paper, in bars of `bar_px`."""

    def __init__(self, paper: Paper, patterns: Patterns, bar_px: float) -> None:
        self.paper = paper
        self.painter = paper.painter
        self.patterns = patterns
        self.bar_px = bar_px

    def draw(self, table: LaneTable, tops_px: Floats) -> None:
        """Draw the blocks in view of the lanes that have a top, px, in `tops_px`."""
        parts, time = table.parts, self.paper.time
        seen = np.flatnonzero(parts.seen(time) & ~np.isnan(tops_px[parts.row]))
        left_px, right_px = parts.edges_px(time, seen, 4 * TILE_PX)
        look, top_px = table.look[seen], tops_px[parts.row[seen]]
        narrow = right_px - left_px < PLAIN_BELOW_PX
        behind = parts.end_ms[seen] <= self.paper.now_ms
        for number, of_look in enumerate(LOOKS):
            mine = behind & (look == number)
            if not mine.any():
                continue
            plain = mine & narrow if of_look is not Look.ONCE_WET else mine
            self._draw_together(of_look, left_px[plain], right_px[plain], top_px[plain], outlined=False)
            if of_look in OUTLINED:
                wide = mine & ~narrow
                self._draw_together(of_look, left_px[wide], right_px[wide], top_px[wide], outlined=True)
        together = narrow | np.isin(look, [LOOKS.index(one) for one in BEHIND])
        for at in np.flatnonzero(~behind | ~together).tolist():
            self._draw_patterned(table.blocks[seen[at]], top_px[at])

    def _draw_together(self, look: Look, left: Floats, right: Floats, top: Floats, *, outlined: bool) -> None:
        """Draw many blocks of a look, all of them behind now, in one go."""
        if not left.size:
            return
        left, right = np.rint(left), np.rint(right)
        boxes = np.column_stack([left, top, np.maximum(right - left, 1.0), np.full(left.size, self.bar_px)])
        self.painter.setPen(Qt.PenStyle.NoPen)
        if outlined:  # a box within a box: strokes around boxes cost more than filling both
            self.painter.setBrush(QColor(self.patterns.edges[look]))
            draw_boxes(self.painter, boxes)
            boxes += INSET
        self.painter.setBrush(self.patterns.brush(look) if outlined else self.patterns.flat[look])
        draw_boxes(self.painter, boxes)

    def _draw_patterned(self, block: Block, top_px: float) -> None:
        """Draw the past of a block in full, its future paler within a dashed edge."""
        time = self.paper.time
        left_px, now_px = time.x(block.start_ms), time.x(self.paper.now_ms)
        right_px = time.x(block.end_ms) if block.end_ms is not None else time.right_px + TILE_PX
        # Far ends lie far outside the picture when she zooms in; a painter's integers do not reach there.
        left_px, right_px = max(left_px, time.left_px - 4 * TILE_PX), min(right_px, time.right_px + 4 * TILE_PX)
        edge = QColor(self.patterns.edges[block.look])
        self.painter.setBrushOrigin(QPointF(floor(time.x(block.start_ms)) % TILE_PX, top_px))
        self.painter.setBrush(self.patterns.brush(block.look))
        if left_px < min(right_px, now_px):
            self.painter.setPen(QPen(edge, 1.0))
            self.painter.drawRect(self._bar(left_px, min(right_px, now_px), top_px))
        if max(left_px, now_px) < right_px:
            bar = self._bar(max(left_px, now_px), right_px, top_px)
            self.painter.setOpacity(AHEAD_STRENGTH)
            self.painter.fillRect(bar, self.painter.brush())
            self.painter.setOpacity(1.0)
            color = blended(self.patterns.edges[block.look], self.paper.theme.ahead, 0.7)
            pen = QPen(color, 1.0, Qt.PenStyle.CustomDashLine)
            pen.setDashPattern(DASHES)
            self.painter.setPen(pen)
            self.painter.setBrush(Qt.BrushStyle.NoBrush)
            self.painter.drawRect(bar)

    def _bar(self, left_px: float, right_px: float, top_px: float) -> QRectF:
        left_px, right_px = round(left_px) + 0.5, round(right_px) + 0.5
        return QRectF(left_px, top_px + 0.5, max(right_px - left_px, 1.0), self.bar_px - 1)
