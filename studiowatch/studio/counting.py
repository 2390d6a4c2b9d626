"""Small words: numbers and lists of titles.

What goes with a number is said by `say_counted` where it is said, with `n=number_word(number)` for a number in words.
"""

from __future__ import annotations

from collections.abc import Sequence

from studiowatch.speech.words import mark, say, say_counted

_NUMBERS = (
    mark("one"),
    mark("two"),
    mark("three"),
    mark("four"),
    mark("five"),
    mark("six"),
    mark("seven"),
    mark("eight"),
    mark("nine"),
    mark("ten"),
    mark("eleven"),
    mark("twelve"),
)
NAMED = 3  # titles named in one sentence; the rest are counted


def number_word(number: int) -> str:
    """Return "two" for 2 and "no" for 0; figures from 13 on."""
    if number == 0:
        return say("no", about="number")
    return say(_NUMBERS[number - 1]) if 0 < number <= len(_NUMBERS) else str(number)


def listed(titles: Sequence[str]) -> str:
    """Return "A", "A and B", "A, B and C", "A, B, C and two more"."""
    more = len(titles) - NAMED
    if more > 0:
        named = ", ".join(titles[:NAMED])
        return say_counted(more, "{titles} and one more", "{titles} and {n} more", titles=named, n=number_word(more))
    if len(titles) <= 1:
        return "".join(titles)
    return say("{titles} and {last}", titles=", ".join(titles[:-1]), last=titles[-1])
