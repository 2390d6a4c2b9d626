"""A fault of ours planted in every thread: it is reported, the others go on, and the thread does its next work.

The keeper's and the reader's are in `tests/service/test_keeper_faults.py` and `test_line_faults.py`.
"""

from __future__ import annotations

import sys
import threading
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QTimer
from pytestqt.qtbot import QtBot

from studiowatch.service import daily_backup
from studiowatch.service.daily_backup import DailyBackup
from studiowatch.store.folder import StudioFolder
from studiowatch.ui import sound as sound_module
from studiowatch.ui.own_faults import OwnFaults
from studiowatch.ui.sound import DeviceSpeaker, Sound

from ..service.scripted import ScriptedClock  # noqa: TID252 - shared with the keeper's tests


@pytest.fixture
def faults() -> Iterator[OwnFaults]:
    listening = OwnFaults()
    before = sys.excepthook, threading.excepthook
    listening.listen()
    yield listening
    sys.excepthook, threading.excepthook = before


def planted() -> None:
    raise ZeroDivisionError("planted")


def test_that_a_fault_in_the_windows_thread_is_told_once_and_the_window_goes_on(
    faults: OwnFaults, qtbot: QtBot, capsys: pytest.CaptureFixture[str]
) -> None:
    told: list[str] = []
    went_on: list[bool] = []
    faults.told.connect(told.append)
    for _ in range(3):
        QTimer.singleShot(0, planted)
    QTimer.singleShot(0, lambda: went_on.append(True))
    qtbot.waitUntil(lambda: bool(went_on))
    assert told == ["A fault of ours: ZeroDivisionError: planted. The watch goes on; please report it."]
    assert capsys.readouterr().err.count("ZeroDivisionError: planted") == 3


def test_that_a_fault_that_ends_some_thread_is_told_with_its_name(faults: OwnFaults, qtbot: QtBot) -> None:
    with qtbot.waitSignal(faults.told) as told:
        thread = threading.Thread(target=planted, name="errand")
        thread.start()
    thread.join()
    assert told.args == ["A fault of ours (errand): ZeroDivisionError: planted. The watch goes on; please report it."]


def test_that_the_speaker_is_there_for_the_next_warning(
    monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    sounds: list[Sound] = []

    def play(sound: Sound, _loudness: float) -> str:
        sounds.append(sound)
        if len(sounds) == 1:
            planted()
        return ""

    monkeypatch.setattr(sound_module, "_play", play)
    speaker = DeviceSpeaker()
    speaker.play(Sound.ATTENTION)
    speaker.play(Sound.INSISTENT)
    speaker.close()
    assert sounds == [Sound.ATTENTION, Sound.INSISTENT]
    assert "ZeroDivisionError" in caplog.text
    assert speaker.trouble == ""  # the second was heard


def test_that_a_backup_is_made_at_the_next_look(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    looks: list[Callable[[], None]] = []
    done = threading.Event()

    def backup(*_: object, **__: object) -> None:
        looks.append(planted)
        if len(looks) == 1:
            planted()
        done.set()

    monkeypatch.setattr(daily_backup, "FIRST_LOOK_S", 0.0)
    monkeypatch.setattr(daily_backup, "LOOK_S", 0.0)
    monkeypatch.setattr(daily_backup, "backup_studio", backup)
    beside = DailyBackup(StudioFolder(path=tmp_path), ScriptedClock())
    beside.start()
    assert done.wait(20)
    beside.stop()
    assert "ZeroDivisionError: planted" in capsys.readouterr().err
    assert beside.trouble == ""
