"""Her data sheets in the real window, on a real folder: made, edited, deleted, and taken back by Ctrl+Z."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings, Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from studiowatch.compose import outfit
from studiowatch.service.keeper import Keeper
from studiowatch.service.product_views import SheetEntry
from studiowatch.service.watched_studio import watching
from studiowatch.store.folder import StudioFolder
from studiowatch.ui.app import build_window
from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.window import StudioWindow

from .whole import NoTray, QuietSpeaker

pytestmark = pytest.mark.window
CTRL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
PATIENCE_MS = 20_000
HER_FILE = (
    b'# hers\r\nname = "tall"\r\ntitle = "Tall bottle"\r\nkind = "waterborne"\r\nvolume_solids = 0.38\r\n'
    b"wet_um = 80\r\ntouch_dry_min = 32\r\nrecoat_h = 4\r\n"
)


class Studio:
    """The window on a folder with one sheet of hers."""

    def __init__(self, window: StudioWindow, keeper: Keeper, folder: StudioFolder, qtbot: QtBot) -> None:
        self.window, self.keeper, self.folder, self.qtbot = window, keeper, folder, qtbot

    def entry(self) -> SheetEntry:
        return next(entry for entry in self.keeper.shelf() if entry.sheet.name == "tall")

    def files(self) -> dict[str, bytes]:
        return {path.name: path.read_bytes() for path in self.folder.sheets.iterdir()}

    def wait(self, is_so: Callable[[], bool]) -> None:
        self.qtbot.waitUntil(is_so, timeout=PATIENCE_MS)

    def foot_says(self, words: str) -> None:
        self.wait(lambda: self.window.foot.words == words)

    def take_back(self, deed: str) -> None:
        """Press Ctrl+Z once the menu offers to undo `deed`: it does so with the snapshot that follows."""
        self.wait(lambda: deed in self.window.menus.undo.text())
        self._press(CTRL)

    def do_again(self, deed: str) -> None:
        self.wait(lambda: deed in self.window.menus.redo.text())
        self._press(CTRL | SHIFT)

    def _press(self, modifiers: Qt.KeyboardModifier) -> None:
        self.wait(lambda: QApplication.activeModalWidget() is None)
        with self.qtbot.waitActive(self.window):
            self.window.activateWindow()
        self.qtbot.keyClick(self.window, Qt.Key.Key_Z, modifiers)


@pytest.fixture
def studio(tmp_path: Path, qtbot: QtBot) -> Iterator[Studio]:
    folder, parts = StudioFolder(path=tmp_path / "studio"), outfit()
    folder.make()
    folder.sheets.mkdir()
    (folder.sheets / "hers.toml").write_bytes(HER_FILE)
    with watching(parts, folder, parts.made_up_room(1).source(), keep_backups=False) as keeper:
        settings = ViewSettings(QSettings(str(tmp_path / "window.ini"), QSettings.Format.IniFormat))
        history = parts.open_history(folder.database)
        window = build_window(keeper, history, parts.clock, settings=settings, speaker=QuietSpeaker(), tray=NoTray())
        window.show()
        try:
            yield Studio(window, keeper, folder, qtbot)
        finally:
            window.leave()
            window.deleteLater()


def test_that_a_deleted_sheet_comes_back_by_control_z(studio: Studio) -> None:
    deeds = studio.window.deeds.sheets
    shelf = deeds.show_shelf()
    shelf.show_shelf("tall")
    box = deeds.drop(shelf, studio.entry())
    assert box.informativeText().startswith("Undo brings it back.")
    box.accept()
    studio.foot_says("Deleted: the sheet Tall bottle. Undo brings it back.")
    assert studio.files() == {}
    shelf.reject()
    studio.take_back("deleted the sheet Tall bottle")
    studio.foot_says("Undone: deleted the sheet Tall bottle.")
    assert studio.files() == {"hers.toml": HER_FILE}
    studio.do_again("deleted the sheet Tall bottle")
    studio.foot_says("Done again: deleted the sheet Tall bottle.")
    assert studio.files() == {}


def test_that_an_edited_sheet_goes_back_and_says_so_where_another_program_wrote_to_it(studio: Studio) -> None:
    deeds = studio.window.deeds.sheets
    shelf = deeds.show_shelf()
    form = deeds.edit(shelf, studio.entry())
    form.figures["recoat_h"][0].setText("6")
    with studio.qtbot.waitSignal(form.recorded, timeout=PATIENCE_MS):
        form.command_or_fault()
    shelf.reject()
    edited = studio.files()
    assert edited != {"hers.toml": HER_FILE}
    studio.take_back("edited the sheet Tall bottle")
    studio.foot_says("Undone: edited the sheet Tall bottle.")
    assert studio.files() == {"hers.toml": HER_FILE}
    studio.do_again("edited the sheet Tall bottle")
    studio.foot_says("Done again: edited the sheet Tall bottle.")
    assert studio.files() == edited
    (studio.folder.sheets / "hers.toml").write_bytes(b"another program's")
    studio.take_back("edited the sheet Tall bottle")
    studio.wait(lambda: "was changed or moved by another program since" in studio.window.foot.words)
    assert studio.files() == {"hers.toml": b"another program's", "hers.earlier": HER_FILE}
