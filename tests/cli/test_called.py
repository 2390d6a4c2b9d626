"""Which piece a call means by a title."""

from __future__ import annotations

import pytest

from studiowatch.cli.answers import WrongCall
from studiowatch.cli.called import called
from studiowatch.studio.pieces import Piece

SMALL = Piece(key="1", title="low tide", width_cm=40, height_cm=30)
LARGE = Piece(key="2", title="Low Tide", width_cm=40, height_cm=30)
GONE = Piece(key="3", title="Low Tide", width_cm=40, height_cm=30, archived=True)


@pytest.mark.parametrize(
    ("title", "pieces", "meant"),
    [
        ("Low Tide", (SMALL, LARGE), LARGE),
        ("low  tide ", (LARGE, SMALL), SMALL),
        ("LOW TIDE", (SMALL,), SMALL),
        ("LOW TIDE", (GONE, SMALL), SMALL),
        ("Low Tide", (GONE, LARGE), LARGE),
        ("Low Tide", (GONE, SMALL), GONE),
        ("High Tide", (SMALL, LARGE), None),
    ],
)
def test_that_capitals_tell_two_apart_and_the_rack_goes_first(
    title: str, pieces: tuple[Piece, ...], meant: Piece | None
) -> None:
    assert called(title, pieces, "the records") is meant


def test_that_a_title_of_several_is_refused() -> None:
    with pytest.raises(WrongCall, match="2 pieces in the records are called 'LOW TIDE'"):
        called("LOW TIDE", (SMALL, LARGE), "the records")
