"""How fast the film model is, as ratios to a floor that is timed in the same run. A script, run by hand.

    python tests/benchmarks/model_speed.py                 all three parts
    python tests/benchmarks/model_speed.py course live open

course  1000 draws of one coat through 96 h of minute readings
live    a rack of 20 pieces with 256 draws each, films wet and dry, one reading a second, looks ahead and all
open    a studio with 20 pieces of three coats and a week of log: what the window waits for, and what comes after

What it is held against says `film_floor.py`. Two floors are given for the course: of the whole
step at each reading, and of the steps that were needed, counted in a run of their own.
"""

from __future__ import annotations

import argparse
import math
import tempfile
import time
from collections import Counter
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field, replace
from pathlib import Path
from threading import Event

from film_floor import OPERATIONS, best_s, counted, floor_s

from studiowatch.board.events import BoardEvent
from studiowatch.board.mapping import ColumnMapping
from studiowatch.board.onlooker import Onlooker
from studiowatch.coats.anchoring import anchor
from studiowatch.coats.draws import sample
from studiowatch.coats.film import advance_through, lay
from studiowatch.coats.stages import Stage
from studiowatch.compose import outfit as own_outfit
from studiowatch.physics.air import Air
from studiowatch.room.readings import Reading
from studiowatch.service.coat_run import DRAWS
from studiowatch.service.outfit import OpenStore
from studiowatch.service.rack import Rack
from studiowatch.service.room_ahead import RoomAhead
from studiowatch.service.rounds import ADVANCE_MS
from studiowatch.service.sheet_shelf import SheetShelf, built_in_sheets
from studiowatch.service.snapshot import Snapshot
from studiowatch.service.watched_studio import watching
from studiowatch.store.folder import StudioFolder
from studiowatch.studio.concern import AirNow
from studiowatch.studio.pieces import Coat, Piece

NOW_MS = 1_772_442_000_000  # 2026-03-02T09:00:00Z
MINUTE_MS, HOUR_MS, DAY_MS = 60_000, 3_600_000, 86_400_000
SHEET = "gloss-waterborne"
STACK = ("isolation-waterborne", SHEET, "satin-waterborne")
COURSE_DRAWS, COURSE_READINGS = 1000, 96 * 60
COURSE_GOAL = 3.0  # times the floor
LIVE_PIECES, LIVE_S = 20, 1200
LIVE_GOAL_MS = 2.0  # of one core for a reading
AGES_H = (0.05, 0.2, 0.4, 0.8, 1.5, 3.0, 7.0, 20.0, 45.0, 120.0)  # of the coats on the live rack, each twice


def changing_air(at_s: float) -> Air:
    """Return the air of a room with an evening, a morning, and a draught now and then."""
    return Air(
        temperature_C=20.5 + 2.0 * math.sin(at_s / 13_750.0) + 0.05 * math.sin(at_s / 37.0),
        humidity_pct=52.0 + 8.0 * math.sin(at_s / 17_000.0) + 0.2 * math.sin(at_s / 53.0),
        air_speed_m_s=0.05 + 0.1 * max(0.0, math.sin(at_s / 900.0)) ** 8,
    )


def steady_air(at_s: float) -> Air:
    """Return the air of a shut room, with the noise of a sensor."""
    noise = math.sin(at_s * 12.9898)
    return Air(temperature_C=20.5 + 0.02 * noise, humidity_pct=50.0 + 0.06 * noise, air_speed_m_s=0.04 + 0.004 * noise)


def course() -> None:
    """Time one coat with many draws through 96 h of minute readings."""
    sheet = built_in_sheets()[SHEET]
    tied = anchor(sheet, sample(COURSE_DRAWS, 1))
    airs = [(changing_air(60.0 * at), 60.0) for at in range(COURSE_READINGS)]

    def dried() -> None:
        film = lay(sheet, tied, wet_um=sheet.wet_um, side_m=0.4)
        advance_through(film, airs)

    with counted() as steps:
        dried()
    took_s = best_s(dried)
    print(f"course: {COURSE_DRAWS} draws, {COURSE_READINGS} readings in {took_s:.3f} s; steps {dict(steps)}")
    whole = Counter(dict.fromkeys(OPERATIONS, COURSE_READINGS))
    for name, counts in (("whole steps", whole), ("needed steps", steps)):
        least_s = floor_s(counts, COURSE_DRAWS)
        verdict = "met" if took_s <= COURSE_GOAL * least_s else "not met"
        print(f"  {took_s / least_s:5.2f} x the floor of {name}, {least_s:.3f} s; goal {COURSE_GOAL:g}: {verdict}")


