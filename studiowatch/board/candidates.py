"""Which of the computer's ports may be the board's, and in which order they are tried."""

from __future__ import annotations

import re
from collections.abc import Collection, Sequence

from studiowatch.board.port import PortSeen

_NO_BOARD = re.compile(  # names and descriptions that the three systems give to ports of their own: from memory
    r"bluetooth|bthenum|rfcomm|\.blth|wirelessiap"  # wireless links: opening one may call another device
    r"|debug-console|wlan-debug|ttyGS\d|active management",  # not said; the computer's own consoles
    re.IGNORECASE,
)


def may_be_board(port: PortSeen) -> bool:
    """Tell whether a board could be behind `port`; False for wireless links and the computer's consoles."""
    return not any(_NO_BOARD.search(text) for text in (port.name, port.description, port.hardware))


def candidates(
    seen: Sequence[PortSeen],
    *,
    wanted: PortSeen | None = None,
    last: PortSeen | None = None,
    fresh: Collection[str] = (),
) -> list[PortSeen]:
    """Return the ports to try, in order.

    Parameters
    ----------
    seen : sequence of PortSeen
        Ports that are there.
    wanted : PortSeen or None
        The only board to read, if she chose one. One without USB numbers is tried even if it is not listed: links and
        pseudo-terminals are not.
    last : PortSeen or None
        The board read last: it comes before others.
    fresh : collection of str
        Names of ports that have just come: whoever plugs a board in wants it read.
    """
    if wanted is not None:
        fitting = [port for port in seen if port.is_same_board(wanted)]
        fitting.sort(key=lambda port: port.name != wanted.name)
        return fitting[:1] or ([wanted] if wanted.vid is None else [])

    def order(port: PortSeen) -> tuple[bool, bool, bool, str]:
        is_last = last is not None and port.is_same_board(last)
        return port.name not in fresh, not is_last, port.vid is None, port.name

    return sorted((port for port in seen if may_be_board(port)), key=order)
