"""`plan`: the finishing plan in the terminal, for other programs, and as a calendar file."""

from __future__ import annotations

import json
from collections.abc import Callable
from contextlib import closing
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import icalendar
import pytest

from studiowatch.cli.commands import run
from studiowatch.compose import outfit
from studiowatch.room.corrections import Imported, Kept, Sighting
from studiowatch.room.humidity_calibration import HumidityCalibration, SaltPoint
from studiowatch.room.readings import Reading
from studiowatch.store.database import open_database
from studiowatch.store.imported import put_imported
from studiowatch.store.readings import ReadingsStore
from studiowatch.store.records import RecordsStore

from ..service.scripted import START_MS, ScriptedClock  # noqa: TID252 - shared with the keeper's tests
from .conftest import Answer, room_text

NOW = "2026-03-02T12:00:00Z"
HOUR_MS = 3_600_000
STUDIO = """
[[piece]]
title = "Salt Marsh; Evening, \\"small\\" 🌊"
width_cm = 60
height_cm = 90
due = 2026-03-06
[[piece.coat]]
sheet = "isolation-waterborne"
laid = 2026-03-02T09:00:00Z
volume_mL = 55
[[piece.coat]]
sheet = "gloss-waterborne"
[[piece.coat]]
sheet = "satin-waterborne"

[[piece]]
title = "Three Gulls"
width_cm = 30
height_cm = 30
[[piece.coat]]
sheet = "satin-waterborne"

[[working_day]]
day = "sunday"
hours = "10:00-14:00"
"""


@pytest.fixture
def studio(tmp_path: Path) -> Path:
    path = tmp_path / "planned.toml"
    path.write_text(STUDIO, "utf-8")
    return path


def test_that_a_studio_file_is_planned_for_a_held_room(call: Callable[..., Answer], studio: Path) -> None:
    told = call("plan", "--studio", studio, "--now", NOW, "--air", "20,50,0.05", "--json")
    assert told.code == 0, told.err
    document = told.document
    assert document["made"] == NOW
    assert "20.0 °C, 50 % RH" in document["air"]
    assert document["working_hours"]["sunday"] == "10:00-14:00"
    marsh, gulls = document["pieces"]
    assert marsh["due"] == "2026-03-06"
    assert marsh["slack_days"] < 0
    assert marsh["late"].startswith("Cannot be ready by Fri 6 Mar")
    assert set(marsh["fit"]) == {"handle", "wrap", "ship"}
    assert [coat["label"] for coat in marsh["coats"]] == ["gloss", "satin"]
    assert gulls["slack_days"] is None
    assert [check["rule"] for check in gulls["checks"]] == ["matting-on-paint", "isolation-missing"]
    for piece in document["pieces"]:
        for coat in piece["coats"]:
            prepare, lay, until = (datetime.fromisoformat(coat[name]) for name in ("prepare", "lay", "until"))
            assert (lay - prepare, until - lay) == (timedelta(minutes=25), timedelta(minutes=45))
            assert lay >= datetime.fromisoformat(coat["ready"]["p90"])
    assert {prompt["piece"] for prompt in document["prompts"]} == {marsh["piece"]}


def test_that_the_end_of_a_room_log_is_where_the_plan_begins(
    call: Callable[..., Answer], studio: Path, tmp_path: Path
) -> None:
    room = tmp_path / "room.csv"
    start = datetime(2026, 3, 2, 8, 30, tzinfo=UTC)
    rows = [[(start + timedelta(minutes=n)).isoformat(), 21.0, 47, 0.04] for n in range(181)]
    room.write_text(room_text(rows), "utf-8")
    told = call("plan", "--studio", studio, "--room", room, "--json")
    assert told.code == 0, told.err
    assert told.document["made"] == "2026-03-02T11:30:00Z"
    assert "from 21.0 °C and 47 % RH" in told.document["air"]  # three hours are known: it is foretold from there


def test_that_the_plan_is_told_in_words(call: Callable[..., Answer], studio: Path) -> None:
    told = call("plan", "--studio", studio, "--now", NOW, "--air", "20,50,0.05")
    assert told.code == 0, told.err
    for words in (
        "Working hours: Mon to Sat 09:00-18:00, Sun 10:00-14:00",
        "Finishing plan of Mon 2 Mar 2026, ",
        "Cannot be ready by Fri 6 Mar",
        "perhaps ready Mon 2 Mar ",  # the day of the plan, said beside a Tuesday
        "fit to handle",
        "common practice, no source",
        "At the rack",
    ):
        assert words in told.out


