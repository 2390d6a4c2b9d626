"""Which calibration holds for a reading: the sensor's own, from the day it was made, unless it was withdrawn."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.room.air_speed_calibration import AirSpeedCalibration
from studiowatch.room.corrections import Corrections, Imported, Kept, Sighting, corrections, newest
from studiowatch.room.humidity_calibration import HumidityCalibration, SaltPoint
from studiowatch.room.king_law import KingLaw
from studiowatch.room.readings import Reading
from studiowatch.room.typed import typed_reading

DAY_MS = 86_400_000
START_MS = 1_772_442_000_000
# a sensor that reads 2 too high at both salts: 33.07 and 75.47 %RH at 20 °C by Greenspan (1977)
HIGH_BY_2 = HumidityCalibration(
    magnesium=SaltPoint(raw_pct=35.07, temperature_C=20.0, time_ms=START_MS),
    sodium=SaltPoint(raw_pct=77.47, temperature_C=20.0, time_ms=START_MS),
)
HIGH_BY_4 = HumidityCalibration(
    magnesium=SaltPoint(raw_pct=37.07, temperature_C=20.0, time_ms=START_MS),
    sodium=SaltPoint(raw_pct=79.47, temperature_C=20.0, time_ms=START_MS),
)
# V² = 1e6 + 1e6 v^0.5 mV²: by hand, 1500 mV is (2.25 - 1)² = 1.5625 m/s at 20 °C
BEAD = AirSpeedCalibration(
    law=KingLaw(offset_mV2=1e6, slope=1e6, exponent=0.5, reference_C=20.0, bead_C=80.0), points=()
)
SEEN = Sighting(time_ms=START_MS, sensor="CAFE0042")


def kept(key: str, days: float, calibration: HumidityCalibration | AirSpeedCalibration = HIGH_BY_2) -> Kept:
    made_ms = START_MS + round(days * DAY_MS)
    return Kept(key=key, sensor="CAFE0042", made_ms=made_ms, calibration=calibration)


def reading(days: float, **changes: float) -> Reading:
    plain = Reading(time_ms=START_MS + round(days * DAY_MS), temperature_C=20.0, humidity_pct=52.0)
    return replace(plain, **changes)


def humidity_pct(known: Corrections, days: float) -> float | None:
    return known.corrected(reading(days)).humidity_pct


def test_that_without_a_calibration_a_reading_stays_what_it_is() -> None:
    for known in (Corrections(), corrections([], [SEEN], [])):
        assert known.corrected(reading(1.0, air_signal_mV=1500.0)) == reading(1.0, air_signal_mV=1500.0)


def test_that_a_calibration_holds_from_the_moment_it_was_made_until_the_next() -> None:
    known = corrections([kept("b", 3.0, HIGH_BY_4), kept("a", 1.0)], [SEEN], [])
    assert humidity_pct(known, 0.999) == 52.0
    assert humidity_pct(known, 1.0) == pytest.approx(50.0)
    assert humidity_pct(known, 2.999) == pytest.approx(50.0)
    assert humidity_pct(known, 3.0) == pytest.approx(48.0)


def test_that_a_withdrawn_one_counts_as_never_made() -> None:
    first, second = kept("a", 1.0), kept("b", 3.0, HIGH_BY_4)
    without_second = corrections([first, replace(second, withdrawn_ms=START_MS + 4 * DAY_MS)], [SEEN], [])
    assert humidity_pct(without_second, 3.5) == pytest.approx(50.0)
    without_any = corrections([replace(first, withdrawn_ms=START_MS + 4 * DAY_MS)], [SEEN], [])
    assert humidity_pct(without_any, 3.5) == 52.0


def test_that_it_follows_the_sensor_from_board_to_board() -> None:
    other, back = Sighting(time_ms=START_MS + 2 * DAY_MS, sensor="BEEF"), START_MS + 3 * DAY_MS
    known = corrections([kept("a", 1.0)], [other, SEEN, Sighting(time_ms=back, sensor="CAFE0042")], [])
    assert humidity_pct(known, 1.5) == pytest.approx(50.0)
    assert humidity_pct(known, 2.5) == 52.0
    assert humidity_pct(known, 3.0) == pytest.approx(50.0)
    assert [known.at(START_MS + round(days * DAY_MS)).sensor for days in (-1, 0, 2)] == ["", "CAFE0042", "BEEF"]


def test_that_a_calibrated_voltage_is_a_speed_and_stays_a_voltage_too() -> None:
    known = corrections([kept("a", 1.0), kept("v", 1.0, BEAD)], [SEEN], [])
    corrected = known.corrected(reading(2.0, air_signal_mV=1500.0))
    assert corrected.air_speed_m_s == pytest.approx(1.5625)
    assert corrected.air_signal_mV == 1500.0
    assert corrected.humidity_pct == pytest.approx(50.0)


def test_that_a_speed_that_the_board_worked_out_itself_is_left_alone() -> None:
    known = corrections([kept("v", 1.0, BEAD)], [SEEN], [])
    assert known.corrected(reading(2.0, air_signal_mV=1500.0, air_speed_m_s=0.3)).air_speed_m_s == 0.3


def test_that_a_channel_that_was_not_read_stays_not_read() -> None:
    known = corrections([kept("a", 1.0), kept("v", 1.0, BEAD)], [SEEN], [])
    empty = Reading(time_ms=START_MS + 2 * DAY_MS)
    assert known.corrected(empty) == empty


def test_that_the_stretches_of_a_range_cover_it_without_overlap() -> None:
    known = corrections([kept("a", 1.0), kept("b", 3.0)], [SEEN], [])
    start_ms, end_ms = START_MS - DAY_MS, START_MS + 2 * DAY_MS
    parts = [(begin, end) for _, begin, end in known.between(start_ms, end_ms)]
    assert parts == [(start_ms, START_MS), (START_MS, START_MS + DAY_MS), (START_MS + DAY_MS, end_ms)]


def test_that_the_newest_of_each_kind_and_sensor_is_named() -> None:
    old, new, air = kept("a", 1.0), kept("b", 3.0), kept("v", 2.0, BEAD)
    gone, other = replace(kept("c", 4.0), withdrawn_ms=START_MS), replace(kept("d", 0.5), sensor="BEEF")
    assert newest([new, old, air, gone, other]) == (other, air, new)


def test_that_readings_from_outside_are_corrected_by_no_calibration_and_all_others_as_ever() -> None:
    outside = Imported(start_ms=START_MS + 2 * DAY_MS, end_ms=START_MS + 3 * DAY_MS)
    again = Imported(start_ms=START_MS + 5 * DAY_MS // 2, end_ms=START_MS + 4 * DAY_MS)
    back = Sighting(time_ms=START_MS + 5 * DAY_MS // 2, sensor="CAFE0042")  # seen in the middle of it
    plain = corrections([kept("a", 1.0)], [SEEN], [])
    known = corrections([kept("a", 1.0)], [SEEN, back], [again, outside])
    for day in (0.5, 1.5, 2.0, 2.5, 2.75, 3.5, 4.0, 6.0):
        reading = Reading(time_ms=START_MS + round(day * DAY_MS), humidity_pct=50.0)
        expected = reading if 2.0 <= day < 4.0 else plain.corrected(reading)
        assert known.corrected(reading) == expected, day


def test_that_a_typed_reading_is_no_sensors_and_stays_what_it_is() -> None:
    known = corrections([kept("a", 1.0)], [SEEN], [])
    typed = typed_reading(time_ms=reading(2.0).time_ms, temperature_C=20.0, humidity_pct=52.0, felt=None)
    assert known.corrected(typed) == typed
