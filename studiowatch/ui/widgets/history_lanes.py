"""The lanes: coats as blocks with the pattern of their stage, paler once they lie ahead, ready times as diamonds."""

from __future__ import annotations

from math import floor, isnan

import numpy as np
from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPen, QPolygonF

from studiowatch.ui.models.history_lanes import CoatSpan, Lane
from studiowatch.ui.models.history_table import Floats, LaneTable
from studiowatch.ui.models.times import clock_words
from studiowatch.ui.widgets.history_axis import LABEL_GAP_PX, Paper, strong_font
from studiowatch.ui.widgets.history_blocks import BlockPainter
from studiowatch.ui.widgets.history_patterns import Patterns
from studiowatch.ui.widgets.history_stamps import Stamps

BAR_SHARE = 0.62  # of a row's height, the rest is space
NARROW_BAR_SHARE = 0.82  # when rows are low
TIP_SHARE, PROMPT_SHARE = 0.22, 1.0  # of a bar's height, where warnings point to and prompts stand, clear of the words
PLATE_SPACE_PX = 5.0
MOST_READY_SHARE = 0.62  # half the width of a diamond, of a line of text, at most


class LanePainter:
    """Draws the lanes on the paper."""

    def __init__(self, paper: Paper, patterns: Patterns, stamps: Stamps) -> None:
        self.paper = paper
        self.stamps = stamps
        self.painter = paper.painter
        self.patterns = patterns
        self.theme = paper.theme
        rows = paper.layout.rows
        low = rows.row_px < 2 * QFontMetricsF(paper.font).height()
        self.label_font = paper.label_font
        self.metrics = QFontMetricsF(self.label_font)
        self.least_label_px = self.metrics.horizontalAdvance("isol")
        self.bar_px = floor(rows.row_px * (NARROW_BAR_SHARE if low else BAR_SHARE))

    def draw_blocks(self, table: LaneTable, scroll_px: float) -> None:
        """Draw what lies below the line of now: the blocks of those lanes that are in view."""
        self.painter.save()
        part = self.paper.layout.lanes
        self.painter.setClipRect(QRectF(self.paper.time.left_px, part.top_px, self.paper.time.width_px, part.height_px))
        BlockPainter(self.paper, self.patterns, self.bar_px).draw(table, self._tops_px(table, scroll_px))
        self.painter.restore()

    def draw_words(self, table: LaneTable, scroll_px: float, chosen: int | None) -> None:
        """Draw what lies above the line of now: names, the `chosen` one bold, labels, ready times and warnings."""
        self.painter.save()
        part, time = self.paper.layout.lanes, self.paper.time
        self.painter.setClipRect(QRectF(0, part.top_px, time.right_px + 10, part.height_px))
        tops_px = self._tops_px(table, scroll_px)
        self._draw_names(table.lanes, tops_px, chosen)
        self._draw_labels(table, tops_px)
        for row, coat in table.waiting:
            if not isnan(tops_px[row]):
                self._draw_ready(coat, tops_px[row])
        shares = np.tile([TIP_SHARE, PROMPT_SHARE], len(table.lanes))
        self.stamps.draw(self.painter, table.marks, time, np.repeat(tops_px, 2) + shares * self.bar_px)
        if self.paper.layout.rows.furthest_px:
            self._draw_scroll(scroll_px)
        self.painter.restore()

    def _tops_px(self, table: LaneTable, scroll_px: float) -> Floats:
        """Return the top of each lane's bar, px; NaN for a lane that is scrolled away."""
        part, row_px = self.paper.layout.lanes, self.paper.layout.rows.row_px
        rows_px = part.top_px + row_px * np.arange(len(table.lanes)) - scroll_px
        seen = (part.top_px - row_px < rows_px) & (rows_px < part.bottom_px)
        return np.where(seen, np.rint(rows_px + (row_px - self.bar_px) / 2), np.nan)

    def _draw_names(self, lanes: tuple[Lane, ...], tops_px: Floats, chosen: int | None) -> None:
        for row in np.flatnonzero(~np.isnan(tops_px)).tolist():
            if lanes[row].title:
                self._draw_name(lanes[row], tops_px[row] + self.bar_px / 2, chosen=row == chosen)

    def _draw_labels(self, table: LaneTable, tops_px: Floats) -> None:
        """Write the names of the coats that are wide enough for one, and the ready times beyond the right edge."""
        spans, time = table.spans, self.paper.time
        left_px, right_px = spans.edges_px(time, slice(None), 0.0)
        wide = right_px - left_px >= self.least_label_px + 4 * PLATE_SPACE_PX
        for at in np.flatnonzero(spans.seen(time) & wide & ~np.isnan(tops_px[spans.row])).tolist():
            coat, top_px = table.coats[at], tops_px[spans.row[at]]
            most_px = self._draw_ready_later(coat, top_px)
            self._draw_label(coat, top_px, most_px)

    def _draw_name(self, lane: Lane, middle_px: float, *, chosen: bool) -> None:
        font = strong_font(self.paper.label_font) if chosen else self.paper.label_font
        metrics = QFontMetricsF(font)
        width_px = self.paper.layout.left_px - LABEL_GAP_PX - 6
        row_px = self.paper.layout.rows.row_px
        place = QRectF(6, middle_px - row_px / 2, width_px, row_px)
        flags = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        fits = metrics.horizontalAdvance(lane.title) <= width_px
        if not fits:  # two lines, if the row has room for them
            flags |= Qt.TextFlag.TextWordWrap
            wrapped = metrics.boundingRect(place, flags, lane.title)
            fits = wrapped.width() <= width_px and wrapped.height() <= row_px
        self.painter.setFont(font)
        self.painter.setPen(QColor(self.theme.ink))
        name = lane.title if fits else metrics.elidedText(lane.title, Qt.TextElideMode.ElideRight, width_px)
        self.painter.drawText(place, flags, name)

    def _draw_label(self, coat: CoatSpan, top_px: float, most_px: float) -> None:
        """Write the coat's name at the left end of what is seen of it, if it fits there and left of `most_px`."""
        time, metrics = self.paper.time, self.metrics
        left_px = max(time.x(coat.start_ms), time.left_px) + PLATE_SPACE_PX
        right_px = time.x(coat.end_ms) if coat.end_ms is not None else time.right_px
        room_px = min(right_px, most_px) - left_px - 3 * PLATE_SPACE_PX
        if room_px < self.least_label_px:
            return
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
        return self.metrics.horizontalAdvance(words) + 2 * PLATE_SPACE_PX

    def _draw_plate(self, words: str, left_px: float, top_px: float, color: str) -> None:
        metrics = self.metrics
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
        self.painter.setFont(self.label_font)
        self.painter.setPen(QColor(color))
        self.painter.drawText(plate, Qt.AlignmentFlag.AlignCenter, words)

    def _draw_ready(self, coat: CoatSpan, top_px: float) -> None:
        """Draw a diamond at the hour a coat is ready, if in view, and the hour beside it where there is room."""
        time = self.paper.time
        if coat.ready_ms is None or not time.start_ms <= coat.ready_ms <= time.end_ms:
            return
        x = time.x(coat.ready_ms)
        half_px = min(0.42 * self.bar_px, MOST_READY_SHARE * self.metrics.height())
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
