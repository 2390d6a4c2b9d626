"""The lanes of all times: the rack's from the snapshot, below them those of pieces that left it, from the records."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace
from heapq import heappush, heapreplace
from itertools import chain

from studiowatch.service.past import GoneCoat, GonePiece, PastPrompt, PastView, PastWarning
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.dates import day_of_year
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.studio.pieces import Outcome
from studiowatch.studio.words import Level
from studiowatch.ui.models.history_lanes import Block, CoatSpan, Lane, Look, lane_of
from studiowatch.ui.models.history_marks import (
    DONE,
    NO_MARKS,
    NOT_DONE,
    Mark,
    Marks,
    MarkTable,
    in_order,
    mark_of,
    marks_by_title,
    marks_table,
    names_kept,
)
from studiowatch.ui.models.history_panels import PLACES, Place
from studiowatch.ui.models.history_table import LaneTable, lane_table
from studiowatch.ui.models.history_view import DAY_MS, HOUR_MS, View
from studiowatch.ui.models.seen_words import OUTCOME_WORDS
from studiowatch.ui.models.times import local

GONE_KEY = "gone"
CLEAR_OUTCOMES = {"", "clear"}
LEAST_MS = DAY_MS  # of the last coat, where nothing tells when the piece left; assumption


@dataclass(frozen=True, slots=True, kw_only=True)
class _Row:
    """Pieces that left the rack one after the other, in one lane."""

    pieces: tuple[GonePiece, ...]
    coats: tuple[CoatSpan, ...]


@dataclass(slots=True)
class LaneBook:
    """Keeps what was shown last, so that a second's snapshot costs no more after a year than on the first day."""

    past: PastView = field(default_factory=PastView)
    snapshot: Snapshot | None = None
    marks: Marks = NO_MARKS
    in_panels: MarkTable = field(default_factory=lambda: marks_table(()))
    _named: dict[str, frozenset[str]] = field(default_factory=dict)
    _rows: tuple[_Row, ...] = ()
    _by_title: dict[str, Marks] = field(default_factory=dict)
    _prompts: dict[str, tuple[Mark, ...]] = field(default_factory=dict)
    _rack: tuple[Lane, ...] = ()
    _all: tuple[Lane, ...] = ()
    _table: LaneTable = field(default_factory=lambda: lane_table(()))

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Take in the studio's state."""
        before, self.snapshot = self.snapshot, snapshot
        named = names_kept(self._named, snapshot)
        if before is None or before.warnings != snapshot.warnings or named != self._named:
            self._named = named
            self._gather()
        self._rack = tuple(self._rack_lanes(snapshot))
        gone = self._all[len(self._all) - len(self._rows) :]
        if before is not None and before.units != snapshot.units:  # the times of their layings are said anew
            self._rows = tuple(_packed(self.past.pieces))
            gone = tuple(self._gone_lanes())
        self._all = (*self._rack, *gone)

    def show_past(self, past: PastView) -> None:
        """Take in what the records hold of the time behind; the same value again costs nothing."""
        if past is self.past:
            return
        self.past = past
        self._rows = tuple(_packed(past.pieces))
        self._prompts = _prompts_by_piece(past.prompts)
        self._gather()
        if self.snapshot is not None:
            self._rack = tuple(self._rack_lanes(self.snapshot))
        self._all = (*self._rack, *self._gone_lanes())

    def lanes(self, view: View) -> tuple[Lane, ...]:
        """Return the lanes of the rack, and those of the pieces that left it if any of these is in view."""
        return self._all if self._is_gone_in_view(view) else self._rack

    def table(self, view: View) -> LaneTable:
        """Return the lanes of a view as columns."""
        lanes = self.lanes(view)
        if self._table.lanes is not lanes:
            self._table = lane_table(lanes)
        return self._table

    def _is_gone_in_view(self, view: View) -> bool:
        pieces = chain.from_iterable(row.pieces for row in self._rows)
        return any(_begin_ms(piece) < view.end_ms and _end_ms(piece) > view.start_ms for piece in pieces)

    def _gather(self) -> None:
        """Join the warnings at hand with those that only the records still know."""
        here = self.snapshot.warnings if self.snapshot is not None else ()
        known = {warning.key for warning in here}
        old = [(_mark(warning), warning.pieces) for warning in self.past.warnings if warning.key not in known]
        by_title = marks_by_title(self.snapshot, self._named) if self.snapshot is not None else {}
        for mark, titles in old:
            for title in titles:
                by_title.setdefault(title, []).append(mark)
        self._by_title = {title: in_order(marks) for title, marks in by_title.items()}
        self.marks = in_order([*map(mark_of, here), *(mark for mark, _ in old)])
        places: dict[Place, list[Mark]] = {}
        for mark in self.marks.marks:
            if mark.kind in PLACES:
                places.setdefault(PLACES[mark.kind], []).append(mark)
        self.in_panels = marks_table([in_order(places.get(place, ())) for place in Place])

    def _rack_lanes(self, snapshot: Snapshot) -> Iterable[Lane]:
        prompts: dict[str, list[Mark]] = {}
        for prompt in snapshot.prompts:
            to_do = say("to do: {prompt}", prompt=prompt.text)
            mark = Mark(time_ms=prompt.due_ms, level=Level.CALM, kind=NOT_DONE, words=to_do)
            prompts.setdefault(prompt.piece_key, []).append(mark)
        for piece in snapshot.pieces:
            done = [mark for mark in self._prompts.get(piece.key, ()) if mark.kind == DONE]
            laid_ms = min((coat.laid_ms for coat in piece.coats if coat.laid_ms is not None), default=None)
            marks = self._by_title.get(piece.title, NO_MARKS)  # an earlier piece may have had the same title
            yield lane_of(
                piece,
                snapshot.time_ms,
                marks=marks if laid_ms is None else marks.since(laid_ms - HOUR_MS),
                prompts=in_order([*done, *prompts.get(piece.key, ())]),
            )

    def _gone_lanes(self) -> Iterable[Lane]:
        for number, row in enumerate(self._rows):
            marks = [
                mark
                for piece in row.pieces
                for mark in self._by_title.get(piece.title, NO_MARKS).marks
                if _begin_ms(piece) - HOUR_MS <= mark.time_ms <= _end_ms(piece)
            ]
            prompts = chain.from_iterable(self._prompts.get(piece.key, ()) for piece in row.pieces)
            yield Lane(
                key=f"{GONE_KEY} {number}",
                title="" if number else say("off the rack"),
                coats=row.coats,
                shared=True,
                marks=in_order(marks),
                prompts=in_order(prompts),
            )


