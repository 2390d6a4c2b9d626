"""What was recorded of a piece: every line with its correction, and the history of those."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDialog, QFrame, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from studiowatch.service.piece_view import PieceView
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import mark, say
from studiowatch.ui.models.recorded import (
    NO_CORRECTION,
    NONE_LAID,
    LineKind,
    RecordedLine,
    correction_lines,
    recorded_lines,
)
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.text import button, label

_TITLE = mark("What was recorded")


class RecordedDialog(QDialog):
    """Lists what was recorded on one piece; `correct` and `take_back` carry the line that she chose."""

    correct = Signal(object)
    take_back = Signal(object)
    forgotten = Signal()

    def __init__(self, piece: PieceView, now_ms: Callable[[], int], style: Style, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(f"{say(_TITLE)}: {piece.title}")
        self.setAccessibleName(self.windowTitle())
        self._now_ms, self._style = now_ms, style
        self._piece = piece
        self._shown: tuple[object, ...] = ()
        self._scroll = QScrollArea()
        self._lay_out()
        self._show()
        px, room = style.px, self.screen().availableSize()
        self.resize(min(px(700), room.width() - 40), min(px(560), room.height() - 60))

    def _lay_out(self) -> None:
        px = self._style.px
        scroll = self._scroll
        scroll.setAccessibleName(say(_TITLE))
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        add, close = button(say("Add a coat that was forgotten…")), button(say("Close"), "primary")
        add.clicked.connect(self.forgotten)
        close.clicked.connect(self.accept)
        foot = QHBoxLayout()
        foot.addWidget(add)
        foot.addStretch(1)
        foot.addWidget(close)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(px(20), px(14), px(20), px(14))
        whole.setSpacing(px(10))
        whole.addWidget(label("headline", text=self.windowTitle(), wrap=True))
        whole.addWidget(scroll, 1)
        whole.addLayout(foot)

    def set_snapshot(self, snapshot: Snapshot) -> None:
        """Show the piece as it is now."""
        piece = next((piece for piece in snapshot.pieces if piece.key == self._piece.key), None)
        if piece is not None:
            self._piece = piece
            self._show()

    def _show(self) -> None:
        now_ms = self._now_ms()
        lines, history = recorded_lines(self._piece, now_ms), correction_lines(self._piece, now_ms)
        if self._shown == (lines, history):
            return
        self._shown = (lines, history)
        inside = QWidget()
        inside.setObjectName("inside")
        inside.setAccessibleName(say(_TITLE))
        column = QVBoxLayout(inside)
        column.setContentsMargins(0, 0, self._style.px(6), 0)
        column.setSpacing(self._style.px(7))
        if not lines:
            column.addWidget(label("body", Tone.MUTED, say(NONE_LAID), wrap=True))
        for line in lines:
            column.addLayout(self._row(line))
        column.addSpacing(self._style.px(10))
        column.addWidget(label("strong", text=say("Corrections")))
        for words in history or (say(NO_CORRECTION),):
            column.addWidget(label("small", Tone.MUTED, words, wrap=True))
        column.addStretch(1)
        self._scroll.setWidget(inside)

    def _row(self, line: RecordedLine) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(self._style.px(8))
        is_coat = line.kind is LineKind.COAT
        if not is_coat:
            row.addSpacing(self._style.px(22))
        words = label("strong" if is_coat else "body", text=line.words, wrap=True)
        row.addWidget(words, 1)
        back = say("Take back…") if is_coat else say("Take back")
        for text, signal in ((say("Correct…"), self.correct), (back, self.take_back)):
            made = button(text)
            made.setAccessibleName(f"{text.removesuffix('…')}: {line.words}")
            made.clicked.connect(lambda _=False, signal=signal: signal.emit(line))
            row.addWidget(made, 0, Qt.AlignmentFlag.AlignTop)
        return row
