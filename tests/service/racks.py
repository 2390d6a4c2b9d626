"""Racks over logs that the test holds: readings in a list, or one steady room minute by minute."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from studiowatch.physics.air import Air
from studiowatch.room.readings import Reading
from studiowatch.service.orders import PieceCommand
from studiowatch.service.rack import Rack
from studiowatch.service.replaying import MemoryRecords
from studiowatch.service.set_clock import CLOCK_STEP
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.studio.pieces import Coat, Piece

from .rooms import START_MS
from .unwritten import UnwrittenLog

MINUTE_MS, HOUR_MS, DAY_MS = 60_000, 3_600_000, 86_400_000
AIR = Air(temperature_C=20.5, humidity_pct=50.0, air_speed_m_s=0.05)


class ListedLog:
    """A log that holds readings in a list."""

    def __init__(self, readings: Sequence[Reading] = ()) -> None:
        self.readings = tuple(readings)

    def append(self, readings: Sequence[Reading]) -> None:
        self.readings += tuple(readings)

    def between(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        return [reading for reading in self.readings if start_ms <= reading.time_ms < end_ms]

    def minute_means(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        return self.between(start_ms, end_ms)

    def seal(self, before_ms: int, most_hours: int | None = None) -> int:
        del before_ms, most_hours
        return 0


class MinuteLog(UnwrittenLog):
    """A log of one steady room, one reading a minute from START_MS to `end_ms`; nothing is written to it."""

    def __init__(self, end_ms: int, air: Air = AIR) -> None:
        self.end_ms = end_ms
        self.air = air

    def between(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        return self.minute_means(start_ms, end_ms)

    def minute_means(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        first_ms = max(-(-start_ms // MINUTE_MS) * MINUTE_MS, START_MS)
        last_ms = min(end_ms - 1, self.end_ms)
        return minutes(first_ms, (last_ms - first_ms) // MINUTE_MS + 1, self.air)


def minutes(start_ms: int, count: int, air: Air = AIR) -> list[Reading]:
    """Return readings of an air, one a minute from `start_ms` on."""
    return [
        Reading(
            time_ms=start_ms + at * MINUTE_MS,
            temperature_C=air.temperature_C,
            humidity_pct=air.humidity_pct,
            air_speed_m_s=air.air_speed_m_s,
        )
        for at in range(count)
    ]


def piece(*coats: Coat, **changes: object) -> Piece:
    plain = Piece(key="p", title="Low Tide", width_cm=60, height_cm=90, coats=coats)
    return replace(plain, **changes)


def gloss(key: str, laid_ms: int | None, **changes: object) -> Coat:
    return replace(Coat(key=key, sheet="gloss-waterborne", laid_ms=laid_ms, volume_mL=43), **changes)


def rack(held: Piece, readings: Sequence[Reading] = (), shelf: SheetShelf | None = None) -> Rack:
    made = Rack(shelf=shelf or SheetShelf.open(), records=MemoryRecords(held={held.key: held}), log=ListedLog(readings))
    made.open(readings[-1].time_ms + 1 if readings else START_MS)
    return made


def carried_out(rack: Rack, command: PieceCommand, now_ms: int) -> str:
    """Carry a command out as the watch does: on disk first, then followed."""
    key = rack.carry_out(command, now_ms)
    rack.follow(now_ms)
    return key


def live(made: Rack, readings: Sequence[Reading], air: Air = AIR) -> None:
    for reading in readings:
        made.advance(air, reading.time_ms)


def step(made: Rack, now_ms: int, step_ms: int) -> None:
    """Set the clock by `step_ms`, so that it is `now_ms`, as the watch does it."""
    made.records.save_pieces(made.shift(step_ms))
    made.records.note(now_ms, CLOCK_STEP, made.note_step(now_ms, step_ms).written())


def restarted(before: Rack, readings: Sequence[Reading], now_ms: int) -> Rack:
    again = Rack(shelf=before.shelf, records=before.records, log=ListedLog(readings))
    again.open(now_ms + 1)
    return again
