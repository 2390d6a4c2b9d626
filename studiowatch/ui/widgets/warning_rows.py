"""The warnings: what, since when, which pieces, and the answers to an open one."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from PySide6.QtCore import QEvent, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from studiowatch.ui.models.notices import WarningRow
from studiowatch.ui.plain import set_tip
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.marks import level_ink, paint_mark
from studiowatch.ui.widgets.warning_answers import OpenAnswers

_LEFT, _ABOVE = 4, 3
_MARK, _AFTER_MARK = 18, 10
_HEADLINE, _WHEN = (13, QFont.Weight.Bold), (12, QFont.Weight.Normal)
_BETWEEN = 2
_LEAST_WORDS = 80
_ENDLESS = 100_000
_FLAGS = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop | Qt.TextFlag.TextWordWrap


class WarningRowView(QWidget):
    """One warning. It draws its mark and words itself: a widget for each would hold five times the memory.

    Its answers are made once it is an open one: most rows only ever tell of past ones. `wire` connects those made.
    """

    def __init__(self, wire: Callable[[OpenAnswers], None]) -> None:
        super().__init__()
        self._wire = wire
        self._style = Style()
        self._shown: WarningRow | None = None
        self._answers: OpenAnswers | None = None
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        if self._answers is not None:
            self._answers.set_style(style)
        self._lay_anew()

    def set_row(self, row: WarningRow) -> None:
        """Show `row`: a filled mark while it is open, an outline once it is past."""
        self._shown = row
        set_tip(self, row.advice)
        self.setAccessibleName(row.spoken)
        if row.is_open and self._answers is None:
            self._answers = OpenAnswers()
            self._answers.setParent(self)
            self._answers.set_style(self._style)
            self._wire(self._answers)
        if self._answers is not None:
            self._answers.set_row(row)
            self._answers.setVisible(row.is_open)
        self._lay_anew()

    def event(self, event: QEvent) -> bool:
        """Ask for another place where the answers came to need one: the basis of a limit is shown or hidden."""
        if event.type() is QEvent.Type.LayoutRequest:
            self._lay_anew()
        return super().event(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Put the answers below the words."""
        super().resizeEvent(event)
        self._place_answers()

    def _lay_anew(self) -> None:
        self._place_answers()
        self.updateGeometry()
        self.update()

    def _place_answers(self) -> None:
        answers = self._offered
        if answers is not None:
            top = self._words_tall(self.width()) + self._style.px(_BETWEEN)
            wide = self.width() - self._indent
            answers.setGeometry(self._indent, self._style.px(_ABOVE) + top, wide, _tall(answers, wide))

    @property
    def _offered(self) -> OpenAnswers | None:
        return self._answers if self._shown is not None and self._shown.is_open else None

    @property
    def _indent(self) -> int:
        return self._style.px(_LEFT) + self._style.px(_MARK) + self._style.px(_AFTER_MARK)

    def sizeHint(self) -> QSize:
        """Return what it needs at least: it takes the width that there is."""
        return self.minimumSizeHint()

    def minimumSizeHint(self) -> QSize:
        """Return the width of its answers, or of a few words, and the height if none of the words wrapped."""
        answers = self._offered
        wide = self._style.px(_LEAST_WORDS) if answers is None else answers.minimumSizeHint().width()
        return QSize(self._indent + wide, self.heightForWidth(_ENDLESS))

    def heightForWidth(self, width: int) -> int:
        """Return how tall it is at a width in pixels."""
        px, answers = self._style.px, self._offered
        tall = max(self._words_tall(width), px(_MARK))
        if answers is not None:
            tall += px(_BETWEEN) + _tall(answers, width - self._indent)
        return tall + 2 * px(_ABOVE)

    def _words_tall(self, width: int) -> int:
        return max((box.bottom() + 1 for box, _, _, _ in self._words(width)), default=0)

    def _words(self, width: int) -> Iterator[tuple[QRect, QFont, str, str]]:
        """Yield the place of each line below the edge above, its font, words and colour."""
        if self._shown is None:
            return
        row, theme, top = self._shown, self._style.theme, 0
        ink = level_ink(row.level, theme) if row.is_open else theme.ink
        for (size, weight), words, colour in ((_HEADLINE, row.headline, ink), (_WHEN, row.when, theme.muted)):
            font = QFont(self.font())
            font.setPixelSize(self._style.px(size))
            font.setWeight(weight)
            room = QRect(self._indent, top, width - self._indent, _ENDLESS)
            box = QFontMetrics(font).boundingRect(room, int(_FLAGS), words)
            room.setHeight(box.height())
            yield room, font, words, colour
            top += box.height() + self._style.px(_BETWEEN)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the mark, and the words beside it."""
        del event
        if self._shown is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        px, row = self._style.px, self._shown
        side = px(_MARK)
        paint_mark(painter, QRectF(px(_LEFT), px(_ABOVE), side, side), row.level, self._style.theme, filled=row.is_open)
        for box, font, words, colour in self._words(self.width()):
            painter.setFont(font)
            painter.setPen(QColor(colour))
            painter.drawText(box.translated(0, px(_ABOVE)), int(_FLAGS), words)


def _tall(answers: OpenAnswers, wide: int) -> int:
    return answers.heightForWidth(wide) if answers.hasHeightForWidth() else answers.sizeHint().height()
