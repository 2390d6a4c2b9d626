"""The board page: the board at a glance, and from there the calibrations and what its numbers are."""

from __future__ import annotations

from PySide6.QtCore import QTimer, Signal
from PySide6.QtGui import QHideEvent, QKeySequence, QShortcut, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget

from studiowatch.service.calibration_commands import WithdrawCalibration
from studiowatch.service.commands import ChooseBoard
from studiowatch.service.ports import Clock, Desk
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import mark, say
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.board import short_port
from studiowatch.ui.models.holding import WITHDRAW_DETAIL, HoldingRow
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.air_page import AirPage
from studiowatch.ui.widgets.board_overview import BoardOverview
from studiowatch.ui.widgets.columns_page import ColumnsPage
from studiowatch.ui.widgets.humidity_page import HumidityPage
from studiowatch.ui.widgets.question import question
from studiowatch.ui.widgets.text import button, label
from studiowatch.ui.widgets.warning_line import WarningLine

LOOK_MS = 250  # ms between two looks at the reader: lines come once a second
TO_STUDIO, TO_BOARD = mark("← Back to the rack"), mark("← Back to the board")


class BoardPage(QWidget):
    """Looks on at the board's reader while it is shown. `left` asks for the rack; `done` and `refused` tell in words.

    The guides keep how far she is while the program runs.
    """

    left = Signal()
    done = Signal(str)
    refused = Signal(str)

    def __init__(self, desk: Desk, clock: Clock) -> None:
        super().__init__()
        self.setObjectName("page")
        self.setAccessibleName(say("The board"))
        self._desk = desk
        self._courier = Courier(desk, self)
        self._snapshot: Snapshot | None = None
        self.back = button(say(TO_STUDIO), "link")  # first, as the keyboard reaches it
        self.overview = BoardOverview()
        self.humidity = HumidityPage(self._courier, clock.utc_ms)
        self.air = AirPage(self._courier, clock.utc_ms)
        self.columns = ColumnsPage(self._courier, clock.utc_ms)
        self.warning = WarningLine()
        self._stack = QStackedWidget()
        self._looking = QTimer(self)
        self._looking.setInterval(LOOK_MS)
        self._looking.timeout.connect(self._look)
        self._compose()
        self._connect()

    def _compose(self) -> None:
        self._top = QHBoxLayout()
        self._top.addWidget(self.back)
        self._top.addWidget(label("headline", text=say("The board")))
        self._top.addStretch(1)
        self._top.addWidget(self.warning)
        for part in (self.overview, self.humidity, self.air, self.columns):
            self._stack.addWidget(part)
        self._whole = QVBoxLayout(self)
        self._whole.addLayout(self._top)
        self._whole.addWidget(self._stack, 1)

    def _connect(self) -> None:
        overview = self.overview
        self.back.clicked.connect(self.go_back)
        QShortcut(QKeySequence("Escape"), self, self.go_back)
        overview.humidity.clicked.connect(lambda: self.go_to(self.humidity))
        overview.air.clicked.connect(lambda: self.go_to(self.air))
        overview.columns.clicked.connect(lambda: self.go_to(self.columns))
        overview.chosen.connect(self._choose)
        overview.any_asked.connect(lambda: self._choose(None))
        overview.withdraw_asked.connect(self._ask_to_withdraw)
        for part in (self.humidity, self.air, self.columns):
            part.accepted.connect(self._finished)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        px = style.px
        self._whole.setContentsMargins(px(14), px(8), px(14), px(6))
        self._whole.setSpacing(px(10))
        self._top.setSpacing(px(10))
        for part in (self.overview, self.humidity, self.air, self.columns, self.warning):
            part.set_style(style)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show the studio as it is; a warning stays in sight above."""
        self._snapshot = snapshot
        self.warning.show_sentence(snapshot.sentence)
        self.overview.show_snapshot(snapshot)
        self.humidity.show_snapshot(snapshot)
        self.air.show_snapshot(snapshot)
        self.columns.show_snapshot(snapshot)
        if snapshot.board.columns is None and self._stack.currentWidget() is self.columns:
            self.go_to(self.overview)

    def go_to(self, part: QWidget) -> None:
        """Show one part of the page."""
        self._stack.setCurrentWidget(part)
        words = say(TO_STUDIO if part is self.overview else TO_BOARD)
        self.back.setText(words)
        self.back.setAccessibleName(words)
        self.back.setFocus()

    def go_back(self) -> None:
        """Go from a guide to the board, and from there to the rack."""
        if self._stack.currentWidget() is self.overview:
            self.left.emit()
        else:
            self.go_to(self.overview)

    def end(self) -> None:
        """Bring no more answers: the window is going."""
        self._looking.stop()
        self._desk.onlooker.look(on=False)
        self._courier.close()

    def showEvent(self, event: QShowEvent) -> None:
        """Begin to look on."""
        super().showEvent(event)
        self._desk.onlooker.look(on=True)
        self._looking.start()
        self._look()

    def hideEvent(self, event: QHideEvent) -> None:
        """Look on no longer: lines are kept only while they are shown."""
        super().hideEvent(event)
        self._looking.stop()
        self._desk.onlooker.look(on=False)

    def _look(self) -> None:
        if self._snapshot is not None:
            onlooker = self._desk.onlooker
            self.overview.show_heard(onlooker.ports(), onlooker.lines(), self._snapshot)

    def _choose(self, port: str | None) -> None:
        words = say("The board is looked for on every port.")
        if port is not None:
            words = say("{port} is read from now on.", port=short_port(port))
        self._courier.send(
            ChooseBoard(port=port), owner=self, done=lambda _key: self.done.emit(words), refused=self.refused.emit
        )

    def _ask_to_withdraw(self, row: HoldingRow) -> None:
        box = question(self, row.question, say(WITHDRAW_DETAIL), say("Withdraw it"), say("Keep it"))
        box.accepted.connect(lambda: self._withdraw(row))
        box.open()

    def _withdraw(self, row: HoldingRow) -> None:
        self._courier.send(
            WithdrawCalibration(calibration_key=row.key),
            owner=self,
            done=lambda _key: self.done.emit(say("The calibration was withdrawn.")),
            refused=self.refused.emit,
        )

    def _finished(self, words: str) -> None:
        self.go_to(self.overview)
        self.done.emit(words)
