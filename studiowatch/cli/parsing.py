"""A parser whose refusals are one sentence each, as every wrong call is answered, and whose help is in her words."""

from __future__ import annotations

import argparse
import re
from collections.abc import Callable, Iterable, Sequence
from functools import reduce
from typing import NoReturn

from studiowatch.cli.answers import wrong
from studiowatch.speech.words import say


def _one_of(options: str) -> str:
    listed = reduce(lambda first, second: say("{first} or {second}", first=first, second=second), options.split())
    return say("one of {options} must be given", options=listed)


# what argparse says, in Python 3.11 to 3.13, and what is said instead; anything else is passed on as it is
_WORDINGS: tuple[tuple[re.Pattern[str], Callable[[re.Match[str]], str]], ...] = tuple(
    (re.compile(pattern, re.DOTALL), wording)
    for pattern, wording in (
        (
            r"the following arguments are required: (.+)",  # not said
            lambda found: say("{option} must be given", option=found[1]),
        ),
        (
            r"one of the arguments (.+) is required",  # not said
            lambda found: _one_of(found[1]),
        ),
        (
            r"unrecognized arguments: (.+)",  # not said
            lambda found: say("{words} is not known here", words=found[1]),
        ),
        (
            r"argument command: invalid choice: (.+) \(choose from (.+)\)",  # not said
            lambda found: say("there is no command {given}; there are {commands}", given=found[1], commands=found[2]),
        ),
        (
            r"argument (\S+): invalid choice: (.+) \(choose from (.+)\)",  # not said
            lambda found: say(
                "{option} is {given}; allowed is {allowed}", option=found[1], given=found[2], allowed=found[3]
            ),
        ),
        (
            r"argument (\S+): invalid float value: (.+)",  # not said
            lambda found: say("{option} is {given}; give a number", option=found[1], given=found[2]),
        ),
        (
            r"argument (\S+): invalid int value: (.+)",  # not said
            lambda found: say("{option} is {given}; give a whole number", option=found[1], given=found[2]),
        ),
        (
            r"argument --air: expected one argument",  # not said
            lambda _: say("--air needs a value behind it, one below zero joined to it, as --air=-5,80,0.05"),
        ),
        (
            r"argument (\S+): expected one argument",  # not said
            lambda found: say("{option} needs a value behind it", option=found[1]),
        ),
        (
            r"argument (\S+): expected (\d+) arguments",  # not said
            lambda found: say("{option} needs {count} values behind it", option=found[1], count=found[2]),
        ),
        (
            r"argument (\S+): not allowed with argument (\S+)",  # not said
            lambda found: say(
                "{first} and {second} exclude each other; leave one out", first=found[1], second=found[2]
            ),
        ),
        (
            r"argument (\S+): ignored explicit argument (.+)",  # not said
            lambda found: say("{option} takes no value, and was given {given}", option=found[1], given=found[2]),
        ),
    )
)


class HelpText(argparse.HelpFormatter):
    """Begins the usage in her language."""

    def add_usage(
        self,
        usage: str | None,
        actions: Iterable[argparse.Action],
        groups: Iterable[argparse._MutuallyExclusiveGroup],
        prefix: str | None = None,
    ) -> None:
        """Add the usage, behind the word for it unless `prefix` is given."""
        super().add_usage(usage, actions, groups, say("usage: ") if prefix is None else prefix)


class Parser(argparse.ArgumentParser):
    """Refuses with `WrongCall` instead of a block of usage, and takes no abbreviated options."""

    def __init__(self, *args: object, **kwargs: object) -> None:
        self._one_needed: Sequence[argparse.Action] = ()
        own = {"allow_abbrev": False, "formatter_class": HelpText, "add_help": False}
        super().__init__(*args, **{**own, **kwargs})  # type: ignore[arg-type]
        self._positionals.title = say("positional arguments")
        self._optionals.title = say("options")
        self.add_argument("-h", "--help", action="help", help=say("show this help message and exit"))

    def needs_an_option(self) -> None:
        """Refuse a call from now on that gives none of the options added so far: it would change nothing."""
        self._one_needed = [action for action in self._actions if action.option_strings and action.dest != "help"]

    def parse_known_args(  # type: ignore[override]  # the overloads tell namespaces of other types
        self, args: Sequence[str] | None = None, namespace: argparse.Namespace | None = None
    ) -> tuple[argparse.Namespace, list[str]]:
        """Read a call as far as it is known here."""
        call, unknown = super().parse_known_args(args, namespace)
        needed = self._one_needed
        if needed and not unknown and all(getattr(call, one.dest) is one.default for one in needed):
            self._refuse(_one_of(" ".join(one.option_strings[0] for one in needed)))
        return call, unknown

    def error(self, message: str) -> NoReturn:
        """Refuse the call with one sentence that ends with where to read on."""
        self._refuse(_in_our_words(message))

    def _refuse(self, fault: str) -> NoReturn:
        wrong(say("{fault}; `{program} --help` shows what it takes.", fault=fault, program=self.prog))


def _in_our_words(message: str) -> str:
    for pattern, wording in _WORDINGS:
        found = pattern.fullmatch(message)
        if found:
            return wording(found)
    return message
