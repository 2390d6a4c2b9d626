from __future__ import annotations

import numpy as np

from studiowatch.coats.stage_table import ROW, enter, nothing_reached
from studiowatch.coats.stages import Stage


def test_that_a_stage_is_entered_once() -> None:
    table = enter(nothing_reached(3), Stage.CLEAR, np.array([True, False, True]), lambda: np.array([5.0, 6.0, 7.0]))
    again = enter(table, Stage.CLEAR, np.array([True, True, False]), lambda: np.array([8.0, 9.0, 10.0]))
    assert again[ROW[Stage.CLEAR]].tolist() == [5.0, 9.0, 7.0]
    assert table[ROW[Stage.CLEAR]].tolist() == [5.0, np.inf, 7.0]


def test_that_nothing_new_leaves_the_table_itself_and_asks_nothing() -> None:
    def never() -> np.ndarray:
        raise AssertionError("asked for times that nobody needs")

    table = nothing_reached(2)
    assert enter(table, Stage.CURED, np.array([False, False]), never) is table


def test_that_every_stage_has_its_row() -> None:
    assert sorted(ROW.values()) == list(range(len(Stage)))
