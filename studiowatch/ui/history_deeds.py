"""What she does with the room history, which comes into its place once the window is on the screen."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import mark, say
from studiowatch.ui.exchange_deeds import ExchangeDeeds
from studiowatch.ui.feed import Feed
from studiowatch.ui.parts import Parts
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.page import Page

if TYPE_CHECKING:
    from studiowatch.ui.widgets.history import RoomHistory

SPANS = {
    "8 h": mark("&8 h"),
    "day": mark("&day"),
    "week": mark("&week"),
    "month": mark("&month"),
    "all": mark("&all"),
}
NOTHING_CHOSEN = mark("Choose a stretch in which a coat dried first: drag over the room history with Shift held.")


class HistoryDeeds(QObject):
    """Puts the history on `page`, and acts on what it shows; before it is there, nothing happens.

    `plot` is the history, or None before. `review_asked` carries the key of a coat, `said` words to show.
    """

    review_asked = Signal(str)
    said = Signal(str)

    def __init__(self, parts: Parts, page: Page, feed: Feed, exchange: ExchangeDeeds, parent: QObject) -> None:
        super().__init__(parent)
        self._parts, self._page, self._feed, self._exchange = parts, page, feed, exchange
        self._style = Style()
        self._asked = False
        self.plot: RoomHistory | None = None

    def come(self) -> None:
        """Put the history into its place with the next turn of the loop: its library is slow to import."""
        if not self._asked:
            self._asked = True
            QTimer.singleShot(0, self._put)

    def _put(self) -> None:
        self.plot = plot = self._parts.make_plot()
        plot.set_theme(self._style.theme)
        plot.set_history(self._parts.history)
        plot.lane_opened.connect(self._choose_piece)
        plot.review_asked.connect(self.review_asked)
        self._page.set_plot(plot)
        if self._feed.latest is not None:
            plot.set_snapshot(self._feed.latest)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        if self.plot is not None:
            self.plot.set_theme(style.theme)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show the studio as it is."""
        if self.plot is not None:
            self.plot.set_snapshot(snapshot)

    def set_span(self, span: str) -> None:
        """Show a span of SPANS."""
        if self.plot is not None:
            self.plot.set_span(span)

    def save_readings(self, *, senml: bool = False) -> None:
        """Save the readings that are shown."""
        if self.plot is not None:
            self._exchange.save_readings(self.plot.shown_range, senml=senml)

    def review_range(self) -> None:
        """Review what dried in the stretch that is chosen."""
        if self.plot is None or not self.plot.review_range():
            self.said.emit(say(NOTHING_CHOSEN))

    def close(self) -> None:
        """Let go of the log: the window is going."""
        if self.plot is None:
            self._parts.history.close()  # else the plot's own thread does
        else:
            self.plot.stop()

    def _choose_piece(self, coat_key: str) -> None:
        pieces = self._feed.latest.pieces if self._feed.latest else ()
        for piece in pieces:
            if any(coat.key == coat_key for coat in piece.coats):
                self._page.rack.reveal(piece.key)
