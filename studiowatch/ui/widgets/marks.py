"""The mark of a level: triangle, diamond or circle, told apart by shape as well as colour."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from studiowatch.speech.words import say
from studiowatch.studio.words import Level
from studiowatch.ui.models.tones import LEVEL_WORDS
from studiowatch.ui.style import Style
from studiowatch.ui.theme import Theme


class LevelMark(QWidget):
    """A mark `units` tall at 100 %: filled for what is open, an outline for what is past."""

    def __init__(self, units: int) -> None:
        super().__init__()
        self._units = units
        self._style = Style()
        self._level = Level.CALM
        self._filled = True
        self._good = False
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.set_level(Level.CALM)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        self.updateGeometry()
        self.update()

    def set_level(self, level: Level, *, filled: bool = True, good: bool = False) -> None:
        """Show `level`; `good` puts a tick into a calm circle."""
        self.setAccessibleName(say(LEVEL_WORDS[level]))
        if (level, filled, good) != (self._level, self._filled, self._good):
            self._level, self._filled, self._good = level, filled, good
            self.update()

    def sizeHint(self) -> QSize:
        """Return the mark's size at the present scale."""
        side = self._style.px(self._units)
        return QSize(side, side)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the mark."""
        del event
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint_mark(painter, QRectF(self.rect()), self._level, self._style.theme, filled=self._filled, good=self._good)


def level_ink(level: Level, theme: Theme) -> str:
    """Return the colour of words of `level`: of calm ones that of all text."""
    return {Level.ACT: theme.act, Level.CAUTION: theme.caution, Level.CALM: theme.ink}[level]


def paint_mark(
    painter: QPainter, box: QRectF, level: Level, theme: Theme, *, filled: bool = True, good: bool = False
) -> None:
    """Draw a mark into `box`."""
    calm = theme.good if good else theme.muted
    colour = QColor({Level.ACT: theme.act, Level.CAUTION: theme.caution, Level.CALM: calm}[level])
    stroke = max(1.5, box.height() * 0.09)
    painter.setPen(_pen(colour, stroke))
    painter.setBrush(colour if filled else Qt.BrushStyle.NoBrush)
    box = box.adjusted(stroke, stroke, -stroke, -stroke)
    if level is Level.CALM:
        painter.drawEllipse(box)
    else:
        painter.drawPolygon(_triangle(box) if level is Level.ACT else _diamond(box))
    if filled:
        _sign(painter, box, level, QColor(theme.card), good=good)


def _sign(painter: QPainter, box: QRectF, level: Level, ink: QColor, *, good: bool) -> None:
    """Draw an exclamation mark, or a tick."""
    wide = max(1.5, box.height() * 0.1)
    painter.setPen(_pen(ink, wide))
    x, y, h = box.center().x(), box.top(), box.height()
    if level is Level.CALM:
        if good:
            w = box.width()
            tick = [QPointF(x - 0.22 * w, y + 0.52 * h), QPointF(x - 0.06 * w, y + 0.68 * h)]
            painter.drawPolyline([*tick, QPointF(x + 0.24 * w, y + 0.34 * h)])
        return
    low = 0.1 if level is Level.ACT else 0.0
    painter.drawLine(QPointF(x, y + (0.28 + low) * h), QPointF(x, y + (0.53 + low) * h))
    painter.drawPoint(QPointF(x, y + (0.72 + low) * h))


def _pen(colour: QColor, wide: float) -> QPen:
    return QPen(colour, wide, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap, Qt.PenJoinStyle.RoundJoin)


def _triangle(box: QRectF) -> QPolygonF:
    return QPolygonF([QPointF(box.center().x(), box.top()), box.bottomRight(), box.bottomLeft()])


def _diamond(box: QRectF) -> QPolygonF:
    middle = box.center()
    return QPolygonF(
        [
            QPointF(middle.x(), box.top()),
            QPointF(box.right(), middle.y()),
            QPointF(middle.x(), box.bottom()),
            QPointF(box.left(), middle.y()),
        ]
    )
