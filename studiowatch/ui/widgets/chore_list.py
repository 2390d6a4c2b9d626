"""What to see to before the brush goes down: large rows that a wet hand hits, each with its own countdown."""

from __future__ import annotations

from collections.abc import Sequence
from math import ceil

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QAbstractButton, QFrame, QGridLayout, QSizePolicy, QWidget

from studiowatch.speech.words import say
from studiowatch.studio.chores import Task
from studiowatch.studio.preparation import ChoreState
from studiowatch.ui.models.laying import ChoreRow
from studiowatch.ui.style import Style

_ROW_UNITS = 62  # tall enough for a wet finger
_SIXTEENTHS = 16
_FULL = 360 * _SIXTEENTHS


class ChoreButton(QAbstractButton):
    """One chore: the whole row is the target; a ring fills while it rests, and is a tick once it is done."""

    def __init__(self, style: Style) -> None:
        super().__init__()
        self._style = style
        self._row: ChoreRow | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    @property
    def row(self) -> ChoreRow | None:
        """The chore that is shown."""
        return self._row

    def set_row(self, row: ChoreRow) -> None:
        """Show `row`."""
        if row != self._row:
            self._row = row
            self.setText(row.words)
            self.setAccessibleName(row.spoken)
            self.updateGeometry()
            self.update()

    def sizeHint(self) -> QSize:
        """Return a size for a row of its usual width."""
        width = self._style.px(360)
        return QSize(width, self.heightForWidth(width))

    def minimumSizeHint(self) -> QSize:
        """Return the least width; the words wrap."""
        return QSize(self._style.px(200), self._style.px(_ROW_UNITS))

    def hasHeightForWidth(self) -> bool:
        """Return that the words wrap."""
        return True

    def heightForWidth(self, width: int) -> int:
        """Return the height that all words need at `width`."""
        px = self._style.px
        if self._row is None:
            return px(_ROW_UNITS)
        return max(px(_ROW_UNITS), self._words_height(width - px(_ROW_UNITS) - px(10)) + px(16))

    def _lines(self) -> list[tuple[str, int, bool, str]]:
        """Return text, size in pixels, boldness and colour of each line."""
        row, theme, px = self._row, self._style.theme, self._style.px
        if row is None:
            return []
        done = row.state is ChoreState.DONE
        lines = [(row.words, px(16), True, theme.muted if done else theme.ink)]
        if row.note:
            colour = {ChoreState.RESTING: theme.link, ChoreState.STALE: theme.caution}.get(row.state, theme.good)
            lines.append((row.note, px(15), True, colour))
        if row.caution:
            lines.append((row.caution, px(12), False, theme.caution))
        return lines

    def _words_height(self, width: float) -> int:
        lines = self._lines()
        return ceil(sum(self._line_rect(text, size, width, bold=bold).height() for text, size, bold, _ in lines))

    def _line_rect(self, text: str, size: int, width: float, *, bold: bool) -> QRectF:
        font = self.font()
        font.setPixelSize(size)
        font.setBold(bold)
        return QFontMetricsF(font).boundingRect(QRectF(0, 0, max(10, width), 9999), int(Qt.TextFlag.TextWordWrap), text)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the card, the ring and the words."""
        del event
        if self._row is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        theme, px = self._style.theme, self._style.px
        edge = theme.link if self.hasFocus() or self.underMouse() else theme.edge
        painter.setPen(QPen(QColor(edge), px(2) if self.hasFocus() else 1))
        painter.setBrush(QColor(theme.ahead if self.isDown() else theme.card))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), px(7), px(7))
        self._paint_ring(painter, QPointF(px(_ROW_UNITS) / 2, self.height() / 2), px(17))
        left, width = px(_ROW_UNITS), self.width() - px(_ROW_UNITS) - px(10)
        top = (self.height() - self._words_height(width)) / 2
        for text, size, bold, colour in self._lines():
            font = self.font()
            font.setPixelSize(size)
            font.setBold(bold)
            painter.setFont(font)
            painter.setPen(QColor(colour))
            height = self._line_rect(text, size, width, bold=bold).height()
            painter.drawText(QRectF(left, top, width, height + 2), int(Qt.TextFlag.TextWordWrap), text)
            top += height

    def _paint_ring(self, painter: QPainter, middle: QPointF, radius: float) -> None:
        row, theme, px = self._row, self._style.theme, self._style.px
        if row is None:
            return
        box = QRectF(middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius)
        colours = {ChoreState.DONE: theme.good, ChoreState.STALE: theme.caution, ChoreState.RESTING: theme.rule}
        ring = QColor(colours.get(row.state, theme.muted))
        painter.setPen(QPen(ring, px(3)))
        painter.setBrush(ring if row.state is ChoreState.DONE else Qt.BrushStyle.NoBrush)
        painter.drawEllipse(box)
        if row.state is ChoreState.RESTING:
            painter.setPen(QPen(QColor(theme.link), px(5), Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap))
            painter.drawArc(box, 90 * _SIXTEENTHS, -round(_FULL * min(1.0, max(0.0, row.share))))
        elif row.state is ChoreState.DONE:
            x, y, r = middle.x(), middle.y(), radius
            painter.setPen(QPen(QColor(theme.card), px(3.4)))
            painter.drawPolyline(
                [QPointF(x - 0.45 * r, y), QPointF(x - 0.1 * r, y + 0.36 * r), QPointF(x + 0.5 * r, y - 0.36 * r)]
            )


class ChoreList(QFrame):
    """The chores, two beside each other where there is room. `pressed` carries the task."""

    pressed = Signal(object)

    def __init__(self, style: Style) -> None:
        super().__init__()
        self.setAccessibleName(say("See to it first"))
        self._style = style
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setSpacing(style.px(8))
        self._columns = 0
        self.buttons: dict[Task, ChoreButton] = {}

    def set_rows(self, rows: Sequence[ChoreRow], columns: int) -> None:
        """Show `rows` in so many columns, and keep the button of each task."""
        tasks = [row.task for row in rows]
        if tasks != list(self.buttons) or columns != self._columns:
            self._arrange(tasks, columns)
        for row in rows:
            self.buttons[row.task].set_row(row)

    def _arrange(self, tasks: Sequence[Task], columns: int) -> None:
        for task in [task for task in self.buttons if task not in tasks]:
            self._drop(self.buttons.pop(task))
        kept = {task: self.buttons.get(task) or self._made(task) for task in tasks}
        self.buttons, self._columns = kept, columns
        for button in kept.values():
            self._grid.removeWidget(button)
        for at, button in enumerate(kept.values()):
            self._grid.addWidget(button, at // columns, at % columns)
        for column in range(columns):
            self._grid.setColumnStretch(column, 1)
        for before, after in zip(list(kept.values()), list(kept.values())[1:], strict=False):
            QWidget.setTabOrder(before, after)

    def _made(self, task: Task) -> ChoreButton:
        button = ChoreButton(self._style)
        button.clicked.connect(lambda: self.pressed.emit(task))
        return button

    def _drop(self, button: ChoreButton) -> None:
        self._grid.removeWidget(button)
        button.hide()
        button.deleteLater()
