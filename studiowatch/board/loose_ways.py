"""Every way to listen to a port: checked lines first, then any sketch, at one rate after the other."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from studiowatch.board.baud import is_wrong_rate, rates_to_try
from studiowatch.board.loose_intake import LooseIntake
from studiowatch.board.mapping import ColumnMapping
from studiowatch.board.port import PortSeen
from studiowatch.board.ways import CHECKED_LINES, ChooseWay, Heard, Way
from studiowatch.speech.words import mark

UNCHECKED_LINES = mark("unchecked lines")


def every_way(kept: Callable[[PortSeen], ColumnMapping | None]) -> ChooseWay:
    """Return what chooses the next way to listen to a port.

    Parameters
    ----------
    kept : callable
        Returns the mapping that was kept of the board on a port, or None.
    """

    def choose(port: PortSeen, heard: Heard) -> Way | None:
        if not heard.tried:
            return CHECKED_LINES
        if not heard.data:
            return None  # nothing is nothing at any rate
        baud = heard.tried[-1].baud
        if not is_wrong_rate(heard.data) and heard.tried[-1].format != UNCHECKED_LINES:
            return _unchecked(baud, kept(port))
        rates = rates_to_try({way.baud for way in heard.tried})
        return _unchecked(rates[0], kept(port)) if rates else None

    return choose


def _unchecked(baud: int, mapping: ColumnMapping | None) -> Way:
    return Way(format=UNCHECKED_LINES, baud=baud, make_intake=partial(LooseIntake, mapping))
