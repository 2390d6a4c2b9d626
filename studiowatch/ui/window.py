"""The window: ties its pages to what she can do from them, has snapshots shown, and never waits for anyone."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import ExitStack

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QCloseEvent, QHideEvent, QPaintEvent, QShowEvent
from PySide6.QtWidgets import QMainWindow, QVBoxLayout, QWidget

from studiowatch.service.snapshot import Snapshot
from studiowatch.ui.deeds import Deeds
from studiowatch.ui.dressing import Dressing, first_size
from studiowatch.ui.exchange_deeds import ExchangeDeeds
from studiowatch.ui.feed import Feed
from studiowatch.ui.finishing_deeds import FinishingDeeds
from studiowatch.ui.first_deeds import FirstDeeds
from studiowatch.ui.history_deeds import SPANS, HistoryDeeds
from studiowatch.ui.login_deeds import LoginDeeds
from studiowatch.ui.menus import MenuDeeds, add_menus
from studiowatch.ui.models.pace import wet_titles
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.pages import Pages
from studiowatch.ui.parts import Parts
from studiowatch.ui.prompt_deeds import PromptDeeds
from studiowatch.ui.records_menu import RecordsDeeds
from studiowatch.ui.review_deeds import ReviewDeeds
from studiowatch.ui.tray_deeds import TrayDeeds
from studiowatch.ui.units_deeds import choose_units
from studiowatch.ui.warning_deeds import WarningDeeds
from studiowatch.ui.widgets.across import AcrossView
from studiowatch.ui.widgets.board_page import BoardPage
from studiowatch.ui.widgets.book import Book
from studiowatch.ui.widgets.first_steps_page import FirstStepsPage
from studiowatch.ui.widgets.foot import Foot
from studiowatch.ui.widgets.page import Page
from studiowatch.ui.widgets.plan_page import PlanPage
from studiowatch.ui.widgets.question import stop_question
from studiowatch.ui.widgets.review_page import ReviewPage
from studiowatch.ui.widgets.what_if_page import WhatIfPage


class StudioWindow(QMainWindow):
    """Shows the studio. `left` is emitted once, when the watch is over."""

    left = Signal()

    def __init__(self, parts: Parts, *, title_note: str = "", night: bool | None = None) -> None:
        super().__init__()
        self._parts = parts
        self._leaving = False
        self.setWindowTitle(f"studiowatch · {title_note}" if title_note else "studiowatch")
        self.setWindowIcon(parts.icon)
        self.setAccessibleName("studiowatch")
        self.feed = Feed(parts.desk, parts.clock, self)
        self.dressing = Dressing(parts.settings, night=night, parent=self)
        self._make_pages(parts)
        self._make_deeds(parts)
        self._compose()
        self._connect()
        self.menus = add_menus(self, self._menu_deeds(), SPANS, starts_at_login=self.login.is_on)
        self.dressing.changed.connect(self._dress)
        self.deeds.speak_in(parts.settings.units)
        self._dress()
        self.resize(first_size(self.screen().availableSize()))
        self.restoreGeometry(parts.settings.geometry)
        self.feed.came.connect(self._came)
        self.feed.due.connect(self._draw)
        self.feed.counted.connect(self.tray.count_down)
        self.feed.stopped.connect(self.tray.say_stopped)
        self.feed.ticked.connect(lambda: self.warned.listen(self.feed.latest))

    def _make_pages(self, parts: Parts) -> None:
        self.page, self.across, self.board = Page(), AcrossView(), BoardPage(parts.desk, parts.clock)
        self.plan, self.what_if = PlanPage(parts.desk), WhatIfPage(parts.desk)
        self.why, self.first_page = ReviewPage(), FirstStepsPage()
        self.foot = Foot()  # last, as the keyboard reaches it
        self.pages = Pages(
            parts.desk,
            self.feed,
            rack=self.page,
            across=self.across,
            board=self.board,
            why=self.why,
            plan=self.plan,
            what_if=self.what_if,
            first=self.first_page,
        )

    def _make_deeds(self, parts: Parts) -> None:
        self.deeds = Deeds(parts.desk, parts.clock, self)
        self.exchange = ExchangeDeeds(parts.exchange, parts.clock, self)
        self.finishing = FinishingDeeds(parts.finishing, self.exchange, self)
        self.reviews = ReviewDeeds(parts.reviews, parts.clock, self.why, self)
        self.history = HistoryDeeds(parts, self.page, self.feed, self.exchange, self)
        self.warned = WarningDeeds(parts, self.deeds, self.page, self.across, self)
        self.prompted = PromptDeeds(parts.desk, parts.clock, self.deeds, self.page.prompts, self)
        self.login = LoginDeeds(parts.login, self)
        self.tray = TrayDeeds(parts.tray, parts.settings)
        self.first = FirstDeeds(self.first_page, parts.settings, self._first_deeds(), demo=parts.demo, parent=self)

    def _compose(self) -> None:
        self._foot_holder = QWidget()
        self._foot_holder.setObjectName("page")
        holder = QVBoxLayout(self._foot_holder)
        holder.setContentsMargins(14, 2, 14, 12)
        holder.addWidget(self.foot)
        whole = QWidget()
        whole.setObjectName("page")
        column = QVBoxLayout(whole)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.pages, 1)
        column.addWidget(self._foot_holder)
        self.setCentralWidget(whole)

    def _connect(self) -> None:
        page, deeds, foot = self.page, self.deeds, self.foot
        page.register.clicked.connect(deeds.register_piece)
        page.rack.register_asked.connect(deeds.register_piece)
        page.rack.opened.connect(deeds.lay_coat)
        page.rack.menu_asked.connect(deeds.show_menu)
        page.rack.placed.connect(deeds.move)
        deeds.made.connect(page.rack.choose_when_there)
        foot.lay_asked.connect(self._lay)
        foot.test_asked.connect(self._test)
        foot.read_asked.connect(deeds.type_reading)
        foot.why_asked.connect(self._why)
        foot.board_asked.connect(self.pages.show_board)
        foot.plan_asked.connect(self.pages.show_plan)
        self._connect_pages()
        self._connect_tray()
        self._connect_notes()

    def _connect_tray(self) -> None:
        tray = self._parts.tray
        for asking in (tray.opened, self.warned.fronted):
            asking.connect(self.come_back)
        tray.across_asked.connect(self._come_across)
        tray.quit_asked.connect(self.leave)

    def _connect_notes(self) -> None:
        deeds = (self.deeds, self.warned, self.prompted, self.exchange, self.reviews, self.first, self.login)
        for told in (*deeds, self.board, self.plan):
            told.done.connect(lambda words: self._note(words, Tone.GOOD))
            told.refused.connect(lambda words: self._note(words, Tone.ACT))
        for refusing in (self.what_if, self.finishing):
            refusing.refused.connect(lambda words: self._note(words, Tone.ACT))
        for saying in (self.warned, self.history, self.login):
            saying.said.connect(lambda words: self._note(words, Tone.MUTED))

    def _connect_pages(self) -> None:
        self.pages.alone.connect(self._make_way)
        self.pages.unseen.connect(self.foot.warn)
        self.plan.best.intend.clicked.connect(self.deeds.intentions.show)
        self.first.over.connect(self.pages.show_rack)
        self.first.wanted.connect(self.pages.show_first)
        self.reviews.opened.connect(self.pages.show_why)
        self.deeds.review_asked.connect(lambda key: self.reviews.open_piece(self.deeds.piece(key)))
        self.deeds.records.review_asked.connect(self.reviews.open_coat)
        self.history.review_asked.connect(self.reviews.open_coat)
        self.deeds.sheet_asked.connect(lambda key: self.finishing.open(self.deeds.piece(key)))

    def _first_deeds(self) -> dict[str, Callable[[], object]]:
        return {
            "board": self.pages.show_board,
            "reading": self.deeds.type_reading,
            "hours": self.plan.today.hours.click,
            "quiet": self.warned.choose_quiet_hours,
            "register": self.deeds.register_piece,
        }

    def _menu_deeds(self) -> MenuDeeds:
        return MenuDeeds(
            register=self.deeds.register_piece,
            lay=self._lay,
            test=self._test,
            read=self.deeds.type_reading,
            intend=self.deeds.intentions.show,
            hear=self.warned.hear_first,
            put_off=self.warned.put_off_first,
            try_sound=self.warned.try_sound,
            quiet=self.warned.choose_quiet_hours,
            login=self.login.set_on,
            edit=lambda: self.deeds.edit_piece(self.page.rack.chosen_key),
            cover=lambda: self.deeds.cover(self.page.rack.chosen_key),
            take_off=lambda: self.deeds.take_off(self.page.rack.chosen_key),
            correct=lambda: self.deeds.records.show_recorded(self.page.rack.chosen_key),
            outcome=lambda: self.deeds.records.ask_outcome(self.page.rack.chosen_key),
            finishing=lambda: self.finishing.open(self.deeds.piece(self.page.rack.chosen_key)),
            archive=self.deeds.records.show_archive,
            sheets=self.deeds.sheets.show_shelf,
            find=self.pages.find_on_rack,
            undo=self.deeds.records.undo,
            redo=self.deeds.records.redo,
            quit=self.quit,
            night=self.dressing.set_night,
            contrast=self.dressing.set_contrast,
            larger=lambda: self.dressing.step_text(1),
            smaller=lambda: self.dressing.step_text(-1),
            plain_size=lambda: self.dressing.set_text_pct(100),
            units=lambda: choose_units(self._parts.settings, self.deeds, self),
            across=self.pages.toggle_across,
            board=self.pages.show_board,
            why=self._why,
            example=self.reviews.open_example,
            book=lambda: Book(self._parts.language, self.dressing.style, self).show(),
            plan=self.pages.show_plan,
            what_if=self.pages.show_what_if,
            first=self.first.show_again,
            span=self.history.set_span,
            records=RecordsDeeds(
                save=self.history.save_readings,
                save_senml=lambda: self.history.save_readings(senml=True),
                review=self.history.review_range,
                save_records=self.exchange.save_records,
                take_in=self.exchange.take_in,
                back_up=self.exchange.back_up,
            ),
        )

    def paintEvent(self, event: QPaintEvent) -> None:
        """Have the history come once the window is on the screen."""
        super().paintEvent(event)
        self.history.come()

    def _came(self, before: Snapshot | None, snapshot: Snapshot) -> None:
        """Ring, tell and keep: this goes on while the window is away."""
        self.deeds.set_snapshot(snapshot)
        self.menus.show_undo(snapshot.undo)
        self.first.set_snapshot(snapshot)
        self.warned.listen(snapshot)
        self.tray.take(before, snapshot)

    def _draw(self, snapshot: Snapshot) -> None:
        self.pages.show_snapshot(snapshot)
        if self.pages.is_across:
            return
        self.foot.show_snapshot(snapshot, self._parts.speaker.trouble)
        self.history.show_snapshot(snapshot)

    def _lay(self) -> None:
        self.deeds.lay_coat(self.page.rack.chosen_key)

    def _test(self) -> None:
        self.deeds.touch_test(self.page.rack.chosen_key)

    def own_fault(self, sentence: str) -> None:
        """Tell a fault of ours in the foot."""
        self._note(sentence, Tone.ACT)

    def _note(self, words: str, tone: Tone) -> None:
        self.foot.note(words, tone)
        self.across.note(words, tone)

    def _why(self) -> None:
        self.reviews.open_piece(self.deeds.piece(self.page.rack.chosen_key))

    def _make_way(self, alone: bool) -> None:  # noqa: FBT001 - as the pages tell it
        for part in (self.menuBar(), self._foot_holder):
            part.setVisible(not alone)

    def _dress(self) -> None:
        style = self.dressing.style
        self.menus.show_colours(night=self.dressing.night, contrast=self.dressing.contrast)
        self.dressing.put_on(self.logicalDpiY())
        for part in (self.pages, self.foot, self.history):
            part.set_style(style)
        self.deeds.style = self.exchange.style = self.finishing.style = style

    def showEvent(self, event: QShowEvent) -> None:
        """Draw what came while the window was away."""
        super().showEvent(event)
        self.setFocus()  # no button looks chosen before she chooses
        self.feed.set_awake(awake=True)

    def hideEvent(self, event: QHideEvent) -> None:
        """Draw nothing while the window is away."""
        super().hideEvent(event)
        self.feed.set_awake(awake=False)

    def _come_across(self) -> None:
        self.come_back()
        self.pages.show_across()

    def come_back(self) -> None:
        """Show the window again, in front."""
        self.setWindowState(self.windowState() & ~Qt.WindowState.WindowMinimized)
        self.show()
        self.raise_()
        self.activateWindow()

    def closeEvent(self, event: QCloseEvent) -> None:
        """Keep watching in the tray where there is one; else ask before the watch ends."""
        if self._leaving:
            event.accept()
            return
        event.ignore()
        if not self._parts.tray.exists:
            self._ask_to_quit()
            return
        self.hide()
        self.tray.say_going_on()

    def quit(self) -> None:
        """End the watch; ask first while a coat is wet."""
        if self.feed.latest is not None and wet_titles(self.feed.latest):
            self._ask_to_quit()
        else:
            self.leave()

    def _ask_to_quit(self) -> None:
        box = stop_question(self, wet_titles(self.feed.latest) if self.feed.latest else ())
        box.accepted.connect(self.leave)
        box.open()

    def leave(self) -> None:
        """End the watch, whatever part of the window does not end in time: that is raised once all else has."""
        if self._leaving:
            return
        self._leaving = True
        self._parts.settings.geometry = self.saveGeometry()
        deeds = (self.deeds, self.warned, self.prompted, self.exchange, self.finishing, self.reviews)
        steps: list[Callable[[], object]] = [part.close for part in (self.feed, *deeds)]
        steps += [self.pages.end, self._parts.tray.close, self.close, self.left.emit]
        steps += [self.history.close, self._parts.speaker.close]
        with ExitStack() as ending:
            for step in reversed(steps):
                ending.callback(step)
