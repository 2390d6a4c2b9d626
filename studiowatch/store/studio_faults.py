"""What is wrong in a studio file, each fault in one sentence, and the line where it stands."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

from studiowatch.speech.words import say

Place = tuple[int, ...]  # places in the lists, from 0: piece, coat, look

_TABLES = {"piece": 1, "piece.coat": 2, "piece.coat.look": 3}  # heading and its depth
_HEADING = re.compile(r"\s*\[\[\s*([\w.\s]+?)\s*\]\]")
_KEY = re.compile(r"\s*([\w-]+)\s*=")


@dataclass(frozen=True, slots=True, kw_only=True)
class StudioFault:
    """One thing that is wrong.

    Attributes
    ----------
    origin : str
        The file.
    line : int or None
        Where, from 1; None if it could not be told.
    where : str
        Piece and coat in her words, empty for the file as a whole.
    field, value, allowed : str
        What was written and what may stand there.
    """

    origin: str
    line: int | None
    where: str
    field: str
    value: str
    allowed: str

    def __str__(self) -> str:
        """Return the sentence."""
        at = say("{origin}, line {line}", origin=self.origin, line=self.line) if self.line else self.origin
        where = f"{self.where}: " if self.where else ""
        fault = say("{field} is {value}; allowed: {allowed}.", field=self.field, value=self.value, allowed=self.allowed)
        return f"{at}: {where}{fault}"


class StudioFileError(ValueError):
    """A studio file with faults; nothing of it was taken over. The message has one sentence a line."""

    def __init__(self, faults: Sequence[StudioFault]) -> None:
        super().__init__("\n".join(map(str, faults)))
        self.faults = tuple(faults)


class Lines:
    """Finds the line of a field in a file written with ``[[piece]]`` headings."""

    def __init__(self, text: str) -> None:
        self._found: dict[tuple[Place, str], int] = {}
        self._flat: dict[tuple[str, int, str], int] = {}
        place: Place = ()
        flat = ("", 0)
        counts: Counter[str] = Counter()
        for number, line in enumerate(text.split("\n"), start=1):
            if heading := _HEADING.match(line):
                name = re.sub(r"\s", "", heading[1])
                flat = ("", 0) if name in _TABLES else (name, counts[name])
                counts[name] += 1
                place = _next_place(place, name)
                self._add(place, flat, "", number)
            elif key := _KEY.match(line):
                self._add(place, flat, key[1], number)

    def _add(self, place: Place, flat: tuple[str, int], field: str, number: int) -> None:
        if flat[0]:
            self._flat.setdefault((*flat, field), number)
        else:
            self._found.setdefault((place, field), number)

    def find_flat(self, heading: str, at: int, field: str) -> int | None:
        """Return the line of `field` of the table number `at`, from 0, under `heading`, or of its heading, or None."""
        return self._flat.get((heading, at, field)) or self._flat.get((heading, at, ""))

    def find(self, place: Place, field: str) -> int | None:
        """Return the line of `field` of the table at `place`, or of what holds it, or None."""
        line = self._found.get((place, field)) or self._found.get((place, ""))
        return line or (self.find(place[:-1], "") if place else None)


def _next_place(place: Place, heading: str) -> Place:
    """Return the place of the table that `heading` opens after `place`; an unknown heading stays where it is."""
    depth = _TABLES.get(heading)
    if depth is None or len(place) < depth - 1:
        return place
    return (*place[: depth - 1], place[depth - 1] + 1 if len(place) >= depth else 0)
