"""Her own sheets beside a watch: kept as files, on the shelf at once, and coats dried anew by their figures."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace
from pathlib import Path

import pytest

from studiowatch.coats.sheet_check import check_sheet
from studiowatch.coats.stages import Stage
from studiowatch.compose import outfit
from studiowatch.service.commands import LayCoat, Refused, RegisterPiece
from studiowatch.service.keeper import Keeper
from studiowatch.service.sheet_commands import DropSheet, KeepSheet
from studiowatch.service.sheet_folder import SheetFolder
from studiowatch.service.sheet_shelf import SheetShelf, built_in_sheets
from studiowatch.service.snapshot import Snapshot
from studiowatch.service.watched_studio import watching
from studiowatch.store.folder import StudioFolder

FIELDS: Mapping[str, object] = {
    "name": "tall-bottle",
    "title": 'Gloss "from the tall bottle"',
    "kind": "waterborne",
    "sheen": "gloss",
    "volume_solids": 0.38,
    "wet_um": 80.0,
    "touch_dry_min": 32.0,
    "clear_h": 1.5,
    "recoat_h": 4.0,
    "apply_C": [14.0, 28.0],
    "matting_agent": False,
    "cautions": ["Ventilate."],
}


@pytest.fixture
def watched(tmp_path: Path) -> Iterator[tuple[Keeper, list[Snapshot], StudioFolder]]:
    parts, folder = replace(outfit(), data_folder=tmp_path), StudioFolder(path=tmp_path)
    seen: list[Snapshot] = []
    with watching(parts, folder, parts.made_up_room(1).source(), listener=seen.append, keep_backups=False) as keeper:
        yield keeper, seen, folder


def recoat_ms(seen: list[Snapshot]) -> int | None:
    (piece,) = seen[-1].pieces
    stage = None if piece.top is None else piece.top.stage(Stage.DRY_TO_RECOAT)
    return None if stage is None else stage.time_ms


def wait_until(is_so: Callable[[], bool], keeper: Keeper) -> None:
    for _ in range(200):
        if is_so():
            return
        with pytest.raises(Refused):  # answered with the keeper's next turn: no clock of ours is waited for
            keeper.submit(DropSheet(name="none")).result(30)
    raise AssertionError("it did not come to that")


def test_that_a_sheet_is_kept_used_edited_and_only_let_go_when_no_coat_needs_it(
    watched: tuple[Keeper, list[Snapshot], StudioFolder],
) -> None:
    keeper, seen, folder = watched
    assert keeper.submit(KeepSheet(fields=FIELDS)).result(30) == "tall-bottle"
    report = check_sheet((folder.sheets / "tall-bottle.toml").read_text("utf-8"), "sheet")
    assert report.sheet is not None
    assert report.sheet.title == 'Gloss "from the tall bottle"'
    assert "tall-bottle" in [choice.name for choice in keeper.sheets()]
    assert [entry.sheet.name for entry in keeper.shelf() if entry.is_own] == ["tall-bottle"]
    piece = keeper.submit(RegisterPiece(title="Low Tide", width_cm=40, height_cm=40)).result(30)
    now_ms = outfit().clock.utc_ms()
    keeper.submit(LayCoat(piece_key=piece, laid_ms=now_ms - 600_000, sheet="tall-bottle")).result(30)
    wait_until(lambda: bool(seen) and bool(seen[-1].pieces) and recoat_ms(seen) is not None, keeper)
    before = recoat_ms(seen)
    assert before is not None
    keeper.submit(KeepSheet(fields={**FIELDS, "recoat_h": 24.0})).result(30)
    wait_until(lambda: (recoat_ms(seen) or 0) > before + 8 * 3_600_000, keeper)
    with pytest.raises(Refused, match="Low Tide has a coat of this sheet"):
        keeper.submit(DropSheet(name="tall-bottle")).result(30)
    assert (folder.sheets / "tall-bottle.toml").exists()


def test_that_a_built_in_sheet_holds_again_once_hers_of_its_name_is_deleted(
    watched: tuple[Keeper, list[Snapshot], StudioFolder],
) -> None:
    keeper, _, folder = watched
    keeper.submit(KeepSheet(fields={**FIELDS, "name": "gloss-waterborne"})).result(30)
    keeper.submit(DropSheet(name="gloss-waterborne")).result(30)
    entry = next(entry for entry in keeper.shelf() if entry.sheet.name == "gloss-waterborne")
    assert (entry.is_own, entry.sheet) == (False, built_in_sheets()["gloss-waterborne"])
    assert list(folder.sheets.iterdir()) == []


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({"name": "../evil"}, "small letters"),
        ({"name": 5}, "small letters"),
        ({"recoat_h": -1.0}, "recoat_h is -1 h"),
        ({"unknown": 1}, "not a field"),
    ],
)
def test_that_what_is_no_sheet_is_refused_and_nothing_is_written(
    tmp_path: Path, changes: dict[str, object], words: str
) -> None:
    with pytest.raises(Refused, match=words):
        SheetFolder(folder=tmp_path / "sheets").keep({**FIELDS, **changes})
    assert not (tmp_path / "sheets").exists()


def test_that_a_sheet_is_kept_in_the_file_that_it_came_from(tmp_path: Path) -> None:
    folder = SheetFolder(folder=tmp_path)
    (tmp_path / "by hand.toml").write_text('name = "tall-bottle"\nkind = "paint"\nvolume_solids = 0.4\n', "utf-8")
    folder.keep(FIELDS)
    (tmp_path / "tall-bottle.toml").rename(tmp_path / "renamed.toml")
    (tmp_path / "by hand.toml").unlink()
    folder.keep({**FIELDS, "recoat_h": 6.0})
    assert [path.name for path in tmp_path.iterdir()] == ["renamed.toml"]
    assert SheetShelf.open(tmp_path).get("tall-bottle").recoat_h == 6.0
