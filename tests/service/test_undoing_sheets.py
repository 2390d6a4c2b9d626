"""Undo and redo of her own data sheets: the file comes back byte for byte, and nobody's work is written over."""

from __future__ import annotations

import os
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path

import pytest

from studiowatch.compose import outfit
from studiowatch.service.commands import LayCoat, Refused, RegisterPiece
from studiowatch.service.correction_commands import Redo, Undo
from studiowatch.service.keeper import Keeper
from studiowatch.service.sheet_commands import DropSheet, KeepSheet
from studiowatch.service.sheet_folder import SheetFolder
from studiowatch.service.sheet_shelf import built_in_sheets
from studiowatch.service.watched_studio import watching
from studiowatch.store.folder import StudioFolder

HER_FILE = (  # as an editor on another system leaves it: a mark at its beginning, its line ends, a note of hers
    b'\xef\xbb\xbf# from the tall bottle, bought in March\r\nname = "tall-bottle"\r\ntitle = "Tall bottle"\r\n'
    b'kind   =  "waterborne"\r\nvolume_solids = 0.38\r\nwet_um = 80\r\ntouch_dry_min = 32\r\nrecoat_h = 4\r\n'
)
FIELDS: Mapping[str, object] = {
    "name": "tall-bottle",
    "title": "Tall bottle",
    "kind": "waterborne",
    "volume_solids": 0.38,
    "wet_um": 80.0,
    "touch_dry_min": 32.0,
    "recoat_h": 6.0,
}
EDIT, DELETE = KeepSheet(fields=FIELDS), DropSheet(name="tall-bottle")
OTHERS = HER_FILE.replace(b"recoat_h = 4", b"recoat_h = 5")


class Studio:
    """A watch over a folder, in a place of its own."""

    def __init__(self, folder: StudioFolder, keeper: Keeper) -> None:
        self.folder, self.keeper = folder, keeper
        self.file = folder.sheets / "from the shop.toml"

    def do(self, command: KeepSheet | DropSheet | Undo | Redo | RegisterPiece | LayCoat) -> str:
        return self.keeper.submit(command).result(30)

    def recoat_h(self) -> float | None:
        """Return what the shelf says of the sheet, or None where it is not hers."""
        own = [entry.sheet for entry in self.keeper.shelf() if entry.is_own and entry.sheet.name == "tall-bottle"]
        return own[0].recoat_h if own else None

    def files(self) -> dict[str, bytes]:
        return {path.name: path.read_bytes() for path in self.folder.sheets.iterdir()}


@contextmanager
def opened(path: Path) -> Iterator[Studio]:
    parts, folder = replace(outfit(), data_folder=path), StudioFolder(path=path)
    with watching(parts, folder, parts.made_up_room(1).source(), keep_backups=False) as keeper:
        yield Studio(folder, keeper)


@pytest.fixture
def studio(tmp_path: Path) -> Iterator[Studio]:
    (tmp_path / "sheets").mkdir()
    (tmp_path / "sheets" / "from the shop.toml").write_bytes(HER_FILE)
    with opened(tmp_path) as made:
        yield made


def test_that_an_edit_goes_back_byte_for_byte_and_forth_again(studio: Studio) -> None:
    studio.do(EDIT)
    edited = studio.files()
    assert studio.recoat_h() == 6.0
    assert studio.do(Undo()) == "edited the sheet Tall bottle"
    assert studio.files() == {"from the shop.toml": HER_FILE}
    assert studio.recoat_h() == 4.0
    assert studio.do(Redo()) == "edited the sheet Tall bottle"
    assert studio.files() == edited
    assert studio.recoat_h() == 6.0


def test_that_a_deleted_sheet_comes_back_byte_for_byte_and_goes_again(studio: Studio) -> None:
    studio.do(DELETE)
    assert (studio.files(), studio.recoat_h()) == ({}, None)
    assert studio.do(Undo()) == "deleted the sheet Tall bottle"
    assert studio.files() == {"from the shop.toml": HER_FILE}
    assert studio.recoat_h() == 4.0
    assert studio.file.stat().st_mode & 0o077 == 0
    studio.do(Redo())
    assert (studio.files(), studio.recoat_h()) == ({}, None)


def test_that_a_new_sheet_is_taken_away_and_made_again(studio: Studio) -> None:
    studio.do(KeepSheet(fields={**FIELDS, "name": "gloss-waterborne", "title": "Low bottle"}))
    made = studio.files()
    assert studio.do(Undo()) == "made the sheet Low bottle"
    assert studio.files() == {"from the shop.toml": HER_FILE}
    shelf = {entry.sheet.name: entry for entry in studio.keeper.shelf()}
    assert shelf["gloss-waterborne"].sheet == built_in_sheets()["gloss-waterborne"]
    assert not shelf["gloss-waterborne"].is_own
    studio.do(Redo())
    assert studio.files() == made


