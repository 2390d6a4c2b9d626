"""Which calls show the window's frame at once, and that the frame gives way to the window or to the end."""

from __future__ import annotations

import subprocess
import sys

import pytest
from pytestqt.qtbot import QtBot

from studiowatch.__main__ import wants_window
from studiowatch.ui.starting import StartingWindow, end_starting, starting

SCREEN = {"DISPLAY": ":1"}


@pytest.mark.parametrize(
    ("words", "wanted"),
    [
        ([], True),
        (["demo"], True),
        (["--folder", "demo"], True),
        (["--folder", "here", "demo"], True),
        (["--folder=here"], True),
        (["demo", "--headless"], False),
        (["--folder", "here", "check"], False),
        (["check"], False),
        (["--version"], False),
        (["-h"], False),
    ],
)
def test_which_calls_show_the_frame(words: list[str], wanted: bool) -> None:  # noqa: FBT001
    assert wants_window(words, SCREEN, "linux") is wanted
    assert not wants_window(words, {}, "linux")
    assert wants_window(words, {}, "darwin") is wanted


@pytest.mark.window
@pytest.mark.usefixtures("qtbot")
def test_that_the_frame_is_painted_before_the_program_is_read_in_and_gives_way(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("studiowatch.ui.starting.SHOWN_WITHIN_MS", 30_000)  # however busy the computer is
    with starting() as frame:
        assert frame.is_painted
        assert frame.isVisible()
        end_starting()
        assert not frame.isVisible()
    with starting() as frame:
        pass
    assert not frame.isVisible()


def test_that_the_frame_waits_for_nothing_of_the_program() -> None:
    code = (
        "import sys, studiowatch.__main__, studiowatch.ui.starting\n"
        "late = [name for name in sys.modules if name.startswith(('studiowatch.cli', 'studiowatch.store'))]\n"
        "sys.exit(' '.join(late) or 0)"
    )
    done = subprocess.run([sys.executable, "-c", code], check=False, capture_output=True, text=True, timeout=60)
    assert done.returncode == 0, done.stderr


def test_that_the_frame_has_a_name(qtbot: QtBot) -> None:
    with starting() as frame:
        assert isinstance(frame, StartingWindow)
        assert frame.accessibleName() == "studiowatch is opening"
        qtbot.waitUntil(lambda: frame.is_painted)
