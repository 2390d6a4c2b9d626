"""The plot of a review: the panels, and a line that reads all values where the pointer or the keyboard is."""

from __future__ import annotations

from PySide6.QtCore import QLineF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from studiowatch.speech.words import say
from studiowatch.ui.models.review_plot import Picture
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.history_axis import label_font
from studiowatch.ui.widgets.review_picture import ReviewPicture

_STEPS = 120  # steps of the arrow keys across the plot
_HIGH_UNITS, _WIDE_UNITS = 400, 360


class ReviewPlot(QWidget):
    """Shows one picture."""

    def __init__(self) -> None:
        super().__init__()
        self._style = Style()
        self._picture: Picture | None = None
        self._at_ms: float | None = None
        self.setAccessibleName(say("What the room did under this coat"))
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        self.updateGeometry()
        self.update()

    def show_picture(self, picture: Picture | None) -> None:
        """Show `picture`, or nothing."""
        self._picture, self._at_ms = picture, None
        self.setAccessibleDescription("" if picture is None else picture.described)
        self.update()

    @property
    def read_words(self) -> str:
        """What is read where the line stands, or ""."""
        if self._picture is None or self._at_ms is None:
            return ""
        return self._picture.read(self._at_ms)

    def minimumSizeHint(self) -> QSize:
        """Return the least size at which the panels say something."""
        return QSize(self._style.px(_WIDE_UNITS), self._style.px(_HIGH_UNITS))

    def _drawn(self, painter: QPainter, picture: Picture) -> ReviewPicture:
        read_px = 1.5 * QFontMetricsF(label_font(self.font())).height()
        return ReviewPicture(
            picture=picture,
            painter=painter,
            place=QRectF(self.rect()).adjusted(0, read_px, 0, 0),
            theme=self._style.theme,
            font=self.font(),
            unit_px=self._style.scale,
        )

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the panels, and the line with what it reads above them."""
        del event
        if self._picture is None:
            return
        painter = QPainter(self)
        drawn = self._drawn(painter, self._picture)
        drawn.draw()
        if self._at_ms is not None:
            x, plot = drawn.time.x(self._at_ms), drawn.plot
            painter.setPen(QPen(QColor(self._style.theme.ink), 1))
            painter.drawLine(QLineF(x, plot.top(), x, plot.bottom()))
            painter.setFont(label_font(self.font()))
            words = painter.fontMetrics().elidedText(self.read_words, Qt.TextElideMode.ElideRight, self.width())
            painter.drawText(QRectF(0, 0, self.width(), drawn.place.top()), int(Qt.AlignmentFlag.AlignRight), words)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Read where the pointer is."""
        if self._picture is not None:
            self._go_to(self._drawn(QPainter(), self._picture).time.time_ms(event.position().x()))

    def leaveEvent(self, event: object) -> None:
        """Read nothing once the pointer has left."""
        del event
        self._at_ms = None
        self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Step the line with the arrow keys; Home goes to the laying."""
        picture = self._picture
        moves = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}
        if picture is None or event.key() not in {*moves, Qt.Key.Key_Home}:
            super().keyPressEvent(event)
            return
        here = picture.laid_ms if self._at_ms is None or event.key() == Qt.Key.Key_Home else self._at_ms
        step_ms = (picture.end_ms - picture.start_ms) / _STEPS
        self._go_to(here + moves.get(Qt.Key(event.key()), 0) * step_ms)

    def _go_to(self, time_ms: float) -> None:
        if self._picture is not None:
            self._at_ms = min(max(time_ms, self._picture.start_ms), self._picture.end_ms)
            self.setAccessibleDescription(self.read_words)
            self.update()
