"""The lanes of the time behind: what left the rack, old warnings, prompts, at any width of view."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from pytestqt.qtbot import QtBot

from studiowatch.service.past import GonePiece, PastPrompt, PastView, PastWarning
from studiowatch.speech.units import Hours, choose
from studiowatch.studio.concern import Kind
from studiowatch.studio.words import Level
from studiowatch.ui.models.history_axis import TimeScale
from studiowatch.ui.models.history_lanes import Look
from studiowatch.ui.models.history_marks import RANKS, Mark, in_order, marks_table
from studiowatch.ui.models.history_past import LaneBook
from studiowatch.ui.models.history_view import View
from studiowatch.ui.models.times import DAY_MS, HOUR_MS, MINUTE_MS, local
from studiowatch.ui.theme import LIGHT
from studiowatch.ui.widgets.history import RoomHistory
from studiowatch.ui.widgets.history_worker import Answer

from .past_scenes import gone
from .scenes import FOUR_WARNED, NOW_MS

WIDE = View(start_ms=NOW_MS - 400 * DAY_MS, end_ms=NOW_MS, following=False)
TODAY = View(start_ms=NOW_MS - 8 * HOUR_MS, end_ms=NOW_MS, following=False)
SCALE = TimeScale(start_ms=0, end_ms=1_000_000, left_px=0.0, width_px=1000.0)


def warning(key: str, began_ms: int, *titles: str, kind: Kind = Kind.DAMP) -> PastWarning:
    return PastWarning(key=key, kind=kind, level=2, began_ms=began_ms, headline="Too damp", pieces=titles)


def book(*pieces: GonePiece, warnings: tuple[PastWarning, ...] = (), prompts: tuple[PastPrompt, ...] = ()) -> LaneBook:
    made = LaneBook()
    made.show_snapshot(FOUR_WARNED)
    made.show_past(PastView(pieces=pieces, warnings=warnings, prompts=prompts))
    return made


def test_that_what_left_the_rack_stands_below_it_where_it_is_in_view() -> None:
    made = book(gone("Ash Lane", NOW_MS - 100 * DAY_MS))
    rack = len(FOUR_WARNED.pieces)
    assert [lane.title for lane in made.lanes(WIDE)[rack:]] == ["off the rack"]
    assert len(made.lanes(TODAY)) == rack


def test_that_pieces_that_follow_each_other_share_a_lane_and_others_do_not() -> None:
    early, later = gone("Ash Lane", NOW_MS - 200 * DAY_MS), gone("The Weir", NOW_MS - 100 * DAY_MS)
    beside = gone("Hazel", NOW_MS - 199 * DAY_MS)
    lanes = book(later, beside, early).lanes(WIDE)[len(FOUR_WARNED.pieces) :]
    assert [{coat.label.split(" \N{MIDDLE DOT} ")[0] for coat in lane.coats} for lane in lanes] == [
        {"Ash Lane", "The Weir"},
        {"Hazel"},
    ]


@given(begins=st.lists(st.integers(20, 900), max_size=30))
def test_that_coats_of_one_lane_never_lie_over_each_other(begins: list[int]) -> None:
    pieces = [gone(f"Piece {at}", NOW_MS - day * DAY_MS) for at, day in enumerate(begins)]
    lanes = book(*pieces).lanes(replace(WIDE, start_ms=NOW_MS - 1000 * DAY_MS))[len(FOUR_WARNED.pieces) :]
    for lane in lanes:
        ends = [(coat.start_ms, coat.end_ms or 0) for coat in lane.coats]
        assert all(before[1] <= after[0] for before, after in pairwise(ends))
    assert sum(len(lane.coats) for lane in lanes) == 4 * len(begins)


def test_that_a_coat_says_when_it_was_laid_how_it_came_out_and_when_it_was_wet() -> None:
    made = book(gone("Ash Lane", NOW_MS - 100 * DAY_MS))
    lane = made.lanes(WIDE)[-1]
    second = lane.coats[1]
    assert [block.look for block in second.blocks] == [Look.ONCE_WET, Look.CLOUDED]
    assert "wet by its sheet" in lane.words(second.start_ms + MINUTE_MS)
    assert lane.words(second.start_ms + 10 * HOUR_MS).endswith(", came out milky in patches")
    assert lane.words(second.start_ms + MINUTE_MS).startswith("Ash Lane \N{MIDDLE DOT} gloss 1: ")


def test_that_the_time_of_an_old_laying_is_said_on_the_clock_that_she_chose_since() -> None:
    made = book(gone("Ash Lane", NOW_MS - 100 * DAY_MS))
    twelve = replace(FOUR_WARNED.units, hours=Hours.TWELVE)
    choose(twelve)
    made.show_snapshot(replace(FOUR_WARNED, units=twelve))
    for coat in made.lanes(WIDE)[-1].coats:
        assert twelve.clock(local(coat.start_ms)) in coat.ready_words


def test_that_an_old_warning_stands_in_the_lane_of_its_piece_in_its_time_and_in_its_panel() -> None:
    piece = gone("Ash Lane", NOW_MS - 100 * DAY_MS)
    then_ms = piece.coats[0].laid_ms + HOUR_MS
    long_before = warning("old 1", then_ms - 50 * DAY_MS, "Ash Lane")
    made = book(piece, warnings=(long_before, warning("old 2", then_ms, "Ash Lane")))
    assert made.lanes(WIDE)[-1].marks.time_ms.tolist() == [then_ms]
    assert {then_ms, long_before.began_ms} <= set(made.in_panels.time_ms.tolist())


def test_that_a_warning_at_hand_is_not_marked_twice() -> None:
    at_hand = FOUR_WARNED.warnings[0]
    made = book(warnings=(warning(at_hand.key, at_hand.began_ms, *at_hand.piece_titles),))
    assert len(made.marks.marks) == len(FOUR_WARNED.warnings)


def test_that_an_old_warning_stays_with_a_piece_still_on_the_rack() -> None:
    piece = FOUR_WARNED.pieces[0]
    laid_ms = min(coat.laid_ms for coat in piece.coats if coat.laid_ms is not None)
    made = book(warnings=(warning("old", laid_ms + HOUR_MS, piece.title),))
    assert laid_ms + HOUR_MS in made.lanes(TODAY)[0].marks.time_ms.tolist()


def test_that_prompts_stand_where_they_were_done() -> None:
    piece = gone("Ash Lane", NOW_MS - 100 * DAY_MS)
    prompts = (
        PastPrompt(piece_key=piece.key, due_ms=NOW_MS - 99 * DAY_MS, done_ms=NOW_MS - 98 * DAY_MS, text="Scrape"),
        PastPrompt(piece_key=piece.key, due_ms=NOW_MS - 97 * DAY_MS, done_ms=None, text="Look"),
    )
    lane = book(piece, prompts=prompts).lanes(WIDE)[-1]
    assert [(mark.time_ms, mark.words) for mark in lane.prompts.marks] == [
        (NOW_MS - 98 * DAY_MS, "done: Scrape"),
        (NOW_MS - 97 * DAY_MS, "not ticked: Look"),
    ]


def test_that_the_same_past_again_makes_nothing_anew() -> None:
    past = PastView(pieces=(gone("Ash Lane", NOW_MS - 100 * DAY_MS),))
    made = LaneBook()
    made.show_snapshot(FOUR_WARNED)
    made.show_past(past)
    table = made.table(WIDE)
    made.show_past(past)
    assert made.table(WIDE) is table


@given(
    times=st.lists(st.tuples(st.integers(0, 999_999), st.sampled_from([Level.CAUTION, Level.ACT])), max_size=60),
    slot_px=st.floats(1.0, 400.0),
)
def test_that_no_mark_is_lost_in_a_cluster_and_the_most_urgent_is_the_one_shown(
    times: list[tuple[int, Level]], slot_px: float
) -> None:
    marks = [Mark(time_ms=time_ms, level=level, kind=Kind.DAMP, words="") for time_ms, level in times]
    shown = marks_table((in_order(marks), in_order(marks[:3]))).clusters(SCALE, slot_px)
    assert shown.count[shown.row == 0].sum() == len(marks)
    assert shown.count[shown.row == 1].sum() == len(marks[:3])
    assert shown.rank.tolist() == sorted(shown.rank.tolist())
    slot_ms = round(slot_px * 1000)
    for time_ms, rank in zip(shown.time_ms[shown.row == 0], shown.rank[shown.row == 0], strict=True):
        same = [level for at, level in times if at // slot_ms == time_ms // slot_ms]
        assert RANKS[rank] == max(same)


def test_that_the_words_of_several_say_how_many() -> None:
    marks = in_order([Mark(time_ms=at, level=Level.ACT, kind=Kind.DAMP, words=f"at {at}") for at in (10, 20, 90)])
    near = marks.near(15, 8)
    assert near is not None
    assert near.words == "at 20 (and 1 more)"
    assert marks.near(55, 8) is None


@pytest.fixture
def plot(qtbot: QtBot) -> RoomHistory:
    shown = RoomHistory()
    qtbot.addWidget(shown)
    shown.resize(900, 620)
    shown.show()
    shown.set_snapshot(FOUR_WARNED)
    return shown


@pytest.mark.parametrize("width_ms", [20 * HOUR_MS, 30 * DAY_MS, 365 * DAY_MS, 3650 * DAY_MS])
def test_that_a_coat_that_clouded_is_seen_at_any_width(plot: RoomHistory, width_ms: int) -> None:
    piece = gone("Ash Lane", NOW_MS - 100 * DAY_MS)
    plot.apply(Answer(serial=9, past=PastView(pieces=(piece,))))
    clouded = piece.coats[1]
    middle_ms = (clouded.laid_ms + (clouded.end_ms or 0)) // 2
    plot._move(View(start_ms=middle_ms - width_ms // 2, end_ms=middle_ms + width_ms // 2, following=False))
    canvas = plot.canvas
    image = canvas.grab().toImage()
    layout = canvas.arrange()
    row = len(canvas.lanes) - 1
    top_px = layout.lanes.top_px + row * layout.rows.row_px - canvas.scroll_px
    lane = [
        image.pixelColor(x, y).name()
        for x in range(round(layout.left_px), round(layout.left_px + layout.width_px))
        for y in range(round(top_px), round(min(top_px + layout.rows.row_px, layout.lanes.bottom_px)))
    ]
    assert LIGHT.act_wash in lane or LIGHT.act in lane


def test_that_a_warning_of_a_year_ago_is_drawn_in_a_view_of_the_year(plot: RoomHistory) -> None:
    began_ms = NOW_MS - 300 * DAY_MS
    before = _red(plot)
    plot.apply(Answer(serial=9, past=PastView(pieces=(), warnings=(warning("w", began_ms, "Ash Lane"),))))
    assert np.count_nonzero(_red(plot) & ~before) > 10


def _red(plot: RoomHistory) -> np.ndarray:
    plot._move(WIDE)
    plot.canvas.refresh()
    image = plot.canvas.grab().toImage().convertToFormat(plot.canvas.grab().toImage().Format.Format_RGB32)
    pixels = np.frombuffer(image.constBits(), dtype=np.uint32).reshape(image.height(), -1) & 0xFFFFFF
    return np.asarray(pixels == int(LIGHT.act[1:], 16))
