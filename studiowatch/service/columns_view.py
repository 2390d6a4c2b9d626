"""What an unchecked board's columns mean, as she is shown it."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.board.mapping import ColumnMapping


@dataclass(frozen=True, slots=True, kw_only=True)
class ColumnsView:
    """The columns of a board that sends unchecked lines.

    Attributes
    ----------
    accepted : bool
        Whether she accepted them: only then are there readings.
    samples : tuple of str
        Some of the lines, as they came, while she has not accepted.
    numbers : tuple of (str, float or None)
        The newest line's numbers by column, while she has not accepted.
    numbers_ms : int or None
        When that line came, UTC ms.
    """

    mapping: ColumnMapping
    accepted: bool = False
    samples: tuple[str, ...] = ()
    numbers: tuple[tuple[str, float | None], ...] = ()
    numbers_ms: int | None = None
