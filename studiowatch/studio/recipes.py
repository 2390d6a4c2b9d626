"""Recipes: the coats to come of one finish, lowest first, under a name. The built-in ones are common practice."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from studiowatch.speech.words import mark, say
from studiowatch.studio.pieces import can_be_shown

NAME_MOST = 60  # characters of a recipe's name
COATS_MOST = 12  # coats of one recipe; assumption: no finish has more


@dataclass(frozen=True, slots=True, kw_only=True)
class Recipe:
    """Coats to come, as names of data sheets from the lowest up; hers or built in."""

    name: str
    sheets: tuple[str, ...]
    own: bool = False

    @property
    def title(self) -> str:
        """What it is called: hers as she typed it, a built-in one in her language."""
        return self.name if self.own else say(self.name)


BUILT_IN = (  # common practice, no source: gloss first, satin or matt last and once, on an isolation coat
    Recipe(name=mark("Gloss"), sheets=("isolation-waterborne", "gloss-waterborne", "gloss-waterborne")),
    Recipe(name=mark("Satin"), sheets=("isolation-waterborne", "gloss-waterborne", "satin-waterborne")),
    Recipe(name=mark("Matt"), sheets=("isolation-waterborne", "gloss-waterborne", "matt-waterborne")),
    Recipe(
        name=mark("Gloss, solvent-borne"), sheets=("isolation-waterborne", "gloss-solventborne", "gloss-solventborne")
    ),
    Recipe(
        name=mark("Satin, solvent-borne"), sheets=("isolation-waterborne", "gloss-solventborne", "satin-solventborne")
    ),
)


def with_built_in(own: Sequence[Recipe]) -> tuple[Recipe, ...]:
    """Return all recipes by name; hers win over built-in ones of the same name."""
    names = {recipe.name for recipe in own}
    return (*(recipe for recipe in BUILT_IN if recipe.name not in names), *own)


def recipe_fault(name: str, sheets: Sequence[str]) -> str:
    """Return what is wrong with a recipe that she would save, one sentence, or ""."""
    if not 0 < len(name) <= NAME_MOST or not can_be_shown(name):
        return say(
            "The recipe's name has {length} characters; give it 1 to {most} that can be shown.",
            length=len(name),
            most=NAME_MOST,
        )
    if not 0 < len(sheets) <= COATS_MOST:
        return say("The recipe has {number} coats; give it 1 to {most}.", number=len(sheets), most=COATS_MOST)
    return ""
