"""Room logs (CSV): every row becomes a reading, or the log is refused with all its faults by line.

RFC 4180 with a header. Columns: ``time`` (ISO 8601 with zone), ``time_unix`` (s) or ``time_unix_ms``,
``temperature_C``, ``humidity_pct``, ``air_speed_m_s``; optional ``air_signal_mV``, ``surface_C``, ``pressure_Pa``,
``particles_per_m3_5um``, ``cover`` (0 or 1). An empty cell is no reading. Other units have names of their own, such
as ``temperature_F``. With semicolons or tabs between the cells, numbers may have decimal commas.
"""

from __future__ import annotations

import io
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from io import BufferedReader
from pathlib import Path
from typing import TextIO

from studiowatch.board.room_log_cells import FaultKind
from studiowatch.board.room_log_header import LogForm
from studiowatch.board.room_log_rows import (
    HeaderRefused,
    Remark,
    RoomRow,
    RowRefused,
    RowRepeated,
    RowTaken,
    log_events,
    same_time,
)
from studiowatch.room.readings import Reading
from studiowatch.speech.words import mark, say

__all__ = ["LogForm", "RoomLog", "RoomLogFaults", "RoomRow", "log_text", "open_room_log", "read_room_log"]

SHOWN_OF_A_KIND = 5  # faults of one kind told one by one
SHOWN_SENTENCES = 50  # of faults or notes of one log; the rest are counted
_PLAIN = LogForm()
_OTHER_FILES = (
    # first bytes, and what to say of such a file; RFC 1952 section 2.3.1, Unicode 15 section 2.6 table 2-4
    (b"\x1f\x8b", mark("{origin} is packed with gzip, which is no room log; unpack it first.")),
    (
        b"PK\x03\x04",
        mark("{origin} is a ZIP archive or a spreadsheet, which is no room log; save the sheet as CSV in UTF-8."),
    ),
    (b"\xff\xfe", mark("{origin} is text in UTF-16, which is no room log; save it as UTF-8.")),
    (b"\xfe\xff", mark("{origin} is text in UTF-16, which is no room log; save it as UTF-8.")),
    (b"\x00\x00\xfe\xff", mark("{origin} is text in UTF-32, which is no room log; save it as UTF-8.")),
)


class RoomLogFaults(Exception):  # noqa: N818 - these are faults of a file, listed together
    """A room log that cannot be taken as it is.

    Attributes
    ----------
    sentences : tuple of str
        One for each fault, with file, line, value and what is allowed: the first few of each kind; the rest counted.
    """

    def __init__(self, sentences: tuple[str, ...]) -> None:
        super().__init__("\n".join(sentences))
        self.sentences = sentences


@dataclass(frozen=True, slots=True, kw_only=True)
class RoomLog:
    """A whole log, rising in time; `notes` are sentences on gaps and on columns that are not used."""

    origin: str
    rows: tuple[RoomRow, ...]
    notes: tuple[str, ...] = ()

    def readings(self) -> tuple[Reading, ...]:
        """Return the readings alone."""
        return tuple(row.reading for row in self.rows)


def open_room_log(path: Path, form: LogForm = _PLAIN) -> RoomLog:
    """Read the log in the file `path`; see `read_room_log`. Raises OSError if the file cannot be read."""
    with path.open("rb") as file, log_text(file, str(path)) as lines:
        return read_room_log(lines, str(path), form)


@contextmanager
def log_text(file: BufferedReader, origin: str) -> Iterator[TextIO]:
    """Give a log's bytes as lines of text.

    Raises
    ------
    RoomLogFaults
        If its first bytes are those of something else.
    """
    start = file.peek(4)[:4]
    for first, sentence in _OTHER_FILES:
        if start.startswith(first):
            raise RoomLogFaults((say(sentence, origin=origin),))
    if 0 in start:
        sentence = say("{origin} begins with zero bytes, so it is no text in UTF-8; save it as UTF-8.", origin=origin)
        raise RoomLogFaults((sentence,))
    text = io.TextIOWrapper(file, encoding="utf-8-sig", errors="backslashreplace", newline="")
    try:
        yield text
    finally:
        text.detach()


def read_room_log(lines: Iterable[str], origin: str, form: LogForm = _PLAIN) -> RoomLog:
    """Read a log from its `lines`.

    Parameters
    ----------
    lines : iterable of str
        As from a file opened with ``newline=""``.
    origin : str
        What the sentences call it: the file's name.
    form : LogForm
        How it is to be read.

    Raises
    ------
    RoomLogFaults
        If anything in it is wrong. All rows are looked at first, so that all faults are told at once.
    """
    rows: list[RoomRow] = []
    faults: list[tuple[str, FaultKind | None]] = []
    notes: list[str] = []
    for event in log_events(lines, form):
        match event:
            case RowTaken():
                rows.append(event.row)
            case RowRefused():
                faults.append((_of_line(origin, event.line, event.clause), event.kind))
            case HeaderRefused():
                faults.append((_of_line(origin, 1, event.clause), None))
            case RowRepeated():
                clause = same_time(event.time, event.first_line)
                faults.append((_of_line(origin, event.line, clause), FaultKind.SAME_TIME))
            case Remark():
                notes.append(f"{origin}{', ' if event.is_of_line else ': '}{event.sentence}")
    if faults:
        raise RoomLogFaults(_first_sentences(list(_few_of_each(faults)), mark("… and {count} more faults.")))
    return RoomLog(origin=origin, rows=tuple(rows), notes=_first_sentences(notes, mark("… and {count} more notes.")))


def _of_line(origin: str, line: int, clause: str) -> str:
    return say("{origin}, line {line}: {clause}", origin=origin, line=line, clause=clause)


def _few_of_each(faults: Sequence[tuple[str, FaultKind | None]]) -> Iterator[str]:
    """Yield the first few faults of each kind, and then how many more of it there are: a whole log may have one."""
    seen: Counter[FaultKind] = Counter()
    for sentence, kind in faults:
        if kind is not None:
            seen[kind] += 1
        if kind is None or seen[kind] <= SHOWN_OF_A_KIND:
            yield sentence
    for kind, count in seen.items():
        if count > SHOWN_OF_A_KIND:
            yield say(
                "… and {more} more with the same fault ({kind}), {count} in all.",
                more=count - SHOWN_OF_A_KIND,
                kind=say(kind.value),
                count=count,
            )


def _first_sentences(sentences: Sequence[str], rest: str) -> tuple[str, ...]:
    if len(sentences) <= SHOWN_SENTENCES:
        return tuple(sentences)
    return (*sentences[:SHOWN_SENTENCES], say(rest, count=len(sentences) - SHOWN_SENTENCES))
