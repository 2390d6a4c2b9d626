"""All warnings of a day of ordinary life: the simulated room with its doors, passers-by and fan, and four pieces.

``python tests/benchmarks/ordinary_day.py [SEED …]``

A day in which five coats are laid and covered, as she would, must not give more than a handful.
"""

from __future__ import annotations

import sys
import tempfile
from datetime import UTC, date, datetime
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

from studiowatch.board.simulated import past_readings
from studiowatch.board.simulated_room import SimulatedRoom
from studiowatch.service.happenings import Happening, WarningHappened
from studiowatch.service.replaying import replay
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.words import Level

START_MS = int(datetime(2026, 3, 2, tzinfo=UTC).timestamp() * 1000)
HOUR_MS = 3_600_000
STEP_S = 2.0
COVER_H = 0.35
LAID_H = {  # hours of the day at which each coat of a piece is laid; those below 0 the day before
    "Kiln Light": (("isolation-waterborne", -20.0), ("gloss-waterborne", 9.5)),
    "Salt Marsh": (("gloss-waterborne", -26.0), ("satin-waterborne", 10.25)),
    "Orchard": (("isolation-waterborne", 14.0),),
    "Heron": (("gloss-waterborne", 9.0), ("gloss-waterborne", 18.5)),
}


def moment(time_ms: int) -> datetime:
    return datetime.fromtimestamp(time_ms / 1000, UTC)


def clock_text(time_ms: int) -> str:
    return f"{moment(time_ms):%H:%M}"


def local_date(time_ms: int) -> date:
    return moment(time_ms).date()


def made_up_piece(title: str) -> Piece:
    coats = tuple(
        Coat(
            key=f"{title} {number}",
            sheet=sheet,
            laid_ms=START_MS + round(hour * HOUR_MS),
            wet_um=80.0,
            covered_from_ms=START_MS + round((hour + COVER_H) * HOUR_MS),
        )
        for number, (sheet, hour) in enumerate(LAID_H[title])
    )
    return Piece(key=title, title=title, width_cm=40, height_cm=40, coats=coats)


def warnings_of_day(seed: int) -> list[WarningHappened]:
    """Return what happened to warnings in the day of `seed`."""
    told: list[Happening] = []
    readings = past_readings(SimulatedRoom(seed=seed), START_MS - 2 * HOUR_MS, START_MS + 24 * HOUR_MS, STEP_S)
    with tempfile.TemporaryDirectory() as folder:
        replay(
            list(readings),
            [made_up_piece(title) for title in LAID_H],
            shelf=SheetShelf.open(Path(folder)),
            tell=told.append,
            clock_text=clock_text,
            local_date=local_date,
        )
    return [one for one in told if isinstance(one, WarningHappened)]


def main(seeds: list[int]) -> None:
    """Print every warning of each day as it was raised, or grew worse."""
    for seed in seeds:
        levels: dict[str, Level] = {}
        happened = warnings_of_day(seed)
        for one in happened:
            warning = one.warning
            is_worse = warning.key not in levels or warning.level > levels[warning.key]
            if warning.state is WarningState.RAISED and is_worse:
                levels[warning.key] = warning.level
                voice = "aloud" if warning.may_sound else "shown"
                print(f"{moment(one.time_ms):%H:%M:%S} {warning.kind} {warning.level.name} {voice}: {one.line()}")
        aloud = {one.warning.key for one in happened if one.warning.may_sound}
        print(f"day {seed}: {len(levels)} warnings, {len(aloud)} of them aloud\n")


if __name__ == "__main__":
    main([int(word) for word in sys.argv[1:]] or [20260302])
