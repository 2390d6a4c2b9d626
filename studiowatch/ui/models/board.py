"""The line at the bottom: how the board does, and whether anything was lost."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.board.simulated import SIMULATED_NAME
from studiowatch.service.board_view import BoardView
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.units import chosen
from studiowatch.speech.words import in_turn, say
from studiowatch.studio.concern import Kind
from studiowatch.ui.models.times import ago_words
from studiowatch.ui.models.tones import Tone


@dataclass(frozen=True, slots=True, kw_only=True)
class BoardLine:
    """The words and their tone; `trouble` is what is wrong with the program or her records, or ""."""

    words: str
    tone: Tone
    trouble: str = ""


def board_line(snapshot: Snapshot) -> BoardLine:
    """Return what to say of the board now, and any trouble of our own."""
    board = snapshot.board
    trouble = in_turn(snapshot.own_fault, snapshot.store_trouble)
    if not board.connected:
        return _without_board(snapshot, trouble)
    last = say("no reading yet")
    if board.last_ms:
        last = say("last reading {ago}", ago=ago_words(board.last_ms, snapshot.time_ms))
    parts = [_where(board), board.sensor, last]
    if board.port == SIMULATED_NAME:
        parts = [say("Simulated board"), last]
    if board.trouble:
        parts.append(board.trouble)
    parts += _counts(board)
    tone = Tone.CAUTION if board.silent or board.trouble or board.overflowed else Tone.MUTED
    return BoardLine(words=" · ".join(part for part in parts if part), tone=tone, trouble=trouble)


def _where(board: BoardView) -> str:
    return say("Board on {port}", port=short_port(board.port)) if board.port else say("Board connected")


def _without_board(snapshot: Snapshot, trouble: str) -> BoardLine:
    typed = snapshot.room.typed
    if typed is None:
        words = snapshot.board.trouble or say("No board is connected: plug it in by USB, or type a reading.")
        return BoardLine(words=words, tone=Tone.CAUTION, trouble=trouble)
    is_missed = any(warning.kind == Kind.READING_OLD and warning.cleared_ms is None for warning in snapshot.warnings)
    last = say("room read {ago}", ago=ago_words(typed.time_ms, snapshot.time_ms))
    said = " · ".join((snapshot.board.trouble or say("No board"), last, say("air speed not measured")))
    return BoardLine(words=said, tone=Tone.CAUTION if is_missed else Tone.MUTED, trouble=trouble)


def may_type(snapshot: Snapshot) -> bool:
    """Return whether a typed reading would stand in for a board."""
    return snapshot.room.typed is not None or snapshot.board.silent or not snapshot.board.connected


def _counts(board: BoardView) -> list[str]:
    lost, faulty, overflowed = board.counts.lost, board.counts.faulty, board.overflowed
    said = []
    if lost:
        said.append(say("{count} lost", count=chosen().count(lost)))
    if faulty:
        said.append(say("{count} faulty", count=chosen().count(faulty)))
    if overflowed:
        said.append(say("{count} could not be kept up with", count=chosen().count(overflowed)))
    said = said or [say("none lost")]
    return said if board.checked else [*said, say("unchecked lines")]


def short_port(port: str) -> str:
    """Return "ttyUSB0" for "/dev/ttyUSB0"; the simulated board in her language, other names as they are."""
    return say(SIMULATED_NAME) if port == SIMULATED_NAME else port.removeprefix("/dev/")
