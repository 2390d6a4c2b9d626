"""Records made by a wall clock that was then set: the coats they tell of are as old as they were.

A coat laid by the clock before it was set has its times moved along with it. One of an earlier session keeps them, so
the hours that the clock left out lie between its laying and now, and a note says that nobody lived them: a restart
dries no coat through hours that were not there. Its run goes by the clock as it is now, so all that is compared with
the film (tests, cover) is taken by that too: the run has a copy of its own of the coat's times.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Collection, Iterable, Sequence
from dataclasses import dataclass, replace

from studiowatch.studio.pieces import Coat, Piece

CLOCK_STEP = "clock-step"  # the kind of note that keeps a step of the clock for a restart


@dataclass(frozen=True, slots=True, kw_only=True)
class ClockStep:
    """A step of the wall clock.

    Attributes
    ----------
    time_ms : int
        UTC ms right after it.
    step_ms : int
        By how much it was set forward, ms; below 0 back.
    stayed : frozenset of str
        Keys of the coats that were on, and whose times were not moved along.
    """

    time_ms: int
    step_ms: int
    stayed: frozenset[str]

    def written(self) -> str:
        """Return it as the text of its note."""
        return json.dumps({"step_ms": self.step_ms, "stayed": sorted(self.stayed)})


def clock_steps(notes: Iterable[tuple[int, str]]) -> list[ClockStep]:
    """Return the steps of the clock from their notes, UTC ms and text, in the order in which they were made.

    What cannot be read is left out: then the hours count as they did before there were such notes.
    """
    steps = []
    for time_ms, text in notes:
        try:
            told = json.loads(text)
            steps.append(ClockStep(time_ms=time_ms, step_ms=int(told["step_ms"]), stayed=frozenset(told["stayed"])))
        except (ValueError, KeyError, TypeError, OverflowError, RecursionError):
            continue
    return steps


@dataclass(frozen=True, slots=True, kw_only=True)
class LostHours:
    """Time that the clock left out, from one UTC ms to another, and the keys of the coats that did not live it."""

    start_ms: int
    end_ms: int
    keys: frozenset[str]

    def moved(self, time_ms: int) -> int:
        """Return a time of a coat that did not live these hours, UTC ms, with what came before them moved up to it."""
        return max(time_ms, min(time_ms + self.end_ms - self.start_ms, self.end_ms))


def lost_hours(piece: Piece, keys: Collection[str], steps: Sequence[ClockStep]) -> list[LostHours]:
    """Return what the coats `keys` of a piece did not live of the time since they were laid, in the order of time."""
    found: dict[tuple[int, int], set[str]] = {}
    for at, coat in enumerate(piece.coats):
        if coat.laid_ms is None or coat.key not in keys:
            continue
        for start_ms, end_ms, stayed in _left_out(coat.key, steps):
            # a coat above that was moved along was laid as much later: all is left out of this one before that
            above_ms = [one.laid_ms for one in piece.coats[at + 1 :] if one.laid_ms and one.key not in stayed]
            earlier_ms = max(0, end_ms - min([end_ms, *above_ms]))
            span = (max(start_ms - earlier_ms, coat.laid_ms), end_ms - earlier_ms)
            if span[0] < span[1]:
                found.setdefault(span, set()).add(coat.key)
    return [
        LostHours(start_ms=start_ms, end_ms=end_ms, keys=frozenset(of))
        for (start_ms, end_ms), of in sorted(found.items())
    ]


def _left_out(key: str, steps: Sequence[ClockStep]) -> list[tuple[int, int, frozenset[str]]]:
    """Return the stretches, UTC ms, that the clock left out while a coat was on: what it was set back is no loss."""
    lost: list[tuple[int, int, frozenset[str]]] = []
    ahead_ms = 0  # set back with nothing to give back: it is lived twice, and setting it forward again loses nothing
    for step in steps:
        if key not in step.stayed:
            continue
        ahead_ms -= step.step_ms
        if step.step_ms > 0 and ahead_ms < 0:
            lost.append((step.time_ms + ahead_ms, step.time_ms, step.stayed))
        while ahead_ms > 0 and lost:
            start_ms, end_ms, stayed = lost.pop()
            given_ms = min(ahead_ms, end_ms - start_ms)
            ahead_ms -= given_ms
            if end_ms - given_ms > start_ms:
                lost.append((start_ms, end_ms - given_ms, stayed))
        ahead_ms = max(ahead_ms, 0)
    return lost


def moved_along(piece: Piece, step_ms: int, keys: Collection[str]) -> Piece:
    """Return `piece` with all times of the coats in `keys` moved by `step_ms`, but none below the coat it lies on."""
    coats: list[Coat] = []
    for coat in piece.coats:
        below_ms = coats[-1].laid_ms if coats else None
        coats.append(_moved(coat, step_ms, below_ms) if coat.key in keys else coat)
    return replace(piece, coats=tuple(coats))


def _moved(coat: Coat, step_ms: int, below_ms: int | None) -> Coat:
    if coat.laid_ms is None:
        return coat
    if below_ms is not None:
        step_ms = max(step_ms, below_ms - coat.laid_ms)
    return with_times(coat, lambda time_ms: time_ms + step_ms)


def with_times(coat: Coat, moved: Callable[[int], int]) -> Coat:
    """Return `coat` with all its times, UTC ms, as `moved` has them."""
    return replace(
        coat,
        laid_ms=None if coat.laid_ms is None else moved(coat.laid_ms),
        covered_from_ms=None if coat.covered_from_ms is None else moved(coat.covered_from_ms),
        seen_ms=None if coat.seen_ms is None else moved(coat.seen_ms),
        looks=tuple(replace(look, time_ms=moved(look.time_ms)) for look in coat.looks),
    )


def lived_as(coat: Coat, before: Coat, lived: Coat) -> Coat:
    """Return `coat`, recorded anew, by the clock of its film.

    Parameters
    ----------
    coat : Coat
        As it is recorded now, laid and covered as before; what is new in it was recorded by the clock as it is now.
    before, lived : Coat
        As it was recorded, and the same by the clock of its film.
    """
    known_ms = {(old.key, old.time_ms): look.time_ms for old, look in zip(before.looks, lived.looks, strict=True)}
    return replace(
        coat,
        laid_ms=lived.laid_ms,
        covered_from_ms=lived.covered_from_ms,
        seen_ms=lived.seen_ms if coat.seen_ms == before.seen_ms else coat.seen_ms,
        looks=tuple(replace(look, time_ms=known_ms.get((look.key, look.time_ms), look.time_ms)) for look in coat.looks),
    )
