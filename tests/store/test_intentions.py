"""What is meant for the room: on disk, through a studio file and back, and out of a file that holds anything."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from studiowatch.room.intentions import Doing
from studiowatch.store.all_records import StudioConflict, read_all, take_all
from studiowatch.store.database import Database, open_database
from studiowatch.store.records import RecordsStore
from studiowatch.store.salvage import salvage
from studiowatch.store.studio_faults import StudioFileError
from studiowatch.store.studio_file import read_studio, write_studio
from studiowatch.studio.meant import Meant

HEATER = Meant(key="h", doing=Doing.HEATER, from_min=1080, to_min=1380, target=21.5, first_day=date(2026, 3, 2), days=3)
OFF = Meant(key="f", doing=Doing.FAN, from_min=0, to_min=1440, target=0.0, first_day=date(2026, 3, 2), days=None)
DRYER = Meant(key="d", doing=Doing.DEHUMIDIFIER, from_min=1320, to_min=360, target=50.0, first_day=date(2026, 3, 2))


def records(database: Database) -> RecordsStore:
    return RecordsStore(database, lambda: 1_772_442_000_000)


def test_that_they_are_there_again_after_opening_anew_until_they_are_dropped(tmp_path: Path) -> None:
    file = tmp_path / "studio.sqlite3"
    database = open_database(file)
    records(database).save_intention(HEATER)
    records(database).save_intention(DRYER)
    records(database).save_intention(OFF)
    database.close()
    again = records(open_database(file))
    assert again.intentions() == [HEATER, DRYER, OFF]
    again.drop_intention("h")
    assert again.intentions() == [DRYER, OFF]


def test_that_a_studio_file_carries_them_from_one_studio_to_another(tmp_path: Path) -> None:
    one, other = open_database(tmp_path / "one.sqlite3"), open_database(tmp_path / "other.sqlite3")
    records(one).save_intention(HEATER)
    records(one).save_intention(OFF)
    told = read_all(one, "one")
    text = write_studio(told.pieces, told.rows)
    assert take_all(other, read_studio(text, "file"), lambda: 0, replace=False).new == 2
    assert records(other).intentions() == [HEATER, OFF]
    assert take_all(other, read_studio(text, "file"), lambda: 0, replace=False).there == 2


def test_that_a_damaged_file_gives_them_back(tmp_path: Path) -> None:
    database = open_database(tmp_path / "old.sqlite3")
    records(database).save_intention(HEATER)
    database.close()
    salvage(tmp_path / "old.sqlite3", tmp_path / "new.sqlite3")
    assert records(open_database(tmp_path / "new.sqlite3")).intentions() == [HEATER]


@pytest.mark.parametrize(
    ("field", "value", "says"),
    [
        ("doing", '"kettle"', "heater"),
        ("hours", '"six to nine"', "18:00-23:00"),
        ("target", "90", "target of the heater is 90 °C"),
        ("target", '"warm"', "of a heater"),
        ("first_day", '"2026-13-01"', "2026-03-20"),
        ("days", "-1", "1 to 366, or 0 for every day"),
    ],
)
def test_that_a_field_that_cannot_be_is_refused_with_what_may_stand_there(
    tmp_path: Path, field: str, value: str, says: str
) -> None:
    held = {
        "key": '"h"',
        "doing": '"heater"',
        "hours": '"18:00-23:00"',
        "target": "21.5",
        "first_day": '"2026-03-02"',
        "days": "3",
    }
    lines = "\n".join(f"{name} = {text}" for name, text in (held | {field: value}).items())
    database = open_database(tmp_path / "studio.sqlite3")
    with pytest.raises((StudioFileError, StudioConflict), match=says):
        take_all(database, read_studio(f"[[intention]]\n{lines}\n", "file"), lambda: 0, replace=False)
    assert records(database).intentions() == []
