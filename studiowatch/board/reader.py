"""The reader's thread: finds the board, reads it, delivers events, and finds it again when it was unplugged."""

from __future__ import annotations

import logging
from collections.abc import Callable, Sequence
from threading import Event, Thread
from typing import Protocol

from studiowatch.board.events import BoardEvent, PortLost, PortOpened
from studiowatch.board.intake import Intake
from studiowatch.board.port import READ_TIMEOUT_S, BytePort, PortGone, PortRefused, PortSeen, SerialPort, ports

LOOK_EVERY_S = 1.0  # how often the ports are listed while there is no board; never while there is one
STOP_WITHIN_S = 5.0  # a read ends within READ_TIMEOUT_S even if it cannot be cancelled
DRAIN_BYTES = 65_536  # read at most this much after stop(): a board that never pauses must not hold it up
HELLO_PLEASE = b"?"  # the wire format: the board says hello when the host sends this

_LOG = logging.getLogger(__name__)

NO_BOARD = "No board was found: push its USB plug home."


class Clock(Protocol):
    """The wall time that readings are stamped with."""

    def utc_ms(self) -> int:
        """Return UTC, milliseconds since 1970-01-01."""
        ...


class Reader:
    """Reads one board until it is stopped. Meets the service's BoardSource.

    Parameters
    ----------
    clock : Clock
        Stamps readings and events.
    wanted : str, PortSeen or None
        A port's name, a board seen before, or None for the first USB port that is there. Once a board was opened it is
        known by its USB numbers, if it has them, whatever its name is when it returns.
    open_port : callable
        Opens a port by name; raises `PortGone` or `PortRefused`.
    list_ports : callable
        Returns the ports that are there.
    look_every_s : float
        How often to look for the board while it is not there, s.
    """

    def __init__(
        self,
        *,
        clock: Clock,
        wanted: str | PortSeen | None = None,
        open_port: Callable[[str], BytePort] = SerialPort,
        list_ports: Callable[[], Sequence[PortSeen]] = ports,
        look_every_s: float = LOOK_EVERY_S,
    ) -> None:
        self._clock = clock
        self._wanted = PortSeen(name=wanted) if isinstance(wanted, str) else wanted
        self._open_port = open_port
        self._list_ports = list_ports
        self._look_every_s = look_every_s
        self._deliver: Callable[[BoardEvent], None] | None = None
        self._intake = Intake()
        self._port: BytePort | None = None
        self._told = ""
        self._stopping = Event()
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
            self._stopping.wait(self._look_every_s)

    def _attend(self) -> None:
        """Find the board and read it; return when it is lost and that was told, or when stopped."""
        name = self._wanted.name if self._wanted else ""
        try:
            name = self._find()
            self._read_until_lost(name)
        except PortGone as fault:
            self._tell_lost(name, str(fault), once="gone")
        except PortRefused as fault:
            self._tell_lost(name, str(fault), once=str(fault))
        except Exception as bug:  # noqa: BLE001 - top of the thread: told, and the board is read on
            _LOG.exception("The reader failed.")
            reason = f"The board's reader failed and starts again ({bug!r})."
            self._tell_lost(name, reason, once=reason)

    def _find(self) -> str:
        """Return the name under which the wanted board is there now, and remember its USB numbers."""
        wanted = self._wanted
        seen = self._list_ports()
        fitting = [port for port in seen if (port.is_same_board(wanted) if wanted else port.vid is not None)]
        if fitting:
            self._wanted = min(fitting, key=lambda port: wanted is None or port.name != wanted.name)
            return self._wanted.name
        if wanted is None or wanted.vid is not None:
            raise PortGone(NO_BOARD)
        return wanted.name

    def _read_until_lost(self, name: str) -> None:
        port = self._open_port(name)
        self._port = port
        try:
            self._intake.reopened()
            self._told = ""
            self._tell(PortOpened(time_ms=self._clock.utc_ms(), port=name))
            port.write(HELLO_PLEASE)
            while not self._stopping.is_set():
                self._take(port.read_some(READ_TIMEOUT_S))
            self._drain(port)
        finally:
            self._port = None
            port.close()

    def _drain(self, port: BytePort) -> None:
        taken = 0
        while taken < DRAIN_BYTES and (data := port.read_some(0.0)):
            self._take(data)
            taken += len(data)

    def _take(self, data: bytes) -> None:
        for event in self._intake.feed(data, self._clock.utc_ms()):
            self._tell(event)

    def _tell(self, event: BoardEvent) -> None:
        if self._deliver is not None:
            self._deliver(event)

    def _tell_lost(self, name: str, reason: str, *, once: str) -> None:
        """Say why there is no board, but not again at each look: `once` is the same as long as it need not be."""
        if once == self._told:
            return
        self._tell(PortLost(time_ms=self._clock.utc_ms(), port=name, reason=reason))
        self._told = once
