"""The watch of a moment, for a plan that is only asked for: nothing of it is kept."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from studiowatch.physics.air import Air
from studiowatch.room.corrections import Imported, Kept, Sighting
from studiowatch.room.readings import Reading
from studiowatch.service.local_time import clock_text, local_date
from studiowatch.service.ports import ReadingsLog
from studiowatch.service.replaying import MemoryRecords, NoLog, replay
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.store.intentions import IntentionRecord, meant_of
from studiowatch.store.plan_records import RecipeRecord, WorkingDayRecord
from studiowatch.store.shapes import LearntRecord, PromptRecord
from studiowatch.store.studio_file import Studio
from studiowatch.studio.recipes import Recipe
from studiowatch.studio.working_hours import WorkingHours

STEP_MS = 300_000  # ms between the readings of a room that is held; shorter than what counts as a gap


@dataclass(frozen=True, slots=True)
class HeldRoom(NoLog):
    """A log of a room that is always the same."""

    air: Air

    def between(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        """Return a reading every five minutes."""
        first_ms = -(-start_ms // STEP_MS) * STEP_MS
        return [
            Reading(
                time_ms=time_ms,
                temperature_C=self.air.temperature_C,
                humidity_pct=self.air.humidity_pct,
                air_speed_m_s=self.air.air_speed_m_s,
            )
            for time_ms in range(first_ms, end_ms, STEP_MS)
        ]

    def minute_means(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        """Return the same."""
        return self.between(start_ms, end_ms)


def records_of(
    studio: Studio, *, calibrations: Sequence[Kept] = (), sightings: Sequence[Sighting] = ()
) -> MemoryRecords:
    """Return what a studio holds as records that are gone with the watch."""
    hours = WorkingHours()
    records = MemoryRecords(held={piece.key: piece for piece in studio.pieces})
    for row in studio.rows:
        match row:
            case LearntRecord():
                records.kept_learnt[row.coat_key] = row
            case PromptRecord():
                records.kept_prompts[row.key] = row
            case RecipeRecord():
                records.kept_recipes[row.name] = Recipe(name=row.name, sheets=row.sheets, own=True)
            case WorkingDayRecord():
                hours = hours.with_day(row.day, row.hours)
            case IntentionRecord():
                records.kept_intentions[row.key] = meant_of(row)
            case Imported():
                records.kept_imported.append(row)
            case _:
                pass  # warnings, notes and corrections have no part in a plan
    records.kept_hours = hours
    records.kept_calibrations = {kept.key: kept for kept in calibrations}
    records.kept_sightings = list(sightings)
    return records


def watch_at(
    now_ms: int, records: MemoryRecords, log: ReadingsLog, shelf: SheetShelf, *, foretell: bool = False
) -> Watchkeeping:
    """Return the watch over the records and their log as it stands at `now_ms`, UTC ms.

    `foretell` says whether the room goes on as its days did; else it stays as it is.
    """
    watch = Watchkeeping(
        log=log, records=records, shelf=shelf, clock_text=clock_text, local_date=local_date, began_ms=now_ms
    )
    if foretell:
        watch.foretell(now_ms)
    watch.open()
    return watch


def watch_after(readings: Sequence[Reading], records: MemoryRecords, shelf: SheetShelf) -> Watchkeeping:
    """Return the watch as the end of a room log leaves it."""
    return replay(
        readings,
        tuple(records.held.values()),
        shelf=shelf,
        tell=lambda _: None,
        clock_text=clock_text,
        local_date=local_date,
        records=records,
    )
