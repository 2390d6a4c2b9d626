"""What a correction changed, in words: only what had been recorded before counts, not what is added to it."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from datetime import date

from studiowatch.speech.dates import day_of_year
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.studio.labels import measured_film_text, measured_text
from studiowatch.studio.pieces import Coat, Look, Piece
from studiowatch.studio.supports import support_words

When = Callable[[int], str]


def corrections_between(
    earlier: Piece, later: Piece, *, earlier_labels: Sequence[str], later_labels: Sequence[str], when: When
) -> tuple[str, ...]:
    """Return a sentence without its stop for each thing that `later` has otherwise than `earlier`.

    Parameters
    ----------
    earlier_labels, later_labels : sequence of str
        Short names of the coats of each.
    when : callable
        Turns UTC ms into her wall clock.
    """
    there = dict(zip((coat.key for coat in later.coats), zip(later.coats, later_labels, strict=True), strict=True))
    said = list(_of_piece(earlier, later))
    for coat, label in zip(earlier.coats, earlier_labels, strict=True):
        if coat.laid_ms is None:
            continue
        now, name = there.get(coat.key, (None, label))
        if now is None or now.laid_ms is None:
            said.append(say("{label}: not on; it was recorded as laid {time}", label=label, time=when(coat.laid_ms)))
        else:
            said += [f"{name}: {words}" for words in _of_coat(coat, now, when)]
    return tuple(said)


def _of_piece(earlier: Piece, later: Piece) -> Iterator[str]:
    if later.title != earlier.title:
        yield say("called {now} instead of {before}", now=later.title, before=earlier.title)
    size = _size(later), _size(earlier)
    if size[0] != size[1]:
        yield say("{now} instead of {before}", now=size[0], before=size[1])
    if earlier.due is not None and later.due != earlier.due:
        yield _due(earlier.due, later.due)
    if later.support != earlier.support:
        yield say(
            "painted on {now} instead of {before}",
            now=support_words(later.support),
            before=support_words(earlier.support),
        )
    if later.orientation is not earlier.orientation:
        yield say("dries {now} instead of {before}", now=later.orientation.word, before=earlier.orientation.word)
    if earlier.notes and later.notes != earlier.notes:
        yield say("the notes were changed")
    if earlier.photo and later.photo != earlier.photo:
        yield say("the photo was changed")


def _size(piece: Piece) -> str:
    size = chosen().size(piece.width_cm, piece.height_cm)
    if piece.panels == 1:
        return f"{size}, {piece.shape.word}"
    return say("{number} panels of {size}, {shape}", number=piece.panels, size=size, shape=piece.shape.word)


def _due(earlier: date, later: date | None) -> str:
    before = day_of_year(earlier)
    if later is None:
        return say("due on no day instead of {before}", before=before)
    return say("due {now} instead of {before}", now=day_of_year(later), before=before)


def _of_coat(earlier: Coat, later: Coat, when: When) -> Iterator[str]:
    if later.laid_ms is not None and earlier.laid_ms is not None and later.laid_ms != earlier.laid_ms:
        yield say("laid {now} instead of {before}", now=when(later.laid_ms), before=when(earlier.laid_ms))
    if later.sheet != earlier.sheet:
        yield say("{now} instead of {before}", now=later.sheet, before=earlier.sheet)
    if _amount(later) != _amount(earlier):
        yield say("{now} instead of {before}", now=_amount(later), before=_amount(earlier))
    if later.thinned_pct != earlier.thinned_pct:
        now, before = chosen().plain(later.thinned_pct), chosen().plain(earlier.thinned_pct)
        yield say("thinned by {now} % instead of {before} %", now=now, before=before)
    yield from _of_cover(earlier, later, when)
    yield from _of_outcome(earlier, later)
    yield from _of_looks(earlier, later, when)


def _of_cover(earlier: Coat, later: Coat, when: When) -> Iterator[str]:
    covered_ms = later.covered_from_ms
    if earlier.covered_from_ms is not None and covered_ms != earlier.covered_from_ms:
        before = when(earlier.covered_from_ms)
        if covered_ms is None:
            yield say("not covered instead of {before}", before=before)
        else:
            yield say("covered {now} instead of {before}", now=when(covered_ms), before=before)


def _of_outcome(earlier: Coat, later: Coat) -> Iterator[str]:
    if earlier.outcome is not None and later.outcome is not earlier.outcome:
        before = earlier.outcome.word
        if later.outcome is None:
            yield say("open how it came out, not {before}", before=before)
        else:
            yield say("{now}, not {before}", now=later.outcome.word, before=before)


def _of_looks(earlier: Coat, later: Coat, when: When) -> Iterator[str]:
    there = {look.key: look for look in later.looks}
    for look in earlier.looks:
        now_look = there.get(look.key)
        if now_look is None:
            yield say(
                "no look {time}; it was recorded as {finding}", time=when(look.time_ms), finding=look.finding.word
            )
        elif now_look != look:
            yield say("{now} instead of {before}", now=_look(now_look, when), before=_look(look, when))


def _amount(coat: Coat) -> str:
    if coat.volume_mL is not None:
        return measured_text(coat.volume_mL)
    if coat.grams is not None:
        return f"{chosen().plain(coat.grams)} g"
    if coat.wet_um is None:
        return say("as much as its sheet says")
    return say("{film} wet", film=measured_film_text(coat.wet_um))


def _look(look: Look, when: When) -> str:
    return f"{look.finding.word} {when(look.time_ms)}"
