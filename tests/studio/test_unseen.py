"""What is not measured is not over: earlier concerns stand while their channels are missing."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.room.air_movement import Movement
from studiowatch.room.trend import Crossing
from studiowatch.studio.concern import AirNow, CoatAtRisk, Concern, Kind
from studiowatch.studio.heading import Figure
from studiowatch.studio.warnings import WarningBook, settle
from studiowatch.studio.watch import find_concerns
from studiowatch.studio.words import Level

from .watched_room import CALM, FAN, KILN, MARSH, NOW_MS, clock_text, look

NO_AIR = replace(CALM, air_speed_m_s=None, movement=Movement.UNKNOWN)
DAMP = replace(CALM, humidity_pct=90.0, dew_point_C=11.8)
NO_HUMIDITY = replace(CALM, humidity_pct=None, dew_point_C=None)
NO_TEMPERATURE = replace(CALM, temperature_C=None, dew_point_C=None)
LEAPT = replace(CALM, implausible="The humidity leapt to 20 %.")
MINUTE_MS = 60_000
COLD = replace(MARSH, film_C=8.0)
DEWY = replace(MARSH, film_C=14.0, mfft_C=None)


class Dampening:
    """A room that will be too damp in 40 minutes."""

    def until(self, figure: Figure, distance: float, *, said_before: bool) -> Crossing | None:
        del distance, said_before
        at_ms = (30 * MINUTE_MS, 40 * MINUTE_MS, 50 * MINUTE_MS)
        return Crossing(low_ms=at_ms[0], middle_ms=at_ms[1], high_ms=at_ms[2]) if figure is Figure.HUMIDITY else None

    def fan_from_ms(self, now_ms: int) -> int | None:
        del now_ms
        return None


def silent(air: AirNow, after_s: float) -> AirNow:
    return replace(air, age_s=after_s)


def of_kind(kind: Kind, concerns: tuple[Concern, ...]) -> Concern:
    (concern,) = [concern for concern in concerns if concern.kind is kind]
    return concern


def kinds(concerns: tuple[Concern, ...]) -> set[Kind]:
    return {concern.kind for concern in concerns}


@pytest.mark.parametrize(
    ("air", "coat", "failed", "kind"),
    [
        (FAN, MARSH, NO_AIR, Kind.AIR_MOVING),
        (DAMP, MARSH, NO_HUMIDITY, Kind.DAMP),
        (DAMP, MARSH, LEAPT, Kind.DAMP),
        (CALM, DEWY, NO_HUMIDITY, Kind.NEAR_DEW_POINT),
        (CALM, DEWY, NO_TEMPERATURE, Kind.NEAR_DEW_POINT),
        (CALM, DEWY, LEAPT, Kind.NEAR_DEW_POINT),
        (replace(CALM, dew_point_C=0.0), COLD, NO_TEMPERATURE, Kind.TOO_COLD),
        (replace(CALM, dew_point_C=0.0), COLD, LEAPT, Kind.TOO_COLD),
    ],
)
def test_that_a_failing_sensor_does_not_declare_the_danger_over(
    air: AirNow, coat: CoatAtRisk, failed: AirNow, kind: Kind
) -> None:
    first = look(air, coat)
    seen = of_kind(kind, first)
    before = first
    for after_s in (60.0, 3600.0, 86_400.0):
        before = look(failed, coat, before=before, after_s=after_s)
        stood = of_kind(kind, before)
        assert (stood.level, stood.began_ms, stood.seen_ms) == (seen.level, seen.began_ms, seen.seen_ms)
        assert stood.may_sound is seen.may_sound
        assert "Not measured since 14:12." in stood.sentence.detail


@pytest.mark.parametrize(
    ("air", "coat", "kind"),
    [
        (FAN, MARSH, Kind.AIR_MOVING),
        (DAMP, MARSH, Kind.DAMP),
        (CALM, DEWY, Kind.NEAR_DEW_POINT),
        (replace(CALM, dew_point_C=0.0), COLD, Kind.TOO_COLD),
        (LEAPT, MARSH, Kind.READING_IMPLAUSIBLE),
        (NO_HUMIDITY, MARSH, Kind.READING_IMPLAUSIBLE),
    ],
)
def test_that_a_pulled_cable_is_told_and_ends_no_earlier_concern(air: AirNow, coat: CoatAtRisk, kind: Kind) -> None:
    blind = look(silent(air, 20.0), coat, before=look(air, coat), after_s=20.0)
    assert kinds(blind) == {kind, Kind.BOARD_SILENT}
    later = look(silent(air, 7200.0), coat, before=blind, after_s=7200.0)
    assert kinds(later) == {kind, Kind.BOARD_SILENT}
    assert of_kind(kind, later).seen_ms == NOW_MS


def test_that_the_fans_warning_stays_open_when_the_cable_is_pulled() -> None:
    first = look(FAN, MARSH)
    book, _ = settle(WarningBook(), first, NOW_MS)
    blind = look(silent(FAN, 11.0), MARSH, before=first, after_s=11.0)
    book, changes = settle(book, blind, NOW_MS + 11_000)
    assert [warning.kind for warning in book.open] == [Kind.AIR_MOVING, Kind.BOARD_SILENT]
    assert [change.warning.kind for change in changes] == [Kind.BOARD_SILENT]
    assert book.recent == ()


def test_that_what_was_last_seen_is_told_as_past() -> None:
    first = look(FAN, MARSH, KILN)
    stood = of_kind(Kind.AIR_MOVING, look(silent(FAN, 90.0), MARSH, KILN, before=first, after_s=90.0))
    assert stood.sentence.headline == "Air was moving over two wet coats"
    assert stood.sentence.detail == "Not measured since 14:12. Salt Marsh and Kiln Light are still wet."
    assert stood.sentence.advice == "Turn the fan off or turn it away."


def test_that_it_is_dated_by_the_last_reading_though_it_was_noticed_later() -> None:
    first = look(FAN, MARSH)
    waiting = look(silent(FAN, 10.0), MARSH, before=first, after_s=10.0)
    blind = look(silent(FAN, 11.0), MARSH, before=waiting, after_s=11.0)
    assert of_kind(Kind.AIR_MOVING, blind).seen_ms == NOW_MS


def test_that_only_coats_not_yet_past_harm_are_spoken_of() -> None:
    first = look(FAN, MARSH, KILN)
    stood = of_kind(Kind.AIR_MOVING, look(NO_AIR, MARSH, replace(KILN, wet=False), before=first, after_s=60.0))
    assert stood.piece_titles == ("Salt Marsh",)
    assert stood.sentence.headline == "Air was moving over a wet coat"


@pytest.mark.parametrize(
    ("air", "failed", "past_harm"),
    [(FAN, NO_AIR, replace(MARSH, wet=False)), (DAMP, NO_HUMIDITY, replace(MARSH, forming=False))],
)
def test_that_a_concern_ends_when_its_coats_are_past_harm(air: AirNow, failed: AirNow, past_harm: CoatAtRisk) -> None:
    first = look(air, MARSH)
    (kind,) = kinds(first)
    assert kind not in kinds(look(failed, past_harm, before=first, after_s=60.0))
    assert kind not in kinds(look(silent(air, 60.0), past_harm, before=first, after_s=60.0))


def test_that_a_coat_laid_since_is_not_said_to_have_been_harmed() -> None:
    stood = of_kind(Kind.AIR_MOVING, look(NO_AIR, MARSH, KILN, before=look(FAN, MARSH), after_s=60.0))
    assert stood.piece_titles == ("Salt Marsh",)


def test_that_a_cover_calms_a_concern_that_cannot_be_seen() -> None:
    first = look(FAN, MARSH)
    stood = of_kind(Kind.AIR_MOVING, look(NO_AIR, replace(MARSH, covered=True), before=first, after_s=60.0))
    assert stood.level is stood.sentence.level is Level.CAUTION
    assert not stood.may_sound
    assert stood.sentence.headline == "Air was moving over a covered coat"


def test_that_it_takes_a_while_of_seeing_to_call_it_over() -> None:
    first = look(FAN, MARSH)
    blind = look(silent(FAN, 600.0), MARSH, before=first, after_s=600.0)
    back = look(CALM, MARSH, before=blind, after_s=601.0)
    assert kinds(back) == {Kind.AIR_MOVING}
    assert look(CALM, MARSH, before=back, after_s=610.0) == ()


def test_that_it_is_told_as_present_again_when_it_is_seen_again() -> None:
    blind = look(NO_AIR, MARSH, before=look(FAN, MARSH), after_s=600.0)
    (again,) = look(FAN, MARSH, before=blind, after_s=601.0)
    assert again.sentence.headline == "Air is moving over a wet coat"
    assert again.seen_ms == NOW_MS + 601_000
    assert again.began_ms == FAN.moving_since_ms


def test_that_damp_air_is_judged_without_a_temperature_but_not_called_milder_for_lack_of_it() -> None:
    near_dew = replace(CALM, humidity_pct=80.0, dew_point_C=17.0)
    first = look(near_dew, MARSH)
    failed = replace(near_dew, temperature_C=None, dew_point_C=None)
    assert of_kind(Kind.DAMP, first).level is Level.ACT
    assert of_kind(Kind.DAMP, look(failed, MARSH, before=first, after_s=60.0)).level is Level.ACT
    dry = replace(failed, humidity_pct=50.0)
    assert Kind.DAMP not in kinds(look(dry, MARSH, before=first, after_s=60.0))


def test_that_damp_air_is_held_though_the_temperature_fails_meanwhile() -> None:
    first = look(DAMP, MARSH)
    dry = replace(NO_TEMPERATURE, humidity_pct=50.0)
    assert Kind.DAMP in kinds(look(dry, MARSH, before=first, after_s=29.0))
    assert Kind.DAMP not in kinds(look(dry, MARSH, before=first, after_s=30.0))


@pytest.mark.parametrize("air", [NO_HUMIDITY, LEAPT, silent(CALM, 600.0)])
def test_that_what_is_ahead_stays_ahead_while_nobody_sees_the_room_and_ends_with_its_time(air: AirNow) -> None:
    first = find_concerns(CALM, [MARSH], now_ms=NOW_MS, clock_text=clock_text, heading=Dampening())
    assert of_kind(Kind.DAMP, first).sentence.headline == "Humidity will pass the limit in about 40 minutes"
    later = look(air, MARSH, before=first, after_s=600.0)
    stood = of_kind(Kind.DAMP, later)
    assert stood.sentence.headline == "Humidity will pass the limit in about 30 minutes"
    assert (stood.is_ahead, stood.expected_ms) == (True, NOW_MS + 40 * MINUTE_MS)
    assert Kind.DAMP not in kinds(look(air, MARSH, before=later, after_s=2400.0))
    assert Kind.DAMP not in kinds(look(air, replace(MARSH, wet=False, forming=False), before=later, after_s=660.0))
