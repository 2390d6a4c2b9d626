"""What the board page says of the board that is read: its health, its counts, its lines."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import tzinfo

from studiowatch.board.onlooker import HeardLine
from studiowatch.service.board_view import BoardView
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio.words import Level
from studiowatch.ui.models.times import ago_words, local
from studiowatch.ui.models.tones import Tone

HEALTHY = mark("The sensor's readings look right.")
NOTHING_YET = mark("No reading has come yet.")
NO_BOARD = mark("No board is connected: plug it in by USB.")
UNCHECKED = mark(
    "Unchecked lines: this board's own sketch sends no checksum, so a byte lost on the way can pass for a reading."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Health:
    """How the board does, one sentence; `is_good`, that nothing is wrong, puts a tick before it."""

    level: Level
    words: str
    is_good: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Count:
    """One of the counts of lines."""

    value: str
    name: str
    tone: Tone


def board_health(snapshot: Snapshot) -> Health:
    """Return the most urgent that is wrong with the board or its sensor, or that nothing is."""
    board = snapshot.board
    if not board.connected:
        return Health(level=Level.CAUTION, words=board.trouble or say(NO_BOARD))
    for wrong in (board.trouble, _silence(board, snapshot.time_ms), board.health):
        if wrong:
            return Health(level=Level.CAUTION, words=wrong)
    if board.last_ms is None:
        return Health(level=Level.CALM, words=say(NOTHING_YET))
    return Health(level=Level.CALM, words=say(HEALTHY), is_good=True)


def _silence(board: BoardView, now_ms: int) -> str:
    if not board.silent or board.last_ms is None:
        return ""
    ago = ago_words(board.last_ms, now_ms)
    return say("The board fell silent: its last reading came {ago}; check its plug.", ago=ago)


def line_counts(board: BoardView) -> tuple[Count, ...]:
    """Return the counts since the program was started."""
    counts = board.counts
    kinds = [
        (counts.good, say("good lines"), Tone.INK),
        (counts.faulty, say("refused"), Tone.CAUTION),
        (counts.lost, say("lost on the way"), Tone.CAUTION),
        (counts.resets, say("restarts"), Tone.INK),
    ]
    if board.overflowed:
        kinds.append((board.overflowed, say("not kept up with"), Tone.CAUTION))
    return tuple(
        Count(value=chosen().count(value), name=name, tone=tone if value else Tone.MUTED) for value, name, tone in kinds
    )


def last_words(snapshot: Snapshot) -> str:
    """Return how old the last reading is."""
    last_ms = snapshot.board.last_ms
    if last_ms is None:
        return say(NOTHING_YET)
    return say("Last reading {ago}.", ago=ago_words(last_ms, snapshot.time_ms))


def line_words(line: HeardLine, zone: tzinfo | None = None) -> str:
    """Return a line with the time at which it came."""
    return f"{chosen().clock(local(line.time_ms, zone), seconds=True)}  {line.text}"
