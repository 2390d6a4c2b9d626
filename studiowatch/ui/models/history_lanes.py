"""The lanes below the room's curves: one per piece, its coats as blocks of wet, tacky and dry."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from enum import Enum, auto
from itertools import pairwise

from studiowatch.coats.stages import Stage
from studiowatch.service.piece_view import CoatView, PieceView, StageTime
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import mark, say
from studiowatch.ui.models.history_marks import NO_MARKS, NO_NAMES, Marks, in_order, marks_by_title
from studiowatch.ui.models.times import clock_words


class Look(Enum):
    """How a stretch of a lane is drawn, the lowest first."""

    WET = auto()
    TACKY = auto()
    DRY = auto()
    PAINT = auto()
    READY = auto()
    UNWATCHED = auto()
    GONE = auto()
    ONCE_WET = auto()
    CLOUDED = auto()


LOOK_WORDS = {
    Look.WET: mark("wet"),
    Look.TACKY: mark("tacky"),
    Look.DRY: mark("dry, not yet to recoat"),
    Look.PAINT: mark("drying through"),
    Look.READY: mark("ready"),
    Look.UNWATCHED: mark("not watched"),
    Look.ONCE_WET: mark("wet by its sheet"),
    Look.GONE: mark("off the rack by now"),
    Look.CLOUDED: mark("off the rack by now"),
}
TOLD_BY_READY = {Look.READY, Look.UNWATCHED, Look.GONE, Look.CLOUDED}  # the words of readiness say it already

# The stages that end a look, best first: a sheet or a model that does not know one falls back to the next.
ENDS_WET = (Stage.SET_TO_TOUCH, Stage.DUST_FREE, Stage.TACK_FREE)
ENDS_TACKY = (Stage.TACK_FREE, Stage.DRY_TO_TOUCH)
ENDS_DRY = (Stage.DRY_TO_RECOAT,)
ENDS_PAINT = (Stage.DRY_TO_RECOAT, Stage.DRY_THROUGH)


@dataclass(frozen=True, slots=True, kw_only=True)
class Block:
    """A stretch of one look, UTC ms; `end_ms` None is "no end in sight"."""

    look: Look
    start_ms: int
    end_ms: int | None


@dataclass(frozen=True, slots=True, kw_only=True)
class CoatSpan:
    """One laid coat in its lane.

    Attributes
    ----------
    ready_ms : int or None
        When the topmost coat may be recoated, UTC ms; None for a coat below another.
    ready_words : str
        When it may be recoated, or why there is no time to tell.
    recoat_ms : int or None
        When it was or will be ready, or was covered by the next coat if that came first, UTC ms.
    """

    key: str
    label: str
    blocks: tuple[Block, ...]
    ready_ms: int | None
    ready_words: str
    recoat_ms: int | None = None

    @property
    def start_ms(self) -> int:
        """When it was laid, UTC ms."""
        return self.blocks[0].start_ms

    @property
    def end_ms(self) -> int | None:
        """Where its last block ends, UTC ms."""
        return self.blocks[-1].end_ms

    def holds(self, time_ms: float) -> bool:
        """Return whether `time_ms` lies within the coat's blocks."""
        return self.start_ms <= time_ms and (self.end_ms is None or time_ms < self.end_ms)

    def words(self, time_ms: float) -> str:
        """Return what the coat was or will be at `time_ms`: "gloss 1: tacky, recoat Thu 08:10"."""
        looks = [block.look for block in self.blocks if block.start_ms <= time_ms][-1:]
        told = [say(LOOK_WORDS[look]) for look in looks if look not in TOLD_BY_READY or not self.ready_words]
        return f"{self.label}: {', '.join([*told, self.ready_words] if self.ready_words else told)}"

    def title(self, start_ms: int, end_ms: int) -> str:
        """Return its name in a view from `start_ms` to `end_ms`, and its state if the view shows nothing else of it."""
        looks = {block.look for block in self.blocks if block.start_ms < end_ms and (block.end_ms or end_ms) > start_ms}
        if looks in ({Look.READY}, {Look.UNWATCHED}):
            return f"{self.label} · {say(LOOK_WORDS[looks.pop()])}"
        return self.label


