"""The watch: what is said, how loud, about which pieces, and what is kept quiet."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.room.air_movement import Movement
from studiowatch.studio.concern import AirNow, CoatAtRisk, Concern, Kind
from studiowatch.studio.watch import find_concerns
from studiowatch.studio.words import Level

NOW_MS = 1_772_460_000_000
CALM = AirNow(
    temperature_C=20.6, humidity_pct=57.0, air_speed_m_s=0.05, dew_point_C=11.8, movement=Movement.STILL, age_s=0.4
)
MARSH = CoatAtRisk(
    piece_key="p1", piece_title="Salt Marsh", coat_label="gloss 1", wet=True, forming=True, film_C=18.9, mfft_C=9.0
)
KILN = replace(MARSH, piece_key="p2", piece_title="Kiln Light", coat_label="isolation")
FAN = replace(CALM, air_speed_m_s=0.34, movement=Movement.FAN, moving_since_ms=NOW_MS - 300_000)
STIRRED = replace(FAN, movement=Movement.MOVING)


def clock_text(time_ms: int) -> str:
    minutes = (14 * 60 + 12) + (time_ms - NOW_MS) // 60_000
    return f"{minutes // 60}:{minutes % 60:02d}"


def look(
    air: AirNow,
    *coats: CoatAtRisk,
    before: tuple[Concern, ...] = (),
    after_s: float = 0.0,
    silent_after_s: float = 10.0,
) -> tuple[Concern, ...]:
    now_ms = NOW_MS + round(after_s * 1000)
    return find_concerns(air, coats, now_ms=now_ms, clock_text=clock_text, before=before, silent_after_s=silent_after_s)


def kinds(concerns: tuple[Concern, ...]) -> list[Kind]:
    return [concern.kind for concern in concerns]


def test_that_a_calm_room_is_no_concern() -> None:
    assert look(CALM, MARSH, KILN) == ()


def test_that_a_fan_over_two_wet_coats_is_said_in_plain_words() -> None:
    (concern,) = look(FAN, MARSH, KILN)
    assert concern.kind is Kind.AIR_MOVING
    assert concern.sentence.headline == "Air is moving over two wet coats"
    assert concern.sentence.detail == "A fan came on at 14:07 (0.34 m/s). Salt Marsh and Kiln Light are still wet."
    assert concern.sentence.advice == "Turn it off or turn it away."
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
    assert "Turn it off" not in calming.sentence.advice
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


def test_that_a_silent_board_over_a_wet_coat_must_be_acted_on_after_ten_seconds() -> None:
    assert look(replace(CALM, age_s=10.0), MARSH) == ()
    (concern,) = look(replace(CALM, age_s=10.1), MARSH, after_s=0.1)
    assert concern.kind is Kind.BOARD_SILENT
    assert concern.level is Level.ACT
    assert concern.may_sound
    assert concern.began_ms == NOW_MS - 10_000
    assert concern.sentence.headline == "The board is silent: a coat is not watched"
    assert concern.sentence.detail == "No reading since 14:11. Salt Marsh is still drying."


def test_that_a_silent_board_is_a_quiet_caution_after_a_minute_when_nothing_is_wet() -> None:
    assert look(replace(CALM, age_s=60.0)) == ()
    (concern,) = look(replace(CALM, age_s=60.1))
    assert concern.level is Level.CAUTION
    assert not concern.may_sound
    assert concern.piece_keys == ()


def test_that_the_patience_with_a_silent_board_can_be_set() -> None:
    old = replace(CALM, age_s=61.0)
    assert kinds(look(old, MARSH)) == [Kind.BOARD_SILENT]
    assert look(old, MARSH, silent_after_s=150.0) == ()


def test_that_a_silent_board_raises_nothing_else_from_readings_that_are_old() -> None:
    awful = replace(FAN, humidity_pct=95.0, age_s=20.0, implausible="The humidity leapt.")
    assert kinds(look(awful, MARSH)) == [Kind.BOARD_SILENT]


def test_that_a_silent_board_clears_as_soon_as_a_reading_comes() -> None:
    first = look(replace(CALM, age_s=20.0), MARSH)
    assert look(CALM, MARSH, before=first, after_s=1) == ()


def test_that_a_reading_that_cannot_be_right_hides_what_rests_on_it_but_not_the_air() -> None:
    air = replace(FAN, humidity_pct=99.0, implausible="The humidity leapt to 99 %.")
    concerns = look(air, MARSH)
    assert kinds(concerns) == [Kind.AIR_MOVING, Kind.READING_IMPLAUSIBLE]
    assert concerns[1].sentence.detail == "The humidity leapt to 99 %."
    assert concerns[1].level is Level.CAUTION


@pytest.mark.parametrize(
    ("humidity_pct", "level"), [(75.0, None), (75.1, Level.CAUTION), (85.0, Level.CAUTION), (85.1, Level.ACT)]
)
def test_that_damp_air_over_a_forming_coat_is_a_concern(humidity_pct: float, level: Level | None) -> None:
    concerns = look(replace(CALM, humidity_pct=humidity_pct), replace(MARSH, wet=False))
    assert [(concern.kind, concern.level) for concern in concerns] == ([(Kind.DAMP, level)] if level else [])


def test_that_the_sheets_own_humidity_limit_is_the_one_said() -> None:
    (concern,) = look(replace(CALM, humidity_pct=72.0), replace(MARSH, max_humidity_pct=70.0))
    assert concern.level is Level.ACT
    assert "the limit is 70 %" in concern.sentence.detail


def test_that_damp_does_not_flicker_at_its_limit() -> None:
    first = look(replace(CALM, humidity_pct=75.5), MARSH)
    later = look(replace(CALM, humidity_pct=73.5), MARSH, before=first, after_s=3600)
    assert kinds(later) == [Kind.DAMP]
    assert look(replace(CALM, humidity_pct=72.9), MARSH, before=later, after_s=7200) == ()


def test_that_damp_air_speaks_for_the_dew_point_that_it_brings_near() -> None:
    (concern,) = look(replace(CALM, humidity_pct=80.0, dew_point_C=17.0), MARSH)
    assert concern.kind is Kind.DAMP
    assert concern.level is Level.ACT
    assert "1.9 °C above the dew point (17.0 °C)" in concern.sentence.detail


def test_that_damp_air_takes_over_from_the_dew_point_without_a_moment_of_both() -> None:
    near = look(replace(CALM, humidity_pct=74.0, dew_point_C=15.0), MARSH)
    assert kinds(near) == [Kind.NEAR_DEW_POINT]
    damp = look(replace(CALM, humidity_pct=76.0, dew_point_C=15.4), MARSH, before=near, after_s=1)
    assert kinds(damp) == [Kind.DAMP]


@pytest.mark.parametrize(
    ("film_C", "level"), [(16.8, None), (16.7, Level.CAUTION), (14.8, Level.CAUTION), (14.7, Level.ACT)]
)
def test_that_a_cold_film_near_the_dew_point_is_a_concern(film_C: float, level: Level | None) -> None:
    concerns = look(CALM, replace(MARSH, film_C=film_C, mfft_C=None))
    assert [(concern.kind, concern.level) for concern in concerns] == ([(Kind.NEAR_DEW_POINT, level)] if level else [])


def test_that_the_air_stands_in_for_a_film_that_is_not_known() -> None:
    assert kinds(look(replace(CALM, dew_point_C=18.0), replace(MARSH, film_C=None))) == [Kind.NEAR_DEW_POINT]


def test_that_a_solvent_coat_near_the_dew_point_is_not_lost_behind_a_damp_warning() -> None:
    solvent = replace(KILN, solvent=True, mfft_C=None)
    concerns = look(replace(CALM, humidity_pct=88.0, dew_point_C=17.0), MARSH, solvent)
    by_kind = {concern.kind: concern.piece_titles for concern in concerns}
    assert by_kind == {Kind.DAMP: ("Salt Marsh",), Kind.NEAR_DEW_POINT: ("Kiln Light",)}


@pytest.mark.parametrize(
    ("film_C", "level"), [(14.0, None), (13.9, Level.CAUTION), (9.0, Level.CAUTION), (8.9, Level.ACT)]
)
def test_that_a_film_near_its_film_forming_temperature_is_a_concern(film_C: float, level: Level | None) -> None:
    air = replace(CALM, dew_point_C=2.0)
    concerns = look(air, replace(MARSH, film_C=film_C))
    assert [(concern.kind, concern.level) for concern in concerns] == ([(Kind.TOO_COLD, level)] if level else [])


def test_that_a_clear_coat_may_get_cold() -> None:
    assert look(replace(CALM, dew_point_C=0.0), replace(MARSH, film_C=5.0, forming=False)) == ()


def test_that_cold_words_name_the_film_and_its_limit() -> None:
    (concern,) = look(replace(CALM, dew_point_C=0.0), replace(MARSH, film_C=8.2))
    assert concern.sentence.headline == "Too cold for a drying coat"
    assert concern.sentence.detail == ("The film is at 8.2 °C and must stay above 9 °C until it is clear: Salt Marsh.")


def test_that_without_a_coat_at_risk_neither_damp_nor_cold_is_a_concern() -> None:
    awful = replace(CALM, temperature_C=3.0, humidity_pct=98.0, dew_point_C=2.7)
    assert look(awful) == ()
    assert look(awful, replace(MARSH, wet=False, forming=False)) == ()


@pytest.mark.parametrize(
    ("air", "headline", "detail"),
    [
        (
            replace(CALM, temperature_C=None, dew_point_C=None),
            "The temperature is not measured",
            "Nobody can say whether it gets too cold for what is drying.",
        ),
        (
            replace(CALM, humidity_pct=None, dew_point_C=None),
            "The humidity is not measured",
            "Nobody can say whether it gets too damp for what is drying.",
        ),
        (
            AirNow(),
            "Neither temperature nor humidity is measured",
            "Nobody can say whether it gets too cold or too damp for what is drying.",
        ),
    ],
)
def test_that_a_channel_that_is_missing_over_a_wet_coat_is_a_concern_and_is_named(
    air: AirNow, headline: str, detail: str
) -> None:
    (concern,) = look(air, MARSH)
    assert concern.kind is Kind.READING_IMPLAUSIBLE
    assert concern.level is Level.CAUTION
    assert not concern.may_sound
    assert concern.piece_titles == ("Salt Marsh",)
    assert (concern.sentence.headline, concern.sentence.detail) == (headline, detail)


def test_that_a_missing_channel_over_no_coat_at_risk_is_no_concern() -> None:
    assert look(AirNow()) == ()
    assert look(AirNow(), replace(MARSH, wet=False, forming=False)) == ()


def test_that_a_reading_that_cannot_be_right_is_said_before_the_channel_it_leaves_missing() -> None:
    (concern,) = look(replace(CALM, humidity_pct=None, implausible="The humidity leapt."), MARSH)
    assert concern.sentence.detail == "The humidity leapt."


@pytest.mark.parametrize(
    "air",
    [
        FAN,
        STIRRED,
        replace(CALM, humidity_pct=95.0),
        replace(CALM, dew_point_C=18.0),
        replace(CALM, temperature_C=3.0, dew_point_C=-9.0),
    ],
)
@pytest.mark.parametrize("covered", [True, False])
def test_that_nobody_is_told_to_shut_a_room_with_solvent_vapour_in_it(air: AirNow, covered: bool) -> None:  # noqa: FBT001
    solvent = replace(MARSH, solvent=True, covered=covered, film_C=None)
    cold = replace(KILN, film_C=None)
    concerns = look(air, solvent, cold)
    assert concerns
    for concern in concerns:
        advice = concern.sentence.advice.lower()
        assert not any(word in advice for word in ("close", "shut", "window", "door", "turn it off"))
        if concern.kind is not Kind.AIR_MOVING:
            assert "fresh air" in advice
            assert "flame" in advice


def test_that_the_most_urgent_comes_first() -> None:
    concerns = look(replace(FAN, humidity_pct=78.0, dew_point_C=2.0), replace(MARSH, film_C=8.0))
    assert kinds(concerns) == [Kind.AIR_MOVING, Kind.TOO_COLD, Kind.DAMP]


def test_that_one_piece_with_two_wet_coats_is_named_once() -> None:
    (concern,) = look(FAN, MARSH, replace(MARSH, coat_label="gloss 2"))
    assert concern.piece_titles == ("Salt Marsh",)
    assert concern.sentence.headline == "Air is moving over two wet coats"


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
