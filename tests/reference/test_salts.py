"""The table of saturated salts, which a humidity sensor is checked with, against itself: its fit and its columns."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest

Rows = list[dict[str, str]]


@pytest.mark.parametrize("temperature_C", [20, 25])
def test_that_the_table_of_salts_agrees_with_its_own_fit(table: Callable[[str], Rows], temperature_C: int) -> None:
    # source: L. Greenspan (1977), which prints both: a digit gone wrong in either shows. Tolerance: the last digit,
    # which the printed columns cut off rather than round
    for row in table("saturated_salts"):
        fitted = np.polynomial.polynomial.polyval(temperature_C, [float(row[f"a{power}"]) for power in range(4)])
        assert fitted == pytest.approx(float(row[f"humidity_{temperature_C}C_pct"]), abs=0.01), row["salt"]
