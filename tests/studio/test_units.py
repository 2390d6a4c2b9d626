"""Warnings and the room check in her units: the same room, the same numbers turned over, nothing else said."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.coats.data_sheet import DataSheet
from studiowatch.room.air_movement import Movement
from studiowatch.speech.units import METRIC, US, Numbers, Units
from studiowatch.studio.concern import AirNow, CoatAtRisk, Concern, Kind
from studiowatch.studio.sentence import most_urgent, room_check
from studiowatch.studio.watch import find_concerns

from .test_sentence import GLOSS, GOOD
from .watched_room import CALM, FAN, MARSH, NOW_MS, clock_text


def said(air: AirNow, coat: CoatAtRisk, units: Units, kind: Kind) -> Concern:
    found = find_concerns(air, (coat,), now_ms=NOW_MS, clock_text=clock_text, units=units)
    return next(concern for concern in found if concern.kind is kind)


def checked(air: AirNow, sheet: DataSheet | None = GLOSS) -> str:
    check = room_check(air, sheet, clock_text=clock_text, units=US)
    return f"{check.headline} | {check.detail}"


def test_that_a_fan_is_told_in_feet_a_minute() -> None:
    # 0.34 m/s over 0.3048 m times 60 s is 66.9.
    assert "(67 ft/min)" in said(FAN, MARSH, US, Kind.AIR_MOVING).sentence.detail


def test_that_a_cold_film_is_told_in_fahrenheit() -> None:
    # 8 °C is 46.4 °F, and the sheet's 9 °C is 48.2 °F.
    cold = said(CALM, replace(MARSH, film_C=8.0), US, Kind.TOO_COLD)
    assert cold.sentence.detail.startswith("The film is at 46.4 °F and must stay above 48.2 °F until it is clear")


def test_that_the_dew_point_and_how_far_it_is_are_told_in_fahrenheit() -> None:
    # 1 K is 1.8 °F; 18 °C is 64.4 °F.
    dewy = said(replace(CALM, dew_point_C=18.0), replace(MARSH, film_C=19.0), US, Kind.NEAR_DEW_POINT)
    assert "The film is 1.8 °F above the dew point (64.4 °F)." in dewy.sentence.detail


def test_that_warm_air_is_told_in_fahrenheit() -> None:
    # 35 °C is 95 °F.
    warm = said(replace(CALM, temperature_C=35.0), MARSH, US, Kind.DRYING_TOO_FAST)
    assert "The air is at 95 °F." in warm.sentence.detail


@pytest.mark.parametrize(
    ("air", "words"),
    [
        # °F = 1.8 °C + 32: 20.6 is 69.08, 10 is 50, 15 is 59, 30 is 86, 28 is 82.4, 18.5 is 65.3; 2.1 K is 3.78 °F.
        (GOOD, "69.1 °F, 57 %"),
        (replace(GOOD, temperature_C=10.0, dew_point_C=1.0), "Too cold to lay a coat: 50.0 °F, wait for 59 °F or more"),
        (replace(GOOD, temperature_C=30.0), "Too warm to lay a coat: 86.0 °F, wait for 82.4 °F or less"),
        (replace(GOOD, dew_point_C=18.5), "The dew point is 65.3 °F"),
        (replace(GOOD, dew_point_C=18.5), "Too near the dew point to lay a coat: 3.8 °F"),
        (replace(GOOD, air_speed_m_s=0.34, movement=Movement.FAN), "67 ft/min"),
    ],
)
def test_that_the_room_check_is_told_in_us_units(air: AirNow, words: str) -> None:
    assert words in checked(air)
    assert "°C" not in checked(air)
    assert "m/s" not in checked(air)


def test_that_units_change_words_and_no_verdict() -> None:
    for air in (CALM, FAN, replace(CALM, dew_point_C=18.0), replace(CALM, temperature_C=35.0)):
        metric, us = (
            find_concerns(air, (MARSH,), now_ms=NOW_MS, clock_text=clock_text, units=units) for units in (METRIC, US)
        )
        assert [(one.kind, one.level, one.may_sound) for one in metric] == [
            (one.kind, one.level, one.may_sound) for one in us
        ]


def test_that_the_one_sentence_is_told_in_her_units() -> None:
    sentence = most_urgent((), GOOD, now_ms=NOW_MS, clock_text=clock_text, units=US)
    assert sentence.detail.startswith("69.1 °F")


COMMA = Units(numbers=Numbers.COMMA)


@pytest.mark.parametrize(
    ("air", "coat", "kind", "words"),
    [
        (FAN, MARSH, Kind.AIR_MOVING, "(0,34 m/s)"),
        (CALM, replace(MARSH, film_C=8.5, mfft_C=9.5), Kind.TOO_COLD, "at 8,5 °C and must stay above 9,5 °C"),
        (replace(CALM, dew_point_C=18.0), replace(MARSH, film_C=19.5), Kind.NEAR_DEW_POINT, "1,5 °C above"),
        (CALM, replace(MARSH, pace=9.5), Kind.DRYING_TOO_FAST, "It dries 9,5 times"),
        # NIST SP 811 (2008), 10.5.3: groups of three digits are set apart by a thin, fixed space, never by a comma.
        (replace(CALM, particles_per_m3_5um=412_000.0), MARSH, Kind.DUST, "412\N{NARROW NO-BREAK SPACE}000 specks"),
    ],
)
def test_that_numbers_are_told_with_a_comma(air: AirNow, coat: CoatAtRisk, kind: Kind, words: str) -> None:
    assert words in said(air, replace(coat, sticky=True), COMMA, kind).sentence.detail


def test_that_the_room_check_is_told_with_a_comma() -> None:
    damp = room_check(replace(GOOD, humidity_pct=75.3), None, clock_text=clock_text, units=COMMA)
    assert damp.headline == "Too damp to lay a coat: 75,3 %, wait for 75 % or less"
    good = room_check(GOOD, GLOSS, clock_text=clock_text, units=COMMA)
    assert good.detail.startswith("20,6 °C, 57 %")
