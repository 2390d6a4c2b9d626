"""Whoever else uses the computer reads nothing of hers, whatever rights new files get here."""

from __future__ import annotations

import os
import sys
import threading
from collections.abc import Callable, Iterator
from concurrent.futures import Future
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtGui import QImage

from studiowatch.board.kept_file import write_kept
from studiowatch.cli.commands import run
from studiowatch.compose import outfit
from studiowatch.room.readings import Reading
from studiowatch.service.commands import ArchivePiece
from studiowatch.service.leavings import Leavings, rescue
from studiowatch.service.letterbox import Letterbox, ask
from studiowatch.service.sheet_folder import SheetFolder
from studiowatch.store.folder import StudioFolder
from studiowatch.store.kept_severities import KeptSeverities
from studiowatch.store.rotation import backup_studio

OTHERS = 0o077
NOW_MS = 1_772_442_000_000
pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="rights of another kind")


@pytest.fixture(autouse=True)
def open_to_all() -> Iterator[None]:
    """Let new files be read and written by all, unless they say otherwise."""
    before = os.umask(0)
    yield
    os.umask(before)


@pytest.fixture
def studio(tmp_path: Path) -> StudioFolder:
    """Return a studio that has been worked in: a piece with a photo, readings, and what lies beside the records."""
    folder = StudioFolder(path=tmp_path / "studio")
    picture = tmp_path / "hers.png"
    image = QImage(40, 30, QImage.Format.Format_RGB32)
    image.fill(0x336699)
    assert image.save(str(picture))
    call = _caller(folder)
    call("piece", "add", "Kiln Light", "--width-cm", "40", "--height-cm", "40", "--photo", picture)
    room = tmp_path / "room.csv"
    room.write_text("time,temperature_C,humidity_pct\n2026-03-02T09:00:00Z,20,50\n2026-03-02T09:00:05Z,20,50\n")
    call("import", room)
    write_kept(folder.last_board, {"port": "ttyUSB0"})
    write_kept(folder.board_columns, {})
    severities = KeptSeverities(path=folder.severities)
    severities.put("coat", "stamp", np.ones((1, 1)))
    severities.save()
    return folder


def _caller(folder: StudioFolder) -> Callable[..., None]:
    def call(*words: str | Path) -> None:
        assert run(["--folder", str(folder.path), *map(str, words)], replace(outfit(), data_folder=folder.path)) == 0

    return call


def open_ones(below: Path) -> list[str]:
    """Return what at or below a folder others may read or write."""
    return [str(path) for path in (below, *below.rglob("*")) if path.stat().st_mode & OTHERS]


def test_that_others_read_neither_the_folder_nor_a_file_in_it(studio: StudioFolder) -> None:
    there = {path.name for path in studio.path.rglob("*")}
    assert {"studio.sqlite3", "watching.lock", "board.json", "columns.json", "severities.json"} <= there
    assert list(studio.photos.glob("*.jpg"))
    assert open_ones(studio.path) == []


def test_that_the_log_beside_the_records_is_as_closed_as_they_are(studio: StudioFolder) -> None:
    store = outfit().open_store(studio.database)
    try:
        store.records.note(NOW_MS, "test", "written to the log")
        assert studio.database.with_name(f"{studio.database.name}-wal").exists()
        assert open_ones(studio.path) == []
    finally:
        store.close()


def test_that_a_folder_that_was_there_and_is_open_to_all_holds_closed_files(tmp_path: Path) -> None:
    folder = StudioFolder(path=tmp_path / "shared")
    folder.path.mkdir(mode=0o777)
    _caller(folder)("piece", "add", "Kiln Light", "--width-cm", "40", "--height-cm", "40")
    assert [path for path in open_ones(folder.path) if path != str(folder.path)] == []


def test_that_backups_and_what_is_saved_from_damaged_records_are_closed(studio: StudioFolder, tmp_path: Path) -> None:
    copy = backup_studio(studio, tmp_path / "backups", NOW_MS)
    assert list(copy.photos.glob("*.jpg"))
    assert open_ones(tmp_path / "backups") == []
    outfit().salvage_store(studio.database, tmp_path / "saved.sqlite3")
    assert open_ones(tmp_path / "saved.sqlite3") == []


def test_that_a_letter_and_its_answer_are_closed(tmp_path: Path) -> None:
    seen: list[str] = []

    def submit(_command: object) -> Future[str]:
        seen.extend(open_ones(tmp_path / "letters"))
        done: Future[str] = Future()
        done.set_result("key")
        return done

    box = Letterbox(tmp_path / "letters", wall_s=lambda: 0.0)
    ended = threading.Event()

    def watch() -> None:
        while not ended.wait(0.01):
            box.collect(submit)

    watching = threading.Thread(target=watch)
    watching.start()
    try:
        assert ask(tmp_path / "letters", ArchivePiece(piece_key="p")) == "key"
    finally:
        ended.set()
        watching.join()
    assert seen == []
    assert open_ones(tmp_path / "letters") == []


def test_that_readings_that_the_disk_refused_are_closed(tmp_path: Path) -> None:
    rescue(Leavings(readings=[Reading(time_ms=NOW_MS, temperature_C=20.0)]), tmp_path / "studio")
    assert list((tmp_path / "studio").glob("*.csv"))
    assert open_ones(tmp_path / "studio") == []


def test_that_a_sheet_of_hers_is_closed(tmp_path: Path) -> None:
    fields = {
        "name": "mine",
        "title": "Mine",
        "kind": "waterborne",
        "volume_solids": 0.36,
        "density_kg_m3": 1030,
        "wet_um": 90,
        "touch_dry_min": 40,
        "recoat_h": 5,
        "clear_h": 2,
        "cure_days": 10,
        "mfft_C": 10,
        "sheen": "gloss",
    }
    SheetFolder(folder=tmp_path / "sheets").keep(fields)
    assert list((tmp_path / "sheets").glob("*.toml"))
    assert open_ones(tmp_path / "sheets") == []


def test_that_a_file_she_exports_has_the_rights_that_new_files_get_here(studio: StudioFolder, tmp_path: Path) -> None:
    os.umask(0o027)
    _caller(studio)("export", tmp_path / "all.toml")
    assert (tmp_path / "all.toml").stat().st_mode & 0o777 == 0o640
