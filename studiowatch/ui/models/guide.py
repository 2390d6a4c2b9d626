"""A guide in steps: what every step says."""

from __future__ import annotations

from dataclasses import dataclass


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
