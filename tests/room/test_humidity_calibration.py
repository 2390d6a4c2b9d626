"""Two saturated salts: the line through them, and what is refused in one sentence."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from studiowatch.room.humidity_calibration import (
    CalibrationRefused,
    HumidityCalibration,
    SaltPoint,
    calibrate_humidity,
)

NOW_MS = 1_772_460_000_000
HOUR_MS = 3_600_000
MAGNESIUM = SaltPoint(raw_pct=35.0, temperature_C=20.0, time_ms=NOW_MS - 20 * HOUR_MS)
SODIUM = SaltPoint(raw_pct=77.0, temperature_C=20.0, time_ms=NOW_MS)


def calibrated(magnesium: SaltPoint = MAGNESIUM, sodium: SaltPoint = SODIUM) -> HumidityCalibration:
    return calibrate_humidity(magnesium, sodium, now_ms=NOW_MS)


def test_that_both_salts_are_met_and_what_lies_between_is_on_their_line() -> None:
    calibration = calibrated()
    assert calibration.corrected_pct(35.0) == pytest.approx(33.07)
    assert calibration.corrected_pct(77.0) == pytest.approx(75.47)
    # by hand: s1 + (s2 - s1)(raw - m1)/(m2 - m1) = 33.07 + 42.40 * 21/42
    assert calibration.corrected_pct(56.0) == pytest.approx(54.27)
    assert calibration.gain == pytest.approx(42.40 / 42.0)


def test_that_a_sensor_that_is_right_is_left_alone() -> None:
    right = calibrated(replace(MAGNESIUM, raw_pct=33.07), replace(SODIUM, raw_pct=75.47))
    for raw_pct in (0.0, 33.3, 50.0, 99.0):
        assert right.corrected_pct(raw_pct) == pytest.approx(raw_pct)


def test_that_each_box_counts_with_its_own_temperature() -> None:
    warm = calibrated(sodium=replace(SODIUM, temperature_C=25.0))
    assert warm.corrected_pct(35.0) == pytest.approx(33.07)
    assert warm.corrected_pct(77.0) == pytest.approx(75.29)


def test_that_no_correction_leaves_0_to_100() -> None:
    calibration = calibrated()
    assert calibration.corrected_pct(0.0) == 0.0
    assert calibrated(sodium=replace(SODIUM, raw_pct=72.0)).corrected_pct(100.0) == 100.0


def test_that_arrays_are_corrected_as_single_numbers_are() -> None:
    raw = np.array([[0.0, 35.0], [77.0, 100.0]])
    expected = [[calibrated().corrected_pct(value) for value in row] for row in raw.tolist()]
    assert calibrated().corrected(raw).tolist() == expected


@pytest.mark.parametrize(
    ("magnesium", "sodium", "words"),
    [
        ({"temperature_C": 19.9}, {}, "magnesium chloride is at 19.9 °C.*20 to 25 °C"),
        ({}, {"temperature_C": 25.1}, r"sodium chloride \(table salt\) is at 25.1 °C"),
        ({"temperature_C": float("nan")}, {}, "at nan °C"),
        ({"raw_pct": 77.0}, {"raw_pct": 35.0}, "seem swapped"),
        ({"raw_pct": 60.0}, {}, "too close together"),
        ({"raw_pct": 42.0}, {"raw_pct": 76.9}, "gain would be 1.21; 0.8 to 1.2"),
        ({"raw_pct": 24.0}, {"raw_pct": 77.5}, "gain would be 0.79"),
        ({"raw_pct": -1.0}, {}, "is -1 %RH; 0 to 100"),
        ({}, {"raw_pct": float("nan")}, "is nan %RH"),
        ({"time_ms": NOW_MS - 49 * HOUR_MS}, {}, "is 49 h old.*last 48 h"),
        ({}, {"time_ms": NOW_MS + 1}, "lies in the future"),
    ],
)
def test_that_what_cannot_be_right_is_refused_in_one_sentence(
    magnesium: dict[str, float], sodium: dict[str, float], words: str
) -> None:
    with pytest.raises(CalibrationRefused, match=words) as refusal:
        calibrated(replace(MAGNESIUM, **magnesium), replace(SODIUM, **sodium))
    assert "\n" not in str(refusal.value)


def test_that_a_gain_at_the_very_bounds_is_allowed() -> None:
    # the salts are 42.40 %RH apart at 20 °C: a gain of 1.2 is readings 35.33 apart, one of 0.8 readings 53.00 apart
    assert calibrated(replace(MAGNESIUM, raw_pct=40.0), replace(SODIUM, raw_pct=75.34)).gain == pytest.approx(1.2, 1e-3)
    assert calibrated(replace(MAGNESIUM, raw_pct=24.0), replace(SODIUM, raw_pct=76.99)).gain == pytest.approx(0.8, 1e-3)