@dataclass(frozen=True, slots=True, kw_only=True)
class Lane:
    """The lane of one piece, or one `shared` by pieces that left the rack one after the other."""

    key: str
    title: str
    coats: tuple[CoatSpan, ...]
    shared: bool = False
    marks: Marks = NO_MARKS
    prompts: Marks = NO_MARKS

    @property
    def top(self) -> CoatSpan | None:
        """The topmost laid coat."""
        return self.coats[-1] if self.coats else None

    def coat_at(self, time_ms: float) -> CoatSpan | None:
        """Return the coat whose blocks hold `time_ms`."""
        return next((coat for coat in reversed(self.coats) if coat.holds(time_ms)), None)

    def words(self, time_ms: float) -> str:
        """Return the piece and what its coat was at a time; in a lane of several pieces the coat names its piece."""
        coat = self.coat_at(time_ms)
        told = [self.title] if self.title and not self.shared else []
        return ", ".join([*told, *([coat.words(time_ms)] if coat is not None else [])])


def lanes_of(snapshot: Snapshot, named: Mapping[str, frozenset[str]] = NO_NAMES) -> tuple[Lane, ...]:
    """Return one lane for each piece on the rack, in the rack's order; `named` is what `names_kept` returned."""
    marks = marks_by_title(snapshot, named)
    return tuple(
        lane_of(piece, snapshot.time_ms, marks=in_order(marks.get(piece.title, ()))) for piece in snapshot.pieces
    )


def lane_of(piece: PieceView, now_ms: int, *, marks: Marks = NO_MARKS, prompts: Marks = NO_MARKS) -> Lane:
    """Return the lane of a piece on the rack."""
    laid = [coat for coat in piece.coats if coat.laid_ms is not None]
    next_ms = [*(coat.laid_ms for coat in laid[1:]), None]
    if laid and len(laid) < len(piece.coats):
        laid[-1] = _as_waited_for(laid[-1], piece, now_ms)
    spans = [_span(coat, next_laid_ms, now_ms) for coat, next_laid_ms in zip(laid, next_ms, strict=False)]
    return Lane(key=piece.key, title=piece.title, coats=tuple(spans), marks=marks, prompts=prompts)


def _as_waited_for(coat: CoatView, piece: PieceView, now_ms: int) -> CoatView:
    """Return the topmost coat as dry to recoat once the coat planned may go on, which may wait for more than that."""
    time = StageTime(
        stage=Stage.DRY_TO_RECOAT,
        time_ms=piece.next_ms,
        reached=piece.next_ms is not None and piece.next_ms <= now_ms,
        p10_ms=piece.next_p10_ms,
        p90_ms=piece.next_p90_ms,
    )
    return replace(coat, stages=tuple(time if one.stage is time.stage else one for one in coat.stages))


def _span(coat: CoatView, next_laid_ms: int | None, now_ms: int) -> CoatSpan:
    laid_ms = coat.laid_ms or 0
    if coat.unwatched:
        return _unwatched_span(coat, laid_ms, max(next_laid_ms or now_ms, laid_ms))
    steps = (
        ((Look.WET, ENDS_WET), (Look.TACKY, ENDS_TACKY), (Look.DRY, ENDS_DRY))
        if coat.clear_film
        else ((Look.PAINT, ENDS_PAINT),)
    )
    edges: list[int | None] = [laid_ms]
    for _, stages in steps:
        edges.append(_not_before(edges[-1], _end_ms(coat, stages)))
    blocks = [
        Block(look=look, start_ms=start_ms, end_ms=_earlier(end_ms, next_laid_ms))
        for (look, _), (start_ms, end_ms) in zip(steps, pairwise(edges), strict=True)
        if start_ms is not None and start_ms != end_ms and (next_laid_ms is None or start_ms < next_laid_ms)
    ]
    until_ms = next_laid_ms if next_laid_ms is not None else now_ms
    dried_ms = edges[-1]
    if dried_ms is not None and dried_ms < until_ms:
        blocks.append(Block(look=Look.READY, start_ms=dried_ms, end_ms=until_ms))
    ready_ms = _end_ms(coat, ENDS_DRY) if next_laid_ms is None else None
    return CoatSpan(
        key=coat.key,
        label=coat.label,
        blocks=tuple(blocks) or (Block(look=steps[0][0], start_ms=laid_ms, end_ms=laid_ms),),
        ready_ms=ready_ms,
        ready_words=_ready_words(coat, ready_ms, now_ms) if next_laid_ms is None else "",
        recoat_ms=_earlier(_end_ms(coat, ENDS_DRY), next_laid_ms),
    )


