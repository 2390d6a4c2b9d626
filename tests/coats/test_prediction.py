from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.film import advance, lay
from studiowatch.coats.prediction import predict
from studiowatch.coats.stages import Orientation, Stage, Surface
from studiowatch.coats.support import Support
from studiowatch.physics.air import Air
from studiowatch.physics.moist_air import wet_bulb
from studiowatch.physics.ranges import OutOfRange
from studiowatch.speech.units import US, choose

ROOM = Air(temperature_C=20.0, humidity_pct=50.0, air_speed_m_s=0.05)
DAMP = replace(ROOM, humidity_pct=78.0)


def test_that_a_log_of_one_air_is_that_air(gloss: DataSheet) -> None:
    steady = predict(gloss, wet_um=90.0, side_m=0.4, room=ROOM, draws_n=16)
    logged = predict(gloss, wet_um=90.0, side_m=0.4, room=[(60.0 * i, ROOM) for i in range(600)], draws_n=16)
    for stage, ready in steady.stages.items():
        assert logged.stages[stage].nominal_s == pytest.approx(ready.nominal_s, rel=1e-3)
        assert logged.stages[stage].p90_s == pytest.approx(ready.p90_s, rel=1e-3)


def test_that_a_room_that_turns_damp_delays_the_coat(gloss: DataSheet) -> None:
    dry = predict(gloss, wet_um=90.0, side_m=0.4, room=ROOM, draws_n=1).stages[Stage.DRY_TO_RECOAT].nominal_s
    damp = predict(gloss, wet_um=90.0, side_m=0.4, room=DAMP, draws_n=1).stages[Stage.DRY_TO_RECOAT].nominal_s
    turning = predict(gloss, wet_um=90.0, side_m=0.4, room=[(0.0, ROOM), (3600.0, DAMP)], draws_n=1)
    between = turning.stages[Stage.DRY_TO_RECOAT].nominal_s
    assert dry is not None
    assert damp is not None
    assert between is not None
    assert dry < between < damp


def test_that_the_film_figures_are_of_a_wet_film_in_the_first_air(gloss: DataSheet) -> None:
    film = predict(gloss, wet_um=90.0, side_m=0.4, room=[(0.0, ROOM), (3600.0, DAMP)], draws_n=4).film
    assert film.initial_water_g_m2 == pytest.approx(90.0 * 0.64 * 0.998)
    assert film.constant_rate_temperature_C is not None
    assert film.constant_rate_g_m2_h is not None
    assert float(wet_bulb(20.0, 50.0)) < film.constant_rate_temperature_C < 20.0
    # the film holds 57 g/m² and loses two thirds of it at about this rate within the hour or so of a common coat
    assert 25.0 < film.constant_rate_g_m2_h < 100.0


def test_that_paint_has_no_constant_rate(paint_sheet: DataSheet) -> None:
    film = predict(paint_sheet, wet_um=500.0, side_m=0.4, room=ROOM, draws_n=4).film
    assert film.constant_rate_g_m2_h is None
    assert film.constant_rate_temperature_C is None


@pytest.mark.parametrize(
    ("room", "extrapolated"),
    [
        (ROOM, False),
        (replace(ROOM, temperature_C=9.5), True),
        (replace(ROOM, temperature_C=31.0), True),
        (replace(ROOM, humidity_pct=29.0), True),
        (replace(ROOM, humidity_pct=81.0), True),
        ([(0.0, ROOM), (600.0, replace(ROOM, humidity_pct=85.0))], True),
    ],
)
def test_that_rooms_outside_the_trusted_range_are_called_extrapolated(
    gloss: DataSheet, room: Air | list[tuple[float, Air]], *, extrapolated: bool
) -> None:
    told = predict(gloss, wet_um=90.0, side_m=0.4, room=room, draws_n=1)
    assert told.extrapolated is extrapolated
    assert any("extrapolated" in note for note in told.notes) is extrapolated


