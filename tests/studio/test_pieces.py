"""The face of a piece, by plane geometry."""

from __future__ import annotations

from math import pi

import pytest

from studiowatch.studio.pieces import Piece, Shape


def test_that_an_oval_has_the_area_of_an_ellipse() -> None:
    tondo = Piece(key="a", title="Tondo", width_cm=60.0, height_cm=40.0, shape=Shape.ROUND)
    assert tondo.area_m2 == pytest.approx(pi * 0.3 * 0.2)
    assert tondo.side_m**2 == pytest.approx(tondo.area_m2)


def test_that_a_set_is_coated_on_all_its_panels_and_each_dries_by_its_own_size() -> None:
    one = Piece(key="a", title="Tide", width_cm=20.0, height_cm=30.0)
    three = Piece(key="b", title="Tides", width_cm=20.0, height_cm=30.0, shape=Shape.PANELS, panels=3)
    assert three.area_m2 == pytest.approx(0.18)
    assert three.side_m == one.side_m
