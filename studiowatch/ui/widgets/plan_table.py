"""Every piece of the finishing plan over the days: how many days, what they are, a row for each piece, one chosen."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import QButtonGroup, QFrame, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from studiowatch.service.local_time import wall_clock
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import mark, say
from studiowatch.ui.models.plan_grid import SPANS, DayGrid, day_grid, marks_of
from studiowatch.ui.models.plan_words import PlanRow, plan_rows
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.plan_rows import NAME_UNITS, PlanRowView
from studiowatch.ui.widgets.plan_strip import PlanDays
from studiowatch.ui.widgets.rows import fill_views
from studiowatch.ui.widgets.text import button, label

LEGEND = mark("▮ coat   ○ fit to handle   ◆ fit to wrap   ▶ fit to ship   ⚑ due   — from when it may be")
_BETWEEN = "   "  # of the legend's entries
_EDGE = 2  # px, a row's frame
_FEW = 4  # rows that are always worth looking at side by side


def legend_words() -> str:
    """Return what the strips' marks mean; a line may end between two entries only, never after a mark."""
    return _BETWEEN.join(entry.replace(" ", "\u00a0") for entry in say(LEGEND).split(_BETWEEN))


class PlanTable(QWidget):
    """Shows the pieces of the newest snapshot. `chosen` tells that another one was chosen; `chosen_key` is its key."""

    chosen = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("inside")
        self.setAccessibleName(say("Pieces over the days"))
        self._zone = wall_clock()
        self._snapshot: Snapshot | None = None
        self._days = SPANS["2 weeks"]
        self._style = Style()
        self.chosen_key = ""
        self.rows: list[PlanRowView] = []
        self.head = PlanDays()
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.addWidget(self._above())
        self._column.addWidget(self._list(), 1)

    def _above(self) -> QWidget:
        self._choosing = QWidget()
        self._choosing.setObjectName("inside")
        choices = QVBoxLayout(self._choosing)
        choices.setContentsMargins(0, 0, 0, 0)
        choices.setSpacing(0)
        choices.addLayout(self._choices())
        self._head_row = QHBoxLayout()
        self._head_row.addWidget(self.head)
        choices.addLayout(self._head_row)
        return self._choosing

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
        legend = label("small", Tone.MUTED, legend_words(), wrap=True)
        legend.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        row.addWidget(legend, 1)
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

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        self._column.setSpacing(style.px(8))
        self._row_place.setSpacing(style.px(6))
        self._line_up()
        self.head.set_style(style)
        for row in self.rows:
            row.set_style(style)

    def show_whole(self, *, whole: bool) -> None:
        """Give the rows all their height, or have them scroll by themselves and a few stand whole whatever is above."""
        shown = len(self.rows)
        part = 1.0 if whole else min(shown, _FEW) / max(shown, 1)
        self._scroll.setMinimumHeight(round(self._rows_inside.sizeHint().height() * part))

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show the plan as it is."""
        self._snapshot = snapshot
        plan, rows = snapshot.plan, plan_rows(snapshot)
        grid = None if plan is None else day_grid(plan, self._days, self._zone, snapshot.time_ms)
        self.head.set_grid(grid)
        self._choosing.setVisible(bool(snapshot.pieces))
        if self.chosen_key not in {row.key for row in rows}:
            self.chosen_key = rows[0].key if rows else ""
        fill_views(self.rows, rows, self._make_row, lambda view, row: self._fill(view, row, snapshot, grid))

    def _make_row(self, at: int) -> PlanRowView:
        view = PlanRowView()
        view.set_style(self._style)
        view.chosen.connect(self.choose)
        self._row_place.insertWidget(at, view)
        return view

    def _fill(self, view: PlanRowView, row: PlanRow, snapshot: Snapshot, grid: DayGrid | None) -> None:
        plan = None if snapshot.plan is None else snapshot.plan.piece(row.key)
        marks = () if plan is None or grid is None else marks_of(plan, grid, snapshot.time_ms)
        view.set_row(row, grid, marks, is_chosen=row.key == self.chosen_key)

    def choose(self, key: str) -> None:
        """Choose one piece."""
        self.chosen_key = key
        self._show_again()
        self.chosen.emit()

    def open_at(self, key: str) -> None:
        """Choose one piece; rows that scroll by themselves bring it in sight once they have their places."""
        self.choose(key)
        QTimer.singleShot(0, self, self._show_chosen)

    def _show_chosen(self) -> None:
        for row in self.rows:
            if row.key == self.chosen_key and not row.isHidden():
                self._scroll.ensureWidgetVisible(row)

    def _set_days(self, days: int) -> None:
        self._days = days
        self._show_again()

    def _show_again(self) -> None:
        if self._snapshot is not None:
            self.show_snapshot(self._snapshot)
