"""Pieces in the terminal: a line each, all of one, and as a document."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import partial
from itertools import pairwise

from studiowatch.service.happenings import iso
from studiowatch.service.local_time import local_date, when_text
from studiowatch.studio.corrected import corrections_between
from studiowatch.studio.pieces import Coat, Piece

Earlier = Sequence[tuple[int, Piece]]


def found(piece: Piece, asked: str) -> bool:
    """Return whether each word of `asked` stands in the title, support, notes or sheets of `piece`."""
    told = " ".join((piece.title, piece.support, piece.notes, *(coat.sheet for coat in piece.coats))).casefold()
    return all(word in told for word in asked.casefold().split())


def piece_line(piece: Piece) -> str:
    """Return one line on `piece`."""
    laid = sum(coat.laid_ms is not None for coat in piece.coats)
    due = "" if piece.due is None else f", due {piece.due}"
    return f"{piece.title}: {_size(piece)}, {laid} of {len(piece.coats)} coats laid{due}"


def piece_lines(piece: Piece, earlier: Earlier) -> Iterator[str]:
    """Yield all that was recorded of `piece`, coats and looks numbered as the calls name them."""
    yield piece_line(piece)
    yield f"painted on {piece.support}, dries {piece.orientation.value}"
    if piece.notes:
        yield f"notes: {piece.notes}"
    if piece.photo:
        yield f"photo: {piece.photo}"
    for number, coat in enumerate(piece.coats, start=1):
        yield f"{number:>3}  {_coat_words(coat)}"
        for look_number, look in enumerate(coat.looks, start=1):
            yield f"     look {look_number}: {look.finding.value} {_when(look.time_ms)}"
    for time_ms, words in _corrections(piece, earlier):
        yield f"corrected {_when(time_ms)}: {words}"


def piece_document(piece: Piece, earlier: Earlier = ()) -> dict[str, object]:
    """Return `piece` as a JSON document, with its corrections where its earlier forms are given."""
    return {
        "key": piece.key,
        "title": piece.title,
        "width_cm": piece.width_cm,
        "height_cm": piece.height_cm,
        "shape": piece.shape.value,
        "panels": piece.panels,
        "area_m2": round(piece.area_m2, 6),
        "support": piece.support,
        "orientation": piece.orientation.value,
        "due": None if piece.due is None else piece.due.isoformat(),
        "archived": piece.archived,
        "photo": piece.photo,
        "notes": piece.notes,
        "coats": [_coat_document(coat) for coat in piece.coats],
        "corrections": [{"time": iso(time_ms), "words": words} for time_ms, words in _corrections(piece, earlier)],
    }


def _corrections(piece: Piece, earlier: Earlier) -> Iterator[tuple[int, str]]:
    """Yield the corrections of `piece`, newest first."""
    forms = [*earlier, (0, piece)]
    for (time_ms, before), (_, after) in reversed(list(pairwise(forms))):
        said = corrections_between(
            before,
            after,
            earlier_labels=[f"coat {number} ({coat.sheet})" for number, coat in enumerate(before.coats, start=1)],
            later_labels=[f"coat {number} ({coat.sheet})" for number, coat in enumerate(after.coats, start=1)],
            when=partial(when_text, now_ms=time_ms),
        )
        yield from ((time_ms, words) for words in said)


def _size(piece: Piece) -> str:
    panels = f"{piece.panels} panels of " if piece.panels > 1 else ""
    shape = "round, " if piece.shape.value == "round" else ""
    return f"{shape}{panels}{piece.width_cm:g} × {piece.height_cm:g} cm"


def _coat_words(coat: Coat) -> str:
    if coat.laid_ms is None:
        return f"{coat.sheet}, to come"
    amounts = {"mL": coat.volume_mL, "g": coat.grams, "µm wet": coat.wet_um}
    amount = next((f", {value:g} {unit}" for unit, value in amounts.items() if value is not None), "")
    thinned = f", thinned by {coat.thinned_pct:g} %" if coat.thinned_pct else ""
    covered = "" if coat.covered_from_ms is None else f", covered {_when(coat.covered_from_ms)}"
    outcome = "" if coat.outcome is None else f", came out {coat.outcome.value}"
    return f"{coat.sheet}, laid {_when(coat.laid_ms)}{amount}{thinned}{covered}{outcome}"


def _coat_document(coat: Coat) -> dict[str, object]:
    return {
        "key": coat.key,
        "sheet": coat.sheet,
        "laid": _iso(coat.laid_ms),
        "volume_mL": coat.volume_mL,
        "grams": coat.grams,
        "wet_um": coat.wet_um,
        "thinned_pct": coat.thinned_pct,
        "covered_from": _iso(coat.covered_from_ms),
        "outcome": None if coat.outcome is None else coat.outcome.value,
        "seen": _iso(coat.seen_ms),
        "looks": [{"key": look.key, "time": iso(look.time_ms), "finding": look.finding.value} for look in coat.looks],
    }


def _iso(time_ms: int | None) -> str | None:
    return None if time_ms is None else iso(time_ms)


def _when(time_ms: int) -> str:
    return f"{local_date(time_ms)} {when_text(time_ms, time_ms)}"
