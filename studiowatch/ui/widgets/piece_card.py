"""One piece in the rack: its name, its section, and when the next step is ready."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QMimeData, QPoint, Qt, Signal
from PySide6.QtGui import QContextMenuEvent, QDrag, QFocusEvent, QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QApplication, QFrame, QHBoxLayout, QSizePolicy, QVBoxLayout

from studiowatch.ui.models.rack import PieceCard
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.plain import set_tip
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.film_section import FilmSection
from studiowatch.ui.widgets.text import ElidedLabel, label, put, set_property

PIECE_MIME = "application/x-studiowatch-piece"
_GIVEN_BACK = frozenset({Qt.FocusReason.ActiveWindowFocusReason, Qt.FocusReason.PopupFocusReason})


class PieceCardView(QFrame):
    """A card that can be chosen, dragged, and asked for its menu."""

    chosen = Signal(str)
    opened = Signal(str)
    menu_asked = Signal(str, QPoint)
    stepped = Signal(str, int)
    moved = Signal(str, int)

    def __init__(self) -> None:
        super().__init__()
        self.key = ""
        self._card: PieceCard | None = None
        self._pressed: QPoint | None = None
        self._dense = self._chosen = False
        self._style = Style()
        self.setProperty("card", "piece")
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._title = ElidedLabel("title")
        self._size = label("small", Tone.MUTED)
        self._state = ElidedLabel("state")
        self._cautions = label("small", Tone.CAUTION, wrap=True)
        self._sealed = label("small", wrap=True)
        self._learnt = ElidedLabel("small", Tone.MUTED)
        self.section = FilmSection()
        self._ahead = label("small", Tone.MUTED, wrap=True)
        self._step = label("small", wrap=True)
        self._ready = label("ready", wrap=True)
        self._likely = label("small", Tone.MUTED, wrap=True)
        self._due = label("small", Tone.MUTED)
        self._slack = label("strong", wrap=True)
        self._compose()

    def _compose(self) -> None:
        self._facts = QVBoxLayout()
        self._facts.addStretch(1)
        for fact in (self._ahead, self._step, self._ready, self._likely, self._slack):
            fact.setAlignment(Qt.AlignmentFlag.AlignRight)
            fact.setContentsMargins(0, 1, 0, 0)  # for the dots of an Ü, which reach above the line
            # Whatever it says, it has its share of the card: all sections are equally wide.
            fact.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
            self._facts.addWidget(fact)
        self._lines = QVBoxLayout(self)
        self._body = QHBoxLayout()
        self._body.addWidget(self.section, 58, Qt.AlignmentFlag.AlignBottom)
        self._body.addLayout(self._facts, 42)
        for left, right in ((self._title, self._size), (self._state, self._due)):
            line = QHBoxLayout()
            line.addWidget(left, 1)
            line.addWidget(right)
            self._lines.addLayout(line)
        line.setAlignment(self._due, Qt.AlignmentFlag.AlignTop)  # of two lines beside it, at the first
        self._lines.addWidget(self._cautions)
        self._lines.addWidget(self._sealed)
        self._lines.addLayout(self._body, 1)
        self._lines.addWidget(self._learnt)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        px = style.px
        self._style = style
        self.section.set_style(style)
        self._lines.setSpacing(px(2))
        self._body.setSpacing(px(6))
        self._facts.setSpacing(px(1))
        self._thin_out()

    def set_card(self, card: PieceCard) -> None:
        """Show `card`."""
        if card == self._card:
            return
        self._card, self.key = card, card.key
        put(self._title, card.title)
        put(self._size, card.size)
        put(self._state, card.state, card.state_tone)
        put(self._cautions, "\n".join(card.cautions), hide_empty=True)
        put(self._sealed, card.sealed, hide_empty=True)
        put(self._learnt, card.learnt)
        set_tip(self._learnt, card.learnt_whole)
        self.section.set_section(card.section, card.full_um)
        put(self._ahead, card.ahead)
        put(self._step, card.step, hide_empty=True)
        put(self._ready, card.ready, card.ready_tone, hide_empty=True)
        put(self._likely, card.likely)
        put(self._due, card.due)
        put(self._slack, card.slack, card.slack_tone, hide_empty=True)
        self.setAccessibleName(card.spoken)
        self._thin_out()

    def set_dense(self, *, dense: bool) -> None:
        """Say only what comes next, unless this is the chosen piece."""
        if dense != self._dense:
            self._dense = dense
            self._thin_out()

    def _thin_out(self) -> None:
        """Show what there is room for; what were shown and hidden again would have the whole rack laid out anew."""
        is_short = self.is_short
        for part in (self._size, self._ahead, self._likely, self._learnt):
            part.setVisible(bool(part.text()) and not is_short)
        if self._state.wordWrap() is is_short:  # Qt lays out anew though it is told what is so already
            self._state.setWordWrap(not is_short)
        self.section.set_named(named=not is_short)
        px = self._style.px
        above, below = (px(6), px(7)) if is_short else (px(9), px(11))
        self._lines.setContentsMargins(px(14), above, px(14), below)

    @property
    def is_short(self) -> bool:
        """Whether this card says only what comes next."""
        return self._dense and not self._chosen

    def needed_height(self, width: int) -> int:
        """Return how tall the card must be at `width`, with its section as tall as it is now."""
        return self._lines.totalHeightForWidth(width) if self._lines.hasHeightForWidth() else self.sizeHint().height()

    def set_chosen(self, *, chosen: bool) -> None:
        """Show whether this is the piece that the actions are about."""
        set_property(self, "chosen", "true" if chosen else "false")
        if chosen != self._chosen:
            self._chosen = chosen
            self._thin_out()

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Choose the piece that the keyboard comes to, but not when a form closes and only gives the focus back."""
        super().focusInEvent(event)
        if event.reason() not in _GIVEN_BACK:
            self.chosen.emit(self.key)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Walk with Up and Down, move with Alt, open with Enter, ask for the menu with the menu key."""
        steps = {Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1}
        step = steps.get(Qt.Key(event.key()))
        if step is not None:
            moving = bool(event.modifiers() & Qt.KeyboardModifier.AltModifier)
            (self.moved if moving else self.stepped).emit(self.key, step)
        elif event.key() in {Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space}:
            self.opened.emit(self.key)
        elif event.key() == Qt.Key.Key_Menu:
            self.menu_asked.emit(self.key, self.mapToGlobal(self.rect().center()))
        else:
            super().keyPressEvent(event)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        """Ask for the menu of this piece."""
        self.setFocus(Qt.FocusReason.MouseFocusReason)
        self.menu_asked.emit(self.key, event.globalPos())

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Remember where a drag may begin."""
        if event.button() is Qt.MouseButton.LeftButton:
            self._pressed = event.position().toPoint()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Drag the card once the mouse has gone far enough."""
        if self._pressed is None:
            return
        gone = (event.position().toPoint() - self._pressed).manhattanLength()
        if gone >= QApplication.startDragDistance():
            pressed, self._pressed = self._pressed, None
            self._drag(pressed)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Forget the press."""
        del event
        self._pressed = None

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """Open what one does most with this piece."""
        if event.type() is QEvent.Type.MouseButtonDblClick:
            self.opened.emit(self.key)

    def _drag(self, hot_spot: QPoint) -> None:
        carried = QMimeData()
        carried.setData(PIECE_MIME, self.key.encode())
        drag = QDrag(self)
        drag.setMimeData(carried)
        drag.setPixmap(self.grab())
        drag.setHotSpot(hot_spot)
        drag.exec(Qt.DropAction.MoveAction)
