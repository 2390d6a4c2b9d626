"""The section through a piece, drawn: the film itself is the picture."""

from __future__ import annotations

from math import pi, sin

from PySide6.QtCore import QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QLinearGradient, QPainter, QPainterPath, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from studiowatch.coats.stages import Surface
from studiowatch.speech.words import say
from studiowatch.ui.models.film import Base, Box, Layer, Section, Tag, boxes, look_of, tags
from studiowatch.ui.plain import set_tip
from studiowatch.ui.style import Style
from studiowatch.ui.theme import Theme

_WIDTH = 210
SHORTEST = 112  # units: the labels of a usual piece have room
TALLEST = 176
_FILM_SHARE = 0.39
_ALONE_SHARE = 0.8  # of a section without names
DENSE = 50  # units, of such a section
_INSET = 5
_LABEL_PX = 11
_LABEL_LINE_PX = 14
_HEADROOM = 9  # for the surface's swell and the mesh cover


class FilmSection(QWidget):
    """Draws one section to the scale of the rack, with the names of its layers beside it."""

    def __init__(self) -> None:
        super().__init__()
        self._style = Style()
        self._section = Section(layers=())
        self._full_um = 1.0
        self._height = SHORTEST
        self._named = True
        self._painted: tuple[object, ...] | None = None  # what it looked like when it was painted last
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(say("Section through the coats"))

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        self.set_height(style.px(SHORTEST))
        self.update()

    def set_named(self, *, named: bool) -> None:
        """Show the names of the layers, or the film alone."""
        if named != self._named:
            self._named = named
            self.update()

    def set_height(self, height: int) -> None:
        """Be `height` pixels tall: all sections of a rack alike, or their scales would differ."""
        if height != self._height:
            self._height = height
            self.updateGeometry()

    @property
    def given_height(self) -> int:
        """Return the height that was given last, pixels."""
        return self._height

    def set_section(self, section: Section, full_um: float) -> None:
        """Show `section`; `full_um` fills the height."""
        if (section, full_um) == (self._section, self._full_um):
            return
        self._section, self._full_um = section, full_um
        if section.spoken != self.accessibleDescription():
            self.setAccessibleDescription(section.spoken)
            set_tip(self, section.spoken)
        if self._painted != self._look():
            self.update()

    def _look(self) -> tuple[object, ...]:
        return look_of(self._section, self.height() - self._style.px(_HEADROOM) - 1, self._full_um)

    def sizeHint(self) -> QSize:
        """Return the height it was given; the first one has room for the labels of a usual piece."""
        return QSize(self._style.px(_WIDTH), self._height)

    def minimumSizeHint(self) -> QSize:
        """Return the least width that keeps the labels readable."""
        return QSize(self._style.px(_WIDTH * 0.8), self._height)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the layers from the lowest up, then their names."""
        del event
        self._painted = self._look()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        style = self._style
        head = style.px(_HEADROOM)
        inset, width = style.px(_INSET), self.width() * (_FILM_SHARE if self._named else _ALONE_SHARE)
        drawn = boxes(self._section, self.height() - head - 1, self._full_um)
        for box in drawn:
            area = QRectF(
                inset + 0.5, round(box.top) + head + 0.5, round(width), round(box.top + box.height) - round(box.top)
            )
            _draw_layer(painter, box.layer, area, style)
        laid = [box for box in drawn if box.layer.surface is not None]
        if self._section.covered and laid:
            _draw_cover(painter, laid[-1].top + head, inset + width, style)
        if self._named:
            self._draw_names(painter, drawn, head, inset + width)

    def _draw_names(self, painter: QPainter, drawn: tuple[Box, ...], head: float, width: float) -> None:
        style = self._style
        for tag in tags(drawn, self.height() - head, style.px(_LABEL_LINE_PX)):
            self._draw_name(painter, tag, head, width + style.px(_INSET))

    def _draw_name(self, painter: QPainter, tag: Tag, head: float, left: float) -> None:
        style, theme = self._style, self._style.theme
        reach = style.px(10)
        painter.setPen(QPen(QColor(theme.film_dry_mark), 1))
        start, end = QPointF(left, tag.anchor + head), QPointF(left + reach, tag.middle + head)
        painter.drawLine(start, end)
        font = QFont(self.font())
        font.setPixelSize(style.px(_LABEL_PX))
        font.setBold(tag.layer.fresh)
        painter.setFont(font)
        painter.setPen(QColor(theme.link if tag.layer.fresh else theme.muted))
        line = style.px(_LABEL_LINE_PX)
        x = left + reach + style.px(4)
        area = QRectF(x, tag.middle + head - line, self.width() - x, 2 * line)
        words = fitting(painter.fontMetrics(), tag.layer, area.width())
        painter.drawText(area, Qt.AlignmentFlag.AlignVCenter | Qt.TextFlag.TextSingleLine, words)


def fitting(metrics: QFontMetrics, layer: Layer, width_px: float) -> str:
    """Return the words of a layer that fit: its state is told whole or not at all, for the line above tells it too."""
    if metrics.horizontalAdvance(layer.words) <= width_px:
        return layer.words
    return metrics.elidedText(layer.label, Qt.TextElideMode.ElideRight, int(width_px))


def _draw_layer(painter: QPainter, layer: Layer, area: QRectF, style: Style) -> None:
    theme = style.theme
    edge = QColor(theme.film_dry_mark)
    if layer.surface is None:
        pen = QPen(edge, 1, Qt.PenStyle.CustomDashLine)
        pen.setDashPattern([4, 3])
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(area)
        return
    painter.save()
    outline = _outline(layer, area, style)
    painter.setClipPath(outline)
    painter.fillPath(outline, _colour(layer, theme))
    _draw_marks(painter, layer, area, style)
    if layer.milky:
        painter.fillPath(outline, _veil(area))
    painter.restore()
    painter.setPen(QPen(edge, 1))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPath(outline)
    if layer.cut_short:
        _draw_break(painter, area, style)


def _outline(layer: Layer, area: QRectF, style: Style) -> QPainterPath:
    """Return a rectangle, with the upper edge of a wet film swelling like a liquid's."""
    path = QPainterPath()
    if layer.surface is not Surface.WET:
        path.addRect(area)
        return path
    swell = min(style.px(2.4), area.height() * 0.25)
    path.moveTo(area.bottomLeft())
    path.lineTo(area.left(), area.top())
    steps = 48
    for step in range(steps + 1):
        part = step / steps
        path.lineTo(area.left() + part * area.width(), area.top() - swell * sin(part * 3 * pi) * sin(part * pi))
    path.lineTo(area.bottomRight())
    path.closeSubpath()
    return path