def test_that_a_cold_room_tells_the_chance_of_a_film_that_does_not_form(gloss: DataSheet) -> None:
    cold = predict(gloss, wet_um=90.0, side_m=0.4, room=replace(ROOM, temperature_C=11.0), draws_n=64)
    assert cold.film.chance_below_mfft is not None
    assert 0.2 < cold.film.chance_below_mfft <= 1.0
    assert any("too cold to form" in note for note in cold.notes)
    assert predict(gloss, wet_um=90.0, side_m=0.4, room=ROOM, draws_n=64).film.chance_below_mfft == 0.0


@pytest.mark.parametrize("temperature_C", [11.0, 20.0])
def test_that_without_an_mfft_on_the_sheet_the_chance_is_not_known(gloss: DataSheet, temperature_C: float) -> None:
    room = replace(ROOM, temperature_C=temperature_C)
    told = predict(replace(gloss, mfft_C=None), wet_um=90.0, side_m=0.4, room=room, draws_n=16)
    assert told.film.chance_below_mfft is None
    assert any(note.startswith("mfft_C is not on the sheet") for note in told.notes)


def test_that_paint_has_no_chance_of_that_kind_and_nothing_is_said(paint_sheet: DataSheet) -> None:
    told = predict(replace(paint_sheet, mfft_C=5.0), wet_um=500.0, side_m=0.4, room=ROOM, draws_n=16)
    assert told.film.chance_below_mfft is None
    assert not any("mfft" in note or "too cold to form" in note for note in told.notes)


@pytest.mark.parametrize(
    ("temperature_C", "humidity_pct", "freezes"),
    [
        (-2.0, 60.0, True),
        (0.0, 90.0, True),
        # psychrolib's wet bulb at 101 325 Pa is -2.0 °C, and in strong wind the film comes near it
        (2.0, 40.0, True),
        # psychrolib's wet bulb is 5.6 °C
        (8.0, 70.0, False),
        (20.0, 50.0, False),
    ],
)
def test_that_water_that_would_freeze_is_told(
    gloss: DataSheet, temperature_C: float, humidity_pct: float, *, freezes: bool
) -> None:
    cold = Air(temperature_C=temperature_C, humidity_pct=humidity_pct, air_speed_m_s=3.0)
    notes = predict(gloss, wet_um=90.0, side_m=0.4, room=cold, draws_n=16).notes
    assert any("may freeze" in note for note in notes) is freezes
    logged = predict(gloss, wet_um=90.0, side_m=0.4, room=[(0.0, ROOM), (600.0, cold)], draws_n=16)
    assert any("may freeze" in note for note in logged.notes) is freezes


def test_that_frost_and_blush_are_told_in_her_degrees(gloss: DataSheet) -> None:
    """0 °C is 32 °F, and 3 K are 5.4 °F."""
    choose(US)
    frost = predict(gloss, wet_um=90.0, side_m=0.4, room=replace(ROOM, temperature_C=-2.0), draws_n=16)
    assert any("at or below 32 °F and may freeze" in note for note in frost.notes)
    spirit = replace(gloss, kind=Kind.SOLVENTBORNE, clear_h=None, mfft_C=None)
    damp = predict(spirit, wet_um=90.0, side_m=0.4, room=replace(ROOM, humidity_pct=95.0), draws_n=16)
    assert any("within 5.4 °F of the dew point" in note for note in damp.notes)


