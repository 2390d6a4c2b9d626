from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.coats.data_sheet import DataSheet, Kind, Sheen
from studiowatch.room.air_movement import Movement
from studiowatch.room.typed import Felt
from studiowatch.studio.concern import AirNow, TypedAir
from studiowatch.studio.concern import Kind as ConcernKind
from studiowatch.studio.sentence import NO_BOARD, most_urgent, room_check
from studiowatch.studio.warnings import StudioWarning, WarningState
from studiowatch.studio.words import Level, Sentence

NOW_MS = 1_772_460_000_000
GOOD = AirNow(temperature_C=20.6, humidity_pct=57.0, air_speed_m_s=0.05, dew_point_C=11.8, movement=Movement.STILL)
GLOSS = DataSheet(
    name="gloss-waterborne",
    title="Gloss",
    kind=Kind.WATERBORNE,
    volume_solids=0.35,
    density_kg_m3=1030.0,
    wet_um=100.0,
    dry_um=35.0,
    touch_dry_min=45.0,
    recoat_h=4.0,
    cure_days=14.0,
    sheen=Sheen.GLOSS,
    mfft_C=9.0,
    apply_C=(15.0, 28.0),
)
SOLVENT = replace(GLOSS, kind=Kind.SOLVENTBORNE, mfft_C=None)


def clock_text(time_ms: int) -> str:
    return "14:07" if time_ms == NOW_MS - 300_000 else "?"


def check(air: AirNow, sheet: DataSheet | None = GLOSS) -> Sentence:
    return room_check(air, sheet, clock_text=clock_text)


def urgent(*warnings: StudioWarning, air: AirNow | None = GOOD, sheets: tuple[DataSheet, ...] = ()) -> Sentence:
    return most_urgent(warnings, air, now_ms=NOW_MS, clock_text=clock_text, sheets=sheets)


def warning(headline: str, level: Level, state: WarningState = WarningState.RAISED) -> StudioWarning:
    return StudioWarning(
        key=headline,
        kind=ConcernKind.AIR_MOVING,
        level=level,
        state=state,
        sentence=Sentence(level=level, headline=headline),
        piece_keys=(),
        piece_titles=(),
        began_ms=NOW_MS,
        raised_ms=NOW_MS,
    )


def test_that_a_good_room_is_good_to_lay_a_coat() -> None:
    sentence = check(GOOD)
    assert sentence.level is Level.CALM
    assert sentence.headline == "Good to lay a coat"


@pytest.mark.parametrize(
    ("air", "headline"),
    [
        (replace(GOOD, humidity_pct=78.0), "Too damp to lay a coat: 78 %, wait for 75 % or less"),
        (replace(GOOD, temperature_C=12.0, dew_point_C=2.0), "Too cold to lay a coat: 12.0 °C, wait for 15 °C or more"),
        (replace(GOOD, temperature_C=29.0), "Too warm to lay a coat: 29.0 °C, wait for 28 °C or less"),
        (
            replace(GOOD, dew_point_C=18.1),
            "Too near the dew point to lay a coat: 2.5 °C, wait for 3 °C or more",
        ),
        (replace(GOOD, movement=Movement.MOVING), "Not yet: the air is moving"),
        (replace(GOOD, movement=Movement.UNKNOWN), "Not known whether the air moves"),
        (replace(GOOD, temperature_C=None), "The temperature is not measured"),
        (replace(GOOD, humidity_pct=None), "The humidity is not measured"),
        (replace(GOOD, implausible="The humidity leapt."), "A reading cannot be right"),
    ],
)
def test_that_it_says_why_not_yet_and_what_to_wait_for(air: AirNow, headline: str) -> None:
    sentence = check(air)
    assert sentence.level is Level.CAUTION
    assert sentence.headline == headline


