"""The lanes: coats as blocks with the pattern of their stage, paler once they lie ahead, ready times as diamonds."""

from __future__ import annotations

from collections.abc import Iterator
from math import floor

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFontMetricsF, QPainter, QPainterPath, QPen, QPixmap, QPolygonF

from studiowatch.ui.models.history_lanes import Block, CoatSpan, Lane, Look
from studiowatch.ui.models.times import clock_words
from studiowatch.ui.theme import Theme
from studiowatch.ui.widgets.history_axis import LABEL_GAP_PX, Paper, strong_font
from studiowatch.ui.widgets.history_trace import blended

TILE_PX = 8
BAR_SHARE = 0.62  # of a row's height, the rest is space
NARROW_BAR_SHARE = 0.82  # when rows are low
AHEAD_STRENGTH = 0.34
PLATE_SPACE_PX = 5.0
READY_SHARE = 0.34  # half the width of a diamond beside its time, of a line of text
MOST_READY_SHARE = 0.62
DASHES = [3.0, 3.0]


class Patterns:
    """The brushes of the looks in one theme and at one pixel ratio; made once, drawn often."""

    def __init__(self, theme: Theme, ratio: float) -> None:
        self.theme = theme
        self.ratio = ratio
        self.edges = {
            Look.WET: theme.film_wet,
            Look.TACKY: theme.film_wet,
            Look.DRY: theme.film_dry_mark,
            Look.PAINT: theme.paint,
        }
        self._brushes = {
            Look.WET: self._tile(theme.film_wet, theme.film_wet_mark, _wave()),
            Look.TACKY: self._tile(theme.film_tacky, theme.film_wet, _dots(), filled=True),
            Look.DRY: self._tile(theme.film_dry, theme.film_dry_mark, _hatch()),
            Look.PAINT: QBrush(QColor(theme.paint)),
        }

    def brush(self, look: Look) -> QBrush:
        """Return the brush of a look."""
        return self._brushes[look]

    def _tile(self, ground: str, mark: str, path: QPainterPath, *, filled: bool = False) -> QBrush:
        side_px = round(TILE_PX * self.ratio)
        tile = QPixmap(side_px, side_px)
        tile.fill(QColor(ground))
        painter = QPainter(tile)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.scale(side_px / TILE_PX, side_px / TILE_PX)
        if filled:
            painter.fillPath(path, QColor(mark))
        else:
            painter.strokePath(path, QPen(QColor(mark), 1.1))
        painter.end()
        tile.setDevicePixelRatio(self.ratio)
        return QBrush(tile)


def _wave() -> QPainterPath:
    path = QPainterPath(QPointF(-4, 4))
    for start in (-4, 0, 4, 8):
        path.quadTo(start + 2, 4 + (3 if start % 8 else -3), start + 4, 4)
    return path


def _dots() -> QPainterPath:
    path = QPainterPath()
    for x, y in ((2, 2), (6, 6)):
        path.addEllipse(QPointF(x, y), 1.0, 1.0)
    return path


def _hatch() -> QPainterPath:
    path = QPainterPath()
    for shift in (-8, 0, 8):
        path.moveTo(shift - 1, 9)
        path.lineTo(shift + 9, -1)
    return path


