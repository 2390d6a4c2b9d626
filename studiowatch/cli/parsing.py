"""A parser whose refusals are one sentence each, as every other wrong call is answered."""

from __future__ import annotations

import argparse
import re
from collections.abc import Callable
from typing import NoReturn

from studiowatch.cli.answers import wrong

# what argparse says, in Python 3.11 to 3.13, and what is said instead; anything else is passed on as it is
_WORDINGS: tuple[tuple[re.Pattern[str], Callable[[re.Match[str]], str]], ...] = tuple(
    (re.compile(pattern, re.DOTALL), say)
    for pattern, say in (
        (r"the following arguments are required: (.+)", lambda found: f"{found[1]} must be given"),
        (
            r"one of the arguments (.+) is required",
            lambda found: f"one of {found[1].replace(' ', ' or ')} must be given",
        ),
        (r"unrecognized arguments: (.+)", lambda found: f"{found[1]} is not known here"),
        (
            r"argument command: invalid choice: (.+) \(choose from (.+)\)",
            lambda found: f"there is no command {found[1]}; there are {found[2]}",
        ),
        (
            r"argument (\S+): invalid choice: (.+) \(choose from (.+)\)",
            lambda found: f"{found[1]} is {found[2]}; allowed is {found[3]}",
        ),
        (r"argument (\S+): invalid float value: (.+)", lambda found: f"{found[1]} is {found[2]}; give a number"),
        (r"argument (\S+): invalid int value: (.+)", lambda found: f"{found[1]} is {found[2]}; give a whole number"),
        (
            r"argument --air: expected one argument",
            lambda _: "--air needs a value behind it, one below zero joined to it, as --air=-5,80,0.05",
        ),
        (r"argument (\S+): expected one argument", lambda found: f"{found[1]} needs a value behind it"),
        (
            r"argument (\S+): not allowed with argument (\S+)",
            lambda found: f"{found[1]} and {found[2]} exclude each other; leave one out",
        ),
        (
            r"argument (\S+): ignored explicit argument (.+)",
            lambda found: f"{found[1]} takes no value, and was given {found[2]}",
        ),
    )
)


class Parser(argparse.ArgumentParser):
    """Refuses with `WrongCall` instead of a block of usage, and takes no abbreviated options."""

    def __init__(self, *args: object, **kwargs: object) -> None:
        super().__init__(*args, **{"allow_abbrev": False, **kwargs})  # type: ignore[arg-type]

    def error(self, message: str) -> NoReturn:
        """Refuse the call with one sentence that ends with where to read on."""
        wrong(f"{_in_our_words(message)}; `{self.prog} --help` shows what it takes.")


def _in_our_words(message: str) -> str:
    for pattern, say in _WORDINGS:
        found = pattern.fullmatch(message)
        if found:
            return say(found)
    return message
