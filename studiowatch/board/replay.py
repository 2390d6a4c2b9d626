"""A room log as a source of board events: what was logged happens again, as fast as asked."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from threading import Event, Thread

from studiowatch.board.events import BoardEvent, LineCounts, PortLost, PortOpened, ReadingArrived
from studiowatch.room.readings import Reading

STOP_WITHIN_S = 5.0  # a listener that takes longer than this for one event is stuck: assumption


class ReplaySource:
    """Delivers logged readings with their own times. Meets the service's BoardSource.

    Parameters
    ----------
    readings : sequence of Reading
        Rising in time.
    origin : str
        What the log is called: the port's name in events.
    speed : float or None
        Logged seconds per second, above 0; None for as fast as they are taken.
    """

    def __init__(self, readings: Sequence[Reading], origin: str, *, speed: float | None = None) -> None:
        if speed is not None and speed <= 0:
            raise ValueError(f"The speed is {speed:g}; it must be above 0.")
        self._readings = readings
        self._origin = origin
        self._speed = speed
        self._deliver: Callable[[BoardEvent], None] | None = None
        self._bug: Exception | None = None
        self._stopping = Event()
        self._thread = Thread(target=self._run, name="board-replay", daemon=True)

    def start(self, deliver: Callable[[BoardEvent], None]) -> None:
        """Begin to deliver events, from the source's own thread. A source is started once."""
        self._deliver = deliver
        self._thread.start()

    def stop(self) -> None:
        """Stop, and join the thread. Raises RuntimeError if it lives on, or what the listener raised."""
        if self._deliver is None:
            return
        self._stopping.set()
        if not self.wait(STOP_WITHIN_S):
            raise RuntimeError(f"The replay of {self._origin} did not stop within {STOP_WITHIN_S:g} s.")

    def wait(self, timeout_s: float | None = None) -> bool:
        """Wait until all is delivered; False if it is not within `timeout_s`. Raises what the listener raised."""
        self._thread.join(timeout_s)
        if self._bug is not None:
            raise self._bug
        return not self._thread.is_alive()

    def _run(self) -> None:
        try:
            self._replay()
        except Exception as bug:  # noqa: BLE001 - top of the thread: raised again where the replay is waited for
            self._bug = bug

    def _replay(self) -> None:
        time_ms = self._readings[0].time_ms if self._readings else 0
        self._tell(PortOpened(time_ms=time_ms, port=self._origin))
        counts = LineCounts()
        for reading in self._readings:
            if self._speed is not None:
                self._stopping.wait((reading.time_ms - time_ms) / 1000 / self._speed)
            if self._stopping.is_set():
                return
            time_ms = reading.time_ms
            counts = replace(counts, good=counts.good + 1)
            self._tell(ReadingArrived(reading=reading, counts=counts))
        self._tell(PortLost(time_ms=time_ms, port=self._origin, reason=f"The log {self._origin} is at its end."))

    def _tell(self, event: BoardEvent) -> None:
        if self._deliver is not None:
            self._deliver(event)
