"""Damp, dew and cold that the room is heading for: counted to the limit, told in round minutes, and never too late."""

from __future__ import annotations

from dataclasses import dataclass, replace

import pytest

from studiowatch.room.trend import Crossing
from studiowatch.studio.concern import AirNow, CoatAtRisk, Concern, Kind
from studiowatch.studio.heading import Figure
from studiowatch.studio.watch import find_concerns
from studiowatch.studio.words import Level

from .watched_room import CALM, KILN, MARSH, NOW_MS, clock_text

MINUTE_MS = 60_000
GENTLY = "Warm the room gently; keep the heater's air off the pieces, and the heater clear of fabric."


@dataclass(frozen=True)
class Goes:
    """A room in which one figure goes by so much in a minute, give or take ten minutes at its limit."""

    figure: Figure
    per_min: float
    by_days: bool = False

    def until(self, figure: Figure, distance: float, *, said_before: bool) -> Crossing | None:
        del said_before
        minutes = distance / self.per_min
        if figure is not self.figure or minutes <= 0.0:
            return None
        low_ms, middle_ms, high_ms = (round((minutes + off) * MINUTE_MS) for off in (-10.0, 0.0, 10.0))
        return Crossing(low_ms=low_ms, middle_ms=middle_ms, high_ms=high_ms, by_days=self.by_days)

    def fan_from_ms(self, now_ms: int) -> int | None:
        del now_ms
        return None


DAMPENS = Goes(Figure.HUMIDITY, 0.7)  # from 57 %: 85 % in 40 min
NEARS_DEW = Goes(Figure.ABOVE_DEW, -0.1)  # a film of 18.9 °C over a dew point of 11.8 °C: 3 K of the 7.1 K in 41 min
COOLS = Goes(Figure.TEMPERATURE, -0.33)  # a film of 18.9 °C: 9 °C in 30 min


def look(room: Goes, *coats: CoatAtRisk, air: AirNow = CALM) -> tuple[Concern, ...]:
    return find_concerns(air, coats, now_ms=NOW_MS, clock_text=clock_text, heading=room)


@pytest.mark.parametrize(
    ("room", "kind", "ahead_min", "headline", "detail"),
    [
        (
            DAMPENS,
            Kind.DAMP,
            40,
            "Humidity will pass the limit in about 40 minutes",
            "If the room goes on like this it passes 85 % at about 14:52, between 14:42 and 15:02: Salt Marsh.",
        ),
        (
            NEARS_DEW,
            Kind.NEAR_DEW_POINT,
            41,
            "The dew point will be too near in about 40 minutes",
            (
                "If the room goes on like this the film is less than 3 °C above the dew point at about 14:53, "
                "between 14:43 and 15:03: Salt Marsh."
            ),
        ),
        (
            COOLS,
            Kind.TOO_COLD,
            30,
            "It will be too cold in about 30 minutes",
            "If the room goes on like this the film is below 9 °C at about 14:42, between 14:32 and 14:52: Salt Marsh.",
        ),
    ],
)
def test_that_what_is_ahead_is_counted_to_its_limit_and_is_a_caution_without_sound(
    room: Goes, kind: Kind, ahead_min: int, headline: str, detail: str
) -> None:
    (concern,) = look(room, MARSH)
    assert (concern.kind, concern.level, concern.may_sound, concern.is_ahead) == (kind, Level.CAUTION, False, True)
    assert concern.expected_ms == pytest.approx(NOW_MS + ahead_min * MINUTE_MS, abs=1)  # ms of rounding
    assert (concern.sentence.headline, concern.sentence.detail) == (headline, detail)
    assert concern.sentence.advice == GENTLY
    assert concern.basis.endswith(" Foreseen by the room's last hour.")


def test_that_the_sheets_own_limit_is_the_one_that_is_passed() -> None:
    (concern,) = look(DAMPENS, replace(MARSH, max_humidity_pct=71.0))  # 14 % at 0.7 a minute
    assert concern.expected_ms == pytest.approx(NOW_MS + 20 * MINUTE_MS, abs=1)
    assert "it passes 71 % at about 14:32" in concern.sentence.detail


