"""What a file says stays in its folder: a path or a link that leads elsewhere opens nothing there."""

from __future__ import annotations

import json
import os
from collections.abc import Callable
from concurrent.futures import Future
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtGui import QImage

from studiowatch.cli.commands import run
from studiowatch.compose import outfit
from studiowatch.service.bench import Bench
from studiowatch.service.commands import Command, Refused, RegisterPiece
from studiowatch.service.letterbox import Letterbox
from studiowatch.service.letters import read, written
from studiowatch.service.photos import photo_path
from studiowatch.service.piece_orders import registered
from studiowatch.service.sheet_folder import SheetFolder
from studiowatch.service.sheet_shelf import SheetShelf, SheetUnknown, built_in_sheets
from studiowatch.service.whole_file import whole_file
from studiowatch.store.folder import StudioFolder
from studiowatch.store.rotation import backup_studio
from studiowatch.store.studio_file import StudioFileError, read_studio
from studiowatch.ui.small_picture import small_picture

NOW_MS = 1_772_442_000_000
SHEET = """
name = "mine"
title = "Mine"
kind = "waterborne"
sheen = "gloss"
volume_solids = 0.36
density_kg_m3 = 1030
wet_um = 90
touch_dry_min = 40
recoat_h = 5
clear_h = 2
cure_days = 10
mfft_C = 10
"""
STUDIO = """
[[piece]]
title = "Kiln Light"
width_cm = 40
height_cm = 40
{photo}
[[piece.coat]]
sheet = "{sheet}"
"""
Call = Callable[..., tuple[int, str]]


