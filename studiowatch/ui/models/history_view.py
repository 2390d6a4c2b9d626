"""Which stretch of time the room history shows, and how it moves: pure steps from one view to the next."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import StrEnum

from studiowatch.speech.words import mark

SECOND_MS = 1000
HOUR_MS = 3600 * SECOND_MS
DAY_MS = 24 * HOUR_MS

LEAST_AHEAD_SHARE = 0.02  # of the width, kept right of now when she zooms a view that follows
AHEAD_SHARE = 0.25  # of the width, kept for what is to come; assumption
EDGE_SHARE = 0.12  # of a coat's time, kept right of its recoat time for the words beside it
LONGEST_AHEAD_MS = 21 * DAY_MS  # paint dries through in days to weeks, so more would stay empty; assumption
NARROWEST_MS = 20 * SECOND_MS  # twenty readings of a board that sends one a second
WIDEST_MS = 60 * 366 * DAY_MS  # a working life


class Span(StrEnum):
    """The spans she can choose; the value, said, is the word on the button."""

    EIGHT_HOURS = mark("8 h")
    DAY = mark("day")
    WEEK = mark("week")
    MONTH = mark("month")
    ALL = mark("all")


BEHIND_MS = {
    Span.EIGHT_HOURS: 8 * HOUR_MS,
    Span.DAY: DAY_MS,
    Span.WEEK: 7 * DAY_MS,
    Span.MONTH: 30 * DAY_MS,
}


@dataclass(frozen=True, slots=True, kw_only=True)
class View:
    """A stretch of time on the screen.

    Attributes
    ----------
    start_ms, end_ms : int
        Left and right edge, UTC ms.
    following : bool
        True while the view moves along with now.
    span : Span or None
        The chosen span, or None once she has zoomed or dragged away from it.
    ahead_share : float
        Where now stands in a view that follows: this part of the width lies right of it.
    """

    start_ms: int
    end_ms: int
    following: bool = True
    span: Span | None = None
    ahead_share: float = AHEAD_SHARE

    @property
    def width_ms(self) -> int:
        """Width, ms."""
        return self.end_ms - self.start_ms


def spanned(span: Span, now_ms: int, first_ms: int | None) -> View:
    """Return the view of `span` that follows now.

    Parameters
    ----------
    span : Span
        How far back to look.
    now_ms : int
        UTC ms.
    first_ms : int or None
        Time of the first reading in the log, UTC ms; "all" begins there, but is never shorter than 8 h.
    """
    behind_ms = BEHIND_MS.get(span, 0)
    if span is Span.ALL:
        logged_ms = now_ms - first_ms if first_ms is not None else 0
        behind_ms = max(logged_ms, BEHIND_MS[Span.EIGHT_HOURS])
    return View(start_ms=now_ms - behind_ms, end_ms=now_ms + _ahead_ms(behind_ms), span=span)


def moved_on(view: View, now_ms: int, first_ms: int | None) -> View:
    """Return `view` at a new now: a view that follows moves along, any other stays where she put it."""
    if not view.following:
        return view
    if view.span is not None:
        return spanned(view.span, now_ms, first_ms)
    return _anchored(view, now_ms)


def home(view: View, now_ms: int) -> View:
    """Return a view as wide as `view` that follows now."""
    return _anchored(replace(view, following=True, ahead_share=AHEAD_SHARE), now_ms)


def _anchored(view: View, now_ms: int) -> View:
    """Return `view` shifted so that now stands where its `ahead_share` has it."""
    end_ms = now_ms + min(round(view.width_ms * view.ahead_share), LONGEST_AHEAD_MS)
    return replace(view, start_ms=end_ms - view.width_ms, end_ms=end_ms)


def zoomed(view: View, factor: float, about_ms: float) -> View:
    """Return `view` made `factor` times as wide, with the time `about_ms` staying where it is on the screen."""
    width_ms = min(max(view.width_ms * factor, NARROWEST_MS), WIDEST_MS)
    share = (about_ms - view.start_ms) / view.width_ms
    start_ms = round(about_ms - share * width_ms)
    return View(start_ms=start_ms, end_ms=start_ms + round(width_ms), following=False)


def zoomed_at(view: View, factor: float, about_ms: float, now_ms: int) -> View:
    """Return `view` zoomed about the time under the pointer; a view that follows keeps now in sight and follows on."""
    after = zoomed(view, factor, about_ms)
    if not view.following:
        return after
    share = (after.end_ms - now_ms) / after.width_ms
    share = min(max(share, LEAST_AHEAD_SHARE), 1 - LEAST_AHEAD_SHARE)
    return _anchored(replace(after, following=True, ahead_share=share), now_ms)


def coat_view(laid_ms: int, recoat_ms: int | None, now_ms: int) -> View:
    """Return the view of one coat: from an hour before it was laid to its recoat time, or to now if it has none.

    A little is added at the right, so that the mark of the recoat time stands clear of the edge.
    """
    start_ms = laid_ms - HOUR_MS
    end_ms = max(recoat_ms if recoat_ms is not None else now_ms, laid_ms + HOUR_MS)
    return View(start_ms=start_ms, end_ms=end_ms + round(EDGE_SHARE * (end_ms - start_ms)), following=False)


def zoomed_here(view: View, factor: float, now_ms: int) -> View:
    """Return `view` zoomed without a pointer: about now while it follows, else about its middle."""
    if view.following:
        return home(zoomed(view, factor, now_ms), now_ms)
    return zoomed(view, factor, (view.start_ms + view.end_ms) / 2)


def panned(view: View, by_ms: float, now_ms: int, first_ms: int | None) -> View:
    """Return `view` shifted by `by_ms` (later is positive), kept where there is a log or a time to come."""
    half_ms = view.width_ms // 2
    earliest_ms = min(view.start_ms, (first_ms if first_ms is not None else now_ms - WIDEST_MS) - half_ms)
    latest_ms = max(view.start_ms, now_ms + LONGEST_AHEAD_MS - half_ms)
    start_ms = min(max(view.start_ms + round(by_ms), earliest_ms), latest_ms)
    return View(start_ms=start_ms, end_ms=start_ms + view.width_ms, following=False)


def _ahead_ms(behind_ms: int) -> int:
    return min(round(behind_ms * AHEAD_SHARE / (1 - AHEAD_SHARE)), LONGEST_AHEAD_MS)
