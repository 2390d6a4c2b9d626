"""Calibrations through the whole watch: from readings in the log to what is shown, and back when withdrawn."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from studiowatch.board.events import PortOpened
from studiowatch.room.air_movement import Movement
from studiowatch.room.air_speed_calibration import AirSpeedCalibration
from studiowatch.room.humidity_calibration import HumidityCalibration
from studiowatch.service.calibration_commands import CalibrateHumidity, TryCalibration, WithdrawCalibration
from studiowatch.service.commands import LayCoat, Refused, RegisterPiece, TickPrompt, TypeReading
from studiowatch.service.happenings import PromptHappened

from .calibrated_studio import DAY_S, HIGH_BY_PCT, TRUE_LOW_PCT, Studio, bead_mV, room_says


@pytest.fixture
def studio(tmp_path: Path) -> Iterator[Studio]:
    made = Studio(tmp_path / "studio.sqlite3")
    made.open()
    made.plug_in()
    yield made
    made.watch.close(made.clock.now_s)


def test_that_a_humidity_calibration_holds_from_then_on_and_the_log_keeps_what_the_sensor_said(studio: Studio) -> None:
    command = studio.salts()
    studio.read(5, room_says())
    assert studio.snapshot().room.humidity_pct == pytest.approx(53.0, abs=0.03)
    key = studio.do(command)
    studio.read(5, room_says())
    # the sensor is 3 %RH too high at both salts, and so between them
    assert studio.snapshot().room.humidity_pct == pytest.approx(50.0, abs=0.03)
    stored = studio.log.between(studio.clock.now_ms - 4000, studio.clock.now_ms)
    assert stored
    assert all(abs((reading.humidity_pct or 0.0) - 53.0) < 0.03 for reading in stored)
    (view,) = studio.snapshot().calibrations.holding
    assert (view.key, view.sensor, view.made_ms, view.is_present) == (key, "CAFE0042", studio.clock.now_ms - 5000, True)
    assert view.sentence == "A reading of 50 % is put right to 47.0 %."
    assert view.recheck_ms - view.made_ms == 30 * DAY_S * 1000
    assert isinstance(view.calibration, HumidityCalibration)


def test_that_a_typed_reading_is_put_right_by_no_sensors_calibration_live_or_after_a_restart(studio: Studio) -> None:
    studio.do(studio.salts())
    studio.read(5, room_says())
    studio.clock.pass_s(300)
    studio.do(TypeReading(time_ms=studio.clock.now_ms, temperature_C=20.0, humidity_pct=60.0))
    studio.look()
    assert studio.snapshot().room.humidity_pct == 60.0
    studio.watch.close(studio.clock.now_s)
    studio.clock.pass_s(3600)
    studio.open()
    assert studio.snapshot().room.humidity_pct == 60.0


def test_that_a_correction_is_no_leap_of_the_sensor(studio: Studio) -> None:
    command = studio.salts()
    studio.read(60, room_says())
    studio.do(command)
    studio.read(3, room_says())
    assert not [warning for warning in studio.snapshot().warnings if warning.kind == "reading-implausible"]


def test_that_a_withdrawn_calibration_leaves_readings_raw_and_dries_the_coats_anew(studio: Studio) -> None:
    key = studio.do(studio.salts())
    piece_key = studio.do(RegisterPiece(title="Low Tide", width_cm=40, height_cm=40))
    studio.do(LayCoat(piece_key=piece_key, laid_ms=studio.clock.now_ms, sheet="gloss-waterborne"))
    studio.read(3600, room_says(72.0), step_s=10)
    right = studio.snapshot().pieces[0].top
    studio.do(WithdrawCalibration(calibration_key=key))
    studio.look()
    studio.read(10, room_says(72.0))
    assert studio.snapshot().room.humidity_pct == pytest.approx(75.0, abs=0.03)
    assert studio.snapshot().calibrations.holding == ()
    raw = studio.snapshot().pieces[0].top
    # 3 %RH damper air takes water away more slowly
    assert right is not None
    assert raw is not None
    assert (raw.water_g_m2 or 0.0) > (right.water_g_m2 or 0.0) + 0.1
    with pytest.raises(Refused, match="withdrawn already"):
        studio.do(WithdrawCalibration(calibration_key=key))


def test_that_coats_dry_alike_live_and_after_a_restart(studio: Studio) -> None:
    studio.do(studio.salts())
    piece_key = studio.do(RegisterPiece(title="Low Tide", width_cm=40, height_cm=40))
    studio.do(LayCoat(piece_key=piece_key, laid_ms=studio.clock.now_ms, sheet="gloss-waterborne"))
    studio.read(1800, room_says(72.0), step_s=10)
    live = studio.snapshot().pieces[0].top
    studio.watch.close(studio.clock.now_s)
    studio.open()
    studio.read(10, room_says(72.0))
    again = studio.snapshot().pieces[0].top
    assert live is not None
    assert again is not None
    assert again.water_g_m2 == pytest.approx(live.water_g_m2, rel=0.02)
    assert studio.snapshot().room.humidity_pct == pytest.approx(72.0, abs=0.03)


def test_that_a_calibrated_voltage_is_a_speed_and_a_fan_is_known_by_it(studio: Studio) -> None:
    studio.read(60, room_says(signal_mV=bead_mV(0.0)))
    assert studio.snapshot().room.air_speed_m_s is None
    studio.do(studio.walks())
    studio.read(60, room_says(signal_mV=bead_mV(0.05)))
    assert studio.snapshot().room.air_speed_m_s == pytest.approx(0.05, rel=0.01)
    assert studio.snapshot().room.movement is Movement.STILL
    studio.read(60, room_says(signal_mV=bead_mV(0.4)))
    assert studio.snapshot().room.air_speed_m_s == pytest.approx(0.4, rel=0.01)
    assert studio.snapshot().room.movement is Movement.FAN
    (view,) = studio.snapshot().calibrations.holding
    assert isinstance(view.calibration, AirSpeedCalibration)
    assert view.sentence == view.calibration.sentence


def test_that_a_calibration_goes_with_the_sensor_and_not_with_the_board(studio: Studio) -> None:
    studio.do(studio.salts())
    studio.plug_in(serial="BEEF")
    studio.read(5, room_says())
    assert studio.snapshot().room.humidity_pct == pytest.approx(53.0, abs=0.03)
    assert [view.is_present for view in studio.snapshot().calibrations.holding] == [False]
    studio.plug_in(board_id="ANOTHER")
    studio.read(5, room_says())
    assert studio.snapshot().room.humidity_pct == pytest.approx(50.0, abs=0.03)
    assert [sighting.sensor for sighting in studio.records.sightings()] == ["CAFE0042", "BEEF", "CAFE0042"]


def test_that_a_sensor_without_a_serial_is_known_by_its_board_and_one_without_a_name_is_nobody(studio: Studio) -> None:
    studio.plug_in(serial="00000000")
    assert studio.snapshot().calibrations.sensor == "8DF9E785"
    studio.watch.take(PortOpened(time_ms=studio.clock.now_ms, port="p", board="p"), studio.clock.now_s)
    studio.read(60, room_says())
    assert studio.snapshot().calibrations.sensor == "8DF9E785"
    studio.read(60, room_says())
    assert studio.snapshot().calibrations.sensor == ""


def test_that_what_was_read_of_another_sensor_does_not_calibrate_this_one(studio: Studio) -> None:
    salts, walks = studio.salts(), studio.walks()
    studio.plug_in(serial="BEEF")
    for command in (salts, walks):
        with pytest.raises(Refused, match="Another sensor was on the board then"):
            studio.do(command)


def test_that_a_box_that_was_not_flat_is_refused_by_name(studio: Studio) -> None:
    command = studio.salts()
    with pytest.raises(Refused, match=r"^Over magnesium chloride: read for 11 of the 30 minutes"):
        studio.do(replace(command, magnesium_ms=command.magnesium_ms - 1_320_000))
    with pytest.raises(Refused, match=r"^Over sodium chloride \(table salt\): the humidity rose by"):
        studio.do(replace(command, sodium_ms=command.magnesium_ms + 600_000, magnesium_ms=command.sodium_ms))
    with pytest.raises(Refused, match="seem swapped"):
        studio.do(CalibrateHumidity(magnesium_ms=command.sodium_ms, sodium_ms=command.magnesium_ms))
    assert studio.snapshot().calibrations.holding == ()


def test_that_walks_that_are_none_are_refused(studio: Studio) -> None:
    command = studio.walks()
    short = replace(command.walks[0], end_ms=command.walks[0].start_ms + 4000)
    with pytest.raises(Refused, match=r"gave 2 of the 3 readings.*make it longer"):
        studio.do(replace(command, walks=(short, *command.walks[1:])))
    with pytest.raises(Refused, match="3 walks of different speed"):
        studio.do(replace(command, walks=command.walks[:2]))
    with pytest.raises(Refused, match="60 to 100 °C"):
        studio.do(replace(command, bead_C=20.0))


def test_that_the_page_is_told_whether_the_box_is_flat(studio: Studio) -> None:
    studio.read(600, room_says(TRUE_LOW_PCT), step_s=10)
    assert not studio.snapshot().calibrations.plateau.is_flat
    studio.read(1380, room_says(TRUE_LOW_PCT), step_s=10)
    plateau = studio.snapshot().calibrations.plateau
    assert plateau.is_flat
    assert plateau.humidity_pct == pytest.approx(TRUE_LOW_PCT + HIGH_BY_PCT, abs=0.03)


def test_that_a_month_later_one_prompt_asks_for_a_check_once_until_it_is_ticked(studio: Studio) -> None:
    studio.do(studio.salts())
    studio.pass_days(29.9)
    assert studio.prompts() == []
    studio.pass_days(0.2)
    studio.look()
    assert studio.prompts() == ["Check the humidity sensor with the two salts"]
    told = [one for one in studio.told if isinstance(one, PromptHappened)]
    assert [one.line().split(".")[0] for one in told] == ["Check the humidity sensor with the two salts"]
    assert told[0].document()["pieces"] == []
    for _ in range(3):
        studio.pass_days(1)
    assert len([one for one in studio.told if isinstance(one, PromptHappened)]) == 1
    (prompt,) = studio.snapshot().prompts
    studio.do(TickPrompt(prompt_key=prompt.key))
    studio.look()
    assert studio.prompts() == []
    studio.pass_days(29.9)
    assert studio.prompts() == []
    studio.pass_days(0.2)
    assert len(studio.prompts()) == 1


def test_that_a_check_that_was_ticked_stays_done_over_a_restart(studio: Studio) -> None:
    studio.do(studio.salts())
    studio.pass_days(30.1)
    (prompt,) = studio.snapshot().prompts
    studio.do(TickPrompt(prompt_key=prompt.key))
    studio.watch.close(studio.clock.now_s)
    studio.open()
    studio.look()
    assert studio.prompts() == []


def test_that_solvent_borne_work_asks_for_both_checks_a_day_later(studio: Studio) -> None:
    studio.do(studio.salts())
    studio.do(studio.walks())
    studio.clock.pass_s(60)
    piece_key = studio.do(RegisterPiece(title="Low Tide", width_cm=40, height_cm=40))
    studio.do(LayCoat(piece_key=piece_key, laid_ms=studio.clock.now_ms, sheet="gloss-solventborne"))
    studio.look()
    checks = "Check the sensors: humidity with the two salts, air speed under a cup"
    assert checks not in studio.prompts()
    studio.pass_days(1.1)
    (prompt,) = [prompt for prompt in studio.snapshot().prompts if prompt.text == checks]
    assert "Never in solvent vapour" in prompt.caution


def test_that_nobody_is_asked_to_check_a_sensor_that_is_not_there(studio: Studio) -> None:
    studio.do(studio.salts())
    studio.plug_in(serial="BEEF")
    studio.pass_days(40)
    assert studio.prompts() == []


def test_that_a_calibration_that_is_only_tried_is_shown_and_changes_nothing(studio: Studio) -> None:
    salts = studio.salts()
    assert studio.do(TryCalibration(of=salts)) == ""
    seen = studio.snapshot().calibrations
    assert seen.draft is not None
    assert seen.draft.of == salts
    assert isinstance(seen.draft.calibration, HumidityCalibration)
    assert seen.draft.calibration.corrected_pct(50.0 + HIGH_BY_PCT) == pytest.approx(50.0, abs=0.02)
    assert seen.holding == ()
    assert studio.records.calibrations() == []
    studio.do(salts)
    assert studio.snapshot().calibrations.draft is None


def test_that_a_try_that_is_refused_leaves_no_draft(studio: Studio) -> None:
    salts = studio.salts()
    studio.do(TryCalibration(of=salts))
    swapped = CalibrateHumidity(magnesium_ms=salts.sodium_ms, sodium_ms=salts.magnesium_ms)
    with pytest.raises(Refused, match="swapped"):
        studio.do(TryCalibration(of=swapped))
    assert studio.snapshot().calibrations.draft is None
