"""Panels: ranges, limits, values under the pointer, and the strokes that are drawn of a series."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import pytest

from studiowatch.coats.stages import Orientation, Surface
from studiowatch.service.board_view import BoardView
from studiowatch.service.piece_view import CoatView, PieceView
from studiowatch.service.ports import Series
from studiowatch.service.snapshot import RoomView, Snapshot
from studiowatch.studio.concern import Kind
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.models.history_axis import TimeScale, value_scale
from studiowatch.ui.models.history_fetch import covers, film_series, plan, shared
from studiowatch.ui.models.history_live import EMPTY, RoomData
from studiowatch.ui.models.history_panels import PLACES, Place, empty_stretches, panels_of
from studiowatch.ui.models.history_strokes import place_words, strokes
from studiowatch.ui.models.history_view import HOUR_MS, Span, View, panned, spanned

NOW_MS = 1_795_000_000_000


def series(*rows: tuple[int, float, float, float], bucket_ms: int = 1000) -> Series:
    """Return a series of rows: seconds from now, low, high, mean."""
    table = np.array(rows, float)
    return Series(
        time_ms=(NOW_MS + table[:, 0] * 1000).astype(np.int64),
        low=table[:, 1],
        high=table[:, 2],
        mean=table[:, 3],
        bucket_ms=bucket_ms,
    )


def flat(first_s: int, last_s: int, value: float) -> list[tuple[int, float, float, float]]:
    return [(second, value, value, value) for second in range(first_s, last_s)]


def coat(surface: Surface, limit_C: float | None, limit_humidity_pct: float | None) -> CoatView:
    return CoatView(
        key=f"{surface}{limit_C}",
        sheet="sheet",
        label="gloss",
        sheen="gloss",
        clear_film=True,
        laid_ms=NOW_MS,
        surface=surface,
        milky=False,
        wet_um=100.0,
        dry_um=40.0,
        limit_C=limit_C,
        limit_humidity_pct=limit_humidity_pct,
    )


def snapshot(*coats: CoatView) -> Snapshot:
    piece = PieceView(
        key="p",
        title="Salt Marsh",
        width_cm=60,
        height_cm=90,
        support="canvas",
        orientation=Orientation.FACE_UP,
        due=None,
        coats=coats,
    )
    return Snapshot(
        time_ms=NOW_MS,
        board=BoardView(),
        room=RoomView(time_ms=NOW_MS),
        sentence=Sentence(level=Level.CALM, headline=""),
        pieces=(piece,),
    )


def test_that_the_strictest_limits_of_the_wet_coats_are_shown_in_words() -> None:
    wet = (coat(Surface.WET, 9.0, 80.0), coat(Surface.TACKY, 12.0, 75.0), coat(Surface.DRY, 15.0, 60.0))
    temperature, humidity, air = panels_of(RoomData(), EMPTY, snapshot(*wet))
    assert [(limit.value, limit.words) for limit in temperature.limits] == [(12.0, "film must stay above 12 °C")]
    assert [(limit.value, limit.words) for limit in humidity.limits] == [(75.0, "too damp for a wet coat")]
    # 0.2 m/s: within the draught rates of ISO 7730, 0.15 to 0.31 m/s at 18 to 28 °C, 20 % dissatisfied.
    assert [(limit.value, limit.words) for limit in air.limits] == [(0.2, "moving air")]


def test_that_no_limit_is_shown_when_nothing_is_wet() -> None:
    assert [panel.limits for panel in panels_of(RoomData(), EMPTY, snapshot(coat(Surface.DRY, 9.0, 75.0)))] == [()] * 3
    assert [panel.limits for panel in panels_of(RoomData(), EMPTY, None)] == [()] * 3


def test_that_an_uncalibrated_signal_is_named_as_one_and_has_no_speed_limit() -> None:
    data = RoomData(air=series((-1, 50, 60, 55)), signal=True)
    air = panels_of(data, EMPTY, snapshot(coat(Surface.WET, None, None)))[2]
    assert "mV" in air.title
    assert "calibrated" in air.title
    assert air.limits == ()


def test_that_each_kind_of_warning_about_the_room_has_its_panel() -> None:
    assert PLACES[Kind.AIR_MOVING] is Place.AIR
    assert PLACES[Kind.DAMP] is Place.HUMIDITY
    assert PLACES[Kind.NEAR_DEW_POINT] is Place.TEMPERATURE
    assert Kind.BOARD_SILENT not in PLACES


def test_that_a_range_holds_peaks_and_limits_but_not_what_is_out_of_view() -> None:
    data = RoomData(air=series(*flat(-3600, 0, 0.05), (1, 0.05, 0.61, 0.06), (9000, 3.0, 3.0, 3.0)))
    air = panels_of(data, EMPTY, snapshot(coat(Surface.WET, None, None)))[2]
    scale = air.scale(NOW_MS - HOUR_MS, NOW_MS + HOUR_MS, 4)
    assert 0.61 <= scale.high < 1.0
    assert scale.low == 0.0


def test_that_a_calm_room_is_not_magnified_into_a_storm() -> None:
    data = RoomData(temperature=series(*flat(-600, 0, 20.0)))
    scale = panels_of(data, EMPTY, None)[0].scale(NOW_MS - 600_000, NOW_MS, 4)
    assert scale.high - scale.low >= 6.0


def test_that_a_reading_tells_the_mean_or_the_range_or_that_there_is_none() -> None:
    data = RoomData(air=series((-60, 0.04, 0.05, 0.04), (-50, 0.04, 0.34, 0.09), bucket_ms=10_000))
    air = panels_of(data, EMPTY, None)[2]
    (curve,) = air.curves
    assert air.reading(curve, NOW_MS - 60_000) == "0.04"
    assert air.reading(curve, NOW_MS - 51_000) == "0.04\N{EN DASH}0.34"
    assert air.reading(curve, NOW_MS) == "no reading"


TIME = TimeScale(start_ms=NOW_MS - 600_000, end_ms=NOW_MS, left_px=0.0, width_px=600.0)
VALUE = value_scale(0.0, 100.0, 4)


def test_that_a_gap_is_not_bridged() -> None:
    drawn = strokes(series(*flat(-600, -400, 20.0), *flat(-200, 0, 20.0)), TIME, VALUE, 0.0, 100.0)
    longest_px = (drawn.segments[:, 2] - drawn.segments[:, 0]).max()
    assert longest_px == pytest.approx(1.0)
    assert not len(drawn.dots)


def test_that_two_lost_readings_are_no_gap() -> None:
    drawn = strokes(series(*flat(-600, -400, 20.0), *flat(-397, -300, 20.0)), TIME, VALUE, 0.0, 100.0)
    assert (drawn.segments[:, 2] - drawn.segments[:, 0]).max() == pytest.approx(4.0)


def test_that_a_log_kept_once_a_minute_is_one_line() -> None:
    slow = series(*((second, 20.0, 20.0, 20.0) for second in range(-600, 1, 60)))
    assert len(strokes(slow, TIME, VALUE, 0.0, 100.0).segments) == 10


def test_that_readings_typed_every_two_hours_are_dots_that_no_line_joins() -> None:
    day = TimeScale(start_ms=NOW_MS - 86_400_000, end_ms=NOW_MS, left_px=0.0, width_px=600.0)
    typed = series(*((second, 20.0, 20.0, 20.0) for second in range(-72_000, 1, 7200)))
    drawn = strokes(typed, day, VALUE, 0.0, 100.0)
    assert (len(drawn.segments), len(drawn.dots)) == (0, 11)


def test_that_a_lone_reading_is_a_dot() -> None:
    drawn = strokes(series(*flat(-600, -500, 20.0), (-300, 50.0, 50.0, 50.0)), TIME, VALUE, 0.0, 100.0)
    assert drawn.dots.tolist() == [[pytest.approx(300.0), pytest.approx(50.0)]]


def test_that_a_peak_becomes_a_bar_from_least_to_greatest() -> None:
    drawn = strokes(series(*flat(-600, -300, 20.0), (-300, 20.0, 90.0, 21.0)), TIME, VALUE, 0.0, 100.0)
    assert drawn.bars.tolist() == [[pytest.approx(300.0), pytest.approx(10.0), pytest.approx(80.0)]]


def test_that_an_empty_series_draws_nothing() -> None:
    drawn = strokes(EMPTY, TIME, VALUE, 0.0, 100.0)
    assert (len(drawn.bars), len(drawn.segments), len(drawn.dots)) == (0, 0, 0)


def test_that_a_limits_words_give_way_to_the_curve() -> None:
    free = place_words(50.0, (100.0, 12.0), TIME, [], now_px=600.0)
    curve = strokes(series(*flat(-120, 0, 55.0)), TIME, VALUE, 0.0, 100.0)  # runs just above the line, at the right
    given_way = place_words(50.0, (100.0, 12.0), TIME, [curve], now_px=600.0)
    assert free == (496.0, 38.0)
    assert given_way == (496.0, 51.0)


@pytest.mark.parametrize("now_px", [80.0, 300.0, 500.0, 560.0])
def test_that_the_line_of_now_never_crosses_a_limits_words(now_px: float) -> None:
    left_px, _ = place_words(50.0, (160.0, 12.0), TIME, [], now_px)
    assert left_px + 160.0 < now_px or now_px < left_px
    assert left_px + 160.0 <= TIME.right_px


def test_that_stretches_without_any_reading_are_found_up_to_the_edges() -> None:
    data = RoomData(
        temperature=series(*flat(-600, -500, 20.0)), air=series(*flat(-520, -480, 0.05), *flat(-100, 0, 0.05))
    )
    panels = panels_of(data, EMPTY, None)
    found = empty_stretches(panels, NOW_MS - 900_000, NOW_MS, 60_000)
    assert [(start_ms - NOW_MS, end_ms - NOW_MS) for start_ms, end_ms in found] == [
        (-900_000, -600_000),
        (-481_000, -100_000),
    ]
    assert empty_stretches(panels, NOW_MS - 90_000, NOW_MS, 60_000) == ()


def test_that_a_stretch_counts_as_read_up_to_the_pixel_since() -> None:
    view = spanned(Span.EIGHT_HOURS, NOW_MS, None)
    request = plan(view, 600, NOW_MS)
    assert covers(request, view, NOW_MS)
    assert not covers(None, view, NOW_MS)
    assert not covers(request, panned(view, -20 * HOUR_MS, NOW_MS, NOW_MS - 500 * HOUR_MS), NOW_MS)


def test_that_what_is_read_covers_the_view_with_a_margin_but_not_the_future() -> None:
    view = spanned(Span.EIGHT_HOURS, NOW_MS, None)
    request = plan(view, 600, NOW_MS)
    assert request is not None
    assert request.start_ms < view.start_ms
    bucket_ms = (request.end_ms - request.start_ms) // request.buckets
    assert NOW_MS <= request.end_ms < NOW_MS + bucket_ms
    assert bucket_ms == pytest.approx(view.width_ms / 600, rel=0.01)


def test_that_a_following_view_asks_again_only_after_a_pixel_of_time() -> None:
    first, second, later = (
        plan(spanned(Span.EIGHT_HOURS, NOW_MS + s * 1000, None), 600, NOW_MS + s * 1000) for s in (2, 3, 70)
    )
    assert first == second
    assert first != later


def test_that_buckets_are_never_finer_than_readings() -> None:
    request = plan(View(start_ms=NOW_MS - 20_000, end_ms=NOW_MS), 600, NOW_MS)
    assert request is not None
    assert (request.end_ms - request.start_ms) // request.buckets == 1000


def test_that_nothing_is_read_for_a_view_of_the_future() -> None:
    view = panned(spanned(Span.EIGHT_HOURS, NOW_MS, None), 500 * HOUR_MS, NOW_MS, NOW_MS - HOUR_MS)
    assert plan(view, 600, NOW_MS) is None


MINUTE_MS = 60_000


def piece_with_films(*traces: Sequence[tuple[int, float]]) -> PieceView:
    coats = tuple(
        CoatView(
            key=str(number),
            sheet="gloss",
            label="gloss",
            sheen="gloss",
            clear_film=True,
            laid_ms=trace[0][0],
            surface=Surface.WET,
            milky=True,
            wet_um=80,
            dry_um=30,
            film_trace=tuple(trace),
        )
        for number, trace in enumerate(traces)
    )
    return PieceView(
        key="p",
        title="Low Tide",
        width_cm=40,
        height_cm=40,
        support="panel",
        orientation=Orientation.FACE_UP,
        due=None,
        coats=coats,
    )


def test_that_the_coldest_of_two_wet_films_is_shown_and_a_dip_is_kept_when_thinned() -> None:
    mild = [(NOW_MS + minute * MINUTE_MS, 18.0) for minute in range(120)]
    cold = [(NOW_MS + minute * MINUTE_MS, 15.0 if minute == 75 else 17.0) for minute in range(60, 90)]
    pieces = [piece_with_films(mild, cold)]
    fine = film_series(pieces, NOW_MS, NOW_MS + 2 * HOUR_MS, 1000)
    assert len(fine.time_ms) == 120
    assert fine.mean[[10, 75, 80, 100]].tolist() == [18.0, 15.0, 17.0, 18.0]
    coarse = film_series(pieces, NOW_MS, NOW_MS + 2 * HOUR_MS, 30 * MINUTE_MS)
    assert coarse.low.min() == 15.0
    assert coarse.high.max() == 18.0
    assert np.all(np.diff(coarse.time_ms) == 30 * MINUTE_MS)


def test_that_no_film_gives_no_curve() -> None:
    assert len(film_series([], NOW_MS, NOW_MS + HOUR_MS, 1000).time_ms) == 0


def test_that_buckets_which_only_one_series_has_are_left_out() -> None:
    left, right = shared(series(*flat(0, 5, 1.0)), series(*flat(3, 8, 1.0)))
    assert left.tolist() == [3, 4]
    assert right.tolist() == [0, 1]
