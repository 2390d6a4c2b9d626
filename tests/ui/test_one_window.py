"""A second start brings the first window to the front: two processes, as in life."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from studiowatch.store.folder import StudioFolder, Watching
from studiowatch.ui.one_window import OneWindow, bring_to_front, socket_name

pytestmark = pytest.mark.window
PATIENCE_S = 60


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    StudioFolder(path=tmp_path / "studio").make()
    return tmp_path / "studio"


def second_start(folder: Path, tmp_path: Path) -> subprocess.Popen[str]:
    environ = {**os.environ, "XDG_CONFIG_HOME": str(tmp_path / "config"), "QT_QPA_PLATFORM": "offscreen"}
    words = [sys.executable, "-m", "studiowatch", "--folder", str(folder)]
    return subprocess.Popen(words, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, env=environ)


def test_that_a_second_start_asks_for_the_first_window_and_ends(folder: Path, tmp_path: Path, qtbot: QtBot) -> None:
    lock = Watching(StudioFolder(path=folder))
    first = OneWindow(folder)
    started: subprocess.Popen[str] | None = None
    try:
        with qtbot.waitSignal(first.asked, timeout=PATIENCE_S * 1000):
            started = second_start(folder, tmp_path)
        qtbot.waitUntil(lambda: started.poll() is not None, timeout=PATIENCE_S * 1000)
        out, err = started.communicate()
        assert started.returncode == 0
        assert "brought to the front" in out
        assert err == ""
    finally:
        first.close()
        lock.release()


@pytest.mark.usefixtures("qapp")
def test_that_a_studio_watched_without_a_window_is_refused_in_one_sentence(folder: Path, tmp_path: Path) -> None:
    lock = Watching(StudioFolder(path=folder))
    try:
        started = second_start(folder, tmp_path)
        out, err = started.communicate(timeout=PATIENCE_S)
    finally:
        lock.release()
    assert started.returncode == 1
    assert out == ""
    assert err.count("\n") == 1
    assert "is watching this studio already" in err


@pytest.mark.usefixtures("qapp")
def test_that_what_a_killed_window_left_is_taken_over(folder: Path) -> None:
    code = f"""
import os, sys
from pathlib import Path
from PySide6.QtCore import QCoreApplication
from studiowatch.ui.one_window import OneWindow
app = QCoreApplication([])
one = OneWindow(Path({str(folder)!r}))
os._exit(9)
"""
    assert subprocess.run([sys.executable, "-c", code], check=False, timeout=PATIENCE_S).returncode == 9
    assert not bring_to_front(folder)
    again = OneWindow(folder)
    assert again.is_listening
    again.close()


def test_that_each_folder_has_a_name_of_its_own(tmp_path: Path) -> None:
    assert socket_name(tmp_path / "a") != socket_name(tmp_path / "b")
    assert socket_name(tmp_path / "a" / ".." / "b") == socket_name(tmp_path / "b")
