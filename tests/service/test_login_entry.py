"""Start at login: what is written where, on each system. Only that of Linux can be tried here."""

from __future__ import annotations

import configparser
import plistlib
import shlex
from pathlib import Path

import pytest

from studiowatch.service.login_entry import LoginEntry, login_entry

COMMAND = ("/opt/my tools/python3", "-m", "studiowatch", "--folder", '/home/x/100% "wet"')


def entry_on(platform: str, home: Path, **environ: str) -> LoginEntry:
    return login_entry(COMMAND, environ=environ, home=home, platform=platform)


@pytest.mark.parametrize(
    ("platform", "environ", "place"),
    [
        ("linux", {}, ".config/autostart/studiowatch.desktop"),
        ("darwin", {}, "Library/LaunchAgents/studiowatch.plist"),
        ("win32", {}, "AppData/Roaming/Microsoft/Windows/Start Menu/Programs/Startup/studiowatch.cmd"),
    ],
)
def test_that_it_is_put_on_and_off_where_the_system_looks(
    tmp_path: Path, platform: str, environ: dict[str, str], place: str
) -> None:
    entry = entry_on(platform, tmp_path, **environ)
    assert entry.path == tmp_path / place
    assert not entry.is_on
    entry.set_on(on=True)
    entry.set_on(on=True)
    assert entry.is_on
    entry.set_on(on=False)
    entry.set_on(on=False)
    assert not entry.is_on


def test_that_the_users_own_configuration_folder_is_heeded(tmp_path: Path) -> None:
    entry = entry_on("linux", tmp_path, XDG_CONFIG_HOME=str(tmp_path / "own"))
    assert entry.path == tmp_path / "own" / "autostart" / "studiowatch.desktop"


def test_that_the_line_of_the_desktop_entry_is_read_back_as_the_command(tmp_path: Path) -> None:
    # Desktop Entry Specification 1.5, "The Exec key": the value is unescaped as a string first, then unquoted as an
    # argument, then %% becomes %
    read = configparser.RawConfigParser()
    read.optionxform = str  # type: ignore[method-assign,assignment]
    read.read_string(entry_on("linux", tmp_path).text().decode())
    section = read["Desktop Entry"]
    assert section["Type"] == "Application"
    line = section["Exec"].replace("\\\\", "\\")
    assert tuple(word.replace("%%", "%") for word in shlex.split(line)) == COMMAND


def test_that_the_agent_of_the_mac_holds_the_command(tmp_path: Path) -> None:
    agent = plistlib.loads(entry_on("darwin", tmp_path).text())
    assert agent == {"Label": "studiowatch", "ProgramArguments": list(COMMAND), "RunAtLoad": True}
