"""The picture of the room history, painted by hand.

Plain painting instead of plot items: three plots with empty axes cost 3.6 ms a frame, their grids up to 72 ms and their
import 0.2 s of the start, while a painted curve costs 2.2 ms; and one pass can draw panels, lanes and the line of now
on one time scale.
"""

from __future__ import annotations

import sys
from collections.abc import Sequence

import numpy as np
from PySide6.QtCore import QEvent, QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QMouseEvent, QPainter, QPaintEvent, QPixmap
from PySide6.QtWidgets import QSizePolicy, QWidget

from studiowatch.service.ports import PastView, Series
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import mark, say
from studiowatch.ui.models.empty import NO_READING
from studiowatch.ui.models.history_axis import TimeScale, range_words
from studiowatch.ui.models.history_fetch import Request, covers
from studiowatch.ui.models.history_lanes import CoatSpan, Lane
from studiowatch.ui.models.history_layout import Layout, layout_of, names_px
from studiowatch.ui.models.history_live import EMPTY, RoomData
from studiowatch.ui.models.history_panels import empty_stretches, panels_of
from studiowatch.ui.models.history_past import LaneBook
from studiowatch.ui.models.history_range import TimeRange
from studiowatch.ui.models.history_view import View
from studiowatch.ui.models.history_words import pointed_words
from studiowatch.ui.theme import LIGHT, Theme
from studiowatch.ui.widgets.history_axis import LABEL_GAP_PX, Paper, hairline, label_font, strong_font
from studiowatch.ui.widgets.history_card import CORNER_PX, draw_card
from studiowatch.ui.widgets.history_lanes import LanePainter
from studiowatch.ui.widgets.history_panel import PanelPainter
from studiowatch.ui.widgets.history_patterns import Patterns
from studiowatch.ui.widgets.history_shade import draw_shade
from studiowatch.ui.widgets.history_stamps import Stamps
from studiowatch.ui.widgets.history_title import TitlePainter

NOTHING_YET = NO_READING
NONE_HERE = mark("no readings in this stretch")
MARK_REACH_PX = 8.0
LEAST_SIZE = QSize(360, 320)


