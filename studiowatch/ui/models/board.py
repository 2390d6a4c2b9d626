"""The line at the bottom: how the board does, and whether anything was lost."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.service.board_view import BoardView
from studiowatch.service.snapshot import Snapshot
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
    trouble = " ".join(part for part in (snapshot.own_fault, snapshot.store_trouble) if part)
    if not board.connected:
        return _without_board(snapshot, trouble)
    last = f"last reading {ago_words(board.last_ms, snapshot.time_ms)}" if board.last_ms else "no reading yet"
    parts = [f"Board on {short_port(board.port)}" if board.port else "Board connected", board.sensor, last]
    if board.trouble:
        parts.append(board.trouble)
    parts += _counts(board)
    tone = Tone.CAUTION if board.silent or board.trouble or board.overflowed else Tone.MUTED
    return BoardLine(words=" · ".join(part for part in parts if part), tone=tone, trouble=trouble)


def _without_board(snapshot: Snapshot, trouble: str) -> BoardLine:
    typed = snapshot.room.typed
    if typed is None:
        words = snapshot.board.trouble or "No board is connected: plug it in by USB, or type a reading."
        return BoardLine(words=words, tone=Tone.CAUTION, trouble=trouble)
    is_missed = any(warning.kind == Kind.READING_OLD and warning.cleared_ms is None for warning in snapshot.warnings)
    last = f"room read {ago_words(typed.time_ms, snapshot.time_ms)}"
    said = " · ".join((snapshot.board.trouble or "No board", last, "air speed not measured"))
    return BoardLine(words=said, tone=Tone.CAUTION if is_missed else Tone.MUTED, trouble=trouble)


def may_type(snapshot: Snapshot) -> bool:
    """Return whether a typed reading would stand in for a board."""
    return snapshot.room.typed is not None or snapshot.board.silent or not snapshot.board.connected


def _counts(board: BoardView) -> list[str]:
    counted = [
        (board.counts.lost, "lost"),
        (board.counts.faulty, "faulty"),
        (board.overflowed, "could not be kept up with"),
    ]
    said = [f"{count:,} {words}" for count, words in counted if count] or ["none lost"]
    return said if board.checked else [*said, "unchecked lines"]


def short_port(port: str) -> str:
    """Return "ttyUSB0" for "/dev/ttyUSB0"; other names as they are."""
    return port.removeprefix("/dev/")
