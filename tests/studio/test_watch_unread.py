"""The watch without all of its readings: a board that is silent, a channel that is missing or cannot be right."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.studio.concern import AirNow, Kind
from studiowatch.studio.words import Level

from .watched_room import CALM, FAN, MARSH, NOW_MS, kinds, look


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
