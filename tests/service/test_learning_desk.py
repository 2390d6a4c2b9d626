"""What she finds by touch and by eye changes what is foretold: of the coat, of the next coats, and after a restart."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import pytest

from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air
from studiowatch.room.readings import Reading
from studiowatch.service.coat_run import CoatRun
from studiowatch.service.commands import ArchivePiece, RecordLook
from studiowatch.service.correction_commands import RestorePiece, TakeBackCoat, TakeBackLook
from studiowatch.service.learning_desk import LearningDesk, numbers_hash
from studiowatch.service.rack import Rack
from studiowatch.service.replaying import MemoryRecords, NoLog, replay
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.speech.units import Numbers, Units, choose
from studiowatch.store.database import open_database
from studiowatch.store.records import RecordsStore
from studiowatch.store.shapes import LearntRecord
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.pieces import Coat, Finding, Look, Piece

from .racks import HOUR_MS, MINUTE_MS, MinuteLog, carried_out
from .rooms import START_MS, room

ROOM = Air(temperature_C=20.5, humidity_pct=50.0, air_speed_m_s=0.04)
SHELF = SheetShelf.open()
GLOSS = "gloss-waterborne"


class FullDisk(MemoryRecords):
    """Records on a disk that is full."""

    full = True

    def save_learnt(self, learnt: LearntRecord) -> None:
        if self.full:
            raise StoreTrouble("The disk is full.")
        super().save_learnt(learnt)


def piece(
    number: int = 1, *, laid_ms: int | None = START_MS, sheet: str = GLOSS, looks: tuple[Look, ...] = ()
) -> Piece:
    coat = Coat(key=f"coat {number}", sheet=sheet, laid_ms=laid_ms, looks=looks)
    return Piece(key=f"piece {number}", title=f"Piece {number}", width_cm=40, height_cm=40, place=number, coats=(coat,))


def looked(*found: tuple[float, Finding]) -> tuple[Look, ...]:
    return tuple(
        Look(key=f"look {hours}", time_ms=START_MS + round(hours * HOUR_MS), finding=finding)
        for hours, finding in found
    )


def opened(*pieces: Piece, now_ms: int, records: MemoryRecords | None = None) -> Rack:
    records = records or MemoryRecords(held={})
    records.held.update({each.key: each for each in pieces})
    rack = Rack(shelf=SHELF, records=records, log=MinuteLog(now_ms, ROOM))
    rack.open(now_ms)
    return rack


def after_laying_h(run: CoatRun, stage: Stage) -> tuple[float, float, float]:
    ready = run.ahead[stage]
    assert ready.p10_s is not None
    assert ready.p50_s is not None
    assert ready.p90_s is not None
    return ready.p10_s / 3600.0, ready.p50_s / 3600.0, ready.p90_s / 3600.0


@pytest.fixture(scope="module")
def tack_free_h() -> float:
    """Return when the nominal coat is tack-free in the room of these tests."""
    run = opened(piece(), now_ms=START_MS + 6 * HOUR_MS).runs["coat 1"]
    reached_s = run.film.reached_s(Stage.TACK_FREE)
    assert reached_s is not None
    return reached_s / 3600.0


SLOW = ((1.15, Finding.TACKY), (1.4, Finding.TACKY), (1.7, Finding.DRY))
"""In times of the nominal time: a coat that takes about half as long again."""


def slow_looks(tack_free_h: float) -> tuple[Look, ...]:
    return looked(*((share * tack_free_h, finding) for share, finding in SLOW))


def test_that_a_tacky_coat_is_foretold_to_be_ready_later_and_more_narrowly(tack_free_h: float) -> None:
    now_ms = START_MS + 6 * HOUR_MS
    plain = after_laying_h(opened(piece(), now_ms=now_ms).runs["coat 1"], Stage.DRY_TO_RECOAT)
    told = after_laying_h(
        opened(piece(looks=slow_looks(tack_free_h)), now_ms=now_ms).runs["coat 1"], Stage.DRY_TO_RECOAT
    )
    assert told[1] > 1.15 * plain[1]
    assert told[2] / told[0] < plain[2] / plain[0]


def test_that_a_look_recorded_late_counts_as_one_recorded_at_once(tack_free_h: float) -> None:
    now_ms = START_MS + 6 * HOUR_MS
    known = opened(piece(looks=slow_looks(tack_free_h)), now_ms=now_ms)
    late = opened(piece(), now_ms=now_ms)
    for look in reversed(slow_looks(tack_free_h)):
        carried_out(late, RecordLook(coat_key="coat 1", time_ms=look.time_ms, finding=look.finding), now_ms)
    for quantile, other in zip(
        after_laying_h(known.runs["coat 1"], Stage.DRY_TO_RECOAT),
        after_laying_h(late.runs["coat 1"], Stage.DRY_TO_RECOAT),
        strict=True,
    ):
        # other draws of the same posterior: some 80 count, ln spread 0.2, four standard errors of a quantile
        assert other == pytest.approx(quantile, rel=0.15)


def test_that_the_next_coat_of_the_product_is_foretold_from_what_was_learnt(tack_free_h: float) -> None:
    now_ms = START_MS + 6 * HOUR_MS
    rack = opened(piece(looks=slow_looks(tack_free_h)), piece(2), now_ms=now_ms)
    plain = after_laying_h(opened(piece(2), now_ms=now_ms).runs["coat 2"], Stage.DRY_TO_RECOAT)
    assert after_laying_h(rack.runs["coat 2"], Stage.DRY_TO_RECOAT)[1] > 1.05 * plain[1]


def test_that_another_product_keeps_its_sheets_own_time(tack_free_h: float) -> None:
    rack = opened(piece(looks=slow_looks(tack_free_h)), now_ms=START_MS + 6 * HOUR_MS)
    _, middle, _ = rack.learning.belief(SHELF.get("satin-waterborne")).times_as_long()
    assert middle == pytest.approx(1.0, abs=1e-6)


def test_that_a_coat_that_is_drying_profits_from_a_test_on_its_neighbour(tack_free_h: float) -> None:
    now_ms = START_MS + 6 * HOUR_MS
    rack = opened(piece(), piece(2), now_ms=now_ms)
    before = after_laying_h(rack.runs["coat 2"], Stage.DRY_TO_RECOAT)[1]
    for look in slow_looks(tack_free_h):
        carried_out(rack, RecordLook(coat_key="coat 1", time_ms=look.time_ms, finding=look.finding), now_ms)
    assert after_laying_h(rack.runs["coat 2"], Stage.DRY_TO_RECOAT)[1] > 1.03 * before


def test_that_a_neighbour_is_foretold_as_before_once_the_only_test_is_taken_back(tack_free_h: float) -> None:
    now_ms = START_MS + 6 * HOUR_MS
    rack = opened(piece(), piece(2), now_ms=now_ms)
    before = after_laying_h(rack.runs["coat 2"], Stage.DRY_TO_RECOAT)
    look = slow_looks(tack_free_h)[1]
    key = carried_out(rack, RecordLook(coat_key="coat 1", time_ms=look.time_ms, finding=look.finding), now_ms)
    assert after_laying_h(rack.runs["coat 2"], Stage.DRY_TO_RECOAT) != before
    carried_out(rack, TakeBackLook(look_key=key), now_ms)
    assert after_laying_h(rack.runs["coat 2"], Stage.DRY_TO_RECOAT) == before


def test_that_a_neighbour_is_foretold_as_before_once_the_tested_coat_is_taken_back(tack_free_h: float) -> None:
    now_ms = START_MS + 6 * HOUR_MS
    rack = opened(piece(), piece(2), now_ms=now_ms)
    before = after_laying_h(rack.runs["coat 2"], Stage.DRY_TO_RECOAT)
    for look in slow_looks(tack_free_h):
        carried_out(rack, RecordLook(coat_key="coat 1", time_ms=look.time_ms, finding=look.finding), now_ms)
    assert after_laying_h(rack.runs["coat 2"], Stage.DRY_TO_RECOAT) != before
    carried_out(rack, TakeBackCoat(coat_key="coat 1"), now_ms)
    assert after_laying_h(rack.runs["coat 2"], Stage.DRY_TO_RECOAT) == before


def test_that_what_was_learnt_is_shown_in_words_with_the_number_of_tests(tack_free_h: float) -> None:
    rack = opened(piece(looks=slow_looks(tack_free_h)), piece(2), now_ms=START_MS + 6 * HOUR_MS)
    (view,) = rack.learning.views()
    assert (view.sheet, view.tests, view.coats) == (GLOSS, 3, 1)
    assert view.low < view.times_as_long < view.high
    assert (
        1.0 < view.times_as_long < 1.5
    )  # the coat took about half as long again, and not all of that is its product's
    assert view.sentence == (
        f"{SHELF.get(GLOSS).title} dries {view.times_as_long:.1f} times as long here as its sheet says "
        f"({view.low:.1f} to {view.high:.1f}), from 3 tests."
    )


def test_that_what_was_learnt_is_said_with_her_decimal_sign_once_she_chose_another(tack_free_h: float) -> None:
    rack = opened(piece(looks=slow_looks(tack_free_h)), now_ms=START_MS + 6 * HOUR_MS)
    (point,) = rack.learning.views()
    choose(Units(numbers=Numbers.COMMA))
    (comma,) = rack.learning.views()
    assert f" {point.times_as_long:.1f} times as long" in point.sentence
    assert comma == replace(point, sentence=comma.sentence)
    assert f" {point.times_as_long:.1f} ".replace(".", ",") in comma.sentence


def test_that_nothing_is_shown_without_tests() -> None:
    assert opened(piece(), now_ms=START_MS + HOUR_MS).learning.views() == ()


def test_that_what_was_learnt_outlives_the_piece_and_the_program(tmp_path: Path, tack_free_h: float) -> None:
    now_ms = START_MS + 6 * HOUR_MS
    database = open_database(tmp_path / "studio.sqlite3")
    records = RecordsStore(database, lambda: now_ms)
    records.save_piece(piece(looks=slow_looks(tack_free_h)))
    first = Rack(shelf=SHELF, records=records, log=MinuteLog(now_ms, ROOM))
    first.open(now_ms)
    records.save_piece(replace(piece(looks=slow_looks(tack_free_h)), archived=True))
    database.close()
    again = open_database(tmp_path / "studio.sqlite3")
    second = Rack(shelf=SHELF, records=RecordsStore(again, lambda: now_ms), log=MinuteLog(now_ms, ROOM))
    second.open(now_ms)
    assert second.runs == {}
    assert second.learning.views() == first.learning.views()
    again.close()


def test_that_a_piece_off_the_rack_leaves_no_draws_behind_and_comes_back_as_it_was(tack_free_h: float) -> None:
    now_ms = START_MS + 6 * HOUR_MS
    rack = opened(piece(looks=slow_looks(tack_free_h)), now_ms=now_ms)
    before = after_laying_h(rack.runs["coat 1"], Stage.DRY_TO_RECOAT)
    assert rack.runs["coat 1"].standing.rounds > 0  # her tests called for draws of its own
    assert "coat 1" in rack.learning._planned
    carried_out(rack, ArchivePiece(piece_key="piece 1"), now_ms)
    assert rack.learning._planned == {}
    carried_out(rack, RestorePiece(piece_key="piece 1"), now_ms)
    rack.advance(ROOM, now_ms + MINUTE_MS)
    assert after_laying_h(rack.runs["coat 1"], Stage.DRY_TO_RECOAT) == pytest.approx(before, rel=1e-3)


def test_that_a_sheet_with_other_numbers_is_another_product(tack_free_h: float) -> None:
    sheet = SHELF.get(GLOSS)
    slower = replace(sheet, touch_dry_min=2.0 * sheet.touch_dry_min)
    assert numbers_hash(slower) != numbers_hash(sheet)
    assert numbers_hash(replace(sheet, title="Renamed")) == numbers_hash(sheet)
    records = MemoryRecords(held={})
    opened(piece(looks=slow_looks(tack_free_h)), now_ms=START_MS + 6 * HOUR_MS, records=records)
    desk = LearningDesk(records=records, shelf=SheetShelf(sheets={GLOSS: slower}))
    desk.reopen()
    assert desk.views() == ()
    assert desk.belief(slower).times_as_long()[1] == pytest.approx(1.0, abs=1e-6)


def test_that_a_look_against_every_draw_widens_the_range_and_is_said(tack_free_h: float) -> None:
    now_ms = START_MS + round(6 * tack_free_h * HOUR_MS)
    plain = after_laying_h(opened(piece(), now_ms=now_ms).runs["coat 1"], Stage.TACK_FREE)
    run = opened(piece(looks=looked((5 * tack_free_h, Finding.TACKY))), now_ms=now_ms).runs["coat 1"]
    told = after_laying_h(run, Stage.TACK_FREE)
    assert told[2] / told[0] > plain[2] / plain[0]
    assert run.doubt.startswith("Found tacky ")
    assert "test again" in run.doubt


def test_that_a_surprise_taken_back_within_minutes_leaves_no_trace(tack_free_h: float) -> None:
    now_ms = START_MS + round(6 * tack_free_h * HOUR_MS)
    rack = opened(piece(), now_ms=now_ms)
    plain = after_laying_h(rack.runs["coat 1"], Stage.TACK_FREE)
    at_ms = START_MS + round(5 * tack_free_h * HOUR_MS)
    carried_out(rack, RecordLook(coat_key="coat 1", time_ms=at_ms, finding=Finding.TACKY), now_ms)
    assert rack.runs["coat 1"].doubt
    carried_out(rack, RecordLook(coat_key="coat 1", time_ms=at_ms + MINUTE_MS, finding=Finding.DRY), now_ms)
    assert rack.runs["coat 1"].doubt == ""
    assert after_laying_h(rack.runs["coat 1"], Stage.TACK_FREE) == pytest.approx(plain, rel=0.02)


def test_that_a_stack_with_tests_on_two_coats_comes_to_rest(tack_free_h: float) -> None:
    lower = replace(piece(looks=slow_looks(tack_free_h)).coats[0], sheet="isolation-waterborne")
    upper_ms = START_MS + 8 * HOUR_MS
    late = tuple(
        replace(look, key=f"{look.key} upper", time_ms=look.time_ms + 8 * HOUR_MS) for look in slow_looks(tack_free_h)
    )
    stack = replace(piece(), coats=(lower, Coat(key="coat 2", sheet=GLOSS, laid_ms=upper_ms, looks=late)))
    now_ms = START_MS + 14 * HOUR_MS
    rack = opened(stack, now_ms=now_ms)
    rack.advance(ROOM, now_ms + 5_000)
    settled = dict(rack.runs)
    rack.advance(ROOM, now_ms + 10_000)
    assert all(rack.runs[key] is run for key, run in settled.items())
    assert {view.sheet for view in rack.learning.views()} == {"isolation-waterborne", GLOSS}


def test_that_looks_that_were_taken_out_while_the_program_was_shut_are_unlearnt(tack_free_h: float) -> None:
    now_ms, records = START_MS + 6 * HOUR_MS, MemoryRecords(held={})
    opened(piece(looks=slow_looks(tack_free_h)), now_ms=now_ms, records=records)
    rack = opened(piece(), now_ms=now_ms, records=records)
    assert rack.learning.views() == ()
    assert records.kept_learnt["coat 1"].rows == ()


def test_that_contradicting_looks_do_not_stop_the_watch(tack_free_h: float) -> None:
    both = looked(*((share * tack_free_h, f) for share, f in ((0.3, Finding.DRY), (3.0, Finding.TACKY))))
    run = opened(piece(looks=both), now_ms=START_MS + 6 * HOUR_MS).runs["coat 1"]
    low, middle, high = after_laying_h(run, Stage.TACK_FREE)
    assert low < middle < high


def test_that_a_look_at_clearness_of_paint_is_not_taken_for_a_test() -> None:
    looks = looked((1.0, Finding.CLEAR), (2.0, Finding.MILKY))
    rack = opened(piece(sheet="paint-brushed", looks=looks), now_ms=START_MS + 6 * HOUR_MS)
    assert rack.runs["coat 1"].tests() == ()
    assert rack.learning.views() == ()


def test_that_a_look_from_before_the_laying_is_not_taken_for_a_test() -> None:
    rack = opened(
        piece(laid_ms=START_MS + 2 * HOUR_MS, looks=looked((1.0, Finding.DRY))), now_ms=START_MS + 6 * HOUR_MS
    )
    assert rack.runs["coat 1"].tests() == ()


def test_that_what_was_learnt_stays_while_the_log_of_its_coat_cannot_be_had(tack_free_h: float) -> None:
    now_ms, records = START_MS + 6 * HOUR_MS, MemoryRecords(held={})
    first = opened(piece(looks=slow_looks(tack_free_h)), now_ms=now_ms, records=records)
    blind = Rack(shelf=SHELF, records=records, log=NoLog())
    blind.open(now_ms)
    assert blind.learning.views() == first.learning.views()


def test_that_a_full_disk_is_said_and_what_was_learnt_is_kept_later(tack_free_h: float) -> None:
    records = FullDisk(held={})
    now_ms = START_MS + 6 * HOUR_MS
    rack = opened(piece(looks=slow_looks(tack_free_h)), piece(2), now_ms=now_ms, records=records)
    assert rack.learning.trouble == "The disk is full."
    assert len(rack.learning.views()) == 1
    records.full = False
    at_ms = START_MS + round(0.8 * tack_free_h * HOUR_MS)
    carried_out(rack, RecordLook(coat_key="coat 2", time_ms=at_ms, finding=Finding.TACKY), now_ms)
    assert rack.learning.trouble == ""
    assert set(records.kept_learnt) == {"coat 1", "coat 2"}


def test_that_a_disk_that_has_room_again_is_said_no_longer_though_no_test_comes(tack_free_h: float) -> None:
    records = FullDisk(held={})
    now_ms = START_MS + 6 * HOUR_MS
    rack = opened(piece(looks=slow_looks(tack_free_h)), now_ms=now_ms, records=records)
    rack.advance(ROOM, now_ms + MINUTE_MS)
    assert rack.trouble == "The disk is full."
    records.full = False
    rack.advance(ROOM, now_ms + 2 * MINUTE_MS)
    assert rack.trouble == ""
    assert set(records.kept_learnt) == {"coat 1"}


@pytest.fixture
def replayed(tack_free_h: float) -> tuple[Piece, list[Reading]]:
    return piece(laid_ms=START_MS + MINUTE_MS, looks=slow_looks(tack_free_h)), room(3 * 3600, step_s=30)


def test_that_a_replay_learns_from_looks_in_the_course_of_its_log(replayed: tuple[Piece, list[Reading]]) -> None:
    laid, readings = replayed
    kept = replay(
        readings,
        [laid],
        shelf=SHELF,
        tell=lambda _: None,
        clock_text=lambda ms: datetime.fromtimestamp(ms / 1000, UTC).strftime("%H:%M"),
        local_date=lambda ms: datetime.fromtimestamp(ms / 1000, UTC).date(),
    )
    (view,) = kept.snapshot(readings[-1].time_ms).learnt
    assert view.tests == 3
    assert view.times_as_long > 1.0
