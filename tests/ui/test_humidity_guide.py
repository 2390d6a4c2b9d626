"""The guide of the humidity calibration, without a window."""

from __future__ import annotations

from studiowatch.room.humidity_calibration import Salt
from studiowatch.service.calibration_commands import CalibrateHumidity
from studiowatch.studio.words import Level
from studiowatch.ui.models.humidity_guide import (
    STEPS,
    HumidityGuide,
    HumidityStep,
    back,
    box_now,
    onward,
    result_rows,
    result_sentences,
)

from .board_scenes import HUMIDITY, box
from .scenes import MINUTE_MS, NOW_MS

WAITING = HumidityGuide(step=HumidityStep.WAIT_MAGNESIUM, shut_ms=NOW_MS - 41 * MINUTE_MS)


def test_that_the_steps_lead_from_what_is_needed_to_the_command() -> None:
    guide = HumidityGuide()
    salts = []
    for minute in range(5):
        salts.append(guide.salt)
        guide = onward(guide, NOW_MS + minute)
    assert salts == [None, *[Salt.MAGNESIUM_CHLORIDE] * 2, *[Salt.SODIUM_CHLORIDE] * 2]
    assert guide.step is HumidityStep.RESULT
    assert guide.command == CalibrateHumidity(magnesium_ms=NOW_MS + 2, sodium_ms=NOW_MS + 4)
    assert onward(guide, NOW_MS) == HumidityGuide()


def test_that_a_box_that_came_to_rest_may_be_read_beside_what_the_salt_gives() -> None:
    now = box_now(WAITING, box(33.4, minutes=40, from_pct=33.4), NOW_MS)
    assert now.may_take
    assert now.level is Level.CALM
    # 32.95 %: Greenspan (1977), table 2, 33.07 at 20 and 32.78 at 25 °C, at 22 °C between them
    assert now.words == "Flat: 33.4 %RH at 22.0 °C; the salt gives 33.0 %RH."


def test_that_what_was_flat_before_the_box_was_shut_does_not_count() -> None:
    just_shut = HumidityGuide(step=HumidityStep.WAIT_SODIUM, shut_ms=NOW_MS - 4 * MINUTE_MS)
    now = box_now(just_shut, box(33.4, minutes=40, from_pct=33.4), NOW_MS)
    assert not now.may_take
    assert "read for 4 of the 30 minutes" in now.words


def test_that_a_box_that_still_moves_says_by_how_much() -> None:
    now = box_now(WAITING, box(36.1, minutes=40), NOW_MS)
    assert not now.may_take
    assert "wait longer" in now.words


def test_that_a_box_far_from_its_salt_is_doubted_and_may_be_read_all_the_same() -> None:
    now = box_now(WAITING, box(52.0, minutes=40, from_pct=52.0), NOW_MS)
    assert now.may_take
    assert now.level is Level.CAUTION
    assert "tight" in now.words


def test_that_going_back_asks_for_the_reading_again() -> None:
    guide = HumidityGuide(step=HumidityStep.RESULT, magnesium_ms=1, sodium_ms=2)
    assert back(guide).sodium_ms is None
    assert back(guide).magnesium_ms == 1
    assert back(back(back(back(guide)))).magnesium_ms is None
    assert back(back(back(guide))).step is HumidityStep.WAIT_MAGNESIUM


def test_that_the_result_stands_beside_what_the_salts_give() -> None:
    head, magnesium, sodium = result_rows(HUMIDITY)
    assert head[1] == "Sensor read"
    assert magnesium == ("magnesium chloride", "36.1 %", "33.0 %", "22.0 °C")
    assert sodium == ("sodium chloride (table salt)", "77.2 %", "75.4 %", "22.0 °C")
    gain, examples = result_sentences(HUMIDITY)
    # by hand: (75.398 − 32.954) / (77.2 − 36.1) = 1.0327; 32.954 + 1.0327 (50 − 36.1) = 47.31
    assert gain.startswith("Gain 1.033;")
    assert "50 % to 47.3 %" in examples


def test_that_the_cautions_of_the_salts_stand_where_they_are_handled() -> None:
    for step in (HumidityStep.NEEDED, HumidityStep.SHUT_MAGNESIUM, HumidityStep.SHUT_SODIUM):
        said = " ".join(STEPS[step].cautions)
        assert "food" in said
        assert "eyes" in said
        assert "sheets come first" in said
