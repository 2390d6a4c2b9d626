"""A backup is a studio of its own; seven days and four weeks of them are kept, and none made by hand is deleted."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.room.readings import Reading
from studiowatch.store import rotation
from studiowatch.store.database import open_database
from studiowatch.store.folder import StudioFolder
from studiowatch.store.quiet import log_of
from studiowatch.store.readings import ReadingsStore
from studiowatch.store.rotation import AHEAD, DAILY, backup_studio, daily_backups, outdated, rotate, set_apart
from studiowatch.store.trouble import StoreFull, StoreRefused, StoreTrouble

NOON_MS = 1_772_452_800_000  # date -u -d 2026-03-02T12:00:00Z +%s
NOON = datetime(2026, 3, 2, 12, tzinfo=UTC)
READING = Reading(time_ms=NOON_MS, temperature_C=20.0)


@pytest.fixture
def folder(tmp_path: Path) -> StudioFolder:
    studio = StudioFolder(path=tmp_path / "studio")
    studio.make()
    studio.sheets.mkdir()
    (studio.sheets / "mine.toml").write_text("name = 'mine'")
    studio.photos.mkdir()
    (studio.photos / "photo-0123456789abcdef.jpg").write_bytes(b"a picture")
    database = open_database(studio.database)
    ReadingsStore(database).append([READING])
    database.close()
    return studio


def test_that_a_backup_opens_as_a_studio_with_its_sheets_and_photos(folder: StudioFolder, tmp_path: Path) -> None:
    writer = open_database(folder.database)
    copy = backup_studio(folder, tmp_path / "elsewhere", NOON_MS)
    writer.close()
    assert copy.path == tmp_path / "elsewhere" / "backup-20260302T120000Z"
    assert (copy.sheets / "mine.toml").read_text() == "name = 'mine'"
    database = open_database(copy.database)
    assert ReadingsStore(database).between(0, 2**60) == [READING]
    database.close()
    assert sorted(path.name for path in copy.path.iterdir()) == ["photos", "sheets", "studio.sqlite3"]
    assert (copy.photos / "photo-0123456789abcdef.jpg").read_bytes() == b"a picture"


def test_that_a_backup_is_whole_or_not_there(folder: StudioFolder, tmp_path: Path) -> None:
    into = tmp_path / "into"
    backup_studio(folder, into, NOON_MS)
    with pytest.raises(StoreRefused, match="there already"):
        backup_studio(folder, into, NOON_MS)
    with pytest.raises(StoreRefused, match="nothing to back up"):
        backup_studio(StudioFolder(path=tmp_path / "none"), into, NOON_MS)
    (tmp_path / "file").touch()
    with pytest.raises(StoreTrouble, match="No backup could be made"):
        backup_studio(folder, tmp_path / "file", NOON_MS)
    damaged = bytearray(folder.database.read_bytes())
    damaged[4096:] = bytes(len(damaged) - 4096)
    folder.database.write_bytes(damaged)
    with pytest.raises(StoreTrouble):
        backup_studio(folder, into, NOON_MS + 1000)
    assert [path.name for path in into.iterdir()] == ["backup-20260302T120000Z"]


def test_that_a_backup_leaves_room_for_the_log(
    folder: StudioFolder, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    usage = rotation.shutil.disk_usage(tmp_path)
    monkeypatch.setattr(rotation.shutil, "disk_usage", lambda _: usage._replace(free=1000))
    with pytest.raises(StoreFull, match="0 MB free"):
        backup_studio(folder, tmp_path / "into", NOON_MS)
    assert list((tmp_path / "into").iterdir()) == []


@pytest.mark.parametrize(
    ("free", "fits"),
    [
        (60_000_000, False),
        (165_000_000, False),  # 2 * (20 + 2) + 120 + 2 MB are wanted, 166
        (167_000_000, True),
    ],
)
def test_that_a_backup_leaves_room_for_the_log_with_all_that_is_copied(
    folder: StudioFolder, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, free: int, *, fits: bool
) -> None:
    monkeypatch.setattr(rotation, "backup", lambda _path_from, path_to: path_to.touch())
    for path, size in (
        (folder.database, 20_000_000),
        (log_of(folder.database), 2_000_000),
        (folder.photos / "photo-fedcba9876543210.jpg", 120_000_000),
        (folder.sheets / "long.toml", 2_000_000),
    ):
        with path.open("wb") as file:
            file.truncate(size)
    (folder.photos / "linked.jpg").symlink_to(folder.database)  # not copied, and so not counted
    usage = rotation.shutil.disk_usage(tmp_path)
    monkeypatch.setattr(rotation.shutil, "disk_usage", lambda _: usage._replace(free=free))
    monkeypatch.setattr(rotation, "copy_private", lambda _paths, _into: None)
    if fits:
        assert backup_studio(folder, tmp_path / "into", NOON_MS).database.exists()
    else:
        with pytest.raises(StoreFull, match=r"and 166 MB are wanted"):
            backup_studio(folder, tmp_path / "into", NOON_MS)


def test_that_a_backup_knows_the_columns_of_her_boards(folder: StudioFolder, tmp_path: Path) -> None:
    folder.board_columns.write_text('{"usb 1a86:7523": {"style": "names"}}')
    copy = backup_studio(folder, tmp_path / "into", NOON_MS)
    assert copy.board_columns.read_text() == '{"usb 1a86:7523": {"style": "names"}}'
    assert copy.board_columns.stat().st_mode & 0o077 == 0  # for her alone


def test_that_a_backup_follows_no_link_to_the_columns(folder: StudioFolder, tmp_path: Path) -> None:
    (tmp_path / "elsewhere.json").write_text("{}")
    folder.board_columns.symlink_to(tmp_path / "elsewhere.json")
    copy = backup_studio(folder, tmp_path / "into", NOON_MS)
    assert not copy.board_columns.exists()


def test_that_after_half_a_year_seven_days_and_four_weeks_are_kept(folder: StudioFolder) -> None:
    by_hand = backup_studio(folder, folder.backups, NOON_MS)
    (folder.backups / "daily-someone-elseZ").mkdir()
    for day in range(180):
        (folder.backups / (DAILY + (NOON + timedelta(days=day)).strftime("%Y%m%dT%H%M%SZ"))).mkdir()
        rotate(folder.backups)
    last = NOON + timedelta(days=179)  # 2026-08-28, a Friday: date -d 2026-08-28 +%A
    kept = [moment for moment, _ in daily_backups(folder.backups)]
    # the last seven days, and the Sundays that end the three weeks before: by the calendar
    sundays = [datetime(2026, 8, day, 12, tzinfo=UTC) for day in (9, 16, 23)]
    assert kept == sorted({*sundays, *(last - timedelta(days=day) for day in range(7))})
    assert by_hand.path.exists()
    assert (folder.backups / "daily-someone-elseZ").exists()


def test_that_a_backup_whose_deletion_was_cut_off_is_taken_for_none_and_goes_the_next_time(
    folder: StudioFolder, monkeypatch: pytest.MonkeyPatch
) -> None:
    for day in range(60):
        (folder.backups / (DAILY + (NOON + timedelta(days=day)).strftime("%Y%m%dT%H%M%SZ"))).mkdir(parents=True)

    def cut_off(path: Path) -> None:
        raise OSError(f"cut off in {path}")

    with monkeypatch.context() as patched:
        patched.setattr(rotation.shutil, "rmtree", cut_off)
        with pytest.raises(StoreTrouble, match="cannot be deleted"):
            rotate(folder.backups)
    assert outdated(moment for moment, _ in daily_backups(folder.backups)) == set()  # none that may be half deleted
    rotate(folder.backups)
    assert {path for _, path in daily_backups(folder.backups)} == set(folder.backups.iterdir())


def test_that_an_old_backup_that_cannot_be_deleted_does_not_keep_the_others(
    folder: StudioFolder, monkeypatch: pytest.MonkeyPatch
) -> None:
    for day in range(60):
        (folder.backups / (DAILY + (NOON + timedelta(days=day)).strftime("%Y%m%dT%H%M%SZ"))).mkdir(parents=True)
    delete = rotation.shutil.rmtree

    def delete_all_but_the_oldest(path: Path) -> None:
        if path.name.startswith("daily-20260302"):
            raise PermissionError(f"held by another program: {path}")
        delete(path)

    monkeypatch.setattr(rotation.shutil, "rmtree", delete_all_but_the_oldest)
    with pytest.raises(StoreTrouble, match="daily-20260302T120000Z cannot be deleted"):
        rotate(folder.backups)
    kept = [moment for moment, _ in daily_backups(folder.backups)]
    assert outdated(kept) == set()
    assert max(kept) == NOON + timedelta(days=59)


def test_that_backups_dated_in_the_future_and_those_of_today_do_not_push_each_other_out(tmp_path: Path) -> None:
    of_today = [NOON - timedelta(days=day) for day in range(7)]
    of_wrong_clock = [NOON + timedelta(days=30 + day) for day in range(12)]  # 2026-04-01, a Wednesday, to the 12th
    for moment in (*of_today, *of_wrong_clock):
        (tmp_path / (DAILY + moment.strftime("%Y%m%dT%H%M%SZ"))).mkdir()
    set_apart(tmp_path, NOON_MS)
    rotate(tmp_path)
    assert [moment for moment, _ in daily_backups(tmp_path)] == sorted(of_today)
    # the last seven are of the 6th to the 12th, and the Sunday of the week before is the 5th: the 1st to the 4th go
    assert [moment for moment, _ in daily_backups(tmp_path, AHEAD)] == of_wrong_clock[4:]


def test_that_a_second_one_of_the_same_wrong_second_is_left_where_it_is(tmp_path: Path) -> None:
    for kind in (DAILY, AHEAD):
        (tmp_path / f"{kind}20260401T120000Z" / "kept").mkdir(parents=True)
    set_apart(tmp_path, NOON_MS)
    assert [len(daily_backups(tmp_path, kind)) for kind in (DAILY, AHEAD)] == [1, 1]


@given(st.lists(st.integers(0, 24 * 400).map(lambda hours: NOON + timedelta(hours=hours)), unique=True, max_size=60))
def test_that_the_newest_is_always_kept_and_never_more_than_eleven(moments: list[datetime]) -> None:
    kept = set(moments) - outdated(moments)
    assert len(kept) <= 11
    assert not moments or max(moments) in kept
    assert outdated(kept) == set()
