"""The table of saturated salts, which a humidity sensor is checked with, against itself: its fit and its columns."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest

from studiowatch.room.humidity_calibration import Salt, salt_humidity_pct

Rows = list[dict[str, str]]


@pytest.mark.parametrize("temperature_C", [20, 25])
def test_that_the_table_of_salts_agrees_with_its_own_fit(table: Callable[[str], Rows], temperature_C: int) -> None:
    # source: L. Greenspan (1977), which prints both: a digit gone wrong in either shows. Tolerance: the last digit,
    # which the printed columns cut off rather than round
    for row in table("saturated_salts"):
        fitted = np.polynomial.polynomial.polyval(temperature_C, [float(row[f"a{power}"]) for power in range(4)])
        assert fitted == pytest.approx(float(row[f"humidity_{temperature_C}C_pct"]), abs=0.01), row["salt"]


@pytest.mark.parametrize("salt", list(Salt))
def test_that_the_salts_of_the_calibration_are_those_of_the_table(table: Callable[[str], Rows], salt: Salt) -> None:
    # source: L. Greenspan (1977), the table's two columns to their printed digits; between them the table's own fit,
    # within the uncertainty that the table states for the salt
    row = next(row for row in table("saturated_salts") if salt.word.startswith(row["salt"]))
    for temperature_C in (20, 25):
        assert salt_humidity_pct(salt, temperature_C) == pytest.approx(float(row[f"humidity_{temperature_C}C_pct"]))
    coefficients = [float(row[f"a{power}"]) for power in range(4)]
    for temperature_C in np.linspace(20.0, 25.0, 51).tolist():
        fitted = np.polynomial.polynomial.polyval(temperature_C, coefficients)
        stated = min(float(row["uncertainty_20C_pct"]), float(row["uncertainty_25C_pct"]))
        assert salt_humidity_pct(salt, temperature_C) == pytest.approx(fitted, abs=stated)
