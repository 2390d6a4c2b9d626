"""The reader's thread: finds the board, reads it, delivers events, and finds it again when it was unplugged."""

from __future__ import annotations

import logging
from collections.abc import Callable, Sequence
from threading import Event, Thread
from typing import Protocol

from studiowatch.board.candidates import candidates
from studiowatch.board.events import BoardEvent, PortLost, PortOpened
from studiowatch.board.listening import Listening
from studiowatch.board.lookout import Lookout
from studiowatch.board.port import (
    READ_TIMEOUT_S,
    BytePort,
    PortFault,
    PortGone,
    PortRefused,
    PortSeen,
    SerialPort,
    ports,
)
from studiowatch.board.ways import ChooseWay, LineIntake, Way, checked_lines_only

LOOK_EVERY_S = 1.0  # how often the ports are listed while no board is heard; never while one is
TRY_S = 5.0  # a port is listened to for so long at first: a board that opening restarts says hello within 3 s
LONGEST_TRY_S = 60.0  # each round doubles it up to this: opening restarts the devices, which are not ours
STOP_WITHIN_S = 5.0  # a read ends within READ_TIMEOUT_S even if it cannot be cancelled
DRAIN_BYTES = 65_536  # read at most this much after stop(): a board that never pauses must not hold it up
HELLO_PLEASE = b"?"  # the wire format: the board says hello when the host sends this

_LOG = logging.getLogger(__name__)

NO_BOARD = "No board was found: push its USB plug home."


class Clock(Protocol):
    """The wall time that readings are stamped with, and a time that never runs backwards."""

    def utc_ms(self) -> int:
        """Return UTC, milliseconds since 1970-01-01."""
        ...

    def monotonic_s(self) -> float:
        """Return seconds that never run backwards."""
        ...


