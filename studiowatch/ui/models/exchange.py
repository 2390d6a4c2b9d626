"""Names and words for what goes out of the records: without Qt."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import tzinfo

from studiowatch.ui.models.history_range import TimeRange
from studiowatch.ui.models.times import local

CSV_FILES, SENML_FILES, STUDIO_FILES = "Room log (*.csv)", "SenML (*.senml *.json)", "Studio file (*.toml)"
TAKEN_FILES = "Readings or a studio file (*.csv *.txt *.tsv *.toml);;All files (*)"
TAKEN_SO_FAR = "Cancelled. What was taken until then is kept; take the same file in again to go on from there."
NO_FILES = "This window has no studio folder behind it, so there is nothing to save."
NOTHING_BEHIND = "All of that lies ahead: there are no readings of it yet. Choose a time that is behind now."


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
        return SavePlan(title="Save readings as SenML", name=f"{stem}.senml", files=SENML_FILES)
    return SavePlan(title="Save readings as CSV", name=f"{stem}.csv", files=CSV_FILES)


def records_plan(now_ms: int, zone: tzinfo | None = None) -> SavePlan:
    """Return the plan for all records."""
    return SavePlan(title="Save all records", name=f"studio-{_stamp(now_ms, zone)}.toml", files=STUDIO_FILES)