def _colour(layer: Layer, theme: Theme) -> QColor:
    if layer.base is Base.SUPPORT:
        return QColor(theme.support)
    if layer.base is Base.PAINT:
        return QColor(theme.paint)
    colours = {Surface.WET: theme.film_wet, Surface.TACKY: theme.film_tacky, Surface.DRY: theme.film_dry}
    return QColor(colours[layer.surface or Surface.DRY])


def _draw_marks(painter: QPainter, layer: Layer, area: QRectF, style: Style) -> None:
    theme = style.theme
    if layer.base is Base.SUPPORT:
        _draw_weave(painter, area, QColor(theme.film_dry_mark), style)
    elif layer.surface is Surface.WET:
        ink = theme.film_wet_mark if layer.base is Base.FILM else theme.support
        _draw_waves(painter, area, QColor(ink), style)
    elif layer.surface is Surface.TACKY:
        ink = theme.film_wet if layer.base is Base.FILM else theme.support
        _draw_dots(painter, area, QColor(ink), style)
    elif layer.base is Base.FILM:
        _draw_hatching(painter, area, QColor(theme.film_dry_mark), style)


def _draw_waves(painter: QPainter, area: QRectF, ink: QColor, style: Style) -> None:
    painter.setPen(QPen(ink, max(1.0, style.scale * 1.1)))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    length, height, apart = style.px(11), style.px(1.6), style.px(8)
    y = area.top() + apart * 0.75
    row = 0
    while y < area.bottom() - height:
        path = QPainterPath(QPointF(area.left() - (row % 2) * length / 2, y))
        while path.currentPosition().x() < area.right():
            x = path.currentPosition().x()
            path.quadTo(x + length / 4, y - 2 * height, x + length / 2, y)
            path.quadTo(x + 3 * length / 4, y + 2 * height, x + length, y)
        painter.drawPath(path)
        y += apart
        row += 1


def _draw_dots(painter: QPainter, area: QRectF, ink: QColor, style: Style) -> None:
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(ink)
    apart, radius = style.px(6), 0.95 * style.scale
    y, row = area.top() + apart * 0.6, 0
    while y < area.bottom():
        x = area.left() + apart * (0.5 if row % 2 else 1.0)
        while x < area.right():
            painter.drawEllipse(QPointF(x, y), radius, radius)
            x += apart
        y += apart * 0.8
        row += 1


def _draw_hatching(painter: QPainter, area: QRectF, ink: QColor, style: Style) -> None:
    painter.setPen(QPen(ink, max(0.8, 0.8 * style.scale)))
    apart, tall = style.px(6), area.height()
    # Anchored to the section, not to the layer, so that the hatching runs on from coat to coat.
    x = area.left() - tall - (area.bottom() % apart)
    while x < area.right():
        painter.drawLine(QLineF(x, area.bottom(), x + tall, area.top()))
        x += apart


def _draw_weave(painter: QPainter, area: QRectF, ink: QColor, style: Style) -> None:
    ink.setAlphaF(0.45)
    painter.setPen(QPen(ink, max(1.0, style.scale)))
    apart = style.px(7)
    x = area.left() + apart / 2
    while x < area.right():
        painter.drawLine(QLineF(x, area.top() + area.height() * 0.3, x, area.bottom() - area.height() * 0.3))
        x += apart


def _veil(area: QRectF) -> QLinearGradient:
    """Return the milkiness of a fresh clear film: a white veil, thickest at the open side."""
    veil = QLinearGradient(area.topLeft(), area.bottomLeft())
    veil.setColorAt(0.0, QColor(255, 255, 255, 150))
    veil.setColorAt(1.0, QColor(255, 255, 255, 70))
    return veil


def _draw_break(painter: QPainter, area: QRectF, style: Style) -> None:
    """Draw the sign for "thicker than shown": a gap that runs across."""
    middle, rise = area.center().y(), style.px(3)
    path = QPainterPath(QPointF(area.left(), middle + rise / 2))
    steps = 8
    for step in range(1, steps + 1):
        path.lineTo(area.left() + area.width() * step / steps, middle + (rise if step % 2 else -rise) / 2)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(QColor(style.theme.card), style.px(2.5)))
    painter.drawPath(path)


def _draw_cover(painter: QPainter, surface: float, reach: float, style: Style) -> None:
    """Draw the mesh cover: a dotted line that stands clear of the film."""
    pen = QPen(QColor(style.theme.ink), 1.4 * style.scale, Qt.PenStyle.DotLine)
    painter.setPen(pen)
    left, right, y = 1.0, reach + style.px(_INSET) - 1.0, max(1.5, surface - style.px(5))
    foot = y + style.px(11)
    painter.drawPolyline([QPointF(left, foot), QPointF(left, y), QPointF(right, y), QPointF(right, foot)])
