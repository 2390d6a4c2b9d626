"""Killed, torn and full, again and again, under all the load that a studio puts on its file.

A few times each in the usual run; `--hard-life` kills 200 times, tears 300 times and fills 100 times, in some minutes.
The judges are SQLite's own integrity check and the list of what was acknowledged, which is kept outside the file.
"""

from __future__ import annotations

import os
import random
import shutil
import subprocess
import sys
from bisect import bisect_right
from contextlib import closing
from pathlib import Path

import numpy as np
import pytest

import studiowatch
from studiowatch.room.readings import Channel, Reading
from studiowatch.store.database import open_database
from studiowatch.store.examine import examine
from studiowatch.store.folder import StudioFolder
from studiowatch.store.history import HistoryReader
from studiowatch.store.rotation import DAYS, WEEKS, daily_backups, rotate
from studiowatch.store.trouble import StoreFull

from . import load
from .load import BATCH, ROUND, Held, Load, batches_before, held_after, held_in

LONGEST_S = 1800


@pytest.fixture
def studio(tmp_path: Path) -> StudioFolder:
    return StudioFolder(path=tmp_path)


def _held(path: Path) -> Held:
    """Check the file as a whole and return what it holds."""
    assert examine(path).faults == ()
    with closing(open_database(path)) as database:
        assert database.rows("PRAGMA integrity_check") == [("ok",)]
        assert database.rows("PRAGMA foreign_key_check") == []
        held = held_in(database)
    _check_overview(path, held.readings)
    return held


def _check_overview(path: Path, readings: list[Reading]) -> None:
    """Compare what the room history shows with the readings, summed up here."""
    if not readings:
        return
    hour_ms = 3_600_000
    with closing(HistoryReader(path)) as reader:
        first_ms, last_ms = readings[0].time_ms, readings[-1].time_ms
        series = reader.series(Channel.TEMPERATURE, first_ms, last_ms + 1, 1 + (last_ms - first_ms) // hour_ms)
    values = np.array([reading.temperature_C for reading in readings])
    bucket = np.array([reading.time_ms for reading in readings]) // series.bucket_ms
    shown = (series.time_ms // series.bucket_ms).tolist()
    assert shown == sorted(set(bucket.tolist()))
    for at, index in enumerate(shown):
        part = values[bucket == index]
        assert (series.low[at], series.high[at]) == (part.min(), part.max())
        assert series.mean[at] == pytest.approx(part.mean())


def _killed(studio: StudioFolder, first: int, dice: random.Random) -> int:
    """Run the load from a deed on, kill it at some moment, and return how many deeds it had acknowledged."""
    command = [sys.executable, load.__file__, str(studio.path), str(first)]
    environment = os.environ | {"PYTHONPATH": str(Path(studiowatch.__file__).parents[1])}
    with subprocess.Popen(command, stdout=subprocess.PIPE, text=True, env=environment) as program:
        assert program.stdout is not None
        assert program.stdout.readline().strip() == load.OPENING
        heard = [int(program.stdout.readline()) for _ in range(dice.randrange(60))]
        for _ in range(dice.randrange(300_000)):
            pass
        program.kill()
        heard += [int(line) for line in program.stdout.read().splitlines()]
    return heard[-1] if heard else first


def _check_backups(studio: StudioFolder, checked: set[Path], deeds: int) -> None:
    """Check the backups that are new: each holds what the file held at some time."""
    there = [path for _, path in daily_backups(studio.backups)]
    assert len(there) <= DAYS + WEEKS + 1  # one more if the kill came before the oldest was cleared away
    for path in set(there) - checked:
        found = _held(StudioFolder(path=path).database)
        could_be = [number for number in range(deeds + 2) if batches_before(number) * BATCH == len(found.readings)]
        assert any(found == held_after(number) for number in could_be)
        checked.add(path)


@pytest.mark.timeout(LONGEST_S)
def test_that_nothing_acknowledged_is_lost_to_kills_and_nothing_is_half_done(
    studio: StudioFolder,
    often: bool,  # noqa: FBT001 - a fixture
) -> None:
    dice = random.Random(200)
    deeds, in_flight, checked = 0, 0, set[Path]()
    for _ in range(200 if often else 12):
        acknowledged = _killed(studio, deeds, dice)
        assert acknowledged >= deeds
        deeds = acknowledged
        if not studio.database.exists():
            assert deeds == 0
            continue
        found = _held(studio.database)
        if found != held_after(deeds):
            deeds += 1  # it was on disk, but the kill came before the word of it
            in_flight += 1
            assert found == held_after(deeds)
        _check_backups(studio, checked, deeds)
    assert deeds > 3 * len(ROUND)
    rotate(studio.backups)
    assert {path for _, path in daily_backups(studio.backups)} == set(studio.backups.iterdir())
    print(f"\n{deeds} deeds acknowledged, {in_flight} on disk before the word of it, {len(checked)} backups checked")


@pytest.mark.timeout(LONGEST_S)
def test_that_a_torn_log_leaves_all_deeds_up_to_the_tear_and_none_after_it(
    studio: StudioFolder,
    often: bool,  # noqa: FBT001 - a fixture
) -> None:
    database = open_database(studio.database)
    database.rows("PRAGMA wal_autocheckpoint = 0")
    log_path = studio.database.with_name(f"{studio.database.name}-wal")
    doing = Load(database)
    ends = []
    for number in range(6 * len(ROUND)):
        doing.do(number)
        ends.append(log_path.stat().st_size)
    log = log_path.read_bytes()
    dice = random.Random(300)
    counts = set()
    for at in range(300 if often else 40):
        torn = studio.path / f"torn {at}" / studio.database.name
        torn.parent.mkdir()
        shutil.copy(studio.database, torn)
        kept = bytearray(log[: dice.randrange(len(log))])
        whole_to = len(kept)
        if kept and dice.random() < 0.5:
            whole_to -= dice.randint(1, min(len(kept), 4096))
            kept[whole_to] ^= 0xFF
        torn.with_name(log_path.name).write_bytes(kept)
        deeds = bisect_right(ends, whole_to)  # sqlite.org/fileformat2.html, section 4: up to the first fault
        assert _held(torn) == held_after(deeds)
        counts.add(deeds)
        shutil.rmtree(torn.parent)
    database.close()
    assert len(counts) > 10
    print(f"\ntorn after {len(counts)} different deeds of {len(ends)}, the log {len(log) / 1e6:.1f} MB")


@pytest.mark.timeout(LONGEST_S)
def test_that_a_deed_that_finds_the_disk_full_is_not_done_at_all_and_is_done_once_there_is_room(
    studio: StudioFolder,
    often: bool,  # noqa: FBT001 - a fixture
) -> None:
    database = open_database(studio.database)
    doing = Load(database)
    dice = random.Random(100)
    refused: dict[str, int] = {}
    number = 0
    while sum(refused.values()) < (100 if often else 8):
        ((pages,),) = database.rows("PRAGMA page_count")
        database.rows(f"PRAGMA max_page_count = {pages + dice.randrange(2)}")
        try:
            for _ in range(dice.randrange(1, len(ROUND))):
                doing.do(number)
                number += 1
        except StoreFull:
            kind = ROUND[number % len(ROUND)]
            refused[kind] = refused.get(kind, 0) + 1
            assert held_in(database) == held_after(number)
        database.rows("PRAGMA max_page_count = 1000000")
        doing.do(number)
        number += 1
    assert held_in(database) == held_after(number)
    database.close()
    assert _held(studio.database) == held_after(number)
    print(f"\n{number} deeds, refused: {refused}")
