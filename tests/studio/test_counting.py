from __future__ import annotations

import pytest

from studiowatch.studio.counting import counted, is_or_are, listed, number_word


@pytest.mark.parametrize(
    ("number", "words"),
    [(0, "no wet coats"), (1, "a wet coat"), (2, "two wet coats"), (12, "twelve wet coats"), (13, "13 wet coats")],
)
def test_that_a_number_of_things_reads_as_words(number: int, words: str) -> None:
    assert counted(number, "wet coat") == words


def test_that_a_vowel_takes_an() -> None:
    assert counted(1, "open warning") == "an open warning"


def test_that_figures_stand_for_what_has_no_word() -> None:
    assert number_word(-1) == "-1"


@pytest.mark.parametrize(
    ("titles", "words"),
    [
        ([], ""),
        (["A"], "A"),
        (["A", "B"], "A and B"),
        (["A", "B", "C"], "A, B and C"),
        (["A", "B", "C", "D"], "A, B, C and one more"),
        (["A", "B", "C", "D", "E"], "A, B, C and two more"),
    ],
)
def test_that_titles_are_listed_and_many_are_counted(titles: list[str], words: str) -> None:
    assert listed(titles) == words


def test_that_the_verb_follows_the_number() -> None:
    assert is_or_are(["A"]) == "is"
    assert is_or_are(["A", "B"]) == "are"
