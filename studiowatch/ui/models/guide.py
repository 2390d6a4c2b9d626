"""A guide in steps: what every step says, in the language and the units of the moment."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from typing import TypeVar, overload


@dataclass(frozen=True, slots=True, kw_only=True)
class GuideStep:
    """One step.

    Attributes
    ----------
    name, title : str
        In the list of steps, and above the step itself.
    words : tuple of str
        What to do, a paragraph each.
    cautions : tuple of str
        Shown here because they bite here.
    onward : str
        What the button says that ends the step.
    """

    name: str
    title: str
    words: tuple[str, ...]
    onward: str
    cautions: tuple[str, ...] = ()


Step = TypeVar("Step")


class Steps(Sequence[Step]):
    """Steps that are said anew whenever they are read, so that a table of the program's start speaks her language."""

    def __init__(self, said: Callable[[], tuple[Step, ...]]) -> None:
        self._said = said

    @overload
    def __getitem__(self, at: int) -> Step: ...
    @overload
    def __getitem__(self, at: slice) -> tuple[Step, ...]: ...
    def __getitem__(self, at: int | slice) -> Step | tuple[Step, ...]:
        """Return a step, or some of them."""
        return self._said()[at]

    def __len__(self) -> int:
        """Return how many there are."""
        return len(self._said())

    def __iter__(self) -> Iterator[Step]:
        """Go through them."""
        return iter(self._said())
