"""The views of the pieces, kept from one snapshot to the next where nothing that they tell of has changed.

Snapshots go out every third second, while a wet film is dried every half minute and a resting one seldom:
most pieces are as they were. What a view is made of is frozen, so that it is told by identity whether it changed.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from datetime import date

from studiowatch.service.piece_view import PieceView
from studiowatch.service.rack import Rack
from studiowatch.service.rack_views import piece_view, weighing_advice
from studiowatch.speech.units import chosen
from studiowatch.studio.pieces import Piece

MINUTE_MS = 60_000  # ms, after which times are said anew in any case: "in 5 minutes", "today"


@dataclass(frozen=True, slots=True, kw_only=True)
class _Kept:
    """A view and all that it was made of; that holds on to the parts, so that no identity is given out twice."""

    view: PieceView
    made_of: tuple[object, ...]


@dataclass(slots=True)
class KeptViews:
    """Makes the views of the pieces on the rack, each anew only where it has to be.

    Whoever changes what no part shows (a sheet that is still to be laid, what was corrected) calls `forget`.
    """

    _kept: dict[str, _Kept] = field(default_factory=dict)
    _advice: dict[str, str] = field(default_factory=dict)
    _advised_of: tuple[object, ...] | None = None

    def forget(self) -> None:
        """Make all views anew the next time."""
        self._kept, self._advised_of = {}, None

    def views(self, rack: Rack, local_date: Callable[[int], date], now_ms: int) -> tuple[PieceView, ...]:
        """Return the views of all pieces on the rack; `local_date` turns UTC ms into her calendar day."""
        advice = self._weighing(rack)
        kept: dict[str, _Kept] = {}
        for piece in rack.on_rack():
            made_of = _parts(rack, piece, advice, now_ms)
            one = self._kept.get(piece.key)
            if one is None or not _same(one.made_of, made_of):
                one = _Kept(view=piece_view(rack, piece, local_date, now_ms, advice), made_of=made_of)
            kept[piece.key] = one
        self._kept = kept
        return tuple(one.view for one in kept.values())

    def _weighing(self, rack: Rack) -> dict[str, str]:
        """Return what weighing the bottles would narrow; that follows from the looks ahead, once in minutes."""
        parts: list[object] = [chosen()]
        for run in rack.runs.values():
            parts += [run, run.coat, run.standing, run.table, run.film.seal, run.is_cured]
        if self._advised_of is None or not _same(self._advised_of, tuple(parts)):
            self._advice, self._advised_of = weighing_advice(rack), tuple(parts)
        return self._advice


def _same(before: tuple[object, ...], now: tuple[object, ...]) -> bool:
    """Return whether both are made of the same parts: the very same, or equal numbers and words."""
    return len(before) == len(now) and all(
        one is other or (isinstance(one, int | str) and one == other) for one, other in zip(before, now, strict=True)
    )


def _parts(rack: Rack, piece: Piece, advice: Mapping[str, str], now_ms: int) -> tuple[object, ...]:
    """Return what the view of a piece is made of; of a run, what each reading may replace."""
    parts: list[object] = [piece, now_ms // MINUTE_MS, rack.stacks.curves, chosen()]
    for coat in piece.coats:
        run = rack.runs.get(coat.key)
        unwatched = rack.stacks.why_unwatched(coat, now_ms)
        parts += [rack.shelf.stand_in(coat.sheet), advice.get(coat.key, ""), unwatched, run]
        if run is not None:
            risk = None if run.risk is None else run.risk.film
            parts += [run.lived, run.film, run.at_ms, run.laid_ms, run.ahead, run.air, run.heeded, risk]
            parts += [run.film_trace, run.doubt, run.unlogged_ms, run.recoat_told]
    return tuple(parts)
