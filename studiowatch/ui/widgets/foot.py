"""The line at the bottom: the board's state, what was just done, and the actions."""

from __future__ import annotations

from PySide6.QtCore import QSize, QTimer, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout

from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import say
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.models.board import BoardLine, board_line, may_type
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.text import ElidedLabel, button, label, put
from studiowatch.ui.widgets.warning_line import WarningLine

_ALL_THERE_IS = 1000  # of the room beside the actions, against 1 for the space that keeps them at the right
_WORDS_UNITS = 260  # of the board's line, under which it stands above the actions
_FIRST = 3  # actions that stay on the first line where the others need one of their own
_NOTE_MS = 12_000


class Foot(QFrame):
    """Words at the left, actions at the right; trouble of our own above. A note stands in for the line for a while.

    A warning that the page in front does not tell stands above all.
    """

    lay_asked = Signal()
    test_asked = Signal()
    read_asked = Signal()
    board_asked = Signal()
    why_asked = Signal()
    plan_asked = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setProperty("card", "plain")
        self.setAccessibleName(say("Board and actions"))
        self._line = BoardLine(words="", tone=Tone.MUTED)
        self.warning = WarningLine()
        self.warning.hide()
        self._trouble = label("strong", Tone.ACT, wrap=True)
        self._trouble.hide()
        self._words = ElidedLabel("small", Tone.MUTED)
        self._board = button(say("Board"), "link", say("Ports, live lines and calibration (Ctrl+B)"))
        self._board.setAccessibleName(say("The board: ports, live lines and calibration"))
        self._board.clicked.connect(self.board_asked)
        self._plan = button(say("Plan"), "link", say("What to lay when, against the days that are due (Ctrl+P)"))
        self._plan.setAccessibleName(say("The finishing plan"))
        self._plan.clicked.connect(self.plan_asked)
        self._lay = button(say("Lay a coat"), "link")
        self._test = button(say("Record a touch test"), "link")
        self._why = button(say("Why did it cloud?"), "link")
        self._why.clicked.connect(self.why_asked)
        self._read = button(say("Type a reading"), "link")
        self._read.hide()
        self._read.clicked.connect(self.read_asked)
        self._lay.clicked.connect(self.lay_asked)
        self._test.clicked.connect(self.test_asked)
        self._words_px = _WORDS_UNITS
        self._noting = QTimer(self)
        self._noting.setSingleShot(True)
        self._noting.setInterval(_NOTE_MS)
        self._noting.timeout.connect(self._draw)
        self._compose()

    def _compose(self) -> None:
        self._lines = QVBoxLayout(self)
        self._row, self._below = QHBoxLayout(), QHBoxLayout()
        self._lines.addWidget(self.warning)
        self._lines.addWidget(self._trouble)
        self._lines.addWidget(self._words)
        for row in (self._row, self._below):
            self._lines.addLayout(row)
            row.addStretch(1)
        for part in self._actions:
            self._row.addWidget(part)

    @property
    def _actions(self) -> tuple[QPushButton, ...]:
        return self._board, self._plan, self._read, self._lay, self._test, self._why

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Put the words beside the actions, or above them where they would be cut; the actions on two lines at need."""
        super().resizeEvent(event)
        self._arrange()

    def minimumSizeHint(self) -> QSize:
        """Return the width of the longer line when the actions stand on two."""
        around = self._lines.contentsMargins()
        longer_px = max(self._wide(self._actions[:_FIRST]), self._wide(self._actions[_FIRST:]))
        return QSize(longer_px + around.left() + around.right(), super().minimumSizeHint().height())

    def _wide(self, actions: tuple[QPushButton, ...]) -> int:
        """Return the width of a line of those that are shown, px."""
        return sum(part.sizeHint().width() + self._row.spacing() for part in actions if not part.isHidden())

    def _arrange(self) -> None:
        around = self._lines.contentsMargins()
        room_px = self.width() - around.left() - around.right()
        is_broken = self._wide(self._actions) > room_px
        self._break(broken=is_broken)
        first_px = self._wide(self._actions[:_FIRST] if is_broken else self._actions)
        self._put_words(beside=self.width() - first_px >= self._words_px)

    def _break(self, *, broken: bool) -> None:
        """Put the later actions on a line of their own, or on the first one."""
        later = self._actions[_FIRST:]
        here, there = (self._row, self._below) if broken else (self._below, self._row)
        if there.indexOf(later[0]) >= 0:
            return
        for part in later:
            here.removeWidget(part)
            there.addWidget(part)

    def _put_words(self, *, beside: bool) -> None:
        if beside is (self._row.indexOf(self._words) >= 0):
            return
        if beside:
            self._lines.removeWidget(self._words)
            self._row.insertWidget(0, self._words, _ALL_THERE_IS)
        else:
            self._row.removeWidget(self._words)
            self._lines.insertWidget(self._lines.indexOf(self._trouble) + 1, self._words)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        px = style.px
        self.warning.set_style(style)
        self._lines.setSpacing(px(2))
        self._lines.setContentsMargins(px(16), px(6), px(10), px(6))
        self._row.setSpacing(px(8))
        self._below.setSpacing(px(8))
        self._words_px = px(_WORDS_UNITS)
        self._arrange()

    def show_snapshot(self, snapshot: Snapshot, sound_trouble: str) -> None:
        """Show the board's line and that there is no sound; allow only the actions that have something to act on."""
        laid = any(piece.top is not None for piece in snapshot.pieces)
        if self._read.isHidden() is may_type(snapshot):
            self._read.setVisible(may_type(snapshot))
            self._arrange()
        self._lay.setEnabled(bool(snapshot.pieces))
        self._test.setEnabled(laid)
        self._why.setEnabled(laid)
        line = board_line(snapshot)
        put(self._trouble, line.trouble, hide_empty=True)
        words = f"{line.words} · {sound_trouble}" if sound_trouble else line.words
        self._line = BoardLine(words=words, tone=line.tone)
        if not self._noting.isActive():
            self._draw()

    def warn(self, sentence: Sentence | None) -> None:
        """Tell what `sentence` warns of, or nothing where that is in sight already."""
        if sentence is not None:
            self.warning.show_sentence(sentence)
        self.warning.setVisible(sentence is not None and sentence.level is not Level.CALM)

    def note(self, words: str, tone: Tone = Tone.INK) -> None:
        """Show `words` for a while in place of the board's line."""
        self._noting.start()
        self._show(words, tone)

    @property
    def words(self) -> str:
        """Return the words of the line that is shown."""
        return self._words.text()

    @property
    def trouble(self) -> str:
        """Return what is said to be wrong with the program or her records."""
        return self._trouble.text()

    def _draw(self) -> None:
        self._show(self._line.words, self._line.tone)

    def _show(self, words: str, tone: Tone) -> None:
        put(self._words, words, tone)
        self._words.setAccessibleName(words)
