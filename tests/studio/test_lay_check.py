from __future__ import annotations

from dataclasses import replace

from studiowatch.room.air_movement import Movement
from studiowatch.service.sheet_shelf import built_in_sheets
from studiowatch.studio.concern import AirNow
from studiowatch.studio.lay_check import lay_check
from studiowatch.studio.sentence import room_check
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


def test_that_what_is_to_be_turned_off_is_named_behind_the_advice_on_the_piece() -> None:
    # after "A touch test … comes before the next coat" there is no fan that "it" could mean
    stirred = AirNow(temperature_C=20.5, humidity_pct=50.0, dew_point_C=9.8, movement=Movement.FAN)
    tacky = replace(TACKY, advice="A touch test at an edge comes before the next coat.")
    both = lay_check(room=room_check(stirred, None, clock_text=str), piece=tacky)
    assert both.advice == (
        "A touch test at an edge comes before the next coat. Turn off what moves the air, or turn it away."
    )
    solvent = room_check(stirred, built_in_sheets()["gloss-solventborne"], clock_text=str)
    assert solvent.advice == "Turn what moves the air away from the piece, and keep fresh air coming in."
