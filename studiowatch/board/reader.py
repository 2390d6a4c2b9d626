"""The reader's thread: finds the board, reads it, delivers events, and finds it again when it was unplugged."""

from __future__ import annotations

import logging
from collections.abc import Callable, Sequence
from threading import Event, Thread

from studiowatch.board.accepted import Accepted
from studiowatch.board.clock import Clock
from studiowatch.board.events import BoardEvent
from studiowatch.board.listening import Listening
from studiowatch.board.lookout import Lookout
from studiowatch.board.mapping import ColumnMapping
from studiowatch.board.onlooker import Onlooker
from studiowatch.board.patience import Patience
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
from studiowatch.board.search import Search, Turn
from studiowatch.board.telling import Telling
from studiowatch.board.ways import ChooseWay, LineIntake, Way, checked_lines_only
from studiowatch.speech.words import mark, say

LOOK_EVERY_S = 1.0  # how often the ports are listed while no board is heard, or while somebody looks on
TRY_S = 5.0  # a port is listened to for so long at first: a board that opening restarts says hello within 3 s
LONGEST_TRY_S = 60.0  # each round doubles it up to this: opening restarts the devices, which are not ours
STOP_WITHIN_S = 5.0  # a read ends within READ_TIMEOUT_S even if it cannot be cancelled
DRAIN_BYTES = 65_536  # read at most this much after stop(): a board that never pauses must not hold it up
HELLO_PLEASE = b"?"  # the wire format: the board says hello when the host sends this

_LOG = logging.getLogger(__name__)

NO_BOARD = mark("No board was found: push its USB plug home.")


