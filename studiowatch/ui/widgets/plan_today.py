"""What to do first today, on the plan's page, with the hours and the file that go with it."""

from __future__ import annotations

from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout

from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import say
from studiowatch.ui.models.plan_words import first_words, today_rows
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.plan_rows import TodayRowView
from studiowatch.ui.widgets.rows import fill_views
from studiowatch.ui.widgets.text import button, label, put


class TodayCard(QFrame):
    """Says what comes first, and a row for each step of today."""

    def __init__(self) -> None:
        super().__init__()
        self.setProperty("card", "plain")
        self.setAccessibleName(say("What to do first today"))
        self._style = Style()
        self.first = label("headline", wrap=True)
        self.steps: list[TodayRowView] = []
        self._air = label("small", Tone.MUTED, wrap=True)
        self.hours = button(say("Working hours…"), "link", say("When you work: coats are planned only then"))
        self.save = button(say("Save a calendar file…"), "link", say("For any calendar (iCalendar, RFC 5545)"))
        self._column = QVBoxLayout(self)
        self._column.addWidget(self.first)
        under = QHBoxLayout()
        under.addWidget(self._air, 1)
        under.addWidget(self.hours)
        under.addWidget(self.save)
        self._column.addLayout(under)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        self._column.setContentsMargins(style.px(16), style.px(10), style.px(16), style.px(10))
        for step in self.steps:
            step.set_style(style)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show the plan as it is."""
        plan = snapshot.plan
        put(self.first, first_words(snapshot))
        put(self._air, "" if plan is None or not snapshot.pieces else plan.air)
        self.save.setEnabled(plan is not None and bool(snapshot.pieces))
        today = () if plan is None else today_rows(plan)
        fill_views(self.steps, today, self._make_step, TodayRowView.set_row)

    def _make_step(self, at: int) -> TodayRowView:
        view = TodayRowView()
        view.set_style(self._style)
        self._column.insertWidget(1 + at, view)
        return view
