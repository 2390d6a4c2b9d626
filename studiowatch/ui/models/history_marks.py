"""Warnings and prompts along the time axis: those too close to tell apart become one mark that says how many it is."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from studiowatch.service.snapshot import Snapshot, WarningView
from studiowatch.speech.words import say
from studiowatch.studio.words import Level
from studiowatch.ui.models.history_axis import TimeScale

DONE, NOT_DONE = "prompt-done", "prompt-open"  # kinds of prompts
RANKS: tuple[Level | str, ...] = (*Level, DONE, NOT_DONE)  # what a mark may be, the calmest first
NO_NAMES: Mapping[str, frozenset[str]] = {}


@dataclass(frozen=True, slots=True, kw_only=True)
class Mark:
    """A warning at the time it began, or a prompt at the time it was done or due."""

    time_ms: int
    level: Level
    kind: str
    words: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Cluster:
    """Marks drawn as one: the most urgent of them, of those the latest, and how many there are."""

    mark: Mark
    count: int

    @property
    def words(self) -> str:
        """What it says under the pointer."""
        if self.count == 1:
            return self.mark.words
        return say("{words} (and {number} more)", words=self.mark.words, number=self.count - 1)


@dataclass(frozen=True, slots=True, eq=False)
class Marks:
    """Marks in the order of time, and how urgent each is; made by `in_order`."""

    marks: tuple[Mark, ...]
    time_ms: NDArray[np.int64]
    rank: NDArray[np.int64]

    def since(self, start_ms: int) -> Marks:
        """Return the marks from `start_ms` on."""
        first = int(np.searchsorted(self.time_ms, start_ms, "left"))
        return self if not first else Marks(self.marks[first:], self.time_ms[first:], self.rank[first:])

    def near(self, time_ms: float, reach_ms: float) -> Cluster | None:
        """Return the marks within `reach_ms` of a time as one, or None."""
        first, last = np.searchsorted(self.time_ms, (time_ms - reach_ms, time_ms + reach_ms + 1)).tolist()
        if first >= last:
            return None
        best = first + int(np.argmax(self.rank[first:last] * (last - first) + np.arange(last - first)))
        return Cluster(mark=self.marks[best], count=last - first)


def in_order(marks: Iterable[Mark]) -> Marks:
    """Return marks given in any order."""
    ordered = tuple(sorted(marks, key=lambda mark: mark.time_ms))
    time_ms = np.array([mark.time_ms for mark in ordered], dtype=np.int64)
    return Marks(ordered, time_ms, np.array([RANKS.index(_look(mark)) for mark in ordered], dtype=np.int64))


def _look(mark: Mark) -> Level | str:
    return mark.kind if mark.kind in RANKS else mark.level


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Clusters:
    """Marks that are drawn as one, the calmer first, so that the urgent lie on top; columns of n.

    Attributes
    ----------
    row : (n,) int64
        The row of each.
    time_ms, rank : (n,) int64
        Of its most urgent mark, and of those its latest; `rank` is the place among `RANKS`.
    count : (n,) int64
        How many marks it stands for.
    """

    row: NDArray[np.int64]
    time_ms: NDArray[np.int64]
    rank: NDArray[np.int64]
    count: NDArray[np.int64]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class MarkTable:
    """The marks of several rows, row after row, in the order of time within each; made by `marks_table`."""

    row: NDArray[np.int64]
    time_ms: NDArray[np.int64]
    rank: NDArray[np.int64]

    def clusters(self, time: TimeScale, slot_px: float) -> Clusters:
        """Return the marks in view, those of a row within one slot as one.

        Slots begin at multiples of their width since 1970, so that marks do not regroup while the view moves.
        """
        seen = np.flatnonzero((self.time_ms >= time.start_ms) & (self.time_ms <= time.end_ms))
        row, time_ms, rank = self.row[seen], self.time_ms[seen], self.rank[seen]
        slot = time_ms // max(round(slot_px * time.ms_per_px), 1)
        begins = np.flatnonzero(np.diff(slot, prepend=-1) | np.diff(row, prepend=-1))
        if not seen.size:
            return Clusters(row=row, time_ms=time_ms, rank=rank, count=row)
        best = np.maximum.reduceat(rank * seen.size + np.arange(seen.size), begins) % seen.size
        count = np.diff(begins, append=seen.size)
        order = np.argsort(rank[best], kind="stable")
        best = best[order]
        return Clusters(row=row[best], time_ms=time_ms[best], rank=rank[best], count=count[order])


def marks_table(rows: Sequence[Marks]) -> MarkTable:
    """Return the marks of `rows` as one table."""
    if not rows:
        return marks_table((NO_MARKS,))
    return MarkTable(
        row=np.repeat(np.arange(len(rows)), [len(marks.marks) for marks in rows]),
        time_ms=np.concatenate([marks.time_ms for marks in rows]),
        rank=np.concatenate([marks.rank for marks in rows]),
    )


NO_MARKS = in_order(())


def mark_of(warning: WarningView) -> Mark:
    """Return the mark of a warning."""
    return Mark(time_ms=warning.began_ms, level=warning.level, kind=warning.kind, words=warning.sentence.headline)


def names_kept(before: Mapping[str, frozenset[str]], snapshot: Snapshot) -> dict[str, frozenset[str]]:
    """Return the titles of all pieces that each warning ever named, by the warning's key.

    A warning that stands names the pieces still wet; its mark stays in the lanes of those that have dried since.
    """
    return {
        warning.key: before.get(warning.key, frozenset()) | frozenset(warning.piece_titles)
        for warning in snapshot.warnings
    }


def marks_by_title(snapshot: Snapshot, named: Mapping[str, frozenset[str]] = NO_NAMES) -> dict[str, list[Mark]]:
    """Return the marks of the warnings at hand, by the title of each piece that they name."""
    marks: dict[str, list[Mark]] = {}
    for warning in snapshot.warnings:
        for title in named.get(warning.key, frozenset(warning.piece_titles)):
            marks.setdefault(title, []).append(mark_of(warning))
    return marks
