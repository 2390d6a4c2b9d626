"""The ports on the board page: how each is called, what answers on it, and what would mend it."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from studiowatch.board.candidates import may_be_board
from studiowatch.board.onlooker import PortFound
from studiowatch.service.board_view import BoardView
from studiowatch.speech.words import mark, say
from studiowatch.ui.models.board import short_port
from studiowatch.ui.models.tones import Tone

NO_PORTS = mark("No port was found: plug the board in by USB, with a cable that does not only charge.")
NOT_TRIED, NOT_YET = mark("Not tried: another board is read."), mark("Not tried yet.")
NO_BOARD_PORT = mark("Not listened to: a wireless link or a console of the computer itself.")

_COMMAND = re.compile(r"\((sudo [^)]+)\)")


@dataclass(frozen=True, slots=True, kw_only=True)
class PortRow:
    """One port.

    Attributes
    ----------
    name, detail : str
        What she calls it, and what the computer calls what is behind it, or "".
    state : str
        What answers, or why nothing does.
    command : str
        The one command that would mend it, or "".
    can_choose : bool
        Whether it could be read instead.
    """

    port: str
    name: str
    state: str
    tone: Tone
    detail: str = ""
    command: str = ""
    is_read: bool = False
    can_choose: bool = False


def port_rows(found: Sequence[PortFound], board: BoardView) -> tuple[PortRow, ...]:
    """Return the ports, the one that is read first."""
    is_any_read = any(one.is_read for one in found)
    return tuple(
        _row(one, board, say(NOT_TRIED if is_any_read else NOT_YET))
        for one in sorted(found, key=lambda one: not one.is_read)
    )


def _row(found: PortFound, board: BoardView, untried: str) -> PortRow:
    state, tone = _state(found, board, untried)
    command = _COMMAND.search(found.reason)
    described = found.port.description
    return PortRow(
        port=found.port.name,
        name=short_port(found.port.name),
        state=state,
        tone=tone,
        detail="" if described in {"", "n/a", found.port.name, short_port(found.port.name)} else described,
        command=command[1] if command else "",
        is_read=found.is_read,
        can_choose=not (found.is_read or found.is_tried) and may_be_board(found.port),
    )


def _state(found: PortFound, board: BoardView, untried: str) -> tuple[str, Tone]:
    if found.is_read:
        read = say("Read now: {format} at {baud} baud", format=found.format, baud=found.baud)
        said = [read, board.sensor if board.port == found.port.name else ""]
        return ", ".join(part for part in said if part), Tone.GOOD
    if found.is_tried:
        listening = say("Listening; nothing that can be read has come yet ({baud} baud).", baud=found.baud)
        return listening, Tone.CAUTION
    if not may_be_board(found.port):
        return say(NO_BOARD_PORT), Tone.MUTED
    return (found.reason, Tone.CAUTION) if found.reason else (untried, Tone.MUTED)
