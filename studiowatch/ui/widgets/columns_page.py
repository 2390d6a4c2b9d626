"""What the numbers of an own sketch are: each column shown and asked, with the breath and the fan test."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QFrame, QGridLayout, QHBoxLayout, QLabel, QScrollArea, QVBoxLayout, QWidget

from studiowatch.board.column_tests import ColumnTest, Kind, advance, begin, judge
from studiowatch.service.columns_view import ColumnsView
from studiowatch.service.commands import AcceptColumns
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import mark, say
from studiowatch.studio.words import Level
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.columns_form import (
    ACCEPTED,
    ASKED_FIRST,
    NOT_SAID,
    TEST_CAUTIONS,
    TEST_NAMES,
    ColumnRow,
    ColumnsDraft,
    can_test,
    column_rows,
    doing,
    is_over,
    unsaid_sentence,
)
from studiowatch.ui.models.tones import LEVEL_TONES, Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.drop_down import DropDown
from studiowatch.ui.widgets.marks import LevelMark
from studiowatch.ui.widgets.text import button, label, put

TAKEN = mark("The board is read by what you said.")


class ColumnsPage(QFrame):
    """Shows and asks. What she said is kept until it is sent, or another board comes. `accepted` tells in words."""

    accepted = Signal(str)

    def __init__(self, courier: Courier, now_ms: Callable[[], int]) -> None:
        super().__init__()
        self.setProperty("card", "plain")
        self.setAccessibleName(say("What its numbers are"))
        self._courier, self._now_ms = courier, now_ms
        self._view: ColumnsView | None = None
        self._shown: tuple[str, tuple[str, ...]] = ("", ())  # which board, and its columns
        self.draft = ColumnsDraft()
        self._test: ColumnTest | None = None
        self._taken_ms: int | None = None
        self._rows: tuple[ColumnRow, ...] = ()
        self._lines: list[tuple[QLabel, QLabel, QComboBox, QLabel]] = []
        self._intro, self._samples = label("body", wrap=True), label("small", Tone.MUTED, wrap=True)
        self.tests = {kind: button(say(name)) for kind, name in TEST_NAMES.items()}
        self._told, self._mark = label("strong", wrap=True), LevelMark(18)
        self.use = button(say("Use these"), "primary")
        self._compose()
        for kind, pressed in self.tests.items():
            pressed.clicked.connect(lambda _=False, kind=kind: self._begin(kind))
        self.use.clicked.connect(self._accept)
        self._tell("")

    def _compose(self) -> None:
        self._grid = QGridLayout()
        self._grid.setColumnStretch(3, 1)
        inside = QWidget()
        inside.setObjectName("inside")
        self._column = QVBoxLayout(inside)
        self._column.addWidget(label("dialog", text=say("What its numbers are"), wrap=True))
        self._column.addWidget(self._intro)
        self._column.addWidget(self._samples)
        self._column.addLayout(self._grid)
        self._column.addStretch(1)
        scroll = QScrollArea()
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        scroll.setWidget(inside)
        told = QHBoxLayout()
        told.addWidget(self._mark, 0, Qt.AlignmentFlag.AlignTop)
        told.addWidget(self._told, 1)
        foot = QHBoxLayout()
        for pressed in self.tests.values():
            foot.addWidget(pressed)
        foot.addStretch(1)
        foot.addWidget(self.use)
        self._whole = QVBoxLayout(self)
        self._whole.addWidget(scroll, 1)
        self._whole.addLayout(told)
        self._whole.addLayout(foot)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        px = style.px
        self._mark.set_style(style)
        self._whole.setContentsMargins(px(20), px(16), px(20), px(16))
        self._whole.setSpacing(px(12))
        self._column.setContentsMargins(0, 0, px(10), 0)
        self._column.setSpacing(px(10))
        self._grid.setHorizontalSpacing(px(16))
        self._grid.setVerticalSpacing(px(8))

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show the columns as they come, and let a test take the newest numbers."""
        view = snapshot.board.columns
        if view is None:
            self._view, self._test = None, None
            return
        shown = (snapshot.board.board, tuple(view.mapping.keys))
        if shown != self._shown:
            self.draft, self._test = ColumnsDraft(), None
        self._view, self._shown = view, shown
        self._take(view)
        self._draw()

    def _take(self, view: ColumnsView) -> None:
        test, now_ms = self._test, self._now_ms()
        if test is None:
            return
        if view.numbers_ms is not None and view.numbers_ms not in {self._taken_ms, None}:
            self._taken_ms = view.numbers_ms
            test = self._test = advance(test, dict(view.numbers), view.numbers_ms)
        if is_over(test, now_ms):
            verdict, self._test = judge(test), None
            if verdict.found:
                self.draft = replace(self.draft, verdicts=(*self.draft.verdicts, verdict))
            self._tell(verdict.why, Level.CALM if verdict.found else Level.CAUTION)
        else:
            now = doing(test, now_ms)
            left = say("{seconds} s left.", seconds=now.left_s)
            self._tell(f"{now.told} {left} {say(TEST_CAUTIONS[test.kind])}", Level.CAUTION)

    def _begin(self, kind: Kind) -> None:
        self._taken_ms = self._view.numbers_ms if self._view else None
        self._test = begin(kind, self._now_ms())
        if self._view is not None:
            self._take(self._view)
            self._draw()

    def _tell(self, words: str, level: Level = Level.CALM) -> None:
        self._mark.setVisible(bool(words))
        self._mark.set_level(level)
        put(self._told, words, LEVEL_TONES[level], hide_empty=True)
        self._told.setAccessibleName(words)

    @property
    def told_words(self) -> str:
        """Return what stands above the buttons."""
        return self._told.text()

    def _accept(self) -> None:
        if self._view is None:
            return
        mapping = self.draft.mapping(self._view)
        unsaid = unsaid_sentence(mapping)
        if unsaid:
            self._tell(unsaid, Level.ACT)
            return
        refused = lambda sentence: self._tell(sentence, Level.ACT)  # noqa: E731
        command = AcceptColumns(board=self._shown[0], mapping=mapping)
        self._courier.send(command, owner=self, done=self._taken, refused=refused)

    def _taken(self, _key: str) -> None:
        self.draft = ColumnsDraft()
        self._tell(say(TAKEN))
        self.accepted.emit(say(TAKEN))

    def _say(self, index: int, option: int) -> None:
        """Take what she chose of the column in row `index`."""
        row = self._rows[index]
        if self._view is None or not 0 <= option < len(row.options):
            return
        try:
            self.draft = self.draft.with_word(self._view, row.key, row.options[option].choice)
        except ValueError as refusal:
            self._tell(str(refusal), Level.ACT)
        else:
            self._tell("")
        self._rows = ()  # the list shows what holds, whatever she chose
        self._draw()

    def _draw(self) -> None:
        view = self._view
        if view is None:
            return
        put(self._intro, say(ACCEPTED if view.accepted else ASKED_FIRST))
        put(self._samples, "\n".join(view.samples), hide_empty=True)
        for pressed in self.tests.values():
            pressed.setVisible(can_test(view))
            pressed.setEnabled(self._test is None)
        rows = column_rows(view, self.draft.mapping(view))
        while len(self._lines) < len(rows):
            self._add_line()
        for index, line in enumerate(self._lines):
            for part in line:
                part.setVisible(index < len(rows))
            if index < len(rows):
                old = self._rows[index] if index < len(self._rows) else None
                _fill(line, rows[index], old)
        self._rows = rows

    def _add_line(self) -> None:
        index = len(self._lines)
        line = (label("title"), label("body", Tone.MUTED), DropDown(), label("small", Tone.MUTED, wrap=True))
        line[2].setPlaceholderText(say(NOT_SAID))
        line[2].activated.connect(lambda option, index=index: self._say(index, option))
        for column, part in enumerate(line):
            self._grid.addWidget(part, index, column)
        self._lines.append(line)


def _fill(line: tuple[QLabel, QLabel, QComboBox, QLabel], row: ColumnRow, old: ColumnRow | None) -> None:
    key, number, choice, why = line
    put(key, row.key)
    put(number, row.number)
    put(why, row.why, row.tone)
    if old is None or (old.options, old.chosen) != (row.options, row.chosen):
        choice.clear()
        choice.addItems([option.words for option in row.options])
        choice.setCurrentIndex(-1 if row.chosen is None else row.chosen)
    choice.setAccessibleName(say("What {column} is", column=row.key))
    choice.setAccessibleDescription(row.why)
