"""The daily backup: once a day, said when it fails, and gone with the watch."""

from __future__ import annotations

import threading
from pathlib import Path

import pytest

from studiowatch.service.daily_backup import DAY_MS, DailyBackup
from studiowatch.store.database import open_database
from studiowatch.store.folder import StudioFolder

from .scripted import ScriptedClock


@pytest.fixture
def folder(tmp_path: Path) -> StudioFolder:
    open_database(tmp_path / "studio.sqlite3").close()
    return StudioFolder(path=tmp_path)


def names(folder: StudioFolder) -> list[str]:
    return sorted(path.name for path in folder.backups.iterdir())


def test_that_there_is_one_a_day(folder: StudioFolder) -> None:
    clock = ScriptedClock()
    backups = DailyBackup(folder, clock)
    for hours in (0, 1, 22, 1, 1):
        clock.pass_s(3600 * hours)
        backups.look()
    assert names(folder) == ["daily-20260302T090000Z", "daily-20260303T090000Z"]


def test_that_a_clock_that_was_wrong_neither_ends_the_backups_nor_makes_one_at_each_look(folder: StudioFolder) -> None:
    clock = ScriptedClock()
    backups = DailyBackup(folder, clock)
    ahead_s = 400 * 86_400
    clock.pass_s(ahead_s)
    for _ in range(12):  # more days than are kept
        backups.look()
        clock.pass_s(86_400)
    apart = [name.replace("daily-", "ahead-") for name in names(folder)]
    clock.pass_s(-ahead_s - 12 * 86_400)
    for _ in range(150):  # every ten minutes for a day and an hour
        backups.look()
        clock.pass_s(600)
    assert names(folder) == [*apart, "daily-20260302T090000Z", "daily-20260303T090000Z"]


def test_that_those_of_a_clock_that_was_ahead_never_stand_for_a_day_once_their_dates_come(folder: StudioFolder) -> None:
    clock = ScriptedClock()
    clock.pass_s(2.5 * 86_400)  # the clock is ahead by that
    for _ in range(2):
        DailyBackup(folder, clock).look()  # on the 4th and on the 5th at 21 h
        clock.pass_s(86_400)
    clock.pass_s(-4.5 * 86_400)
    for _ in range(5 * 24 * 6):  # every ten minutes from the 2nd at 9 h to the 7th; the program starts anew each time
        DailyBackup(folder, clock).look()
        clock.pass_s(600)
    true = [f"daily-202603{day:02}T090000Z" for day in range(2, 7)]
    assert names(folder) == ["ahead-20260304T210000Z", "ahead-20260305T210000Z", *true]


def test_that_a_failure_is_said_until_one_is_made(folder: StudioFolder) -> None:
    clock = ScriptedClock()
    backups = DailyBackup(folder, clock)
    folder.backups.touch()
    backups.look()
    assert backups.trouble.startswith("The daily backup failed: No backup could be made")
    folder.backups.unlink()
    clock.now_ms += DAY_MS
    backups.look()
    assert backups.trouble == ""


def test_that_its_thread_ends_with_the_watch(folder: StudioFolder) -> None:
    backups = DailyBackup(folder, ScriptedClock())
    backups.start()
    assert "daily-backup" in {thread.name for thread in threading.enumerate()}
    backups.stop()
    assert "daily-backup" not in {thread.name for thread in threading.enumerate()}
    assert not folder.backups.exists()
