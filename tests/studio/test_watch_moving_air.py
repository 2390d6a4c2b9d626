"""The watch over moving air: what is said, how loud, about which pieces, and for how long it is held."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.studio.concern import Kind
from studiowatch.studio.words import Level

from .watched_room import CALM, FAN, KILN, MARSH, NOW_MS, STIRRED, look


def test_that_a_fan_over_two_wet_coats_is_said_in_plain_words() -> None:
    (concern,) = look(FAN, MARSH, KILN)
    assert concern.kind is Kind.AIR_MOVING
    assert concern.sentence.headline == "Air is moving over two wet coats"
    assert concern.sentence.detail == "A fan came on at 14:07 (0.34 m/s). Salt Marsh and Kiln Light are still wet."
    assert concern.sentence.advice == "Turn the fan off or turn it away."
    assert concern.piece_keys == ("p1", "p2")
    assert concern.began_ms == FAN.moving_since_ms
    assert concern.level is concern.sentence.level is Level.ACT
    assert concern.may_sound


def test_that_stage_one_is_shown_at_once_but_does_not_sound() -> None:
    (concern,) = look(STIRRED, MARSH)
    assert concern.level is Level.ACT
    assert not concern.may_sound
    assert concern.sentence.headline == "Air is moving over a wet coat"


@pytest.mark.parametrize(
    ("speed_m_s", "level", "sounds"),
    [
        (None, Level.ACT, False),
        (0.19, Level.CAUTION, False),
        (0.2, Level.ACT, False),
        (0.5, Level.ACT, False),
        (0.51, Level.ACT, True),
    ],
)
def test_that_the_speed_decides_how_much_stage_one_matters(
    speed_m_s: float | None,
    level: Level,
    sounds: bool,  # noqa: FBT001
) -> None:
    (concern,) = look(replace(STIRRED, air_speed_m_s=speed_m_s), MARSH)
    assert concern.level is level
    assert concern.may_sound is sounds


def test_that_an_unknown_speed_is_not_made_up() -> None:
    (concern,) = look(replace(FAN, air_speed_m_s=None), MARSH)
    assert "m/s" not in concern.sentence.detail


def test_that_a_covered_coat_is_a_caution_without_sound() -> None:
    (concern,) = look(replace(FAN, air_speed_m_s=0.8), replace(MARSH, covered=True))
    assert concern.level is Level.CAUTION
    assert not concern.may_sound
    assert concern.sentence.headline == "Air is moving over a covered coat"


def test_that_only_the_uncovered_pieces_are_named() -> None:
    (concern,) = look(FAN, replace(MARSH, covered=True), KILN)
    assert concern.piece_titles == ("Kiln Light",)
    assert concern.level is Level.ACT


def test_that_moving_air_over_no_wet_coat_is_no_concern() -> None:
    assert look(FAN) == ()
    assert look(FAN, replace(MARSH, wet=False)) == ()


def test_that_a_swinging_fan_keeps_its_level_and_its_sound() -> None:
    first = look(FAN, MARSH)
    (lull,) = look(replace(STIRRED, air_speed_m_s=0.12), MARSH, before=first, after_s=3)
    assert lull.level is Level.ACT
    assert lull.may_sound


def test_that_a_fan_that_has_just_gone_off_is_not_told_to_be_turned_off() -> None:
    (still_on,) = look(FAN, MARSH)
    (calming,) = look(replace(FAN, air_speed_m_s=0.05), MARSH, before=(still_on,), after_s=5)
    assert calming.sentence.headline == "The air is calming over a wet coat"
    assert "the air is down to 0.05 m/s now." in calming.sentence.detail  # no fan blows so softly
    assert "Turn the fan off" not in calming.sentence.advice
    assert calming.level is Level.ACT  # a swinging fan turns away and comes back: that is no new warning


def test_that_setting_the_cover_calms_a_warning_at_once() -> None:
    (concern,) = look(FAN, replace(MARSH, covered=True), before=look(FAN, MARSH), after_s=1)
    assert concern.level is Level.CAUTION
    assert not concern.may_sound


def test_that_moving_air_is_held_for_ten_seconds_and_then_dropped() -> None:
    first = look(FAN, MARSH)
    held = look(CALM, MARSH, before=first, after_s=9)
    assert held == first
    assert look(CALM, MARSH, before=held, after_s=10) == ()


def test_that_nothing_is_held_for_a_piece_no_longer_at_risk() -> None:
    assert look(CALM, KILN, before=look(FAN, MARSH), after_s=1) == ()


def test_that_the_earliest_beginning_is_kept() -> None:
    first = look(FAN, MARSH)
    later = replace(FAN, moving_since_ms=NOW_MS)
    assert look(later, MARSH, before=first, after_s=5)[0].began_ms == FAN.moving_since_ms


def test_that_who_walks_past_a_covered_coat_raises_nothing_and_a_fan_does() -> None:
    covered = replace(MARSH, covered=True)
    assert look(STIRRED, covered) == ()
    (concern,) = look(FAN, covered)
    assert concern.level is Level.CAUTION
    assert not concern.may_sound


def test_that_a_cover_set_in_moving_air_leaves_the_warning_until_the_air_is_still() -> None:
    before = look(STIRRED, MARSH)
    (concern,) = look(STIRRED, replace(MARSH, covered=True), before=before)
    assert concern.level is Level.CAUTION
