"""Sentences in another language, here one that is made up: it shouts, and it has a form for two things."""

from __future__ import annotations

from datetime import date

import pytest

from studiowatch.speech.dates import day_of_week, day_seen_from
from studiowatch.speech.words import NO_NUMBER, mark, say, say_counted, speak_by

SHOUTED = {
    ("{title} is dry", ""): "DRY IS {title}",
    ("clear", "weather"): "SUNNY",
    ("Sat", ""): "SATURN",
}


def shout(text: str, about: str, number: int) -> str:
    if number == 2:
        return "A PAIR OF COATS"
    return SHOUTED.get((text, about), "") if number == NO_NUMBER else ""


def test_that_english_needs_no_translation() -> None:
    assert say("{title} is dry", title="Kiln Light") == "Kiln Light is dry"
    assert [say_counted(n, "a coat", "{n} coats") for n in (0, 1, 2)] == ["0 coats", "a coat", "2 coats"]


def test_that_a_sentence_is_said_as_the_language_orders_it() -> None:
    speak_by(shout)
    assert say("{title} is dry", title="Kiln Light") == "DRY IS Kiln Light"
    assert say(mark("{title} is dry"), title="{title}") == "DRY IS {title}"


def test_that_two_meanings_are_told_apart() -> None:
    speak_by(shout)
    assert (say("clear", about="weather"), say("clear")) == ("SUNNY", "clear")


def test_that_the_language_chooses_the_form_for_a_number() -> None:
    speak_by(shout)
    assert [say_counted(n, "a coat", "{n} coats") for n in (1, 2, 3)] == ["a coat", "A PAIR OF COATS", "3 coats"]


def test_that_a_sentence_ends_with_one_full_stop_whatever_it_ends_with() -> None:
    assert say("Next: {title}, {day}.", title="Low Water.", day="30. Nov.") == "Next: Low Water., 30. Nov."
    assert say("It is {words}.", words="as it was ...") == "It is as it was ...."
    assert say("{day}: laid", day="30. Nov.") == "30. Nov.: laid"


def test_that_a_value_that_is_missing_is_told() -> None:
    with pytest.raises(KeyError, match="title"):
        say("{title} is dry")


def test_that_days_are_named_in_the_language() -> None:

    assert day_of_week(date(2025, 12, 13)) == "Sat 13 Dec"
    speak_by(shout)
    assert day_of_week(date(2025, 12, 13)) == "SATURN 13 Dec"


def test_that_a_day_of_another_year_has_its_year() -> None:
    saturday = date(2025, 12, 13)
    assert day_seen_from(saturday, date(2025, 1, 1)) == "Sat 13 Dec"
    assert day_seen_from(saturday, date(2026, 1, 1)) == "Sat 13 Dec 2025"
    assert day_seen_from(saturday, date(2024, 12, 31)) == "Sat 13 Dec 2025"
