from __future__ import annotations

import pytest

from studiowatch.physics.ranges import OutOfRange, check, within


def test_that_the_first_value_outside_is_named() -> None:
    with pytest.raises(OutOfRange, match="width is 7 m; it must be a number from 0 to 5 m"):
        within("width", [1.0, 7.0, 9.0], 0.0, 5.0, "m")


def test_that_the_ends_are_inside() -> None:
    assert within("width", [0.0, 5.0], 0.0, 5.0, "m").tolist() == [0.0, 5.0]
    check("width", 5.0, 0.0, 5.0, "m")


@pytest.mark.parametrize("value", [float("nan"), float("inf"), -0.1])
def test_that_one_number_is_checked_like_many(value: float) -> None:
    with pytest.raises(OutOfRange) as one:
        check("width", value, 0.0, 5.0, "m")
    with pytest.raises(OutOfRange) as many:
        within("width", value, 0.0, 5.0, "m")
    assert str(one.value) == str(many.value)


def test_that_numbers_alone_are_taken() -> None:
    with pytest.raises(ValueError, match="could not convert"):
        within("width", "wide", 0.0, 5.0, "m")
