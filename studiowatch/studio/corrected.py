"""What a correction changed, in words: only what had been recorded before counts, not what is added to it."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from studiowatch.studio.pieces import Coat, Look, Piece

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
            said.append(f"{label}: not on; it was recorded as laid {when(coat.laid_ms)}")
        else:
            said += [f"{name}: {words}" for words in _of_coat(coat, now, when)]
    return tuple(said)


def _of_piece(earlier: Piece, later: Piece) -> Iterator[str]:
    if later.title != earlier.title:
        yield f"called {later.title} instead of {earlier.title}"
    size = _size(later), _size(earlier)
    if size[0] != size[1]:
        yield f"{size[0]} instead of {size[1]}"
    if earlier.due is not None and later.due != earlier.due:
        yield f"due {later.due or 'on no day'} instead of {earlier.due}"
    if later.support != earlier.support:
        yield f"painted on {later.support} instead of {earlier.support}"
    if later.orientation is not earlier.orientation:
        yield f"dries {later.orientation.value} instead of {earlier.orientation.value}"
    if earlier.notes and later.notes != earlier.notes:
        yield "the notes were changed"
    if earlier.photo and later.photo != earlier.photo:
        yield "the photo was changed"


def _size(piece: Piece) -> str:
    panels = "" if piece.panels == 1 else f"{piece.panels} panels of "
    return f"{panels}{piece.width_cm:g} × {piece.height_cm:g} cm, {piece.shape.value}"


def _of_coat(earlier: Coat, later: Coat, when: When) -> Iterator[str]:
    if later.laid_ms is not None and earlier.laid_ms is not None and later.laid_ms != earlier.laid_ms:
        yield f"laid {when(later.laid_ms)} instead of {when(earlier.laid_ms)}"
    if later.sheet != earlier.sheet:
        yield f"{later.sheet} instead of {earlier.sheet}"
    if _amount(later) != _amount(earlier):
        yield f"{_amount(later)} instead of {_amount(earlier)}"
    if later.thinned_pct != earlier.thinned_pct:
        yield f"thinned by {later.thinned_pct:g} % instead of {earlier.thinned_pct:g} %"
    yield from _of_cover(earlier, later, when)
    yield from _of_outcome(earlier, later)
    yield from _of_looks(earlier, later, when)


def _of_cover(earlier: Coat, later: Coat, when: When) -> Iterator[str]:
    covered_ms = later.covered_from_ms
    if earlier.covered_from_ms is not None and covered_ms != earlier.covered_from_ms:
        now = "not covered" if covered_ms is None else f"covered {when(covered_ms)}"
        yield f"{now} instead of {when(earlier.covered_from_ms)}"


def _of_outcome(earlier: Coat, later: Coat) -> Iterator[str]:
    if earlier.outcome is not None and later.outcome is not earlier.outcome:
        yield f"{'open how it came out' if later.outcome is None else later.outcome.value}, not {earlier.outcome.value}"


def _of_looks(earlier: Coat, later: Coat, when: When) -> Iterator[str]:
    there = {look.key: look for look in later.looks}
    for look in earlier.looks:
        now_look = there.get(look.key)
        if now_look is None:
            yield f"no look {when(look.time_ms)}; it was recorded as {look.finding.value}"
        elif now_look != look:
            yield f"{_look(now_look, when)} instead of {_look(look, when)}"


def _amount(coat: Coat) -> str:
    if coat.volume_mL is not None:
        return f"{coat.volume_mL:g} mL"
    if coat.grams is not None:
        return f"{coat.grams:g} g"
    return "as much as its sheet says" if coat.wet_um is None else f"{coat.wet_um:g} µm wet"


def _look(look: Look, when: When) -> str:
    return f"{look.finding.value} {when(look.time_ms)}"
