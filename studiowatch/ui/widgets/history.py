"""The room history: what the air was, what the coats did in it, and how one moves about in time."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import SIGNAL, QEvent, QPoint, QPointF, Qt, Signal
from PySide6.QtGui import (
    QContextMenuEvent,
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QNativeGestureEvent,
    QResizeEvent,
    QShowEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QScrollArea, QVBoxLayout, QWidget

from studiowatch.service.ports import History
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import say
from studiowatch.ui.models.history_fetch import film_series, plan
from studiowatch.ui.models.history_lanes import CoatSpan
from studiowatch.ui.models.history_range import TimeRange, dried_within
from studiowatch.ui.models.history_view import (
    Span,
    View,
    coat_view,
    home,
    moved_on,
    panned,
    spanned,
    zoomed_at,
    zoomed_here,
)
from studiowatch.ui.models.history_words import description
from studiowatch.ui.models.pace import history_due, records_changed
from studiowatch.ui.theme import LIGHT, Theme
from studiowatch.ui.widgets.history_canvas import HistoryCanvas
from studiowatch.ui.widgets.history_chooser import SpanChooser
from studiowatch.ui.widgets.history_hand import TimeHand
from studiowatch.ui.widgets.history_offers import offer_coat, offer_reviews
from studiowatch.ui.widgets.history_questions import LogQuestions
from studiowatch.ui.widgets.history_range import RangeHand
from studiowatch.ui.widgets.history_worker import Answer

ZOOM_PER_KEY = 1.5
PAN_PER_KEY = 0.2  # of the view's width


class RoomHistory(QWidget):
    """Title, span buttons and the picture; moves the view, asks the log for what is in view, and shows the answer.

    Arrow keys left and right move in time, plus and minus zoom, Home goes back to now; up and down choose a lane and
    Enter opens its topmost coat. Shift with the arrow keys or a drag chooses a range, which Escape drops.

    `lane_opened` and `review_asked` carry the key of a coat, `range_chosen` a `TimeRange` or None.
    """

    lane_opened = Signal(str)
    review_asked = Signal(str)
    range_chosen = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._questions = LogQuestions()
        self._first_ms: int | None = None
        self.canvas = HistoryCanvas(self)
        self.canvas.view = spanned(Span.EIGHT_HOURS, 0, None)
        self._range_hand = RangeHand(self.canvas, self.range_chosen.emit)
        self._time_hand = TimeHand(self.canvas, self._pan, self._zoom_about)
        self.chooser = SpanChooser(self)
        self.chooser.span_chosen.connect(self.set_span)
        self.chooser.now_asked.connect(self.go_home)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addWidget(self.chooser)
        column.addWidget(self.canvas, 1)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(say("Room history"))
        self.setAccessibleDescription(description(None))
        self.set_theme(LIGHT)
        self._move(self.canvas.view)

    @property
    def view(self) -> View:
        """The stretch of time on the screen."""
        return self.canvas.view

    @property
    def shown_range(self) -> TimeRange:
        """The chosen range, or without one what is in view and behind now."""
        if self.canvas.chosen_range is not None:
            return self.canvas.chosen_range
        return TimeRange(anchor_ms=self.view.start_ms, end_ms=min(self.view.end_ms, self.canvas.now_ms))

    def set_theme(self, theme: Theme) -> None:
        """Take on the colours of `theme`."""
        self.canvas.theme = theme
        self.chooser.set_theme(theme)
        self.canvas.refresh()

    def set_history(self, history: History) -> None:
        """Read from `history` from now on, on a thread of its own; that thread also closes it at `stop`."""
        self.stop()
        self._first_ms = None
        self._questions.read_from(history, self.apply)
        self._fetch()

    def set_snapshot(self, snapshot: Snapshot) -> None:
        """Show the studio's state, where that looks otherwise; a view that follows now moves along."""
        ms_per_px = self.view.width_ms / max(self.canvas.width(), 1)
        is_read = self._questions.is_asked  # else what is in view is asked for now
        if is_read and self.isVisible() and not history_due(self.canvas.snapshot, snapshot, ms_per_px):
            return
        if records_changed(self.canvas.snapshot, snapshot):
            self._questions.ask_again()  # what left the rack or was ticked is in the records now
        self.canvas.show_snapshot(snapshot)
        words = description(snapshot)
        if words != self.accessibleDescription():
            self.setAccessibleDescription(words)
        self.canvas.view = moved_on(self.view, snapshot.time_ms, self._first_ms)
        if self.isVisible():
            self._redraw()

    def set_span(self, span: str) -> None:
        """Show a span that ends a little after now.

        Raises
        ------
        ValueError
            If `span` is none of "8 h", "day", "week", "month" and "all".
        """
        self._jump(spanned(Span(span), self.canvas.now_ms, self._first_ms))

    def go_home(self) -> None:
        """Follow now again, as wide as the view is."""
        self._jump(home(self.view, self.canvas.now_ms))

    def apply(self, answer: Answer) -> None:
        """Take in what was read; an answer to a question that no longer stands is dropped."""
        if not self._questions.is_news(answer):
            return
        self.canvas.trouble = answer.trouble
        if answer.trouble:
            self._questions.ask_again()
        elif answer.first_ms != self._first_ms:
            self._first_ms = answer.first_ms
            self.canvas.view = moved_on(self.view, self.canvas.now_ms, self._first_ms)
            self._fetch()
        if answer.past is not None:
            self.canvas.show_past(answer.past)
        self.canvas.empty_log = self._first_ms is None and not answer.trouble
        if answer.data is not None:
            self.canvas.data, self.canvas.read = answer.data, answer.request
        self.canvas.refresh()

    def stop(self) -> None:
        """End the reading thread; what it still answers is dropped.

        Raises
        ------
        RuntimeError
            If the thread lives on.
        """
        self._questions.stop()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Move in time and among the lanes, or choose a range."""
        if self._range_hand.key(event):
            return
        actions = {
            Qt.Key.Key_Left: lambda: self._pan(-PAN_PER_KEY * self.view.width_ms),
            Qt.Key.Key_Right: lambda: self._pan(PAN_PER_KEY * self.view.width_ms),
            Qt.Key.Key_Plus: lambda: self._zoom_here(1 / ZOOM_PER_KEY),
            Qt.Key.Key_Equal: lambda: self._zoom_here(1 / ZOOM_PER_KEY),
            Qt.Key.Key_Minus: lambda: self._zoom_here(ZOOM_PER_KEY),
            Qt.Key.Key_Home: self.go_home,
            Qt.Key.Key_Up: lambda: self.canvas.step_choice(-1),
            Qt.Key.Key_Down: lambda: self.canvas.step_choice(1),
            Qt.Key.Key_Return: self._open_chosen,
            Qt.Key.Key_Enter: self._open_chosen,
        }
        action = actions.get(Qt.Key(event.key()))
        if action is None:
            super().keyPressEvent(event)
        else:
            action()

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Zoom about the pointer; sideways pans, and over lanes that do not all fit it scrolls them.

        In a page that is scrolled itself only with Ctrl: a hand that scrolls past changes nothing.
        """
        held = event.modifiers() & Qt.KeyboardModifier.ControlModifier
        event.setAccepted(bool(held) or not self._is_in_scrolled_page)
        if event.isAccepted():
            self._time_hand.wheel(event)

    @property
    def _is_in_scrolled_page(self) -> bool:
        around = self.parentWidget()
        while around is not None and not isinstance(around, QScrollArea):
            around = around.parentWidget()
        return around is not None and around.verticalScrollBar().maximum() > 0

    def event(self, event: QEvent) -> bool:
        """Zoom with a pinch on a touch pad."""
        if isinstance(event, QNativeGestureEvent) and event.gestureType() is Qt.NativeGestureType.ZoomNativeGesture:
            self._time_hand.pinch(event)
            return True
        return super().event(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of the time axis."""
        if event.button() is Qt.MouseButton.LeftButton and not self._range_hand.press(event):
            self._time_hand.press(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Drag the time axis, or a range."""
        self._range_hand.move(event)
        self._time_hand.move(event)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let go of the time axis."""
        if event.button() is Qt.MouseButton.LeftButton:
            self._time_hand.release()
            self._range_hand.release()

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        """Offer what can be done with the coat under the pointer: only what someone listens for."""
        coat = self.canvas.coat_at(QPointF(self.canvas.mapFromGlobal(event.globalPos())))
        if coat is None:
            self.review_range(event.globalPos())
            return
        is_heard = self.receivers(SIGNAL("review_asked(QString)"))
        review = partial(self.review_asked.emit, coat.key) if is_heard else None
        offer_coat(self, event.globalPos(), partial(self._open, coat), review)

    def review_range(self, at: QPoint | None = None) -> bool:
        """Ask for the review of a coat that dried in the chosen range, or offer those that did; return if there is one.

        The offer stands at `at` on the screen, or over the middle of the plot.
        """
        chosen = self.canvas.chosen_range
        coats = () if chosen is None else dried_within(chosen, self.canvas.lanes)
        if len(coats) == 1:
            self.review_asked.emit(coats[0][0])
        elif coats:
            middle = self.canvas.mapToGlobal(self.canvas.rect().center())
            offer_reviews(self, middle if at is None else at, coats, self.review_asked.emit)
        return bool(coats)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """Open the coat under the pointer, or the topmost of its lane."""
        self._open(self.canvas.coat_at(self.canvas.mapFrom(self, event.position())))

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Show that keys arrive here."""
        super().focusInEvent(event)
        self._show_focus(here=True)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Show that keys go elsewhere."""
        super().focusOutEvent(event)
        self._show_focus(here=False)

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with what came while hidden."""
        super().showEvent(event)
        self._redraw()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Ask for as many buckets as there are pixels."""
        super().resizeEvent(event)
        self._redraw()

    def _show_focus(self, *, here: bool) -> None:
        self.canvas.focused = here
        self.canvas.refresh()

    def _pan(self, by_ms: float) -> None:
        self._move(panned(self.view, by_ms, self.canvas.now_ms, self._first_ms))

    def _zoom_here(self, factor: float) -> None:
        self._move(zoomed_here(self.view, factor, self.canvas.now_ms))

    def _zoom_about(self, x_px: float, factor: float) -> None:
        time = self.canvas.time_scale(self.canvas.arrange())
        about_ms = time.time_ms(min(max(x_px, time.left_px), time.right_px))
        self._move(zoomed_at(self.view, factor, about_ms, self.canvas.now_ms))

    def _open_chosen(self) -> None:
        chosen, lanes = self.canvas.chosen, self.canvas.lanes
        self._open(lanes[chosen].top if chosen is not None and chosen < len(lanes) else None)

    def _open(self, coat: CoatSpan | None) -> None:
        """Go to the time of a coat, and tell that it was opened."""
        if coat is not None:
            self._jump(coat_view(coat.start_ms, coat.recoat_ms, self.canvas.now_ms))
            self.lane_opened.emit(coat.key)

    def _jump(self, view: View) -> None:
        self._questions.forget()
        self._move(view)

    def _move(self, view: View) -> None:
        self.canvas.view = view
        self.chooser.show_view(view)
        self._redraw()

    def _redraw(self) -> None:
        self._fetch()
        bucket_ms = round(self.view.width_ms / max(self.canvas.width(), 1))
        pieces = self.canvas.snapshot.pieces if self.canvas.snapshot is not None else ()
        self.canvas.film = film_series(pieces, self.view.start_ms, self.view.end_ms, bucket_ms)
        self.canvas.refresh()

    def _fetch(self) -> None:
        """Ask for what is in view, unless that was what was asked last."""
        if not self._questions.has_log or self.canvas.snapshot is None or not self.isVisible():
            return
        pixels = round(self.canvas.arrange().width_px * self.devicePixelRatioF())
        self._questions.ask(plan(self.view, pixels, self.canvas.now_ms))
