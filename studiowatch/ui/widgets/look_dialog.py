"""Touch test or look: four big answers."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QComboBox, QGridLayout, QPushButton, QWidget

from studiowatch.service.commands import RecordLook
from studiowatch.service.snapshot import CoatView, PieceView, Snapshot
from studiowatch.studio.pieces import Finding
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.rack import state_words
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.text import button, label, say

ANSWERS = {
    Finding.TACKY: "Tacky",
    Finding.DRY: "Dry",
    Finding.MILKY: "Still milky",
    Finding.CLEAR: "Clear",
}
_HINTS = {
    Finding.TACKY: "a light touch at the edge sticks",
    Finding.DRY: "a light touch at the edge leaves no mark",
    Finding.MILKY: "a veil over the dark colours",
    Finding.CLEAR: "dark colours look as dark as before",
}


def pieces_with_coats(snapshot: Snapshot) -> tuple[PieceView, ...]:
    """Return the pieces that have a coat to test."""
    return tuple(piece for piece in snapshot.pieces if piece.top is not None)


class LookDialog(FormDialog):
    """Records what she felt or saw on the top coat of a piece."""

    def __init__(
        self,
        *,
        snapshot: Snapshot,
        piece_key: str,
        now_ms: Callable[[], int],
        courier: Courier,
        style: Style,
        parent: QWidget,
    ) -> None:
        super().__init__("Touch test or look", courier, style, parent)
        self._pieces = pieces_with_coats(snapshot)
        self._now_ms = now_ms
        self.piece_field = QComboBox()
        self.piece_field.addItems([piece.title for piece in self._pieces])
        keys = [piece.key for piece in self._pieces]
        self.piece_field.setCurrentIndex(keys.index(piece_key) if piece_key in keys else 0)
        self._state = label("state", Tone.LINK, wrap=True)
        self.answers: dict[Finding, QPushButton] = {}
        self._lay_out()
        self.piece_field.currentIndexChanged.connect(self._show_coat)
        self._show_coat()
        self.fit(580, 430)
        self.answers[Finding.TACKY].setFocus()

    def _lay_out(self) -> None:
        self.field("Piece", self.piece_field)
        self.body.addWidget(self._state)
        self.body.addWidget(label("body", Tone.MUTED, "Touch at the edge, with a clean dry finger. What is it like?"))
        grid = QGridLayout()
        grid.setSpacing(self.dress.px(10))
        for index, (finding, words) in enumerate(ANSWERS.items()):
            answer = button(words, "answer")
            answer.setAccessibleDescription(_HINTS[finding])
            answer.clicked.connect(lambda _=False, finding=finding: self._answer(finding))
            self.answers[finding] = answer
            grid.addWidget(answer, 2 * (index // 2), index % 2)
            grid.addWidget(label("small", Tone.MUTED, _HINTS[finding], wrap=True), 2 * (index // 2) + 1, index % 2)
        self.body.addLayout(grid)
        self.body.addStretch(1)

    @property
    def _coat(self) -> CoatView:
        top = self._pieces[self.piece_field.currentIndex()].top
        if top is None:
            raise LookupError("a piece without a coat cannot be tested")
        return top

    def _show_coat(self) -> None:
        words, tone = state_words(self._coat, self._now_ms())
        say(self._state, words, tone)

    def _answer(self, finding: Finding) -> None:
        self.submit(RecordLook(coat_key=self._coat.key, time_ms=self._now_ms(), finding=finding))
