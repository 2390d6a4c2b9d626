"""Kinds beyond draught, damp and cold: too fast, dusty, too early, too matt; one warning for one cause."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.studio.concern import CoatAtRisk, Kind
from studiowatch.studio.words import Level

from .watched_room import CALM, FAN, KILN, MARSH, NOW_MS, kinds, look

WET = replace(MARSH, sticky=True, pace=0.6, laid_ms=NOW_MS - 600_000)
DUSTY = replace(CALM, particles_per_m3_5um=400_000.0)


@pytest.mark.parametrize(
    ("temperature_C", "humidity_pct", "pace", "level"),
    [
        (30.0, 50.0, 0.9, None),
        (30.6, 50.0, 0.9, Level.CAUTION),
        (35.1, 50.0, 0.9, Level.ACT),
        (22.0, 35.0, 0.9, None),
        (22.0, 34.9, 0.9, Level.CAUTION),
        (22.0, 5.0, 0.9, Level.CAUTION),
        (22.0, 50.0, 1.1, Level.CAUTION),
        (22.0, 50.0, 2.1, Level.ACT),
    ],
)
def test_that_warm_air_dry_air_and_a_fast_film_each_skin_a_coat(
    temperature_C: float, humidity_pct: float, pace: float, level: Level | None
) -> None:
    air = replace(CALM, temperature_C=temperature_C, humidity_pct=humidity_pct, dew_point_C=5.0)
    found = look(air, replace(WET, pace=pace, film_C=temperature_C))
    assert [(one.kind, one.level) for one in found] == ([] if level is None else [(Kind.DRYING_TOO_FAST, level)])
    assert all(one.may_sound is (one.level is Level.ACT) for one in found)


def test_that_the_sheets_own_temperature_comes_first() -> None:
    warm = replace(CALM, temperature_C=27.0)
    assert look(warm, WET) == ()
    (concern,) = look(warm, replace(WET, apply_most_C=25.0))
    assert concern.basis == "25 °C: the product's sheet; 5 °C more: from memory."


@pytest.mark.parametrize("change", [{"solvent": True}, {"wet": False}])
def test_that_a_coat_that_cannot_skin_is_let_be(change: dict[str, bool]) -> None:
    assert look(replace(CALM, humidity_pct=25.0), replace(WET, sticky=False, **change)) == ()


def test_that_a_fan_is_said_once_and_not_again_as_the_speed_it_dries_at_or_as_guessed_dust() -> None:
    assert kinds(look(replace(FAN, humidity_pct=38.0), replace(WET, pace=1.5))) == [Kind.AIR_MOVING]


def test_that_a_fan_that_has_just_stopped_still_speaks_for_what_it_did() -> None:
    before = look(FAN, replace(WET, pace=1.5))
    assert kinds(look(CALM, replace(WET, pace=1.5), before=before, after_s=5.0)) == [Kind.AIR_MOVING]


def test_that_dry_air_is_said_once_and_not_again_as_guessed_dust() -> None:
    dry = replace(CALM, humidity_pct=20.0, air_speed_m_s=0.5)
    assert kinds(look(dry, WET)) == [Kind.DRYING_TOO_FAST]


def test_that_counted_dust_is_a_cause_of_its_own() -> None:
    assert kinds(look(replace(FAN, particles_per_m3_5um=400_000.0), WET)) == [Kind.AIR_MOVING, Kind.DUST]
    (concern,) = look(DUSTY, replace(WET, dust_free_ms=NOW_MS + 20 * 60_000))
    assert concern.sentence.headline == "Dust over a sticky coat"
    assert concern.sentence.detail == (
        "400,000 specks over 5 µm in a cubic metre; it sticks until about 14:32: Salt Marsh."
    )
    assert "14644" in concern.basis


@pytest.mark.parametrize("change", [{"sticky": False}, {"covered": True}])
def test_that_dust_is_let_fall_on_a_cover_and_on_a_film_that_is_dust_free(change: dict[str, bool]) -> None:
    assert look(DUSTY, replace(WET, **change)) == ()


@pytest.mark.parametrize(
    ("unready", "sheet_wait_h", "level"),
    [(0.05, None, None), (0.05, 4.0, Level.CAUTION), (0.2, None, Level.CAUTION), (0.6, None, Level.ACT)],
)
def test_that_a_coat_laid_too_early_is_said_while_it_can_still_cloud(
    unready: float, sheet_wait_h: float | None, level: Level | None
) -> None:
    laid = replace(WET, unready_below=unready, sheet_wait_h=sheet_wait_h)
    found = look(CALM, laid)
    assert [(one.kind, one.level, one.began_ms) for one in found] == (
        [] if level is None else [(Kind.RECOAT_EARLY, level, WET.laid_ms)]
    )
    assert look(CALM, replace(laid, wet=False, forming=False)) == ()


@pytest.mark.parametrize(
    ("coats", "allowed", "level"),
    [(2, None, None), (3, None, Level.CAUTION), (1, 1, None), (2, 1, Level.CAUTION), (3, 1, Level.ACT)],
)
def test_that_matting_coats_are_counted_against_the_sheet(coats: int, allowed: int | None, level: Level | None) -> None:
    found = look(CALM, replace(WET, matting_coats=coats, max_matting_coats=allowed))
    assert [(one.kind, one.level) for one in found] == ([] if level is None else [(Kind.MATTING_BUILD_UP, level)])


def test_that_how_a_coat_was_laid_stands_while_the_board_is_silent() -> None:
    laid = replace(WET, unready_below=0.6)
    assert kinds(look(replace(CALM, age_s=60.0), laid)) == [Kind.RECOAT_EARLY, Kind.BOARD_SILENT]


def every_kind() -> list[tuple[Kind, str]]:
    coats: tuple[CoatAtRisk, ...] = (replace(WET, unready_below=0.6, matting_coats=3), KILN)
    rooms = (
        FAN,
        DUSTY,
        replace(CALM, humidity_pct=90.0),
        replace(CALM, humidity_pct=20.0, dew_point_C=-3.0),
        replace(CALM, dew_point_C=17.0),
    )
    cold = replace(WET, film_C=8.0, mfft_C=9.0)
    found = [one for air in rooms for one in look(air, *coats)] + list(look(replace(CALM, dew_point_C=0.0), cold))
    return [(one.kind, one.basis) for one in found]


def test_that_every_limit_names_its_basis() -> None:
    told = every_kind()
    assert {kind for kind, _ in told} >= set(Kind) - {Kind.BOARD_SILENT, Kind.READING_IMPLAUSIBLE, Kind.READING_OLD}
    assert all(basis for _, basis in told)


def test_that_a_pace_warning_held_below_its_limit_does_not_deny_itself() -> None:
    before = look(CALM, replace(WET, pace=1.3))
    (held,) = look(CALM, replace(WET, pace=0.93), before=before, after_s=5.0)
    assert held.sentence.headline == "Drying rather fast: a wet coat"
    assert "0.9 times" not in held.sentence.detail
    assert held.sentence.detail.startswith("It dries about as fast as on its sheet, and was faster just before.")
