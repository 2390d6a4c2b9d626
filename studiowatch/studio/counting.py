"""Small words: numbers, lists of titles, and singular or plural."""

from __future__ import annotations

from collections.abc import Sequence

_NUMBERS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve")
NAMED = 3  # titles named in one sentence; the rest are counted


def number_word(number: int) -> str:
    """Return "two" for 2; figures from 13 on."""
    return _NUMBERS[number] if 0 <= number < len(_NUMBERS) else str(number)


def counted(number: int, noun: str) -> str:
    """Return "a wet coat", "two wet coats", "no wet coats"."""
    if number == 1:
        return f"{'an' if noun[0] in 'aeiou' else 'a'} {noun}"
    return f"{number_word(number)} {noun}s"


def listed(titles: Sequence[str]) -> str:
    """Return "A", "A and B", "A, B and C", "A, B, C and two more"."""
    names = list(titles[:NAMED])
    if len(titles) > NAMED:
        names.append(f"{number_word(len(titles) - NAMED)} more")
    if len(titles) <= 1:
        return "".join(names)
    return f"{', '.join(names[:-1])} and {names[-1]}"


def is_or_are(titles: Sequence[str]) -> str:
    """Return the verb that goes with so many titles."""
    return "is" if len(titles) == 1 else "are"
