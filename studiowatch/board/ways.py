"""Ways to listen to a port: how fast it is read, and what makes sense of its bytes."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Protocol

from studiowatch.board.events import BoardEvent, LineCounts
from studiowatch.board.intake import Intake
from studiowatch.board.port import BAUD


class LineIntake(Protocol):
    """From the bytes of one board to events."""

    @property
    def counts(self) -> LineCounts:
        """The tally after the last `feed`."""
        ...

    def feed(self, data: bytes, time_ms: int) -> list[BoardEvent]:
        """Return the events that `data`, read at `time_ms` (UTC ms), completes; any but `LineRefused` is sense."""
        ...

    def reopened(self) -> None:
        """Forget the half line of a port that was left."""
        ...


@dataclass(frozen=True, slots=True, kw_only=True)
class Way:
    """One way to listen.

    Attributes
    ----------
    format : str
        What it is called: "checked lines".
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
    """A way that was tried in vain, and the first bytes that came meanwhile, at most 4096."""

    way: Way
    data: bytes


ChooseWay = Callable[[Heard | None], Way | None]
"""Returns the first way to try for None, else the one to try after what was heard; None if there is no other."""

CHECKED_LINES = Way(format="checked lines", baud=BAUD, make_intake=Intake)


def checked_lines_only(heard: Heard | None) -> Way | None:
    """Choose the wire format, and nothing after it."""
    return CHECKED_LINES if heard is None else None
