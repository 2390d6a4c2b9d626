"""Times from outside that lie ahead of the clock: refused as those that she types are, with the same slip allowed."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace

import numpy as np

from studiowatch.board.room_log_blocks import Event, RowsTaken
from studiowatch.board.room_log_cells import FaultKind
from studiowatch.board.room_log_rows import RowRefused, RowRepeated, RowTaken
from studiowatch.service.bench import AHEAD_MS
from studiowatch.speech.words import say
from studiowatch.store.chunk_check import moment
from studiowatch.studio.pieces import Coat, Piece


def that_have_been(events: Iterable[Event], now_ms: int) -> Iterator[Event]:
    """Yield what is in a log, rows ahead of the clock as refused ones.

    Parameters
    ----------
    now_ms : int
        UTC ms.
    """
    past = _Past(now_ms=now_ms)
    for event in events:
        match event:
            case RowsTaken():
                yield from past.rows(event)
            case RowTaken():
                time_ms = event.row.reading.time_ms
                yield event if time_ms <= past.latest_ms else past.refused(event.line, time_ms)
            case RowRepeated():
                yield RowRefused(line=event.line, kind=FaultKind.AHEAD, clause=past.clause) if past.clause else event
            case _:
                yield event


@dataclass(slots=True, kw_only=True)
class _Past:
    """Where a log leaves the past: its rows rise in time, so that after the first row ahead no other is taken."""

    now_ms: int
    clause: str = field(default="", init=False)  # on the last row that was refused

    @property
    def latest_ms(self) -> int:
        return self.now_ms + AHEAD_MS

    def rows(self, block: RowsTaken) -> Iterator[Event]:
        time_ms = block.columns.time_ms
        been = int(np.searchsorted(time_ms, self.latest_ms, "right"))
        if been:
            yield replace(block, columns=block.columns.part(0, been))
        for at, ahead_ms in enumerate(time_ms[been:].tolist(), start=block.first_line + been):
            yield self.refused(at, ahead_ms)

    def refused(self, line: int, time_ms: int) -> RowRefused:
        self.clause = say(
            "its time, {time}, lies ahead of the clock, {now}; correct the log's times or zone or the clock, "
            "or import it again once they have been.",
            time=moment(time_ms),
            now=moment(self.now_ms),
        )
        return RowRefused(line=line, kind=FaultKind.AHEAD, clause=self.clause)


def coats_ahead(pieces: Sequence[Piece], there: Sequence[Piece], now_ms: int) -> Iterator[str]:
    """Yield a sentence for each time of a coat in `pieces` that lies ahead of the clock.

    Pieces that are the same in the records, `there`, stay as they are: a clock that was wrong may have put them there.
    """
    for piece in pieces:
        if piece in there:
            continue
        for number, coat in enumerate(piece.coats, start=1):
            for name, time_ms in _times(coat):
                if time_ms is not None and time_ms > now_ms + AHEAD_MS:
                    yield say(
                        '"{title}", coat {number}: {field} is {time}, which lies ahead of the clock, {now}; '
                        "give a time that has been, or set the clock.",
                        title=piece.title,
                        number=number,
                        field=name,
                        time=moment(time_ms),
                        now=moment(now_ms),
                    )


def _times(coat: Coat) -> Iterator[tuple[str, int | None]]:
    """Yield the times of a coat, UTC ms, under their names in a studio file."""
    yield "laid", coat.laid_ms
    yield "covered_from", coat.covered_from_ms
    yield "seen", coat.seen_ms
    yield from (("time", look.time_ms) for look in coat.looks)
