"""What follows from the rack alone, kept between two readings: films are dried every half minute, not each second.

Whoever dries films or changes a piece says so, and what is asked for next is made anew.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import date

from studiowatch.coats.data_sheet import DataSheet
from studiowatch.service.kept_views import MINUTE_MS, KeptViews
from studiowatch.service.piece_view import ArchivedView, PieceView
from studiowatch.service.rack import Rack
from studiowatch.service.rack_coats import following_coat, vapour_in_room
from studiowatch.service.rack_risks import coats_at_risk
from studiowatch.service.rack_views import archived_views
from studiowatch.speech.units import Units, chosen
from studiowatch.studio.concern import CoatAtRisk


@dataclass(frozen=True, slots=True, kw_only=True)
class RackFacts:
    """What judges the room ask of the rack.

    Attributes
    ----------
    at_risk : tuple of CoatAtRisk
        The laid coats that the room may still spoil, in the order of the rack.
    next_sheets : tuple of DataSheet
        Of the coats that come next, by name.
    last_laid_ms : int or None
        UTC ms at which the newest coat was laid, on pieces that left the rack too; None without one.
    vapour : str
        In words, the coat that gives off solvent still, or "".
    """

    at_risk: tuple[CoatAtRisk, ...]
    next_sheets: tuple[DataSheet, ...]
    last_laid_ms: int | None
    vapour: str
    archived: tuple[ArchivedView, ...]


@dataclass(slots=True)
class RackSeen:
    """Keeps the views and the facts of `rack`; `local_date` turns UTC ms into her calendar day."""

    rack: Rack
    local_date: Callable[[int], date]
    _kept: KeptViews = field(default_factory=KeptViews)
    _facts: RackFacts | None = None
    _views: tuple[PieceView, ...] = ()
    _views_of: tuple[int, Units] | None = None

    def moved(self) -> None:
        """Look anew the next time: films were dried."""
        self._facts = self._views_of = None

    def forget(self) -> None:
        """Make all views anew the next time: something was done."""
        self._kept.forget()
        self.moved()

    @property
    def facts(self) -> RackFacts:
        """What follows from the rack as it is."""
        if self._facts is None:
            self._facts = _facts(self.rack)
        return self._facts

    def views(self, now_ms: int) -> tuple[PieceView, ...]:
        """Return the views of all pieces on the rack; times are said anew each minute."""
        of = (now_ms // MINUTE_MS, chosen())
        if of != self._views_of:
            self._views, self._views_of = self._kept.views(self.rack, self.local_date, now_ms), of
        return self._views


def _facts(rack: Rack) -> RackFacts:
    following = {coat.sheet for piece in rack.on_rack() if (coat := following_coat(piece)) is not None}
    laid_ms = (coat.laid_ms for piece in rack.pieces.values() for coat in piece.coats if coat.laid_ms is not None)
    return RackFacts(
        at_risk=tuple(coats_at_risk(rack)),
        next_sheets=tuple(rack.shelf.stand_in(name) for name in sorted(following)),
        last_laid_ms=max(laid_ms, default=None),
        vapour=vapour_in_room(rack),
        archived=archived_views(rack),
    )
