"""How long the review of an old coat takes to open, against reading the same hours.

    python tests/benchmarks/review_opening.py YEAR.sqlite3

YEAR.sqlite3 is a year at a reading a second, as `year_file.py` makes it; a copy of it gets a piece with three coats
laid in its first days, and thirty others with an outcome. The floor is reading the minute means of the hours that the
review rests on, from the same file in the same run.
"""

from __future__ import annotations

import shutil
import sys
import tempfile
from contextlib import closing
from pathlib import Path
from time import perf_counter, process_time

from studiowatch.service.review_desk import ReviewDesk
from studiowatch.store.database import open_database
from studiowatch.store.folder import StudioFolder
from studiowatch.store.records import RecordsStore
from studiowatch.store.review_records import ReviewRecords
from studiowatch.studio.pieces import Coat, Outcome, Piece

HOUR_MS, DAY_MS = 3_600_000, 86_400_000
SHEETS = ("isolation-waterborne", "gloss-waterborne", "satin-waterborne")
OTHERS = 30


def piece(number: int, first_ms: int) -> Piece:
    """Return a piece whose three coats were laid a day apart from `first_ms`, UTC ms."""
    coats = tuple(
        Coat(
            key=f"{number}-{place}",
            sheet=sheet,
            laid_ms=first_ms + place * DAY_MS,
            volume_mL=14.0,
            outcome=Outcome.MILKY_IN_PATCHES if number % 3 == 0 else Outcome.CLEAR,
            seen_ms=first_ms + (place + 1) * DAY_MS,
        )
        for place, sheet in enumerate(SHEETS)
    )
    return Piece(key=f"p{number}", title=f"Piece {number}", width_cm=40, height_cm=40, place=number, coats=coats)


def main() -> None:
    """Print the seconds of three openings and their ratio to the floor."""
    with tempfile.TemporaryDirectory() as name:
        folder = StudioFolder(path=Path(name))
        shutil.copy(sys.argv[1], folder.database)
        with closing(open_database(folder.database)) as database:
            records = RecordsStore(database, lambda: 0)
            ((start_ms,),) = database.rows("SELECT min(start_ms) FROM chunk")
            for number in range(OTHERS + 1):
                records.save_piece(piece(number, start_ms + (1 + 5 * number) * DAY_MS))
        desk = ReviewDesk(folder=folder)
        began = perf_counter()
        desk.reliability()
        print(f"all {3 * (OTHERS + 1)} coats weighed once: {perf_counter() - began:.1f} s")
        with closing(ReviewRecords(open_database(folder.database, read_only=True))) as read:
            began = process_time()
            read.minute_means(start_ms + DAY_MS - HOUR_MS, start_ms + 3 * DAY_MS)
            floor_s = process_time() - began
        for _ in range(3):
            wall, cpu = perf_counter(), process_time()
            desk.review("0-1", lambda _share: None)
            wall, cpu = perf_counter() - wall, process_time() - cpu
            print(
                f"opened in {wall:.2f} s, {cpu:.2f} s of CPU, {cpu / floor_s:.1f} x reading its hours ({floor_s:.3f} s)"
            )


if __name__ == "__main__":
    main()
