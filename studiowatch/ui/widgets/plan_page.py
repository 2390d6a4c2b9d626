"""The finishing plan's page: what to do first today, every piece over the days, and one piece's coats to change."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import (
    QButtonGroup,
    QFileDialog,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from studiowatch.service.commands import Command
from studiowatch.service.local_time import wall_clock
from studiowatch.service.plan_calendar import plan_calendar
from studiowatch.service.ports import Clock, Desk
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import mark, say
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.best_hours import best_lines
from studiowatch.ui.models.plan_grid import SPANS, DayGrid, day_grid, marks_of
from studiowatch.ui.models.plan_words import PlanRow, first_words, piece_editor, plan_rows, today_rows
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.best_hours_card import BestHoursCard
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.plan_dialogs import HoursDialog, RecipeDialog
from studiowatch.ui.widgets.plan_editor import PlanEditor
from studiowatch.ui.widgets.plan_rows import NAME_UNITS, PlanRowView, TodayRowView
from studiowatch.ui.widgets.plan_strip import PlanDays
from studiowatch.ui.widgets.text import button, label, put
from studiowatch.ui.widgets.warning_line import WarningLine

FILE_NAME = mark("finishing plan.ics")
LEGEND = mark("▮ coat   ○ fit to handle   ◆ fit to wrap   ▶ fit to ship   ⚑ due   — from when it may be")
_WIDE_UNITS, _EDITOR_UNITS, _LEAST = 1000, 380, 420
_ANY_WIDTH = 16_777_215  # px, as the toolkit has it
_EDGE = 2  # px, a row's frame


class PlanPage(QScrollArea):
    """Shows the plan of the newest snapshot. `left` asks for the rack; `done` and `refused` tell in words."""

    left = Signal()
    what_if_asked = Signal()
    done = Signal(str)
    refused = Signal(str)

    def __init__(self, desk: Desk, clock: Clock) -> None:
        super().__init__()
        self.setAccessibleName(say("Finishing plan"))
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._clock = clock
        self._zone = wall_clock()
        self._courier = Courier(desk, self)
        self._sheets = {sheet.name: sheet for sheet in desk.sheets()}
        self._snapshot: Snapshot | None = None
        self._drawn: object = None
        self._chosen = ""
        self._days = SPANS["2 weeks"]
        self._wide: bool | None = None
        self._style = Style()
        self.back = button(say("← Back to the rack"), "link")
        self.hours = button(say("Working hours…"), "link", say("When you work: coats are planned only then"))
        self.save = button(say("Save a calendar file…"), "link", say("For any calendar (iCalendar, RFC 5545)"))
        self.warning = WarningLine()
        self.first = label("headline", wrap=True)
        self._air = label("small", Tone.MUTED, wrap=True)
        self.best = BestHoursCard()
        self.editor = PlanEditor(desk.sheets())
        self.editor.hide()  # until there is a piece
        self.rows: list[PlanRowView] = []
        self._today: list[TodayRowView] = []
        self.head = PlanDays()
        self._compose()
        self._connect()

    def _compose(self) -> None:
        self._inside = QWidget()
        self._inside.setObjectName("page")
        self._top = QHBoxLayout()
        self._top.addWidget(self.back)
        self._top.addWidget(label("headline", text=say("Finishing plan")))
        self.what_if = button(say("What if…"), "link", say("What another room would make of it (Ctrl+Shift+W)"))
        self._top.addWidget(self.what_if)
        self._top.addStretch(1)
        self._top.addWidget(self.warning)
        self._grid = QGridLayout()
        self._compose_left()
        self._whole = QVBoxLayout(self._inside)
        self._whole.addLayout(self._top)
        self._whole.addLayout(self._grid, 1)
        self.setWidget(self._inside)

    def _compose_left(self) -> None:
        self._left = QWidget()
        self._left.setObjectName("inside")
        self._column = QVBoxLayout(self._left)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.addWidget(self._today_card())
        self._column.addWidget(self.best)
        self._choosing = QWidget()
        self._choosing.setObjectName("inside")
        choices = QVBoxLayout(self._choosing)
        choices.setContentsMargins(0, 0, 0, 0)
        choices.setSpacing(0)
        choices.addLayout(self._choices())
        self._head_row = QHBoxLayout()
        self._head_row.addWidget(self.head)
        choices.addLayout(self._head_row)
        self._column.addWidget(self._choosing)
        self._column.addWidget(self._list(), 1)

    def _today_card(self) -> QFrame:
        card = QFrame()
        card.setProperty("card", "plain")
        card.setAccessibleName(say("What to do first today"))
        self._today_place = QVBoxLayout(card)
        self._today_place.addWidget(self.first)
        under = QHBoxLayout()
        under.addWidget(self._air, 1)
        under.addWidget(self.hours)
        under.addWidget(self.save)
        self._today_place.addLayout(under)
        return card

    def _choices(self) -> QHBoxLayout:
        """Return the chooser of how many days are shown, and what the marks mean."""
        row = QHBoxLayout()
        self.spans = QButtonGroup(self)
        for name, days in SPANS.items():
            one = button(say(name), "span", say("Show {span}", span=say(name)))
            one.setCheckable(True)
            one.setChecked(days == self._days)
            one.clicked.connect(lambda _on, days=days: self._set_days(days))
            self.spans.addButton(one, days)
            row.addWidget(one)
        self._legend = label("small", Tone.MUTED, say(LEGEND), wrap=True)
        self._legend.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        row.addWidget(self._legend, 1)
        return row

    def _list(self) -> QScrollArea:
        """Return the rows; beside the chosen piece they scroll by themselves."""
        self._rows_inside = QWidget()
        self._rows_inside.setObjectName("inside")
        self._row_place = QVBoxLayout(self._rows_inside)
        self._row_place.setContentsMargins(0, 0, 0, 0)
        self._row_place.addStretch(1)
        self._scroll = QScrollArea()
        self._scroll.setAccessibleName(say("Pieces over the days"))
        self._scroll.setWidgetResizable(True)
        self._scroll.setFrameShape(QFrame.Shape.NoFrame)
        self._scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroll.setWidget(self._rows_inside)
        self._scroll.verticalScrollBar().rangeChanged.connect(self._line_up)
        return self._scroll

    def _line_up(self) -> None:
        """Have the days stand over their columns, beside a scroll bar or not."""
        px, bar = self._style.px, self._scroll.verticalScrollBar()
        wide = bar.sizeHint().width() if bar.maximum() > 0 else 0
        self._head_row.setContentsMargins(px(10 + NAME_UNITS + 8) + _EDGE, 0, px(10) + _EDGE + wide, 0)

    def _connect(self) -> None:
        self.back.clicked.connect(self.left)
        self.what_if.clicked.connect(self.what_if_asked)
        QShortcut(QKeySequence("Escape"), self, self.left.emit)
        self.hours.clicked.connect(self._ask_hours)
        self.save.clicked.connect(self._ask_file)
        self.editor.asked.connect(self._send)
        self.editor.save_asked.connect(self._ask_recipe)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        px = style.px
        self._whole.setContentsMargins(px(14), px(8), px(14), px(6))
        self._whole.setSpacing(px(10))
        self._top.setSpacing(px(8))
        self._column.setSpacing(px(8))
        self._row_place.setSpacing(px(6))
        self._grid.setSpacing(px(14))
        self._today_place.setContentsMargins(px(16), px(10), px(16), px(10))
        self._line_up()
        for part in (self.head, self.best, self.editor, self.warning):
            part.set_style(style)
        for row in self.rows:
            row.set_style(style)
        for step in self._today:
            step.set_style(style)
        self._wide = None
        self._reflow(self.viewport().width())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Lay the parts out for the new width."""
        super().resizeEvent(event)
        self._reflow(event.size().width())

    def _reflow(self, width: int) -> None:
        wide = width >= self._style.px(_WIDE_UNITS)
        if wide == self._wide:
            return
        self._wide = wide
        for part in (self._left, self.editor):
            self._grid.removeWidget(part)
        self._grid.addWidget(self._left, 0, 0)
        self._grid.addWidget(self.editor, *((0, 1) if wide else (1, 0)))
        self._grid.setColumnStretch(0, 1)
        self.editor.setMaximumWidth(self._style.px(_EDITOR_UNITS) if wide else _ANY_WIDTH)
        self.editor.setMinimumHeight(0 if wide else self._style.px(_LEAST))
        self._stretch()

    def _stretch(self) -> None:
        """Give the chosen piece its width where there is one, and the rows all their height where the page scrolls."""
        has_pieces = self._snapshot is not None and bool(self._snapshot.pieces)
        self._grid.setColumnMinimumWidth(1, self._style.px(_EDITOR_UNITS) if self._wide and has_pieces else 0)
        self._scroll.setMinimumHeight(0 if self._wide else self._rows_inside.sizeHint().height())

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show the plan as it is; a warning stays in sight above."""
        self._snapshot = snapshot
        self.warning.show_sentence(snapshot.sentence)
        best = best_lines(snapshot)
        drawn = (snapshot.plan, tuple(_told(snapshot)), snapshot.recipes, best, snapshot.time_ms // 60_000)
        if drawn != self._drawn:
            self._drawn = drawn
            self.best.show_lines(best)
            self._draw(snapshot)

    def _draw(self, snapshot: Snapshot) -> None:
        plan = snapshot.plan
        put(self.first, first_words(snapshot))
        put(self._air, "" if plan is None or not snapshot.pieces else plan.air)
        today = () if plan is None else today_rows(plan)
        while len(self._today) < len(today):
            view = TodayRowView()
            view.set_style(self._style)
            self._today_place.insertWidget(1 + len(self._today), view)
            self._today.append(view)
        for at, one in enumerate(self._today):
            one.setVisible(at < len(today))
            if at < len(today):
                one.set_row(today[at])
        grid = None if plan is None else day_grid(plan, self._days, self._zone, snapshot.time_ms)
        self.head.set_grid(grid)
        self._draw_rows(snapshot, grid)
        self.save.setEnabled(plan is not None and bool(snapshot.pieces))
        self._choosing.setVisible(bool(snapshot.pieces))
        self._stretch()

    def _draw_rows(self, snapshot: Snapshot, grid: DayGrid | None) -> None:
        rows = plan_rows(snapshot)
        if self._chosen not in {row.key for row in rows}:
            self._chosen = rows[0].key if rows else ""
        while len(self.rows) < len(rows):
            view = PlanRowView()
            view.set_style(self._style)
            view.chosen.connect(self.choose)
            self._row_place.insertWidget(len(self.rows), view)
            self.rows.append(view)
        for at, shown in enumerate(self.rows):
            shown.setVisible(at < len(rows))
            if at < len(rows):
                self._fill(shown, rows[at], snapshot, grid)
        self.editor.show_piece(piece_editor(snapshot, self._chosen, self._sheets), snapshot.recipes)

    def _fill(self, view: PlanRowView, row: PlanRow, snapshot: Snapshot, grid: DayGrid | None) -> None:
        plan = None if snapshot.plan is None else snapshot.plan.piece(row.key)
        marks = () if plan is None or grid is None else marks_of(plan, grid, snapshot.time_ms)
        view.set_row(row, grid, marks, is_chosen=row.key == self._chosen)

    def choose(self, key: str) -> None:
        """Show the plan of one piece beside the days."""
        self._chosen = key
        if self._snapshot is not None:
            self._draw(self._snapshot)

    def _set_days(self, days: int) -> None:
        self._days = days
        if self._snapshot is not None:
            self._draw(self._snapshot)

    def _send(self, command: Command, words: str) -> None:
        self._courier.send(command, owner=self, done=lambda _key: self.done.emit(words), refused=self.refused.emit)

    def _ask_hours(self) -> None:
        if self._snapshot is not None:
            self._open(HoursDialog(self._snapshot.hours, self._courier, self._style, self.window()))

    def _ask_recipe(self, sheets: tuple[str, ...]) -> None:
        if sheets:
            self._open(RecipeDialog(sheets, self._courier, self._style, self.window()))

    def _open(self, form: FormDialog) -> None:
        form.told.connect(self.done)
        form.open()

    def _ask_file(self) -> None:
        chooser = QFileDialog(self.window(), say("Save a calendar file"), say(FILE_NAME), say("Calendar files (*.ics)"))
        chooser.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        chooser.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        chooser.setDefaultSuffix("ics")
        chooser.fileSelected.connect(self.write_calendar)
        chooser.open()

    def write_calendar(self, name: str) -> None:
        """Write the plan that is shown to the file `name`; the file dialog has asked about one that is there."""
        plan = None if self._snapshot is None else self._snapshot.plan
        if plan is None:
            return
        try:
            Path(name).write_bytes(plan_calendar(plan).encode("utf-8"))
        except OSError as fault:
            reason = fault.strerror or fault
            self.refused.emit(
                say("{path} cannot be written: {reason}. Choose another folder.", path=name, reason=reason)
            )
        else:
            self.done.emit(say("The plan was saved as {name}.", name=Path(name).name))

    def end(self) -> None:
        """Bring no more answers: the window is going."""
        self._courier.close()


def _told(snapshot: Snapshot) -> list[object]:
    """Return what of the pieces the page shows."""
    return [
        (
            piece.key,
            piece.title,
            piece.due,
            [(coat.key, coat.sheet, coat.label) for coat in piece.coats if coat.laid_ms is None],
        )
        for piece in snapshot.pieces
    ]
