"""Films that dry in the air that she typed: the ages of readings, restarts, readings typed late."""

from __future__ import annotations

import pytest

from studiowatch.coats.learning import Seen
from studiowatch.coats.stages import Stage, Surface
from studiowatch.service.coat_tests import doubt_words
from studiowatch.service.commands import LayCoat, RecordLook
from studiowatch.service.happenings import WarningHappened
from studiowatch.studio.concern import Kind
from studiowatch.studio.pieces import Coat, Finding

from .scripted import START_MS
from .typed_studio import HOUR_MS, MINUTE_MS, Studio, span_ms


def test_that_a_film_dries_on_in_typed_air_until_the_next_reading_and_nobody_calls_a_board_silent() -> None:
    studio = Studio()
    first = studio.type_in().pieces[0].coats[0]
    after = studio.wait(30 * MINUTE_MS).pieces[0].coats[0]
    assert after.water_g_m2 < 0.9 * first.water_g_m2
    studio.wait(7 * HOUR_MS, step_ms=MINUTE_MS)
    assert studio.coat().surface is Surface.DRY
    assert studio.coat().unlogged_ms == 0
    assert not any(isinstance(one, WarningHappened) and one.warning.kind is Kind.BOARD_SILENT for one in studio.told)


def test_that_ranges_widen_with_the_age_of_the_reading_and_a_new_one_takes_back_what_is_to_come() -> None:
    studio = Studio(coats=(Coat(key="g", sheet="gloss-waterborne", laid_ms=START_MS + HOUR_MS, volume_mL=43),))
    studio.type_in()
    studio.wait(HOUR_MS + MINUTE_MS)
    old_low, old_high = span_ms(studio.coat(), Stage.TACK_FREE)
    fresh = Studio(coats=studio.coats, now_ms=START_MS + HOUR_MS)
    fresh.type_in()
    fresh.wait(MINUTE_MS)
    low, high = span_ms(fresh.coat(), Stage.TACK_FREE)
    assert old_low < low
    assert old_high > high
    studio.type_in()
    studio.wait(2 * MINUTE_MS)
    again_low, again_high = span_ms(studio.coat(), Stage.TACK_FREE)
    assert again_high - again_low < old_high - old_low


def test_that_a_restart_sees_the_film_that_was_there() -> None:
    studio = Studio()
    studio.type_in()
    studio.wait(50 * MINUTE_MS)
    studio.type_in(temperature_C=18.0, humidity_pct=62.0)
    studio.wait(40 * MINUTE_MS)
    before = studio.coat()
    studio.open()
    studio.look()
    after = studio.coat()
    assert after.water_g_m2 == pytest.approx(before.water_g_m2, rel=1e-3)
    assert after.unlogged_ms == 0
    assert studio.snapshot().room.temperature_C == 18.0
    for stage in (Stage.SET_TO_TOUCH, Stage.TACK_FREE):
        assert after.stage(stage).time_ms == pytest.approx(before.stage(stage).time_ms, abs=2 * MINUTE_MS)


def test_that_a_closed_program_took_nothing_from_a_film_that_dries_in_typed_air() -> None:
    studio = Studio()
    studio.type_in()
    studio.now_ms += 6 * HOUR_MS
    studio.open()
    assert studio.coat().surface is Surface.DRY
    assert studio.coat().unlogged_ms == 0


def test_that_a_computer_that_slept_took_nothing_either() -> None:
    studio = Studio()
    studio.type_in()
    studio.wait(MINUTE_MS)
    studio.now_ms += 6 * HOUR_MS
    studio.look()
    assert studio.coat().surface is Surface.DRY
    assert studio.coat().unlogged_ms == 0


def test_that_a_reading_typed_late_dries_the_coat_anew_from_when_it_was_read() -> None:
    late = Studio()
    late.now_ms += 40 * MINUTE_MS
    late.look()
    late.type_in(time_ms=START_MS)
    prompt = Studio()
    prompt.type_in()
    prompt.wait(40 * MINUTE_MS)
    assert late.coat().unlogged_ms == 0
    assert late.coat().water_g_m2 == pytest.approx(prompt.coat().water_g_m2, rel=2e-2)


def test_that_a_coat_laid_on_a_reading_begins_in_its_air() -> None:
    studio = Studio(coats=())
    studio.type_in()
    studio.wait(20 * MINUTE_MS)
    order = LayCoat(piece_key="p", laid_ms=studio.now_ms, sheet="gloss-waterborne")
    studio.watch.carry_out(order, studio.now_ms, studio.now_ms / 1000)
    studio.wait(20 * MINUTE_MS)
    coat = studio.coat()
    assert coat.film_C is not None
    assert coat.unlogged_ms == 0
    assert coat.stage(Stage.DRY_TO_RECOAT).p90_ms is not None


def test_that_a_touch_test_between_two_readings_is_learnt_from_and_dries_the_coat_anew() -> None:
    studio = Studio()
    studio.type_in()
    studio.wait(4 * HOUR_MS, step_ms=MINUTE_MS)
    before = studio.coat()
    # still tacky after four hours: no draw of this sheet in this room holds that, so others must be dried
    studio.watch.carry_out(
        RecordLook(coat_key="g", time_ms=studio.now_ms, finding=Finding.TACKY), studio.now_ms, studio.now_ms / 1000
    )
    studio.wait(2 * MINUTE_MS)
    after = studio.coat()
    assert studio.snapshot().own_fault == ""
    assert "tacky 4 h after laying" in after.doubt
    assert after.stage(Stage.DRY_TO_RECOAT).p90_ms > before.stage(Stage.DRY_TO_RECOAT).p90_ms
    assert after.unlogged_ms == 0


@pytest.mark.parametrize(("after_s", "told"), [(20.0, "1 min"), (300.0, "5 min"), (18_720.0, "5 h 12 min")])
def test_that_a_doubted_test_is_told_with_its_age_in_minutes_too(after_s: float, told: str) -> None:
    test = Seen(after_s=after_s, stage=Stage.CLEAR, reached=True)
    assert f" {told} after laying" in doubt_words(test, is_wider=False)
    assert f" {told} after laying" in doubt_words(test, is_wider=True)
