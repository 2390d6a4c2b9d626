"""Ways to listen to a port: how fast it is read, and what makes sense of its bytes."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Protocol

from studiowatch.board.events import BoardEvent, LineCounts
from studiowatch.board.intake import Intake
from studiowatch.board.mapping import ColumnMapping
from studiowatch.board.port import BAUD, PortSeen
from studiowatch.speech.words import mark


class LineIntake(Protocol):
    """From the bytes of one board to events."""

    @property
    def counts(self) -> LineCounts:
        """The tally after the last `feed`."""
        ...

    def feed(self, data: bytes, time_ms: int) -> list[BoardEvent]:
        """Return the events that `data`, read at `time_ms` (UTC ms), completes."""
        ...

    def reopened(self) -> None:
        """Forget the half line of a port that was left."""
        ...

    def set_mapping(self, mapping: ColumnMapping) -> None:
        """Read by what she accepted of the columns; checked lines say themselves what theirs are."""
        ...


@dataclass(frozen=True, slots=True, kw_only=True)
class Way:
    """One way to listen.

    Attributes
    ----------
    format : str
        What it is called: "checked lines"; said by `say`.
    baud : int
        Bits a second, 8N1.
    make_intake : callable
        Returns a new intake for a board that was not read before.
    """

    format: str
    baud: int
    make_intake: Callable[[], LineIntake]


@dataclass(frozen=True, slots=True, kw_only=True)
class Heard:
    """What was heard of a port, to choose the next way by.

    Attributes
    ----------
    tried : tuple of Way
        The ways that were tried in vain, the last one last.
    data : bytes
        The newest bytes under the last one, at most 4096.
    """

    tried: tuple[Way, ...] = ()
    data: bytes = b""


ChooseWay = Callable[[PortSeen, Heard], Way | None]
"""Returns the way to try next on a port; None if there is no other. There is always a first one."""

CHECKED_LINES = Way(format=mark("checked lines"), baud=BAUD, make_intake=Intake)


def checked_lines_only(_port: PortSeen, heard: Heard) -> Way | None:
    """Choose the wire format, and nothing after it."""
    return None if heard.tried else CHECKED_LINES