class Reader:
    """Reads one board until it is stopped. Meets the service's BoardSource.

    A port that is the only one is listened to without end. Where there are several, each is tried for a few seconds,
    until one sends what makes sense. A port that is plugged in meanwhile is tried at once. A board that was read and
    falls silent though it is plugged in has its port opened anew, see `Patience`.

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
    keep_mapping : callable
        Called with a board and what was accepted of its columns; may raise OSError.
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

    Attributes
    ----------
    onlooker : Onlooker
        What may be seen of the work, from any thread.
    """

    def __init__(
        self,
        *,
        clock: Clock,
        wanted: str | PortSeen | None = None,
        last: PortSeen | None = None,
        remember: Callable[[PortSeen], None] = lambda _: None,
        keep_mapping: Callable[[PortSeen, ColumnMapping], None] = lambda _board, _mapping: None,
        choose_way: ChooseWay = checked_lines_only,
        open_port: Callable[[str, int], BytePort] = SerialPort,
        list_ports: Callable[[], Sequence[PortSeen]] = ports,
        look_every_s: float = LOOK_EVERY_S,
        wait: Callable[[float], object] | None = None,
    ) -> None:
        board = PortSeen(name=wanted) if isinstance(wanted, str) else wanted
        self._clock = clock
        self._remember = remember
        self._keep_mapping = keep_mapping
        self._accepted = Accepted()
        self._choose_way = choose_way
        self._open_port = open_port
        self._look_every_s = look_every_s
        self._lookout = Lookout(list_ports=list_ports, now_s=clock.monotonic_s, every_s=look_every_s)
        self._search = Search(self._lookout, wanted=board, last=last)
        self._patience = Patience(clock.monotonic_s)
        self._telling = Telling(utc_ms=clock.utc_ms, port=board.name if board else "")
        self._understood: tuple[PortSeen, Way, LineIntake] | None = None
        self._try_s = TRY_S
        self._open: tuple[PortSeen, BytePort] | None = None
        self.onlooker = Onlooker()
        self._stopping = Event()
        self._wait = wait or self._stopping.wait
        self._thread = Thread(target=self._run, name="board-reader", daemon=True)

    def start(self, deliver: Callable[[BoardEvent], None]) -> None:
        """Begin to deliver events, from the reader's own thread. A reader is started once."""
        self._telling.deliver = deliver
        self._thread.start()

    def accept(self, board: str, mapping: ColumnMapping) -> None:
        """Read the board by `mapping` from its next bytes on, and keep it for this board. May come from any thread.

        Parameters
        ----------
        board : str
            The board that she was shown the columns of, `PortSeen.identity`.

        Raises
        ------
        PortGone
            If that board is not read: none is there, another one is, or another port is being tried meanwhile.
        OSError
            If it cannot be kept; it is read by all the same.
        """
        understood, listened_to = self._understood, self._open
        is_read = understood is not None and listened_to is not None and understood[0].is_same_board(listened_to[0])
        if understood is None or not is_read or understood[0].identity != board:
            raise PortGone(say(NO_BOARD))
        self._accepted.give(understood[0], mapping)
        self._keep_mapping(understood[0], mapping)

    def choose(self, port: str | None) -> None:
        """Read `port` from now on and no other, or, if that is None, whichever answers. May come from any thread.

        Raises
        ------
        PortGone
            If there is no such port.
        """
        self._search.want(None if port is None else self.onlooker.port_named(port))
        self._cancel()

    def stop(self) -> None:
        """Read what has come already, let go of the port, and join the thread.

        Raises
        ------
        RuntimeError
            If the thread lives on.
        """
        self._stopping.set()
        if self._thread.ident is None:
            return
        self._cancel()
        self._thread.join(STOP_WITHIN_S)
        if self._thread.is_alive():
            raise RuntimeError(f"The board's reader did not stop within {STOP_WITHIN_S:g} s.")  # not said

    def _cancel(self) -> None:
        """End the read that waits. May come from any thread."""
        listened_to = self._open
        if listened_to is not None:
            listened_to[1].cancel()

    def _run(self) -> None:
        while not self._stopping.is_set():
            went_well = False
            try:
                went_well = self._attend()
            except Exception:  # noqa: BLE001 - top of the thread: a listener that fails does not end the watch
                _LOG.exception("The loss of the board could not be told.")  # not said
            if not (went_well and self._search.is_called_away):
                self._wait(self._look_every_s)

    def _attend(self) -> bool:
        """Look for the board once and read it until it is lost and that was told, or until stopped.

        Return False after a fault of ours: what calls away then may not have been looked at, and would at once again.
        """
        try:
            self._try_all()
        except PortGone as fault:
            self._telling.lost(str(fault), once="gone")
        except PortRefused as fault:
            self._telling.lost(str(fault))
        except Exception as bug:  # noqa: BLE001 - top of the thread: told, and the board is read on
            _LOG.exception("The reader failed.")  # not said
            self._telling.lost(say("The board's reader failed and starts again ({fault}).", fault=repr(bug)))
            return False
        return True

    def _try_all(self) -> None:
        """Give every port that may be the board's its turn; return when none is, another port came, or at a stop.

        Raises
        ------
        PortFault
            If the board was read and is lost, or the only port there is cannot be read.
        """
        reasons: list[str] = []
        turns = self._search.turns()
        self.onlooker.listed(self._lookout.seen)
        for turn in turns:
            reason = self._try(turn)
            if self._stopping.is_set():
                return
            if self._telling.is_open:
                self._telling.lost(reason)
            if self._search.is_called_away:
                return
            self._search.give_up(turn)
            reasons += [reason] if turn.is_likely else []
        self._try_s = min(2 * self._try_s, LONGEST_TRY_S)
        if not reasons:
            raise PortGone(say(NO_BOARD))
        self._telling.lost(" ".join([say("No board answers."), *reasons] if len(reasons) > 1 else reasons))

    def _try(self, turn: Turn) -> str:
        """Read a port, or return why it is not the board's. Raises `PortFault` as `_try_all` does."""
        try:
            self._listen(turn)
        except PortFault as fault:
            self.onlooker.gave_up(turn.port, str(fault))
            if self._telling.is_open or (turn.is_alone and turn.is_likely):
                raise
            return str(fault)
        reason = (
            say("{port} was left: you chose another port.", port=turn.port.name)
            if self._search.is_rechosen
            else say("{port} sends nothing that can be read.", port=turn.port.name)
        )
        self.onlooker.gave_up(turn.port, reason)
        return reason

    def _listen(self, turn: Turn) -> None:
        """Listen to a port in every way, until it is given up, or stopped. Raises `PortFault`."""
        listening = self._listening_to(turn.port)
        way: Way | None = listening.way
        while way is not None:
            listening.turn_to(way)
            device = self._open_port(turn.port.name, way.baud)
            self._open = (turn.port, device)
            try:
                if not listening.is_understood:
                    self._tell_of(turn, way)
                listening.intake.reopened()
                self._patience.begin()
                device.write(HELLO_PLEASE)
                way = self._read(device, turn, listening)
            finally:
                self._open = None
                device.close()

    def _tell_of(self, turn: Turn, way: Way) -> None:
        """Tell of a port that is tried: one likely the board's counts as open, another alone as no board yet."""
        self.onlooker.tries(turn.port, way.format, way.baud)
        if turn.is_foremost:
            self._telling.opened(turn.port)
        elif turn.is_alone:
            self._telling.lost(say(NO_BOARD), once="gone")

    def _listening_to(self, port: PortSeen) -> Listening:
        """Return a listening that goes on where it ended, if this board made sense before."""
        if self._understood is not None and self._understood[0].is_same_board(port):
            return Listening(port, self._choose_way, *self._understood[1:])
        return Listening(port, self._choose_way)

    def _read(self, device: BytePort, turn: Turn, listening: Listening) -> Way | None:
        """Read until the port is given up, or until it is to be opened anew, at another baud too: return that way."""
        port = turn.port
        was_listed = self._lookout.sees(port)
        until_s = self._clock.monotonic_s() + self._try_s
        while not (self._stopping.is_set() or self._search.is_rechosen):
            data = device.read_some(READ_TIMEOUT_S)
            self._take(data, port, listening)
            if data and listening.is_understood and not self.onlooker.is_looking:
                continue
            self._look_for(port, was_listed=was_listed)
            if listening.is_understood and not self._patience.runs_out():
                continue
            if listening.is_understood:
                return listening.way
            if self._search.is_called_away:
                return None
            if self._clock.monotonic_s() >= until_s:
                way = listening.another_way(again=turn.is_alone)
                if way is None or way.baud != listening.way.baud:
                    return way
                listening.turn_to(way)
                until_s = self._clock.monotonic_s() + self._try_s
        self._drain(device, port, listening)
        return None

    def _look_for(self, port: PortSeen, *, was_listed: bool) -> None:
        """Look which ports there are, if it is time. Raises `PortGone` if this one was listed and is not any more."""
        self._lookout.look_if_due()
        self.onlooker.listed(self._lookout.seen)
        if was_listed and not self._lookout.sees(port):
            raise PortGone(say("The board on {port} vanished: push its USB plug home.", port=port.name))

    def _drain(self, device: BytePort, port: PortSeen, listening: Listening) -> None:
        taken = 0
        while taken < DRAIN_BYTES and (data := device.read_some(0.0)):
            self._take(data, port, listening)
            taken += len(data)

    def _take(self, data: bytes, port: PortSeen, listening: Listening) -> None:
        accepted = self._accepted.take(port)
        if accepted is not None:
            listening.intake.set_mapping(accepted)
        was_understood = listening.is_understood
        time_ms = self._clock.utc_ms()
        if data:
            self._patience.heard()
        events = listening.take(data, time_ms)
        self.onlooker.heard(port, data, events, time_ms)
        if listening.is_understood and not was_understood:
            self._settle_on(port, listening)
        self._telling.came(events)

    def _settle_on(self, port: PortSeen, listening: Listening) -> None:
        """Keep to a board that makes sense, and know it again."""
        self._understood = (port, listening.way, listening.intake)
        self._try_s = TRY_S
        self._telling.opened(port)
        self.onlooker.reads(port, listening.way.format, listening.way.baud)
        if port != self._search.last:
            self._search.last = port
            self._remember(port)
