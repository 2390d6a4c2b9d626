"""Lanes from snapshots, and where they stand."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.coats.stages import Orientation, Stage, Surface
from studiowatch.service.board_view import BoardView
from studiowatch.service.piece_view import CoatView, PieceView, StageTime
from studiowatch.service.snapshot import RoomView, Snapshot, WarningView
from studiowatch.studio.concern import Kind
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.models.history_axis import TimeScale
from studiowatch.ui.models.history_lanes import Block, Look, lane_rows, lanes_of
from studiowatch.ui.models.history_layout import layout_of, names_px
from studiowatch.ui.models.history_marks import Mark, in_order, marks_table, names_kept
from studiowatch.ui.models.history_words import description

NOW_MS = 1_795_000_000_000
HOUR_MS = 3_600_000


def stage(which: Stage, hours: float | None, p90_hours: float | None = None) -> StageTime:
    if hours is None:
        return StageTime(stage=which, time_ms=None, reached=False)
    time_ms = NOW_MS + round(hours * HOUR_MS)
    p90_ms = None if p90_hours is None else NOW_MS + round(p90_hours * HOUR_MS)
    return StageTime(stage=which, time_ms=time_ms, reached=hours <= 0, p90_ms=p90_ms)


def coat(key: str, laid_hours: float | None, *stages: StageTime, clear_film: bool = True) -> CoatView:
    return CoatView(
        key=key,
        sheet="sheet",
        label="gloss 1",
        sheen="gloss",
        clear_film=clear_film,
        laid_ms=None if laid_hours is None else NOW_MS + round(laid_hours * HOUR_MS),
        surface=None if laid_hours is None else Surface.WET,
        milky=False,
        wet_um=100.0,
        dry_um=40.0,
        stages=stages,
    )


def piece(title: str, *coats: CoatView) -> PieceView:
    return PieceView(
        key=title.lower(),
        title=title,
        width_cm=60,
        height_cm=90,
        support="canvas",
        orientation=Orientation.FACE_UP,
        due=None,
        coats=coats,
    )


def snapshot(*pieces: PieceView, warnings: tuple[WarningView, ...] = ()) -> Snapshot:
    return Snapshot(
        time_ms=NOW_MS,
        board=BoardView(),
        room=RoomView(time_ms=NOW_MS),
        sentence=Sentence(level=Level.CALM, headline=""),
        pieces=pieces,
        warnings=warnings,
    )


FRESH = coat(
    "fresh",
    -1,
    stage(Stage.SET_TO_TOUCH, 0.5),
    stage(Stage.TACK_FREE, 1.5),
    stage(Stage.DRY_TO_RECOAT, 4, p90_hours=6),
)


def test_that_a_coat_is_wet_until_set_tacky_until_tack_free_and_then_dry_until_ready() -> None:
    (lane,) = lanes_of(snapshot(piece("Salt Marsh", FRESH)))
    assert lane.coats[0].blocks == (
        Block(look=Look.WET, start_ms=NOW_MS - HOUR_MS, end_ms=NOW_MS + HOUR_MS // 2),
        Block(look=Look.TACKY, start_ms=NOW_MS + HOUR_MS // 2, end_ms=NOW_MS + 3 * HOUR_MS // 2),
        Block(look=Look.DRY, start_ms=NOW_MS + 3 * HOUR_MS // 2, end_ms=NOW_MS + 6 * HOUR_MS),
    )


def test_that_ready_is_promised_late_in_the_range_until_it_is_reached() -> None:
    (lane,) = lanes_of(snapshot(piece("Salt Marsh", FRESH)))
    assert lane.coats[0].ready_ms == NOW_MS + 6 * HOUR_MS
    reached = coat("old", -20, stage(Stage.DRY_TO_RECOAT, -2, p90_hours=1))
    (lane,) = lanes_of(snapshot(piece("Salt Marsh", reached)))
    assert lane.coats[0].ready_ms == NOW_MS - 2 * HOUR_MS
    assert lane.coats[0].ready_words.startswith("ready since")


def test_that_a_lane_is_ready_for_the_coat_planned_and_not_for_one_that_waits_less() -> None:
    lower = coat("low", -9, stage(Stage.SET_TO_TOUCH, -8), stage(Stage.TACK_FREE, -7), stage(Stage.DRY_TO_RECOAT, -1))
    through = {"next_ms": NOW_MS + 2 * HOUR_MS, "next_p10_ms": NOW_MS - HOUR_MS, "next_p90_ms": NOW_MS + 2 * HOUR_MS}
    (lane,) = lanes_of(snapshot(replace(piece("Salt Marsh", lower, coat("next", None)), **through)))
    assert lane.coats[0].ready_ms == NOW_MS + 2 * HOUR_MS
    assert lane.coats[0].ready_words.startswith("recoat ")
    assert lane.coats[0].blocks[-1] == Block(look=Look.DRY, start_ms=NOW_MS - 7 * HOUR_MS, end_ms=NOW_MS + 2 * HOUR_MS)


def test_that_a_coat_ends_where_the_next_is_laid() -> None:
    lower = coat(
        "lower", -20, stage(Stage.SET_TO_TOUCH, -19), stage(Stage.TACK_FREE, -18), stage(Stage.DRY_TO_RECOAT, 5)
    )
    (lane,) = lanes_of(snapshot(piece("Salt Marsh", lower, FRESH)))
    assert lane.coats[0].end_ms == NOW_MS - HOUR_MS
    assert lane.coats[0].ready_ms is None
    assert lane.top is lane.coats[-1]


def test_that_a_coat_that_will_not_dry_has_no_end_and_says_so() -> None:
    stuck = coat(
        "stuck", -1, stage(Stage.SET_TO_TOUCH, 1), stage(Stage.TACK_FREE, None), stage(Stage.DRY_TO_RECOAT, None)
    )
    (lane,) = lanes_of(snapshot(piece("Salt Marsh", stuck)))
    assert lane.coats[0].blocks[-1] == Block(look=Look.TACKY, start_ms=NOW_MS + HOUR_MS, end_ms=None)
    assert lane.coats[0].ready_ms is None
    assert "no recoat time" in lane.coats[0].ready_words


def test_that_a_coat_without_stages_is_still_on_its_lane() -> None:
    (lane,) = lanes_of(snapshot(piece("Salt Marsh", coat("bare", -1))))
    assert lane.coats[0].blocks == (Block(look=Look.WET, start_ms=NOW_MS - HOUR_MS, end_ms=None),)


def test_that_paint_is_one_block_until_dry_through() -> None:
    paint = coat("paint", -72, stage(Stage.TACK_FREE, -70), stage(Stage.DRY_THROUGH, 48), clear_film=False)
    (lane,) = lanes_of(snapshot(piece("Three Gulls", paint)))
    assert lane.coats[0].blocks == (
        Block(look=Look.PAINT, start_ms=NOW_MS - 72 * HOUR_MS, end_ms=NOW_MS + 48 * HOUR_MS),
    )


def test_that_planned_coats_leave_no_trace() -> None:
    (lane,) = lanes_of(snapshot(piece("Ferry", coat("planned", None))))
    assert lane.coats == ()
    assert lane.top is None


def test_that_a_warning_stands_in_the_lanes_of_its_pieces_only() -> None:
    warning = WarningView(
        key="w",
        kind=Kind.AIR_MOVING,
        state=WarningState.RAISED,
        level=Level.ACT,
        sentence=Sentence(level=Level.ACT, headline="Air is moving over a wet coat"),
        began_ms=NOW_MS - 300_000,
        cleared_ms=None,
        piece_titles=("Kiln Light",),
    )
    lanes = lanes_of(snapshot(piece("Salt Marsh", FRESH), piece("Kiln Light"), warnings=(warning,)))
    assert [lane.marks.time_ms.tolist() for lane in lanes] == [[], [NOW_MS - 300_000]]


def test_that_a_coat_stays_in_its_lane_as_ready_until_the_next_is_laid_or_now() -> None:
    lower = coat("lower", -30, stage(Stage.TACK_FREE, -28), stage(Stage.DRY_TO_RECOAT, -20))
    upper = coat("upper", -12, stage(Stage.TACK_FREE, -10), stage(Stage.DRY_TO_RECOAT, -2))
    (lane,) = lanes_of(snapshot(piece("Salt Marsh", lower, upper)))
    assert [one.blocks[-1] for one in lane.coats] == [
        Block(look=Look.READY, start_ms=NOW_MS - 20 * HOUR_MS, end_ms=NOW_MS - 12 * HOUR_MS),
        Block(look=Look.READY, start_ms=NOW_MS - 2 * HOUR_MS, end_ms=NOW_MS),
    ]
    assert lane.coats[0].words(NOW_MS - 15 * HOUR_MS) == "gloss 1: ready"
    assert lane.coats[1].words(NOW_MS - HOUR_MS).startswith("gloss 1: ready since ")


def test_that_a_coat_that_waits_for_nothing_is_not_ready_ahead_of_now() -> None:
    (lane,) = lanes_of(snapshot(piece("Salt Marsh", FRESH)))
    assert Look.READY not in {block.look for block in lane.coats[0].blocks}


def test_that_a_view_of_nothing_but_a_ready_coat_names_it_so() -> None:
    lower = coat("lower", -30, stage(Stage.TACK_FREE, -28), stage(Stage.DRY_TO_RECOAT, -20))
    (lane,) = lanes_of(snapshot(piece("Salt Marsh", lower)))
    assert lane.coats[0].title(NOW_MS - 8 * HOUR_MS, NOW_MS) == "gloss 1 \N{MIDDLE DOT} ready"
    assert lane.coats[0].title(NOW_MS - 24 * HOUR_MS, NOW_MS) == "gloss 1"


def test_that_a_coat_nobody_watches_is_neither_wet_nor_ready_and_says_why() -> None:
    why = "The data sheet pale gloss is missing; put it back among your sheets."
    (lane,) = lanes_of(snapshot(piece("Salt Marsh", replace(coat("lost", -5), unwatched=why))))
    (lost,) = lane.coats
    assert lost.blocks == (Block(look=Look.UNWATCHED, start_ms=NOW_MS - 5 * HOUR_MS, end_ms=NOW_MS),)
    assert lost.words(NOW_MS - HOUR_MS) == f"gloss 1: not watched. {why.rstrip('.')}"
    assert lost.title(NOW_MS - 8 * HOUR_MS, NOW_MS) == "gloss 1 \N{MIDDLE DOT} not watched"


def warning_about(*titles: str) -> WarningView:
    return WarningView(
        key="w",
        kind=Kind.DAMP,
        state=WarningState.RAISED,
        level=Level.ACT,
        sentence=Sentence(level=Level.ACT, headline="Damp air over a wet coat"),
        began_ms=NOW_MS - 300_000,
        cleared_ms=None,
        piece_titles=titles,
    )


def test_that_a_mark_stays_with_all_the_pieces_its_warning_ever_named() -> None:
    pieces = piece("Salt Marsh", FRESH), piece("Kiln Light", FRESH)
    named = names_kept({}, snapshot(*pieces, warnings=(warning_about("Salt Marsh", "Kiln Light"),)))
    later = snapshot(*pieces, warnings=(warning_about("Kiln Light"),))
    lanes = lanes_of(later, names_kept(named, later))
    assert [len(lane.marks.marks) for lane in lanes] == [1, 1]


def test_that_a_forgotten_warning_leaves_no_names() -> None:
    assert names_kept({"old": frozenset({"Salt Marsh"})}, snapshot()) == {}


def test_that_names_get_all_they_need_where_there_is_room_and_leave_the_curves_theirs() -> None:
    assert names_px(190.0, 900.0, 16.0) == 190.0
    assert names_px(190.0, 560.0, 16.0) == pytest.approx(0.19 * 560.0)


def test_that_warnings_too_close_to_tell_apart_show_the_most_urgent_on_top() -> None:
    scale = TimeScale(start_ms=NOW_MS, end_ms=NOW_MS + 600_000, left_px=0.0, width_px=600.0)
    marks = [
        Mark(time_ms=NOW_MS + seconds * 1000, level=level, kind=Kind.DAMP, words=f"{seconds}")
        for seconds, level in (
            (-5, Level.ACT),
            (101, Level.ACT),
            (102, Level.CAUTION),
            (103, Level.ACT),
            (300, Level.CAUTION),
        )
    ]
    shown = marks_table((in_order(marks),)).clusters(scale, 5.0)
    assert (shown.time_ms - NOW_MS).tolist() == [300_000, 103_000]
    assert shown.count.tolist() == [1, 3]


def test_that_the_coat_under_the_pointer_is_found_and_told() -> None:
    (lane,) = lanes_of(snapshot(piece("Salt Marsh", FRESH)))
    found = lane.coat_at(NOW_MS + HOUR_MS)
    assert found is not None
    assert found.words(NOW_MS + HOUR_MS).startswith("gloss 1: tacky, recoat ")
    assert lane.coat_at(NOW_MS + 7 * HOUR_MS) is None


@given(count=st.integers(1, 40), room_px=st.floats(22, 900))
def test_that_lanes_fit_or_scroll_and_never_get_lower_than_the_least(count: int, room_px: float) -> None:
    rows = lane_rows(count, room_px, 22.0, 44.0)
    assert 22.0 <= rows.row_px <= 44.0
    assert rows.part_px <= room_px
    assert rows.furthest_px == pytest.approx(max(count * rows.row_px - rows.part_px, 0), abs=1e-6)
    last_px = rows.scroll_to(count - 1, 0.0)
    assert last_px == pytest.approx(rows.furthest_px, abs=1e-6)
    assert rows.scroll_to(0, last_px) == 0.0


def test_that_a_height_finds_its_lane_through_the_scroll() -> None:
    rows = lane_rows(12, 110.0, 22.0, 44.0)
    assert rows.row_at(30.0, 0.0) == 1
    assert rows.row_at(30.0, 44.0) == 3
    assert rows.row_at(111.0, 0.0) is None
    assert rows.row_at(-1.0, 44.0) is None


@pytest.mark.parametrize("lane_count", [0, 1, 4, 12])
@pytest.mark.parametrize(("height_px", "line_px"), [(560.0, 15.0), (830.0, 15.0), (560.0, 30.0)])
def test_that_the_parts_follow_each_other_and_fill_the_height(
    lane_count: int, height_px: float, line_px: float
) -> None:
    layout = layout_of(700.0, height_px, line_px=line_px, gutter_px=100.0, lane_count=lane_count)
    edges = [layout.head.top_px, layout.head.bottom_px]
    for band in layout.panels:
        edges += [band.title.top_px, band.title.bottom_px, band.plot.top_px, band.plot.bottom_px]
    edges += [layout.lanes.top_px, layout.lanes.bottom_px, layout.foot.bottom_px]
    assert edges == sorted(edges)
    assert layout.foot.bottom_px <= height_px
    assert all(band.plot.height_px >= line_px for band in layout.panels)


def test_that_the_description_tells_each_piece_and_the_keys() -> None:
    words = description(snapshot(piece("Salt Marsh", FRESH), piece("Ferry", coat("planned", None))))
    assert "Salt Marsh: gloss 1 recoat " in words
    assert "Home" in words
