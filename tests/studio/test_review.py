"""The review: what each cause is made of, what the evidence says, and what is said of what nobody saw."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.draws import sample
from studiowatch.coats.film import advance, lay, sealed_in_g_m2
from studiowatch.coats.readiness import ready_at
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air
from studiowatch.studio.amounts import is_measured
from studiowatch.studio.pieces import Coat, Finding, Look, Outcome
from studiowatch.studio.review_causes import MEASURED, Cause
from studiowatch.studio.review_course import DRAWS, SEED
from studiowatch.studio.review_curves import Curves
from studiowatch.studio.review_live import present_risk
from studiowatch.studio.review_views import Phase, Review

from .review_scenes import GOOD, HOUR_MS, LAID_MS, MINUTE_MS, SHEETS, at, gloss, isolation, reviewed, room, stack


def told(found: Review, cause: Cause) -> str:
    return " ".join(next(one.evidence for one in found.causes if one.cause is cause))


def severity(found: Review, cause: Cause) -> float:
    value = next(one.severity for one in found.causes if one.cause is cause)
    assert value is not None
    return value


def test_that_what_was_sealed_in_is_what_the_film_model_says_of_the_same_hours() -> None:
    """The coat below is dried here once more, in one step, by the film code itself."""
    below = isolation(2.0)
    found = reviewed(stack(below, gloss()), room())
    sheet = SHEETS["isolation-waterborne"]
    draws = sample(DRAWS, SEED, measured=is_measured(below))
    film = lay(sheet, anchor(sheet, draws), wet_um=80.0, side_m=0.4)
    film, _ = advance(film, GOOD, 7200.0)
    assert found.sealed_in_g_m2 == pytest.approx(sealed_in_g_m2(film), rel=0.02)
    assert found.causes[0].cause is Cause.SEALED_IN_WATER
    assert severity(found, Cause.SEALED_IN_WATER) == found.sealed_in_g_m2
    assert "isolation below was 2 h old" in told(found, Cause.SEALED_IN_WATER)


def test_that_waiting_for_the_coat_below_is_what_would_have_changed_it() -> None:
    found = reviewed(stack(isolation(2.0), gloss()), room())
    waited = found.changes[0]
    assert waited.change.startswith("Waited until ")
    assert waited.chance < 0.1 < found.chance
    assert found.as_it_was.below_age_ms == 2 * HOUR_MS
    assert waited.figures.below_age_ms is not None
    assert waited.figures.below_age_ms > 4 * HOUR_MS  # the sheet's own recoat time
    assert waited.figures.sealed_in_g_m2 < 0.1 * found.as_it_was.sealed_in_g_m2


def test_that_no_coat_is_said_to_wait_less_than_the_sheet_of_the_one_below_asks_for() -> None:
    """In air of 32 °C and 30 % it is ready long before the 24 h of this sheet."""
    slow = {**SHEETS, "isolation-waterborne": replace(SHEETS["isolation-waterborne"], recoat_h=24.0)}
    warm = Air(temperature_C=32.0, humidity_pct=30.0, air_speed_m_s=0.05)
    found = reviewed(stack(isolation(2.0), gloss(), sheets=slow), room(lambda _: warm))
    waited = next(change for change in found.changes if change.change.startswith("Waited until "))
    assert waited.figures.below_age_ms == 24 * HOUR_MS


def test_that_a_solvent_borne_coat_waits_until_the_one_below_is_dry_through() -> None:
    """The coat below is dried here once more, in one step, by the film code itself."""
    warm = Air(temperature_C=28.0, humidity_pct=40.0, air_speed_m_s=0.05)
    coats = isolation(2.0, volume_mL=25.6), gloss(sheet="gloss-solventborne", volume_mL=12.0)
    found = reviewed(stack(*coats), room(lambda _: warm))
    sheet = SHEETS["isolation-waterborne"]
    film = lay(sheet, anchor(sheet, sample(DRAWS, SEED, measured=True)), wet_um=160.0, side_m=0.4)
    film, _ = advance(film, warm, 40 * 3600.0)
    through = ready_at(film.state.reached[ROW[Stage.DRY_THROUGH]])
    assert through.p90_s is not None
    waited = next(change for change in found.changes if change.change.startswith("Waited until "))
    assert waited.figures.below_age_ms is not None
    assert waited.figures.below_age_ms == pytest.approx(1000.0 * through.p90_s, rel=0.03)


def test_that_damp_hours_count_only_while_the_film_is_open() -> None:
    def damp(from_h: float, to_h: float) -> float:
        air = Air(temperature_C=20.0, humidity_pct=86.0, air_speed_m_s=0.05)
        laid = stack(isolation(), gloss())
        return severity(reviewed(laid, room(lambda hour: air if from_h <= hour < to_h else GOOD)), Cause.DAMP_AIR)

    wet, late, before = damp(0.0, 1.0), damp(12.0, 13.0), damp(-5.0, -0.1)
    assert wet > 1.0
    assert late < 0.1 * wet
    assert before < 0.1 * wet


def test_that_damp_is_told_by_what_its_own_sheet_allows() -> None:
    strict = {**SHEETS, "gloss-waterborne": replace(SHEETS["gloss-waterborne"], max_humidity_pct=60.0)}
    air = Air(temperature_C=20.0, humidity_pct=70.0, air_speed_m_s=0.05)
    found = reviewed(stack(isolation(), gloss(), sheets=strict), room(lambda hour: air if hour > -0.5 else GOOD))
    assert "Humidity above 60 % for " in told(found, Cause.DAMP_AIR)
    assert "at most 70 %. Its sheet allows up to 60 %." in told(found, Cause.DAMP_AIR)
    assert found.limit_humidity_pct == 60.0  # where the picture draws it too


@pytest.mark.parametrize(("humidity_pct", "cause"), [(88.0, Cause.DAMP_AIR), (99.0, Cause.CONDENSATION)])
def test_that_damp_air_and_air_at_the_dew_point_are_told_apart(humidity_pct: float, cause: Cause) -> None:
    air = Air(temperature_C=18.0, humidity_pct=humidity_pct, air_speed_m_s=0.05)
    found = reviewed(stack(isolation(), gloss()), room(lambda hour: air if hour > -0.5 else GOOD))
    assert found.causes[0].cause is cause
    assert found.causes[0].share > 0.7


def test_that_a_warm_damp_gust_settles_on_a_face_that_is_still_cold() -> None:
    """Dew point of 21 °C and 92 %: 19.6 °C, over a face that was at 15 °C and follows within ten minutes."""
    cold = Air(temperature_C=15.0, humidity_pct=60.0, air_speed_m_s=0.05)
    steam = Air(temperature_C=21.0, humidity_pct=92.0, air_speed_m_s=0.05)
    found = reviewed(stack(isolation(), gloss()), room(lambda hour: steam if 0.5 <= hour < 0.75 else cold, step_min=1))
    assert severity(found, Cause.CONDENSATION) > 5.0
    assert "below the dew point" in told(found, Cause.CONDENSATION)
    assert found.causes[0].cause is Cause.CONDENSATION


def test_that_a_fan_skins_a_coat_the_more_the_drier_the_air() -> None:
    def pace(speed_m_s: float, humidity_pct: float) -> float:
        air = Air(temperature_C=22.0, humidity_pct=humidity_pct, air_speed_m_s=speed_m_s)
        return severity(reviewed(stack(isolation(), gloss()), room(lambda _: air)), Cause.SKINNED)

    assert pace(0.05, 50.0) < 1.0
    assert pace(1.0, 50.0) > 3.0 * pace(0.05, 50.0)
    assert pace(1.0, 30.0) > pace(1.0, 50.0)


def test_that_air_that_moved_once_it_was_dry_to_touch_did_not_move_over_a_wet_coat() -> None:
    fan = replace(GOOD, air_speed_m_s=0.5)
    late = reviewed(stack(isolation(), gloss()), room(lambda hour: fan if 1.5 <= hour < 2.0 else GOOD))
    assert late.spans[0].end_ms < at(1.5)  # dry to touch
    assert "Air moved over it" not in told(late, Cause.SKINNED)
    early = reviewed(stack(isolation(), gloss()), room(lambda hour: fan if hour < 0.5 else GOOD))
    assert "Air moved over it, up to 0.50 m/s, for " in told(early, Cause.SKINNED)


def test_that_the_last_hours_of_the_day_after_the_laying_are_looked_at_for_a_better_time() -> None:
    """The day ends at 09:00: the last four hours on end of it begin at 05:00."""
    damp = Air(temperature_C=20.0, humidity_pct=90.0, air_speed_m_s=0.05)
    found = reviewed(stack(isolation(), gloss()), room(lambda hour: damp if -1.0 < hour < 20.0 else GOOD))
    assert "Laid at 03 Mar 05:00" in [change.change for change in found.changes]


def test_that_no_loss_of_water_is_told_of_a_solvent_borne_coat() -> None:
    found = reviewed(stack(isolation(72.0), gloss(sheet="gloss-solventborne", volume_mL=12.0)), room(hours=(-80, 40)))
    assert told(found, Cause.SKINNED) == "While wet: up to 20 °C, down to 52 %."


def test_that_a_solvent_borne_coat_is_not_said_to_hold_added_water() -> None:
    coat = gloss(sheet="gloss-solventborne", volume_mL=12.0, thinned_pct=30.0)
    found = reviewed(stack(isolation(72.0), coat), room(hours=(-80, 40)))
    assert told(found, Cause.THINNED) == "It was thinned by 30 %; sheets commonly allow up to 10 %."
    assert "Not thinned" in [change.change for change in found.changes]
    risk = present_risk(Curves(), severities_with(Cause.THINNED, 30.0))
    assert risk.sentence.endswith("cloud: thinned too far (30 % added).")


def severities_with(cause: Cause, value: float) -> np.ndarray[tuple[int, int], np.dtype[np.float64]]:
    severities = np.zeros((1, len(MEASURED)))
    severities[0, MEASURED.index(cause)] = value
    return severities


def test_that_the_sheets_own_run_has_its_own_pace() -> None:
    """By definition 1: 23 °C, 50 %, 0.1 m/s, a panel of 0.15 m."""
    laid = stack(gloss(volume_mL=1.8))
    panel = replace(laid, piece=replace(laid.piece, width_cm=15, height_cm=15))
    air = Air(temperature_C=23.0, humidity_pct=50.0, air_speed_m_s=0.1)
    assert severity(reviewed(panel, room(lambda _: air)), Cause.SKINNED) == pytest.approx(1.0, abs=0.03)


def test_that_minutes_too_cold_are_those_while_the_film_closed() -> None:
    cold = Air(temperature_C=7.0, humidity_pct=60.0, air_speed_m_s=0.05)
    always = reviewed(stack(isolation(), gloss(outcome=Outcome.POWDERY)), room(lambda _: cold))
    late = reviewed(stack(isolation(), gloss(outcome=Outcome.POWDERY)), room(lambda hour: cold if hour > 8 else GOOD))
    assert always.causes[0].cause is Cause.BELOW_MFFT
    assert severity(always, Cause.BELOW_MFFT) > 60.0
    assert severity(late, Cause.BELOW_MFFT) == 0.0
    assert always.limit_C == SHEETS["gloss-waterborne"].mfft_C


def test_that_a_sheet_without_a_least_temperature_is_said_to_be_taken_for_a_usual_one() -> None:
    sheets = {**SHEETS, "gloss-waterborne": replace(SHEETS["gloss-waterborne"], mfft_C=None)}
    found = reviewed(stack(isolation(), gloss(), sheets=sheets), room())
    assert any("no least film-forming temperature" in spot for spot in found.blind_spots)


@pytest.mark.parametrize(
    ("given", "cause"),
    [
        ({"volume_mL": 33.0}, Cause.TOO_THICK),
        ({"volume_mL": None, "grams": 34.0}, Cause.TOO_THICK),
        ({"thinned_pct": 35.0}, Cause.THINNED),
        ({"covered_from_ms": LAID_MS + MINUTE_MS, "outcome": Outcome.MILKY_IN_PATCHES}, Cause.TOUCHED),
        ({"seen_ms": at(40 / 60)}, Cause.STILL_CLEARING),
        ({}, Cause.UNKNOWN),
        ({"outcome": Outcome.SPECKS}, Cause.UNKNOWN),
    ],
)
def test_that_in_a_good_room_the_coats_own_story_is_found(given: dict[str, object], cause: Cause) -> None:
    found = reviewed(stack(isolation(), gloss(**given)), room())
    assert found.causes[0].cause is cause
    assert found.causes[0].share > 0.6


def test_that_a_third_satin_coat_dulls_the_darks_and_a_first_one_does_not() -> None:
    def satin(hours: float, key: str) -> Coat:
        return gloss(key=key, sheet="satin-waterborne", laid_ms=at(hours), outcome=Outcome.DULL_IN_DARKS)

    three = reviewed(stack(isolation(30.0), satin(-20.0, "a"), satin(-10.0, "b"), satin(0.0, "c")), room())
    one = reviewed(stack(isolation(30.0), satin(0.0, "a")), room())
    assert three.causes[0].cause is Cause.MATTING_BUILD_UP
    assert severity(three, Cause.MATTING_BUILD_UP) == 3
    assert three.chance > 0.5
    assert one.chance < 0.1


def test_that_a_fingertip_on_a_wet_film_is_told_and_one_on_a_dry_film_is_not() -> None:
    def looked(hours: float) -> Review:
        look = Look(key="l", time_ms=at(hours), finding=Finding.TACKY)
        return reviewed(stack(isolation(), gloss(looks=(look,), outcome=Outcome.MILKY_IN_PATCHES)), room())

    assert looked(0.4).causes[0].cause is Cause.TOUCHED
    assert "A fingertip was on it at 09:24" in told(looked(0.4), Cause.TOUCHED)
    assert severity(looked(10.0), Cause.TOUCHED) == 0.0


def test_that_a_hole_while_it_was_wet_is_said_and_widens_the_chances() -> None:
    damp = Air(temperature_C=19.0, humidity_pct=74.0, air_speed_m_s=0.05)
    whole = reviewed(stack(isolation(), gloss()), room(lambda _: damp))
    holed = reviewed(stack(isolation(), gloss()), room(lambda _: damp, hole=(0.2, 3.2)))
    assert whole.blind_spots == ()
    assert any(spot.startswith("No readings for 3 h") and "from 09:1" in spot for spot in holed.blind_spots)
    assert holed.chance > whole.chance  # of what nobody saw, some was worse
    assert np.isnan(holed.room.temperature_C).any()
    assert not np.isnan(whole.room.temperature_C).any()


def test_that_hours_still_to_come_are_no_hole_of_the_log() -> None:
    laid = stack(isolation(), gloss(outcome=None, seen_ms=None))
    now = reviewed(laid, room(hours=(-30.0, 0.5)), now_ms=at(0.5))
    assert not any("No readings" in spot for spot in now.blind_spots)
    assert any("still to come" in spot for spot in now.blind_spots)
    later = reviewed(laid, room(hours=(-30.0, 0.5)), now_ms=at(9.0))
    assert any("No readings" in spot for spot in later.blind_spots)


def test_that_a_log_without_air_speed_or_without_anything_is_said_to_be_so() -> None:
    still = reviewed(stack(isolation(), gloss()), room(speed_known=False))
    assert any("Air speed was not measured" in spot for spot in still.blind_spots)
    nothing = reviewed(stack(isolation(), gloss()), room(hours=(0.0, 0.0)))
    assert any("no reading of its time" in spot for spot in nothing.blind_spots)
    assert nothing.causes[0].cause is Cause.UNKNOWN  # a room that nobody measured accuses nothing


def test_that_a_coat_without_an_outcome_gets_its_risk_and_no_repair() -> None:
    found = reviewed(stack(isolation(1.5), gloss(outcome=None, seen_ms=None)), room())
    assert found.outcome is None
    assert found.chance > 0.5
    assert found.causes[0].cause is Cause.SEALED_IN_WATER
    assert any("not recorded" in spot for spot in found.blind_spots)
    assert found.remedy.cautions == ()
    assert found.further == ()


def test_that_an_amount_that_nobody_measured_is_a_blind_spot() -> None:
    found = reviewed(stack(isolation(), gloss(volume_mL=None)), room())
    assert any("How much was laid is not recorded: 80 µm" in spot for spot in found.blind_spots)
    assert found.causes[0].cause is Cause.UNKNOWN


def test_that_what_is_drawn_rises_in_time_and_the_spans_join() -> None:
    found = reviewed(stack(isolation(5.0), gloss()), room())
    assert [film.label for film in found.films] == ["isolation", "gloss"]
    for trace in (*found.films, found.room):
        assert (np.diff(trace.time_ms) > 0).all()
    wet, closing = found.spans
    assert (wet.phase, closing.phase) == (Phase.WET, Phase.CLOSING)
    assert wet.start_ms == LAID_MS
    assert wet.end_ms == closing.start_ms < closing.end_ms


def test_that_a_solvent_borne_coat_near_the_dew_point_has_blushed() -> None:
    coat = gloss(sheet="gloss-solventborne", volume_mL=12.0)
    near = Air(temperature_C=18.0, humidity_pct=92.0, air_speed_m_s=0.05)
    found = reviewed(stack(isolation(72.0), coat), room(lambda hour: near if hour > -1 else GOOD, hours=(-80, 40)))
    assert found.causes[0].cause is Cause.CONDENSATION
    assert "within 3 °C" in told(found, Cause.CONDENSATION)
    assert "still air" not in " ".join(found.remedy.steps)
    assert any("fresh air" in caution for caution in found.remedy.cautions)


@pytest.mark.parametrize(("days", "is_early"), [(3, True), (9, False)])
def test_that_poured_paint_clouds_a_coat_laid_before_its_sheets_time_and_not_after(days: int, is_early: bool) -> None:  # noqa: FBT001
    """The sheet asks for 168 h, seven days."""
    paint = Coat(key="p", sheet="paint-poured", laid_ms=at(-24.0 * days))
    coat = gloss(sheet="isolation-waterborne")
    found = reviewed(stack(paint, coat), room(step_min=10, hours=(-24.0 * days - 1.0, 30.0)))
    assert (found.causes[0].cause is Cause.SEALED_IN_WATER) == is_early
    assert (found.chance > 0.5) == is_early
