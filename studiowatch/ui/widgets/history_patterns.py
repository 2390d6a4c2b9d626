"""The patterns of the lanes: each look of a coat has its own, so that colour never stands alone."""

from __future__ import annotations

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPainterPath, QPen, QPixmap

from studiowatch.ui.models.history_lanes import Look
from studiowatch.ui.theme import Theme
from studiowatch.ui.widgets.history_trace import blended

TILE_PX = 8
READY_EDGE_STRENGTH = 0.4  # of its colour: what waits for nothing is quiet


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
            Look.READY: blended(theme.good, theme.card, READY_EDGE_STRENGTH).name(),
            Look.UNWATCHED: theme.muted,
            Look.ONCE_WET: theme.film_wet,
            Look.GONE: theme.edge,
            Look.CLOUDED: theme.act,
        }
        self.flat = {
            Look.WET: QColor(theme.film_wet),
            Look.TACKY: QColor(theme.film_tacky),
            Look.DRY: QColor(theme.film_dry),
            Look.PAINT: QColor(theme.paint),
            Look.READY: QColor(self.edges[Look.READY]),
            Look.UNWATCHED: QColor(theme.muted),
            Look.ONCE_WET: QColor(theme.film_tacky),
            Look.GONE: QColor(theme.rule),
            Look.CLOUDED: QColor(theme.act),
        }
        self._brushes = {
            Look.WET: self._tile(theme.film_wet, theme.film_wet_mark, _wave()),
            Look.TACKY: self._tile(theme.film_tacky, theme.film_wet, _dots(), filled=True),
            Look.DRY: self._tile(theme.film_dry, theme.film_dry_mark, _hatch()),
            Look.PAINT: QBrush(QColor(theme.paint)),
            Look.READY: QBrush(QColor(theme.good_wash)),
            Look.UNWATCHED: QBrush(Qt.BrushStyle.NoBrush),
            Look.ONCE_WET: QBrush(self.flat[Look.ONCE_WET]),
            Look.GONE: QBrush(self.flat[Look.GONE]),
            Look.CLOUDED: self._tile(theme.act_wash, theme.act, _hatch()),
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
