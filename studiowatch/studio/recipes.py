"""Recipes: the coats to come of one finish, lowest first, under a name. The built-in ones are common practice."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

NAME_MOST = 60  # characters of a recipe's name
COATS_MOST = 12  # coats of one recipe; assumption: no finish has more


@dataclass(frozen=True, slots=True, kw_only=True)
class Recipe:
    """Coats to come, as names of data sheets from the lowest up; hers or built in."""

    name: str
    sheets: tuple[str, ...]
    own: bool = False


BUILT_IN = (  # common practice, no source: gloss first, satin or matt last and once, on an isolation coat
    Recipe(name="Gloss", sheets=("isolation-waterborne", "gloss-waterborne", "gloss-waterborne")),
    Recipe(name="Satin", sheets=("isolation-waterborne", "gloss-waterborne", "satin-waterborne")),
    Recipe(name="Matt", sheets=("isolation-waterborne", "gloss-waterborne", "matt-waterborne")),
    Recipe(name="Gloss, solvent-borne", sheets=("isolation-waterborne", "gloss-solventborne", "gloss-solventborne")),
    Recipe(name="Satin, solvent-borne", sheets=("isolation-waterborne", "gloss-solventborne", "satin-solventborne")),
)


def with_built_in(own: Sequence[Recipe]) -> tuple[Recipe, ...]:
    """Return all recipes by name; hers win over built-in ones of the same name."""
    names = {recipe.name for recipe in own}
    return (*(recipe for recipe in BUILT_IN if recipe.name not in names), *own)


def recipe_fault(name: str, sheets: Sequence[str]) -> str:
    """Return what is wrong with a recipe that she would save, one sentence, or ""."""
    if not 0 < len(name) <= NAME_MOST or not name.isprintable():
        return f"The recipe's name has {len(name)} characters; give it 1 to {NAME_MOST} that can be shown."
    if not 0 < len(sheets) <= COATS_MOST:
        return f"The recipe has {len(sheets)} coats; give it 1 to {COATS_MOST}."
    return ""
