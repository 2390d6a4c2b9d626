"""What a board source tells the keeper: frozen values handed from the reader's thread."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.board.mapping import ColumnMapping
from studiowatch.room.readings import Reading


@dataclass(frozen=True, slots=True, kw_only=True)
class LineCounts:
    """Lines since the source was started; nothing vanishes without being counted here.

    Attributes
    ----------
    good : int
        Lines accepted.
    faulty : int
        Lines refused: wrong checksum, wrong grammar, over-long, or noise between lines.
    lost : int
        Lines that the board numbered and that never came.
    resets : int
        Times the board started again, or began another numbering.
    troubles : int
        Good lines in which the board told a trouble of its own.
    """

    good: int = 0
    faulty: int = 0
    lost: int = 0
    resets: int = 0
    troubles: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class PortOpened:
    """A port was opened and lines may come; `board` is what the board on it is known by, `PortSeen.identity`."""

    time_ms: int
    port: str
    board: str


@dataclass(frozen=True, slots=True, kw_only=True)
class PortLost:
    """The port vanished, could not be opened, or was closed; `reason` is one sentence for her."""

    time_ms: int
    port: str
    reason: str


@dataclass(frozen=True, slots=True, kw_only=True)
class BoardNamed:
    """The board said hello: who it is and which sensor it carries."""

    time_ms: int
    board_id: str
    sensor: str
    sensor_serial: str
    firmware: str
    boots: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadingArrived:
    """A checked reading, with the counts after it."""

    reading: Reading
    counts: LineCounts


@dataclass(frozen=True, slots=True, kw_only=True)
class BoardTrouble:
    """The board told a trouble of its own: nothing that it measured before is known to hold.

    Attributes
    ----------
    code : str
        What it concerns, in the board's own word (``bus``), or "".
    message : str
        What happened, in the board's own word (``timeout``), or "".
    """

    time_ms: int
    code: str
    message: str
    counts: LineCounts


@dataclass(frozen=True, slots=True, kw_only=True)
class LineRefused:
    """Bytes that are no line of the wire format; `quoted` shows them, cut to a readable length."""

    time_ms: int
    reason: str
    quoted: str
    counts: LineCounts


@dataclass(frozen=True, slots=True, kw_only=True)
class MappingAsked:
    """What the columns of an unchecked board mean was understood so far, or anew; she is shown it and asked the rest.

    Attributes
    ----------
    samples : tuple of str
        The newest lines that hold numbers, at most 5.
    """

    time_ms: int
    mapping: ColumnMapping
    samples: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class MappingHolds:
    """The columns of an unchecked board are read by a mapping that she accepted, now or before."""

    time_ms: int
    mapping: ColumnMapping


@dataclass(frozen=True, slots=True, kw_only=True)
class NumbersSeen:
    """A line of an unchecked board as it came, told until its mapping is accepted: for the column tests."""

    time_ms: int
    numbers: tuple[tuple[str, float | None], ...]


BoardEvent = (
    PortOpened
    | PortLost
    | BoardNamed
    | ReadingArrived
    | BoardTrouble
    | LineRefused
    | MappingAsked
    | MappingHolds
    | NumbersSeen
)
