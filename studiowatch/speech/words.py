"""Every sentence that she reads, in her language.

A sentence is written whole, in English, where it is said: `say("{title} is ready", title=piece.title)`. Whoever starts
the program may put a translation between (`speak_by`); nothing here knows where it comes from. English needs none.

`resources/languages/gather.py` finds the sentences by these three names, so their texts stand there as plain literals.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping

Translate = Callable[[str, str, int], str]
"""From an English text, what it is about ("" but for words with two meanings) and a number to her language, or ""."""

NO_NUMBER = -1
_ABBREVIATED = re.compile(r"[^.]\.$")  # ends with one full stop, not with three


def _in_english(_text: str, _about: str, _number: int) -> str:
    return ""


_translate: Translate = _in_english


def speak_by(translate: Translate | None) -> None:
    """Take all sentences from `translate` from now on, or speak English with None; what was said stays as it was."""
    global _translate  # noqa: PLW0603 - a process speaks one language
    _translate = translate or _in_english


def say(text: str, /, *, about: str = "", **values: object) -> str:
    """Return `text` in her language, with `values` where it names them in braces.

    `about` tells two meanings of one English text apart. Raises KeyError for a name without a value.
    """
    return _filled(_translate(text, about, NO_NUMBER) or text, values)


def say_counted(number: int, one: str, many: str, /, **values: object) -> str:
    """Return `one` for one thing and `many` for any other number of them, "{n}" being the number.

    A language may have more forms than these two: it is asked for the form of `many` that goes with `number`.
    """
    return _filled(_translate(many, "", number) or (one if number == 1 else many), {"n": number} | values)


def _filled(text: str, values: Mapping[str, object]) -> str:
    """Return `text` with the values; a full stop after one that ends with its own, as "30. Nov." does, is one."""
    shown = {
        name: value[:-1] if isinstance(value, str) and _ABBREVIATED.search(value) and f"{{{name}}}." in text else value
        for name, value in values.items()
    }
    return text.format(**shown)


def in_turn(*sentences: str) -> str:
    """Return sentences that are said already one after another, empty ones left out."""
    return " ".join(sentence for sentence in sentences if sentence)


def mark(text: str, /) -> str:
    """Return `text` as it is, known to the translators: for a table that is made once and said later by `say`."""
    return text
