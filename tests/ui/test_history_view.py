"""How the view moves in time."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.ui.models.history_view import (
    DAY_MS,
    HOUR_MS,
    Span,
    View,
    coat_view,
    home,
    moved_on,
    panned,
    spanned,
    zoomed,
    zoomed_at,
    zoomed_here,
)

NOW_MS = 1_795_000_000_000


def test_that_eight_hours_lie_behind_and_a_quarter_of_the_width_ahead() -> None:
    view = spanned(Span.EIGHT_HOURS, NOW_MS, None)
    assert NOW_MS - view.start_ms == 8 * HOUR_MS
    assert (view.end_ms - NOW_MS) / view.width_ms == pytest.approx(0.25)
    assert view.following


def test_that_all_begins_with_the_log() -> None:
    assert spanned(Span.ALL, NOW_MS, NOW_MS - 90 * DAY_MS).start_ms == NOW_MS - 90 * DAY_MS


@pytest.mark.parametrize("first_ms", [None, NOW_MS - 60_000])
def test_that_all_of_a_young_log_is_eight_hours(first_ms: int | None) -> None:
    assert spanned(Span.ALL, NOW_MS, first_ms) == View(
        start_ms=NOW_MS - 8 * HOUR_MS, end_ms=spanned(Span.EIGHT_HOURS, NOW_MS, None).end_ms, span=Span.ALL
    )


def test_that_a_year_does_not_leave_months_of_empty_paper_ahead() -> None:
    assert spanned(Span.ALL, NOW_MS, NOW_MS - 365 * DAY_MS).end_ms - NOW_MS == 21 * DAY_MS


def test_that_a_following_view_moves_with_now() -> None:
    view = spanned(Span.DAY, NOW_MS, None)
    assert moved_on(view, NOW_MS + 5000, None) == View(
        start_ms=view.start_ms + 5000, end_ms=view.end_ms + 5000, span=Span.DAY
    )


def test_that_a_view_that_was_dragged_stays() -> None:
    view = panned(spanned(Span.DAY, NOW_MS, None), -HOUR_MS, NOW_MS, NOW_MS - 30 * DAY_MS)
    assert not view.following
    assert view.span is None
    assert moved_on(view, NOW_MS + 5000, None) is view


def test_that_home_keeps_the_width_and_follows_now() -> None:
    away = zoomed(spanned(Span.WEEK, NOW_MS, None), 0.1, NOW_MS - 3 * DAY_MS)
    view = home(away, NOW_MS)
    assert view.following
    assert view.width_ms == away.width_ms
    assert view.start_ms < NOW_MS < view.end_ms


@given(share=st.floats(0.0, 1.0), factor=st.floats(0.05, 20.0))
def test_that_zooming_leaves_the_time_under_the_pointer_where_it_was(share: float, factor: float) -> None:
    view = spanned(Span.DAY, NOW_MS, None)
    about_ms = view.start_ms + share * view.width_ms
    after = zoomed(view, factor, about_ms)
    assert (about_ms - after.start_ms) / after.width_ms == pytest.approx(share, abs=1e-4)
    assert after.width_ms == pytest.approx(view.width_ms * factor, abs=2)


def test_that_zoom_ends_at_seconds_and_at_a_working_life() -> None:
    view = spanned(Span.DAY, NOW_MS, None)
    assert zoomed(view, 1e-9, NOW_MS).width_ms == 20_000
    assert 60 * 365 * DAY_MS < zoomed(view, 1e9, NOW_MS).width_ms < 61 * 365 * DAY_MS


@given(share=st.floats(0.0, 1.0), notches=st.lists(st.sampled_from([0.8, 1.25]), min_size=1, max_size=40))
def test_that_a_live_view_keeps_now_in_sight_however_it_is_zoomed(share: float, notches: list[float]) -> None:
    view = spanned(Span.DAY, NOW_MS, None)
    for factor in notches:
        view = zoomed_at(view, factor, view.start_ms + share * view.width_ms, NOW_MS)
        assert view.following
        assert view.start_ms < NOW_MS < view.end_ms


def test_that_a_live_view_zooms_about_the_pointer_and_then_moves_on_without_a_jump() -> None:
    view = spanned(Span.DAY, NOW_MS, None)
    about_ms = NOW_MS - 4 * HOUR_MS
    after = zoomed_at(view, 0.8, about_ms, NOW_MS)
    assert (about_ms - after.start_ms) / after.width_ms == pytest.approx(
        (about_ms - view.start_ms) / view.width_ms, abs=1e-6
    )
    later = moved_on(after, NOW_MS + 5000, None)
    assert later.start_ms == pytest.approx(after.start_ms + 5000, abs=1)
    assert (home(after, NOW_MS).end_ms - NOW_MS) / after.width_ms == pytest.approx(0.25, abs=1e-6)


def test_that_a_view_that_stays_may_be_zoomed_away_from_now() -> None:
    view = View(start_ms=NOW_MS - 10 * HOUR_MS, end_ms=NOW_MS + HOUR_MS, following=False)
    after = zoomed_at(view, 0.1, NOW_MS - 9 * HOUR_MS, NOW_MS)
    assert not after.following
    assert after.end_ms < NOW_MS


@pytest.mark.parametrize(("recoat_ms", "last_ms"), [(NOW_MS + 5 * HOUR_MS, NOW_MS + 5 * HOUR_MS), (None, NOW_MS)])
def test_that_a_coats_view_begins_an_hour_before_it_and_holds_its_recoat_time_or_now(
    recoat_ms: int | None, last_ms: int
) -> None:
    view = coat_view(NOW_MS - 3 * HOUR_MS, recoat_ms, NOW_MS)
    assert view.start_ms == NOW_MS - 4 * HOUR_MS
    assert last_ms < view.end_ms < last_ms + 2 * HOUR_MS
    assert not view.following


def test_that_keys_zoom_about_now_while_following() -> None:
    view = zoomed_here(spanned(Span.DAY, NOW_MS, None), 0.5, NOW_MS)
    assert view.following
    assert view.width_ms == pytest.approx(16 * HOUR_MS, abs=2)
    assert (view.end_ms - NOW_MS) / view.width_ms == pytest.approx(0.25, abs=1e-6)


def test_that_keys_zoom_about_the_middle_of_a_view_that_stays() -> None:
    view = View(start_ms=NOW_MS - 10 * HOUR_MS, end_ms=NOW_MS - 6 * HOUR_MS, following=False)
    after = zoomed_here(view, 0.5, NOW_MS)
    assert (after.start_ms, after.end_ms) == (NOW_MS - 9 * HOUR_MS, NOW_MS - 7 * HOUR_MS)


@given(by_ms=st.integers(-400 * DAY_MS, 400 * DAY_MS))
def test_that_dragging_never_loses_the_log(by_ms: int) -> None:
    first_ms = NOW_MS - 40 * DAY_MS
    view = panned(spanned(Span.DAY, NOW_MS, first_ms), by_ms, NOW_MS, first_ms)
    assert view.end_ms > first_ms
    assert view.start_ms < NOW_MS + 22 * DAY_MS


def test_that_dragging_the_view_of_a_young_log_does_not_jump() -> None:
    view = spanned(Span.EIGHT_HOURS, NOW_MS, NOW_MS - 60_000)
    assert panned(view, 1000, NOW_MS, NOW_MS - 60_000).start_ms == view.start_ms + 1000
    assert panned(view, -1000, NOW_MS, NOW_MS - 60_000).start_ms == view.start_ms