class Reader:
    """Reads one board until it is stopped. Meets the service's BoardSource.

    A port that is the only one is listened to without end. Where there are several, each is tried for a few seconds,
    and told as opened once what it sends makes sense. A port that is plugged in meanwhile is tried at once. Of a port
    that is not a USB port, was not read last and was not asked for, nothing is told before that.

    Parameters
    ----------
    clock : Clock
        Stamps readings and events, and measures how long a port is tried.
    wanted : str, PortSeen or None
        A port's name or a board: no other is read then, whatever its name is when it returns. None for the first port
        that sends what makes sense.
    last : PortSeen or None
        The board read the last time: it is tried before others.
    remember : callable
        Called with the board that is read from now on, for the next start.
    choose_way : callable
        Tells how to listen; see `studiowatch.board.ways`.
    open_port : callable
        Opens a port by name and baud; raises `PortGone` or `PortRefused`.
    list_ports : callable
        Returns the ports that are there.
    look_every_s : float
        How often to look for the board while it is not there, s.
    wait : callable or None
        Lets so many seconds pass, or fewer if the reader is stopped; None for real ones.
    """

    def __init__(
        self,
        *,
        clock: Clock,
        wanted: str | PortSeen | None = None,
        last: PortSeen | None = None,
        remember: Callable[[PortSeen], None] = lambda _: None,
        choose_way: ChooseWay = checked_lines_only,
        open_port: Callable[[str, int], BytePort] = SerialPort,
        list_ports: Callable[[], Sequence[PortSeen]] = ports,
        look_every_s: float = LOOK_EVERY_S,
        wait: Callable[[float], object] | None = None,
    ) -> None:
        self._clock = clock
        self._wanted = PortSeen(name=wanted) if isinstance(wanted, str) else wanted
        self._last = last
        self._remember = remember
        self._choose_way = choose_way
        self._open_port = open_port
        self._look_every_s = look_every_s
        self._deliver: Callable[[BoardEvent], None] | None = None
        self._understood: tuple[PortSeen, Way, LineIntake] | None = None
        self._lookout = Lookout(list_ports=list_ports, now_s=clock.monotonic_s, every_s=look_every_s)
        self._try_s = TRY_S
        self._port: BytePort | None = None
        self._name = self._wanted.name if self._wanted else ""
        self._is_told_open = False
        self._told = ""
        self._stopping = Event()
        self._wait = wait or self._stopping.wait
        self._thread = Thread(target=self._run, name="board-reader", daemon=True)

    def start(self, deliver: Callable[[BoardEvent], None]) -> None:
        """Begin to deliver events, from the reader's own thread. A reader is started once."""
        self._deliver = deliver
        self._thread.start()

    def stop(self) -> None:
        """Read what has come already, let go of the port, and join the thread.

        Raises
        ------
        RuntimeError
            If the thread lives on.
        """
        if self._deliver is None:
            return
        self._stopping.set()
        port = self._port
        if port is not None:
            port.cancel()
        self._thread.join(STOP_WITHIN_S)
        if self._thread.is_alive():
            raise RuntimeError(f"The board's reader did not stop within {STOP_WITHIN_S:g} s.")

    def _run(self) -> None:
        while not self._stopping.is_set():
            try:
                self._attend()
            except Exception:  # noqa: BLE001 - top of the thread: a listener that fails does not end the watch
                _LOG.exception("The loss of the board could not be told.")
            if not self._lookout.fresh:
                self._wait(self._look_every_s)

    def _attend(self) -> None:
        """Look for the board once and read it; return when it is lost and that was told, or when stopped."""
        try:
            reason = self._try_all()
        except PortGone as fault:
            self._tell_lost(str(fault), once="gone")
        except PortRefused as fault:
            self._tell_lost(str(fault), once=str(fault))
        except Exception as bug:  # noqa: BLE001 - top of the thread: told, and the board is read on
            _LOG.exception("The reader failed.")
            reason = f"The board's reader failed and starts again ({bug!r})."
            self._tell_lost(reason, once=reason)
        else:
            if reason and not self._stopping.is_set():
                self._tell_lost(reason, once=reason)

    def _try_all(self) -> str:
        """Try every port that may be the board's; return why none is, or "" if that is not to be told.

        Raises
        ------
        PortFault
            If the board was read and is lost, or the only port there is cannot be read.
        """
        self._lookout.look()
        found = candidates(self._lookout.seen, wanted=self._wanted, last=self._last, fresh=self._lookout.fresh)
        self._lookout.fresh = frozenset()
        if not found:
            raise PortGone(NO_BOARD)
        if self._wanted is not None:
            self._wanted = found[0]
        reasons: list[str] = []
        for port in found:
            reason = self._try(port, is_alone=len(found) == 1)
            if self._stopping.is_set() or self._is_called_away():
                return reason if self._is_told_open else ""
            if self._is_likely(port):
                reasons.append(reason)
        self._try_s = min(2 * self._try_s, LONGEST_TRY_S)
        if not reasons:
            raise PortGone(NO_BOARD)
        return " ".join(["No board answers.", *reasons] if len(reasons) > 1 else reasons)

    def _try(self, port: PortSeen, *, is_alone: bool) -> str:
        """Read `port`, or return why it is not the board's. Raises `PortFault` as `_try_all` does."""
        if self._is_likely(port):
            self._name = port.name
        try:
            self._listen(port, is_alone=is_alone)
        except PortFault as fault:
            if self._is_told_open or (is_alone and self._is_likely(port)):
                raise
            return str(fault)
        return f"{port.name} sends nothing that can be read."

    def _listen(self, port: PortSeen, *, is_alone: bool) -> None:
        """Listen to `port` in every way, until it is given up, or stopped. Raises `PortFault`."""
        listening = self._listening_to(port)
        way: Way | None = listening.way
        while way is not None:
            listening.turn_to(way)
            device = self._open_port(port.name, way.baud)
            self._port = device
            try:
                if is_alone and self._is_likely(port):
                    self._tell_open(port)
                elif is_alone:
                    self._tell_lost(NO_BOARD, once="gone")
                listening.intake.reopened()
                device.write(HELLO_PLEASE)
                way = self._read(device, port, listening, is_alone=is_alone)
            finally:
                self._port = None
                device.close()

    def _listening_to(self, port: PortSeen) -> Listening:
        """Return a listening that goes on where it ended, if this board made sense before."""
        if self._understood is not None and self._understood[0].is_same_board(port):
            return Listening(port, self._choose_way, *self._understood[1:])
        return Listening(port, self._choose_way)

    def _read(self, device: BytePort, port: PortSeen, listening: Listening, *, is_alone: bool) -> Way | None:
        """Read until the port is given up, or until another baud is to be tried: return that way."""
        is_listed = self._lookout.sees(port)
        until_s = self._clock.monotonic_s() + self._try_s
        while not self._stopping.is_set():
            data = device.read_some(READ_TIMEOUT_S)
            self._take(data, port, listening)
            if data and listening.is_understood:
                continue
            self._lookout.look_if_due()
            if is_listed and not self._lookout.sees(port):
                raise PortGone(f"The board on {port.name} vanished: push its USB plug home.")
            if listening.is_understood:
                continue
            if self._is_called_away():
                return None
            if self._clock.monotonic_s() >= until_s:
                way = listening.another_way(again=is_alone)
                if way is None or way.baud != listening.way.baud:
                    return way
                listening.turn_to(way)
                until_s = self._clock.monotonic_s() + self._try_s
        self._drain(device, port, listening)
        return None

    def _is_likely(self, port: PortSeen) -> bool:
        """Tell whether to speak of a port from which nothing came yet: most built-in ones have nothing behind them."""
        is_last = self._last is not None and port.is_same_board(self._last)
        return self._wanted is not None or port.vid is not None or is_last

    def _is_called_away(self) -> bool:
        """Tell whether a port has come that is worth leaving one that makes no sense."""
        return self._wanted is None and bool(self._lookout.fresh)

    def _drain(self, device: BytePort, port: PortSeen, listening: Listening) -> None:
        taken = 0
        while taken < DRAIN_BYTES and (data := device.read_some(0.0)):
            self._take(data, port, listening)
            taken += len(data)

    def _take(self, data: bytes, port: PortSeen, listening: Listening) -> None:
        was_understood = listening.is_understood
        events = listening.take(data, self._clock.utc_ms())
        if listening.is_understood and not was_understood:
            self._settle_on(port, listening)
        if self._is_told_open:
            for event in events:
                self._tell(event)

    def _settle_on(self, port: PortSeen, listening: Listening) -> None:
        """Keep to a board that makes sense, and know it again."""
        self._understood = (port, listening.way, listening.intake)
        self._try_s = TRY_S
        self._tell_open(port)
        if port != self._last:
            self._last = port
            self._remember(port)

    def _tell(self, event: BoardEvent) -> None:
        if self._deliver is not None:
            self._deliver(event)

    def _tell_open(self, port: PortSeen) -> None:
        if not self._is_told_open:
            self._is_told_open, self._told, self._name = True, "", port.name
            self._tell(PortOpened(time_ms=self._clock.utc_ms(), port=port.name))

    def _tell_lost(self, reason: str, *, once: str) -> None:
        """Say why there is no board, but not again at each look: `once` is the same as long as it need not be."""
        self._is_told_open = False
        if once == self._told:
            return
        self._tell(PortLost(time_ms=self._clock.utc_ms(), port=self._name, reason=reason))
        self._told = once