def test_that_an_edit_that_changed_nothing_is_no_deed(studio: Studio) -> None:
    studio.do(EDIT)
    studio.do(EDIT)
    studio.do(Undo())
    assert studio.files() == {"from the shop.toml": HER_FILE}


@pytest.mark.parametrize("deed", [EDIT, DELETE], ids=["edited", "deleted"])
def test_that_what_another_program_wrote_since_is_left_and_the_earlier_text_kept(
    studio: Studio, deed: KeepSheet | DropSheet
) -> None:
    studio.do(RegisterPiece(title="Low Tide", width_cm=40, height_cm=40))
    studio.do(deed)
    studio.file.write_bytes(OTHERS)
    with pytest.raises(Refused, match="by another program since, so it stays as it is") as refusal:
        studio.do(Undo())
    assert str(refusal.value).endswith("what would have come back is in from the shop.earlier.")
    assert studio.files() == {"from the shop.toml": OTHERS, "from the shop.earlier": HER_FILE}
    assert studio.do(Undo()) == "registered Low Tide"  # what was done before can still be undone


def test_that_a_sheet_made_here_and_rewritten_by_another_program_is_not_deleted(studio: Studio) -> None:
    studio.do(KeepSheet(fields={**FIELDS, "name": "low"}))
    (studio.folder.sheets / "low.toml").write_bytes(OTHERS)
    with pytest.raises(Refused, match="stays as it is"):
        studio.do(Undo())
    assert studio.files() == {"from the shop.toml": HER_FILE, "low.toml": OTHERS}


def test_that_a_redo_heeds_another_program_too_and_keeps_each_text_under_a_name_of_its_own(studio: Studio) -> None:
    studio.do(EDIT)
    edited = studio.file.read_bytes()
    studio.do(Undo())
    studio.file.write_bytes(OTHERS)
    (studio.folder.sheets / "from the shop.earlier").write_bytes(b"of another day")
    with pytest.raises(Refused, match=r"is in from the shop-2\.earlier"):
        studio.do(Redo())
    assert studio.files()["from the shop-2.earlier"] == edited
    assert studio.files()["from the shop.earlier"] == b"of another day"
    assert studio.file.read_bytes() == OTHERS
    with pytest.raises(Refused, match="nothing to do again"):
        studio.do(Redo())


def test_that_a_disk_that_refuses_loses_nothing_and_undo_waits(studio: Studio, monkeypatch: pytest.MonkeyPatch) -> None:
    studio.do(EDIT)
    edited = studio.files()

    def full(_number: int) -> None:
        raise OSError(28, "No space left on device")

    with monkeypatch.context() as disk:
        disk.setattr(os, "fsync", full)
        with pytest.raises(Refused, match="No space left on device"):
            studio.do(Undo())
    assert studio.files() == edited
    assert studio.recoat_h() == 6.0
    studio.do(Undo())
    assert studio.files() == {"from the shop.toml": HER_FILE}


def test_that_a_deletion_that_a_coat_forbids_is_no_deed(studio: Studio) -> None:
    piece = studio.do(RegisterPiece(title="Low Tide", width_cm=40, height_cm=40))
    studio.do(LayCoat(piece_key=piece, laid_ms=outfit().clock.utc_ms() - 60_000, sheet="tall-bottle"))
    with pytest.raises(Refused, match="Low Tide has a coat of this sheet"):
        studio.do(DELETE)
    assert studio.do(Undo()).startswith("laid ")
    studio.do(DELETE)
    studio.do(Undo())
    assert studio.files() == {"from the shop.toml": HER_FILE}


def test_that_nothing_is_undone_across_a_restart_as_with_any_deed(tmp_path: Path) -> None:
    with opened(tmp_path) as studio:
        studio.do(EDIT)
    with opened(tmp_path) as studio:
        assert studio.recoat_h() == 6.0
        with pytest.raises(Refused, match="nothing was done since studiowatch was started"):
            studio.do(Undo())


def test_that_a_file_of_another_sheet_is_never_written_over(tmp_path: Path) -> None:
    (tmp_path / "low.toml").write_bytes(HER_FILE)
    filed = SheetFolder(folder=tmp_path).keep({**FIELDS, "name": "low"})
    assert filed.path == tmp_path / "low-2.toml"
    assert (tmp_path / "low.toml").read_bytes() == HER_FILE
