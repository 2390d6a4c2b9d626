"""Recipes and working hours as rows of the records and as tables of the studio file."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from studiowatch.speech.words import mark
from studiowatch.store.database import Database
from studiowatch.store.field_values import Wrong
from studiowatch.store.studio_fields import Field
from studiowatch.studio.recipes import COATS_MOST, NAME_MOST, Recipe, recipe_fault
from studiowatch.studio.working_hours import DAYS, WorkingHours, hours_text, read_hours


@dataclass(frozen=True, slots=True, kw_only=True)
class RecipeRecord:
    """A recipe of hers."""

    name: str
    sheets: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class WorkingDayRecord:
    """When she works on one day of the week: "09:00-18:00" or "off"."""

    day: str
    hours: str


def _sheets(value: Any) -> tuple[str, ...]:  # noqa: ANN401 - whatever the file holds
    if not isinstance(value, list) or not all(isinstance(each, str) and each.strip() for each in value):
        raise Wrong
    if recipe_fault("any", value):
        raise Wrong
    return tuple(value)


def _name(value: Any) -> str:  # noqa: ANN401
    if not isinstance(value, str) or recipe_fault(value, ("any",)):
        raise Wrong
    return value


def _day(value: Any) -> str:  # noqa: ANN401
    if value not in DAYS:
        raise Wrong
    return str(value)


def _hours(value: Any) -> str:  # noqa: ANN401
    try:
        return hours_text(read_hours(value if isinstance(value, str) else ""))
    except ValueError as fault:
        raise Wrong from fault


RECIPE_FIELDS = (
    Field(
        name="name",
        attribute="name",
        read=_name,
        allowed=mark("a text of 1 to {most} characters that can be shown"),
        limits={"most": str(NAME_MOST)},
    ),
    Field(
        name="sheets",
        attribute="sheets",
        read=_sheets,
        allowed=mark("a list of 1 to {most} names of data sheets in quotes, lowest first"),
        limits={"most": str(COATS_MOST)},
        required=True,
    ),
)
WORKING_DAY_FIELDS = (
    Field(name="day", attribute="day", read=_day, allowed=", ".join(f'"{day}"' for day in DAYS)),
    Field(name="hours", attribute="hours", read=_hours, allowed=mark('"09:00-18:00", or "off"'), required=True),
)


def all_recipes(database: Database) -> list[Recipe]:
    """Return her recipes by name."""
    rows = database.rows("SELECT name, sheets FROM recipe ORDER BY name")
    return [Recipe(name=name, sheets=tuple(json.loads(sheets)), own=True) for name, sheets in rows]


def put_recipe(database: Database, name: str, sheets: Sequence[str]) -> None:
    """Insert or replace a recipe of hers; no sheets drop it."""
    with database.transaction() as connection:
        if not sheets:
            connection.execute("DELETE FROM recipe WHERE name = ?", (name,))
            return
        connection.execute(
            "INSERT INTO recipe (name, sheets) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET sheets = excluded.sheets",
            (name, json.dumps(list(sheets))),
        )


def kept_hours(database: Database) -> WorkingHours:
    """Return her working hours; a day that she never set has the usual ones."""
    hours = WorkingHours()
    for day, text in database.rows("SELECT day, hours FROM working_day"):
        hours = hours.with_day(day, text)
    return hours


def put_hours(database: Database, hours: WorkingHours) -> None:
    """Keep her working hours."""
    rows = [(day, hours_text(of_day)) for day, of_day in zip(DAYS, hours.days, strict=True)]
    with database.transaction() as connection:
        connection.executemany(
            "INSERT INTO working_day (day, hours) VALUES (?, ?) ON CONFLICT (day) DO UPDATE SET hours = excluded.hours",
            rows,
        )
