from __future__ import annotations

import pytest

from studiowatch.studio.counting import listed, number_word


@pytest.mark.parametrize(("number", "word"), [(0, "no"), (1, "one"), (2, "two"), (12, "twelve"), (13, "13")])
def test_that_a_number_reads_as_a_word_up_to_twelve(number: int, word: str) -> None:
    assert number_word(number) == word


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
