"""Her other coats beside the one that is reviewed: the room since each was laid."""

from __future__ import annotations

from collections.abc import Iterator
from math import nan

import numpy as np

from studiowatch.service.review_log import ReviewedCoat
from studiowatch.service.reviewer import Reviewer
from studiowatch.speech.words import say
from studiowatch.studio.pieces import Coat, Outcome, Piece
from studiowatch.studio.review_views import OtherCoat

HOUR_MS = 3_600_000  # ms
BEFORE_MS, AFTER_MS = HOUR_MS // 2, 10 * HOUR_MS  # ms about the laying: until most coats have closed; judgement
MOST = 12  # other coats, the newest: more lines cannot be told apart; judgement
GAP_MS = 600_000  # ms without a reading at which a line breaks


def other_coats(reviewer: Reviewer, coat_key: str) -> tuple[OtherCoat, ...]:
    """Return the coat of this key first, then the newest others of the same kind of product that came to an end.

    Raises
    ------
    ReviewedCoat
        If that coat is not among the records, or has not been laid.
    """
    laid = [(piece, coat) for piece in reviewer.pieces for coat in piece.coats if coat.laid_ms is not None]
    this = next((pair for pair in laid if pair[1].key == coat_key), None)
    if this is None:
        raise ReviewedCoat(say("This coat is not among the records, or has not been laid yet."))
    kind = reviewer.shelf.stand_in(this[1].sheet).kind
    others = [
        (piece, coat)
        for piece, coat in laid
        if coat.key != coat_key and coat.outcome is not None and reviewer.shelf.stand_in(coat.sheet).kind is kind
    ]
    others.sort(key=lambda pair: -(pair[1].laid_ms or 0))
    return tuple(_beside(reviewer, piece, coat) for piece, coat in (this, *others[:MOST]))


def _beside(reviewer: Reviewer, piece: Piece, coat: Coat) -> OtherCoat:
    rows = np.array(list(_rows(reviewer, coat.laid_ms or 0)), dtype=np.float64).reshape(-1, 3)
    outcome = say("not recorded") if coat.outcome is None else coat.outcome.word
    return OtherCoat(
        words=f"{piece.title}, {outcome}",
        clouded=coat.outcome not in {None, Outcome.CLEAR},
        hours=rows[:, 0],
        temperature_C=rows[:, 1],
        humidity_pct=rows[:, 2],
    )


def _rows(reviewer: Reviewer, laid_ms: int) -> Iterator[tuple[float, float, float]]:
    """Yield hours since the laying, °C and %, with NaN where nobody read for long."""
    last_ms: int | None = None
    for minute in reviewer.log.minute_means(laid_ms - BEFORE_MS, laid_ms + AFTER_MS):
        reading = reviewer.known.corrected(minute)
        if last_ms is not None and reading.time_ms - last_ms > GAP_MS:
            yield ((last_ms + reading.time_ms) / 2 - laid_ms) / HOUR_MS, nan, nan
        last_ms = reading.time_ms
        yield (
            (reading.time_ms - laid_ms) / HOUR_MS,
            nan if reading.temperature_C is None else reading.temperature_C,
            nan if reading.humidity_pct is None else reading.humidity_pct,
        )
