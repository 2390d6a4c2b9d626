"""The window: takes snapshots, draws them at a calm pace, and never waits for anyone."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QCloseEvent, QHideEvent, QPaintEvent, QShowEvent
from PySide6.QtWidgets import QApplication, QMainWindow, QVBoxLayout, QWidget

from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import mark, say
from studiowatch.ui.deeds import Deeds
from studiowatch.ui.dressing import Dressing, first_size
from studiowatch.ui.exchange_deeds import ExchangeDeeds
from studiowatch.ui.feed import Feed
from studiowatch.ui.finishing_deeds import FinishingDeeds
from studiowatch.ui.first_deeds import FirstDeeds
from studiowatch.ui.menus import MenuDeeds, add_menus
from studiowatch.ui.models.alarm import newly_raised
from studiowatch.ui.models.board import board_line, may_type
from studiowatch.ui.models.pace import wet_titles
from studiowatch.ui.models.prompts import next_prompt_words
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.pages import Pages
from studiowatch.ui.parts import Parts
from studiowatch.ui.records_menu import RecordsDeeds
from studiowatch.ui.review_deeds import ReviewDeeds
from studiowatch.ui.style import palette, style_sheet
from studiowatch.ui.tray import tray_words
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

if TYPE_CHECKING:
    from studiowatch.ui.widgets.history import RoomHistory

SPANS = {
    "8 h": mark("&8 h"),
    "day": mark("&day"),
    "week": mark("&week"),
    "month": mark("&month"),
    "all": mark("&all"),
}
TRAY_EVERY_MS = 10_000  # ms between two looks at how far the next prompt is: nobody reads the tray to the second
NOTHING_CHOSEN = mark("Choose a stretch in which a coat dried first: drag over the room history with Shift held.")


class StudioWindow(QMainWindow):
    """Shows the studio. `left` is emitted once, when the watch is over."""

    left = Signal()
    _in_tray: tuple[object, ...] | None = None
    _next_prompt = ""

    def __init__(self, parts: Parts, *, title_note: str = "", night: bool | None = None) -> None:
        super().__init__()
        self._parts = parts
        self._leaving = False
        self._plot: RoomHistory | None = None
        self._plot_asked = False
        self.setWindowTitle(f"studiowatch · {title_note}" if title_note else "studiowatch")
        self.setWindowIcon(parts.icon)
        self.setAccessibleName("studiowatch")
        self.feed = Feed(parts.desk, parts.clock, self)
        self.dressing = Dressing(parts.settings, night=night, parent=self)
        self._make_pages(parts)
        self._make_deeds(parts)
        self._compose()
        self._connect()
        self.menus = add_menus(
            self, self._menu_deeds(), SPANS, starts_at_login=parts.login is not None and parts.login.is_on
        )
        self.dressing.changed.connect(self._dress)
        self.deeds.speak_in(parts.settings.units)
        self._dress()
        self.resize(first_size(self.screen().availableSize()))
        self.restoreGeometry(parts.settings.geometry)
        self.feed.came.connect(self._came)
        self.feed.due.connect(self._draw)
        self.feed.second.connect(lambda: self.warned.listen(self.feed.latest))

    def _make_pages(self, parts: Parts) -> None:
        self.page, self.across, self.board = Page(), AcrossView(), BoardPage(parts.desk, parts.clock)
        self.plan, self.what_if = PlanPage(parts.desk, parts.clock), WhatIfPage(parts.desk)
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
        self.warned = WarningDeeds(parts, self.deeds, self)
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
        page.prompts.ticked.connect(deeds.tick)
        page.prompts.snoozed.connect(deeds.snooze)
        page.prompts.asked.connect(deeds.answer_prompt)
        page.heard.connect(deeds.hear)
        page.remind.connect(deeds.remind)
        self.across.heard.connect(deeds.hear)
        self.across.remind.connect(deeds.remind)
        foot.lay_asked.connect(self._lay)
        foot.test_asked.connect(self._test)
        foot.read_asked.connect(deeds.type_reading)
        foot.board_asked.connect(self.pages.show_board)
        self._connect_pages()
        self.what_if.refused.connect(lambda words: self._note(words, Tone.ACT))
        for told in (deeds, self.board, self.plan, self.exchange, self.reviews, self.first):
            told.done.connect(lambda words: self._note(words, Tone.GOOD))
            told.refused.connect(lambda words: self._note(words, Tone.ACT))
        self.finishing.refused.connect(lambda words: self._note(words, Tone.ACT))
        deeds.tick_refused.connect(page.prompts.release)
        deeds.prompt_answered.connect(page.prompts.hold)
        deeds.made.connect(page.rack.choose_when_there)
        self._connect_warnings()

    def _connect_warnings(self) -> None:
        self.page.later.connect(self.warned.ask_when)
        self.warned.said.connect(lambda words: self._note(words, Tone.MUTED))
        self.warned.flashed.connect(self.page.sentence.flash)
        self.warned.flashed.connect(self.across.flash)
        self.warned.fronted.connect(self.come_back)
        self._parts.tray.opened.connect(self.come_back)
        self._parts.tray.across_asked.connect(self._come_across)
        self._parts.tray.quit_asked.connect(self.leave)

    def _connect_pages(self) -> None:
        self.pages.alone.connect(self._make_way)
        self.plan.best.intend.clicked.connect(self.deeds.intentions.show)
        self.first.over.connect(self.pages.show_rack)
        self.first.wanted.connect(self.pages.show_first)
        self.foot.plan_asked.connect(self.pages.show_plan)
        self.reviews.opened.connect(self.pages.show_why)
        self.deeds.review_asked.connect(lambda key: self.reviews.open_piece(self.deeds.piece(key)))
        self.deeds.records.review_asked.connect(self.reviews.open_coat)
        self.foot.why_asked.connect(self._why)
        self.deeds.sheet_asked.connect(lambda key: self.finishing.open(self.deeds.piece(key)))

    def _first_deeds(self) -> dict[str, Callable[[], object]]:
        return {
            "board": self.pages.show_board,
            "reading": self.deeds.type_reading,
            "hours": self.plan.hours.click,
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
            login=self._start_at_login,
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
            span=self._set_span,
            records=RecordsDeeds(
                save=self._save_readings,
                save_senml=lambda: self._save_readings(senml=True),
                review=self._review_range,
                save_records=self.exchange.save_records,
                take_in=self.exchange.take_in,
                back_up=self.exchange.back_up,
            ),
        )

    def paintEvent(self, event: QPaintEvent) -> None:
        """Ask for the history once the window is on the screen: its library is slow to import."""
        super().paintEvent(event)
        if not self._plot_asked:
            self._plot_asked = True
            QTimer.singleShot(0, self.load_plot)

    def load_plot(self) -> None:
        """Put the history into its place."""
        if self._plot is not None:
            return
        plot = self._parts.make_plot()
        plot.set_theme(self.dressing.style.theme)
        plot.set_history(self._parts.history)
        self._plot = plot
        plot.lane_opened.connect(self._open_lane)
        plot.review_asked.connect(self.reviews.open_coat)
        self.page.set_plot(plot)
        if self.feed.latest is not None:
            plot.set_snapshot(self.feed.latest)

    def _came(self, before: Snapshot | None, snapshot: Snapshot) -> None:
        """Ring, tell and keep: this goes on while the window is away."""
        self.deeds.set_snapshot(snapshot)
        self.menus.show_undo(snapshot.undo)
        self.first.set_snapshot(snapshot)
        self.warned.listen(snapshot)
        self._tell_tray(snapshot)
        for warning in newly_raised(before, snapshot):
            self._parts.tray.say(warning.sentence)

    def _tell_tray(self, snapshot: Snapshot) -> None:
        """Show in the tray how things stand, the next prompt to some seconds."""
        prompts = (snapshot.prompts, snapshot.preparations, snapshot.time_ms // TRAY_EVERY_MS)
        if prompts != self._in_tray:
            self._in_tray, self._next_prompt = prompts, next_prompt_words(snapshot)
        self._parts.tray.show(snapshot.sentence, self._next_prompt)

    def _draw(self, snapshot: Snapshot) -> None:
        self.pages.show_snapshot(snapshot)
        if self.pages.is_across:
            return
        self.foot.set_line(board_line(snapshot), self._parts.speaker.trouble)
        self.foot.set_actions(
            can_lay=bool(snapshot.pieces),
            can_test=any(piece.top is not None for piece in snapshot.pieces),
            can_read=may_type(snapshot),
        )
        if self._plot is not None:
            self._plot.set_snapshot(snapshot)

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

    def _start_at_login(self, on: bool) -> None:  # noqa: FBT001 - as the menu tells it
        entry = self._parts.login
        if entry is None:
            self._note(say("A made-up studio does not start at login."), Tone.MUTED)
            return
        try:
            entry.set_on(on=on)
        except OSError as fault:
            reason = fault.strerror or fault
            self._note(say("{path} cannot be changed: {reason}.", path=entry.path, reason=reason), Tone.ACT)
        else:
            self._note(say("Opens at login from now on.") if on else say("No longer opens at login."), Tone.GOOD)

    def _set_span(self, span: str) -> None:
        if self._plot is not None:
            self._plot.set_span(span)

    def _save_readings(self, *, senml: bool = False) -> None:
        if self._plot is not None:
            self.exchange.save_readings(self._plot.shown_range, senml=senml)

    def _review_range(self) -> None:
        if self._plot is None or not self._plot.review_range():
            self._note(say(NOTHING_CHOSEN), Tone.MUTED)

    def _open_lane(self, coat_key: str) -> None:
        pieces = self.feed.latest.pieces if self.feed.latest else ()
        for piece in pieces:
            if any(coat.key == coat_key for coat in piece.coats):
                self.page.rack.reveal(piece.key)

    def _why(self) -> None:
        self.reviews.open_piece(self.deeds.piece(self.page.rack.chosen_key))

    def _make_way(self, alone: bool) -> None:  # noqa: FBT001 - as the pages tell it
        for part in (self.menuBar(), self._foot_holder):
            part.setVisible(not alone)

    def _dress(self) -> None:
        style = self.dressing.style
        self.menus.show_colours(night=self.dressing.night, contrast=self.dressing.contrast)
        QApplication.setPalette(palette(style.theme))
        app = QApplication.instance()
        if isinstance(app, QApplication):
            app.setStyleSheet(style_sheet(style, self.logicalDpiY()))
        self.pages.set_style(style)
        self.foot.set_style(style)
        self.deeds.style = self.exchange.style = self.finishing.style = style
        if self._plot is not None:
            self._plot.set_theme(style.theme)

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
        if not self._parts.settings.told_of_tray:
            self._parts.settings.told_of_tray = True
            self._parts.tray.say(tray_words())

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
        """End the watch."""
        if self._leaving:
            return
        self._leaving = True
        self._parts.settings.geometry = self.saveGeometry()
        self.feed.close()
        self.deeds.close()
        self.exchange.close()
        self.finishing.close()
        self.board.end()
        self.reviews.close()
        self.plan.end()
        self.what_if.end()
        self._parts.tray.close()
        self.close()
        self.left.emit()
        if self._plot is None:
            self._parts.history.close()  # else the plot's own thread does
        else:
            self._plot.stop()
        self._parts.speaker.close()
