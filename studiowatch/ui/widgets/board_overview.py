"""The board at a glance: its ports, how it does, its lines as they come, and what is calibrated."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QGridLayout, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from studiowatch.board.onlooker import HeardLine, PortFound
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import say
from studiowatch.ui.models.board_now import UNCHECKED, board_health, last_words, line_counts
from studiowatch.ui.models.board_ports import NO_PORTS, PortRow, port_rows
from studiowatch.ui.models.holding import NONE_HOLD, HoldingRow, holding_rows
from studiowatch.ui.models.tones import LEVEL_TONES, Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.holding_rows import HoldingRowView
from studiowatch.ui.widgets.live_lines import LiveLines
from studiowatch.ui.widgets.marks import LevelMark
from studiowatch.ui.widgets.port_rows import PortRowView
from studiowatch.ui.widgets.rows import RowList
from studiowatch.ui.widgets.text import button, label, put

_WIDE_UNITS = 900
_LEAST_ROWS, _LEAST_LINES, _HEAD = 150, 200, 34


class BoardOverview(QScrollArea):
    """Its signals tell what she asks for; `chosen` carries a port's name, `withdraw_asked` a row."""

    chosen = Signal(str)
    any_asked = Signal()
    withdraw_asked = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(say("The board at a glance"))
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._style = Style()
        self.ports: RowList[PortRow, PortRowView] = RowList(
            say("Ports"), say(NO_PORTS), self._port_view, PortRowView.set_row
        )
        self.holding: RowList[HoldingRow, HoldingRowView] = RowList(
            say("Calibrations"), say(NONE_HOLD), self._holding_view, HoldingRowView.set_row
        )
        self.any = button(say("Read whichever answers"), "link", say("Look for the board on every port"))
        self.humidity = button(say("Humidity…"), "plain", say("Calibrate humidity with two salts"))
        self.air = button(say("Air speed…"), "plain", say("Calibrate air speed by a cup and three walks"))
        self.humidity.setAccessibleName(say("Calibrate humidity"))
        self.air.setAccessibleName(say("Calibrate air speed"))
        self.columns = button(say("What its numbers are…"))
        self.pause = button(say("Pause"), "link")
        self.pause.setCheckable(True)
        self.lines = LiveLines()
        self._mark, self._health = LevelMark(20), label("strong", wrap=True)
        self._last = label("body", Tone.MUTED, wrap=True)
        self._badge = label("small", Tone.CAUTION, say(UNCHECKED), wrap=True)
        self._counts = [(label("headline"), label("small", Tone.MUTED, wrap=True)) for _ in range(5)]
        self._heads: list[QWidget] = []
        self._ordered = (0, 0)
        self._compose()
        self.any.clicked.connect(self.any_asked)
        self.pause.toggled.connect(self._pause)

    def _compose(self) -> None:
        self._left = _column(
            [(self._head(say("Ports"), self.any), 0), (self.ports, 1)],
            [(self._head(say("Calibrations"), self.humidity, self.air), 0), (self.holding, 1)],
        )
        self._right = _column(
            [(self._head(say("Now")), 0), (self._now_card(), 0)],
            [(self._head(say("Live lines"), self.pause), 0), (self.lines, 1)],
        )
        inside = QWidget()
        inside.setObjectName("page")
        self._body = QGridLayout(inside)
        self._body.setContentsMargins(0, 0, 0, 0)
        self._place()
        self.setWidget(inside)

    def _now_card(self) -> QFrame:
        card = QFrame()
        card.setProperty("card", "plain")
        card.setAccessibleName(say("The board now"))
        health = QHBoxLayout()
        health.addWidget(self._mark, 0, Qt.AlignmentFlag.AlignTop)
        health.addWidget(self._health, 1)
        counts = QGridLayout()
        for place, (value, name) in enumerate(self._counts):
            counts.addWidget(value, 0, place)
            counts.addWidget(name, 1, place, Qt.AlignmentFlag.AlignTop)
            counts.setColumnStretch(place, 1)
        self._now = QVBoxLayout(card)
        self._now.addLayout(health)
        self._now.addWidget(self._last)
        self._now.addLayout(counts)
        self._now.addWidget(self._badge)
        self._now.addWidget(self.columns, 0, Qt.AlignmentFlag.AlignLeft)
        return card

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        px = style.px
        for part in (self.ports, self.holding, self.lines, self._mark):
            part.set_style(style)
        self._now.setContentsMargins(px(16), px(12), px(16), px(12))
        self._now.setSpacing(px(8))
        self._body.setHorizontalSpacing(px(18))
        self._body.setVerticalSpacing(px(12))
        for head in self._heads:
            head.setMinimumHeight(px(_HEAD))
        for rows in (self.ports, self.holding):
            rows.setMinimumHeight(px(_LEAST_ROWS))
        self.lines.setMinimumHeight(px(_LEAST_LINES))
        self._place()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Put the two columns side by side where there is room."""
        super().resizeEvent(event)
        self._place()

    def _place(self) -> None:
        wide = self.width() >= self._style.px(_WIDE_UNITS)
        self._body.addWidget(self._left, 0, 0)
        self._body.addWidget(self._right, 0 if wide else 1, 1 if wide else 0)
        self._body.setColumnStretch(0, 5)
        self._body.setColumnStretch(1, 6 if wide else 0)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show how the board does and what is calibrated."""
        health = board_health(snapshot)
        self._mark.set_level(health.level, good=health.is_good)
        put(self._health, health.words, LEVEL_TONES[health.level])
        put(self._last, last_words(snapshot))
        counts = line_counts(snapshot.board)
        for index, (value, name) in enumerate(self._counts):
            there = index < len(counts)
            put(value, counts[index].value if there else "", counts[index].tone if there else None)
            put(name, counts[index].name if there else "")
            value.setVisible(there)
            name.setVisible(there)
        self._badge.setVisible(not snapshot.board.checked)
        self.columns.setVisible(snapshot.board.columns is not None)
        self.holding.set_rows(holding_rows(snapshot.calibrations, snapshot.time_ms))
        self._order_keys()

    def show_heard(self, ports: Sequence[PortFound], lines: Sequence[HeardLine], snapshot: Snapshot) -> None:
        """Show the ports, and the lines that came."""
        self.ports.set_rows(port_rows(ports, snapshot.board))
        self.any.setVisible(len(ports) > 1)
        self._order_keys()
        self.lines.show_lines(lines)

    def _order_keys(self) -> None:
        """Let the keyboard go from a head to its rows, also to those that came later."""
        shown = (len(self.ports.views), len(self.holding.views))
        if shown == self._ordered:
            return
        self._ordered = shown
        ports = [part for view in self.ports.views for part in (view.choose, view.command, view.copy)]
        withdraws = [view.withdraw for view in self.holding.views]
        order = [self.any, *ports, self.humidity, self.air, *withdraws, self.columns, self.pause, self.lines]
        for before, after in pairwise(order):
            QWidget.setTabOrder(before, after)

    @property
    def health_words(self) -> str:
        """Return what is said of the board."""
        return self._health.text()

    def _pause(self, paused: bool) -> None:  # noqa: FBT001 - a slot of toggled(bool)
        self.lines.is_paused = paused
        self.pause.setText(say("Go on") if paused else say("Pause"))
        self.pause.setAccessibleName(say("Let the lines go on") if paused else say("Pause the lines"))

    def _head(self, name: str, *actions: QWidget) -> QWidget:
        made = QWidget()
        made.setObjectName("inside")
        made.setAccessibleName(name)
        row = QHBoxLayout(made)
        row.setContentsMargins(2, 0, 0, 0)
        row.addWidget(label("column", text=name))
        row.addStretch(1)
        for action in actions:
            row.addWidget(action)
        self._heads.append(made)
        return made

    def _port_view(self) -> PortRowView:
        view = PortRowView()
        view.chosen.connect(self.chosen)
        return view

    def _holding_view(self) -> HoldingRowView:
        view = HoldingRowView()
        view.withdraw_asked.connect(self.withdraw_asked)
        return view


def _column(*groups: Sequence[tuple[QWidget, int]]) -> QWidget:
    made = QWidget()
    made.setObjectName("inside")
    column = QVBoxLayout(made)
    column.setContentsMargins(0, 0, 0, 0)
    for group in groups:
        for part, share in group:
            column.addWidget(part, share)
    return made
