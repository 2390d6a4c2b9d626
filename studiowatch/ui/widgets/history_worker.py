"""The one thread that reads the log for the room history; the window never waits for it."""

from __future__ import annotations

import logging
from dataclasses import dataclass
from threading import Condition, Thread

from PySide6.QtCore import QObject, Signal

from studiowatch.physics.moist_air import DRIEST_PCT, HUMIDITY_PCT, TEMPERATURE_C, dew_point
from studiowatch.room.readings import Channel
from studiowatch.service.ports import History, PastView, Series
from studiowatch.speech.words import say
from studiowatch.ui.models.history_fetch import Request, shared
from studiowatch.ui.models.history_live import EMPTY, RoomData

logger = logging.getLogger(__name__)
JOIN_S = 5.0  # the longest read of a year is a fraction of a second


@dataclass(frozen=True, slots=True, kw_only=True)
class Answer:
    """What was read for request number `serial`.

    Attributes
    ----------
    first_ms : int or None
        Time of the first reading in the log, UTC ms.
    data : RoomData or None
        None if nothing was asked for but `first_ms`, or if the log could not be read.
    request : Request or None
        What was asked for; None after trouble, or if only `first_ms` was asked for.
    past : PastView or None
        What the records hold of the time behind; the same value until they change. None after trouble.
    trouble : str
        One sentence when the log could not be read, else "".
    """

    serial: int
    first_ms: int | None = None
    data: RoomData | None = None
    request: Request | None = None
    past: PastView | None = None
    trouble: str = ""


class HistoryWorker(QObject):
    """Reads from one `History` on a thread of its own; of requests that wait, only the newest is read."""

    answered = Signal(object)

    def __init__(self, history: History) -> None:
        super().__init__()
        self._history = history
        self._waiting: tuple[int, Request | None] | None = None
        self._stopping = False
        self._changed = Condition()
        self._thread = Thread(target=self._run, name="room-history", daemon=True)
        self._thread.start()

    def ask(self, serial: int, request: Request | None) -> None:
        """Have `request` read next, in place of one that still waits; None asks only where the log begins."""
        with self._changed:
            self._waiting = (serial, request)
            self._changed.notify()

    def stop(self) -> None:
        """Let the read in hand end, close the history on its own thread, and join.

        Raises
        ------
        RuntimeError
            If the thread lives on.
        """
        with self._changed:
            self._stopping = True
            self._changed.notify()
        self._thread.join(JOIN_S)
        if self._thread.is_alive():
            raise RuntimeError(f"the room history's thread did not end within {JOIN_S:g} s")  # not said

    def _run(self) -> None:
        while (task := self._next()) is not None:
            serial, request = task
            try:
                answer = self._read(serial, request)
            except Exception as error:  # the thread's top: the plot says so and the next request is tried afresh
                logger.exception("the room history could not be read")  # not said
                answer = Answer(serial=serial, trouble=say("The log cannot be read now: {reason}", reason=error))
            if not self._stopping:
                self.answered.emit(answer)
        self._history.close()

    def _next(self) -> tuple[int, Request | None] | None:
        with self._changed:
            self._changed.wait_for(lambda: self._stopping or self._waiting is not None)
            task, self._waiting = self._waiting, None
            return None if self._stopping else task

    def _read(self, serial: int, request: Request | None) -> Answer:
        span_ms = self._history.span_ms()
        first_ms = span_ms[0] if span_ms is not None else None
        past = self._history.past()
        if request is None:
            return Answer(serial=serial, first_ms=first_ms, past=past)
        return Answer(serial=serial, first_ms=first_ms, data=self._room(request), request=request, past=past)

    def _room(self, request: Request) -> RoomData:
        temperature, humidity, air = (
            self._series(channel, request) for channel in (Channel.TEMPERATURE, Channel.HUMIDITY, Channel.AIR_SPEED)
        )
        signal = EMPTY if len(air.time_ms) else self._series(Channel.AIR_SIGNAL, request)
        return RoomData(
            temperature=temperature,
            humidity=humidity,
            dew=dew_series(temperature, humidity),
            air=signal if len(signal.time_ms) else air,
            signal=bool(len(signal.time_ms)),
        )

    def _series(self, channel: Channel, request: Request) -> Series:
        return self._history.series(channel, request.start_ms, request.end_ms, request.buckets)


def dew_series(temperature: Series, humidity: Series) -> Series:
    """Return the dew point, °C, of the mean temperature and mean humidity of the buckets that have both.

    Where a mean lies outside what the formula is good for there is a gap.
    """
    left, right = shared(temperature, humidity)
    temperature_C, humidity_pct = temperature.mean[left], humidity.mean[right]
    known = (
        (temperature_C >= TEMPERATURE_C[0])
        & (temperature_C <= TEMPERATURE_C[1])
        & (humidity_pct >= DRIEST_PCT)
        & (humidity_pct <= HUMIDITY_PCT[1])
    )
    dew_C = dew_point(temperature_C[known], humidity_pct[known])
    time_ms = temperature.time_ms[left][known]
    return Series(time_ms=time_ms, low=dew_C, high=dew_C, mean=dew_C, bucket_ms=temperature.bucket_ms)
