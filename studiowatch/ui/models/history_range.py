"""A stretch of time that she chose in the room history: how it grows, and what it is called."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import tzinfo

from studiowatch.speech.words import say
from studiowatch.ui.models.history_axis import is_told_by_day, moment_clock, moment_words
from studiowatch.ui.models.history_lanes import Lane
from studiowatch.ui.models.history_view import View
from studiowatch.ui.models.times import SECOND_MS, lasting_words, local

STEP_SHARE = 0.02  # of the view's width, that one key stroke moves an end; assumption
LEAST_MS = SECOND_MS


@dataclass(frozen=True, slots=True, kw_only=True)
class TimeRange:
    """From `anchor_ms`, where she began, to `end_ms`, which may lie before it, UTC ms."""

    anchor_ms: int
    end_ms: int

    @property
    def first_ms(self) -> int:
        """Its beginning, UTC ms."""
        return min(self.anchor_ms, self.end_ms)

    @property
    def last_ms(self) -> int:
        """Its end, UTC ms."""
        return max(self.anchor_ms, self.end_ms)

    @property
    def length_ms(self) -> int:
        """How long it is, ms."""
        return self.last_ms - self.first_ms

    def words(self, view: View, zone: tzinfo | None = None) -> str:
        """Return from, to and length, as fine as `view` can tell: "Wed 4 Mar 13:02 to 14:40, 1 h 38 min"."""
        first, last = (moment_words(at_ms, view.width_ms, zone) for at_ms in (self.first_ms, self.last_ms))
        one_day = local(self.first_ms, zone).date() == local(self.last_ms, zone).date()
        if one_day and not is_told_by_day(view.width_ms):
            last = moment_clock(self.last_ms, view.width_ms, zone)
        return say("{first} to {last}, {length}", first=first, last=last, length=lasting_words(self.length_ms))


def dried_within(chosen: TimeRange, lanes: Sequence[Lane]) -> tuple[tuple[str, str], ...]:
    """Return the key and the name of each coat that was drying at some time of `chosen`, those laid last first."""
    found = []
    for lane in lanes:
        for coat in lane.coats:
            over_ms = coat.recoat_ms if coat.recoat_ms is not None else coat.end_ms
            if coat.start_ms <= chosen.last_ms and (over_ms is None or over_ms >= chosen.first_ms):
                title = f"{lane.title}, {coat.label}" if lane.title and not lane.shared else coat.label
                found.append((coat.start_ms, coat.key, title))
    return tuple((key, title) for _, key, title in sorted(found, reverse=True))


def dragged(anchor_ms: float, to_ms: float, now_ms: int) -> TimeRange | None:
    """Return the range from where she pressed to where she is, up to now; None while it is shorter than a second."""
    anchor, end = (min(round(at_ms), now_ms) for at_ms in (anchor_ms, to_ms))
    return TimeRange(anchor_ms=anchor, end_ms=end) if abs(end - anchor) >= LEAST_MS else None


def stepped(before: TimeRange | None, steps: int, view: View, at_ms: float, now_ms: int) -> TimeRange | None:
    """Return `before` with its end moved by key strokes; without one it begins at `at_ms`."""
    anchor_ms, end_ms = (before.anchor_ms, before.end_ms) if before is not None else (at_ms, at_ms)
    return dragged(anchor_ms, end_ms + steps * max(view.width_ms * STEP_SHARE, LEAST_MS), now_ms)


def beginning_ms(pointed_ms: float | None, view: View, now_ms: int) -> float:
    """Return where a range begins by keyboard: at the pointer, else at now if that is in view, else in the middle."""
    if pointed_ms is not None:
        return min(pointed_ms, now_ms)
    return now_ms if view.start_ms <= now_ms <= view.end_ms else min((view.start_ms + view.end_ms) / 2, now_ms)
