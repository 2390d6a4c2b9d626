"""Starting and ending the window as the program does."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings, QSize, QTimer
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QApplication

from studiowatch.service.doors import Doors
from studiowatch.service.finishing_sheets import StudioFinishing
from studiowatch.service.review_desk import ReviewDesk
from studiowatch.service.studio_exchange import StudioExchange
from studiowatch.store.examine import examine
from studiowatch.store.folder import StudioFolder
from studiowatch.ui.app import app_icon, run_window
from studiowatch.ui.window import StudioWindow

from .scenes import EMPTY, MadeUpHistory, ScriptedClock, ScriptedDesk

pytestmark = pytest.mark.window


@pytest.fixture
def own_settings(tmp_path: Path) -> None:
    QSettings.setPath(QSettings.Format.IniFormat, QSettings.Scope.UserScope, str(tmp_path))


@pytest.fixture
def same_signals() -> Iterator[None]:
    kept = {number: signal.getsignal(number) for number in (signal.SIGINT, signal.SIGTERM)}
    yield
    for number, handler in kept.items():
        signal.signal(number, handler)


def _doors(path: Path, desk: ScriptedDesk) -> Doors:
    folder = StudioFolder(path=path)
    return Doors(
        folder=folder,
        history=MadeUpHistory(),
        exchange=StudioExchange(folder=folder, clock=ScriptedClock(), desk=desk, check=examine),
        reviews=ReviewDesk(folder=folder),
        finishing=StudioFinishing(folder=folder, photo=lambda _path: (b"", ""), clock=ScriptedClock()),
    )


@pytest.mark.usefixtures("qapp", "own_settings", "same_signals")
def test_that_a_window_that_is_asked_to_end_before_it_runs_ends(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    desk = ScriptedDesk()
    own = StudioWindow.showEvent

    def show_event(window: StudioWindow, event: QShowEvent) -> None:
        signal.raise_signal(signal.SIGTERM)
        own(window, event)

    monkeypatch.setattr(StudioWindow, "showEvent", show_event)
    assert run_window(desk, _doors(tmp_path, desk), ScriptedClock()) == 0


@pytest.mark.usefixtures("qapp", "own_settings", "same_signals")
def test_that_the_window_runs_until_the_process_is_asked_to_end(tmp_path: Path) -> None:
    desk, titles = ScriptedDesk(), []
    clock, doors = ScriptedClock(), _doors(tmp_path, desk)

    def end() -> None:
        desk.publish(EMPTY)
        titles.extend(one.windowTitle() for one in QApplication.topLevelWidgets() if isinstance(one, StudioWindow))
        os.kill(os.getpid(), signal.SIGTERM)

    QTimer.singleShot(0, end)
    assert run_window(desk, doors, clock, title_note="a made-up studio") == 0
    assert "studiowatch · a made-up studio" in titles


def test_that_the_window_is_made_without_the_plotting_library(tmp_path: Path) -> None:
    code = "import sys, studiowatch.ui.app; sys.exit('pyqtgraph' in sys.modules)"
    done = subprocess.run([sys.executable, "-c", code], cwd=tmp_path, check=False, timeout=60)
    assert done.returncode == 0


@pytest.mark.usefixtures("qapp")
def test_that_the_icon_is_drawn_at_every_size() -> None:
    icon = app_icon()
    for side in (16, 32, 128):
        image = icon.pixmap(QSize(side, side)).toImage()
        colours = {image.pixel(x, y) for x in range(0, image.width(), 2) for y in range(0, image.height(), 2)}
        assert len(colours) > 4
