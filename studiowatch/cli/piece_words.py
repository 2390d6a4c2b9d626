"""Pieces in the terminal: a line each, all of one, and as a document."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import partial
from itertools import pairwise

from studiowatch.cli import figures
from studiowatch.cli.recorded_words import told
from studiowatch.service.happenings import iso
from studiowatch.service.local_time import local_date, when_text
from studiowatch.speech.dates import day_of_year
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.studio.corrected import corrections_between
from studiowatch.studio.pieces import Coat, Piece, Shape
from studiowatch.studio.supports import support_words

Earlier = Sequence[tuple[int, Piece]]


def found(piece: Piece, asked: str) -> bool:
    """Return whether each word of `asked` stands in the title, support, notes or sheets of `piece`."""
    text = " ".join((piece.title, piece.support, piece.notes, *(coat.sheet for coat in piece.coats))).casefold()
    return all(word in text for word in asked.casefold().split())


def piece_line(piece: Piece) -> str:
    """Return one line on `piece`."""
    laid = sum(coat.laid_ms is not None for coat in piece.coats)
    told = [_size(piece), say("{laid} of {all} coats laid", laid=laid, all=len(piece.coats))]
    if piece.due is not None:
        told.append(say("due {day}", day=day_of_year(piece.due)))
    return f"{piece.title}: {', '.join(told)}"


def piece_lines(piece: Piece, earlier: Earlier) -> Iterator[str]:
    """Yield all that was recorded of `piece`, coats and looks numbered as the calls name them."""
    yield piece_line(piece)
    yield say(
        "painted on {support}, dries {orientation}",
        support=support_words(piece.support),
        orientation=told(piece.orientation),
    )
    if piece.notes:
        yield say("notes: {notes}", notes=piece.notes)
    if piece.photo:
        yield say("photo: {file}", file=piece.photo)
    for number, coat in enumerate(piece.coats, start=1):
        yield f"{number:>3}  {_coat_words(coat)}"
        for look_number, look in enumerate(coat.looks, start=1):
            words = say(
                "look {number}: {finding} {time}",
                number=look_number,
                finding=told(look.finding),
                time=_when(look.time_ms),
            )
            yield f"     {words}"
    for time_ms, words in _corrections(piece, earlier):
        yield say("corrected {time}: {correction}", time=_when(time_ms), correction=words)


def piece_document(piece: Piece, earlier: Earlier | None = None) -> dict[str, object]:
    """Return `piece` as a JSON document, with its corrections where its earlier forms are given."""
    document: dict[str, object] = {
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
    }
    if earlier is not None:
        document["corrections"] = [
            {"time": iso(time_ms), "words": words} for time_ms, words in _corrections(piece, earlier)
        ]
    return document


def _corrections(piece: Piece, earlier: Earlier) -> Iterator[tuple[int, str]]:
    """Yield the corrections of `piece`, newest first."""
    forms = [*earlier, (0, piece)]
    for (time_ms, before), (_, after) in reversed(list(pairwise(forms))):
        said = corrections_between(
            before,
            after,
            earlier_labels=_labels(before),
            later_labels=_labels(after),
            when=partial(when_text, now_ms=time_ms),
        )
        yield from ((time_ms, words) for words in said)


def _size(piece: Piece) -> str:
    size = chosen().size(piece.width_cm, piece.height_cm)
    if piece.panels > 1:
        return say("{number} panels of {size}", number=piece.panels, size=size)
    return say("round, {size}", size=size) if piece.shape is Shape.ROUND else size


def _coat_words(coat: Coat) -> str:
    if coat.laid_ms is None:
        return say("{sheet}, to come", sheet=coat.sheet)
    parts = [coat.sheet, say("laid {time}", time=_when(coat.laid_ms)), _amount(coat)]
    if coat.thinned_pct:
        parts.append(say("thinned by {share} %", share=chosen().plain(coat.thinned_pct)))
    if coat.covered_from_ms is not None:
        parts.append(say("covered {time}", time=_when(coat.covered_from_ms)))
    if coat.outcome is not None:
        parts.append(say("came out {outcome}", outcome=told(coat.outcome)))
    return ", ".join(part for part in parts if part)


def _amount(coat: Coat) -> str:
    if coat.volume_mL is not None:
        return figures.volume(coat.volume_mL)
    if coat.grams is not None:
        return f"{chosen().plain(coat.grams)} g"
    return "" if coat.wet_um is None else say("{film} wet", film=figures.film(coat.wet_um))


def _labels(piece: Piece) -> list[str]:
    return [
        say("coat {number} ({sheet})", number=number, sheet=coat.sheet)
        for number, coat in enumerate(piece.coats, start=1)
    ]


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
    return f"{day_of_year(local_date(time_ms))} {when_text(time_ms, time_ms)}"
