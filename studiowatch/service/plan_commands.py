"""What she can do with the finishing plan: the coats to come, the hours she works, her recipes."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.studio.working_hours import WorkingHours


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanCoat:
    """Add a coat to come on top of a piece."""

    piece_key: str
    sheet: str


@dataclass(frozen=True, slots=True, kw_only=True)
class UnplanCoat:
    """Take a coat to come out of the plan."""

    coat_key: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ReplacePlanned:
    """Plan another product for a coat to come."""

    coat_key: str
    sheet: str


@dataclass(frozen=True, slots=True, kw_only=True)
class MovePlanned:
    """Put a coat to come at another place among those of its piece, counted from 0 at the lowest."""

    coat_key: str
    place: int


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanCoats:
    """Put these coats, lowest first, in the place of all that are to come on a piece: a recipe is applied by it."""

    piece_key: str
    sheets: tuple[str, ...]


PlannedCommand = PlanCoat | UnplanCoat | ReplacePlanned | MovePlanned | PlanCoats


@dataclass(frozen=True, slots=True, kw_only=True)
class SetWorkingHours:
    """She works in these hours of the week."""

    hours: WorkingHours


@dataclass(frozen=True, slots=True, kw_only=True)
class SaveRecipe:
    """Keep these sheets, lowest first, under a name; no sheets drop the recipe."""

    name: str
    sheets: tuple[str, ...]


PlanCommand = SetWorkingHours | SaveRecipe
