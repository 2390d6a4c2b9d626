"""The rows of the finishing plan: pieces with their strips, coats to come with their handles, and sentences."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QMenu, QPushButton, QVBoxLayout, QWidget

from studiowatch.service.product_views import SheetChoice
from studiowatch.speech.words import say
from studiowatch.ui.models.plan_grid import DayGrid, Mark
from studiowatch.ui.models.plan_words import CoatRow, PlanRow, SaidRow, TodayRow
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.plain import literal, set_tip
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.marks import LevelMark
from studiowatch.ui.widgets.plan_strip import PlanStrip
from studiowatch.ui.widgets.text import ElidedLabel, button, label, put, set_property

NAME_UNITS = 190
_CHOOSE = frozenset({Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space})


class PlanRowView(QFrame):
    """One piece; `chosen` carries its key."""

    chosen = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setProperty("card", "piece")
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.key = ""
        self._title, self._due = ElidedLabel("strong"), ElidedLabel("small", Tone.MUTED)
        self._slack, self._note = ElidedLabel("strong"), ElidedLabel("small", Tone.MUTED)
        self.strip = PlanStrip()
        self._words = QWidget()
        self._words.setObjectName("inside")
        self._lines = QVBoxLayout(self._words)
        self._lines.setContentsMargins(0, 0, 0, 0)
        self._lines.setSpacing(1)
        for part in (self._title, self._due, self._slack, self._note):
            self._lines.addWidget(part)
        self._lines.addStretch(1)
        self._row = QHBoxLayout(self)
        self._row.addWidget(self._words)
        self._row.addWidget(self.strip, 1, Qt.AlignmentFlag.AlignVCenter)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        px = style.px
        self._words.setFixedWidth(px(NAME_UNITS))
        self._row.setContentsMargins(px(10), px(6), px(10), px(6))
        self._row.setSpacing(px(8))
        self.strip.set_style(style)

    def set_row(self, row: PlanRow, grid: DayGrid | None, marks: tuple[Mark, ...], *, is_chosen: bool) -> None:
        """Show `row` with its marks."""
        self.key = row.key
        put(self._title, row.title)
        put(self._due, row.due)
        put(self._slack, row.slack, row.slack_tone, hide_empty=True)
        put(self._note, row.note, row.note_tone, hide_empty=True)
        self.strip.set_marks(grid, marks)
        set_property(self, "chosen", "true" if is_chosen else "false")
        self.setAccessibleName(row.spoken)
        self.setAccessibleDescription("; ".join(mark.told for mark in marks))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Choose it."""
        super().mousePressEvent(event)
        self.chosen.emit(self.key)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Choose it with Enter or space."""
        if event.key() in _CHOOSE:
            self.chosen.emit(self.key)
        else:
            super().keyPressEvent(event)


class TodayRowView(QWidget):
    """One coat to lay today."""

    def __init__(self) -> None:
        super().__init__()
        self._at, self._words, self._why = label("strong"), label("body", wrap=True), label("small", Tone.MUTED)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self._at)
        row.addWidget(self._words, 1)
        row.addWidget(self._why)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._at.setMinimumWidth(style.px(48))

    def set_row(self, row: TodayRow) -> None:
        """Show `row`."""
        put(self._at, row.at)
        put(self._words, row.words)
        put(self._why, row.why, hide_empty=True)
        self.setAccessibleName(row.spoken)


class SaidRowView(QWidget):
    """A sentence, with its mark and what it rests on."""

    def __init__(self) -> None:
        super().__init__()
        self._mark = LevelMark(18)
        self._sentence, self._basis = label("body", wrap=True), label("small", Tone.MUTED, wrap=True)
        words = QVBoxLayout()
        words.setSpacing(1)
        words.addWidget(self._sentence)
        words.addWidget(self._basis)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self._mark, 0, Qt.AlignmentFlag.AlignTop)
        row.addLayout(words, 1)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._mark.set_style(style)

    def set_row(self, row: SaidRow) -> None:
        """Show `row`."""
        self._mark.set_level(row.level)
        self._mark.setVisible(row.is_marked)
        put(self._sentence, row.sentence, row.tone)
        put(self._basis, row.basis, hide_empty=True)
        self.setAccessibleName(row.spoken)


class CoatRowView(QWidget):
    """A coat to come; `moved` carries its key and place, `changed` its key and a sheet, `dropped` its key."""

    moved = Signal(str, int)
    changed = Signal(str, str)
    dropped = Signal(str)

    def __init__(self, sheets: Sequence[SheetChoice]) -> None:
        super().__init__()
        self._shown: CoatRow | None = None
        self._label, self._sheet = ElidedLabel("strong"), ElidedLabel("small", Tone.MUTED)
        self._dates = label("small", wrap=True)
        self.up, self.down = button("↑", "link"), button("↓", "link")
        self.change, self.drop = button(say("Change"), "link"), button("×", "link")
        self.offer(sheets)
        self.up.clicked.connect(lambda: self._move(-1))
        self.down.clicked.connect(lambda: self._move(1))
        self.drop.clicked.connect(lambda: self.dropped.emit(self._shown.key if self._shown else ""))
        head = QHBoxLayout()
        head.setSpacing(0)
        head.addWidget(self._label, 1)
        for part in (self.up, self.down, self.change, self.drop):
            head.addWidget(part)
        lines = QVBoxLayout(self)
        lines.setContentsMargins(0, 0, 0, 0)
        lines.setSpacing(0)
        lines.addLayout(head)
        lines.addWidget(self._sheet)
        lines.addWidget(self._dates)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on: nothing here has a size of its own."""

    def offer(self, sheets: Sequence[SheetChoice]) -> None:
        """Offer `sheets` to be laid instead."""
        offer_sheets(self.change, sheets, self._change)

    def set_row(self, row: CoatRow) -> None:
        """Show `row`."""
        self._shown = row
        put(self._label, row.label)
        put(self._sheet, row.sheet)
        put(self._dates, row.dates, row.dates_tone)
        self.up.setEnabled(not row.is_first)
        self.down.setEnabled(not row.is_last)
        for part, does in (
            (self.up, say("Lay earlier")),
            (self.down, say("Lay later")),
            (self.change, say("Change")),
            (self.drop, say("Take out")),
        ):
            part.setAccessibleName(f"{does}: {row.label}")
            set_tip(part, does)
        self.setAccessibleName(row.spoken)

    def _move(self, by: int) -> None:
        if self._shown is not None:
            self.moved.emit(self._shown.key, self._shown.place + by)

    def _change(self, sheet: str) -> None:
        if self._shown is not None:
            self.changed.emit(self._shown.key, sheet)


def offer_sheets(over: QPushButton, sheets: Sequence[SheetChoice], chosen: Callable[[str], None]) -> None:
    """Have a button drop down a menu of the data sheets; `chosen` is called with the name of one."""
    menu = over.menu() or QMenu(over)
    menu.clear()
    for sheet in sheets:
        menu.addAction(literal(sheet.title), partial(chosen, sheet.name))
    over.setMenu(menu)
