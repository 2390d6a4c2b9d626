"""One piece's strip in the finishing plan, and the head with the days above all of them."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from studiowatch.ui.models.plan_grid import DayGrid, Mark, MarkKind
from studiowatch.ui.plain import set_tip
from studiowatch.ui.style import Style

_HEIGHT, _HEAD_HEIGHT, _TEXT = 54, 24, 11
_COAT_WIDE, _MARK = 5, 9  # units


class PlanStrip(QWidget):
    """Paints columns and marks; a coat is a bar, each milestone a shape of its own, the day due a flag."""

    def __init__(self) -> None:
        super().__init__()
        self._style = Style()
        self._grid: DayGrid | None = None
        self._marks: tuple[Mark, ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        self.updateGeometry()
        self.update()

    def set_marks(self, grid: DayGrid | None, marks: tuple[Mark, ...]) -> None:
        """Show `marks` within `grid`."""
        if (grid, marks) == (self._grid, self._marks):
            return
        self._grid, self._marks = grid, marks
        set_tip(self, "\n".join(mark.told for mark in marks))
        self.update()

    def sizeHint(self) -> QSize:
        """Return the strip's height at the present scale."""
        return QSize(self._style.px(300), self._style.px(_HEIGHT))

    def minimumSizeHint(self) -> QSize:
        """Return a width that any window has."""
        return QSize(self._style.px(160), self._style.px(_HEIGHT))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the strip."""
        del event
        if self._grid is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint_days(painter, self._grid, self._style, QRectF(self.rect()))
        painter.setFont(_font(painter.font(), self._style))
        for mark in self._marks:
            self._reach(painter, mark)
        free = [0.0, 0.0]
        for mark in self._marks:
            self._paint(painter, mark)
            self._write(painter, mark, free)

    def _colour(self, mark: Mark) -> QColor:
        theme = self._style.theme
        if mark.kind is MarkKind.DUE:
            return QColor(theme.act if mark.late else theme.ink)
        return QColor(theme.link if mark.kind is MarkKind.COAT else theme.good)

    def _reach(self, painter: QPainter, mark: Mark) -> None:
        """Draw from when it may be at the earliest."""
        if mark.low is None or mark.low >= mark.at:
            return
        middle = self.height() * 0.5
        painter.setPen(QPen(self._colour(mark), 1.0))
        painter.drawLine(QPointF(mark.low * self.width(), middle), QPointF(mark.at * self.width(), middle))

    def _paint(self, painter: QPainter, mark: Mark) -> None:
        px = self._style.px
        x, middle, colour = mark.at * self.width(), self.height() * 0.5, self._colour(mark)
        painter.setPen(QPen(colour, max(1.0, px(1.5))))
        painter.setBrush(colour)
        _SHAPES[mark.kind](painter, x, middle, px(_MARK), float(self.height()))

    def _write(self, painter: QPainter, mark: Mark, free: list[float]) -> None:
        """Write a mark's words above it, or below where those before reach over it, or leave them to the tool tip."""
        if not mark.words:
            return
        px = self._style.px
        wide = painter.fontMetrics().horizontalAdvance(mark.words)
        left = min(max(mark.at * self.width() - px(_COAT_WIDE), 0.0), float(self.width() - wide))
        line = next((line for line in (0, 1) if left >= free[line]), None)
        if line is None:
            return
        painter.setPen(QColor(self._style.theme.ink))
        painter.drawText(QPointF(left, px(12) if line == 0 else self.height() - px(4)), mark.words)
        free[line] = left + wide + px(5)


class PlanDays(QWidget):
    """The head: the days' names over their columns, and "now"."""

    def __init__(self) -> None:
        super().__init__()
        self._style = Style()
        self._grid: DayGrid | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        self.updateGeometry()
        self.update()

    def set_grid(self, grid: DayGrid | None) -> None:
        """Show the days of `grid`."""
        self._grid = grid
        self.update()

    def sizeHint(self) -> QSize:
        """Return the head's height at the present scale."""
        return QSize(self._style.px(160), self._style.px(_HEAD_HEIGHT))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the names; one that has no room is left out."""
        del event
        if self._grid is None:
            return
        painter = QPainter(self)
        painter.setFont(_font(painter.font(), self._style))
        free = 0.0
        for column in self._grid.columns:
            x = column.left * self.width()
            wide = painter.fontMetrics().horizontalAdvance(column.name)
            if x < free or x + wide > self.width():
                continue
            painter.setPen(QColor(self._style.theme.ink if column.week_begins else self._style.theme.muted))
            painter.drawText(QPointF(x + self._style.px(3), self.height() - self._style.px(7)), column.name)
            free = x + wide + self._style.px(9)


def paint_days(painter: QPainter, grid: DayGrid, style: Style, box: QRectF) -> None:
    """Draw the days' edges, her working hours as a light ground, and the line of now."""
    theme, wide = style.theme, box.width()
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(theme.ahead))
    painter.drawRect(box)
    for column in grid.columns:
        if column.work is not None:
            painter.setBrush(QColor(theme.card))
            painter.drawRect(QRectF(column.work[0] * wide, 0.0, (column.work[1] - column.work[0]) * wide, box.height()))
    for column in grid.columns:
        strong = column.week_begins
        painter.setPen(QPen(QColor(theme.edge if strong else theme.rule), style.px(2) if strong else 1.0))
        painter.drawLine(QPointF(column.left * wide, 0.0), QPointF(column.left * wide, box.height()))
    painter.setPen(QPen(QColor(theme.ink), max(1.0, style.px(1.5))))
    painter.drawLine(QPointF(grid.now * wide, 0.0), QPointF(grid.now * wide, box.height()))


def _font(font: QFont, style: Style) -> QFont:
    font.setPixelSize(style.px(_TEXT))
    return font


def _bar(painter: QPainter, x: float, middle: float, size: float, _height: float) -> None:
    painter.drawRoundedRect(QRectF(x - size * 0.28, middle - size, size * 0.56, size * 2.0), 2.0, 2.0)


def _circle(painter: QPainter, x: float, middle: float, size: float, _height: float) -> None:
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawEllipse(QPointF(x, middle), size * 0.45, size * 0.45)


def _diamond(painter: QPainter, x: float, middle: float, size: float, _height: float) -> None:
    half = size * 0.6
    painter.drawPolygon(
        QPolygonF(
            [QPointF(x, middle - half), QPointF(x + half, middle), QPointF(x, middle + half), QPointF(x - half, middle)]
        )
    )


def _arrow(painter: QPainter, x: float, middle: float, size: float, _height: float) -> None:
    half = size * 0.6  # beside the diamond that mostly comes just before it
    painter.drawPolygon(
        QPolygonF([QPointF(x + half, middle - half), QPointF(x + 3 * half, middle), QPointF(x + half, middle + half)])
    )


def _flag(painter: QPainter, x: float, middle: float, size: float, height: float) -> None:
    painter.drawLine(QPointF(x, height * 0.1), QPointF(x, height * 0.94))
    top = height * 0.1
    painter.drawPolygon(
        QPolygonF([QPointF(x, top), QPointF(x - size * 1.1, top + size * 0.45), QPointF(x, top + size)])
    )
    del middle


_SHAPES = {
    MarkKind.COAT: _bar,
    MarkKind.HANDLE: _circle,
    MarkKind.WRAP: _diamond,
    MarkKind.SHIP: _arrow,
    MarkKind.DUE: _flag,
}
