"""The search for the board: whose turn it is among the ports that there are."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from threading import Lock

from studiowatch.board.candidates import candidates
from studiowatch.board.lookout import Lookout
from studiowatch.board.port import PortSeen


@dataclass(frozen=True, slots=True, kw_only=True)
class Turn:
    """A port that is to be listened to in this round.

    Attributes
    ----------
    is_alone : bool
        No other has its turn in this round: there is no reason to leave it.
    is_likely : bool
        She asked for it, it was the board last time, or it is a USB port. Of others nothing is told before they
        answer: most built-in ports have nothing behind them.
    is_foremost : bool
        It is the only likely one.
    """

    port: PortSeen
    is_alone: bool
    is_likely: bool
    is_foremost: bool


class Search:
    """Deals out the turns, round by round.

    An unlikely port that was tried in vain has no more turns as long as there is a likely one.

    Attributes
    ----------
    wanted : PortSeen or None
        The only board to read, if she chose one; with its USB numbers once it was seen.
    last : PortSeen or None
        The board read last.
    """

    def __init__(self, lookout: Lookout, *, wanted: PortSeen | None, last: PortSeen | None) -> None:
        self._lookout = lookout
        self._in_vain: set[str] = set()
        self._lock = Lock()
        self._asked = False
        self.wanted = wanted
        self.last = last

    def turns(self) -> Sequence[Turn]:
        """Look which ports there are, and return whose turn it is in this round, in order; none if there is no port."""
        with self._lock:
            self._asked, wanted = False, self.wanted
        self._lookout.look()
        seen, fresh = self._lookout.seen, self._lookout.take_fresh()
        self._in_vain &= {port.name for port in seen} - fresh
        found = candidates(seen, wanted=wanted, last=self.last, fresh=fresh)
        if wanted is not None and found:
            self._know(wanted, found[0])
        likely = [port for port in found if wanted is not None or self._is_likely(port)]
        if likely:
            found = [port for port in found if port in likely or port.name not in self._in_vain]
        return [
            Turn(port=port, is_alone=len(found) == 1, is_likely=port in likely, is_foremost=likely == [port])
            for port in found
        ]

    def want(self, board: PortSeen | None) -> None:
        """Have only `board` read from now on, or, if that is None, whichever answers. May come from any thread."""
        with self._lock:
            self.wanted, self._asked = board, True

    def _know(self, wanted: PortSeen, seen: PortSeen) -> None:
        """Keep the wanted board as it was seen, unless another was asked for meanwhile."""
        with self._lock:
            if self.wanted is wanted:
                self.wanted = seen

    @property
    def is_rechosen(self) -> bool:
        """Whether another board was asked for since the turns were dealt out."""
        return self._asked

    def give_up(self, turn: Turn) -> None:
        """Note that a port was tried in vain."""
        if not turn.is_likely:
            self._in_vain.add(turn.port.name)

    @property
    def is_called_away(self) -> bool:
        """Whether a port has come, or was asked for, that is worth leaving one that makes no sense."""
        return self._asked or (self.wanted is None and bool(self._lookout.fresh))

    def _is_likely(self, port: PortSeen) -> bool:
        is_last = self.last is not None and port.is_same_board(self.last)
        return port.vid is not None or is_last