def live() -> None:
    """Time a full rack by the second, in steady and in changing air, after a short and after a long log."""
    for name, air in (("steady", steady_air), ("changing", changing_air)):
        for days in (6, 30):
            with studio(days) as store:
                _live(f"{name} air, log of {days} days", store, air)


def _live(title: str, store: OpenStore, air: Callable[[float], Air]) -> None:
    shelf, pieces = SheetShelf.open(), live_pieces()
    store.records.save_pieces(pieces)
    times = range(ADVANCE_MS, LIVE_S * 1000 + 1, ADVANCE_MS)

    def opened() -> Rack:
        rack = Rack(shelf=shelf, records=store.records, log=store.log)
        rack.stacks.room = RoomAhead(log=store.log)
        rack.open(NOW_MS)
        return rack

    def lived(rack: Rack) -> list[float]:
        calls = []
        for at_ms in times:
            now = air(at_ms / 1000.0)
            room = AirNow(
                temperature_C=now.temperature_C, humidity_pct=now.humidity_pct, air_speed_m_s=now.air_speed_m_s
            )
            began_s = time.perf_counter()
            rack.stacks.room.look(room, NOW_MS + at_ms)
            rack.advance(now, NOW_MS + at_ms)
            calls.append(time.perf_counter() - began_s)
        return calls

    rack = opened()
    with counted() as steps:
        lived(rack)
    calls = lived(opened())
    per_reading_ms = 1000.0 * sum(calls) / LIVE_S
    least_ms = 1000.0 * floor_s(steps, DRAWS) / LIVE_S
    wet = sum(run.reached_ms(Stage.DRY_TO_TOUCH) is None for run in rack.runs.values())
    print(f"live: {LIVE_PIECES} pieces, {DRAWS} draws, {title}; {wet} coats still wet at the end; steps {dict(steps)}")
    print(
        f"  {per_reading_ms:.2f} ms a reading ({'within' if per_reading_ms < LIVE_GOAL_MS else 'over'} "
        f"{LIVE_GOAL_MS:g} ms), floor {least_ms:.2f} ms: {per_reading_ms / least_ms:.1f} x the floor; "
        f"longest step {1000.0 * max(calls):.0f} ms, one every {ADVANCE_MS / 1000:g} s"
    )


def live_pieces() -> list[Piece]:
    """Return pieces with a coat each, from just laid to days old; every third lies on an older coat."""
    pieces = []
    for at in range(LIVE_PIECES):
        laid_ms = NOW_MS - round(AGES_H[at % len(AGES_H)] * HOUR_MS)
        below = (Coat(key=f"b{at}", sheet="isolation-waterborne", laid_ms=laid_ms - 5 * HOUR_MS),)
        coat = Coat(key=f"c{at}", sheet=SHEET, laid_ms=laid_ms, volume_mL=8.0 + at)
        coats = (*below, coat) if at % 3 == 0 else (coat,)
        pieces.append(Piece(key=f"p{at}", title=f"P{at}", width_cm=30, height_cm=30 + at, place=at, coats=coats))
    return pieces


@contextmanager
def studio(days: int) -> Iterator[OpenStore]:
    """Yield a store of its own with `days` of minute readings up to now."""
    with tempfile.TemporaryDirectory() as folder:
        store = own_outfit().open_store(Path(folder) / "studio.db")
        try:
            fill(store, days)
            yield store
        finally:
            store.close()