def test_that_each_prompt_is_told_with_its_caution(call: Callable[..., Answer], studio: Path) -> None:
    words = ("plan", "--studio", studio, "--now", "2026-03-02T09:05:00Z", "--air", "20,50,0.05")
    cautions = [prompt["caution"] for prompt in call(*words, "--json").document["prompts"] if prompt["caution"]]
    assert any(caution.startswith("Torch only far from solvent") for caution in cautions)
    told = call(*words).out.splitlines()
    for caution in cautions:
        assert f"    ! {caution}" in told


def test_that_the_calendar_file_has_each_coat_each_milestone_and_the_day_due(
    call: Callable[..., Answer], studio: Path, tmp_path: Path
) -> None:
    file = tmp_path / "plan.ics"
    told = call("plan", "--studio", studio, "--now", NOW, "--air", "20,50,0.05", "--json", "--ics", file)
    assert told.code == 0, told.err
    events = icalendar.Calendar.from_ical(file.read_bytes()).walk("VEVENT")
    summaries = [str(event["SUMMARY"]) for event in events]
    title = 'Salt Marsh; Evening, "small" 🌊'
    assert summaries[:2] == [f"{title}: lay gloss, 43 mL", f"{title}: lay satin, 43 mL"]
    assert summaries[2:6] == [f"{title}: {what}" for what in ("fit to handle", "fit to wrap", "wrap and pack", "due")]
    planned = [coat for piece in told.document["pieces"] for coat in piece["coats"]]
    laid = [event for event in events if ": lay " in str(event["SUMMARY"])]
    assert [event["DTSTART"].dt for event in laid] == [datetime.fromisoformat(coat["prepare"]) for coat in planned]
    assert [event["DTEND"].dt for event in laid] == [datetime.fromisoformat(coat["until"]) for coat in planned]
    assert len({event["UID"] for event in events}) == len(events)


def test_that_a_calendar_file_on_stdout_is_all_that_stands_there(call: Callable[..., Answer], studio: Path) -> None:
    told = call("plan", "--studio", studio, "--now", NOW, "--ics", "-")
    assert told.code == 0
    assert told.out.startswith("BEGIN:VCALENDAR")
    assert told.out.rstrip().endswith("END:VCALENDAR")


def test_that_the_records_are_planned_and_not_changed(
    call: Callable[..., Answer], studio: Path, tmp_path: Path
) -> None:
    assert call("import", studio).code == 0
    database = tmp_path / "data" / "studio.sqlite3"
    before = database.read_bytes()
    told = call("plan", "--json")
    assert told.code == 0, told.err
    assert [piece["piece"] for piece in told.document["pieces"]][1] == "Three Gulls"
    assert told.document["working_hours"]["sunday"] == "10:00-14:00"
    assert database.read_bytes() == before


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (("--now", NOW), "--now belongs to --studio"),
        (("--air", "20,50,0.1"), "--air belongs to --studio"),
        (("--studio", "STUDIO", "--zone", "UTC"), "--zone belongs to --room"),
        (("--studio", "STUDIO", "--json", "--ics", "-"), "both write to stdout"),
        (("--studio", "STUDIO", "--now", "noon"), "--now is 'noon'"),
        (("--studio", "STUDIO", "--now", "9999-12-31T23:00:00Z"), "allowed is a moment of the years 1970 to 2200"),
        (("--studio", "STUDIO", "--now", "0001-01-01T00:00:00Z"), "allowed is a moment of the years 1970 to 2200"),
        (("--studio", "STUDIO", "--air", "warm"), "--air has 'warm'"),
        (("--studio", "STUDIO", "--air", "200,50,0.1"), "air temperature is 200 °C"),
        (("--studio", "STUDIO", "--air=-15,50,0.1"), "air temperature is -15 °C; it must be a number from -10 to 50"),
        (("--studio", "STUDIO", "--air", "20,150,0.1"), "humidity is 150 %"),
        (("--studio", "STUDIO", "--air", "20,50,-1"), "air speed is -1 m/s"),
        (("--studio", "nowhere.toml"), "nowhere.toml cannot be read"),
    ],
)
def test_that_a_wrong_call_is_refused_in_one_sentence(
    call: Callable[..., Answer], studio: Path, words: tuple[str, ...], says: str
) -> None:
    told = call("plan", *(studio if word == "STUDIO" else word for word in words))
    assert (told.code, told.out) == (2, "")
    assert says in told.err
    assert "Traceback" not in told.err


def test_that_records_that_are_not_there_are_said_so(call: Callable[..., Answer]) -> None:
    told = call("plan")
    assert told.code == 1
    assert "is not there or is empty" in told.err