class HistoryCanvas(QWidget):
    """Paints what it was given last; asks nothing, decides nothing.

    The curves and lanes are kept as a picture, so that the pointer's line costs one copy of it.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.theme: Theme = LIGHT
        self.view = View(start_ms=0, end_ms=1)
        self.now_ms = 0
        self.data = RoomData()
        self.film: Series = EMPTY
        self.snapshot: Snapshot | None = None
        self.trouble = ""
        self.read: Request | None = None
        self.empty_log = False
        self.book = LaneBook()
        self.chosen: int | None = None
        self.scroll_px = 0.0
        self.pointer: QPointF | None = None
        self.chosen_range: TimeRange | None = None
        self.focused = False
        self._panels = panels_of(self.data, self.film, None)
        self._nothing = ""
        self._picture: QPixmap | None = None
        self._patterns: Patterns | None = None
        self._stamps: Stamps | None = None
        self.setMouseTracking(True)
        self.setMinimumSize(LEAST_SIZE)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Take in the studio's state."""
        self.snapshot = snapshot
        self.now_ms = snapshot.time_ms
        self.book.show_snapshot(snapshot)
        self._forget_choice()

    def show_past(self, past: PastView) -> None:
        """Take in what the records hold of the time behind."""
        self.book.show_past(past)
        self._forget_choice()

    @property
    def lanes(self) -> tuple[Lane, ...]:
        """The lanes that belong to the view."""
        return self.book.lanes(self.view)

    def _forget_choice(self) -> None:
        if self.chosen is not None and self.chosen >= len(self.lanes):
            self.chosen = None

    def refresh(self) -> None:
        """Have the picture made afresh at the next paint."""
        self._picture = None
        self.update()

    def arrange(self) -> Layout:
        """Return where everything stands now."""
        metrics = QFontMetricsF(strong_font(label_font(self.font())))
        widest_px = max(metrics.horizontalAdvance(words) for words in ("100.0", *(lane.title for lane in self.lanes)))
        line_px = QFontMetricsF(self.font()).height()
        return layout_of(
            self.width(),
            self.height(),
            line_px=line_px,
            gutter_px=names_px(widest_px + LABEL_GAP_PX, self.width(), line_px),
            lane_count=len(self.lanes),
        )

    def time_scale(self, layout: Layout) -> TimeScale:
        """Return the time scale of the view on `layout`."""
        return TimeScale(
            start_ms=self.view.start_ms, end_ms=self.view.end_ms, left_px=layout.left_px, width_px=layout.width_px
        )

    def lane_at(self, y_px: float) -> int | None:
        """Return the lane at a height of the picture, or None."""
        layout = self.arrange()
        return layout.rows.row_at(y_px - layout.lanes.top_px, self.scroll_px)

    def coat_at(self, place: QPointF) -> CoatSpan | None:
        """Return the coat at a place of the picture; on an empty part of a lane its topmost coat."""
        row = self.lane_at(place.y())
        if row is None:
            return None
        lane = self.lanes[row]
        return lane.coat_at(self.time_scale(self.arrange()).time_ms(place.x())) or lane.top

    @property
    def pointed_ms(self) -> float | None:
        """The time under the pointer, UTC ms, or None."""
        return self._pointed_ms(self.time_scale(self.arrange()))

    def step_choice(self, by: int) -> None:
        """Choose the lane `by` rows below the chosen one, or the first."""
        if self.lanes:
            self.choose(min(max(self.chosen + by, 0), len(self.lanes) - 1) if self.chosen is not None else 0)

    def scroll_lanes(self, by_px: float) -> None:
        """Scroll the lanes, as far as there are more."""
        self.scroll_px = min(max(self.scroll_px + by_px, 0.0), self.arrange().rows.furthest_px)
        self.refresh()

    def choose(self, row: int) -> None:
        """Mark a lane as chosen and bring it into view."""
        self.chosen = row
        self.scroll_px = self.arrange().rows.scroll_to(row, self.scroll_px)
        self.refresh()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint; an exception that leaves a paint override can take the process down, so it is reported instead."""
        painter = QPainter(self)
        try:
            self._paint(painter)
        except Exception:  # noqa: BLE001 - the top of the stack as far as Python goes
            sys.excepthook(*sys.exc_info())
        finally:
            painter.end()
        event.accept()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Read the values under the pointer."""
        self.pointer = event.position()
        self.update()
        event.ignore()

    def leaveEvent(self, event: QEvent) -> None:
        """Stop reading values."""
        self.pointer = None
        self.update()
        super().leaveEvent(event)

    def changeEvent(self, event: QEvent) -> None:
        """Lay out afresh when the text size changes."""
        if event.type() in {QEvent.Type.FontChange, QEvent.Type.StyleChange}:
            self.refresh()
        super().changeEvent(event)

    def _paint(self, painter: QPainter) -> None:
        layout = self.arrange()
        self.scroll_px = min(self.scroll_px, layout.rows.furthest_px)
        ratio = self.devicePixelRatioF()
        if self._picture is None or self._picture.size() != self.size() * ratio:
            self._picture = QPixmap(self.size() * ratio)
            self._picture.setDevicePixelRatio(ratio)
            self._picture.fill(QColor(self.theme.ground))
            inner = QPainter(self._picture)
            try:
                self._paint_picture(inner, layout)
            finally:
                inner.end()
        painter.drawPixmap(0, 0, self._picture)
        if self.snapshot is not None:
            self._paint_words(painter, layout)

    def _paint_picture(self, painter: QPainter, layout: Layout) -> None:
        """Paint all but what follows the pointer."""
        draw_card(painter, self.rect(), self.theme, focused=self.focused)
        if self.snapshot is None:
            painter.setPen(QColor(self.theme.muted))
            place = QRectF(self.rect()).adjusted(2 * CORNER_PX, 0, -2 * CORNER_PX, 0)
            painter.drawText(place, Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap, say(NOTHING_YET))
            return
        self._nothing = self._empty_words()
        paper = self._paper(painter, layout)
        stamps, table = self._stamps_now(), self.book.table(self.view)
        lanes = LanePainter(paper, self._patterns_now(), stamps)
        panels = [PanelPainter(paper, panel, band) for panel, band in zip(self._panels, layout.panels, strict=True)]
        if self._nothing:
            panels = []  # no axis where nothing is measured
        paper.draw_ahead()
        for panel in panels:
            panel.draw_curves()
        lanes.draw_blocks(table, self.scroll_px)
        paper.draw_now()
        taken: list[QRectF] = []
        for panel in panels:
            panel.draw_live()
            taken += panel.draw_limit_words()
        tips_px = np.array([band.plot.top_px for band in layout.panels])
        stamps.draw(painter, self.book.in_panels, paper.time, tips_px if panels else np.full(len(tips_px), np.nan))
        self._paint_empty(paper, taken)
        lanes.draw_words(table, self.scroll_px, self.chosen)
        paper.draw_time_axis()

    def _empty_words(self) -> str:
        """Return what to say in place of curves: "" while there is one, or while the log is still being read."""
        self._panels = panels_of(self.data, self.film, self.snapshot)
        if any(panel.logged(self.view.start_ms, self.view.end_ms) for panel in self._panels):
            return ""
        if self.empty_log:
            return say(NOTHING_YET)
        return say(NONE_HERE) if covers(self.read, self.view, self.now_ms) else ""

    def _paint_empty(self, paper: Paper, taken: Sequence[QRectF]) -> None:
        """Say where no readings are: in place of all curves, or in each stretch that has room beside words `taken`."""
        if self._nothing:
            paper.draw_nothing(self._nothing)
        elif covers(self.read, self.view, self.now_ms):
            least_ms = paper.words_px(say(NONE_HERE)) * paper.time.ms_per_px
            end_ms = min(self.view.end_ms, self.now_ms)
            for stretch in empty_stretches(self._panels, self.view.start_ms, end_ms, least_ms):
                paper.draw_stretch(say(NONE_HERE), *stretch, taken)

    def _paper(self, painter: QPainter, layout: Layout) -> Paper:
        return Paper(
            painter=painter,
            layout=layout,
            time=self.time_scale(layout),
            theme=self.theme,
            font=self.font(),
            now_ms=self.now_ms,
        )

    def _patterns_now(self) -> Patterns:
        ratio = self.devicePixelRatioF()
        if self._patterns is None or self._patterns.theme is not self.theme or self._patterns.ratio != ratio:
            self._patterns = Patterns(self.theme, ratio)
        return self._patterns

    def _stamps_now(self) -> Stamps:
        of = (self.theme, QFontMetricsF(self.font()).height(), self.devicePixelRatioF())
        if self._stamps is None or self._stamps.of != of:
            self._stamps = Stamps(*of)
        return self._stamps

    def _paint_words(self, painter: QPainter, layout: Layout) -> None:
        """Paint titles and head, with the values under the pointer, and the pointer's line."""
        paper = self._paper(painter, layout)
        pointed_ms = self._pointed_ms(paper.time)
        if self.chosen_range is not None:
            draw_shade(paper, self.chosen_range)
        if pointed_ms is not None:
            self._paint_pointer(paper, pointed_ms)
        if not self._nothing:
            for panel, bands in zip(self._panels, layout.panels, strict=True):
                TitlePainter(paper, panel, bands.title).draw(pointed_ms)
        if layout.lanes_title.height_px:
            painter.setFont(self.font())
            painter.setPen(QColor(self.theme.muted))
            painter.drawText(paper.plot_rect(layout.lanes_title), Qt.AlignmentFlag.AlignVCenter, say("coats"))
        paper.draw_head(*self._head(pointed_ms, paper.time))

    def _paint_pointer(self, paper: Paper, pointed_ms: float) -> None:
        paper.painter.setPen(hairline(self.theme.muted))
        x = round(paper.time.x(pointed_ms)) + 0.5
        for part in (*(band.plot for band in paper.layout.panels), paper.layout.lanes):
            paper.painter.drawLine(QLineF(x, part.top_px, x, part.bottom_px))

    def _head(self, pointed_ms: float | None, time: TimeScale) -> tuple[str, str]:
        """Return what stands in the head, and its colour."""
        pointed = self._pointed_words(pointed_ms, time) if pointed_ms is not None else ""
        if self.chosen_range is not None:
            chosen = self.chosen_range.words(self.view)
            return (f"{chosen} · {pointed}" if pointed else chosen), self.theme.link
        if pointed:
            return pointed, self.theme.ink
        if self.trouble:
            return self.trouble, self.theme.act
        return range_words(self.view.start_ms, self.view.end_ms), self.theme.muted

    def _pointed_ms(self, time: TimeScale) -> float | None:
        if self.pointer is None or not time.left_px <= self.pointer.x() <= time.right_px:
            return None
        return time.time_ms(self.pointer.x())

    def _pointed_words(self, pointed_ms: float, time: TimeScale) -> str:
        row = self.lane_at(self.pointer.y()) if self.pointer is not None else None
        lane = None if row is None else self.lanes[row]
        reach_ms = MARK_REACH_PX * time.ms_per_px
        return pointed_words(pointed_ms, self.view.width_ms, self.book.marks, lane, reach_ms)