@pytest.mark.parametrize(
    ("wet_um", "room", "horizon_h"),
    [
        (2.0, Air(temperature_C=45.0, humidity_pct=20.0, air_speed_m_s=15.0), 96.0),  # dry within half a minute
        (10_000.0, Air(temperature_C=-15.0, humidity_pct=50.0, air_speed_m_s=0.0), 8760.0),  # dry after months
        (10_000.0, Air(temperature_C=-20.0, humidity_pct=50.0), 96.0),  # wet to the end, and colder than the air
    ],
)
def test_that_the_vapour_of_any_coat_that_may_be_laid_is_told(
    gloss: DataSheet, wet_um: float, room: Air, horizon_h: float
) -> None:
    spirit = replace(gloss, kind=Kind.SOLVENTBORNE, clear_h=None, mfft_C=None)
    notes = predict(spirit, wet_um=wet_um, side_m=0.4, room=room, draws_n=1, horizon_h=horizon_h).notes
    # 64 % of it is solvent of 780 kg/m³, on 0.16 m²
    solvent_g = wet_um * 1e-6 * 0.16 * 0.64 * 780e3
    assert any(f"{solvent_g:.1f} g of solvent in a room of 30 m³" in note for note in notes)


def test_that_frost_over_a_dry_coat_is_no_matter(gloss: DataSheet) -> None:
    night = [(0.0, ROOM), (6 * 3600.0, replace(ROOM, temperature_C=-3.0))]
    assert not any(
        "may freeze" in note for note in predict(gloss, wet_um=90.0, side_m=0.4, room=night, draws_n=16).notes
    )


def test_that_frost_over_wet_paint_is_told(paint_sheet: DataSheet) -> None:
    frost = replace(ROOM, temperature_C=-1.0)
    assert any(
        "may freeze" in note for note in predict(paint_sheet, wet_um=500.0, side_m=0.4, room=frost, draws_n=16).notes
    )


@pytest.mark.parametrize(
    ("draws_n", "told"),
    [(1, "nominal run alone, so the times have no range"), (2, "2 draws are too few"), (9, "9 draws")],
)
def test_that_too_few_draws_for_a_range_are_told(gloss: DataSheet, draws_n: int, told: str) -> None:
    notes = predict(gloss, wet_um=90.0, side_m=0.4, room=ROOM, draws_n=draws_n).notes
    assert sum(told in note for note in notes) == 1


def test_that_ten_draws_are_enough_for_a_range(gloss: DataSheet) -> None:
    assert not any("draw" in note for note in predict(gloss, wet_um=90.0, side_m=0.4, room=ROOM, draws_n=10).notes)


def test_that_what_a_bare_support_takes_up_is_told_as_an_assumption(gloss: DataSheet) -> None:
    sealed = predict(gloss, wet_um=90.0, side_m=0.4, room=ROOM, draws_n=16)
    bare = predict(gloss, wet_um=90.0, side_m=0.4, room=ROOM, draws_n=16, support=Support.CANVAS)
    soaked_g_m2 = sealed.film.initial_water_g_m2 - bare.film.initial_water_g_m2
    assert soaked_g_m2 > 1.0
    (note,) = (note for note in bare.notes if "raw canvas" in note)
    assert f"lose {soaked_g_m2:.1f} g/m² to it at once" in note
    assert "an assumption" in note
    assert not any("laid straight on" in note for note in sealed.notes)


@pytest.mark.parametrize(("orientation", "air_speed_m_s"), [(Orientation.FACE_UP, 0.1), (Orientation.VERTICAL, 0.3)])
def test_that_the_constant_rate_is_the_pace_at_which_the_film_then_loses_water(
    gloss: DataSheet, orientation: Orientation, air_speed_m_s: float
) -> None:
    # 400 µm hold open water for hours: a quarter of an hour on, the film has its temperature, weighed over ten minutes
    room = replace(ROOM, air_speed_m_s=air_speed_m_s)
    laid = {"wet_um": 400.0, "side_m": 0.4, "orientation": orientation}
    told = predict(gloss, **laid, room=room, draws_n=1).film
    begun, _ = advance(lay(gloss, anchor(gloss), **laid), room, 900.0)
    ended, _ = advance(begun, room, 600.0)
    assert ended.surface is Surface.WET
    weighed_g_m2_h = (begun.water_g_m2 - ended.water_g_m2) * 6.0
    assert told.constant_rate_g_m2_h == pytest.approx(weighed_g_m2_h, rel=2e-3)
    assert told.constant_rate_temperature_C == pytest.approx(ended.film_C, abs=0.02)


