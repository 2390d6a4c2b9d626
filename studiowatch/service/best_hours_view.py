"""The best hours to lay a coat, as the window and the terminal see them."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.studio.best_hours import StartHour, Stretch


@dataclass(frozen=True, slots=True, kw_only=True)
class BestHoursView:
    """When to lay the next coat of one sheet.

    Attributes
    ----------
    sheet, title : str
        Its name and its title.
    piece_keys, piece_titles : tuple of str
        The pieces that wait for it.
    made_ms : int
        When it was worked out, UTC ms.
    ready_ms : int or None
        When the first of them is ready for it, UTC ms; None where that is not in sight.
    hours : tuple of StartHour
        All hours of the next two days; empty while nothing is known.
    good : tuple of Stretch
        The good ones merged, the best first.
    unknown : str
        Why nothing is told yet, or "".
    caution : str
        What goes before all hours, or "".
    lines : tuple of str
        The best three in words, the sure ones before those that are only likely and either by time, or that there is
        none.
    aside_lines : tuple of str
        Why the others are not good, in words, by time.
    next_line : str
        The next good hours, and why not sooner, in one line; "" while nothing is known.
    """

    sheet: str
    title: str
    piece_keys: tuple[str, ...]
    piece_titles: tuple[str, ...]
    made_ms: int
    ready_ms: int | None = None
    hours: tuple[StartHour, ...] = ()
    good: tuple[Stretch, ...] = ()
    unknown: str = ""
    caution: str = ""
    lines: tuple[str, ...] = ()
    aside_lines: tuple[str, ...] = ()
    next_line: str = ""
