"""Which page is in front: the rack or one of those beside it, or the view from across the room in place of all."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QStackedWidget, QWidget

from studiowatch.service.ports import Desk
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import say
from studiowatch.ui.feed import Feed
from studiowatch.ui.models.board import board_line
from studiowatch.ui.models.figures import room_figures
from studiowatch.ui.models.notices import sentence_card
from studiowatch.ui.models.prompts import next_prompt_words
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.across import AcrossView
from studiowatch.ui.widgets.board_page import BoardPage
from studiowatch.ui.widgets.first_steps_page import FirstStepsPage
from studiowatch.ui.widgets.page import Page
from studiowatch.ui.widgets.plan_page import PlanPage
from studiowatch.ui.widgets.review_page import ReviewPage
from studiowatch.ui.widgets.what_if_page import WhatIfPage


class Pages(QStackedWidget):
    """Turns from page to page, and shows a snapshot to those that are in sight.

    A page that is turned to shows what `feed` holds at once. `alone` says whether the view from across the room is in
    front, for which the rest of the window makes way. `unseen` tells the most urgent `Sentence` while the page in front
    does not, and None once it does.
    """

    alone = Signal(bool)
    unseen = Signal(object)

    def __init__(
        self,
        desk: Desk,
        feed: Feed,
        *,
        rack: Page,
        across: AcrossView,
        board: BoardPage,
        why: ReviewPage,
        plan: PlanPage,
        what_if: WhatIfPage,
        first: FirstStepsPage,
    ) -> None:
        super().__init__()
        self.setAccessibleName(say("Pages"))
        self._desk, self._feed = desk, feed
        self._rack, self._across, self._board, self._why = rack, across, board, why
        self._plan, self._what_if, self._first = plan, what_if, first
        self._all = (rack, across, board, why, plan, what_if, first)
        for page in self._all:
            self.addWidget(page)
        self.currentChanged.connect(self._tell_unseen)
        rack.scrolled.connect(self._tell_unseen)
        for beside in (board, why, plan, what_if):
            beside.left.connect(self.show_rack)
        plan.what_if_asked.connect(self.show_what_if)
        feed.counted.connect(self.count_down)
        rack.across.clicked.connect(self.toggle_across)
        across.left.connect(self.toggle_across)
        QShortcut(QKeySequence("Escape"), across, self.toggle_across)

    @property
    def is_across(self) -> bool:
        """Whether the view from across the room is in front."""
        return self.currentWidget() is self._across

    def show_rack(self) -> None:
        """Go back to the rack."""
        self.setCurrentWidget(self._rack)
        self.window().setFocus()

    def show_board(self) -> None:
        """Go to the board page."""
        self._turn_to(self._board, self._board.back)

    def show_why(self) -> None:
        """Go to the review of a coat."""
        self._turn_to(self._why, self._why.back)

    def show_plan(self) -> None:
        """Go to the finishing plan, where the piece that is chosen on the rack is chosen too."""
        self._turn_to(self._plan, self._plan.back)
        if self._rack.rack.chosen_key:
            self._plan.table.open_at(self._rack.rack.chosen_key)

    def show_what_if(self) -> None:
        """Go to the page that asks what another room would make of the pieces."""
        self._turn_to(self._what_if, self._what_if.hand.temperature.slider)

    def show_first(self) -> None:
        """Go to the first steps."""
        self._turn_to(self._first, self._first.next)
        if self._feed.latest is not None:
            self._plan.show_snapshot(self._feed.latest)  # whose working hours the second step opens

    def find_on_rack(self) -> None:
        """Go to the field that finds pieces on the rack."""
        if self.is_across:
            self.toggle_across()
        self.show_rack()
        self._rack.finder.begin()

    def show_across(self) -> None:
        """Go to the view from across the room."""
        if not self.is_across:
            self.toggle_across()

    def toggle_across(self) -> None:
        """Go to the view from across the room, or back."""
        leaving = self.is_across
        self._across.note("", Tone.MUTED)
        window = self.window()
        full = Qt.WindowState.WindowFullScreen  # first of all: a window that must hold more outgrows a full screen
        window.setWindowState(window.windowState() & ~full if leaving else window.windowState() | full)
        self.setCurrentWidget(self._rack if leaving else self._across)
        self.alone.emit(not leaving)
        self._feed.draw()

    def _turn_to(self, page: QWidget, focus: QWidget) -> None:
        if self.is_across:
            self.toggle_across()
        self.setCurrentWidget(page)
        if self._feed.latest is not None:
            self._show_beside(self._feed.latest)
        focus.setFocus()

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show the studio as it is, on the page in front and on the rack behind it."""
        if self.is_across:
            self._across.show_all(
                sentence_card(snapshot),
                room_figures(snapshot),
                next_prompt_words(snapshot),
                board_line(snapshot).trouble,
            )
            return
        self._tell_unseen()
        self._show_beside(snapshot)
        self._first.show_snapshot(snapshot)
        self._rack.show_snapshot(snapshot, {sheet.name: sheet.wet_um for sheet in self._desk.sheets()})

    def count_down(self, snapshot: Snapshot) -> None:
        """Bring the seconds of what is due soon up to a moment between two snapshots."""
        if not self._feed.is_awake:
            return
        if self.is_across:
            self._across.say_next(next_prompt_words(snapshot))
        else:
            self._rack.count_down(snapshot)

    def _tell_unseen(self) -> None:
        latest, front = self._feed.latest, self.currentWidget()
        tells = self._rack.is_sentence_in_view if front is self._rack else front not in (self._why, self._first)
        self.unseen.emit(None if latest is None or tells else latest.sentence)

    def _show_beside(self, snapshot: Snapshot) -> None:
        for page in (self._board, self._plan, self._what_if):
            if self.currentWidget() is page:
                page.show_snapshot(snapshot)

    def end(self) -> None:
        """Bring no more answers: the window is going."""
        for page in (self._board, self._plan, self._what_if):
            page.end()

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        for page in self._all:
            page.set_style(style)