def _mark(warning: PastWarning) -> Mark:
    return Mark(time_ms=warning.began_ms, level=Level(warning.level), kind=warning.kind, words=warning.headline)


def _prompts_by_piece(prompts: Sequence[PastPrompt]) -> dict[str, tuple[Mark, ...]]:
    marks: dict[str, list[Mark]] = {}
    for prompt in prompts:
        is_done = prompt.done_ms is not None
        mark = Mark(
            time_ms=prompt.due_ms if prompt.done_ms is None else prompt.done_ms,
            level=Level.CALM,
            kind=DONE if is_done else NOT_DONE,
            words=say("done: {prompt}", prompt=prompt.text)
            if is_done
            else say("not ticked: {prompt}", prompt=prompt.text),
        )
        marks.setdefault(prompt.piece_key, []).append(mark)
    return {key: tuple(found) for key, found in marks.items()}


def _begin_ms(piece: GonePiece) -> int:
    return piece.coats[0].laid_ms


def _end_ms(piece: GonePiece) -> int:
    last = piece.coats[-1]
    return last.end_ms if last.end_ms is not None else last.laid_ms + LEAST_MS


def _packed(pieces: Iterable[GonePiece]) -> Iterable[_Row]:
    """Share pieces among as few rows as keep them apart, the earliest first; a piece keeps its row for good."""
    rows: list[list[GonePiece]] = []
    free: list[tuple[int, int]] = []  # when each row is free again, and its number
    for piece in sorted(pieces, key=lambda one: (_begin_ms(one), one.key)):
        if free and free[0][0] <= _begin_ms(piece):
            row = free[0][1]
            heapreplace(free, (_end_ms(piece), row))
            rows[row].append(piece)
        else:
            heappush(free, (_end_ms(piece), len(rows)))
            rows.append([piece])
    for members in rows:
        yield _Row(pieces=tuple(members), coats=tuple(chain.from_iterable(map(_spans, members))))


def _spans(piece: GonePiece) -> Iterable[CoatSpan]:
    for coat in piece.coats:
        span = _span(coat, _end_ms(piece))
        yield replace(span, label=f"{piece.title} \N{MIDDLE DOT} {coat.label}")


def _span(coat: GoneCoat, left_ms: int) -> CoatSpan:
    end_ms = coat.end_ms if coat.end_ms is not None else left_ms
    dry_ms = min(coat.touch_dry_ms, end_ms) if coat.touch_dry_ms is not None else coat.laid_ms
    look = Look.GONE if coat.outcome in CLEAR_OUTCOMES else Look.CLOUDED
    blocks = [
        Block(look=Look.ONCE_WET, start_ms=coat.laid_ms, end_ms=dry_ms),
        Block(look=look, start_ms=dry_ms, end_ms=end_ms),
    ]
    return CoatSpan(
        key=coat.key,
        label=coat.label,
        blocks=tuple(block for block in blocks if block.end_ms is None or block.end_ms > block.start_ms)
        or (Block(look=look, start_ms=coat.laid_ms, end_ms=coat.laid_ms),),
        ready_ms=None,
        ready_words=_laid_words(coat),
        recoat_ms=end_ms,
    )


def _laid_words(coat: GoneCoat) -> str:
    wall = local(coat.laid_ms)
    day, clock = day_of_year(wall.date()), chosen().clock(wall)
    if not coat.outcome:
        return say("laid {day} {time}", day=day, time=clock)
    outcome = say(OUTCOME_WORDS[Outcome(coat.outcome)])
    return say("laid {day} {time}, came out {outcome}", day=day, time=clock, outcome=outcome)
