"""The causes of a review, each with its bar and its evidence."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio.review_causes import WITHIN
from studiowatch.ui.models.review import CauseRow
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.plain import set_tip
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.text import button, label, rule

EXAMPLE = mark("What would that look like?")
_BAR_UNITS = 8
_FADED = 0.02  # share under which a cause is only named


class ShareBar(QWidget):
    """A share of the whole, 0-1, as the length of a bar."""

    def __init__(self, share: float, tone: Tone, style: Style) -> None:
        super().__init__()
        self._share, self._tone, self._style = share, tone, style
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(f"{chosen().number(100.0 * share)} %")

    def sizeHint(self) -> QSize:
        """Return the bar's height at the present scale."""
        return QSize(self._style.px(80), self._style.px(_BAR_UNITS))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the bar on its groove."""
        del event
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        place = QRectF(self.rect())
        radius = place.height() / 2
        painter.setBrush(QColor(self._style.theme.rule))
        painter.drawRoundedRect(place, radius, radius)
        place.setWidth(max(place.width() * self._share, place.height()))
        painter.setBrush(QColor(getattr(self._style.theme, str(self._tone))))
        painter.drawRoundedRect(place, radius, radius)


class CauseList(QWidget):
    """Rows of causes, the strongest first. `atlas_asked` carries the cause of which she wants to see a made-up coat."""

    atlas_asked = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("inside")
        self.setAccessibleName(say("Likely causes, strongest first"))
        self._style = Style()
        self._rows: list[QWidget] = []
        self._shown: tuple[CauseRow, ...] = ()
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.addStretch(1)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        self._column.setSpacing(style.px(9))
        self._fill()

    def show_causes(self, rows: Sequence[CauseRow]) -> None:
        """Show `rows`."""
        self._shown = tuple(rows)
        self._fill()

    def _fill(self) -> None:
        for row in self._rows:
            self._column.removeWidget(row)
            row.hide()
            row.deleteLater()
        strong = [row for row in self._shown if row.share >= _FADED]
        faint = [row for row in self._shown if row.share < _FADED and row.is_known]
        self._rows = []
        for cause in strong:
            self._rows += [self._row(cause), rule()]
        if faint:
            self._rows.append(self._rest(faint))
        for place, made in enumerate(self._rows):
            self._column.insertWidget(place, made)

    def _row(self, row: CauseRow) -> QFrame:
        made = QFrame()
        made.setAccessibleName(row.spoken)
        set_tip(made, row.basis)
        column = QVBoxLayout(made)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(self._style.px(5))
        head = QHBoxLayout()
        head.addWidget(label("title", text=row.title, wrap=True), 1)
        head.addWidget(label("title", row.tone, row.percent), 0, Qt.AlignmentFlag.AlignTop)
        column.addLayout(head)
        column.addWidget(ShareBar(row.share, row.tone, self._style))
        for sentence in row.sentences:
            column.addWidget(label("body", Tone.MUTED, sentence, wrap=True))
        if row.often:
            column.addWidget(label("small", Tone.INK, row.often, wrap=True))
        example = button(say(EXAMPLE), "link")
        example.setAccessibleName(f"{say(EXAMPLE)} {row.title}")
        example.clicked.connect(partial(self.atlas_asked.emit, row.cause))
        column.addWidget(example, 0, Qt.AlignmentFlag.AlignLeft)
        return made

    def _rest(self, rows: Sequence[CauseRow]) -> QWidget:
        named = ", ".join(say(WITHIN[row.cause]) for row in rows)
        return label("small", Tone.MUTED, say("Next to nothing speaks for: {causes}.", causes=named), wrap=True)
