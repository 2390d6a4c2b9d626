"""Recipes and working hours: on disk, and through a studio file and back."""

from __future__ import annotations

from pathlib import Path

import pytest

from studiowatch.store.all_records import read_all, take_all
from studiowatch.store.database import Database, open_database
from studiowatch.store.records import RecordsStore
from studiowatch.store.studio_faults import StudioFileError
from studiowatch.store.studio_file import read_studio, write_studio
from studiowatch.studio.recipes import Recipe
from studiowatch.studio.working_hours import WorkingHours

HOURS = WorkingHours().with_day("wednesday", "off").with_day("sunday", "10:00-14:00")
SHEETS = ("isolation-waterborne", "gloss-waterborne")


def records(database: Database) -> RecordsStore:
    return RecordsStore(database, lambda: 1_772_442_000_000)


def test_that_hours_and_recipes_are_there_again_after_opening_anew(tmp_path: Path) -> None:
    file = tmp_path / "studio.sqlite3"
    database = open_database(file)
    assert records(database).working_hours() == WorkingHours()
    records(database).save_working_hours(HOURS)
    records(database).save_recipe("Panels, thin", SHEETS)
    database.close()
    again = records(open_database(file))
    assert again.working_hours() == HOURS
    assert again.recipes() == [Recipe(name="Panels, thin", sheets=SHEETS, own=True)]


def test_that_a_recipe_is_replaced_by_its_name_and_dropped_by_having_no_coats(tmp_path: Path) -> None:
    kept = records(open_database(tmp_path / "studio.sqlite3"))
    kept.save_recipe("Panels", SHEETS)
    kept.save_recipe("Panels", SHEETS[:1])
    assert [recipe.sheets for recipe in kept.recipes()] == [SHEETS[:1]]
    kept.save_recipe("Panels", ())
    assert kept.recipes() == []


def test_that_a_studio_file_carries_both_from_one_studio_to_another(tmp_path: Path) -> None:
    one, other = open_database(tmp_path / "one.sqlite3"), open_database(tmp_path / "other.sqlite3")
    records(one).save_working_hours(HOURS)
    records(one).save_recipe('Panels "thin"', SHEETS)
    told = read_all(one, "one")
    text = write_studio(told.pieces, told.rows)
    counts = take_all(other, read_studio(text, "file"), lambda: 0, replace=False)
    assert (counts.new, counts.replaced) == (8, 0)  # seven days and a recipe
    assert records(other).working_hours() == HOURS
    assert records(other).recipes() == records(one).recipes()
    assert take_all(other, read_studio(text, "file"), lambda: 0, replace=False).there == 8


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ('[[working_day]]\nday = "funday"\nhours = "off"\n', "monday"),
        ('[[working_day]]\nday = "monday"\nhours = "9 to 5"\n', "09:00-18:00"),
        ('[[recipe]]\nname = ""\nsheets = ["a"]\n', "1 to 60 characters"),
        ('[[recipe]]\nname = "Panels"\nsheets = []\n', "1 to 12 names"),
        ('[[recipe]]\nname = "Panels"\nsheets = ["a", 3]\n', "1 to 12 names"),
    ],
)
def test_that_a_fault_in_them_is_told_by_line_with_what_is_allowed(text: str, says: str) -> None:
    with pytest.raises(StudioFileError, match=says):
        read_studio(text, "studio.toml")
