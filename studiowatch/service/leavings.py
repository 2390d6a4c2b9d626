"""What the disk refused to the last: said, and the readings saved as a room log beside the records."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from pathlib import Path

from studiowatch.room.readings import Reading
from studiowatch.speech.words import say
from studiowatch.store.log_out import RoomLogWriter, iso


@dataclass(frozen=True, slots=True, kw_only=True)
class Leavings:
    """What is not on disk at the end.

    Attributes
    ----------
    readings : sequence of Reading
        Rising in time, but that several may share one.
    records : int
        How many changes of warnings and prompts, and facts about the log.
    trouble : str
        Why, as the disk said it, or "".
    """

    readings: Sequence[Reading] = ()
    records: int = 0
    trouble: str = ""


def rescue(left: Leavings, folder: Path) -> str:
    """Write the readings in `left` to a room log in `folder`; return what to tell her, or "" if nothing was left."""
    sentences = []
    if left.readings:
        sentences.append(_rescue_readings(left.readings, folder))
    if left.records:
        sentences.append(
            say("Not stored, and lost: changes of warnings and prompts, and notes: {count}.", count=left.records)
        )
    return " ".join((*sentences, left.trouble)).rstrip() if sentences else ""


def _rescue_readings(readings: Sequence[Reading], folder: Path) -> str:
    first, last = iso(readings[0].time_ms), iso(readings[-1].time_ms)
    what = {"count": str(len(readings)), "first": first, "last": last}
    for place in (folder, Path.home()):
        try:
            path = _write_room_log(readings, place)
        except OSError as fault:
            why = str(fault.strerror or fault)
        else:
            return say(
                "Not stored: {count} of the readings from {first} to {last}; they are kept as a room log in {path}.",
                **what,
                path=path,
            )
    return say(
        "Not stored, and lost: {count} of the readings from {first} to {last}: "
        "{folder} takes no file either ({fault}).",
        **what,
        folder=folder,
        fault=why,
    )


def _write_room_log(readings: Sequence[Reading], folder: Path) -> Path:
    """Write a room log into `folder`, which is made if it was removed. Raises OSError."""
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    stamp = datetime.fromtimestamp(readings[0].time_ms / 1000, UTC).strftime("%Y%m%dT%H%M%SZ")
    number = 1
    while (path := folder / f"not-stored-{stamp}-{number}.csv").exists():
        number += 1
    path.touch(mode=0o600, exist_ok=False)
    with path.open("w", encoding="utf-8", newline="") as file:
        RoomLogWriter(file).write(_apart(readings))
    return path


def _apart(readings: Sequence[Reading]) -> list[Reading]:
    """Return `readings` with no two at one time, as the rows of a room log must be."""
    apart: list[Reading] = []
    before_ms = readings[0].time_ms - 1
    for reading in readings:
        before_ms = max(reading.time_ms, before_ms + 1)
        apart.append(replace(reading, time_ms=before_ms))
    return apart
