"""What a call asks of the watch that is on about the plan comes through as it was written, and nothing else does."""

from __future__ import annotations

import pytest

from studiowatch.service.commands import Command
from studiowatch.service.letters import NoLetter, read, written
from studiowatch.service.plan_commands import (
    MovePlanned,
    PlanCoats,
    ReplacePlanned,
    SaveRecipe,
    SetWorkingHours,
    UnplanCoat,
)
from studiowatch.studio.working_hours import WorkingHours


@pytest.mark.parametrize(
    "command",
    [
        SetWorkingHours(hours=WorkingHours().with_day("wednesday", "off")),
        SaveRecipe(name="Panels, satin", sheets=("gloss-waterborne", "satin-waterborne")),
        PlanCoats(piece_key="p", sheets=()),
        MovePlanned(coat_key="c", place=2),
        UnplanCoat(coat_key="c"),
        ReplacePlanned(coat_key="c", sheet="satin-waterborne"),
    ],
)
def test_that_a_letter_about_the_plan_is_read_as_it_was_written(command: Command) -> None:
    assert read(written(command)) == command


@pytest.mark.parametrize(
    "fields", ['{"hours": {"days": 7}}', '{"hours": {"days": [["nine", "six"]]}}', '{"hours": null}', "{}"]
)
def test_that_hours_of_another_form_are_no_letter(fields: str) -> None:
    with pytest.raises(NoLetter):
        read(f'{{"command": "SetWorkingHours", "fields": {fields}}}')