@pytest.mark.parametrize(
    "air",
    [
        replace(GOOD, humidity_pct=75.0),
        replace(GOOD, temperature_C=15.0),
        replace(GOOD, temperature_C=28.0),
        replace(GOOD, temperature_C=21.0, dew_point_C=18.0),
        replace(GOOD, dew_point_C=None),
    ],
)
def test_that_a_limit_itself_is_allowed(air: AirNow) -> None:
    assert check(air).level is Level.CALM


def test_that_the_sheets_own_humidity_limit_comes_first() -> None:
    damp = replace(GOOD, humidity_pct=68.0)
    assert check(damp, replace(GLOSS, max_humidity_pct=65.0)).headline.endswith("wait for 65 % or less")
    assert check(replace(GOOD, humidity_pct=80.0), replace(GLOSS, max_humidity_pct=85.0)).level is Level.CALM


def test_that_a_film_too_cold_to_form_is_no_go_though_the_air_is_warm_enough_to_apply() -> None:
    warm_form = replace(GLOSS, mfft_C=14.0, apply_C=(10.0, 30.0))
    air = replace(GOOD, temperature_C=16.0, dew_point_C=5.0)
    assert check(air, warm_form).headline == "Too cold for the film to form: 16.0 °C, wait for 17 °C or more"
    assert check(replace(air, temperature_C=17.0), warm_form).level is Level.CALM


def test_that_all_reasons_are_given_the_first_as_headline() -> None:
    sentence = check(replace(GOOD, movement=Movement.FAN, moving_since_ms=NOW_MS - 300_000, humidity_pct=80.0))
    assert sentence.headline == "Not yet: the air is moving"
    assert "since 14:07" in sentence.detail
    assert "Too damp to lay a coat: 80 %" in sentence.detail


def test_that_air_that_is_not_measured_is_said_after_what_is_known_to_be_wrong() -> None:
    unknown = replace(GOOD, movement=Movement.UNKNOWN, air_speed_m_s=None)
    assert "The air is not measured" in check(unknown).detail
    damp = check(replace(unknown, humidity_pct=80.0))
    assert damp.headline.startswith("Too damp")
    assert "Not known whether the air moves" in damp.detail


def test_that_solvent_is_never_laid_in_a_room_to_be_shut() -> None:
    moving = check(replace(GOOD, movement=Movement.FAN), SOLVENT)
    assert "fresh air" in moving.advice
    assert "off" not in moving.advice
    assert "heater out" in check(replace(GOOD, temperature_C=12.0, dew_point_C=2.0), SOLVENT).advice


def test_that_a_solvent_borne_coat_minds_humidity_only_if_its_sheet_does() -> None:
    damp = replace(GOOD, humidity_pct=80.0, dew_point_C=17.0)
    assert check(damp, SOLVENT).level is Level.CALM
    assert check(damp, replace(SOLVENT, max_humidity_pct=70.0)).headline.startswith("Too damp")


def test_that_general_limits_stand_in_for_a_sheet() -> None:
    assert check(replace(GOOD, temperature_C=3.0, dew_point_C=-9.0), None).level is Level.CALM
    assert check(replace(GOOD, humidity_pct=75.1), None).headline == (
        "Too damp to lay a coat: 75.1 %, wait for 75 % or less"
    )


def test_that_the_most_urgent_warning_is_said_and_an_unheard_one_before_a_heard_one() -> None:
    caution = warning("caution", Level.CAUTION)
    heard = warning("heard", Level.ACT, WarningState.HEARD)
    fresh = warning("fresh", Level.ACT)
    assert urgent(caution, heard, fresh).headline == "fresh"
    assert urgent(caution, heard).headline == "heard"


def test_that_a_cleared_warning_is_not_spoken_of() -> None:
    assert urgent(warning("over", Level.ACT, WarningState.CLEARED)).headline == "Good to lay a coat"


def test_that_without_a_board_it_says_so() -> None:
    assert urgent(air=None) == NO_BOARD
    assert urgent(air=replace(GOOD, age_s=60.1)) == NO_BOARD