def test_that_the_coat_that_is_reached_first_gives_the_time_and_all_are_named() -> None:
    (concern,) = look(DAMPENS, MARSH, replace(KILN, max_humidity_pct=78.0))  # 21 % at 0.7 a minute
    assert concern.sentence.headline == "Humidity will pass the limit in about 30 minutes"
    assert concern.piece_titles == ("Salt Marsh", "Kiln Light")


@pytest.mark.parametrize(
    ("ahead_min", "told"),
    [
        (2.0, "5 minutes"),
        (12.0, "10 minutes"),
        (13.0, "15 minutes"),
        (30.0, "30 minutes"),
        (34.0, "30 minutes"),
        (36.0, "40 minutes"),
        (90.0, "90 minutes"),
        (91.0, "1.5 hours"),
        (130.0, "2 hours"),
    ],
)
def test_that_minutes_are_told_to_five_then_to_ten_and_beyond_an_hour_and_a_half_as_hours(
    ahead_min: float, told: str
) -> None:
    (concern,) = look(Goes(Figure.HUMIDITY, (85.0 - 57.0) / ahead_min), MARSH)
    assert concern.sentence.headline == f"Humidity will pass the limit in about {told}"


@pytest.mark.parametrize(("room", "ahead_min"), [(DAMPENS, 40), (NEARS_DEW, 41), (COOLS, 30)])
def test_that_a_coat_that_will_be_past_harm_by_then_is_none_of_it(room: Goes, ahead_min: int) -> None:
    safe = replace(MARSH, safe_ms=NOW_MS + ahead_min * MINUTE_MS - MINUTE_MS)
    late = replace(safe, safe_ms=NOW_MS + ahead_min * MINUTE_MS + MINUTE_MS)
    assert look(room, safe) == ()
    assert [one.piece_titles for one in look(room, late)] == [("Salt Marsh",)]
    assert [one.piece_titles for one in look(room, safe, KILN)] == [("Kiln Light",)]


@pytest.mark.parametrize(
    ("room", "coat"),
    [
        (DAMPENS, replace(MARSH, forming=False)),
        (DAMPENS, replace(MARSH, solvent=True, mfft_C=None)),
        (COOLS, replace(MARSH, forming=False)),
        (COOLS, replace(MARSH, mfft_C=None)),
        (Goes(Figure.HUMIDITY, -0.7), MARSH),
    ],
    ids=["clear", "solvent", "formed", "no such temperature", "drying air"],
)
def test_that_nothing_is_ahead_of_a_coat_that_it_cannot_harm(room: Goes, coat: CoatAtRisk) -> None:
    assert look(room, coat) == ()


def test_that_a_caution_that_stands_already_tells_when_it_will_be_time_to_act() -> None:
    damp = replace(CALM, humidity_pct=78.0)  # 7 % at 0.7 a minute
    (concern,) = look(DAMPENS, MARSH, air=damp)
    assert (concern.level, concern.is_ahead) == (Level.CAUTION, False)
    assert concern.expected_ms == pytest.approx(NOW_MS + 10 * MINUTE_MS, abs=1)
    assert concern.sentence.headline == "Humidity will pass the limit in about 10 minutes"


def test_that_what_is_to_be_acted_on_now_is_not_told_as_ahead() -> None:
    (concern,) = look(Goes(Figure.HUMIDITY, -0.7), MARSH, air=replace(CALM, humidity_pct=92.0))
    assert (concern.level, concern.expected_ms) == (Level.ACT, None)
    assert "will pass" not in concern.sentence.headline


def test_that_it_says_where_the_days_of_the_room_foretold_it() -> None:
    (concern,) = look(replace(DAMPENS, by_days=True), MARSH)
    assert concern.basis.endswith(" Foreseen by the room's days so far.")


def test_that_a_dew_point_foreseen_is_said_of_the_piece_that_no_damp_air_harms() -> None:
    damp, solvent = replace(CALM, humidity_pct=80.0), replace(KILN, solvent=True, mfft_C=None)
    told = {concern.kind: concern.piece_titles for concern in look(NEARS_DEW, MARSH, solvent, air=damp)}
    assert told[Kind.DAMP] == ("Salt Marsh",)
    assert "Kiln Light" in told[Kind.NEAR_DEW_POINT]
    assert [concern.kind for concern in look(NEARS_DEW, MARSH, air=damp)] == [Kind.DAMP]