def test_that_a_plan_of_the_records_takes_an_imported_log_as_it_stands(
    capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    put_calibrated_studio(tmp_path / "studio.sqlite3", imported=True)
    parts = replace(outfit(), data_folder=tmp_path, clock=ScriptedClock())
    assert run(["plan", "--json"], parts) == 0
    assert "20.0 °C and 60 % RH" in json.loads(capsys.readouterr().out)["air"]


def test_that_a_plan_of_the_records_puts_right_what_her_own_sensor_said(
    capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    put_calibrated_studio(tmp_path / "studio.sqlite3", imported=False)
    parts = replace(outfit(), data_folder=tmp_path, clock=ScriptedClock())
    assert run(["plan", "--json"], parts) == 0
    assert "20.0 °C and 58 % RH" in json.loads(capsys.readouterr().out)["air"]  # 60 - 2


def put_calibrated_studio(file: Path, *, imported: bool) -> None:
    """Keep three hours at 60 % RH up to now, and a calibration made before them of a sensor that reads 2 too high."""
    start_ms = START_MS - 3 * HOUR_MS
    measured = HumidityCalibration(  # 33.07 and 75.47 %RH at 20 °C by Greenspan (1977)
        magnesium=SaltPoint(raw_pct=35.07, temperature_C=20.0, time_ms=start_ms),
        sodium=SaltPoint(raw_pct=77.47, temperature_C=20.0, time_ms=start_ms),
    )
    readings = [
        Reading(time_ms=start_ms + minute * 60_000, temperature_C=20.0, humidity_pct=60.0, air_speed_m_s=0.05)
        for minute in range(180)
    ]
    with closing(open_database(file)) as database:
        records = RecordsStore(database, lambda: START_MS)
        records.save_sighting(Sighting(time_ms=start_ms, sensor="CAFE0042"))
        records.save_calibration(Kept(key="h", sensor="CAFE0042", made_ms=start_ms, calibration=measured))
        ReadingsStore(database).append(readings)
        if imported:
            with database.transaction() as connection:
                put_imported(connection, Imported(start_ms=start_ms, end_ms=START_MS))


def test_that_hours_recipes_and_coats_to_come_are_changed_in_the_records(
    call: Callable[..., Answer], studio: Path
) -> None:
    assert call("import", studio).code == 0
    told = call("plan", "--hours", "Wednesday=off", "--hours", "sunday=off")
    assert (told.code, told.out) == (
        0,
        "Recorded: working hours, Mon to Tue 09:00-18:00, Wed off, Thu to Sat 09:00-18:00, Sun off\n",
    )
    assert call("plan", "--keep-recipe", "Two gloss=gloss-waterborne,gloss-waterborne").code == 0
    assert call("plan", "--apply", "Two gloss", "Three Gulls").code == 0
    document = call("plan", "--json").document
    assert (document["working_hours"]["wednesday"], document["working_hours"]["sunday"]) == ("off", "off")
    gulls = next(piece for piece in document["pieces"] if piece["piece"] == "Three Gulls")
    assert [coat["sheet"] for coat in gulls["coats"]] == ["gloss-waterborne"] * 2
    assert call("plan", "--drop-recipe", "Two gloss").code == 0
    assert call("plan", "--apply", "Two gloss", "Three Gulls").code == 2


@pytest.mark.parametrize(
    ("words", "code", "says"),
    [
        (("--hours", "funday=off"), 2, "--hours is 'funday=off'"),
        (("--hours", "monday=noon"), 2, "Working hours are 'noon'"),
        (("--keep-recipe", "Nothing="), 2, "--keep-recipe is 'Nothing='"),
        (("--keep-recipe", "Odd=nowhere"), 1, "no data sheet 'nowhere'"),
        (("--drop-recipe", "Gloss"), 2, "no recipe 'Gloss' of your own"),
        (("--apply", "Gilded", "Three Gulls"), 2, "no recipe 'Gilded'; there are: Gloss, Satin"),
        (("--hours", "sunday=off", "--json"), 2, "call `plan` again"),
        (("--hours", "sunday=off", "--studio", "STUDIO"), 2, "changed in the file itself"),
    ],
)
def test_that_a_change_that_cannot_be_made_is_refused_in_one_sentence(
    call: Callable[..., Answer], studio: Path, words: tuple[str, ...], code: int, says: str
) -> None:
    told = call("plan", *(studio if word == "STUDIO" else word for word in words))
    assert told.code == code
    assert says in told.err