def test_that_a_thick_coat_is_told(gloss: DataSheet) -> None:
    notes = predict(gloss, wet_um=180.0, side_m=0.4, room=ROOM, draws_n=1).notes
    assert any("2.0 times as thick as the sheet's" in note for note in notes)


def test_that_weighing_the_bottle_is_told_where_the_amount_is_guessed(gloss: DataSheet) -> None:
    guessed = predict(gloss, wet_um=90.0, side_m=0.4, room=ROOM, draws_n=256)
    (note,) = (note for note in guessed.notes if "weighing the bottle" in note)
    ready = guessed.stages[Stage.DRY_TO_RECOAT]
    assert ready.p10_s is not None
    assert ready.p90_s is not None
    now = f"from {ready.p10_s / 3600.0:.1f} to {ready.p90_s / 3600.0:.1f} h"
    assert now in note
    measured = predict(gloss, wet_um=90.0, side_m=0.4, room=ROOM, draws_n=256, measured=True)
    nominal = predict(gloss, wet_um=90.0, side_m=0.4, room=ROOM, draws_n=1)
    assert not any("weighing the bottle" in note for note in (*measured.notes, *nominal.notes))


def test_that_a_sheet_that_contradicts_itself_is_told(gloss: DataSheet) -> None:
    notes = predict(replace(gloss, touch_dry_min=110.0), wet_um=90.0, side_m=0.4, room=ROOM, draws_n=1).notes
    assert any("check the times and the thickness" in note for note in notes)


def test_that_what_the_sheet_left_out_is_told(gloss: DataSheet) -> None:
    sentence = "cure_days is not on the sheet"
    assert sentence in predict(replace(gloss, assumed=(sentence,)), wet_um=90.0, side_m=0.4, room=ROOM, draws_n=1).notes


def test_that_a_gap_in_the_log_is_told(gloss: DataSheet) -> None:
    notes = predict(gloss, wet_um=90.0, side_m=0.4, room=[(0.0, ROOM), (300.0, ROOM), (2100.0, ROOM)], draws_n=1).notes
    assert any("no reading for 30 min from 0.08 h after laying" in note for note in notes)
    assert any("ends 0.6 h after laying" in note for note in notes)


def test_that_readings_after_the_horizon_are_not_used(gloss: DataSheet) -> None:
    log = [(0.0, ROOM), (7200.0, replace(ROOM, humidity_pct=90.0))]
    told = predict(gloss, wet_um=90.0, side_m=0.4, room=log, draws_n=1, horizon_h=1.0)
    assert not told.extrapolated
    assert told.stages[Stage.DRY_TO_RECOAT].nominal_s is None


@pytest.mark.parametrize(
    ("room", "told"),
    [
        ([], "holds no reading"),
        ([(0.0, ROOM), (60.0, ROOM), (60.0, ROOM)], "goes from 60 s to 60 s; times must rise"),
        ([(-5.0, ROOM)], "time in the room log is -5 s"),
        ([(float("nan"), ROOM)], "time in the room log is nan s"),
        ([(0.0, replace(ROOM, humidity_pct=500.0))], "humidity is 500 %"),
    ],
)
def test_that_an_impossible_log_is_refused(gloss: DataSheet, room: list[tuple[float, Air]], told: str) -> None:
    with pytest.raises(OutOfRange, match=told):
        predict(gloss, wet_um=90.0, side_m=0.4, room=room, draws_n=1)


def test_that_an_impossible_horizon_is_refused(gloss: DataSheet) -> None:
    with pytest.raises(OutOfRange, match="horizon is nan h"):
        predict(gloss, wet_um=90.0, side_m=0.4, room=ROOM, horizon_h=float("nan"))
