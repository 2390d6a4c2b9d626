"""Names and words for what goes out of the records: without Qt."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import tzinfo

from studiowatch.speech.words import mark, say
from studiowatch.ui.models.history_range import TimeRange
from studiowatch.ui.models.times import local

CSV_FILES, SENML_FILES, STUDIO_FILES = (
    mark("Room log (*.csv)"),
    mark("SenML (*.senml *.json)"),
    mark("Studio file (*.toml)"),
)
TAKEN_FILES = mark("Readings or a studio file (*.csv *.txt *.tsv *.toml);;All files (*)")
TAKEN_SO_FAR = mark("Cancelled. What was taken until then is kept; take the same file in again to go on from there.")
NO_FILES = mark("This window has no studio folder behind it, so there is nothing to save.")
NOTHING_BEHIND = mark("All of that lies ahead: there are no readings of it yet. Choose a time that is behind now.")


@dataclass(frozen=True, slots=True, kw_only=True)
class SavePlan:
    """What to save: the title of the dialog, a name to begin with, and the kind of file."""

    title: str
    name: str
    files: str


def _stamp(time_ms: int, zone: tzinfo | None) -> str:
    return f"{local(time_ms, zone):%Y-%m-%d-%H%M}"


def readings_plan(chosen: TimeRange, *, senml: bool, zone: tzinfo | None = None) -> SavePlan:
    """Return the plan for readings of `chosen`."""
    stem = f"room-{_stamp(chosen.first_ms, zone)}-to-{_stamp(chosen.last_ms, zone)}"
    if senml:
        return SavePlan(title=say("Save readings as SenML"), name=f"{stem}.senml", files=say(SENML_FILES))
    return SavePlan(title=say("Save readings as CSV"), name=f"{stem}.csv", files=say(CSV_FILES))


def records_plan(now_ms: int, zone: tzinfo | None = None) -> SavePlan:
    """Return the plan for all records."""
    name = f"studio-{_stamp(now_ms, zone)}.toml"
    return SavePlan(title=say("Save all records"), name=name, files=say(STUDIO_FILES))
