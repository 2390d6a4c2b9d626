"""The history of corrections, piece by piece: read from the records when it is first asked for, then kept up."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from functools import partial
from itertools import islice

from studiowatch.service.local_time import when_text
from studiowatch.service.piece_view import CorrectionView
from studiowatch.service.ports import Records
from studiowatch.speech.units import Units, chosen
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.corrected import corrections_between
from studiowatch.studio.pieces import Piece

MOST = 60  # corrections of one piece that are shown: the records keep all; assumption


@dataclass(slots=True)
class CorrectionDesk:
    """Holds what was corrected; `labels` gives the short names of a piece's coats.

    Attributes
    ----------
    trouble : str
        One sentence while the records cannot be read, else "": what was known before is shown meanwhile.
    """

    records: Records
    labels: Callable[[Piece], Sequence[str]]
    trouble: str = ""
    _known: dict[str, tuple[Piece, Units, tuple[CorrectionView, ...]]] = field(default_factory=dict)

    def forget(self) -> None:
        """Read everything anew."""
        self._known.clear()

    def views(self, piece: Piece) -> tuple[CorrectionView, ...]:
        """Return what was corrected on `piece`, newest first."""
        known = self._known.get(piece.key)
        units = chosen()
        if known is not None and known[:2] == (piece, units):
            return known[2]
        try:
            views = tuple(islice(self._read(piece), MOST))
        except StoreTrouble as trouble:
            self.trouble = str(trouble)
            return () if known is None else known[2]
        self.trouble = ""
        self._known[piece.key] = piece, units, views
        return views

    def _read(self, piece: Piece) -> Iterator[CorrectionView]:
        later = piece
        for time_ms, earlier in reversed(self.records.corrections(piece.key)):
            said = corrections_between(
                earlier,
                later,
                earlier_labels=self.labels(earlier),
                later_labels=self.labels(later),
                when=partial(when_text, now_ms=time_ms),
            )
            yield from (CorrectionView(time_ms=time_ms, words=words) for words in said)
            later = earlier
