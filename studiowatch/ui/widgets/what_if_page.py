"""What if: the room from now on under her hand, and every piece's ready time moving with it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QHideEvent, QKeySequence, QResizeEvent, QShortcut, QShowEvent
from PySide6.QtWidgets import QFrame, QGridLayout, QHBoxLayout, QLabel, QScrollArea, QVBoxLayout, QWidget

from studiowatch.service.films_to_come import FilmsToCome
from studiowatch.service.lend_films import LendFilms
from studiowatch.service.ports import Desk
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import say
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.tones import LEVEL_TONES, Tone
from studiowatch.ui.models.what_if import NO_PIECE, NOTHING_YET, WAITING, piece_lines
from studiowatch.ui.style import Style
from studiowatch.ui.what_if_worker import Question, Told, WhatIfWorker
from studiowatch.ui.widgets.rows import fill_views
from studiowatch.ui.widgets.text import button, label, put
from studiowatch.ui.widgets.warning_line import WarningLine
from studiowatch.ui.widgets.what_if_hand import WhatIfHand
from studiowatch.ui.widgets.what_if_rows import PieceLinesView

LENT_FOR_MS = 60_000  # ms after which the films are asked for anew while the page is in sight
_WIDE_UNITS, _HAND_UNITS = 900, 350
_ANY_WIDTH = 16_777_215  # px, as the toolkit has it


class WhatIfPage(QScrollArea):
    """Asks while it is in sight. `left` asks for the rack; `refused` tells in words."""

    left = Signal()
    refused = Signal(str)
    _lent = Signal(object)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.setAccessibleName(say("What if"))
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._courier = Courier(desk, self)
        self.worker = WhatIfWorker(self)
        self.worker.answered.connect(self._show)
        self._lent.connect(self._take)
        self._films: FilmsToCome | None = None
        self._asked_ms: int | None = None
        self._style, self._wide = Style(), False
        self.back = button(say("← Back to the rack"), "link")
        self.warning = WarningLine()
        self.hand = WhatIfHand()
        self.hand.moved.connect(self._ask)
        self.lead = label("lead", wrap=True)
        self.rows: list[PieceLinesView] = []
        self.beside: list[QLabel] = []
        self._compose()
        self.back.clicked.connect(self.left)
        QShortcut(QKeySequence("Escape"), self, self.left.emit)

    def _compose(self) -> None:
        inside = QWidget()
        inside.setObjectName("page")
        self._top = QHBoxLayout()
        self._top.addWidget(self.back)
        self._top.addWidget(label("headline", text=say("What if")))
        self._top.addStretch(1)
        self._top.addWidget(self.warning)
        self._left, self._right = QWidget(), QWidget()
        self._said_place, self._row_place = QVBoxLayout(self._left), QVBoxLayout(self._right)
        for part, place in ((self._left, self._said_place), (self._right, self._row_place)):
            part.setObjectName("inside")
            place.setContentsMargins(0, 0, 0, 0)
        self._said_place.addWidget(self.hand)
        self._row_place.addWidget(self.lead)
        self._rows_end = QWidget()
        self._row_place.addWidget(self._rows_end, 1)
        self._scroll = QScrollArea()
        self._scroll.setAccessibleName(say("Every piece in both rooms"))
        self._scroll.setWidgetResizable(True)
        self._scroll.setFrameShape(QFrame.Shape.NoFrame)
        self._scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroll.setWidget(self._right)
        self._grid = QGridLayout()
        self._whole = QVBoxLayout(inside)
        self._whole.addLayout(self._top)
        self._whole.addLayout(self._grid, 1)
        self.setWidget(inside)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Keep up with the room: a warning stays in sight above, and the films are asked for anew now and then."""
        self.warning.show_sentence(snapshot.sentence)
        self.hand.rest_at(snapshot.room)
        if self._asked_ms is None or not 0 <= snapshot.time_ms - self._asked_ms < LENT_FOR_MS:
            self._asked_ms = snapshot.time_ms
            self._borrow()

    def showEvent(self, event: QShowEvent) -> None:
        """Ask for the films with the next snapshot."""
        super().showEvent(event)
        self._asked_ms = None
        self.hand.speak()

    def hideEvent(self, event: QHideEvent) -> None:
        """Let go of the films."""
        super().hideEvent(event)
        self._films = None

    def _borrow(self) -> None:
        if self._films is None:
            put(self.lead, say(WAITING), Tone.MUTED)
        command = LendFilms(to=self._lent.emit)
        self._courier.send(command, owner=self, done=lambda _key: None, refused=self.refused.emit)

    def _take(self, films: FilmsToCome) -> None:
        self._films = films
        self._ask()

    def _ask(self) -> None:
        if self._films is not None:
            wish = self.hand.wish
            self.worker.ask(Question(films=self._films, held=wish.held(self._films.now_ms), cover=wish.cover))

    def _show(self, told: Told) -> None:
        if self._films is None:
            return
        lines = piece_lines(told.pieces, told.question.films.now_ms)
        self._show_lead(told)
        fill_views(self.rows, lines, self._make_row, PieceLinesView.show_piece)
        self._show_beside(told)
        self._stretch()

    def _show_lead(self, told: Told) -> None:
        held, cover = told.question.held, told.question.cover
        if told.refused:
            put(self.lead, told.refused, Tone.ACT)
        elif not told.question.films.films:
            put(self.lead, say(NO_PIECE), Tone.MUTED)
        elif held.is_as_it_comes and not cover:
            put(self.lead, say(NOTHING_YET), Tone.MUTED)
        else:
            put(
                self.lead,
                " · ".join(one for one in (held.words, say("under mesh covers") if cover else "") if one),
                Tone.INK,
            )

    def _show_beside(self, told: Told) -> None:
        """Show what the watch would warn of in that room, and what care its making takes."""
        said = [
            (
                say("In that room: {warning}", warning=f"{one.headline}. {one.detail}".strip()),
                LEVEL_TONES[one.level],
            )
            for one in told.warnings
        ]
        said += [(words, Tone.MUTED) for words in told.care]
        fill_views(self.beside, said, self._make_beside, lambda shown, one: put(shown, *one))

    def _make_row(self, at: int) -> PieceLinesView:
        view = PieceLinesView()
        view.set_style(self._style)
        self._row_place.insertWidget(1 + at, view)
        return view

    def _make_beside(self, _at: int) -> QLabel:
        made = label("body", wrap=True)
        self._said_place.addWidget(made)
        return made

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        px = style.px
        self._whole.setContentsMargins(px(14), px(8), px(14), px(6))
        self._whole.setSpacing(px(10))
        self._top.setSpacing(px(8))
        self._grid.setSpacing(px(14))
        self._said_place.setSpacing(px(8))
        self._row_place.setSpacing(px(6))
        self.warning.set_style(style)
        self.hand.set_style(style)
        for row in self.rows:
            row.set_style(style)
        self._reflow(self.viewport().width(), anew=True)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Lay the parts out for the new width."""
        super().resizeEvent(event)
        self._reflow(event.size().width())

    def _reflow(self, width: int, *, anew: bool = False) -> None:
        wide = width >= self._style.px(_WIDE_UNITS)
        if wide == self._wide and not anew:
            return
        self._wide = wide
        for part in (self._left, self._scroll):
            self._grid.removeWidget(part)
        self._grid.addWidget(self._left, 0, 0, Qt.AlignmentFlag.AlignTop)
        self._grid.addWidget(self._scroll, *((0, 1) if wide else (1, 0)))
        self._grid.setColumnStretch(0, 0 if wide else 1)
        self._grid.setColumnStretch(1, 1 if wide else 0)
        self._left.setMaximumWidth(self._style.px(_HAND_UNITS) if wide else _ANY_WIDTH)
        self._left.setMinimumWidth(self._style.px(_HAND_UNITS) if wide else 0)
        self._stretch()

    def _stretch(self) -> None:
        """Have the rows scroll beside her hand where there is room, and with the page where there is not."""
        self._scroll.setMinimumHeight(0 if self._wide else self._right.sizeHint().height())

    def end(self) -> None:
        """Bring no more answers: the window is going."""
        self._courier.close()
        self.worker.close()
