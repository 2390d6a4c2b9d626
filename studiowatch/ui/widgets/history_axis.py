"""The paper of the room history: the ground ahead, the line of now, the time axis, words."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen

from studiowatch.speech.words import say
from studiowatch.ui.models.history_axis import TimeScale, time_ticks
from studiowatch.ui.models.history_layout import Band, Layout
from studiowatch.ui.models.times import clock_words
from studiowatch.ui.theme import Theme

TICK_PX = 4.0
LABEL_GAP_PX = 8.0
NOW_PX = 2.0
CALM_LINES = Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap
LABEL_SHARE = 0.92  # of the text's size, for the labels of the axes


def scaled_font(font: QFont, share: float) -> QFont:
    """Return `font` at `share` of its size, whichever unit its size is in."""
    scaled = QFont(font)
    if font.pointSizeF() > 0:
        scaled.setPointSizeF(share * font.pointSizeF())
    else:
        scaled.setPixelSize(max(round(share * font.pixelSize()), 1))
    return scaled


def label_font(font: QFont) -> QFont:
    """Return the font of tick labels: a little smaller than the text."""
    return scaled_font(font, LABEL_SHARE)


def strong_font(font: QFont) -> QFont:
    """Return the font of what must stand out."""
    strong = QFont(font)
    strong.setBold(True)
    return strong


def hairline(color: str) -> QPen:
    """Return the pen of a grid line."""
    return QPen(QColor(color), 1.0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Paper:
    """Draws what all panels and lanes share: the ground ahead, the line of now, the time axis, words.

    Attributes
    ----------
    painter : QPainter
        Active on the picture.
    layout, time
        Where everything stands.
    theme, font
        How it looks.
    now_ms : int
        UTC ms.
    """

    painter: QPainter
    layout: Layout
    time: TimeScale
    theme: Theme
    font: QFont
    now_ms: int

    @property
    def label_font(self) -> QFont:
        """The font of axes and lanes."""
        return label_font(self.font)

    @property
    def now_words(self) -> str:
        """What stands beside the line of now."""
        return say("now {time}", time=clock_words(self.now_ms, self.now_ms))

    def ground(self, x: float) -> str:
        """Return the colour of the paper at `x`."""
        return self.theme.ahead if x > self.time.x(self.now_ms) else self.theme.card

    def plot_rect(self, band: Band) -> QRectF:
        """Return the rectangle of a band across the plot's width."""
        return QRectF(self.layout.left_px, band.top_px, self.layout.width_px, band.height_px)

    def draw_ahead(self) -> None:
        """Tint what lies right of now."""
        x = max(self.time.x(self.now_ms), self.time.left_px)
        if x < self.time.right_px:
            top_px, bottom_px = self.layout.head.top_px, self.layout.foot.top_px
            self.painter.fillRect(
                QRectF(x, top_px, self.time.right_px - x, bottom_px - top_px), QColor(self.theme.ahead)
            )

    def now_place(self) -> QRectF:
        """Return where the words of now stand: right of its line, left of it near the edge, empty if out of view."""
        x = self.time.x(self.now_ms)
        if not self.time.left_px <= x <= self.time.right_px:
            return QRectF()
        width_px = QFontMetricsF(strong_font(self.font)).horizontalAdvance(self.now_words)
        fits_right = x + LABEL_GAP_PX + width_px <= self.time.right_px
        left_px = x + LABEL_GAP_PX if fits_right else x - LABEL_GAP_PX - width_px
        return QRectF(left_px, self.layout.head.top_px, width_px + 1, self.layout.head.height_px)

    def draw_now(self) -> None:
        """Draw the line of now with its time."""
        place = self.now_place()
        if place.isEmpty():
            return
        top_px, bottom_px = self.layout.head.top_px, self.layout.foot.top_px
        left_px = round(self.time.x(self.now_ms)) - NOW_PX / 2
        self.painter.fillRect(QRectF(left_px, top_px, NOW_PX, bottom_px - top_px), QColor(self.theme.ink))
        self.painter.setPen(QColor(self.theme.ink))
        self.painter.setFont(strong_font(self.font))
        self.painter.drawText(place, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, self.now_words)

    def draw_nothing(self, words: str) -> None:
        """Write one calm sentence in place of all curves, left of now where it fits there."""
        right_px = min(max(self.time.x(self.now_ms), self.time.left_px), self.time.right_px)
        if right_px - self.time.left_px < self.words_px(words):
            right_px = self.time.right_px
        middle = QPointF(
            (self.time.left_px + right_px) / 2, (self.layout.head.bottom_px + self.layout.panels[-1].plot.bottom_px) / 2
        )
        self._draw_calm(words, middle)

    def draw_stretch(self, words: str, start_ms: int, end_ms: int, taken: Sequence[QRectF]) -> None:
        """Write what is to say of a stretch without readings into the middle of it, as far up as no words are `taken`.

        Where every panel has words there, the empty stretch speaks for itself.
        """
        x = (self.time.x(start_ms) + self.time.x(end_ms)) / 2
        for band in self.layout.panels:
            middle = QPointF(x, band.plot.top_px + band.plot.height_px / 2)
            place = self._calm_place(words, middle)
            if not any(place.intersects(other) for other in taken):
                self._draw_calm(words, middle)
                return

    def words_px(self, words: str) -> float:
        """Return the width of calm words with the space around them, px."""
        return QFontMetricsF(self.font).horizontalAdvance(words) + 2 * LABEL_GAP_PX

    def _calm_place(self, words: str, middle: QPointF) -> QRectF:
        wide_px = min(self.words_px(words), self.time.right_px - self.time.left_px)
        room = QRectF(0, 0, wide_px, self.layout.width_px)
        tall_px = QFontMetricsF(self.font).boundingRect(room, CALM_LINES, words).height()
        place = QRectF(0, 0, wide_px, tall_px)
        place.moveCenter(middle)
        return place

    def _draw_calm(self, words: str, middle: QPointF) -> None:
        place = self._calm_place(words, middle)
        self.painter.fillRect(place, QColor(self.ground(middle.x())))
        self.painter.setFont(self.font)
        self.painter.setPen(QColor(self.theme.muted))
        self.painter.drawText(place, CALM_LINES, words)

    def draw_time_axis(self) -> None:
        """Draw ticks and labels below the lanes; a label that would touch its neighbour is left out."""
        foot = self.layout.foot
        plain, strong = QFontMetricsF(self.label_font), QFontMetricsF(strong_font(self.label_font))
        most = int(self.layout.width_px / (plain.horizontalAdvance("00:00:00") + 2 * LABEL_GAP_PX))
        ticks = time_ticks(self.time.start_ms, self.time.end_ms, max(most, 1))
        # Days first: where room is short, the name of a day says more than an hour does.
        placed: list[tuple[float, float]] = []
        for tick in sorted(ticks, key=lambda tick: not tick.strong):
            x = self.time.x(tick.time_ms)
            self.painter.setPen(hairline(self.theme.muted if tick.strong else self.theme.edge))
            self.painter.drawLine(QLineF(x, foot.top_px, x, foot.top_px + TICK_PX))
            half_px = (strong if tick.strong else plain).horizontalAdvance(tick.label) / 2
            left_px = min(max(x - half_px, 4.0), self.time.right_px + 4 - 2 * half_px)
            span = (left_px - LABEL_GAP_PX, left_px + 2 * half_px + LABEL_GAP_PX)
            if any(span[0] < right and left < span[1] for left, right in placed):
                continue
            placed.append((left_px, left_px + 2 * half_px))
            self.painter.setFont(strong_font(self.label_font) if tick.strong else self.label_font)
            self.painter.setPen(QColor(self.theme.ink if tick.strong else self.theme.muted))
            place = QRectF(left_px, foot.top_px + TICK_PX, 2 * half_px + 1, foot.height_px - TICK_PX)
            self.painter.drawText(place, Qt.AlignmentFlag.AlignCenter, tick.label)

    def draw_head(self, words: str, color: str) -> None:
        """Write the words of the pointer, or the days in view, beside the words of now without touching them."""
        left_px, right_px = self.layout.left_px, self.time.right_px
        now_words = self.now_place()
        if not now_words.isEmpty():
            room_left_px, room_right_px = now_words.left() - left_px, right_px - now_words.right()
            if room_left_px >= room_right_px:
                right_px = now_words.left() - 2 * LABEL_GAP_PX
            else:
                left_px = now_words.right() + 2 * LABEL_GAP_PX
        self.painter.setFont(self.font)
        self.painter.setPen(QColor(color))
        place = QRectF(left_px, self.layout.head.top_px, max(right_px - left_px, 0.0), self.layout.head.height_px)
        text = QFontMetricsF(self.font).elidedText(words, Qt.TextElideMode.ElideRight, place.width())
        self.painter.drawText(place, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, text)
