"""What the board page says of the board that is read: its health, its counts, its lines."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import tzinfo

from studiowatch.board.onlooker import HeardLine
from studiowatch.service.board_view import BoardView
from studiowatch.service.snapshot import Snapshot
from studiowatch.studio.words import Level
from studiowatch.ui.models.times import ago_words, local
from studiowatch.ui.models.tones import Tone

HEALTHY = "The sensor's readings look right."
NOTHING_YET = "No reading has come yet."
NO_BOARD = "No board is connected: plug it in by USB."
UNCHECKED = (
    "Unchecked lines: this board's own sketch sends no checksum, so a byte lost on the way can pass for a reading."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Health:
    """How the board does, one sentence; `is_good` puts a tick before it."""

    level: Level
    words: str

    @property
    def is_good(self) -> bool:
        """Whether nothing is wrong."""
        return self.words == HEALTHY


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
        return Health(level=Level.CAUTION, words=board.trouble or NO_BOARD)
    for wrong in (board.trouble, _silence(board, snapshot.time_ms), board.health):
        if wrong:
            return Health(level=Level.CAUTION, words=wrong)
    return Health(level=Level.CALM, words=HEALTHY if board.last_ms is not None else NOTHING_YET)


def _silence(board: BoardView, now_ms: int) -> str:
    if not board.silent or board.last_ms is None:
        return ""
    return f"The board fell silent: its last reading came {ago_words(board.last_ms, now_ms)}; check its plug."


def line_counts(board: BoardView) -> tuple[Count, ...]:
    """Return the counts since the program was started."""
    counts = board.counts
    kinds = [
        (counts.good, "good lines", Tone.INK),
        (counts.faulty, "refused", Tone.CAUTION),
        (counts.lost, "lost on the way", Tone.CAUTION),
        (counts.resets, "restarts", Tone.INK),
    ]
    if board.overflowed:
        kinds.append((board.overflowed, "not kept up with", Tone.CAUTION))
    return tuple(
        Count(value=f"{value:,}", name=name, tone=tone if value else Tone.MUTED) for value, name, tone in kinds
    )


def last_words(snapshot: Snapshot) -> str:
    """Return how old the last reading is."""
    last_ms = snapshot.board.last_ms
    return NOTHING_YET if last_ms is None else f"Last reading {ago_words(last_ms, snapshot.time_ms)}."


def line_words(line: HeardLine, zone: tzinfo | None = None) -> str:
    """Return a line with the time at which it came."""
    return f"{local(line.time_ms, zone):%H:%M:%S}  {line.text}"
