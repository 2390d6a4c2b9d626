"""How did it come out: six big answers for a coat that was laid."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QPushButton, QWidget

from studiowatch.service.commands import Command, RecordOutcome
from studiowatch.service.piece_view import CoatView, PieceView
from studiowatch.speech.words import mark, say
from studiowatch.studio.pieces import Outcome
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.outcome_form import HINTS, answer_words
from studiowatch.ui.models.seen_words import OUTCOME_WORDS
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.drop_down import drop_down_of_names
from studiowatch.ui.widgets.text import button, label

OUTCOME_TITLE = mark("How did it come out?")
_ACROSS = 2


def laid_coats(piece: PieceView) -> tuple[CoatView, ...]:
    """Return the coats of `piece` that are on, the topmost first."""
    return tuple(coat for coat in reversed(piece.coats) if coat.laid_ms is not None)


class OutcomeDialog(FormDialog):
    """Records how a coat of one piece came out; none of the answers is the default."""

    def __init__(
        self,
        *,
        piece: PieceView,
        coat_key: str,
        now_ms: Callable[[], int],
        courier: Courier,
        style: Style,
        parent: QWidget,
    ) -> None:
        super().__init__(f"{say(OUTCOME_TITLE)} {piece.title}", courier, style, parent)
        self._piece, self._now_ms = piece, now_ms
        self._coats = laid_coats(piece)
        self.coat_field = drop_down_of_names()
        self.coat_field.addItems([coat.label for coat in self._coats])
        keys = [coat.key for coat in self._coats]
        self.coat_field.setCurrentIndex(keys.index(coat_key) if coat_key in keys else 0)
        self.answers: dict[Outcome, QPushButton] = {}
        self.clouded_key = ""  # of the coat that she said came out badly
        self.field(say("Coat"), self.coat_field)
        self.body.addWidget(
            label("body", Tone.MUTED, say("Look across it against the light, then straight on."), wrap=True)
        )
        grid = QGridLayout()
        grid.setSpacing(self.dress.px(10))
        for index, outcome in enumerate(Outcome):
            answer, hint = (
                button(answer_words(outcome), "answer"),
                label("small", Tone.MUTED, say(HINTS[outcome]), wrap=True),
            )
            answer.setAccessibleDescription(say(HINTS[outcome]))
            answer.clicked.connect(lambda _=False, outcome=outcome: self._answer(outcome))
            self.answers[outcome] = answer
            grid.addWidget(answer, 2 * (index // _ACROSS), index % _ACROSS)
            grid.addWidget(hint, 2 * (index // _ACROSS) + 1, index % _ACROSS)
        self.body.addLayout(grid)
        self.body.addStretch(1)
        self.fit(600, 500)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setFocus()  # on the form itself: neither Enter nor Space gives an answer before she chose one

    @property
    def _coat(self) -> CoatView:
        return self._coats[self.coat_field.currentIndex()]

    def words_for(self, command: Command) -> str:
        """Return how which coat came out."""
        said = say(OUTCOME_WORDS[command.outcome]) if isinstance(command, RecordOutcome) else ""
        return say(
            "Recorded: {coat} on {title} came out {outcome}",
            coat=self._coat.label,
            title=self._piece.title,
            outcome=said,
        )

    def _answer(self, outcome: Outcome) -> None:
        self.clouded_key = "" if outcome is Outcome.CLEAR else self._coat.key
        self.submit(RecordOutcome(coat_key=self._coat.key, seen_ms=self._now_ms(), outcome=outcome))
