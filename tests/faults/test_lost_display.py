"""The screen's server ends under a running window: nothing on disk is hurt, and the next start watches on."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import time
from pathlib import Path

import pytest

from studiowatch.store.database import open_database
from studiowatch.store.readings import ReadingsStore
from studiowatch.store.trouble import StoreRefused

with_xvfb = pytest.mark.skipif(shutil.which("Xvfb") is None, reason="Xvfb is not installed")
WAIT_S = 60.0


def opened_screen() -> tuple[subprocess.Popen[bytes], str]:
    reader, writer = os.pipe()
    server = subprocess.Popen(
        ["Xvfb", "-displayfd", str(writer), "-screen", "0", "1280x800x24", "-nolisten", "tcp"],
        pass_fds=(writer,),
        stderr=subprocess.DEVNULL,
    )
    os.close(writer)
    with os.fdopen(reader) as answer:
        return server, f":{answer.readline().strip()}"


def stored(folder: Path) -> int:
    try:
        database = open_database(folder / "studio.sqlite3", read_only=True)
    except StoreRefused:  # not made yet
        return 0
    try:
        return sum(1 for _ in ReadingsStore(database).between(time.time_ns() // 1_000_000 - 60_000, 2**53))
    finally:
        database.close()


def end_of(window: subprocess.Popen[str]) -> str:
    """Wait until the window has ended by itself, and return what it said; it is killed where it does not."""
    try:
        return window.communicate(timeout=WAIT_S)[1]
    except subprocess.TimeoutExpired:
        window.kill()
        return window.communicate()[1]


@with_xvfb
@pytest.mark.window
def test_that_the_records_outlive_the_screen_and_the_next_start_takes_over(tmp_path: Path) -> None:
    folder = tmp_path / "cache" / "studiowatch" / "demo"
    homes = {"XDG_CONFIG_HOME": str(tmp_path / "config"), "XDG_CACHE_HOME": str(tmp_path / "cache")}
    environment = os.environ | homes | {"QT_QPA_PLATFORM": "xcb"}
    call = [sys.executable, "-m", "studiowatch", "demo"]
    server, display = opened_screen()
    window = subprocess.Popen(call, env=environment | {"DISPLAY": display}, stderr=subprocess.PIPE, text=True)
    try:
        until_s = time.monotonic() + WAIT_S
        made_up = 0
        while not made_up or stored(folder) < made_up + 5:
            made_up = made_up or stored(folder)
            assert time.monotonic() < until_s
            with pytest.raises(subprocess.TimeoutExpired):  # it runs
                window.wait(0.2)
    finally:
        server.terminate()
        server.wait()
        said = end_of(window)
    assert window.returncode > 0  # it ended by itself, for want of a screen
    assert said
    before = stored(folder)
    assert before > 0
    record = [sys.executable, "-m", "studiowatch", "--folder", str(folder), "record", "--simulated", "--seconds", "3"]
    ended = subprocess.run(record, env=environment, capture_output=True, text=True, timeout=WAIT_S, check=False)
    assert ended.returncode == 0, ended.stderr
    assert stored(folder) > before
