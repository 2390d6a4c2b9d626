from __future__ import annotations

from studiowatch.studio.lay_check import lay_check
from studiowatch.studio.words import Level, Sentence

FIT = Sentence(level=Level.CALM, headline="Good to lay a coat", detail="20.5 °C, 50 %.")
DAMP = Sentence(level=Level.CAUTION, headline="Too damp to lay a coat", detail="General limit.", advice="Warm gently.")
WET = Sentence(level=Level.ACT, headline="Not yet: gloss 1 is still wet", detail="Ready from 16:35.", advice="Test it.")
TACKY = Sentence(level=Level.CAUTION, headline="Not yet: gloss 1 is still tacky", detail="Ready from 16:35.")


def test_that_it_says_go_where_neither_room_nor_piece_stands_against_it() -> None:
    check = lay_check(room=FIT, piece=None)
    assert (check.level, check.headline) == (Level.CALM, "Go: good to lay a coat")


def test_that_an_untested_coat_below_is_to_be_touched_even_where_it_is_go() -> None:
    check = lay_check(room=FIT, piece=None, untested="gloss 1")
    assert check.level is Level.CALM
    assert check.advice.startswith("Test gloss 1 at an edge")


def test_that_both_reasons_are_told_the_worse_first() -> None:
    both = lay_check(room=DAMP, piece=WET)
    assert (both.level, both.headline) == (Level.ACT, WET.headline)
    for words in (DAMP.headline, DAMP.detail, WET.detail):
        assert words in both.detail
    assert both.advice == "Test it. Warm gently."
    assert lay_check(room=FIT, piece=TACKY) == TACKY
