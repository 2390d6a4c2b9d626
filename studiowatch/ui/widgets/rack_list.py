"""The rack: a column of cards that scrolls, in her order."""

from __future__ import annotations

from PySide6.QtCore import QPoint, Qt, QTimer, Signal
from PySide6.QtGui import (
    QColor,
    QDragEnterEvent,
    QDragLeaveEvent,
    QDragMoveEvent,
    QDropEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from studiowatch.speech.words import say
from studiowatch.ui.models.empty import NO_PIECE
from studiowatch.ui.models.rack import PieceCard
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.film_section import DENSE, SHORTEST, TALLEST
from studiowatch.ui.widgets.piece_card import PIECE_MIME, PieceCardView
from studiowatch.ui.widgets.text import button, label

DENSE_FROM = 9  # pieces from which each card says only what comes next; the chosen one says all
_SLACK = 6  # units left free below the last card


class _Column(QWidget):
    """The inside of the rack, which shows where a dragged card would land."""

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("inside")
        self.setAccessibleName(say("Pieces"))
        self.landing_y: int | None = None
        self.colour = QColor()

    def set_landing(self, y: int | None) -> None:
        """Show the landing line at `y`, or none."""
        self.landing_y = y
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the landing line."""
        del event
        if self.landing_y is not None:
            QPainter(self).fillRect(0, self.landing_y - 2, self.width(), 4, self.colour)


class RackList(QScrollArea):
    """Shows the pieces; tells which is chosen and where one was dropped."""

    chosen = Signal(str)
    opened = Signal(str)
    menu_asked = Signal(str, QPoint)
    placed = Signal(str, int)
    register_asked = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(say("Rack"))
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAcceptDrops(True)
        self._style = Style()
        self._views: list[PieceCardView] = []
        self._chosen = ""
        self._awaited = ""
        self._revealing = ""
        self._found = False
        self._places: dict[str, int] = {}
        self._empty = self._make_empty()
        self._column = _Column()
        self._stack = QVBoxLayout(self._column)
        self._stack.addWidget(self._empty)
        self._stack.addStretch(1)
        self.setWidget(self._column)
        self.verticalScrollBar().rangeChanged.connect(self._show_new)

    def _make_empty(self) -> QFrame:
        card = QFrame()
        card.setProperty("card", "plain")
        card.setAccessibleName(say("The rack is empty"))
        column = QVBoxLayout(card)
        column.setContentsMargins(18, 20, 18, 20)
        column.setSpacing(10)
        column.addWidget(label("title", text=say("No piece on the rack yet")))
        column.addWidget(label("body", Tone.MUTED, say(NO_PIECE), wrap=True))
        register = button(say("Register a piece"), "primary")
        register.clicked.connect(self.register_asked)
        column.addWidget(register, 0, Qt.AlignmentFlag.AlignLeft)
        return card

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        self._column.colour = QColor(style.theme.link)
        self._stack.setContentsMargins(0, 0, style.px(6), style.px(2))
        self._stack.setSpacing(style.px(8))
        for view in self._views:
            view.set_style(style)
        self._share_height()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Let the sections grow into the room there is."""
        super().resizeEvent(event)
        self._share_height()

    def _share_height(self) -> None:
        """Give all sections one height: as tall as lets every card be seen, within limits."""
        if not self._views:
            return
        if len(self._views) >= DENSE_FROM:
            for view in self._views:
                view.section.set_height(self._style.px(DENSE if view.is_short else SHORTEST))
            return
        gaps = self._stack.spacing() * len(self._views) + self._style.px(_SLACK)
        needed = sum(view.needed_height(view.width()) for view in self._views) + gaps
        spare = (self.viewport().height() - needed) // len(self._views)
        shortest, tallest = self._style.px(SHORTEST), self._style.px(TALLEST)
        height = min(tallest, max(shortest, self._views[0].section.given_height + spare))
        for view in self._views:
            view.section.set_height(height)

    def set_cards(self, cards: tuple[PieceCard, ...], *, found: bool = False) -> None:
        """Show `cards` in their order; the chosen piece stays chosen while it is there.

        Those that were `found` among others keep their places, and are not dense.
        """
        self._found = found
        places = {card.key: place for place, card in enumerate(cards)}
        has_moved = bool(self._chosen) and self._places.get(self._chosen, 0) != places.get(self._chosen, 0)
        self._places = places
        self._have_views(len(cards))
        focused = self._focused_key()
        for view, card in zip(self._views, cards, strict=True):
            view.set_card(card)
            view.set_dense(dense=len(cards) >= DENSE_FROM)
        self._empty.setVisible(not cards and not found)
        keys = [card.key for card in cards]
        self._revealing = ""
        if self._awaited in keys:
            self.choose(self._awaited)
            self._revealing = self._awaited
            focused, self._awaited = (focused and self._awaited), ""
        elif self._chosen not in keys:
            self.choose(keys[0] if keys else "")
        self._mark_chosen()
        if focused is not None and focused in keys:
            self._views[keys.index(focused)].setFocus()
        self._share_height()
        if has_moved and self._chosen in keys:
            QTimer.singleShot(0, self, self._show_chosen)

    def _have_views(self, number: int) -> None:
        """Have so many cards."""
        while len(self._views) < number:
            self._add_view()
        while len(self._views) > number:
            gone = self._views.pop()
            self._stack.removeWidget(gone)
            gone.deleteLater()

    def _focused_key(self) -> str | None:
        """Return the piece that the keyboard is to stay with: the first one, where it is in the empty rack's words."""
        focus = self.window().focusWidget()
        if focus is not None and self._empty.isAncestorOf(focus):
            return self._awaited or next(iter(self._places), None)
        return next((view.key for view in self._views if view.hasFocus()), None)

    def _show_chosen(self) -> None:
        """Keep the chosen piece in view when it has changed its place."""
        for view in self._views:
            if view.key == self._chosen:
                self.ensureWidgetVisible(view)

    def choose(self, key: str) -> None:
        """Choose the piece of `key`."""
        if key == self._chosen:
            return
        self._chosen = key
        self._mark_chosen()
        self._share_height()
        self.chosen.emit(key)

    @property
    def chosen_key(self) -> str:
        """Return the key of the chosen piece, or ""."""
        return self._chosen

    def choose_when_there(self, key: str) -> None:
        """Choose the piece of `key` now or as soon as it is in the rack."""
        self._awaited = key

    def reveal(self, key: str) -> None:
        """Choose the piece of `key` and scroll to it."""
        self.choose(key)
        for view in self._views:
            if view.key == key:
                self.ensureWidgetVisible(view)

    def _show_new(self) -> None:
        """Scroll to a new piece as its card finds its place."""
        if self._revealing:
            self.reveal(self._revealing)

    def _mark_chosen(self) -> None:
        for view in self._views:
            view.set_chosen(chosen=view.key == self._chosen)

    def _add_view(self) -> None:
        view = PieceCardView()
        view.set_style(self._style)
        view.chosen.connect(self.choose)
        view.opened.connect(self.opened)
        view.menu_asked.connect(self.menu_asked)
        view.stepped.connect(self._step)
        view.moved.connect(self._move)
        self._stack.insertWidget(len(self._views) + 1, view)
        self._views.append(view)

    def _place(self, key: str) -> int:
        return [view.key for view in self._views].index(key)

    def _step(self, key: str, step: int) -> None:
        place = self._place(key) + step
        if 0 <= place < len(self._views):
            self._views[place].setFocus()
            self.ensureWidgetVisible(self._views[place])

    def _move(self, key: str, step: int) -> None:
        place = self._place(key) + step
        if 0 <= place < len(self._views) and not self._found:
            self.placed.emit(key, place)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Let a card of this rack in."""
        if not self._found and event.source() in self._views and event.mimeData().hasFormat(PIECE_MIME):
            event.acceptProposedAction()

    def dragMoveEvent(self, event: QDragMoveEvent) -> None:
        """Show where the card would land."""
        gap = self._gap_at(event.position().toPoint())
        below = gap < len(self._views)
        edge = self._views[gap].y() if below else self._views[-1].geometry().bottom()
        half = self._stack.spacing() // 2
        self._column.set_landing(max(2, edge - half) if below else edge + half)
        event.acceptProposedAction()

    def dragLeaveEvent(self, event: QDragLeaveEvent) -> None:
        """Show no landing line any more."""
        del event
        self._column.set_landing(None)

    def dropEvent(self, event: QDropEvent) -> None:
        """Tell where the card was put down."""
        self._column.set_landing(None)
        key = bytes(event.mimeData().data(PIECE_MIME).data()).decode()
        if key not in self._places:
            return  # it left the rack while it was carried
        gap, before = self._gap_at(event.position().toPoint()), self._place(key)
        place = gap - 1 if gap > before else gap
        if place != before:
            self.placed.emit(key, place)
        event.acceptProposedAction()

    def _gap_at(self, point: QPoint) -> int:
        y = self._column.mapFrom(self.viewport(), point).y()
        return sum(view.geometry().center().y() < y for view in self._views)