def test_that_a_port_that_cannot_be_opened_is_told_with_its_reason_and_not_with_a_plug_to_push_home() -> None:
    why = "The port COM3 is in use by another program: close that program."
    sentence = most_urgent([], None, now_ms=NOW_MS, clock_text=clock_text, trouble=why)
    assert sentence == replace(NO_BOARD, detail=why, advice="Or type what a hygrometer says.")
    assert urgent(air=replace(GOOD, age_s=60.0)).level is Level.CALM


def test_that_any_sheet_to_come_that_the_room_does_not_suit_is_said() -> None:
    strict = replace(GLOSS, max_humidity_pct=50.0)
    assert urgent(sheets=(GLOSS, strict)).headline == "Too damp to lay a coat: 57 %, wait for 50 % or less"
    assert urgent(sheets=(GLOSS,)).headline == "Good to lay a coat"


def test_that_while_coats_dry_in_a_good_room_it_says_that_they_are_well_and_not_to_lay_one() -> None:
    said = most_urgent((), GOOD, now_ms=NOW_MS, clock_text=clock_text, wet_titles=("Salt Marsh", "Kiln Light"))
    assert said.level is Level.CALM
    assert said.headline == "All is well: two coats drying"
    assert "Salt Marsh and Kiln Light" in said.detail


def test_that_a_board_whose_port_is_open_is_not_asked_to_be_plugged_in() -> None:
    said = most_urgent((), None, now_ms=NOW_MS, clock_text=clock_text, connected=True)
    assert said.headline == "The board sends nothing"
    assert "Plug" not in said.advice


def test_that_lines_that_cannot_be_read_are_counted_out_loud() -> None:
    said = most_urgent((), None, now_ms=NOW_MS, clock_text=clock_text, connected=True, unreadable=40)
    assert said.headline == "The board cannot be understood"
    assert "40 lines" in said.detail


TYPED = replace(GOOD, air_speed_m_s=None, typed=TypedAir(time_ms=NOW_MS - 300_000, age_s=300.0, felt=Felt.STILL))


def test_that_a_typed_room_is_good_to_lay_a_coat_only_while_it_is_fresh_and_the_air_was_found_still() -> None:
    assert check(TYPED).level is Level.CALM
    unknown = replace(TYPED, movement=Movement.UNKNOWN, typed=replace(TYPED.typed, felt=None))
    assert "tissue" in check(unknown).advice
    moving = replace(TYPED, movement=Movement.MOVING, typed=replace(TYPED.typed, felt=Felt.MOVING))
    assert check(moving).detail.startswith("Felt at 14:07.")
    assert "fresh air" in check(moving, SOLVENT).advice
    old = replace(TYPED, typed=replace(TYPED.typed, age_s=3700.0))
    assert check(old).headline == "Read the room again before you lay a coat"


def test_that_a_typed_room_is_not_called_unwatched_however_old_and_wet_pieces_do_not_ask_for_a_fresh_reading() -> None:
    old = replace(TYPED, age_s=7300.0, typed=replace(TYPED.typed, age_s=7300.0))
    sentence = most_urgent((), old, now_ms=NOW_MS, clock_text=clock_text, wet_titles=("Low Tide",))
    assert sentence.headline == "All is well: a coat drying"
    assert "Last read 2 h ago; air speed is not measured." in sentence.detail


@pytest.mark.parametrize(
    ("air", "headline"),
    [
        (replace(GOOD, temperature_C=14.97), "Too cold to lay a coat: 14.97 °C, wait for 15 °C or more"),
        (replace(GOOD, temperature_C=28.02), "Too warm to lay a coat: 28.02 °C, wait for 28 °C or less"),
        (
            replace(GOOD, temperature_C=20.0, dew_point_C=17.03),  # 20 - 17.03 = 2.97
            "Too near the dew point to lay a coat: 2.97 °C, wait for 3 °C or more",
        ),
    ],
)
def test_that_no_room_is_refused_at_what_reads_as_the_limit_itself(air: AirNow, headline: str) -> None:
    assert check(air).headline == headline
