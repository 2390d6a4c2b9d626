"""The lanes: coats as blocks with the pattern of their stage, paler once they lie ahead, ready times as diamonds."""

from __future__ import annotations

from collections.abc import Iterator
from math import floor

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPen, QPolygonF

from studiowatch.ui.models.history_lanes import Block, CoatSpan, Lane
from studiowatch.ui.models.times import clock_words
from studiowatch.ui.widgets.history_axis import LABEL_GAP_PX, Paper, strong_font
from studiowatch.ui.widgets.history_patterns import TILE_PX, Patterns
from studiowatch.ui.widgets.history_trace import blended

BAR_SHARE = 0.62  # of a row's height, the rest is space
NARROW_BAR_SHARE = 0.82  # when rows are low
AHEAD_STRENGTH = 0.34
PLATE_SPACE_PX = 5.0
MOST_READY_SHARE = 0.62  # half the width of a diamond, of a line of text, at most
DASHES = [3.0, 3.0]


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
        row_px = self.paper.layout.rows.row_px
        place = QRectF(6, middle_px - row_px / 2, width_px, row_px)
        flags = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter | Qt.TextFlag.TextWordWrap
        wrapped = metrics.boundingRect(place, flags, lane.title)
        fits = wrapped.width() <= width_px and wrapped.height() <= row_px
        self.painter.setFont(font)
        self.painter.setPen(QColor(self.theme.ink))
        name = lane.title if fits else metrics.elidedText(lane.title, Qt.TextElideMode.ElideRight, width_px)
        self.painter.drawText(place, flags, name)

    def _draw_lane_words(self, lane: Lane, top_px: float) -> None:
        for coat in self._seen(lane):
            self._draw_label(coat, top_px, self._draw_ready_later(coat, top_px))
        for coat in lane.coats:
            self._draw_ready(coat, top_px)
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

    def _draw_label(self, coat: CoatSpan, top_px: float, most_px: float) -> None:
        """Write the coat's name at the left end of what is seen of it, if it fits there and left of `most_px`."""
        time, metrics = self.paper.time, QFontMetricsF(self.paper.label_font)
        left_px = max(time.x(coat.start_ms), time.left_px) + PLATE_SPACE_PX
        right_px = time.x(coat.end_ms) if coat.end_ms is not None else time.right_px
        room_px = min(right_px, most_px) - left_px - 3 * PLATE_SPACE_PX
        title = coat.title(time.start_ms, time.end_ms)
        words = metrics.elidedText(title, Qt.TextElideMode.ElideRight, room_px)
        if len(words) >= min(len(title), 4):
            self._draw_plate(words, left_px, top_px, self.theme.ink)

    def _draw_ready_later(self, coat: CoatSpan, top_px: float) -> float:
        """Write a ready time beyond the right edge with an arrow at that edge; return how far other words may reach."""
        time = self.paper.time
        if coat.ready_ms is None or coat.ready_ms <= time.end_ms:
            return time.right_px
        words = f"{clock_words(coat.ready_ms, self.paper.now_ms)} \N{SINGLE RIGHT-POINTING ANGLE QUOTATION MARK}"
        left_px = time.right_px - self._plate_px(words)
        self._draw_plate(words, left_px, top_px, self.theme.good)
        return left_px

    def _plate_px(self, words: str) -> float:
        return QFontMetricsF(self.paper.label_font).horizontalAdvance(words) + 2 * PLATE_SPACE_PX

    def _draw_plate(self, words: str, left_px: float, top_px: float, color: str) -> None:
        metrics = QFontMetricsF(self.paper.label_font)
        height_px = min(metrics.height() + 2, self.bar_px - 4)
        plate = QRectF(
            left_px,
            top_px + (self.bar_px - height_px) / 2,
            self._plate_px(words),
            height_px,
        )
        self.painter.setPen(Qt.PenStyle.NoPen)
        self.painter.setBrush(QColor(self.theme.card))
        self.painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self.painter.drawRoundedRect(plate, 3, 3)
        self.painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=False)
        self.painter.setFont(self.paper.label_font)
        self.painter.setPen(QColor(color))
        self.painter.drawText(plate, Qt.AlignmentFlag.AlignCenter, words)

    def _draw_ready(self, coat: CoatSpan, top_px: float) -> None:
        """Draw a diamond at the hour a coat is ready, if in view, and the hour beside it where there is room."""
        time = self.paper.time
        if coat.ready_ms is None or not time.start_ms <= coat.ready_ms <= time.end_ms:
            return
        x = time.x(coat.ready_ms)
        half_px = min(0.42 * self.bar_px, MOST_READY_SHARE * QFontMetricsF(self.paper.label_font).height())
        words = clock_words(coat.ready_ms, self.paper.now_ms)
        left_px = self._beside(coat, x, half_px + PLATE_SPACE_PX / 2, self._plate_px(words))
        if left_px is not None:
            self._draw_plate(words, left_px, top_px, self.theme.good)
        self._draw_diamond(x, top_px + self.bar_px / 2, half_px)

    def _beside(self, coat: CoatSpan, x: float, space_px: float, width_px: float) -> float | None:
        """Return where words fit beside a diamond at `x`, clear of the line of now and the coat's name, or None."""
        time = self.paper.time
        name_px = self._plate_px(coat.title(time.start_ms, time.end_ms)) + 2 * PLATE_SPACE_PX
        least_px = max(time.x(coat.start_ms), time.left_px) + name_px
        now_px = time.x(self.paper.now_ms)
        for left_px in (x + space_px, x - space_px - width_px):
            right_px = left_px + width_px
            if least_px <= left_px and right_px <= time.right_px and not left_px <= now_px <= right_px:
                return left_px
        return None

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
