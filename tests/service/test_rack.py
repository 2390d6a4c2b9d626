"""The rack's runs: each coat is laid on the one below as that was by then, live, from the log and after the fact."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime

import pytest

from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air
from studiowatch.service.commands import AmendPiece, ArchivePiece, LayCoat, RecordLook
from studiowatch.service.correction_commands import RestorePiece
from studiowatch.service.happenings import StageHappened
from studiowatch.service.rack import Rack
from studiowatch.service.rack_risks import coats_at_risk
from studiowatch.service.rack_tending import coats_to_tend
from studiowatch.service.rack_views import piece_views
from studiowatch.service.replaying import MemoryRecords
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.studio.pieces import Coat, Finding, Piece

from .racks import AIR, HOUR_MS, MINUTE_MS, MinuteLog, carried_out
from .rooms import START_MS


def stacked(wait_ms: int, **changes: object) -> Piece:
    plain = Piece(
        key="p",
        title="Low Tide",
        width_cm=40,
        height_cm=40,
        coats=(
            Coat(key="low", sheet="gloss-waterborne", laid_ms=START_MS),
            Coat(key="top", sheet="gloss-waterborne", laid_ms=START_MS + wait_ms),
        ),
    )
    return replace(plain, **changes)


def rack_of(piece: Piece, log_end_ms: int) -> Rack:
    records = MemoryRecords(held={piece.key: piece})
    return Rack(shelf=SheetShelf.open(), records=records, log=MinuteLog(log_end_ms))


def lived(rack: Rack, since_ms: int, until_ms: int, *, step_ms: int = MINUTE_MS) -> list[StageHappened]:
    happened: list[StageHappened] = []
    for time_ms in range(since_ms, until_ms + 1, step_ms):
        happened += rack.advance(AIR, time_ms)
    return happened


def test_that_a_coat_from_the_log_is_laid_on_the_one_below_as_that_was_then() -> None:
    now_ms = START_MS + 6 * HOUR_MS
    rack = rack_of(stacked(HOUR_MS), now_ms)
    rack.open(now_ms)
    low, top = rack.runs["low"], rack.runs["top"]
    assert top.over is low
    assert top.film.below[0] is low.film
    # an hour after the brush most free water has gone from 80 µm, and bound water has not: 1 to 15 of its 49.5 g/m²
    assert 1.0 < top.film.sealed_in_g_m2 < 15.0
    assert top.film.trapped_g_m2 < top.film.sealed_in_g_m2
    assert low.at_ms == top.at_ms
    assert low.film.elapsed_s == pytest.approx(top.film.elapsed_s + 3600.0)


def test_that_live_and_from_the_log_a_stack_is_the_same() -> None:
    now_ms = START_MS + 4 * HOUR_MS
    logged = rack_of(stacked(HOUR_MS + 1000), now_ms)
    logged.open(now_ms + MINUTE_MS)
    live = rack_of(stacked(HOUR_MS + 1000), START_MS)
    live.open(START_MS)
    lived(live, START_MS, now_ms)
    for key in ("low", "top"):
        ours, theirs = live.runs[key], logged.runs[key]
        assert ours.at_ms == theirs.at_ms == now_ms
        assert ours.film.water_g_m2 == pytest.approx(theirs.film.water_g_m2, rel=1e-9)
    assert live.runs["top"].film.trapped_g_m2 == pytest.approx(logged.runs["top"].film.trapped_g_m2, rel=1e-9)


@pytest.mark.parametrize(("support", "absorbs"), [("canvas", False), ("raw canvas", True), ("bare panel", True)])
def test_that_only_the_lowest_coat_on_a_bare_support_gives_it_water(support: str, *, absorbs: bool) -> None:
    now_ms = START_MS + 30 * HOUR_MS
    rack = rack_of(stacked(24 * HOUR_MS, support=support), now_ms)
    rack.open(now_ms)
    assert (rack.runs["low"].film.soaked_g_m2 > 1.0) is absorbs
    assert rack.runs["top"].film.soaked_g_m2 == 0.0


def test_that_a_finding_speaks_against_ready_though_the_log_ends_before_it() -> None:
    # the log of three days ended two hours ago, and the film with it: it has not come to the test yet
    log_end_ms = START_MS + 72 * HOUR_MS
    now_ms = log_end_ms + 2 * HOUR_MS
    paint = Coat(key="low", sheet="paint-brushed", laid_ms=START_MS)
    rack = rack_of(stacked(0, coats=(paint, Coat(key="top", sheet="isolation-waterborne"))), log_end_ms)
    rack.open(now_ms)
    (before,) = piece_views(rack, lambda ms: datetime.fromtimestamp(ms / 1000, UTC).date(), now_ms)
    assert before.not_yet is None
    carried_out(rack, RecordLook(coat_key="low", time_ms=now_ms, finding=Finding.TACKY), now_ms)
    assert rack.runs["low"].at_ms <= log_end_ms
    (view,) = piece_views(rack, lambda ms: datetime.fromtimestamp(ms / 1000, UTC).date(), now_ms)
    assert view.next_ms is None
    assert view.not_yet is not None
    (tended,) = coats_to_tend(rack)
    assert tended.coat.unready is not None
    assert tended.coat.unready.again_ms == now_ms + 74 * HOUR_MS // 10
    rack.shift(HOUR_MS)
    assert rack.runs["low"].unready() is not None


def test_that_a_coat_over_one_that_is_not_watched_does_not_meet_the_support() -> None:
    low, top = stacked(HOUR_MS).coats
    piece = stacked(0, support="raw canvas", coats=(replace(low, sheet="lost"), top))
    rack = rack_of(piece, START_MS + 2 * HOUR_MS)
    rack.open(START_MS + 2 * HOUR_MS)
    assert "low" in rack.stacks.unwatched
    assert rack.runs["top"].film.soaked_g_m2 == 0.0


def test_that_a_support_found_to_be_bare_is_heeded_from_the_laying_on() -> None:
    now_ms = START_MS + 3 * HOUR_MS
    rack = rack_of(stacked(HOUR_MS), now_ms)
    rack.open(now_ms)
    sealed = rack.runs["low"]
    carried_out(rack, AmendPiece(piece_key="p", support="linen"), now_ms)
    assert rack.runs["low"] is sealed  # nothing dries differently on it
    carried_out(rack, AmendPiece(piece_key="p", support="raw linen"), now_ms)
    assert rack.runs["low"].film.soaked_g_m2 > 1.0
    known = rack_of(stacked(HOUR_MS, support="raw linen"), now_ms)
    known.open(now_ms)
    assert rack.runs["top"].film.water_g_m2 == pytest.approx(known.runs["top"].film.water_g_m2)


def test_that_both_coats_of_a_stack_tell_their_stages_once() -> None:
    rack = rack_of(stacked(HOUR_MS), START_MS)
    rack.open(START_MS)
    told = [
        (step.coat_number, step.stage)
        for step in lived(rack, START_MS, START_MS + 40 * HOUR_MS, step_ms=10 * MINUTE_MS)
    ]
    assert len(told) == len(set(told))
    for number in (1, 2):
        late = (
            {Stage.CURED} if number == 2 else {Stage.CURED, Stage.DRY_TO_RECOAT}
        )  # laid over before it was told ready
        assert {stage for coat, stage in told if coat == number} >= set(Stage) - late


def test_that_a_coat_told_of_after_the_fact_is_laid_on_the_one_below_as_that_was_then() -> None:
    now_ms = START_MS + 3 * HOUR_MS
    planned = stacked(0, coats=(stacked(0).coats[0], Coat(key="top", sheet="gloss-waterborne")))
    rack = rack_of(planned, now_ms)
    rack.open(now_ms)
    laid_ms = START_MS + HOUR_MS
    carried_out(rack, LayCoat(piece_key="p", laid_ms=laid_ms, sheet="gloss-waterborne", coat_key="top"), now_ms)
    told_at_once = rack_of(stacked(HOUR_MS), now_ms)
    told_at_once.open(now_ms)
    assert rack.runs["top"].film.sealed_in_g_m2 == pytest.approx(told_at_once.runs["top"].film.sealed_in_g_m2, rel=1e-9)
    assert rack.runs["top"].film.water_g_m2 == pytest.approx(told_at_once.runs["top"].film.water_g_m2, rel=1e-9)


def test_that_a_coat_laid_now_leaves_the_run_below_as_it_is() -> None:
    now_ms = START_MS + 3 * HOUR_MS
    planned = stacked(0, coats=(stacked(0).coats[0], Coat(key="top", sheet="gloss-waterborne")))
    rack = rack_of(planned, now_ms)
    rack.open(now_ms)
    low = rack.runs["low"]
    carried_out(rack, LayCoat(piece_key="p", laid_ms=now_ms, sheet="gloss-waterborne", coat_key="top"), now_ms)
    assert rack.runs["low"] is low
    assert rack.runs["top"].over is low


def test_that_coats_laid_before_any_reading_are_run_in_air_nobody_saw() -> None:
    laid_ms = START_MS - 30 * HOUR_MS
    piece = stacked(
        0,
        coats=(
            Coat(key="low", sheet="gloss-waterborne", laid_ms=laid_ms),
            Coat(key="top", sheet="gloss-waterborne", laid_ms=START_MS - HOUR_MS),
        ),
    )
    rack = rack_of(piece, START_MS - 1)
    rack.open(START_MS)
    assert rack.runs["low"].unlogged_ms == 29 * HOUR_MS
    assert rack.runs["top"].film.sealed_in_g_m2 == 0.0


def test_that_only_the_coat_on_top_is_at_risk_from_the_air_as_wet() -> None:
    now_ms = START_MS + HOUR_MS // 2
    rack = rack_of(stacked(HOUR_MS // 4), now_ms)
    rack.open(now_ms)
    assert [coat.wet for coat in coats_at_risk(rack)] == [False, True]


def test_that_the_lower_coat_is_still_shown() -> None:
    now_ms = START_MS + 2 * HOUR_MS
    rack = rack_of(stacked(HOUR_MS), now_ms)
    rack.open(now_ms)
    lower, upper = piece_views(rack, lambda ms: datetime.fromtimestamp(ms / 1000, UTC).date(), now_ms)[0].coats
    assert lower.surface is not None
    assert lower.milky
    assert upper.milky
    assert lower.water_g_m2 is not None
    assert {time.stage for time in lower.stages} == set(Stage)
    clear_lower, clear_upper = lower.stage(Stage.CLEAR), upper.stage(Stage.CLEAR)
    assert clear_lower is not None
    assert clear_upper is not None
    assert clear_lower.time_ms is not None
    assert clear_upper.time_ms is not None
    assert clear_upper.time_ms >= clear_lower.time_ms


def test_that_a_solvent_borne_coat_dries_like_any_other() -> None:
    now_ms = START_MS + 20 * HOUR_MS
    rack = rack_of(stacked(0, coats=(Coat(key="low", sheet="gloss-waterborne", laid_ms=START_MS),)), now_ms)
    rack.open(now_ms)
    carried_out(rack, LayCoat(piece_key="p", laid_ms=now_ms, sheet="gloss-solventborne"), now_ms)
    told = [step.stage for step in lived(rack, now_ms, now_ms + 40 * HOUR_MS, step_ms=10 * MINUTE_MS)]
    assert told.index(Stage.SET_TO_TOUCH) < told.index(Stage.DRY_TO_TOUCH) < told.index(Stage.DRY_TO_RECOAT)


def test_that_a_wet_solvent_borne_coat_is_at_risk_and_never_asked_about_milkiness() -> None:
    now_ms = START_MS + HOUR_MS // 2
    rack = rack_of(stacked(0, coats=(Coat(key="low", sheet="gloss-solventborne", laid_ms=START_MS),)), now_ms)
    rack.open(now_ms)
    assert [(coat.wet, coat.solvent) for coat in coats_at_risk(rack)] == [(True, True)]
    assert coats_to_tend(rack)[0].coat.clear_ms is None
    view = piece_views(rack, lambda ms: datetime.fromtimestamp(ms / 1000, UTC).date(), now_ms)[0].coats[0]
    assert not view.milky
    assert view.limit_humidity_pct is not None  # its own sheet names one


def test_that_a_piece_that_comes_back_on_the_rack_dries_by_the_room_that_was_logged_meanwhile() -> None:
    now_ms = START_MS + 6 * HOUR_MS
    stayed, back = (rack_of(stacked(2 * HOUR_MS), now_ms) for _ in range(2))
    for rack in (stayed, back):
        rack.open(now_ms)
    carried_out(back, ArchivePiece(piece_key="p"), now_ms)
    assert back.runs == {}
    carried_out(back, RestorePiece(piece_key="p"), now_ms)
    # the first air after that is cold and damp, as none of the hours since the laying was
    cold = Air(temperature_C=10.0, humidity_pct=80.0, air_speed_m_s=0.05)
    for rack in (stayed, back):
        rack.advance(cold, now_ms + MINUTE_MS)
    for key in ("low", "top"):
        assert back.runs[key].film.water_g_m2 == pytest.approx(stayed.runs[key].film.water_g_m2, rel=1e-9)
        assert back.runs[key].reached_ms(Stage.DRY_TO_TOUCH) == stayed.runs[key].reached_ms(Stage.DRY_TO_TOUCH)