class LanePainter:
    """Draws the lanes on the paper."""

    def __init__(self, paper: Paper, patterns: Patterns) -> None:
        self.paper = paper
        self.painter = paper.painter
        self.patterns = patterns
        self.theme = paper.theme
        rows = paper.layout.rows
        low = rows.row_px < 2 * QFontMetricsF(paper.font).height()
        self.bar_px = floor(rows.row_px * (NARROW_BAR_SHARE if low else BAR_SHARE))

    def draw_blocks(self, lanes: tuple[Lane, ...], scroll_px: float) -> None:
        """Draw what lies below the line of now: the blocks of those of `lanes` that are in view."""
        self.painter.save()
        part = self.paper.layout.lanes
        self.painter.setClipRect(QRectF(self.paper.time.left_px, part.top_px, self.paper.time.width_px, part.height_px))
        for lane, middle_px in self._in_view(lanes, scroll_px):
            for coat in self._seen(lane):
                for block in coat.blocks:
                    self._draw_block(block, round(middle_px - self.bar_px / 2))
        self.painter.restore()

    def draw_words(self, lanes: tuple[Lane, ...], scroll_px: float, chosen: int | None) -> None:
        """Draw what lies above the line of now: names, the `chosen` one bold, labels, ready times and warnings."""
        self.painter.save()
        part = self.paper.layout.lanes
        self.painter.setClipRect(QRectF(0, part.top_px, self.paper.time.right_px + 10, part.height_px))
        for lane, middle_px in self._in_view(lanes, scroll_px):
            self._draw_name(lane, middle_px, chosen=chosen is not None and lane is lanes[chosen])
            self._draw_lane_words(lane, round(middle_px - self.bar_px / 2))
        if self.paper.layout.rows.furthest_px:
            self._draw_scroll(scroll_px)
        self.painter.restore()

    def _in_view(self, lanes: tuple[Lane, ...], scroll_px: float) -> Iterator[tuple[Lane, float]]:
        """Yield the lanes that are in view, each with the middle of its row."""
        part, row_px = self.paper.layout.lanes, self.paper.layout.rows.row_px
        for row, lane in enumerate(lanes):
            top_px = part.top_px + row * row_px - scroll_px
            if part.top_px - row_px < top_px < part.bottom_px:
                yield lane, top_px + row_px / 2

    def _seen(self, lane: Lane) -> list[CoatSpan]:
        time = self.paper.time
        return [
            coat
            for coat in lane.coats
            if coat.start_ms < time.end_ms and (coat.end_ms is None or coat.end_ms > time.start_ms)
        ]

    def _draw_name(self, lane: Lane, middle_px: float, *, chosen: bool) -> None:
        font = strong_font(self.paper.label_font) if chosen else self.paper.label_font
        metrics = QFontMetricsF(font)
        width_px = self.paper.layout.left_px - LABEL_GAP_PX - 6
        place = QRectF(6, middle_px - metrics.height() / 2, width_px, metrics.height())
        self.painter.setFont(font)
        self.painter.setPen(QColor(self.theme.ink))
        name = metrics.elidedText(lane.title, Qt.TextElideMode.ElideRight, width_px)
        self.painter.drawText(place, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, name)

    def _draw_lane_words(self, lane: Lane, top_px: float) -> None:
        for coat in self._seen(lane):
            self._draw_label(coat, top_px)
        for coat in lane.coats:
            self._draw_ready(coat, top_px + self.bar_px / 2)
            self._draw_ready_later(coat, top_px)
        self.paper.draw_marks(lane.marks, top_px + 0.22 * self.bar_px)

    def _draw_block(self, block: Block, top_px: float) -> None:
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
            pen = QPen(blended(self.patterns.edges[block.look], self.theme.ahead, 0.7), 1.0, Qt.PenStyle.CustomDashLine)
            pen.setDashPattern(DASHES)
            self.painter.setPen(pen)
            self.painter.setBrush(Qt.BrushStyle.NoBrush)
            self.painter.drawRect(bar)

    def _bar(self, left_px: float, right_px: float, top_px: float) -> QRectF:
        left_px, right_px = round(left_px) + 0.5, round(right_px) + 0.5
        return QRectF(left_px, top_px + 0.5, max(right_px - left_px, 1.0), self.bar_px - 1)

    def _draw_label(self, coat: CoatSpan, top_px: float) -> None:
        """Write the coat's name on a plate of paper at the left end of what is seen of it, if it fits there."""
        time, metrics = self.paper.time, QFontMetricsF(self.paper.label_font)
        left_px = max(time.x(coat.start_ms), time.left_px) + PLATE_SPACE_PX
        right_px = time.x(coat.end_ms) if coat.end_ms is not None else time.right_px
        room_px = min(right_px, time.right_px) - left_px - 3 * PLATE_SPACE_PX
        words = metrics.elidedText(coat.label, Qt.TextElideMode.ElideRight, room_px)
        if len(words) < min(len(coat.label), 4):
            return
        self._draw_plate(words, left_px, top_px, self.theme.ink)

    def _draw_ready_later(self, coat: CoatSpan, top_px: float) -> None:
        """Write a ready time that lies beyond the right edge of the picture onto the coat's end there."""
        time, metrics = self.paper.time, QFontMetricsF(self.paper.label_font)
        if coat.ready_ms is None or coat.ready_ms <= time.end_ms:
            return
        words = clock_words(coat.ready_ms, self.paper.now_ms)
        half_px = READY_SHARE * metrics.height()
        width_px = 2 * half_px + metrics.horizontalAdvance(words) + 3 * PLATE_SPACE_PX
        left_px = time.right_px - width_px
        label_px = metrics.horizontalAdvance(coat.label) + 4 * PLATE_SPACE_PX
        if left_px > max(time.x(coat.start_ms), time.left_px) + label_px and left_px > time.x(self.paper.now_ms):
            words_left_px = left_px + 2 * half_px
            self._draw_plate(words, words_left_px, top_px, self.theme.good)
            self._draw_diamond(left_px + half_px, top_px + self.bar_px / 2, half_px)

    def _draw_plate(self, words: str, left_px: float, top_px: float, color: str) -> None:
        metrics = QFontMetricsF(self.paper.label_font)
        height_px = min(metrics.height() + 2, self.bar_px - 4)
        plate = QRectF(
            left_px,
            top_px + (self.bar_px - height_px) / 2,
            metrics.horizontalAdvance(words) + 2 * PLATE_SPACE_PX,
            height_px,
        )
        self.painter.setPen(Qt.PenStyle.NoPen)
        paper = QColor(self.theme.card)
        paper.setAlphaF(0.88)
        self.painter.setBrush(paper)
        self.painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self.painter.drawRoundedRect(plate, 3, 3)
        self.painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=False)
        self.painter.setFont(self.paper.label_font)
        self.painter.setPen(QColor(color))
        self.painter.drawText(plate, Qt.AlignmentFlag.AlignCenter, words)

    def _draw_ready(self, coat: CoatSpan, middle_px: float) -> None:
        if coat.ready_ms is None or not self.paper.time.start_ms <= coat.ready_ms <= self.paper.time.end_ms:
            return
        half_px = min(0.42 * self.bar_px, MOST_READY_SHARE * QFontMetricsF(self.paper.label_font).height())
        self._draw_diamond(self.paper.time.x(coat.ready_ms), middle_px, half_px)

    def _draw_diamond(self, x: float, middle_px: float, half_px: float) -> None:
        corners = (
            QPointF(x, middle_px - 1.35 * half_px),
            QPointF(x + half_px, middle_px),
            QPointF(x, middle_px + 1.35 * half_px),
            QPointF(x - half_px, middle_px),
        )
        self.painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self.painter.setPen(QPen(QColor(self.theme.card), 1.2))
        self.painter.setBrush(QColor(self.theme.good))
        self.painter.drawPolygon(QPolygonF(corners))
        self.painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=False)

    def _draw_scroll(self, scroll_px: float) -> None:
        """Draw a thin mark at the right that tells which part of the lanes is seen."""
        part, rows = self.paper.layout.lanes, self.paper.layout.rows
        whole_px = rows.row_px * rows.count
        top_px = part.top_px + part.height_px * scroll_px / whole_px
        x = self.paper.time.right_px + 6
        self.painter.setPen(QPen(QColor(self.theme.edge), 3.0, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap))
        self.painter.drawLine(QLineF(x, top_px + 2, x, top_px + part.height_px * rows.part_px / whole_px - 2))