def fill(store: OpenStore, days: int) -> None:
    """Put `days` of minute readings into a store, and pack them as the watch does."""
    start_ms = NOW_MS - days * DAY_MS
    airs = ((time_ms, changing_air((time_ms - start_ms) / 1000.0)) for time_ms in range(start_ms, NOW_MS, MINUTE_MS))
    store.log.append(
        [
            Reading(
                time_ms=time_ms,
                temperature_C=air.temperature_C,
                humidity_pct=air.humidity_pct,
                air_speed_m_s=air.air_speed_m_s,
            )
            for time_ms, air in airs
        ]
    )
    store.log.seal(NOW_MS)


@dataclass(frozen=True, slots=True, kw_only=True)
class StoodClock:
    """A wall clock that stands at now, beside a monotonic clock that runs."""

    def utc_ms(self) -> int:
        """Return now."""
        return NOW_MS

    def monotonic_s(self) -> float:
        """Return seconds that stand as well, so that no clock seems set."""
        return 0.0


class QuietBoard:
    """A board that says nothing."""

    def start(self, deliver: Callable[[BoardEvent], None]) -> None:
        """Begin."""

    onlooker = Onlooker()

    def accept(self, board: str, mapping: ColumnMapping) -> None:
        """Take no notice."""

    def choose(self, port: str | None) -> None:
        """Take no notice."""

    def stop(self) -> None:
        """End."""


def stacked_pieces() -> list[Piece]:
    """Return pieces with three coats each, laid over the last week."""
    pieces = []
    for at in range(LIVE_PIECES):
        first_ms = NOW_MS - 6 * DAY_MS + at * HOUR_MS
        coats = tuple(
            Coat(key=f"c{at}{number}", sheet=sheet, laid_ms=first_ms + number * (40 + at) * HOUR_MS)
            for number, sheet in enumerate(STACK)
        )
        pieces.append(Piece(key=f"p{at}", title=f"P{at}", width_cm=30, height_cm=40, place=at, coats=coats))
    return pieces


@dataclass(slots=True)
class Opening:
    """Notes when the first picture came, and when every coat had its time."""

    began_s: float = field(default_factory=time.perf_counter)
    first_s: float | None = None
    dried_s: float = 0.0
    dried: Event = field(default_factory=Event)

    def see(self, snapshot: Snapshot) -> None:
        """Look at a snapshot."""
        passed_s = time.perf_counter() - self.began_s
        if self.first_s is None:
            self.first_s = passed_s
        if not self.dried.is_set() and all(piece.next_ms is not None for piece in snapshot.pieces):
            self.dried_s = passed_s
            self.dried.set()


def opening() -> None:
    """Time the opening of a full studio: until the window may open, and until every coat has its time."""
    sheets = built_in_sheets()
    for name in STACK:
        began_s = time.perf_counter()
        anchor(sheets[name], sample(DRAWS, 7))
        print(f"open: {name} tied to its sheet for {DRAWS} draws in {1000 * (time.perf_counter() - began_s):.0f} ms")
    anchor.cache_clear()
    with tempfile.TemporaryDirectory() as path:
        folder = StudioFolder(path=Path(path) / "studio")
        folder.make()
        outfit = replace(own_outfit(), clock=StoodClock())
        store = outfit.open_store(folder.database)
        fill(store, 7)
        store.records.save_pieces(stacked_pieces())
        store.close()
        notes = Opening()
        with watching(outfit, folder, QuietBoard(), listener=notes.see):
            started_s = time.perf_counter() - notes.began_s
            notes.dried.wait()
    print(f"open: {LIVE_PIECES} pieces of three coats, a week of log, no sheet tied yet")
    print(f"  {started_s:.3f} s until the window may open, {notes.first_s:.3f} s until the first picture,")
    print(f"  {notes.dried_s:.2f} s until all coats are dried through the log and the room is judged")


PARTS = {"course": course, "live": live, "open": opening}


def main() -> None:
    """Run the parts that were asked for."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("parts", nargs="*", choices=[*PARTS, []], help="all if none is named")
    for part in parser.parse_args().parts or PARTS:
        PARTS[part]()


if __name__ == "__main__":
    main()
