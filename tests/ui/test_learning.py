"""What a touch test moved, and what was learnt: the words."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime

import pytest

from studiowatch.physics.air import Air
from studiowatch.service.commands import RecordLook
from studiowatch.service.piece_view import PieceView
from studiowatch.service.rack import Rack
from studiowatch.service.rack_views import piece_views
from studiowatch.service.replaying import MemoryRecords
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.snapshot import Snapshot
from studiowatch.studio.pieces import Coat, Finding, Piece
from studiowatch.ui.models.learning import WAIT_MS, AnsweredTest, learnt_line, learnt_of, learnt_sentence

from .scenes import FOUR_WARNED, HERONS, LEARNT, NOW_MS, ORCHARD, NoLog

MINUTE_MS, HOUR_MS = 60_000, 3_600_000
TESTED = replace(ORCHARD, next_ms=NOW_MS + 148 * MINUTE_MS)  # 16:40


def with_piece(piece: PieceView) -> Snapshot:
    return replace(FOUR_WARNED, pieces=(piece, *FOUR_WARNED.pieces[1:]))


def moved(**changed: object) -> str:
    tested = AnsweredTest(piece_key=TESTED.key, before=with_piece(TESTED))
    return tested.moved_words(with_piece(replace(TESTED, **changed)), UTC)


def test_that_a_ready_time_that_moved_says_from_when_to_when() -> None:
    later = TESTED.next_ms + 40 * MINUTE_MS
    assert moved(next_ms=later) == "Ready time moved from 16:40 to 17:20 · Orchard at Low Water"
    sooner = TESTED.next_ms - 40 * MINUTE_MS
    assert moved(next_ms=sooner) == "Ready time moved from 16:40 to 16:00 · Orchard at Low Water"
    assert moved(next_ms=TESTED.next_ms + 24 * HOUR_MS).startswith("Ready time moved from 16:40 to Thu 16:40")


@pytest.mark.parametrize("changed", [{}, {"next_ms": TESTED.next_ms + MINUTE_MS}, {"next_step": "recoat: satin"}])
def test_that_drift_and_another_step_are_no_move(changed: dict[str, object]) -> None:
    assert moved(**changed) == ""


def test_that_the_day_is_said_once() -> None:
    morning = replace(TESTED, next_ms=NOW_MS + 18 * HOUR_MS)
    tested = AnsweredTest(piece_key=morning.key, before=with_piece(morning))
    said = tested.moved_words(with_piece(replace(morning, next_ms=NOW_MS + 19 * HOUR_MS)), UTC)
    assert said.startswith("Ready time moved from Thu 08:12 to 09:12 ")


@pytest.mark.parametrize(("finding", "later"), [(Finding.TACKY, True), (Finding.DRY, False)])
def test_that_the_words_say_what_a_real_test_did_to_a_real_coat(finding: Finding, *, later: bool) -> None:
    # tacky when most such coats are dry means a slow coat, dry when most are tacky a quick one
    coats = (Coat(key="a", sheet="gloss-waterborne", laid_ms=NOW_MS), Coat(key="b", sheet="satin-waterborne"))
    piece = Piece(key="p", title="Gate", width_cm=40, height_cm=40, coats=coats)
    rack = Rack(shelf=SheetShelf.open(), records=MemoryRecords(held={"p": piece}), log=NoLog())
    rack.open(NOW_MS)
    at_ms = NOW_MS + (75 if later else 30) * MINUTE_MS
    for time_ms in range(NOW_MS, at_ms + 1, MINUTE_MS):
        rack.advance(Air(temperature_C=20.5, humidity_pct=50.0, air_speed_m_s=0.05), time_ms)
    before = seen(rack, at_ms)
    rack.carry_out(RecordLook(coat_key="a", time_ms=at_ms, finding=finding), at_ms)
    rack.follow(at_ms)
    after = seen(rack, at_ms)
    assert (after.pieces[0].next_ms > before.pieces[0].next_ms) is later
    said = AnsweredTest(piece_key="p", before=before).moved_words(after, UTC)
    assert said.startswith("Ready time moved from ")
    assert said.endswith(" · Gate")
    assert learnt_line(after.pieces[0], after.learnt).endswith("the sheet's time here, 1 test")


def seen(rack: Rack, now_ms: int) -> Snapshot:
    pieces = piece_views(rack, lambda ms: datetime.fromtimestamp(ms / 1000, UTC).date(), now_ms)
    return replace(FOUR_WARNED, time_ms=now_ms, pieces=pieces, learnt=rack.learning.views())


def test_that_a_day_far_off_is_a_move_only_as_another_day() -> None:
    far = replace(TESTED, next_ms=NOW_MS + 20 * 24 * HOUR_MS)
    tested = AnsweredTest(piece_key=far.key, before=with_piece(far))
    assert tested.moved_words(with_piece(replace(far, next_ms=far.next_ms + HOUR_MS)), UTC) == ""
    assert "from 24 Mar to 26 Mar" in tested.moved_words(
        with_piece(replace(far, next_ms=far.next_ms + 48 * HOUR_MS)), UTC
    )


def test_that_a_ready_time_that_goes_or_comes_is_told() -> None:
    assert moved(next_ms=None) == "Ready time was 16:40, none is in sight now · Orchard at Low Water"
    tested = AnsweredTest(piece_key=TESTED.key, before=with_piece(replace(TESTED, next_ms=None)))
    assert tested.moved_words(with_piece(TESTED), UTC) == "Ready time in sight now: 16:40 · Orchard at Low Water"
    assert tested.moved_words(with_piece(replace(TESTED, next_ms=None)), UTC) == ""


def test_that_a_piece_that_was_taken_off_moves_nothing_and_the_wait_ends() -> None:
    tested = AnsweredTest(piece_key=TESTED.key, before=with_piece(TESTED))
    gone = replace(FOUR_WARNED, pieces=())
    assert tested.moved_words(gone, UTC) == ""
    assert not tested.is_over(replace(gone, time_ms=NOW_MS + WAIT_MS))
    assert tested.is_over(replace(gone, time_ms=NOW_MS + WAIT_MS + 1))
    assert tested.is_over(replace(gone, time_ms=NOW_MS - 3_600_000))  # the clock was set back


def test_that_the_top_coat_is_spoken_of_before_the_next() -> None:
    satin = replace(LEARNT, sheet="satin-waterborne", tests=1, sentence="Satin dries as its sheet says.")
    assert learnt_of(ORCHARD, (satin, LEARNT)) == (ORCHARD.coats[2], LEARNT)
    assert learnt_of(HERONS, (satin, LEARNT)) is None  # its satin comes after an isolation coat
    next_satin = replace(ORCHARD, coats=(*ORCHARD.coats[:3], ORCHARD.coats[4]))
    assert learnt_line(next_satin, (satin,)) == "satin: 1.3 × the sheet's time here, 1 test"
    assert learnt_sentence(next_satin, (satin,)) == satin.sentence


def test_that_nothing_is_said_where_nothing_was_learnt() -> None:
    assert (learnt_line(ORCHARD, ()), learnt_sentence(ORCHARD, ())) == ("", "")
    bare = replace(ORCHARD, coats=())
    assert learnt_line(bare, (LEARNT,)) == ""


def test_that_the_coat_named_is_the_one_that_is_meant() -> None:
    second = replace(ORCHARD.coats[3], laid_ms=NOW_MS, surface=ORCHARD.coats[2].surface)
    over = replace(ORCHARD, coats=(*ORCHARD.coats[:3], second, ORCHARD.coats[4]))
    assert learnt_line(over, (LEARNT,)).startswith("gloss 2: ")