@pytest.fixture
def call(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> Call:
    """Run a call on a studio of the test's own; return its exit code and what it said."""
    parts = replace(outfit(), data_folder=tmp_path / "data")

    def answer(*words: str | Path) -> tuple[int, str]:
        capsys.readouterr()
        code = run([str(word) for word in words], parts)
        captured = capsys.readouterr()
        return code, captured.out + captured.err

    return answer


@pytest.fixture
def inside(tmp_path: Path) -> Path:
    """Return the folder of a studio file; a sheet and a picture that it must not reach lie beside the folder."""
    (tmp_path / "elsewhere.toml").write_text(SHEET)
    picture = QImage(40, 30, QImage.Format.Format_RGB32)
    picture.fill(0x336699)
    assert picture.save(str(tmp_path / "elsewhere.jpg"))
    folder = tmp_path / "inside"
    folder.mkdir()
    return folder


def test_that_a_sheet_beside_the_studio_file_is_read_and_one_in_a_folder_beside_it(inside: Path) -> None:
    (inside / "sheets").mkdir()
    for path in (inside / "mine.toml", inside / "sheets" / "mine.toml"):
        path.write_text(SHEET)
        assert SheetShelf.open().find(str(path.relative_to(inside)), inside).name == "mine"


@pytest.mark.parametrize(
    "way", ["../elsewhere.toml", "sheets/../../elsewhere.toml", "{above}/elsewhere.toml", "link.toml"]
)
def test_that_a_studio_file_reaches_no_sheet_outside_its_folder(inside: Path, call: Call, way: str) -> None:
    (inside / "sheets").mkdir()
    (inside / "link.toml").symlink_to(inside.parent / "elsewhere.toml")
    name = way.format(above=inside.parent)
    with pytest.raises(SheetUnknown, match="does not lie beside"):
        SheetShelf.open().find(name, inside)
    (inside / "studio.toml").write_text(STUDIO.format(photo="", sheet=name))
    code, said = call("plan", "--studio", inside / "studio.toml")
    assert code == 2
    assert "does not lie beside" in said
    code, said = call("import", inside / "studio.toml")
    assert code == 2
    assert "Mine" not in said


def test_that_links_in_a_circle_are_no_sheet(inside: Path) -> None:
    (inside / "a.toml").symlink_to(inside / "b.toml")
    (inside / "b.toml").symlink_to(inside / "a.toml")
    with pytest.raises(SheetUnknown, match="no data sheet file"):
        SheetShelf.open().find("a.toml", inside)


def test_that_a_sheet_that_she_names_herself_may_lie_anywhere(inside: Path, call: Call) -> None:
    code, _ = call(
        "predict",
        "--sheet",
        inside.parent / "elsewhere.toml",
        "--wet-um",
        "90",
        "--side-m",
        "0.4",
        "--air",
        "20,50,0.05",
    )
    assert code == 0


@pytest.mark.parametrize("name", ["../x", "..", "a/b", "A", "mine.toml", "", "/etc/x", "a\0b", "a\nb", "-x"])
def test_that_no_name_of_a_sheet_makes_a_file_elsewhere(tmp_path: Path, name: str) -> None:
    with pytest.raises(Refused, match="The sheet's name is"):
        SheetFolder(folder=tmp_path / "studio" / "sheets").keep({"name": name})
    assert list(tmp_path.rglob("*")) == []


@pytest.mark.parametrize("name", ["../x", "/etc/passwd", "..", "", "C:\\x"])
def test_that_no_name_of_a_sheet_deletes_a_file_elsewhere(tmp_path: Path, name: str) -> None:
    (tmp_path / "x.toml").write_text(SHEET.replace("mine", "x"))
    with pytest.raises(Refused, match="no sheet of yours"):
        SheetFolder(folder=tmp_path / "sheets").drop(name)
    assert (tmp_path / "x.toml").exists()


def test_that_deleting_a_sheet_that_is_a_link_deletes_the_link(inside: Path) -> None:
    (inside / "mine.toml").symlink_to(inside.parent / "elsewhere.toml")
    SheetFolder(folder=inside).drop("mine")
    assert (inside.parent / "elsewhere.toml").exists()
    assert not (inside / "mine.toml").is_symlink()


@pytest.mark.parametrize("name", ["../elsewhere.jpg", "/etc/passwd", "..", ".hidden", "C:\\x.jpg", "a\\b.jpg", "a\nb"])
def test_that_a_studio_file_names_no_photo_outside_the_folder_of_photos(name: str) -> None:
    with pytest.raises(StudioFileError, match="the name of a file, without a folder"):
        read_studio(STUDIO.format(photo=f"photo = {json.dumps(name)}", sheet="gloss-waterborne"), "studio.toml")


@pytest.mark.parametrize("name", ["../elsewhere.jpg", "link.jpg", "{above}/elsewhere.jpg", "circle.jpg", "a\0b", ".."])
@pytest.mark.window
@pytest.mark.usefixtures("qapp")
def test_that_no_photo_outside_its_folder_is_shown(inside: Path, name: str) -> None:
    (inside / "link.jpg").symlink_to(inside.parent / "elsewhere.jpg")
    (inside / "circle.jpg").symlink_to(inside / "circle.jpg")
    path = photo_path(inside, name.format(above=inside.parent))
    assert path is None or not path.exists()
    assert small_picture(inside, name).isNull()


@pytest.mark.window
@pytest.mark.usefixtures("qapp")
def test_that_a_photo_in_its_folder_is_shown_also_where_the_folder_is_a_link(inside: Path, tmp_path: Path) -> None:
    (tmp_path / "elsewhere.jpg").rename(inside / "in.jpg")
    (tmp_path / "photos").symlink_to(inside, target_is_directory=True)
    assert not small_picture(tmp_path / "photos", "in.jpg").isNull()


def test_that_a_finishing_record_holds_no_photo_from_outside(inside: Path, tmp_path: Path, call: Call) -> None:
    (inside / "studio.toml").write_text(STUDIO.format(photo='photo = "link.jpg"', sheet="gloss-waterborne"))
    (inside / "photos").mkdir()
    (inside / "photos" / "link.jpg").symlink_to(tmp_path / "elsewhere.jpg")
    page = tmp_path / "record.html"
    code, said = call("record-sheet", "Kiln Light", "--studio", inside / "studio.toml", "--html", page)
    assert code == 0
    assert "does not lie in the folder of photos" in said
    assert "data:image/jpeg" not in page.read_text("utf-8")


def test_that_a_backup_copies_files_only_and_no_photo_by_a_link(tmp_path: Path, inside: Path) -> None:
    studio = StudioFolder(path=tmp_path / "studio")
    studio.make()
    outfit().open_store(studio.database).close()
    studio.photos.mkdir()
    studio.sheets.mkdir()
    (studio.photos / "link.jpg").symlink_to(tmp_path / "elsewhere.jpg")
    (studio.sheets / "all").symlink_to(tmp_path, target_is_directory=True)
    (studio.sheets / "gone.toml").symlink_to(inside / "not there")
    (studio.sheets / "mine.toml").write_text(SHEET)
    copy = backup_studio(studio, tmp_path / "backups", NOW_MS)
    assert [path.name for path in copy.sheets.iterdir()] == ["mine.toml"]
    assert list(copy.photos.iterdir()) == []


@pytest.mark.parametrize("name", ["../x.jpg", "photo-0123456789abcdef.jpg/../../x", "/etc/passwd", "photo-x.jpg"])
def test_that_a_letter_names_no_photo_outside(name: str) -> None:
    letter = read(written(RegisterPiece(title="Kiln Light", width_cm=40, height_cm=40, photo=name)))
    assert isinstance(letter, RegisterPiece)
    bench = Bench(pieces=(), sheets=frozenset(), now_ms=NOW_MS, new_key=lambda: "key")
    with pytest.raises(Refused, match="is not a photo of this studio"):
        registered(letter, bench)


def test_that_a_letter_that_is_a_link_or_no_file_is_no_letter(tmp_path: Path) -> None:
    folder = tmp_path / "letters"
    folder.mkdir()
    (tmp_path / "elsewhere").write_text(written(RegisterPiece(title="Kiln Light", width_cm=40, height_cm=40)))
    (folder / "a.letter").symlink_to(tmp_path / "elsewhere")
    (folder / "b.letter").mkdir()
    os.mkfifo(folder / "c.letter")
    taken: list[Command] = []

    def submit(command: Command) -> Future[str]:
        taken.append(command)
        return Future()

    assert Letterbox(folder, wall_s=lambda: 0.0).collect(submit) == 0
    assert taken == []
    assert (tmp_path / "elsewhere").exists()


def test_that_what_is_written_whole_never_goes_through_a_link_that_waits_there(tmp_path: Path) -> None:
    (tmp_path / "hers.txt").write_text("kept")
    (tmp_path / "out.csv.unfinished").symlink_to(tmp_path / "hers.txt")
    with whole_file(tmp_path / "out.csv") as out:
        out.write("time")
    assert (tmp_path / "hers.txt").read_text() == "kept"
    assert (tmp_path / "out.csv").read_text() == "time"
    assert not (tmp_path / "out.csv").is_symlink()


def test_that_no_built_in_sheet_is_named_like_a_file() -> None:
    assert not [name for name in built_in_sheets() if name.endswith(".toml")]
