"""`intend`: what is meant for the room, from the terminal, with the cautions where they bite."""

from __future__ import annotations

import json
import time
from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import pytest

from studiowatch.cli.commands import run
from studiowatch.compose import outfit
from studiowatch.service.watched_studio import watching
from studiowatch.store.folder import StudioFolder

from ..service.scripted import ScriptedClock  # noqa: TID252 - shared with the keeper's tests
from .conftest import Answer

Call = Callable[..., Answer]
HEATER = ("intend", "--heater", "18:00-23:00", "--to-C", "21", "--days", "3")


def test_that_it_is_meant_listed_and_dropped(call: Call) -> None:
    assert call("intend").out == "Nothing is meant for the room.\n"
    told = call(*HEATER)
    assert told.code == 0
    assert told.out.startswith("Meant: heater 18:00-23:00 to 21 °C, from ")
    assert "Fresh air comes before a perfect coat." in told.out
    assert call("intend", "--dehumidifier", "22:00-06:00", "--to-pct", "50").code == 0
    heater, dryer = call("intend", "--json").document
    assert (heater["hours"], heater["target"], heater["days"]) == ("18:00-23:00", 21.0, 3)
    assert (dryer["doing"], dryer["hours"], dryer["target"], dryer["days"]) == ("dehumidifier", "22:00-06:00", 50.0, 1)
    assert call("intend", "--drop", "1").out.startswith("Forgotten: heater")
    assert [one["key"] for one in call("intend", "--json").document] == [dryer["key"]]


def test_that_the_watch_that_is_on_keeps_it(call: Call, tmp_path: Path) -> None:
    parts = replace(outfit(), data_folder=tmp_path / "data")
    with watching(parts, StudioFolder(path=tmp_path / "data"), parts.made_up_room(1).source(), keep_backups=False):
        assert call(*HEATER).code == 0
        assert len(call("intend", "--json").document) == 1
        assert call("intend", "--drop", "1").code == 0
    assert call("intend", "--json").document == []


def test_that_nothing_is_meant_beside_a_solvent_borne_coat_that_is_fresh(call: Call) -> None:
    assert call("piece", "add", "Marsh", "--width-cm", "30", "--height-cm", "30").code == 0
    assert call("coat", "lay", "Marsh", "gloss-solventborne").code == 0
    told = call(*HEATER)
    assert told.code == 1
    assert "still gives off flammable vapour" in told.err
    assert call("intend", "--json").document == []


def test_that_a_fan_is_meant_to_be_on_or_to_stay_off(call: Call) -> None:
    assert call("intend", "--fan", "10:00-12:00", "--days", "2").code == 0
    assert call("intend", "--fan", "10:00-12:00", "--at-m-s", "0.8", "--every-day").code == 0
    told = call("intend", "--fan-off")
    assert told.out.startswith("Meant: fan off all day, every day from ")
    assert call("intend", "--fan-off", "08:00-20:00").code == 0
    found = [(one["hours"], one["target"], one["days"]) for one in call("intend", "--json").document]
    assert found == [
        ("10:00-12:00", 0.5, 2),
        ("10:00-12:00", 0.8, None),
        ("00:00-24:00", 0.0, None),
        ("08:00-20:00", 0.0, 1),
    ]


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (("--heater", "18-23", "--to-C", "21"), "The hours are '18-23'"),
        (("--heater", "18:00-23:00"), "set with --to-C"),
        (("--heater", "18:00-23:00", "--to-pct", "50"), "set with --to-C"),
        (("--dehumidifier", "18:00-23:00", "--to-C", "21"), "set with --to-pct"),
        (("--heater", "18:00-23:00", "--to-C", "99"), "from 5 to 35 °C"),
        (("--heater", "18:00-23:00", "--to-C", "nan"), "from 5 to 35 °C"),
        (("--heater", "18:00-23:00", "--to-C", "21", "--days", "0"), "Days in a row are 0"),
        (("--to-C", "21"), "--to-C goes with --heater"),
        (("--every-day",), "--every-day goes with --heater"),
        (("--heater", "18:00-23:00", "--to-C", "0"), "target of the heater is 0 °C"),
        (("--heater", "18:00-23:00", "--to-C", "21", "--days", "2", "--every-day"), "--days or --every-day"),
        (("--fan", "10:00-12:00", "--to-C", "21"), "set with --at-m-s"),
        (("--fan", "10:00-12:00", "--at-m-s", "0"), "--fan-off"),
        (("--fan", "10:00-12:00", "--at-m-s", "9"), "from 0 to 3 m/s"),
        (("--fan-off", "10:00-12:00", "--at-m-s", "0.5"), "set to nothing"),
        (("--drop", "1"), "There is no intention '1'; allowed is none"),
        (("--drop", "1", "--to-C", "21"), "--drop stands alone"),
        (("--heater", "18:00-23:00", "--to-C", "21", "--json"), "--json goes with the list"),
    ],
)
def test_that_a_wrong_call_is_one_sentence(call: Call, words: tuple[str, ...], says: str) -> None:
    told = call("intend", *words)
    assert (told.code, told.out) == (2, "")
    assert says in told.err
    assert len(told.err.splitlines()) == 1


@pytest.mark.usefixtures("berlin")
@pytest.mark.skipif(not hasattr(time, "tzset"), reason="the zone of a process of POSIX")
def test_that_hours_of_which_a_clock_change_leaves_nothing_begin_a_day_later(
    capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    # 29 March 2026 in Berlin has no time from 02:00 to 03:00: 02:30 is told as 03:30, which is after 03:10
    night = datetime(2026, 3, 28, 23, 30, tzinfo=UTC)
    parts = replace(outfit(), data_folder=tmp_path, clock=ScriptedClock(now_ms=round(night.timestamp() * 1000)))
    assert run(["intend", "--fan", "02:30-03:10"], parts) == 0
    capsys.readouterr()
    assert run(["intend", "--json"], parts) == 0
    (meant,) = json.loads(capsys.readouterr().out)
    assert (meant["hours"], meant["first_day"]) == ("02:30-03:10", "2026-03-30")