def _unwatched_span(coat: CoatView, laid_ms: int, until_ms: int) -> CoatSpan:
    return CoatSpan(
        key=coat.key,
        label=coat.label,
        blocks=(Block(look=Look.UNWATCHED, start_ms=laid_ms, end_ms=until_ms),),
        ready_ms=None,
        ready_words=f"{say(LOOK_WORDS[Look.UNWATCHED])}. {coat.unwatched.rstrip('.')}",
    )


def _end_ms(coat: CoatView, stages: tuple[Stage, ...]) -> int | None:
    """Return when the first known of `stages` ends: the promise (p90) while it lies ahead, the time once reached."""
    known = [found for stage in stages if (found := coat.stage(stage)) is not None]
    return _promise_ms(known[0]) if known else None


def _promise_ms(time: StageTime) -> int | None:
    if time.reached or time.stage is not Stage.DRY_TO_RECOAT or time.p90_ms is None:
        return time.time_ms
    return time.p90_ms


def _ready_words(coat: CoatView, ready_ms: int | None, now_ms: int) -> str:
    time = coat.stage(Stage.DRY_TO_RECOAT)
    if time is None:
        return ""
    if ready_ms is None and coat.unready is not None:
        return say("test again from {time}", time=clock_words(coat.unready.again_ms, now_ms))
    if ready_ms is None:
        return say("no recoat time at these conditions")
    clock = clock_words(ready_ms, now_ms)
    return say("ready since {time}", time=clock) if time.reached else say("recoat {time}", time=clock)


def _not_before(start_ms: int | None, end_ms: int | None) -> int | None:
    if start_ms is None or end_ms is None:
        return None
    return max(start_ms, end_ms)


def _earlier(end_ms: int | None, next_laid_ms: int | None) -> int | None:
    known = [time for time in (end_ms, next_laid_ms) if time is not None]
    return min(known) if known else None


@dataclass(frozen=True, slots=True, kw_only=True)
class LaneRows:
    """Where the lanes stand, px from the top of their part.

    Attributes
    ----------
    row_px : float
        Height of one lane with the space below it.
    part_px : float
        Height of the part that is seen.
    count : int
        Number of lanes.
    """

    row_px: float
    part_px: float
    count: int

    @property
    def furthest_px(self) -> float:
        """The furthest the lanes can be scrolled; 0 if all are seen."""
        return max(0.0, self.row_px * self.count - self.part_px)

    def row_at(self, y_px: float, scroll_px: float) -> int | None:
        """Return the lane at `y_px` below the top of the part, or None."""
        row = int((y_px + scroll_px) // self.row_px)
        return row if 0 <= y_px < self.part_px and 0 <= row < self.count else None

    def scroll_to(self, row: int, scroll_px: float) -> float:
        """Return the least change of `scroll_px` that shows all of lane `row`."""
        top_px = row * self.row_px
        return min(max(scroll_px, top_px + self.row_px - self.part_px, 0.0), top_px, self.furthest_px)


def lane_rows(count: int, room_px: float, least_px: float, most_px: float) -> LaneRows:
    """Share `room_px` among `count` lanes, each between `least_px` and `most_px` high; what does not fit scrolls."""
    row_px = min(max(room_px / max(count, 1), least_px), most_px)
    return LaneRows(row_px=row_px, part_px=min(room_px, row_px * count), count=count)
