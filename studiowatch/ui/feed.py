"""Snapshots on their way to the screen: events at once, drift once a second at most, and silence noticed."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QElapsedTimer, QObject, Qt, QTimer, Signal

from studiowatch.service.ports import Clock, Desk
from studiowatch.service.snapshot import Snapshot
from studiowatch.studio.prompts import IN_SECONDS_MS
from studiowatch.studio.warnings import WarningState
from studiowatch.ui.bridge import SnapshotBridge
from studiowatch.ui.models.pace import CALM_REDRAW_MS, GONE_AFTER_MS, STALLED_AFTER_MS, is_event, stalled

_SECOND_MS = 1000
_SELDOM_MS = 5000  # while nobody looks, and nothing is to be rung for
_LOOKS = 2  # in a row that must find the watch gone: a computer that slept has not heard from it for long either


class Feed(QObject):
    """Takes the desk's snapshots on the window's thread.

    `came` is emitted with every snapshot that is fetched, and the one before it or None; `due` with one that must be
    drawn now; `ticked` once a second while one looks or a warning is raised, and else every few; `counted`, between
    two that came, with the last one as of now where seconds of it are counted down.
    """

    came = Signal(object, object)
    due = Signal(object)
    ticked = Signal()
    counted = Signal(object)
    stopped = Signal(object)

    def __init__(self, desk: Desk, clock: Clock, parent: QObject) -> None:
        super().__init__(parent)
        self._desk, self._clock = desk, clock
        self.latest: Snapshot | None = None
        self._awake = False
        self._missed = 0
        self._drawn: Snapshot | None = None
        self._since_drawn, self._since_heard = QElapsedTimer(), QElapsedTimer()
        self._since_heard.start()
        self._pending, self._seconds = QTimer(self), QTimer(self)
        self._pending.setSingleShot(True)
        self._pending.timeout.connect(self.draw)
        self._seconds.timeout.connect(self._tick)
        self._seconds.start(_SELDOM_MS)
        self._bridge = SnapshotBridge(self)
        self._bridge.arrived.connect(self._fetch, Qt.ConnectionType.QueuedConnection)
        desk.subscribe(self._bridge.offer)
        desk.look(closely=False)  # until it is shown

    @property
    def is_awake(self) -> bool:
        """Whether the window is drawn."""
        return self._awake

    def set_awake(self, *, awake: bool) -> None:
        """Draw only while `awake`: a window that is away is not drawn, and asks for few snapshots.

        One that comes back takes no watch for stopped that only had nothing to say meanwhile.
        """
        if awake and not self._awake:
            self._since_heard.restart()
        self._awake = awake
        self._desk.look(closely=awake)
        self._tick_in_time()
        if awake:
            self.draw()

    def draw(self) -> None:
        """Have the latest snapshot drawn now; one that is the last word of a stopped watch says so."""
        self._pending.stop()
        snapshot = stalled(self.latest, self._clock.utc_ms()) if self._is_stalled() else self.latest
        if snapshot is None or not self._awake:
            return
        self._since_drawn.restart()
        self._drawn = snapshot
        self.due.emit(snapshot)

    def close(self) -> None:
        """Take nothing more: the window is going."""
        self._bridge.close()
        self._seconds.stop()
        self._pending.stop()
        self._awake = False

    def _fetch(self) -> None:
        snapshot = self._bridge.fetch()
        if snapshot is None:
            return
        before, self.latest = self.latest, snapshot
        self._since_heard.restart()
        self._tick_in_time()
        self.came.emit(before, snapshot)
        waited_ms = self._since_drawn.elapsed() if self._since_drawn.isValid() else CALM_REDRAW_MS
        if is_event(self._drawn, snapshot) or waited_ms >= CALM_REDRAW_MS:
            self.draw()
        elif not self._pending.isActive():
            self._pending.start(CALM_REDRAW_MS - waited_ms)

    def _tick_in_time(self) -> None:
        """Tick as often as somebody may notice."""
        raised = self.latest is not None and any(one.state is WarningState.RAISED for one in self.latest.warnings)
        every_ms = _SECOND_MS if self._awake or raised else _SELDOM_MS
        if self._seconds.interval() != every_ms:
            self._seconds.setInterval(every_ms)

    def _tick(self) -> None:
        self.ticked.emit()
        if self._awake and self._is_stalled():
            self.draw()
            return
        now_ms = self._clock.utc_ms()
        if self._is_gone(now_ms):
            return
        if self.latest is not None and self.latest.is_due_within(IN_SECONDS_MS, now_ms):
            self.counted.emit(replace(self.latest, time_ms=now_ms))

    def _is_stalled(self) -> bool:
        return self._since_heard.elapsed() > STALLED_AFTER_MS

    def _is_gone(self, now_ms: int) -> bool:
        """Tell whether the watch has stopped while the window is away, and say so once."""
        is_late = self.latest is not None and not self._awake and self._since_heard.elapsed() > GONE_AFTER_MS
        self._missed = self._missed + 1 if is_late else 0
        if self._missed == _LOOKS:
            self.stopped.emit(stalled(self.latest, now_ms))
        return self._missed >= _LOOKS
