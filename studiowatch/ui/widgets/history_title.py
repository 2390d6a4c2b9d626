"""The title of one panel: what it shows, a key for each curve, and their values under the pointer."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QLineF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF

from studiowatch.speech.words import say
from studiowatch.ui.models.history_layout import Band
from studiowatch.ui.models.history_panels import NO_READING, Curve, Panel, Quantity
from studiowatch.ui.widgets.history_axis import Paper, strong_font
from studiowatch.ui.widgets.history_trace import mean_pen

KEY_PX = 16.0
CLOSE_SPACE_PX = 4.0
WORD_SPACE_PX = 12.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Word:
    """A word of a panel's title; `key` puts a stroke of that curve before it, `close` binds the next word to it."""

    text: str
    color: str
    strong: bool = False
    key: Quantity | None = None
    close: bool = False


class TitlePainter:
    """Draws one panel's title on the paper."""

    def __init__(self, paper: Paper, panel: Panel, band: Band) -> None:
        self.paper = paper
        self.painter = paper.painter
        self.theme = paper.theme
        self.panel = panel
        self.band = band

    def draw(self, pointed_ms: float | None) -> None:
        """Draw a panel's title with a key for each of its curves, and their values at `pointed_ms`."""
        left_px = self.paper.layout.left_px
        for word in self.titled(pointed_ms):
            self._draw_word(word, left_px)
            left_px += self._advance_px(word)

    def titled(self, pointed_ms: float | None) -> list[Word]:
        """Return all words of the line; the title is its unit alone where there is not room for more."""
        words = self.words(pointed_ms)
        titled = [Word(text=self.panel.title, color=self.theme.muted), *words]
        if sum(self._advance_px(word) for word in titled) > self.paper.layout.width_px + WORD_SPACE_PX:
            titled = [Word(text=self.panel.unit, color=self.theme.muted), *words]
        left_px = self.paper.layout.width_px - sum(self._advance_px(word) for word in titled)
        return [*titled, *self._counted_on(left_px)]

    def _counted_on(self, room_px: float) -> list[Word]:
        """Return what the room to come counts on, in the most words that have room, while any of it is in view."""
        ahead = self.panel.ahead
        if ahead is None or self.paper.time.end_ms <= self.paper.now_ms:
            return []
        choices = (Word(text=text, color=self.theme.muted) for text in ahead.words)
        return [word for word in choices if self._advance_px(word) - WORD_SPACE_PX <= room_px][:1]

    def words(self, pointed_ms: float | None) -> list[Word]:
        """Return the keys of the curves, with their values at `pointed_ms`; at a time to come what is likely."""
        if pointed_ms is not None and pointed_ms > self.paper.now_ms:
            likely = self.panel.expected(pointed_ms)
            keys = [word for curve in self.panel.curves for word in self._curve_words(curve, None)]
            return [*keys, Word(text=likely, color=self.theme.ink, strong=True)] if likely else keys
        return [word for curve in self.panel.curves for word in self._curve_words(curve, pointed_ms)]

    def _curve_words(self, curve: Curve, pointed_ms: float | None) -> list[Word]:
        name = say(curve.quantity.value)
        if name and not len(curve.series.time_ms):
            return []
        value = self.panel.reading(curve, pointed_ms) if pointed_ms is not None else ""
        if value == say(NO_READING) and curve.quantity is Quantity.FILM:
            return []  # nothing was wet then
        key = [Word(text=name, color=self.theme.ink, key=curve.quantity, close=bool(value))] if name else []
        return [*key, Word(text=value, color=self.theme.ink, strong=True)] if value else key

    def _advance_px(self, word: Word) -> float:
        font = strong_font(self.paper.font) if word.strong else self.paper.font
        key_px = KEY_PX + CLOSE_SPACE_PX if word.key is not None else 0.0
        space_px = CLOSE_SPACE_PX if word.close else WORD_SPACE_PX
        return key_px + QFontMetricsF(font).horizontalAdvance(word.text) + space_px

    def _draw_word(self, word: Word, left_px: float) -> None:
        band = self.band
        if word.key is not None:
            y = round(band.top_px + band.height_px / 2) + 0.5
            self.painter.setPen(mean_pen(word.key, self.theme))
            self.painter.drawLine(QLineF(left_px, y, left_px + KEY_PX, y))
            left_px += KEY_PX + CLOSE_SPACE_PX
        font = strong_font(self.paper.font) if word.strong else self.paper.font
        room_px = max(self.paper.time.right_px - left_px, 0.0)
        self.painter.setFont(font)
        self.painter.setPen(QColor(word.color))
        text = QFontMetricsF(font).elidedText(word.text, Qt.TextElideMode.ElideRight, room_px)
        width_px = min(QFontMetricsF(font).horizontalAdvance(text) + 1, room_px)
        place = QRectF(left_px, band.top_px, width_px, band.height_px)
        if place.left() < self.paper.time.x(self.paper.now_ms) < place.right():
            self.painter.fillRect(place, QColor(self.theme.card))
        self.painter.drawText(place, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, text)
