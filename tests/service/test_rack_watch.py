"""The rack: what is recorded can be watched, a restart sees the same film, and a set clock dries nothing."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime

import pytest

from studiowatch.coats.stages import Stage
from studiowatch.service.commands import AmendPiece, CoverCoat, LayCoat, RecordLook, Refused
from studiowatch.service.log_air import airs
from studiowatch.service.rack_views import piece_views
from studiowatch.studio.pieces import Finding

from .racks import AIR, DAY_MS, HOUR_MS, gloss, piece, rack
from .rooms import START_MS, room
from .scripted import still


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({"volume_mL": 0.05}, "0.0925926 µm"),  # on 0.54 m²
        ({"volume_mL": 6000}, "11111.1 µm"),
        ({"laid_ms": START_MS - 40 * 365 * 24 * HOUR_MS}, "more than 10 years ago"),
    ],
)
def test_that_a_coat_that_could_not_be_watched_is_refused_before_it_is_on_disk(
    changes: dict[str, float], words: str
) -> None:
    made = rack(piece())
    order = replace(LayCoat(piece_key="p", laid_ms=START_MS, sheet="gloss-waterborne"), **changes)
    with pytest.raises(Refused, match=words):
        made.carry_out(order, START_MS)
    assert made.pieces["p"].coats == ()
    assert made.records.pieces()[0].coats == ()


def test_that_an_amended_size_is_tried_on_the_coats_that_are_on() -> None:
    made = rack(piece(gloss("g", START_MS - HOUR_MS)))
    with pytest.raises(Refused, match="430000 µm"):  # 43 mL on 1 cm²
        made.carry_out(AmendPiece(piece_key="p", width_cm=1, height_cm=1), START_MS)
    assert made.pieces["p"].width_cm == 60


def test_that_a_missing_sheet_leaves_the_coat_on_the_rack_and_the_others_watched() -> None:
    held = piece(gloss("a", START_MS - 30 * HOUR_MS, sheet="hers"), gloss("b", START_MS - HOUR_MS))
    made = rack(held)
    assert "b" in made.runs
    assert "hers" in made.stacks.unwatched["a"]
    assert made.stacks.labels(made.pieces["p"])[1].startswith("gloss")
    assert made.advance(AIR, START_MS + 60_000) == []


def test_that_a_set_clock_neither_dries_a_film_nor_stops_it() -> None:
    made = rack(piece(gloss("g", START_MS)))
    made.advance(AIR, START_MS + 600_000)
    before = made.runs["g"].film.water_g_m2
    for step_ms in (2 * HOUR_MS, -3 * HOUR_MS):
        made.shift(step_ms)
        assert made.runs["g"].film.water_g_m2 == before
    now_ms = START_MS + 600_000 - HOUR_MS
    made.advance(AIR, now_ms + 60_000)
    assert made.runs["g"].film.elapsed_s == pytest.approx(660)
    assert made.runs["g"].unlogged_ms == 0


@pytest.mark.parametrize("step_ms", [HOUR_MS, -HOUR_MS, 30 * DAY_MS, -30 * DAY_MS])
def test_that_after_a_set_clock_a_restart_sees_a_coat_as_old_as_it_is(step_ms: int) -> None:
    made = rack(piece())
    key = made.carry_out(LayCoat(piece_key="p", laid_ms=START_MS, sheet="gloss-waterborne"), START_MS)
    made.follow(START_MS)
    made.carry_out(CoverCoat(coat_key=key, covered_ms=START_MS + 300_000), START_MS + 300_000)
    made.carry_out(RecordLook(coat_key=key, time_ms=START_MS + 400_000, finding=Finding.TACKY), START_MS + 400_000)
    made.follow(START_MS + 400_000)
    made.records.save_pieces(made.shift(step_ms))
    now_ms = START_MS + 600_000 + step_ms
    made.advance(AIR, now_ms)
    again = rack(made.records.pieces()[0], [still(now_ms - 60_000)])
    again.follow(now_ms)
    (coat,) = again.pieces["p"].coats
    assert coat.laid_ms == START_MS + step_ms
    assert (coat.covered_from_ms, coat.looks[0].time_ms) == (coat.laid_ms + 300_000, coat.laid_ms + 400_000)
    assert made.runs[key].coat == coat
    assert again.runs[key].film.is_wet


def test_that_a_coat_laid_before_the_watch_began_keeps_its_time_and_none_slips_below_it() -> None:
    lower_ms = START_MS - 3 * HOUR_MS
    made = rack(piece(gloss("a", lower_ms)), [still(START_MS - 60_000)])
    made.carry_out(LayCoat(piece_key="p", laid_ms=START_MS, sheet="gloss-waterborne"), START_MS)
    made.follow(START_MS)
    made.advance(AIR, START_MS + 60_000)
    made.shift(-2 * HOUR_MS)
    assert [coat.laid_ms for coat in made.pieces["p"].coats] == [lower_ms, START_MS - 2 * HOUR_MS]
    made.shift(-HOUR_MS // 2)
    made.shift(-HOUR_MS)
    laid = [coat.laid_ms for coat in made.pieces["p"].coats]
    assert laid == sorted(laid)


def test_that_a_coat_that_dries_is_never_left_in_a_time_to_come() -> None:
    made = rack(piece(gloss("a", START_MS - 60_000)), [still(START_MS - 60_000)])
    made.advance(AIR, START_MS)
    made.shift(-DAY_MS)
    assert made.pieces["p"].coats[0].laid_ms == START_MS - 60_000 - DAY_MS


def test_that_a_coat_laid_in_a_time_to_come_says_that_the_clock_is_behind() -> None:
    # a computer that lost its clock and was started before it was set
    made = rack(piece(gloss("g", START_MS)))
    for now_ms, says in ((START_MS - 30 * DAY_MS, "set the clock"), (START_MS + 1000, "")):
        (view,) = piece_views(made, lambda ms: datetime.fromtimestamp(ms / 1000, UTC).date(), now_ms)
        assert says in view.coats[0].unwatched
        assert bool(view.coats[0].unwatched) is bool(says)


def test_that_a_coat_from_before_the_clock_was_ever_set_is_cured_when_it_is() -> None:
    made = rack(piece(gloss("g", 600_000)))
    made.advance(AIR, 1_200_000)
    made.advance(AIR, START_MS)
    assert made.runs["g"].is_cured


def test_that_a_restart_sees_the_film_that_was_there() -> None:
    readings = room(6 * 3600, step_s=60, fan=lambda second: 1800 <= second < 3600)
    coat = gloss("g", START_MS + 30_000)
    live = rack(piece(coat))
    for time_ms, air in airs(readings):
        live.advance(air, time_ms)
    again = rack(piece(coat), readings)
    assert again.runs["g"].at_ms == live.runs["g"].at_ms
    # dry, it is taken through ten-minute means; at the worst a water content of 5 % then lags by a thousandth of it
    assert again.runs["g"].film.water_g_m2 == pytest.approx(live.runs["g"].film.water_g_m2, rel=1e-3)
    for stage in (Stage.SET_TO_TOUCH, Stage.DRY_TO_TOUCH):
        assert again.runs["g"].reached_ms(stage) == live.runs["g"].reached_ms(stage)


def test_that_after_a_restart_a_coat_lies_on_the_one_below_as_it_was_when_it_was_laid() -> None:
    readings = room(30 * 3600, step_s=300)
    early = piece(gloss("a", START_MS + 60_000), gloss("b", START_MS + 2 * HOUR_MS))
    late = piece(gloss("a", START_MS + 60_000), gloss("b", START_MS + 26 * HOUR_MS))
    assert rack(early, readings).runs["b"].film.sealed_in_g_m2 > 0.1
    assert rack(late, readings).runs["b"].film.sealed_in_g_m2 == 0.0


@pytest.mark.parametrize(("before_pct", "after_pct", "hole_pct"), [(50.0, 80.0, 80.0), (80.0, 50.0, 80.0)])
def test_that_a_hole_in_the_log_dries_a_wet_film_as_the_damper_of_its_ends_and_is_counted(
    before_pct: float, after_pct: float, hole_pct: float
) -> None:
    def humidity_pct(second: int) -> float:
        return before_pct if second <= 600 else hole_pct if second < 2400 else after_pct

    whole = room(2461, step_s=60, humidity_pct=humidity_pct)
    holed = [one for one in whole if not 600 < (one.time_ms - START_MS) // 1000 < 2400]
    coat = gloss("g", START_MS + 30_000)
    seen, unseen = rack(piece(coat), whole).runs["g"], rack(piece(coat), holed).runs["g"]
    assert (seen.unlogged_ms, unseen.unlogged_ms) == (0, 30 * 60_000)
    assert unseen.film.is_wet
    assert unseen.film.water_g_m2 == pytest.approx(seen.film.water_g_m2, rel=0.01)


def test_that_recoat_is_told_once_and_at_its_upper_bound() -> None:
    made = rack(piece(gloss("g", START_MS)))
    told = []
    for minute in range(1, 14 * 60):
        happened = made.advance(AIR, START_MS + minute * 60_000)
        told += [one for one in happened if one.stage is Stage.DRY_TO_RECOAT]
    assert len(told) == 1
    nominal_ms = made.runs["g"].reached_ms(Stage.DRY_TO_RECOAT)
    assert nominal_ms is not None
    assert told[0].time_ms > nominal_ms


def test_that_the_log_is_read_no_further_than_a_coat_takes_to_cure() -> None:
    readings = room(60 * 24 * 3600, step_s=600)
    made = rack(piece(gloss("g", START_MS + 60_000)), readings)
    run = made.runs["g"]
    cured_ms = run.reached_ms(Stage.CURED)
    assert cured_ms is not None
    assert cured_ms <= run.at_ms <= cured_ms + 3 * 24 * HOUR_MS
    made.advance(AIR, readings[-1].time_ms + HOUR_MS)
    assert run.reached_ms(Stage.CURED) == cured_ms
    assert run.unlogged_ms == 0
