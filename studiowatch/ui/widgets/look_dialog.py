"""Touch test or look: a few big answers, none of them the default."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QLabel, QPushButton, QWidget

from studiowatch.service.commands import Command
from studiowatch.service.piece_view import CoatView, PieceView
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import mark, say
from studiowatch.studio.pieces import Finding
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.learning import learnt_sentence
from studiowatch.ui.models.look_form import (
    ANSWERS,
    BY_TOUCH,
    HOW_TO_TOUCH,
    answer_command,
    answer_words,
    found_words,
    hint_words,
    tells_outcome,
    wet_care,
)
from studiowatch.ui.models.rack import state_words
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.drop_down import drop_down_of_names
from studiowatch.ui.widgets.text import button, label, put

LOOK_TITLE = mark("Touch test or look")


def pieces_with_coats(snapshot: Snapshot) -> tuple[PieceView, ...]:
    """Return the pieces that have a coat to test."""
    return tuple(piece for piece in snapshot.pieces if piece.top is not None)


class LookDialog(FormDialog):
    """Records what she felt or saw on the top coat of a piece; `answering` carries the piece as an answer is sent.

    `is_over` says whether the answer that was given tells that the coat is what it will be.
    """

    answering = Signal(str)

    def __init__(
        self,
        *,
        snapshot: Snapshot,
        piece_key: str,
        now_ms: Callable[[], int],
        courier: Courier,
        style: Style,
        parent: QWidget,
        title: str = "",
        findings: Sequence[Finding] = tuple(ANSWERS),
    ) -> None:
        super().__init__(title or say(LOOK_TITLE), courier, style, parent)
        self._pieces = pieces_with_coats(snapshot)
        self._learnt_views = snapshot.learnt
        self._now_ms = now_ms
        self._found = ""
        self.is_over = False
        self._findings = tuple(findings)
        self.piece_field = drop_down_of_names()
        self.piece_field.addItems([piece.title for piece in self._pieces])
        keys = [piece.key for piece in self._pieces]
        self.piece_field.setCurrentIndex(keys.index(piece_key) if piece_key in keys else 0)
        self._state = label("state", Tone.LINK, wrap=True)
        self._how = label("body", Tone.MUTED, wrap=True)
        self._learnt = label("small", Tone.MUTED, wrap=True)
        self.answers: dict[Finding, QPushButton] = {}
        self._hints: dict[Finding, QLabel] = {}
        self._lay_out()
        self.piece_field.currentIndexChanged.connect(self._show_coat)
        self._show_coat()
        self.fit(580, 430 if len(self._findings) > len(BY_TOUCH) else 330)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setFocus()  # on the form itself: neither Enter nor Space gives an answer before she chose one

    def _lay_out(self) -> None:
        self.field(say("Piece"), self.piece_field)
        self.body.addWidget(self._state)
        self.body.addWidget(self._how)
        grid = QGridLayout()
        grid.setSpacing(self.dress.px(10))
        for index, finding in enumerate(self._findings):
            answer, hint = button("", "answer"), label("small", Tone.MUTED, wrap=True)
            answer.clicked.connect(lambda _=False, finding=finding: self._answer(finding))
            self.answers[finding], self._hints[finding] = answer, hint
            grid.addWidget(answer, 2 * (index // 2), index % 2)
            grid.addWidget(hint, 2 * (index // 2) + 1, index % 2)
        self.body.addLayout(grid)
        self.body.addWidget(self._learnt)
        self.body.addStretch(1)

    @property
    def _piece(self) -> PieceView:
        return self._pieces[self.piece_field.currentIndex()]

    @property
    def _coat(self) -> CoatView:
        top = self._piece.top
        if top is None:
            raise LookupError("a piece without a coat cannot be tested")  # not said
        return top

    def _show_coat(self) -> None:
        words, tone = state_words(self._coat, self._now_ms())
        put(self._state, words, tone)
        care = wet_care(self._coat, self._now_ms())
        asks_touch = not set(BY_TOUCH).isdisjoint(self._findings)
        put(self._how, care or (say(HOW_TO_TOUCH) if asks_touch else ""), Tone.CAUTION if care else Tone.MUTED)
        put(self._learnt, learnt_sentence(self._piece, self._learnt_views), hide_empty=True)
        self._name_answers(solvent=self._coat.solvent)

    def _name_answers(self, *, solvent: bool) -> None:
        for finding, answer in self.answers.items():
            words, hint = answer_words(finding, solvent=solvent), hint_words(finding, solvent=solvent)
            answer.setText(words)
            answer.setAccessibleName(words)
            answer.setAccessibleDescription(hint)
            put(self._hints[finding], hint)

    @property
    def piece_key(self) -> str:
        """Return the key of the piece that is looked at."""
        return self._piece.key

    @property
    def learnt_words(self) -> str:
        """Return what was learnt of the product, or ""."""
        return self._learnt.text()

    @property
    def care_words(self) -> str:
        """Return what stands above the answers."""
        return self._how.text()

    def words_for(self, command: Command) -> str:
        """Return what was found, and on which piece."""
        del command
        return say("Recorded: {title}, {finding}", title=self._piece.title, finding=self._found)

    def _answer(self, finding: Finding) -> None:
        self._found = found_words(finding, solvent=self._coat.solvent)
        self.is_over = tells_outcome(self._coat, finding, self._now_ms())
        self.answering.emit(self._piece.key)
        self.submit(answer_command(self._coat, finding, self._now_ms()))
