"""The finishing plan's page: what to do first today, every piece over the days, and one piece's coats to change."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import (
    QFileDialog,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from studiowatch.service.commands import Command
from studiowatch.service.plan_calendar import plan_calendar
from studiowatch.service.ports import Desk
from studiowatch.service.snapshot import Snapshot
from studiowatch.service.whole_file import whole_file
from studiowatch.speech.words import mark, say
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.best_hours import best_lines
from studiowatch.ui.models.plan_words import piece_editor
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.best_hours_card import BestHoursCard
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.plan_dialogs import HoursDialog, RecipeDialog
from studiowatch.ui.widgets.plan_editor import PlanEditor
from studiowatch.ui.widgets.plan_table import PlanTable
from studiowatch.ui.widgets.plan_today import TodayCard
from studiowatch.ui.widgets.text import button, label
from studiowatch.ui.widgets.warning_line import WarningLine

FILE_NAME = mark("finishing plan.ics")
_WIDE_UNITS, _EDITOR_UNITS, _LEAST = 1000, 380, 420
_ANY_WIDTH = 16_777_215  # px, as the toolkit has it


class PlanPage(QScrollArea):
    """Shows the plan of the newest snapshot. `left` asks for the rack; `done` and `refused` tell in words."""

    left = Signal()
    what_if_asked = Signal()
    done = Signal(str)
    refused = Signal(str)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.setAccessibleName(say("Finishing plan"))
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._desk = desk
        self._courier = Courier(desk, self)
        self._sheets = tuple(desk.sheets())
        self._snapshot: Snapshot | None = None
        self._drawn: object = None
        self._wide: bool | None = None
        self._style = Style()
        self.back = button(say("← Back to the rack"), "link")
        self.warning = WarningLine()
        self.today, self.best, self.table = TodayCard(), BestHoursCard(), PlanTable()
        self.editor = PlanEditor(self._sheets)
        self.editor.hide()  # until there is a piece
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
        for part in (self.today, self.best):
            self._column.addWidget(part)
        self._column.addWidget(self.table, 1)

    def _connect(self) -> None:
        self.back.clicked.connect(self.left)
        self.what_if.clicked.connect(self.what_if_asked)
        QShortcut(QKeySequence("Escape"), self, self.left.emit)
        self.today.hours.clicked.connect(self._ask_hours)
        self.today.save.clicked.connect(self._ask_file)
        self.table.chosen.connect(self._show_chosen)
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
        self._grid.setSpacing(px(14))
        for part in (self.today, self.best, self.table, self.editor, self.warning):
            part.set_style(style)
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
        self.table.show_whole(whole=not self._wide)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show the plan as it is; a warning stays in sight above."""
        self._snapshot = snapshot
        self.warning.show_sentence(snapshot.sentence)
        self._heed_the_sheets()
        best = best_lines(snapshot)
        drawn = (snapshot.plan, tuple(_told(snapshot)), snapshot.recipes, best, snapshot.time_ms // 60_000)
        if drawn != self._drawn:
            self._drawn = drawn
            self.today.show_snapshot(snapshot)
            self.best.show_lines(best)
            self.table.show_snapshot(snapshot)
            self._show_chosen()
            self._stretch()

    def _heed_the_sheets(self) -> None:
        """Offer the sheets that there are now: she may have made, edited or deleted one."""
        sheets = tuple(self._desk.sheets())
        if sheets != self._sheets:
            self._sheets, self._drawn = sheets, None
            self.editor.offer(sheets)

    def _show_chosen(self) -> None:
        """Show the plan of the chosen piece beside the days."""
        snapshot = self._snapshot
        if snapshot is not None:
            by_name = {sheet.name: sheet for sheet in self._sheets}
            self.editor.show_piece(piece_editor(snapshot, self.table.chosen_key, by_name), snapshot.recipes)

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
            with whole_file(Path(name)) as out:
                out.write(plan_calendar(plan))
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
