"""Average run lengths of the two-sided cumulative sum against the published table.

Source: D. C. Montgomery, Introduction to Statistical Quality Control, table of average run lengths of a tabular
cusum with k = 1/2 and h = 4 or h = 5 (from memory). Tolerance: half the last printed digit.

The run lengths are worked out by the Markov chain of D. Brook and D. A. Evans, "An approach to the probability
distribution of cusum run length", Biometrika 59 (1972) 539: the sum is cut into cells, and the chain's steps are taken
by the very function that the detector uses. The two sides join as 1/L = 1/L_high + 1/L_low.
"""

from __future__ import annotations

from math import erf, sqrt

import numpy as np
import pytest

from studiowatch.room.cusum import Cusum, accumulate

SLACK = 0.5
CELLS = 120  # doubling this moves no figure here by as much as a third of its tolerance
REACH = 9.0  # standard normal values further out than this are left out: probability 1e-19

SHIFTS = (0.0, 0.25, 0.5, 0.75, 1.0, 1.5, 2.0)
TABLE = {
    4.0: ("168", "74.2", "26.6", "13.3", "8.38", "4.75", "3.34"),
    5.0: ("465", "139", "38.0", "17.0", "10.4", "5.75", "4.01"),
}
ROWS = [(h, shift, printed) for h, row in TABLE.items() for shift, printed in zip(SHIFTS, row, strict=True)]


def half_last_digit(printed: str) -> float:
    decimals = len(printed.partition(".")[2])
    return 0.5 * 10.0**-decimals


def normal_below(z: float) -> float:
    return 0.5 * (1.0 + erf(z / sqrt(2.0)))


def next_cells(h: float, side: str) -> tuple[np.ndarray, np.ndarray]:
    """Return the lattice of values, (v,), and the cell that each value leads to from each cell, (cells, v)."""
    width = h / (CELLS - 0.5)
    reach = int(REACH / width)
    values = np.arange(-reach, reach + 1) * width + (SLACK if side == "high" else -SLACK)
    led_to = np.empty((CELLS, len(values)), dtype=int)
    for cell in range(CELLS):
        for column, z in enumerate(values):
            before = Cusum(**{side: cell * width})
            led_to[cell, column] = round(getattr(accumulate(before, float(z), slack=SLACK), side) / width)
    return values, led_to


def one_sided_run_length(values: np.ndarray, led_to: np.ndarray, shift: float) -> float:
    width = values[1] - values[0]
    chance = np.array([normal_below(z - shift + width / 2) - normal_below(z - shift - width / 2) for z in values])
    steps = np.zeros((CELLS, CELLS))
    for cell, row in enumerate(led_to):
        inside = row < CELLS
        np.add.at(steps[cell], row[inside], chance[inside])
    return float(np.linalg.solve(np.eye(CELLS) - steps, np.ones(CELLS))[0])


Lattices = dict[tuple[float, str], tuple[np.ndarray, np.ndarray]]


@pytest.fixture(scope="module")
def lattices() -> Lattices:
    return {(h, side): next_cells(h, side) for h in TABLE for side in ("high", "low")}


@pytest.mark.parametrize(("h", "shift", "printed"), ROWS)
def test_that_run_lengths_are_those_of_the_table(lattices: Lattices, h: float, shift: float, printed: str) -> None:
    high = one_sided_run_length(*lattices[h, "high"], shift)
    low = one_sided_run_length(*lattices[h, "low"], shift)
    assert 1.0 / (1.0 / high + 1.0 / low) == pytest.approx(float(printed), abs=half_last_digit(printed))
