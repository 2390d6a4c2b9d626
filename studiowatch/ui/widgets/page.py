"""The page: band, rack, history, prompts, warnings; side by side where there is room, else one below the other."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import say
from studiowatch.ui.models.empty import NO_WARNING, prompts_words
from studiowatch.ui.models.figures import room_figures
from studiowatch.ui.models.finding import found_on_rack
from studiowatch.ui.models.notices import WarningRow, sentence_card, warning_rows
from studiowatch.ui.models.pace import cards_due, rows_due
from studiowatch.ui.models.prompts import PromptRow, counted_down, prompt_rows
from studiowatch.ui.models.rack import rack_cards
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.finder import Finder
from studiowatch.ui.widgets.prompts import PromptList
from studiowatch.ui.widgets.rack_list import RackList
from studiowatch.ui.widgets.room_band import RoomBand
from studiowatch.ui.widgets.rows import RowList
from studiowatch.ui.widgets.sentence import SentenceView
from studiowatch.ui.widgets.text import button, label
from studiowatch.ui.widgets.warning_answers import OpenAnswers
from studiowatch.ui.widgets.warning_rows import WarningRowView

_WIDE_UNITS = 1160
_FOUR_FIGURES_UNITS = 720
_STACKED_RACK, _STACKED_HISTORY = 440, 520
_HEAD = 30
_WIDE_SHARES = ((398, 30), (0, 62), (262, 20))
_STACKED_SHARES = ((352, 60), (0, 40), (0, 0))


class Page(QScrollArea):
    """Owns the parts and their places; what they show comes from outside. `scrolled` says that others are in view."""

    scrolled = Signal()
    heard = Signal(str)
    remind = Signal(str)
    later = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(say("The studio"))
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._style = Style()
        self._wide: bool | None = None
        self.band = RoomBand()
        self.sentence = SentenceView()
        self.rack = RackList()
        self.finder = Finder()
        self.finder.changed.connect(self._show_rack)
        self._shown: tuple[Snapshot, Mapping[str, float]] | None = None
        self._drawn: tuple[Snapshot, Mapping[str, float]] | None = None  # of which the cards were made
        self._rows: tuple[Snapshot, tuple[PromptRow, ...]] | None = None  # the prompts' rows, and of what
        self.prompts = PromptList()
        self.warnings: RowList[WarningRow, WarningRowView] = RowList(
            say("Warnings"), say(NO_WARNING), lambda: WarningRowView(self._wire), WarningRowView.set_row
        )
        self.register = button(say("+ register a piece"), "link", say("Put a piece on the rack"))
        self.across = button(say("show it large"), "link", say("Large, to be read from across the room (F11)"))
        self.across.setAccessibleName(say("Show it large, to be read from across the room"))
        self._plot_place = QFrame()
        self._plot_place.setProperty("card", "plain")
        self._plot_place.setAccessibleName(say("Room history"))
        self._inside = QWidget()
        self._inside.setObjectName("page")
        self._heads: list[QWidget] = []
        self._compose()
        self.sentence.heard.connect(self.heard)
        self.sentence.remind.connect(self.remind)
        self.verticalScrollBar().valueChanged.connect(lambda _: self.scrolled.emit())

    @property
    def is_sentence_in_view(self) -> bool:
        """Whether half of the most urgent sentence or more is not scrolled away."""
        return self.verticalScrollBar().value() <= self.sentence.geometry().center().y()

    def _compose(self) -> None:
        self._columns = (self._rack_column(), self._history_column(), self._todo_column())
        self._top = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._top.addWidget(self.band, 13)
        self._top.addWidget(self.sentence, 10)
        self._body = QGridLayout()
        self._sheet = QVBoxLayout(self._inside)
        self._sheet.addLayout(self._top)
        self._sheet.addLayout(self._body, 1)
        self.setWidget(self._inside)

    def set_plot(self, plot: QWidget) -> None:
        """Put the history into the place that was kept for it."""
        self._plot_column.replaceWidget(self._plot_place, plot)
        self._plot_place.deleteLater()

    def show_snapshot(self, snapshot: Snapshot, sheet_um: Mapping[str, float]) -> None:
        """Show the studio as it is; `sheet_um` holds each sheet's wet thickness, µm."""
        self.band.set_figures(room_figures(snapshot))
        self.sentence.set_card(sentence_card(snapshot))
        self._shown = snapshot, sheet_um
        drawn = self._drawn
        if drawn is None or cards_due(drawn[0], snapshot) or drawn[1] != sheet_um:
            self._show_rack()
        self.prompts.say_empty(prompts_words(snapshot))
        self.count_down(snapshot)
        self.warnings.set_rows(warning_rows(snapshot))

    def count_down(self, snapshot: Snapshot) -> None:
        """Show the prompts as they read by now, also at a moment between two snapshots."""
        before = self._rows
        if before is None or rows_due(before[0], snapshot):
            self._rows = snapshot, prompt_rows(snapshot)
        else:
            self._rows = before[0], counted_down(before[1], snapshot)
        if before is None or self._rows[1] is not before[1]:
            self.prompts.show_rows(self._rows[1])

    def _show_rack(self) -> None:
        """Show the pieces that are looked for, or all."""
        if self._shown is None:
            return
        self._drawn = snapshot, sheet_um = self._shown
        asked = self.finder.asked
        found = found_on_rack(snapshot, asked)
        cards = rack_cards(snapshot, sheet_um=sheet_um)
        self.finder.say_found(len(found), len(cards))
        self.rack.set_cards(tuple(card for card in cards if card.key in found), found=bool(asked))

    def _wire(self, answers: OpenAnswers) -> None:
        answers.heard.connect(self.heard)
        answers.remind.connect(self.remind)
        answers.later.connect(self.later)

    def _rack_column(self) -> QWidget:
        made = _column(say("Rack"))
        column = QVBoxLayout(made)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._head(say("Rack"), self.register))
        column.addWidget(self.finder)
        column.addWidget(self.rack, 1)
        return made

    def _head(self, name: str, action: QWidget | None = None) -> QWidget:
        made = QWidget()
        made.setObjectName("inside")
        made.setAccessibleName(name)
        row = QHBoxLayout(made)
        row.setContentsMargins(2, 0, 0, 0)
        row.addWidget(label("column", text=name))
        row.addStretch(1)
        if action is not None:
            row.addWidget(action)
        self._heads.append(made)
        return made

    def _history_column(self) -> QWidget:
        made = _column(say("Room history"))
        self._plot_column = QVBoxLayout(made)
        self._plot_column.setContentsMargins(0, 0, 0, 0)
        self._plot_column.addWidget(self._plot_place)
        return made

    def _todo_column(self) -> QWidget:
        made = _column(say("At the rack and warnings"))
        column = QVBoxLayout(made)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._head(say("At the rack"), self.across))
        column.addWidget(self.prompts, 5)
        column.addWidget(self._head(say("Warnings")))
        column.addWidget(self.warnings, 4)
        return made

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        for part in (self.band, self.sentence, self.finder, self.rack, self.prompts, self.warnings):
            part.set_style(style)
        px = style.px
        for column in self._columns:
            layout = column.layout()
            if layout is not None:
                layout.setSpacing(px(6))
        for head in self._heads:
            head.setFixedHeight(px(_HEAD))
        self._sheet.setContentsMargins(px(14), px(4), px(14), px(8))
        self._sheet.setSpacing(px(10))
        self._top.setSpacing(px(12))
        self._body.setHorizontalSpacing(px(14))
        self._body.setVerticalSpacing(px(14))
        self._wide = None
        self._reflow(self.viewport().width())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Lay the parts out for the new width."""
        super().resizeEvent(event)
        self._reflow(event.size().width())

    def minimumSizeHint(self) -> QSize:
        """Return a size that any screen has: the page scrolls."""
        return QSize(480, 320)

    def _reflow(self, width: int) -> None:
        wide = width >= self._style.px(_WIDE_UNITS)
        self.band.set_columns(2 if width < self._style.px(_FOUR_FIGURES_UNITS) else 4)
        if wide == self._wide:
            return
        self._wide = wide
        rack, history, todo = self._columns
        for part in self._columns:
            self._body.removeWidget(part)
        if wide:
            self._top.setDirection(QBoxLayout.Direction.LeftToRight)
            for index, part in enumerate(self._columns):
                self._body.addWidget(part, 0, index)
        else:
            self._top.setDirection(QBoxLayout.Direction.BottomToTop)
            self._body.addWidget(rack, 0, 0)
            self._body.addWidget(todo, 0, 1)
            self._body.addWidget(history, 1, 0, 1, 2)
        self._share(_WIDE_SHARES if wide else _STACKED_SHARES)
        px = self._style.px
        rack.setMinimumHeight(0 if wide else px(_STACKED_RACK))
        history.setMinimumHeight(0 if wide else px(_STACKED_HISTORY))

    def _share(self, shares: tuple[tuple[int, int], ...]) -> None:
        """Give each column its least width in units and its part of what is left."""
        for index, (least, part) in enumerate(shares):
            self._body.setColumnMinimumWidth(index, self._style.px(least))
            self._body.setColumnStretch(index, part)


def _column(name: str) -> QWidget:
    made = QWidget()
    made.setObjectName("inside")
    made.setAccessibleName(name)
    return made
